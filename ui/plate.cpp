#include "plate.hpp"

#include "finding_words.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double button_w = 22, edge = 4.6, verdict_x = 26; // from the next column's targets a glove's gap

// As large as the row has room for; the rule and the figure stand where there is room left.
void draw_row(Sheet& sheet, const Row& row, const Box& box)
{
    if (row.sign)
        sheet.sign(*row.sign, box.x + 7.5, box.y + 8.6, 9.6);
    const double x = box.x + 15, w = box.w - 15 - button_w - edge - 2.4;
    const Letter head = row.sign ? Letter::bold : Letter::text;
    const double room = box.h - 4.2 - (row.figure ? row.figure->height : 0);
    const bool plain = sheet.height_of(head, row.headline, w) + sheet.height_of(Letter::second, row.detail, w) > room;
    const double used = sheet.wrapped({x, box.y + 3.2, w, 0}, {head, plain}, row.headline, 2);
    const Lettering second{Letter::second, plain};
    const std::string with_rule = row.rule.empty() ? row.detail : row.detail + " \u00b7 " + row.rule;
    const int most = row.figure || used > 6.5 ? 1 : 2;
    const bool fits = sheet.lines_of(second, with_rule, w) <= most;
    const double detail =
        sheet.wrapped({x, box.y + 3.6 + used, w, 0}, second, fits ? with_rule : row.detail, 2, colours().second);
    if (row.figure && used + detail + row.figure->height + 4 <= box.h)
        sheet.figure(*row.figure, x, box.y + 4 + used + detail);
    sheet.line(box.x, box.y + box.h, box.x + box.w, box.y + box.h, thin_mm, colours().rule);
}

} // namespace

double plate_width(const Sheet& sheet)
{
    double widest = sheet.width_of(Letter::verdict, "LOAD UP");
    for (const bool may : {false, true})
        widest = std::max(widest, sheet.width_of(Letter::verdict, std::string{words::verdict(may)}));
    return verdict_x + widest + 3;
}

void draw(Sheet& sheet, const Plate& plate, const Box& box)
{
    sheet.fill(box, colours().sheet);
    sheet.frame({box.x + 0.25, box.y + 0.25, box.w - 0.5, box.h - 0.5}, thick_mm);
    sheet.sign(plate.may_lift ? figures::Sign::in_order : figures::Sign::stop, box.x + 13, box.y + box.h / 2,
               plate.may_lift ? 17 : 20.5);
    const std::string verdict = plate.load_up ? "LOAD UP" : std::string{words::verdict(plate.may_lift)};
    sheet.text(box.x + verdict_x, box.y + 4.2, Letter::verdict, verdict);
    sheet.wrapped({box.x + verdict_x, box.y + 17.4, box.w - verdict_x - 2, 4}, {Letter::text, true}, plate.line, 1);
}

std::size_t rows_that_fit(const Box& box) { return static_cast<std::size_t>(box.h / row_mm); }

std::optional<std::size_t> draw(Sheet& sheet, const std::vector<Row>& rows, std::size_t first, const Box& box)
{
    std::optional<std::size_t> pressed;
    const std::size_t fit = rows_that_fit(box);
    const bool more = first > 0 || rows.size() > fit;
    const std::size_t shown = more && fit > 1 ? fit - 1 : fit;
    double y = box.y;
    for (std::size_t i = first; i < rows.size() && i < first + shown; ++i) {
        draw_row(sheet, rows[i], {box.x, y, box.w, row_mm});
        if (!rows[i].button.empty() &&
            sheet.button(rows[i].button, {box.x + box.w - button_w - edge, y + 3, button_w, glove.target},
                         rows[i].sign ? std::optional{figures::Sign::to_do} : std::nullopt))
            pressed = i;
        y += row_mm;
    }
    if (more) {
        const std::size_t left = rows.size() > first + shown ? rows.size() - first - shown : 0;
        const std::string words = left > 0 ? say_many(left, "{} more below", "{} more below") : "Back to the first";
        if (sheet.button(words, {box.x + 15, y + 3, box.w - 15 - edge, glove.target}))
            pressed = rows.size();
    }
    return pressed;
}

} // namespace cotter::ui
