#include "call_page.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "calls.hpp"
#include "written.hpp"

#include <array>

namespace cotter::ui {

namespace {

constexpr std::array<const char*, 3> kinds{"swap", "breakdown", "collect"};
const std::vector<const char*> reasons_to_call{"does not fit the next pipe size", "examination falls due",
                                               "bent, cracked or broken",         "pin, keeper or headplate missing",
                                               "hydraulics leak or do not move",  "work is finished"};

} // namespace

CallPage::CallPage(const Outside& outside, bool may_type)
    : outside_{outside}, why_{outside, "Why?", reasons_to_call, may_type}
{
}

void CallPage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> CallPage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "CALLS", ""));
    return pressed;
}

void CallPage::unit(Sheet& sheet)
{
    std::vector<std::string> here;
    const std::string site = desk::current_site(outside_.book);
    for (const auto& each : outside_.book.facts("unit"))
        if (desk::doc(outside_.book, "whereabouts", each.key.key).value("at_site", "") == site)
            here.push_back(each.key.key);
    Choice choice{
        "Call the yard about which one?", here.empty() ? "No unit is here by the record." : "", {}, false, "Back"};
    for (const std::string& each : here)
        choice.options.push_back({desk::label_of(outside_.book, each),
                                  desk::doc(outside_.book, "unit", each).value("role", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == here.size())
        return go(Page::gone);
    unit_ = here[*pressed];
    go(Page::kind);
}

void CallPage::kind(Sheet& sheet)
{
    const auto pressed = ask(sheet, {"What is asked of the yard?",
                                     desk::label_of(outside_.book, unit_),
                                     {{"Swap", "another in its place", std::nullopt},
                                      {"Breakdown", "a fitter, or another in its place", std::nullopt},
                                      {"Collect", "it is done with", std::nullopt}},
                                     false,
                                     "Back"});
    if (!pressed)
        return;
    if (*pressed == kinds.size())
        return go(Page::unit);
    kind_ = kinds[*pressed];
    go(Page::why);
}

void CallPage::why(Sheet& sheet)
{
    const auto left = why_.draw(sheet, "");
    if (left != Phrases::Left::nothing)
        go(left == Phrases::Left::said ? Page::who : Page::kind);
}

void CallPage::who(Sheet& sheet)
{
    const auto people = outside_.book.keys("person");
    const Choice choice = choice_of_people(outside_.book, "Who says so?", people);
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::why);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] { write(person); });
}

void CallPage::write(const std::string& person)
{
    desk::write(outside_.book,
                {call_the_yard(outside_.hand(person), unit_, kind_, desk::current_site(outside_.book), why_.said())});
    go(Page::done);
}

bool CallPage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::unit: unit(sheet); break;
    case Page::kind: kind(sheet); break;
    case Page::why: why(sheet); break;
    case Page::who: who(sheet); break;
    case Page::done:
        if (ask(sheet, {"The call is written down",
                        "Ring the yard too until its device and this one have exchanged their records.",
                        {{"Understood", "", std::nullopt}},
                        false,
                        ""}))
            go(Page::gone);
        break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
