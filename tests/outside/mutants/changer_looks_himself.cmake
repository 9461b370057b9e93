# Nobody counts as the one who changed a setting, so that the changer's own look is a second pair of eyes.
set(file standing.cpp)
set(text [[standing.changers.]])
set(replacement [[Standing{}.changers.]])
