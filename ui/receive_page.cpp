#include "receive_page.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "calls.hpp"
#include "written.hpp"

namespace cotter::ui {

using desk::Condition;
using records::Json;

namespace {

const std::vector<const char*> reasons_to_refuse{"bent, cracked or broken",          "wrong unit, not what was ordered",
                                                 "no report and no copy with it",    "plate cannot be read",
                                                 "pin, keeper or headplate missing", "something is not right"};

// Its newest report, whose copy a photo of it is.
std::string report_of(const records::Book& book, const std::string& unit)
{
    std::string newest, id;
    for (const auto& report : book.facts_about("report", unit))
        if (const std::string day = report.doc.value("examined", ""); day >= newest) {
            newest = day;
            id = report.key.key;
        }
    return id;
}

} // namespace

ReceivePage::ReceivePage(const Outside& outside, bool may_type) : outside_{outside}, may_type_{may_type} {}

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
        go(Page::unit);
    });
}

void ReceivePage::unit(Sheet& sheet)
{
    const auto units = desk::units_to_receive(outside_.book, arrival_.site);
    Choice choice{"What has come?", "What is on its way here stands first.", {}, false, "Back"};
    if (units.empty())
        choice.hint =
            "Every unit of the book is here already. A new one is written down first: Record, Papers and data.";
    for (const std::string& each : units)
        choice.options.push_back({desk::label_of(outside_.book, each),
                                  desk::was_sent_here(outside_.book, each, arrival_.site)
                                      ? say("on its way here")
                                      : words::in_language(desk::doc(outside_.book, "unit", each).value("role", "")),
                                  std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == units.size())
        return go(Page::who);
    arrival_ = desk::Arrival{.unit = units[*pressed], .site = arrival_.site};
    pad_ = {};
    go(Page::serial);
}

// Read before it is shown.
void ReceivePage::serial(Sheet& sheet)
{
    const auto pressed = pad_.draw(sheet, {"Which serial is on its plate?",
                                           "Type its digits only. The plate, not the label.",
                                           "",
                                           false,
                                           false,
                                           {"Back", "Cannot be read", "Go on"}});
    ui::draw(sheet, title_block(outside_, "RECEIVES", person_));
    if (!pressed)
        return;
    if (*pressed == 0)
        return go(Page::unit);
    arrival_.serial_seen = *pressed == 2 && desk::is_serial(outside_.book, arrival_.unit, pad_.typed);
    arrival_.serial_seen || *pressed == 1 ? ask_parts() : go(Page::other_serial);
}

void ReceivePage::other_serial(Sheet& sheet)
{
    const std::string serial = desk::doc(outside_.book, "unit", arrival_.unit).value("serial", "?");
    const auto pressed = ask(sheet, {say("The plate says {}. {} has serial {}.", pad_.typed, label(), serial),
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
        return go(Page::unit);
    if (*pressed == 1)
        arrival_.missing.push_back(parts_[part_]);
    turned_ = 0;
    if (++part_ == parts_.size())
        go(Page::evidence);
}

void ReceivePage::evidence(Sheet& sheet)
{
    const auto pressed = ask(sheet, {"Is its report or a copy with it, and does it name this serial?",
                                     label(),
                                     {{"Yes, seen", "", figures::Sign::in_order}, {"No", "", figures::Sign::warning}},
                                     true,
                                     "Back"});
    if (!pressed)
        return;
    if (*pressed == 2)
        return go(Page::unit);
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
    if (left != PhotoPage::Left::nothing)
        go(Page::condition);
}

// What was seen allows no better; everybody may make it worse.
void ReceivePage::condition(Sheet& sheet)
{
    const Condition best = best_condition(arrival_);
    std::vector<Condition> each;
    Choice choice{"How is it taken in?", label(), {}, false, "Back"};
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
        return go(Page::unit);
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
    const std::string report = report_of(outside_.book, arrival_.unit);
    if (!arrival_.photos.empty() && !report.empty())
        entries.push_back(show_page(hand, "report", report, arrival_.photos.front(), "seen at the gate", true));
    entries.push_back(receive(hand, outside_.book, arrival_, condition_));
    desk::write(outside_.book, std::move(entries));
    go(condition_ == Condition::whole ? Page::done : Page::swap);
}

void ReceivePage::swap(Sheet& sheet)
{
    const auto pressed = ask(sheet, {"Call the yard for a swap?",
                                     label(),
                                     {{"Call for a swap", "the yard sees it among its calls", figures::Sign::to_do}},
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
    case Page::condition: condition(sheet); break;
    case Page::why: why(sheet); break;
    case Page::swap: swap(sheet); break;
    case Page::done: done(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
