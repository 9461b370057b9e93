#include "cab_sheet.hpp"

#include <algorithm>
#include <array>

namespace cotter::ui {

namespace {

constexpr double buttons_h = 25, under_mm = 31;

struct Places {
    Box plate, rows, picture, buttons;
};

// A wide glass has the picture at the right; a tall one under the plate. The plate and the buttons never move.
Places places(const Sheet& sheet)
{
    const double w = sheet.width(), bottom = sheet.height() - title_height(sheet);
    if (w > sheet.height()) {
        const double left = w * 0.553;
        return {{0, 0, std::max(left, plate_width(sheet)), plate_mm},
                {0, plate_mm, left, bottom - plate_mm},
                {left + 1.5, 0, w - left - 1.5, bottom - buttons_h},
                {left + 1.5, bottom - buttons_h, w - left - 1.5, buttons_h}};
    }
    const double picture = 62;
    return {{0, 0, w, plate_mm},
            {0, plate_mm + picture, w, bottom - plate_mm - picture - buttons_h},
            {0, plate_mm, w, picture},
            {0, bottom - buttons_h, w, buttons_h}};
}

void draw_under(Sheet& sheet, const CabSheet& view, const Box& box)
{
    const double w = box.w - 18;
    double whole = 4.5;
    for (const std::string& line : view.under)
        whole += sheet.height_of(Letter::bold, line, w) + 1.2;
    double y = box.y + 4.5;
    for (const std::string& line : view.under)
        y += sheet.wrapped({box.x + 15, y, w, 0}, {Letter::bold, whole > under_mm}, line, 2) + 1.2;
}

void draw_ranges(Sheet& sheet, const CabSheet& view, double x, double y, double w)
{
    if (!view.ranges.empty() && view.picture->barrel > 0)
        sheet.figure(figures::ranges_ladder(view.ranges, view.picture->barrel, w), x, y);
}

// Gear, pipe and people of today; at the right the way out of the answer.
bool draw_head(Sheet& sheet, const CabSheet& view, const Box& box)
{
    constexpr double button_w = 26;
    const double over = std::max(0.0, plate_width(sheet) - box.x); // a long verdict reaches over the picture's corner
    const double x = box.x + 3 + (box.y < plate_mm ? over : 0), w = box.x + box.w - button_w - 5 - x;
    const auto line = [&](double y, Letter letter, const std::string& text) {
        sheet.wrapped({x, box.y + y, w, 0},
                      sheet.that_fits({{letter, true}, {Letter::second, true}, {Letter::small, true}}, text, w, 1),
                      text, 1, letter == Letter::bold ? colours().ink : colours().second);
    };
    line(2.6, Letter::bold, view.gear);
    line(8.8, Letter::second, view.pipe);
    const std::array people{view.signaller, view.supervisor};
    const bool fit = std::all_of(people.begin(), people.end(), [&](const std::string& each) {
        return sheet.width_of({Letter::second, true}, each) <= w;
    });
    for (std::size_t i = 0; i < people.size(); ++i)
        sheet.wrapped({x, box.y + 14.6 + 4.6 * static_cast<double>(i), w, 0},
                      {fit ? Letter::second : Letter::small, true}, people[i], 1, colours().second);
    return sheet.button("Different pipe", {box.x + box.w - button_w - 1, box.y + 1, button_w, glove.target});
}

bool draw_picture(Sheet& sheet, const CabSheet& view, const Box& box)
{
    sheet.fill(box, colours().sheet);
    sheet.frame(box, thin_mm);
    const bool other_pipe = draw_head(sheet, view, box);
    if (!view.picture) {
        sheet.wrapped({box.x + 3, box.y + 26, box.w - 6, 0}, Letter::text,
                      "Look at the attachment first and say how it stands. Then it is drawn here.", 4);
        return other_pipe;
    }
    const bool wide = box.w > 110;
    const double ladder_h = view.ranges.empty() ? 0 : 6.2 * static_cast<double>(view.ranges.size()) + 4;
    const double w = wide ? box.w * 0.4 : box.w - 10, h = box.h - 27 - (wide ? 0 : ladder_h);
    sheet.figure(figures::attachment(*view.picture, w, h), box.x + 4, box.y + 25);
    if (wide)
        draw_ranges(sheet, view, box.x + box.w * 0.52, box.y + box.h - ladder_h - 4, box.w * 0.48 - 5);
    else
        draw_ranges(sheet, view, box.x + 4, box.y + box.h - ladder_h, box.w - 8);
    return other_pipe;
}

std::optional<figures::Sign> done_sign(bool done) { return done ? figures::Sign::in_order : figures::Sign::stop; }

std::optional<CabPressed::What> draw_buttons(Sheet& sheet, const CabSheet& view, const Box& box)
{
    using What = CabPressed::What;
    std::optional<What> pressed;
    const double w = (box.w - 1 - 3 * glove.gap) / 4, y = box.y + (box.h - glove.target) / 2;
    double x = box.x + 0.5;
    const char* second = view.has_setting ? "Pin" : "Pipe";
    const Lettering letter = sheet.common_letter({"Check", second, "Lift", "Report"}, w, glove.target, true);
    const auto button = [&](const char* words, std::optional<figures::Sign> sign, What what) {
        if (sheet.button(words, {x, y, w, glove.target}, sign, false, letter))
            pressed = what;
        x += w + glove.gap;
    };
    button("Check", done_sign(view.check_done), What::check);
    button(second, view.has_setting ? done_sign(view.setting_right) : std::nullopt, What::pin);
    button("Lift", view.plate.may_lift ? std::optional{figures::Sign::to_do} : std::nullopt, What::lift);
    button("Report", std::nullopt, What::report);
    return pressed;
}

} // namespace

namespace {

// Under MAY LIFT stands what the answer is for; the findings begin below it.
Box rows_box(const Sheet& sheet, const CabSheet& view)
{
    Box rows = places(sheet).rows;
    if (!view.under.empty()) {
        rows.y += under_mm;
        rows.h -= under_mm;
    }
    return rows;
}

} // namespace

std::size_t cab_rows(const Sheet& sheet, const CabSheet& view) { return rows_that_fit(rows_box(sheet, view)); }

std::optional<CabPressed> draw(Sheet& sheet, const CabSheet& view, std::size_t first)
{
    std::optional<CabPressed> pressed;
    const Places at = places(sheet);
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    if (!view.under.empty())
        draw_under(sheet, view, at.rows);
    if (const auto row = draw(sheet, view.rows, first, rows_box(sheet, view)))
        pressed =
            *row == view.rows.size() ? CabPressed{CabPressed::What::more} : CabPressed{CabPressed::What::row, *row};
    if (draw_picture(sheet, view, at.picture))
        pressed = CabPressed{CabPressed::What::different_pipe};
    draw(sheet, view.plate, at.plate); // over the picture where its verdict is long
    if (const auto what = draw_buttons(sheet, view, at.buttons))
        pressed = CabPressed{*what};
    draw(sheet, view.title);
    return pressed;
}

} // namespace cotter::ui
