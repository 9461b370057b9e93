#include "yard.hpp"

#include "foot.hpp"

#include "amounts.hpp"
#include "board_sign.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

std::string on_the_way(const std::string& place, const records::Book& book)
{
    const std::string heading = "on the way to ";
    return place.starts_with(heading) ? say("on the way to {}", desk::shown_name(book, place.substr(heading.size())))
                                      : place;
}

std::string where(const desk::BoardRow& row, const records::Book& book)
{
    return row.place.empty()              ? say("where is not known")
           : book.fact("site", row.place) ? say("at {}", desk::shown_name(book, row.place))
                                          : on_the_way(row.place, book);
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

double height_of_line(const Sheet& sheet) { return sheet.is_narrow() ? 28 : 19; }

// Beside each other where the glass is wide, under each other where it is not.
void draw_line(Sheet& sheet, const desk::BoardRow& row, const records::Book& book, double y)
{
    const bool narrow = sheet.is_narrow();
    const double half = narrow ? 14 : sheet.width() * 0.45, w = sheet.width() - half - 3, second = narrow ? 13.8 : 0;
    if (const auto sign = sign_of(row))
        sheet.sign(*sign, 7, y + 5.6, 7.5);
    sheet.wrapped({14, y + 2.4, narrow ? w : half - 16, 0}, Letter::bold, row.tag, 1);
    sheet.wrapped({14, y + 8.4, narrow ? w : half - 16, 0}, Letter::second, what(row), 1, colours().second);
    sheet.wrapped({14, y + (narrow ? 23 : 13.4), narrow ? w : half - 16, 0}, Letter::second, row.owner, 1,
                  colours().second);
    sheet.wrapped({half, y + 2.8 + (narrow ? 10.4 : 0), w, 0}, Letter::second, evidence(row), 1);
    sheet.wrapped({half, y + (narrow ? 4.3 + second : 8.4), w, 0}, Letter::second, setting_and_place(row, book), 1,
                  colours().second);
    sheet.line(0, y + height_of_line(sheet), sheet.width(), y + height_of_line(sheet), thin_mm, colours().rule);
}

} // namespace

// The first moment is enough for most fleets; a great one is worked out between frames.
void Yard::list(Sheet& sheet, const Box& area)
{
    constexpr double at_once = 300, a_frame = 2; // ms
    rows_.look();
    rows_.work(rows_.known() == 0 ? at_once : a_frame);
    const double line_mm = height_of_line(sheet);
    touch_scroll(scroll_, sheet.theme(), area, sheet.theme().px(line_mm * static_cast<double>(rows_.count()) - area.h));
    const double top = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    const auto first = static_cast<std::size_t>(std::max(0.0, (area.y - top) / line_mm));
    for (std::size_t i = first; i < rows_.count(); ++i) {
        const double y = top + line_mm * static_cast<double>(i);
        if (y > area.y + area.h)
            break;
        draw_line(sheet, rows_.row(i), outside_.book, y);
    }
    if (rows_.count() == 0)
        sheet.wrapped({14, area.y + 12, sheet.width() - 20, 0}, Letter::text,
                      "No unit is in the book yet. Write down a site and a unit first: Record, Papers and data.", 3);
}

std::string Yard::heading() const
{
    return rows_.is_working() ? say("Read: {} of {} units", rows_.known(), rows_.count())
                              : say("Units, papers, settings");
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
    std::vector<std::string> buttons{"Orders", "Calls", "Examined", "Returned", "Record", "This day", "Leave"};
    if (rows_.is_working())
        buttons.insert(buttons.begin(), "Stop reading");
    const Box area = begin_page(sheet, heading(), buttons);
    sheet.clip(area);
    list(sheet, area);
    sheet.clip_no_more();
    const std::string pressed = draw_foot(sheet, buttons);
    if (pressed == "Orders")
        orders_.emplace(outside_);
    if (pressed == "Calls")
        calls_.emplace(outside_);
    if (pressed == "Examined")
        record_.emplace(outside_, "examination_report");
    if (pressed == "Returned")
        record_.emplace(outside_, "returned");
    if (pressed == "Record")
        record_.emplace(outside_, "");
    if (pressed == "Stop reading")
        rows_.stop();
    shows_today_ = pressed == "This day";
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return pressed != "Leave";
}

} // namespace cotter::ui
