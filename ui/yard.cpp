#include "yard.hpp"

#include "foot.hpp"

#include "amounts.hpp"
#include "board_sign.hpp"
#include "local_time.hpp"
#include "place_words.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

std::string where(const desk::BoardRow& row, const records::Book& book)
{
    const std::string place = place_in_words(book, row.place);
    return book.fact("site", row.place) ? say("at {}", place) : place;
}

std::string evidence(const desk::BoardRow& row)
{
    const std::string date = !row.latest ? say("no examination on record") : say("to {}", words::long_day(*row.latest));
    return date + ", " + say(row.evidence_here ? "copy here" : "no copy here");
}

std::string what(const desk::BoardRow& row)
{
    return (row.model.empty() ? "" : row.model + " \u00b7 ") + words::in_language(row.kind);
}

std::string setting_and_place(const desk::BoardRow& row, const records::Book& book)
{
    return (row.setting.empty() ? "" : say("set to {}", row.setting) + ", ") + where(row, book);
}

// From one line of a unit to the next, mm.
struct Steps {
    double bold = capital_mm(Letter::bold) * 1.7, second = capital_mm(Letter::second) * 1.7;
};

double height_of_line(const Sheet& sheet)
{
    const Steps step;
    return 3.2 + step.bold + (sheet.is_narrow() ? 4 : 2) * step.second;
}

// Beside each other where the glass is wide, under each other where it is not.
void draw_line(Sheet& sheet, const desk::BoardRow& row, const records::Book& book, double y)
{
    const Steps step;
    const bool narrow = sheet.is_narrow();
    const double right = narrow ? 14 : sheet.width() * 0.45, w = sheet.width() - right - 3,
                 left_w = narrow ? w : right - 16, foot = y + height_of_line(sheet);
    if (const auto sign = sign_of(row))
        sheet.sign(*sign, 7, y + 5.6, 7.5);
    double at = y + 2.4;
    const auto line = [&](double x, double wide, Letter letter, const std::string& text, bool is_second) {
        sheet.wrapped({x, at, wide, 0}, letter, text, 1, is_second ? colours().second : colours().ink);
        at += letter == Letter::bold ? step.bold : step.second;
    };
    line(14, left_w, Letter::bold, row.tag, false);
    line(14, left_w, Letter::second, what(row), true);
    line(14, left_w, Letter::second, row.owner, true);
    if (!narrow)
        at = y + 2.4;
    line(right, w, Letter::second, evidence(row), false);
    line(right, w, Letter::second, setting_and_place(row, book), true);
    sheet.line(0, foot, sheet.width(), foot, thin_mm, colours().rule);
}

} // namespace

// The first moment is enough for most fleets; a great one is worked out between frames.
void Yard::list(Sheet& sheet, const Box& area)
{
    constexpr double at_once = 300, a_frame = 2; // ms
    rows_.look();
    rows_.work(rows_.steps().done() == 0 ? at_once : a_frame);
    const double line_mm = height_of_line(sheet);
    touch_scroll(scroll_, sheet, area, sheet.theme().px(line_mm * static_cast<double>(rows_.steps().count()) - area.h));
    const double top = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    const auto first = static_cast<std::size_t>(std::max(0.0, (area.y - top) / line_mm));
    for (std::size_t i = first; i < rows_.steps().count(); ++i) {
        const double y = top + line_mm * static_cast<double>(i);
        if (y > area.y + area.h)
            break;
        draw_line(sheet, rows_.row(i), outside_.book, y);
    }
    if (rows_.steps().count() == 0)
        sheet.wrapped({14, area.y + 12, sheet.width() - 20, 0}, Letter::text,
                      "No unit is in the book yet. Write down a site and a unit first: Record, Papers and data.", 3);
}

std::string Yard::heading() const
{
    if (*rows_.steps().button())
        return said_of(rows_.steps());
    const std::string since = rows_.since();
    return since.empty() ? say("Units, papers, settings") : say("Units, papers, settings, as of {}", since);
}

// The page that was opened from here has the glass until it is left.
bool Yard::draw_page(Sheet& sheet)
{
    const auto draw = [&](auto& page) {
        if (!page)
            return false;
        if (!page->draw(sheet))
            page.reset();
        return true;
    };
    return draw(orders_) || draw(calls_) || draw(record_);
}

bool Yard::draw(Sheet& sheet)
{
    if (shows_today_) {
        shows_today_ = today_.draw(sheet);
        return true;
    }
    if (draw_page(sheet))
        return true;
    std::vector<std::string> buttons{"Orders", "Calls", "Examined", "Returned", "Record", "Find", "This day", "Leave"};
    if (const char* button = rows_.steps().button(); *button)
        buttons.insert(buttons.begin(), button);
    buttons = with_button(buttons, scroll_.button());
    const Box area = begin_page(sheet, heading(), buttons);
    sheet.clip(area);
    list(sheet, area);
    sheet.clip_no_more();
    const std::string pressed = draw_foot(sheet, buttons);
    if (pressed == "Find" && outside_.find)
        outside_.find();
    if (pressed == "Orders")
        orders_.emplace(outside_, rows_);
    if (pressed == "Calls")
        calls_.emplace(outside_);
    if (pressed == "Examined")
        record_.emplace(outside_, "examination_report");
    if (pressed == "Returned")
        record_.emplace(outside_, "returned");
    if (pressed == "Record")
        record_.emplace(outside_, "");
    rows_.steps().press(pressed);
    scroll_.press(pressed);
    shows_today_ = pressed == "This day";
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return pressed != "Leave";
}

} // namespace cotter::ui
