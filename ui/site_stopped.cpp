// Site: what is stopped now and why: units, the clock, and lifts that were made without an answer.

#include "site.hpp"

#include "foot.hpp"

#include "amounts.hpp"
#include "clock.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"
#include "written.hpp"

namespace cotter::ui {

using records::Json;

// Each with what clears it, and the way there where it is in Site.
void Site::add_units()
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    for (const auto& row : rows())
        for (const auto& finding : row.findings)
            if (weight(finding.code) == rules::Weight::stop && !row.scrapped()) {
                const words::Sentence sentence = words::says(finding, {}, naming);
                const bool arrives = finding.code == rules::Code::unit_elsewhere,
                           is_defect = finding.code == rules::Code::check_stopped;
                stopped_.push_back(
                    {false, figures::Sign::stop, sentence.headline,
                     sentence.detail + ". " + words::in_language(std::string{words::clears(finding.code)}),
                     arrives     ? "Receive"
                     : is_defect ? "Defects"
                                 : ""});
            }
}

void Site::add_device()
{
    const auto& book = outside_.book;
    for (const auto& fact : book.facts("clock"))
        if (!book.state().sample && !desk::is_confirmed(book, fact, outside_.now())) {
            notices_[stopped_.size()] = fact.key.key;
            stopped_.push_back({false, figures::Sign::stop,
                                fact.doc.value("kind", "") == "jump" ? "The clock jumped" : "The clock went back",
                                "No lift until a supervisor has confirmed day and time", "Confirm"});
        }
    if (const std::string notice = outside_.notice ? outside_.notice() : ""; !notice.empty())
        stopped_.push_back(
            {false, figures::Sign::warning, notice, "It stops no lift. Put the stick in, or have another place named"});
    const std::string zone = desk::zone_of(book, desk::current_site(book));
    for (const auto& fact : book.facts("without_answer"))
        stopped_.push_back({false, figures::Sign::stop,
                            say("Lifted without an answer: {}", desk::label_of(book, fact.doc.value("machine", ""))),
                            fact.doc.value("why", "") + ", " + desk::shown_name(book, fact.doc.value("by", "")) + ", " +
                                words::long_day(desk::local_day(rules::Instant{fact.at}, zone))});
}

void Site::look_at_stopped()
{
    const std::string of = looked_at(outside_);
    if (of == stopped_of_)
        return;
    stopped_of_ = of;
    stopped_.clear();
    notices_.clear();
    add_device();
    add_units();
    if (stopped_.empty())
        stopped_.push_back({false, std::nullopt, "Nothing is stopped now", ""});
}

void Site::stopped(Sheet& sheet)
{
    look_at_stopped();
    const auto opened = reading_.list(sheet, stopped_, begin_page(sheet, "Stopped now, and why", all_buttons));
    if (opened && notices_.contains(*opened)) {
        notice_ = notices_.at(*opened);
        go(Page::clock);
    } else if (opened && stopped_[*opened].opens == "Receive") {
        receive_.emplace(outside_, true);
        go(Page::receive);
    } else if (opened) {
        ahead_.emplace(outside_);
        go(Page::ahead);
    } else
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
