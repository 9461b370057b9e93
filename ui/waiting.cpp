#include "waiting.hpp"

#include "foot.hpp"

#include "dimension.hpp"

#include <algorithm>

namespace cotter::ui {

bool draw(Sheet& sheet, const Work& work, const TitleBlock& title)
{
    const Box paper = begin_page(sheet, work.heading, {});
    const double x = 6, w = std::min(paper.w - 2 * x, 150.0);
    double y = paper.y + 8 + sheet.wrapped({x, paper.y + 8, w, 0}, Letter::text, work.hint, 3) + 8;
    const double share = work.of > 0 ? static_cast<double>(work.done) / static_cast<double>(work.of) : 0;
    const figures::Figure line = figures::limit_line(share, 1, "", w);
    sheet.figure(line, x, y);
    y += line.height + 4;
    y += sheet.text(x, y, Letter::heading, say("{} %", static_cast<int>(share * 100))) > 0 ? 14 : 0;
    const bool ended = sheet.hold(work.stop, {x, y + 8, 70, at_desk().target});
    draw(sheet, title);
    return ended;
}

} // namespace cotter::ui
