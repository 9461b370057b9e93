#pragma once

// Long work between two frames: what is done, how far it is, and a button that ends it when it is held: this page comes
// under a finger that meant another. It does not read the book, which is at work.

#include "title_block.hpp"

#include <cstdint>

namespace cotter::ui {

struct Work {
    const char *heading, *hint, *stop; // the words of the button
    bool ends_with_window = false;     // else it is finished before the window closes
    std::int64_t done = 0, of = 0;
};

inline constexpr Work reading_the_book{"Reading the book", "Every record is read before anything may lift.",
                                       "Hold to close Cotter", true};
inline constexpr Work copying_the_book{"Copying the book", "Today's copy, to the place that the book names.",
                                       "Hold to make no copy"};

// True: somebody ends it.
bool draw(Sheet& sheet, const Work& work, const TitleBlock& title);

} // namespace cotter::ui
