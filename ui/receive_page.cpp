#include "receive_page.hpp"

#include "copy_page.hpp"
#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "calls.hpp"
#include "written.hpp"

namespace cotter::ui {

using desk::Condition;
using records::Json;

namespace {

const std::vector<const char*> reasons_to_refuse{"bent, cracked or broken",          "wrong unit, not what was ordered",
                                                 "no report and no copy with it",    "plate cannot be read",
                                                 "pin, keeper or headplate missing", "something is not right"};

} // namespace

ReceivePage::ReceivePage(const Outside& outside, bool may_type, std::string unit)
    : outside_{outside}, may_type_{may_type}, given_unit_{std::move(unit)}, units_{outside}
{
}

void ReceivePage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> ReceivePage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "RECEIVES", person_));
    return pressed;
}

std::string ReceivePage::label() const { return desk::label_of(outside_.book, arrival_.unit); }

void ReceivePage::who(Sheet& sheet)
{
    const auto people = who_may_write(outside_.book, "received");
    const Choice choice = choice_of_people(outside_.book, "Who takes it in?", people,
                                           "Nobody is admitted who may. The supervisor admits people in Site.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::gone);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        arrival_.site = desk::current_site(outside_.book);
        arrival_.unit = given_unit_;
        go(given_unit_.empty() ? Page::unit : Page::serial);
    });
}

void ReceivePage::unit(Sheet& sheet)
{
    const auto chosen =
        units_.draw(sheet,
                    {"What has come?",
                     "What is on its way here stands first. A new one is written down before: Record, Papers and data.",
                     [this] { return desk::units_to_receive(outside_.book, arrival_.site); },
                     [this](const std::string& id) {
                         return desk::was_sent_here(outside_.book, id, arrival_.site) ? say("on its way here")
                                                                                      : role_of(outside_.book, id);
                     }},
                    title_block(outside_, "RECEIVES", person_));
    if (!chosen)
        return;
    if (chosen->empty())
        return go(Page::who);
    arrival_ = desk::Arrival{.unit = *chosen, .site = arrival_.site};
    pad_ = {};
    report_.clear();
    go(Page::serial);
}

// Read before it is shown.
void ReceivePage::serial(Sheet& sheet)
{
    const auto pressed = pad_.draw(sheet, {"Which serial is on its plate?",
                                           "All of its digits, no letters. From the plate, not the label.",
                                           "",
                                           false,
                                           false,
                                           {"Back", "Cannot be read", "Go on"}});
    ui::draw(sheet, title_block(outside_, "RECEIVES", person_));
    if (!pressed)
        return;
    if (*pressed == 0)
        return go(given_unit_.empty() ? Page::unit : Page::who);
    arrival_.serial_seen = *pressed == 2 && desk::is_serial(outside_.book, arrival_.unit, pad_.typed);
    arrival_.serial_seen || *pressed == 1 ? ask_parts() : go(Page::other_serial);
}

void ReceivePage::other_serial(Sheet& sheet)
{
    const auto pressed = ask(sheet, {say("The plate says {}. That is not the serial of {}.", pad_.typed, label()),
                                     "It is another unit, or the digits were misread.",
                                     {{"Read it again", "", figures::Sign::to_do},
                                      {"It says so", "go on; it is not taken in as whole", std::nullopt}},
                                     false,
                                     "Another unit"});
    if (!pressed)
        return;
    if (*pressed == 0)
        pad_ = {};
    *pressed == 0 ? go(Page::serial) : *pressed == 1 ? ask_parts() : go(Page::unit);
}

void ReceivePage::ask_parts()
{
    parts_ = desk::listed_parts(outside_.book, arrival_.unit);
    arrival_.missing.clear();
    part_ = 0;
    go(parts_.empty() ? Page::evidence : Page::parts);
}

// To the part before, or to the plate.
void ReceivePage::step_back()
{
    if (part_ == 0)
        return go(Page::serial);
    --part_;
    go(Page::parts);
}

void ReceivePage::parts(Sheet& sheet)
{
    const auto pressed =
        ask(sheet, {say("Is it here: {}?", words::in_language(parts_[part_])),
                    say("{} \u00b7 {} of {}", label(), part_ + 1, parts_.size()),
                    {{"It is here", "", figures::Sign::in_order}, {"Missing", "", figures::Sign::warning}},
                    true,
                    "Back"});
    if (!pressed)
        return;
    if (*pressed == 2)
        return step_back();
    std::erase(arrival_.missing, parts_[part_]);
    if (*pressed == 1)
        arrival_.missing.push_back(parts_[part_]);
    go(++part_ == parts_.size() ? Page::evidence : Page::parts);
}

void ReceivePage::evidence(Sheet& sheet)
{
    const auto pressed =
        ask(sheet,
            {"Is its report or a copy with it, and does it name this serial?",
             say("{} \u00b7 serial {}", label(), desk::doc(outside_.book, "unit", arrival_.unit).value("serial", "?")),
             {{"Yes, seen", "", figures::Sign::in_order}, {"No", "", figures::Sign::warning}},
             true,
             "Back"});
    if (!pressed)
        return;
    if (*pressed == 2)
        return step_back();
    arrival_.evidence_seen = *pressed == 0;
    if (!arrival_.evidence_seen)
        return go(Page::condition);
    photo_.emplace(outside_, "Photo of the report: the whole page");
    go(Page::photo);
}

