#pragma once

#include "cab_view.hpp"

#include <optional>

namespace cotter::ui {

// The four buttons at their fixed place, a row's own button, or "more".
struct CabPressed {
    enum class What { check, pin, lift, report, row, more, different_pipe } what;
    std::size_t row = 0;
};

// The Cab's working sheet. `first` is the first row shown.
std::optional<CabPressed> draw(Sheet& sheet, const CabSheet& view, std::size_t first);

// How many rows the sheet shows at once, "more" included.
std::size_t cab_rows(const Sheet& sheet, const CabSheet& view);

} // namespace cotter::ui
