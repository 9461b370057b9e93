#include "choice.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double margin = 6, option_mm = 24;

struct Grid {
    std::size_t columns, rows;
    double w, h, gap;
    Box cell(std::size_t i, double top, double left) const
    {
        return {left + static_cast<double>(i % columns) * (w + gap), top + static_cast<double>(i / columns) * (h + gap),
                w, h};
    }
};

Grid grid_for(const Choice& choice, double width, double top, double bottom)
{
    Grid grid{1, 1, 0, option_mm, choice.apart ? glove.opposite_gap : glove.gap};
    grid.columns = width > 180 && choice.options.size() > 2 ? 3 : choice.options.size() > 1 ? 2 : 1;
    grid.w =
        (width - 2 * margin - grid.gap * static_cast<double>(grid.columns - 1)) / static_cast<double>(grid.columns);
    grid.rows = std::max<std::size_t>(1, static_cast<std::size_t>((bottom - top + grid.gap) / (grid.h + grid.gap)));
    return grid;
}

// Words and what more there is to say, as large as both have room for.
bool draw_option(Sheet& sheet, const Choice::Option& option, const Box& box, Lettering alone)
{
    if (option.hold)
        return sheet.hold(option.words, box, option.sign);
    if (option.more.empty())
        return sheet.button(option.words, box, option.sign, option.chosen, alone);
    const bool pressed = sheet.target(option.words, box, option.chosen);
    if (option.sign)
        sheet.sign(*option.sign, box.x + box.w - 5, box.y + 5, 6);
    const double words_w = box.w - (option.sign ? 12 : 6), w = box.w - 6, room = box.h - 5;
    const auto high = [&](bool plain) {
        return sheet.height_of({Letter::bold, plain}, option.words, words_w) +
               sheet.height_of({Letter::second, plain}, option.more, w);
    };
    const bool plain = high(false) > room;
    const double used = sheet.wrapped({box.x + 3, box.y + 4, words_w, 0}, {Letter::bold, plain}, option.words, 2);
    const int lines = high(true) > room && used > 6 ? 1 : 2;
    const Lettering more = sheet.that_fits({{Letter::second, plain}, {Letter::second, true}}, option.more, w, lines),
                    small = sheet.that_fits({more, {Letter::small, true}}, option.more, w, lines);
    sheet.wrapped({box.x + 3, box.y + 5 + used, w, 0}, small, option.more, small.letter == Letter::small ? 3 : lines,
                  colours().second);
    return pressed;
}

// Of the options that have nothing more to say: one size for all.
Lettering letter_of_words(const Sheet& sheet, const Choice& choice, const Grid& grid)
{
    std::vector<std::string> words;
    bool signs = false;
    for (const Choice::Option& each : choice.options)
        if (each.more.empty() && !each.words.empty() && !each.hold) {
            words.push_back(each.words);
            signs = signs || each.sign;
        }
    return sheet.common_letter(words, grid.w, grid.h, signs);
}

// Of all of them, or of so many that a head of four lines still stands over them.
double height_of_options(const Choice& choice, double width)
{
    const Grid grid = grid_for(choice, width, 0, option_mm);
    const std::size_t rows = (choice.options.size() + grid.columns - 1) / grid.columns;
    return static_cast<double>(std::min<std::size_t>(rows, 3)) * (option_mm + grid.gap) - (rows > 0 ? grid.gap : 0);
}

struct Head {
    Lettering question, hint;
    double question_h, hint_h;
};

// As large as leaves room for a row of options.
Head head_for(const Sheet& sheet, const Choice& choice, double width, double room)
{
    Head head{Letter::heading, Letter::text, 0, 0};
    for (const auto& [question, hint] : {std::pair{false, false}, std::pair{false, true}, std::pair{true, true}}) {
        head = {{Letter::heading, question}, {Letter::text, hint}, 0, 0};
        head.question_h = sheet.height_of(head.question, choice.question, width);
        head.hint_h = sheet.height_of(head.hint, choice.hint, width);
        if (head.question_h + head.hint_h <= room)
            break;
    }
    return head;
}

} // namespace

std::optional<std::size_t> draw(Sheet& sheet, const Choice& choice, std::size_t& page)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const double width = sheet.width() - choice.kept_right;
    const Box plate{0, 0, std::max(std::min(sheet.width(), 135.0), plate_width(sheet)), choice.plate ? plate_mm : 0};
    if (choice.plate)
        draw(sheet, *choice.plate, plate);
    const double bottom = sheet.height() - title_height(sheet) - glove.target - 2 * glove.gap, w = width - 2 * margin;
    const Head sizes = head_for(sheet, choice, w, bottom - plate.h - 16 - height_of_options(choice, width));
    const double head = sheet.wrapped({margin, plate.h + 8, w, 0}, sizes.question, choice.question, 4);
    const double hint = sheet.wrapped({margin, plate.h + 10 + head, w, 0}, sizes.hint, choice.hint, 8,
                                      choice.plate ? colours().ink : colours().second);
    const double top = plate.h + 16 + head + hint;
    const Grid grid = grid_for(choice, width, top, bottom);
    const std::size_t fit = grid.columns * grid.rows,
                      pages = (choice.options.size() + fit - 1) / std::max<std::size_t>(fit, 1);
    if (page >= std::max<std::size_t>(pages, 1))
        page = 0;
    const Lettering alone = letter_of_words(sheet, choice, grid);
    std::optional<std::size_t> pressed;
    for (std::size_t i = page * fit; i < choice.options.size() && i < (page + 1) * fit; ++i) {
        if (choice.options[i].words.empty())
            continue;
        ImGui::PushID(static_cast<int>(i));
        if (draw_option(sheet, choice.options[i], grid.cell(i - page * fit, top, margin), alone))
            pressed = i;
        ImGui::PopID();
    }
    const double y = sheet.height() - title_height(sheet) - glove.target - glove.gap;
    if (!choice.back.empty() && (sheet.button(choice.back, {margin, y, 34, glove.target}) || goes_back()))
        pressed = choice.options.size();
    if (!choice.beside_back.empty() && sheet.button(choice.beside_back, {margin + 34 + glove.gap, y, 34, glove.target}))
        pressed = choice.options.size() + 1;
    if (pages > 1 && sheet.button("More", {sheet.width() - margin - 34, y, 34, glove.target}))
        page = (page + 1) % pages;
    return pressed;
}

} // namespace cotter::ui
