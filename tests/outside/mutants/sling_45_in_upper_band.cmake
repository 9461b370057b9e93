# A measured 45 degrees exactly falls in the band over 45.
set(file sling.cpp)
set(text [[angle <= 45'000 ? Band::to_45]])
set(replacement [[angle < 45'000 ? Band::to_45]])