void ReceivePage::photo(Sheet& sheet)
{
    const auto left = photo_->draw(sheet, person_);
    if (left == PhotoPage::Left::kept)
        arrival_.photos = {photo_->name()};
    if (left == PhotoPage::Left::back)
        go(Page::evidence);
    else if (left != PhotoPage::Left::nothing)
        go(arrival_.photos.empty() || newest_report(outside_.book, arrival_.unit).empty() ? Page::condition
                                                                                          : Page::which_report);
}

// The photo is a copy of the report that the book has only where it is of that one; else it stays with the arrival.
void ReceivePage::is_it_that(Sheet& sheet)
{
    const std::string id = newest_report(outside_.book, arrival_.unit);
    const auto pressed = ask(sheet, which_report(outside_.book, id));
    if (!pressed)
        return;
    if (*pressed == 2)
        return go(Page::evidence);
    report_ = *pressed == 0 ? id : "";
    go(Page::condition);
}

// What was seen allows no better; everybody may make it worse.
void ReceivePage::condition(Sheet& sheet)
{
    const Condition best = best_condition(arrival_);
    std::vector<Condition> each;
    Choice choice{"How is it taken in?", label(), {}, true, "Back"};
    const auto add = [&](Condition condition, const char* words, const char* more, figures::Sign sign) {
        each.push_back(condition);
        choice.options.push_back({words, more, sign});
    };
    if (best == Condition::whole)
        add(Condition::whole, "Whole", "all is here", figures::Sign::in_order);
    if (best != Condition::not_to_be_used)
        add(Condition::in_part, "In part", "what is missing is noted", figures::Sign::warning);
    add(Condition::not_to_be_used, "Not to be used", "it stays, and is stopped", figures::Sign::stop);
    add(Condition::refused, "Refused", "it goes back on the wagon", figures::Sign::stop);
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == each.size())
        return go(Page::evidence);
    condition_ = each[*pressed];
    if (condition_ == Condition::whole || condition_ == Condition::in_part)
        return write();
    why_.emplace(outside_, "Why?", reasons_to_refuse, may_type_);
    go(Page::why);
}

void ReceivePage::why(Sheet& sheet)
{
    const auto left = why_->draw(sheet, person_);
    if (left == Phrases::Left::back)
        go(Page::condition);
    if (left != Phrases::Left::said)
        return;
    arrival_.why = why_->said();
    write();
}

void ReceivePage::write()
{
    const desk::Hand hand = outside_.hand(person_);
    std::vector<records::Entry> entries;
    if (!arrival_.photos.empty() && !report_.empty())
        entries.push_back(show_page(hand, "report", report_, arrival_.photos.front(), "seen at the gate", true));
    entries.push_back(receive(hand, outside_.book, arrival_, condition_));
    desk::write(outside_.book, std::move(entries));
    go(condition_ == Condition::whole ? Page::done : Page::swap);
}

void ReceivePage::swap(Sheet& sheet)
{
    const auto pressed =
        ask(sheet, {"Call the yard for a swap?",
                    label(),
                    {{"Call for a swap", "ring the yard too: this stays in this book", figures::Sign::to_do}},
                    false,
                    "No"});
    if (!pressed)
        return;
    if (*pressed == 0)
        desk::write(outside_.book, {call_the_yard(outside_.hand(person_), arrival_.unit, "swap", arrival_.site,
                                                  arrival_.why.empty() ? "came in part" : arrival_.why)});
    go(Page::done);
}

void ReceivePage::done(Sheet& sheet)
{
    const auto record = desk::doc(outside_.book, "whereabouts", arrival_.unit);
    const std::string now = condition_ == Condition::whole            ? say("{} is taken in whole", label())
                            : condition_ == Condition::in_part        ? say("{} is taken in, in part", label())
                            : condition_ == Condition::not_to_be_used ? say("{} is here, and stopped", label())
                                                                      : say("{} is refused", label());
    std::string hint;
    if (record.value("without_dispatch", false))
        hint = say("No dispatch to this site was on record; that is noted.") + " ";
    if (!arrival_.evidence_seen)
        hint += say("Its report is still to come: hired or lent gear needs it on site.");
    if (ask(sheet, {now, hint, {{"Understood", "", std::nullopt}}, false, ""}))
        go(Page::gone);
}

bool ReceivePage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::who: who(sheet); break;
    case Page::unit: unit(sheet); break;
    case Page::serial: serial(sheet); break;
    case Page::other_serial: other_serial(sheet); break;
    case Page::parts: parts(sheet); break;
    case Page::evidence: evidence(sheet); break;
    case Page::photo: photo(sheet); break;
    case Page::which_report: is_it_that(sheet); break;
    case Page::condition: condition(sheet); break;
    case Page::why: why(sheet); break;
    case Page::swap: swap(sheet); break;
    case Page::done: done(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
