#include "plate.hpp"

#include "finding_words.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double button_w = 22, edge = 4.6, verdict_x = 26; // from the next column's targets a glove's gap

// Sentence and reason in ink, whose rule it is after the reason or small under it, then the figure.
class RowDrawing {
public:
    RowDrawing(Sheet& sheet, const Row& row, const Box& box)
        : sheet_{sheet}, row_{row}, box_{box}, x_{box.x + 15}, w_{box.w - 15 - button_w - edge - 2.4}, y_{box.y + 3.2}
    {
        const double room = box.h - 4.2 - (row.figure ? row.figure->height : 0);
        plain_ = sheet.height_of(head(), row.headline, w_) + sheet.height_of(Letter::second, row.detail, w_) > room;
    }

    void draw()
    {
        if (row_.sign)
            sheet_.sign(*row_.sign, box_.x + 7.5, box_.y + 8.6, 9.6);
        y_ += sheet_.wrapped({x_, y_, w_, 0}, {head(), plain_}, row_.headline, 2) + 0.4;
        reason();
        if (row_.figure && y_ + row_.figure->height <= box_.y + box_.h)
            sheet_.figure(*row_.figure, x_, y_);
        sheet_.line(box_.x, box_.y + box_.h, box_.x + box_.w, box_.y + box_.h, thin_mm, colours().rule);
    }

private:
    Letter head() const { return row_.sign ? Letter::bold : Letter::text; }

    void reason()
    {
        const Lettering second{Letter::second, plain_}, small{Letter::small, true};
        const double wide = sheet_.width_of(second, row_.detail), gap = 2.4;
        const double high = sheet_.wrapped({x_, y_, w_, 0}, second, row_.detail, 2);
        if (row_.rule.empty())
            return void(y_ += high);
        const double after = row_.detail.empty() ? 0 : wide + gap;
        if (after + sheet_.width_of(second, row_.rule) <= w_)
            sheet_.text(x_ + after, y_, second, row_.rule, colours().second);
        else if (after + sheet_.width_of(small, row_.rule) <= w_)
            sheet_.text(x_ + after, y_ + 0.8, small, row_.rule, colours().second);
        else if (y_ + high + 3.4 + (row_.figure ? row_.figure->height : 0) <= box_.y + box_.h)
            return void(y_ += high + sheet_.wrapped({x_, y_ + high, w_, 0}, small, row_.rule, 1, colours().second));
        y_ += high;
    }

    Sheet& sheet_;
    const Row& row_;
    Box box_;
    double x_, w_, y_;
    bool plain_ = false;
};

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
        RowDrawing{sheet, rows[i], {box.x, y, box.w, row_mm}}.draw();
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
