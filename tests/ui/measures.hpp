#pragma once

// Measures a page of the screens: every target's size and gaps, every text within the glass, nothing clipped, no text
// over another, contrast, words of its language; on every glass, in every language, at every size of text, by day and
// night.

#include "rig.hpp"

#include <string>
#include <vector>

namespace cotter::tests {

// Night changes colours alone, so it goes with every other glass.
std::vector<Glass> all_glasses();

// The page as it is now, everywhere; at a desk also with gloves.
void check_everywhere(Rig& rig, const ui::Hand& hand, const std::string& page);

// Presses each, which must be there, and measures the page after it; what a list hides is looked for.
void walk(Rig& rig, const ui::Hand& hand, const std::string& name, const std::vector<std::string>& steps);
// As long as one of them is there it is pressed, and the page measured.
void walk_while(Rig& rig, const ui::Hand& hand, const std::string& name, const std::vector<std::string>& any);
void type_and(Rig& rig, const std::string& typed, const char* button);

void give_photos(Rig& rig); // one photo is found, and can be kept
std::string pipe_name(SampleBook& sample);
bool overlap(const ui::Seen& a, const ui::Seen& b);

} // namespace cotter::tests
