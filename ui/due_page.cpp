#include "due_page.hpp"

#include "board_sign.hpp"
#include "place_words.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "due_calendar.hpp"
#include "finding_words.hpp"

#include <algorithm>
#include <set>

namespace cotter::ui {

namespace {

std::string not_drawn(int units, int stops)
{
    const std::string all = say_many(static_cast<std::size_t>(units), "{} more is not drawn", "{} more are not drawn");
    return stops > 0 ? all + "; " + say("may not lift: {}", stops) : all;
}

constexpr std::array<int, 5> zooms{4, 8, 12, 26, 52}; // weeks that the section shows
constexpr int calendar_weeks = 6;
constexpr double widest_mm = 24, gap_mm = 3; // a button's width

int column_of(const std::string& kind)
{
    return kind == "attachment" || kind == "headplate" ? 0 : kind == "sling" || kind == "hook" ? 1 : 2;
}

figures::DueMark mark_of(const desk::BoardRow& row, rules::Day today, bool narrow)
{
    const bool out = row.latest && *row.latest < today;
    std::string day = row.latest ? words::short_day(*row.latest) : narrow ? "?" : say("no date");
    if (row.latest && narrow)
        day = day.substr(day.find(' ') + 1);
    return {row.tag, out ? say("to {}", day) : day, column_of(row.kind), row.latest, sign_of(row)};
}

rules::Day monday_of(rules::Day day) { return day - date::days{date::weekday{day}.iso_encoding() - 1}; }

std::string when(const desk::BoardRow& row)
{
    if (!row.latest)
        return say("no date");
    const std::int64_t days = row.days_left.value_or(0);
    const auto count = static_cast<std::size_t>(std::abs(days));
    return words::long_day(*row.latest) + ", " +
           (days < 0    ? say_many(count, "{} day out of date", "{} days out of date")
            : days == 0 ? say("today is the last day")
                        : say_many(count, "in {} day", "in {} days"));
}

} // namespace

std::string DuePage::part_of(const desk::BoardRow& row, By by) const
{
    switch (by) {
    case By::everything: return "";
    case By::unit: return row.tag;
    case By::kind: return row.kind;
    case By::owner: return row.owner;
    case By::place: return row.place;
    }
    return "";
}

std::string DuePage::in_words(const std::string& part, By by) const
{
    return by == By::place ? place_in_words(outside_.book, part) : words::in_language(part);
}

void DuePage::look(bool narrow)
{
    const std::string of = looked_at(outside_) + (narrow ? " | " : " ") + std::to_string(static_cast<int>(by_)) +
                           only_ + std::to_string(fleet_.steps().done());
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const rules::Day today = outside_.hand("").day;
    rows_.clear();
    for (auto& row : fleet_.known_rows())
        if (!row.scrapped())
            rows_.push_back(std::move(row));
    lines_.clear();
    marks_.clear();
    stops_ = out_of_date_ = undated_ = 0;
    for (const auto& row : rows_) {
        if (part_of(row, by_) != only_ && by_ != By::everything)
            continue;
        stops_ += row.stopped() ? 1 : 0;
        out_of_date_ += row.latest && *row.latest < today ? 1 : 0;
        undated_ += row.latest ? 0 : 1;
        marks_.push_back(mark_of(row, today, narrow));
        lines_.push_back(
            {false, sign_of(row), row.label + " \u00b7 " + when(row),
             words::in_language(row.kind) + " \u00b7 " + row.owner + " \u00b7 " + in_words(row.place, By::place)});
    }
}

std::vector<std::string> DuePage::values() const
{
    std::set<std::string> all;
    for (const auto& row : rows_)
        all.insert(part_of(row, asked_by_));
    return {all.begin(), all.end()};
}

void DuePage::ask(Sheet& sheet)
{
    *asks_ == Asks::view ? ask_view(sheet) : ask_value(sheet);
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
}

void DuePage::ask_view(Sheet& sheet)
{
    const Choice choice{"How is it shown?",
                        "",
                        {{"By week", "a section through time", std::nullopt, view_ == View::section},
                         {"As a list", "the nearest first", std::nullopt, view_ == View::list},
                         {"As a calendar", "six weeks", std::nullopt, view_ == View::calendar},
                         {"Everything", "every unit of the book", std::nullopt, by_ == By::everything},
                         {"One unit", "by its tag", std::nullopt, by_ == By::unit},
                         {"One kind", "attachments, slings, machines", std::nullopt, by_ == By::kind},
                         {"One owner", "own, or a hire firm's", std::nullopt, by_ == By::owner},
                         {"One place", "here, in the yard, on the way", std::nullopt, by_ == By::place}},
                        false,
                        "Back"};
    const auto pressed = ui::draw(sheet, choice, turned_);
    if (!pressed)
        return;
    constexpr std::array views{View::section, View::list, View::calendar};
    if (*pressed < views.size()) {
        view_ = views[*pressed];
        weeks_on_ = 0;
        return asks_.reset();
    }
    if (*pressed == choice.options.size())
        return asks_.reset();
    asked_by_ = static_cast<By>(*pressed - views.size());
    if (asked_by_ != By::everything) {
        asks_ = Asks::value;
        return;
    }
    by_ = By::everything;
    only_.clear();
    asks_.reset();
}

void DuePage::ask_value(Sheet& sheet)
{
    const auto all = values();
    Choice choice{"Which one?", "", {}, false, "Back"};
    for (const std::string& each : all)
        choice.options.push_back({in_words(each, asked_by_), "", std::nullopt, asked_by_ == by_ && each == only_});
    const auto pressed = ui::draw(sheet, choice, turned_);
    if (!pressed)
        return;
    if (*pressed == all.size()) {
        asks_ = Asks::view;
        return;
    }
    by_ = asked_by_;
    only_ = all[*pressed];
    asks_.reset();
}

void DuePage::step(int by)
{
    if (view_ == View::calendar)
        weeks_on_ += by * calendar_weeks;
    else
        zoom_ =
            static_cast<std::size_t>(std::clamp(static_cast<int>(zoom_) + by, 0, static_cast<int>(zooms.size()) - 1));
}

// Heading and buttons beside each other where the glass is wide, else under each other. True: ahead.
bool DuePage::head(Sheet& sheet)
{
    std::vector<std::string> buttons{"View"};
    if (view_ == View::section)
        buttons.insert(buttons.end(), {"Nearer", "Further"});
    else if (view_ == View::calendar)
        buttons.insert(buttons.end(), {"Earlier", "Later"});
    if (fleet_.steps().is_stopped())
        buttons.emplace_back("Read on");
    else if (outside_.find)
        buttons.emplace_back("Find");
    buttons.emplace_back("Ahead");
    const bool narrow = sheet.is_narrow();
    const double h = at_desk().target, gap = std::max(gap_mm, at_desk().gap);
    const auto n = static_cast<double>(buttons.size());
    const double button_mm = narrow ? std::min(widest_mm, (sheet.width() - gap) / n - gap) : widest_mm;
    double x = narrow ? gap : sheet.width() - n * (button_mm + gap);
    const double y = narrow ? head_mm : 1.5, room = narrow ? sheet.width() - 8 : x - 8;
    const std::string what = by_ == By::everything ? say("What falls due when") : in_words(only_, by_);
    std::string count = (fleet_.steps().is_stopped() ? said_of(fleet_.steps()) + " \u00b7 " : std::string{}) +
                        say_many(lines_.size(), "{} unit", "{} units") + " \u00b7 " + say("may not lift: {}", stops_);
    if (const std::string since = fleet_.since(); !since.empty())
        count += " \u00b7 " + say("as of {}", since);
    if (view_ == View::calendar) // which shows neither
        count += " \u00b7 " + say("out of date: {}", out_of_date_) +
                 (undated_ > 0 ? " \u00b7 " + say("no date: {}", undated_) : "");
    sheet.wrapped({4, 2, room, 0},
                  sheet.that_fits({{Letter::bold, true}, {Letter::second, true}, {Letter::small, true}}, what, room, 1),
                  what, 1);
    const Lettering under = sheet.that_fits({{Letter::second, true}, {Letter::small, true}}, count, room, 1);
    sheet.wrapped({4, under.letter == Letter::small ? 7.2 : 8, room, 0}, under, count, 2, colours().second);
    bool ahead = false;
    const Lettering letter = sheet.common_letter(buttons, button_mm, h, false);
    for (const std::string& each : buttons) {
        if (sheet.button(each, {x, y, button_mm, h}, std::nullopt, false, letter)) {
            if (each == "View")
                asks_ = Asks::view;
            else if (each == "Ahead")
                ahead = true;
            else if (each == "Find")
                outside_.find();
            else if (each == "Read on")
                fleet_.steps().press(each);
            else
                step(each == "Nearer" || each == "Earlier" ? -1 : 1);
        }
        x += button_mm + gap;
    }
    return ahead;
}

TouchScroll* DuePage::scroll() { return view_ == View::list && !rows_.empty() ? &reading_.scroll() : nullptr; }

void DuePage::draw_view(Sheet& sheet, const Box& paper)
{
    const rules::Day today = outside_.hand("").day;
    if (rows_.empty())
        sheet.wrapped({14, paper.y + 12, sheet.width() - 20, 0}, Letter::text,
                      "No unit is in the book yet. Write one down first: Record, Papers and data; then take it in.", 4);
    else if (view_ == View::list)
        reading_.list(sheet, lines_, paper);
    else if (view_ == View::calendar)
        sheet.figure(figures::due_calendar(marks_, today, monday_of(today) + date::days{7 * weeks_on_}, calendar_weeks,
                                           paper.w, paper.h, words::short_day),
                     paper.x, paper.y);
    else
        sheet.figure(figures::due_section(
                         marks_, today, paper.w, paper.h,
                         {words::short_day, not_drawn, [](int more) { return say("{} more", more); }, zooms[zoom_]})
                         .figure,
                     paper.x, paper.y);
}

// A great fleet takes its time; what is known so far can be shown.
void DuePage::draw_reading(Sheet& sheet, const Box& paper)
{
    const std::string said = said_of(fleet_.steps());
    sheet.wrapped({14, paper.y + 12, sheet.width() - 20, 0}, Letter::text, said, 2);
    if (sheet.button("Stop reading", {14, paper.y + 30, 60, at_desk().target + 2}))
        fleet_.steps().stop();
}

void DuePage::draw(Sheet& sheet, double bottom)
{
    const bool all = fleet_.all_are_read();
    if (all)
        look(sheet.is_narrow());
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const double top = sheet.is_narrow() ? head_mm + at_desk().target + 2 : std::max(head_mm, at_desk().target + 3);
    const Box paper{0, top, sheet.width(), bottom - top};
    sheet.fill(paper, colours().sheet);
    sheet.frame(paper, thin_mm);
    all ? draw_view(sheet, paper) : draw_reading(sheet, paper);
}

} // namespace cotter::ui
