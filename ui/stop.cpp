#include "stop.hpp"

#include "people.hpp"
#include "title_block.hpp"
#include "written.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <vector>

namespace cotter::ui {

namespace {

constexpr std::array<const char*, 5> reasons{"bent, cracked or broken", "it slipped or dropped", "pin, keeper or lock",
                                             "paper or plate is wrong", "something is not right"};

constexpr const char* visitor = "a visitor"; // no person of the book

// What hangs on a machine now comes first.
std::vector<std::string> coupled_first(const records::Book& book)
{
    std::set<std::string> coupled;
    for (const auto& fact : book.facts("coupling"))
        if (const std::string attachment = fact.doc.value("attachment", ""); !attachment.empty())
            coupled.insert({fact.key.key, attachment});
    auto units = book.keys("unit");
    std::stable_partition(units.begin(), units.end(), [&](const auto& each) { return coupled.contains(each); });
    return units;
}

} // namespace

void CallStop::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> CallStop::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
    return pressed;
}

bool CallStop::unit(Sheet& sheet)
{
    const auto chosen =
        units_.draw(sheet,
                    {"Stop which one?", "Anyone may call a stop.", [this] { return coupled_first(outside_.book); },
                     [this](const std::string& id) { return role_of(outside_.book, id); }},
                    title_block(outside_, "PLACE", ""));
    if (!chosen)
        return true;
    unit_ = *chosen;
    go(Page::why);
    return !unit_.empty();
}

void CallStop::why(Sheet& sheet)
{
    Choice choice{"What is it?", desk::label_of(outside_.book, unit_), {}, false, "Back"};
    for (const char* each : reasons)
        choice.options.push_back({each, "", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == reasons.size())
        return go(Page::unit);
    why_ = reasons[*pressed];
    go(Page::who);
}

void CallStop::who(Sheet& sheet)
{
    const auto people = outside_.book.facts("person");
    Choice choice{"Who says so?", "", {}, false, "Back"};
    for (const auto& each : people)
        choice.options.push_back(
            {desk::shown_name(outside_.book, each.key.key), each.doc.value("firm", ""), std::nullopt});
    choice.options.push_back({"Somebody else", "a visitor, or not in this book", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed > people.size())
        return go(Page::why);
    who_ = writer_ = *pressed < people.size() ? people[*pressed].key.key : visitor;
    go(*pressed < people.size() || people.empty() ? Page::how : Page::writer);
}

// What a visitor says is written down by somebody of the book.
void CallStop::writer(Sheet& sheet)
{
    const auto people = outside_.book.keys("person");
    const auto pressed = ask(sheet, choice_of_people(outside_.book, "Who writes it down?", people));
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::who);
    writer_ = people[*pressed];
    go(Page::how);
}

void CallStop::how(Sheet& sheet)
{
    const Choice choice{"How do you know?",
                        desk::label_of(outside_.book, unit_) + ": " + words::in_language(why_),
                        {{"Seen", "here, with own eyes", figures::Sign::stop},
                         {"By phone", "told from elsewhere", figures::Sign::stop}},
                        false,
                        "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == 2)
        return go(Page::who);
    desk::Hand hand = outside_.hand(writer_);
    hand.how = *pressed == 0 ? "seen" : "phone";
    hand.with_pin = false;
    records::Entry stop = call_a_stop(hand, unit_, why_);
    stop.who = who_;
    desk::write(outside_.book, {std::move(stop)});
    go(Page::called);
}

bool CallStop::called(Sheet& sheet)
{
    const Choice choice{say("{} is stopped", desk::label_of(outside_.book, unit_)),
                        "Nobody lifts with it until somebody entitled has lifted the stop.",
                        {{"Understood", "", figures::Sign::stop}},
                        false,
                        ""};
    return !ask(sheet, choice);
}

bool CallStop::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::unit: return unit(sheet);
    case Page::why: why(sheet); return true;
    case Page::who: who(sheet); return true;
    case Page::writer: writer(sheet); return true;
    case Page::how: how(sheet); return true;
    case Page::called: return called(sheet);
    }
    return false;
}

} // namespace cotter::ui
