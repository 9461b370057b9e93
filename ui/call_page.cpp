#include "call_page.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "calls.hpp"
#include "written.hpp"

#include <array>
#include <utility>

namespace cotter::ui {

namespace {

constexpr std::array<const char*, 3> kinds{"swap", "breakdown", "collect"};
const std::vector<const char*> for_a_swap{"knocked or dropped: to be examined",
                                          "does not fit the next pipe size",
                                          "examination falls due",
                                          "bent, cracked or broken",
                                          "pin, keeper or headplate missing",
                                          "paper or plate is wrong"},
    for_a_breakdown{"knocked or dropped: to be examined",
                    "hydraulics leak or do not move",
                    "bent, cracked or broken",
                    "pin, keeper or lock",
                    "it slipped or dropped",
                    "something is not right"},
    for_collecting{"work is finished", "does not fit the next pipe size", "examination falls due"};

const std::vector<const char*>& reasons_for(const std::string& kind)
{
    return kind == "swap" ? for_a_swap : kind == "breakdown" ? for_a_breakdown : for_collecting;
}

} // namespace

CallPage::CallPage(const Outside& outside, bool may_type, std::string unit, std::string person)
    : outside_{outside}, page_{unit.empty() ? Page::unit : Page::kind}, unit_{std::move(unit)},
      person_{std::move(person)}, was_given_unit_{!unit_.empty()}, units_{outside}, may_type_{may_type}
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
    ui::draw(sheet, title_block(outside_, "CALLS", person_));
    return pressed;
}

void CallPage::unit(Sheet& sheet)
{
    const auto here = [this] {
        std::vector<std::string> ids = outside_.book.keys("unit");
        const std::string site = desk::current_site(outside_.book);
        std::erase_if(ids, [&](const std::string& each) {
            return desk::doc(outside_.book, "whereabouts", each).value("at_site", "") != site;
        });
        return ids;
    };
    const auto chosen = units_.draw(sheet,
                                    {"Call the yard about which one?", "Of those that are here by the record.", here,
                                     [this](const std::string& id) { return role_of(outside_.book, id); }},
                                    title_block(outside_, "CALLS", person_));
    if (!chosen)
        return;
    unit_ = *chosen;
    go(unit_.empty() ? Page::gone : Page::kind);
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
        return go(was_given_unit_ ? Page::gone : Page::unit);
    kind_ = kinds[*pressed];
    why_.emplace(outside_, "Why?", reasons_for(kind_), may_type_);
    go(Page::why);
}

void CallPage::why(Sheet& sheet)
{
    const auto left = why_->draw(sheet, person_);
    if (left == Phrases::Left::back)
        go(Page::kind);
    if (left != Phrases::Left::said)
        return;
    if (person_.empty())
        return go(Page::who);
    outside_.signing.once(person_, [this] { write(person_); });
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
                {call_the_yard(outside_.hand(person), unit_, kind_, desk::current_site(outside_.book), why_->said())});
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
                        "Ring the yard too: the call stands in this book, and goes no further by itself.",
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
