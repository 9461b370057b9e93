# The highest corner of a cell of the chart governs.
set(file chart.cpp)
set(text [[*std::min_element(found->rated.begin(), found->rated.end())]])
set(replacement [[*std::max_element(found->rated.begin(), found->rated.end())]])
