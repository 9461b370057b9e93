#include "waiting.hpp"

#include "foot.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

bool draw(Sheet& sheet, const Work& work, const Outside& outside)
{
    const Box paper = begin_page(sheet, work.heading, {work.stop});
    const double x = 6, w = std::min(paper.w - 2 * x, 180.0), high = 10;
    const double y = paper.y + 6 + sheet.wrapped({x, paper.y + 6, w, 0}, Letter::text, work.hint, 3) + 6;
    const double share = work.of > 0 ? static_cast<double>(work.done) / static_cast<double>(work.of) : 0;
    sheet.fill({x, y, w * std::clamp(share, 0.0, 1.0), high}, colours().ink);
    sheet.frame({x, y, w, high}, thick_mm);
    sheet.wrapped({x, y + high + 4, w, 0}, Letter::text, say("{} of {}", work.done, work.of), 1);
    const bool stopped = !draw_foot(sheet, {work.stop}).empty();
    draw(sheet, title_block(outside, "PLACE", ""));
    return stopped;
}

} // namespace cotter::ui
