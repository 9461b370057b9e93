// Site: what is stopped now and why: units, the clock, and lifts that were made without an answer.

#include "site.hpp"

#include "amounts.hpp"
#include "clock.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"
#include "written.hpp"

namespace cotter::ui {

using records::Json;

namespace {

double line_height(const Sheet& sheet) { return sheet.is_narrow() ? 26 : 15; }

} // namespace

std::vector<Site::Line> Site::lines_of_units()
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    std::vector<Line> lines;
    for (const auto& row : rows())
        for (const auto& finding : row.findings)
            if (weight(finding.code) == rules::Weight::stop && !row.scrapped()) {
                const words::Sentence sentence = words::says(finding, {}, naming);
                lines.push_back({sentence.headline,
                                 sentence.detail + ". " + words::in_language(std::string{words::clears(finding.code)}),
                                 ""});
            }
    return lines;
}

std::vector<Site::Line> Site::lines_of_device() const
{
    std::vector<Line> lines;
    const auto& book = outside_.book;
    for (const auto& fact : book.facts("clock"))
        if (!book.state().sample && !desk::is_confirmed(book, fact, outside_.now()))
            lines.push_back({fact.doc.value("kind", "") == "jump" ? "The clock jumped" : "The clock went back",
                             "No lift until a supervisor has confirmed day and time", fact.key.key});
    if (const std::string notice = outside_.notice ? outside_.notice() : ""; !notice.empty())
        lines.push_back({notice, "It stops no lift. Put the stick in, or have another place named", "", false});
    for (const auto& fact : book.facts("without_answer"))
        lines.push_back({say("Lifted without an answer: {}", desk::label_of(book, fact.doc.value("machine", ""))),
                         fact.doc.value("why", "") + ", " + desk::shown_name(book, fact.doc.value("by", "")) + ", " +
                             words::long_day(desk::local_day(rules::Instant{fact.at},
                                                             desk::zone_of(book, desk::current_site(book)))),
                         ""});
    return lines;
}

void Site::draw_line(Sheet& sheet, const Line& line, double y)
{
    const bool has_button = !line.notice.empty();
    const double w = sheet.width() - (has_button ? 58 : 20);
    sheet.sign(line.stops ? figures::Sign::stop : figures::Sign::warning, 8, y + 5, 8);
    sheet.wrapped({16, y + 1, w, 0}, Letter::bold, line.headline, 1);
    sheet.wrapped({16, y + 7, w, 0}, Letter::second, line.detail, sheet.is_narrow() ? 3 : 1, colours().second);
    if (has_button && sheet.button("Confirm", {sheet.width() - 38, y + 1, 34, at_desk().target})) {
        notice_ = line.notice;
        go(Page::clock);
    }
}

void Site::stopped(Sheet& sheet)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const Box area{0, head_mm, sheet.width(), sheet.height() - head_mm - buttons_mm(sheet) - title_height(sheet)};
    std::vector<Line> lines = lines_of_device();
    for (Line& each : lines_of_units())
        lines.push_back(std::move(each));
    const double line_mm = line_height(sheet);
    touch_scroll(scroll_, sheet.theme(), area, sheet.theme().px(line_mm * static_cast<double>(lines.size()) - area.h));
    double y = area.y + 3 - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    for (const Line& each : lines) {
        if (y > area.y - line_mm && y < area.y + area.h)
            draw_line(sheet, each, y);
        y += line_mm;
    }
    if (lines.empty())
        sheet.wrapped({16, head_mm + 12, sheet.width() - 20, 0}, Letter::text, "Nothing is stopped now.", 1);
    sheet.fill({0, 0, sheet.width(), head_mm}, colours().ground);
    sheet.text(4, 3.8, Letter::heading, "Stopped now, and why");
    sheet.fill({0, area.y + area.h, sheet.width(), buttons_mm(sheet)}, colours().ground);
    buttons(sheet, Page::stopped);
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor()));
}

// The supervisor reads a clock that is right, a phone's, and compares.
void Site::clock(Sheet& sheet)
{
    const std::string zone = desk::zone_of(outside_.book, desk::current_site(outside_.book));
    const rules::Instant now = outside_.now();
    Choice choice{say("Is it {}, {}?", words::long_day(desk::local_day(now, zone)),
                      words::clock_time(desk::local_minutes(now, zone))),
                  "Compare with another clock. If it is not, set this device's clock first.",
                  {},
                  false,
                  "Back"};
    if (supervisor().empty())
        choice.hint = "No supervisor is named for today. Name one under People; then confirm.";
    else
        choice.options = {{"Yes, it is", desk::shown_name(outside_.book, supervisor()), figures::Sign::in_order}};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::stopped);
    outside_.signing.in(supervisor(), [this] {
        desk::write(outside_.book, {confirm_clock(outside_.hand(supervisor()), outside_.book, notice_)});
        go(Page::stopped);
    });
}

} // namespace cotter::ui
