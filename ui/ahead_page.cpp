#include "ahead_page.hpp"

#include "clear_defect.hpp"

#include "amounts.hpp"
#include "day_plot.hpp"
#include "foot.hpp"
#include "title_block.hpp"

namespace cotter::ui {

using figures::Sign;

namespace {

constexpr int days_plotted = 14;

std::string days_old(int days)
{
    return days == 0   ? say("since today")
           : days == 1 ? say("since yesterday")
                       : say_many(static_cast<std::size_t>(days), "open for {} day", "open for {} days");
}

std::string in_days(int days)
{
    return days == 0   ? say("today")
           : days == 1 ? say("tomorrow")
                       : say_many(static_cast<std::size_t>(days), "in {} day", "in {} days");
}

} // namespace

void AheadPage::add_today(rules::Day today)
{
    const auto& book = outside_.book;
    lines_.push_back({true, {}, "Missing today", ""});
    const auto missing = desk::checks_missing(book, desk::current_site(book), outside_.now());
    for (const std::string& each : missing)
        lines_.push_back({false, Sign::to_do, say("{}: its check of this shift", each), "Go through it in the Cab"});
    if (missing.empty())
        lines_.push_back({false, {}, "None: all that hangs on a machine here is checked", ""});
    lines_.push_back({true, {}, "Defects open", ""});
    const auto open = desk::open_defects(book, today);
    open_.clear();
    for (const desk::OpenDefect& each : open) {
        open_.emplace_back(lines_.size(), each);
        lines_.push_back({false, Sign::warning, said_of(outside_, each),
                          say("{}. Who may clear it does, with what was done", days_old(each.days_old)), "Clear"});
    }
    if (open.empty())
        lines_.push_back({false, {}, "None", ""});
}

void AheadPage::add_changes(rules::Day today)
{
    const auto& book = outside_.book;
    const auto changes = desk::changes_ahead(book, desk::current_site(book), outside_.now(), today, 30);
    int from = 0;
    for (const int until : {7, 14, 30}) {
        lines_.push_back({true, {}, say("Within {} days", until), ""});
        bool any = false;
        for (const desk::Change& each : changes) {
            const auto days = static_cast<int>((each.day - today).count());
            if (days < from || days > until)
                continue;
            lines_.push_back({false,
                              {},
                              each.of + ": " + words::in_language(each.what),
                              words::long_day(each.day) + ", " + in_days(days)});
            any = true;
        }
        if (!any)
            lines_.push_back({false, {}, "Nothing", ""});
        from = until + 1;
    }
}

void AheadPage::look()
{
    const std::string of = looked_at(outside_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const rules::Day today = outside_.hand("").day;
    lines_.clear();
    add_today(today);
    add_changes(today);
    counts_ = desk::lifts_per_day(outside_.book, today, days_plotted);
}

bool AheadPage::plot(Sheet& sheet)
{
    const std::vector<std::string> buttons{"Back"};
    const Box area = begin_page(sheet, "Lifts done, stops as crosses", buttons);
    std::vector<figures::DayMark> marks;
    for (const desk::DayCount& each : counts_)
        marks.push_back({each.day, each.lifts, each.stops});
    sheet.figure(figures::day_plot(marks, area.w, area.h, words::short_day), area.x, area.y);
    return draw_foot(sheet, buttons) == "Back";
}

bool AheadPage::draw(Sheet& sheet)
{
    if (clears_) {
        if (!clears_->draw(sheet))
            clears_.reset();
        return true;
    }
    look();
    bool stays = true;
    if (shows_days_) {
        shows_days_ = !plot(sheet);
    } else {
        const auto pressed = reading_.draw(sheet, "Ahead", lines_, {"Back", "Per day"});
        shows_days_ = pressed.button == "Per day";
        stays = pressed.button != "Back";
        for (const auto& [line, defect] : open_)
            if (pressed.line == line)
                clears_.emplace(outside_, defect);
    }
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    return stays;
}

} // namespace cotter::ui
