#pragma once

// Long work between two frames: what is done, how far it is, and a button that ends it.

#include "outside.hpp"
#include "sheet.hpp"

#include <cstdint>

namespace cotter::ui {

struct Work {
    const char *heading, *hint, *stop; // the words of the button
    bool ends_with_window = false;     // else it is finished before the window closes
    std::int64_t done = 0, of = 0;
};

inline constexpr Work reading_the_book{"The book is read", "Every record is read before anything may lift.",
                                       "Close Cotter", true};
inline constexpr Work copying_the_book{"The book is copied", "Today's copy, to the place that the book names.",
                                       "No copy now"};

// True: somebody ends it.
bool draw(Sheet& sheet, const Work& work, const Outside& outside);

} // namespace cotter::ui
