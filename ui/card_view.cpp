#include "card_view.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double side = 4, buttons_mm = 25, after_line = 1.8, after_point = 2.6;

struct Letters {
    Lettering asks, if_not;
};

// Fills boxes from the top, one after the other; without a sheet to draw on it only measures.
class Columns {
public:
    Columns(const Sheet& measure, Sheet* draw_on, std::vector<Box> boxes, Letters letters)
        : measure_{measure}, sheet_{draw_on}, boxes_{std::move(boxes)}, letters_{letters}
    {
    }

    void title(const std::string& text)
    {
        make_room(15);
        const Box& at = boxes_[box_];
        if (sheet_)
            sheet_->line(at.x, at.y + down_, at.x + at.w, at.y + down_, thin_mm);
        down_ += 2;
        put(Letter::bold, text);
    }

    void line(const words::CardLine& line)
    {
        const std::string if_not = say("If not: {}", words::in_language(line.if_not));
        make_room(height_of(letters_.asks, line.ask) + height_of(letters_.if_not, if_not));
        put(letters_.asks, line.ask);
        put(letters_.if_not, if_not);
        down_ += after_line;
    }

    void gap() { down_ += after_point; }
    bool fits() const { return fits_; }

private:
    double height_of(Lettering letter, const std::string& text) const
    {
        return capital_mm(letter) * 1.72 * measure_.lines_of(letter, text, boxes_[box_].w);
    }

    void put(Lettering letter, const std::string& text)
    {
        constexpr int most = 12;
        const Box& at = boxes_[box_];
        if (sheet_)
            sheet_->wrapped({at.x, at.y + down_, at.w, 0}, letter, text, most,
                            letter.letter == letters_.if_not.letter ? colours().second : colours().ink);
        down_ += height_of(letter, text);
        fits_ = fits_ && down_ <= at.h + 0.1;
    }

    void make_room(double height)
    {
        if (down_ + height > boxes_[box_].h && box_ + 1 < boxes_.size()) {
            ++box_;
            down_ = 0;
        }
    }

    const Sheet& measure_;
    Sheet* sheet_;
    std::vector<Box> boxes_;
    Letters letters_;
    std::size_t box_ = 0;
    double down_ = 0;
    bool fits_ = true;
};

bool fill(Columns& columns, const std::vector<words::CardPoint>& points)
{
    for (const words::CardPoint& point : points) {
        columns.title(point.title);
        for (const words::CardLine& line : point.lines)
            columns.line(line);
        columns.gap();
    }
    return columns.fits();
}

// As large as fits: nothing of a card is left out.
Letters letters_for(const Sheet& sheet, const std::vector<words::CardPoint>& points, const std::vector<Box>& boxes)
{
    const Letters all[] = {{Letter::bold, Letter::text},
                           {{Letter::bold, true}, {Letter::text, true}},
                           {Letter::text, Letter::second},
                           {{Letter::text, true}, {Letter::second, true}},
                           {{Letter::text, true}, {Letter::small, true}},
                           {{Letter::second, true}, {Letter::small, true}}};
    for (const Letters each : all) {
        Columns measured{sheet, nullptr, boxes, each};
        if (fill(measured, points))
            return each;
    }
    return {{Letter::small, true}, {Letter::small, true}};
}

struct CardPlaces {
    Box plate, note, buttons;
    std::vector<Box> columns;
};

CardPlaces card_places(const Sheet& sheet)
{
    const double w = sheet.width(), bottom = sheet.height() - title_height(sheet), top = plate_mm + 3;
    if (sheet.is_narrow())
        return {{0, 0, w, plate_mm},
                {side, top, w - 2 * side, 14},
                {0, bottom - buttons_mm, w, buttons_mm},
                {{side, top + 15, w - 2 * side, bottom - buttons_mm - top - 16}}};
    const double left = w * 0.553;
    const double plate = std::max(left, plate_width(sheet));
    return {{0, 0, plate, plate_mm},
            {plate + side, 4, w - plate - 2 * side, 20},
            {left + 1.5, bottom - buttons_mm, w - left - 1.5, buttons_mm},
            {{side, top, left - 2 * side, bottom - top - 2},
             {left + side, top, w - left - 2 * side, bottom - buttons_mm - top - 2}}};
}

std::optional<std::size_t> draw_card_buttons(Sheet& sheet, const CardView& view, const Box& box)
{
    const bool has_back = !view.back.empty();
    const double back_w = has_back ? 24 + glove.gap : 0, gap = glove.opposite_gap;
    const auto count = static_cast<double>(std::max<std::size_t>(view.options.size(), 1));
    const double w = (box.w - 4 - back_w - (count - 1) * gap) / count, y = box.y + (box.h - glove.target) / 2;
    double x = box.x + 2;
    std::optional<std::size_t> pressed;
    for (std::size_t i = 0; i < view.options.size(); ++i) {
        if (sheet.button(view.options[i].words, {x, y, w, glove.target}, view.options[i].sign))
            pressed = i;
        x += w + (i + 1 < view.options.size() ? gap : glove.gap);
    }
    if (has_back && sheet.button(view.back, {x, y, 24, glove.target}))
        pressed = view.options.size();
    return pressed;
}

} // namespace

std::optional<std::size_t> draw(Sheet& sheet, const CardView& view)
{
    const CardPlaces at = card_places(sheet);
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    draw(sheet, view.plate, at.plate);
    const bool stops = view.plate.load_up && !view.plate.may_lift; // then it is what matters
    const Letter note = stops ? Letter::heading : Letter::bold;
    const bool plain = sheet.height_of(note, view.note, at.note.w) > at.note.h;
    sheet.wrapped({at.note.x, at.note.y, at.note.w, 0}, {note, plain}, view.note, 4);
    Columns columns{sheet, &sheet, at.columns, letters_for(sheet, view.points, at.columns)};
    fill(columns, view.points);
    return draw_card_buttons(sheet, view, at.buttons);
}

} // namespace cotter::ui
