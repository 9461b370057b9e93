# The greatest barrel of a state's range is no longer served by it.
set(file row_setting.cpp)
set(text [[*state.least <= barrel && barrel <= *state.greatest;]])
set(replacement [[*state.least <= barrel && barrel < *state.greatest;]])
