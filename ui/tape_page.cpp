#include "tape_page.hpp"

#include "field.hpp"
#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "number_text.hpp"
#include "tape.hpp"
#include "work.hpp"
#include "written.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;
using rules::Millimetres;

namespace {

enum Reading { girth, socket_girth, bore, wall, overall, socket_length };

struct Asked {
    const char *question, *hint;
    std::int64_t least, greatest; // mm
    bool may_be_none;
};
constexpr std::array<Asked, 6> asked{
    {{"Round the barrel", "Tape tight and square round the barrel, clear of the socket.", 150, 12'000, false},
     {"Round the socket", "Where it is widest. None: it has no socket.", 150, 14'000, true},
     {"Bore", "Inside, across the middle, at the spigot end.", 50, 4'000, false},
     {"Wall", "At the spigot end.", 10, 1'000, false},
     {"Overall length", "From end to end, along the top.", 300, 12'000, false},
     {"Socket length", "From its end to where the barrel begins. None: it has no socket.", 10, 2'000, true}}};

Millimetres mm(const std::optional<std::int64_t>& value) { return Millimetres{value.value_or(0)}; }

} // namespace

void TapePage::go(Page page)
{
    page_ = page;
    turned_ = 0;
    if (page == Page::reading) {
        at_ = 0;
        pad_ = {};
        refused_ = false;
    }
}

std::optional<std::size_t> TapePage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "READS", is_second_ ? second_ : person_));
    return pressed;
}

void TapePage::who(Sheet& sheet)
{
    const auto people = who_may_write(outside_.book, "pipe");
    const Choice choice = choice_of_people(outside_.book, "Who holds the tape?", people,
                                           "Nobody is admitted who may. People admits them.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::gone);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        go(Page::name);
    });
}

void TapePage::name(Sheet& sheet)
{
    const auto pressed =
        ask(sheet, {"What do you call this pipe?", "Maker and size as far as they are known.", {}, false, "Back"});
    const bool enter = field(sheet, "pipe name", {6, 36, std::min(sheet.width() - 12, 160.0), 12}, name_);
    const bool on = !name_.empty() && (sheet.button("Go on", {6, 54, 60, glove.target}, std::nullopt) || enter);
    if (pressed)
        return go(Page::who);
    if (on)
        go(Page::reading);
}

void TapePage::reading(Sheet& sheet)
{
    const Asked& it = asked[at_];
    const std::string range = say("{} to {} mm", it.least, it.greatest);
    std::vector<std::string> ways{"Back"};
    if (it.may_be_none)
        ways.emplace_back("None");
    ways.emplace_back("Next");
    const auto pressed = pad_.draw(
        sheet, {it.question, refused_ ? say("Accepted is {}", range) : std::string{it.hint}, "mm", false, false, ways});
    ui::draw(sheet, title_block(outside_, "READS", is_second_ ? second_ : person_));
    if (!pressed)
        return;
    if (*pressed == 0)
        return step_back();
    Readings& into = is_second_ ? again_ : first_;
    const auto typed = desk::whole(pad_.typed, 0, desk::Rounding::none);
    if (*pressed + 1 < ways.size())
        into[at_] = std::nullopt;
    else if (typed && it.least <= *typed && *typed <= it.greatest)
        into[at_] = *typed;
    else {
        refused_ = true;
        return;
    }
    next();
}

// To the reading before; from the first to the name, or for the second person to what is left as it is.
void TapePage::step_back()
{
    refused_ = false;
    pad_ = {};
    if (at_ == 0)
        return go(is_second_ ? Page::done : Page::name);
    --at_;
    if (const auto& was = (is_second_ ? again_ : first_)[at_])
        pad_ = {true, std::to_string(*was)};
}

void TapePage::next()
{
    pad_ = {};
    refused_ = false;
    if (++at_ < asked.size())
        return;
    is_second_ ? compare_readings() : go(Page::sum);
}

// A slip of the tape shows where bore and walls do not make the barrel.
std::string TapePage::why_not() const
{
    const Millimetres barrel = rules::across(mm(first_[girth]));
    const Millimetres made{*first_[bore] + 2 * *first_[wall]};
    if (!rules::agree(barrel, made))
        return say("Bore and two walls make {} mm, round about makes {} mm. Measure again.", made.count(),
                   barrel.count());
    if (first_[socket_girth].has_value() != first_[socket_length].has_value())
        return say("A socket has a girth and a length, or there is none. Measure again.");
    if (first_[socket_girth] && rules::across(mm(first_[socket_girth])) <= barrel)
        return say("The socket is no wider than the barrel. Measure again.");
    return "";
}

void TapePage::sum(Sheet& sheet)
{
    const std::string wrong = why_not();
    const std::string sizes =
        say("Barrel \u00d8 {} mm, from {} mm round. Bore {} mm, wall {} mm, overall {} mm.",
            rules::across(mm(first_[girth])).count(), *first_[girth], *first_[bore], *first_[wall], *first_[overall]);
    const std::string socket = first_[socket_girth] ? " " + say("Socket \u00d8 {} mm, {} mm long.",
                                                                rules::across(mm(first_[socket_girth])).count(),
                                                                first_[socket_length].value_or(0))
                                                    : " " + say("No socket.");
    Choice choice{name_, wrong.empty() ? sizes + socket : wrong, {}, false, "Back"};
    choice.options.push_back({"Measure again", "", std::nullopt});
    if (wrong.empty())
        choice.options.push_back({"Sign it", "a second person then reads it too", figures::Sign::to_do});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size()) {
        go(Page::reading);
        at_ = asked.size();
        return step_back();
    }
    *pressed == 0 ? go(Page::reading) : write();
}

Json TapePage::body() const
{
    Json body{{"name", name_},
              {"shape", "straight"},
              {"material", "concrete"},
              {"bore_mm", *first_[bore]},
              {"barrel_mm", rules::across(mm(first_[girth])).count()},
              {"socket_mm", first_[socket_girth] ? rules::across(mm(first_[socket_girth])).count() : 0},
              {"overall_mm", *first_[overall]},
              {"tape", {{"barrel_round_mm", *first_[girth]}}}};
    if (first_[socket_length])
        body["socket_length_mm"] = *first_[socket_length];
    if (first_[socket_girth])
        body["tape"]["socket_round_mm"] = *first_[socket_girth];
    return body;
}

void TapePage::write()
{
    pipe_ = "pipe-" + std::to_string(outside_.now().count());
    desk::write(outside_.book, {desk::entry(outside_.hand(person_), "pipe", pipe_, body())});
    go(Page::second);
}

// By somebody else, without seeing what the first has read.
void TapePage::second(Sheet& sheet)
{
    auto people = who_may_write(outside_.book, "compared");
    std::erase(people, person_);
    Choice choice = choice_of_people(outside_.book, "Who reads it a second time?", people);
    choice.hint = "With the tape, at the pipe, without looking at the first reading.";
    choice.back = "Later";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::done);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        second_ = person;
        is_second_ = true;
        go(Page::reading);
    });
}

void TapePage::compare_readings()
{
    differs_.clear();
    for (std::size_t i = 0; i < asked.size(); ++i) {
        const bool round = i == girth || i == socket_girth;
        const bool both = first_[i].has_value() == again_[i].has_value();
        const auto size = [&](const Readings& of) { return round ? rules::across(mm(of[i])) : mm(of[i]); };
        if (!both || !rules::agree(size(first_), size(again_)))
            differs_ += (differs_.empty() ? "" : ", ") + words::in_language(asked[i].question);
    }
    if (!differs_.empty())
        return go(Page::differ);
    desk::write(outside_.book, {desk::compare(outside_.hand(second_), "pipe", pipe_)});
    go(Page::done);
}

void TapePage::differ(Sheet& sheet)
{
    const auto pressed = ask(
        sheet, {say("The two readings differ: {}", differs_),
                say("By more than {} mm. It stays unproved, and no lift rests on it.", rules::tape_tolerance.count()),
                {{"Read it again", desk::shown_name(outside_.book, second_), std::nullopt}},
                false,
                "Leave it"});
    if (pressed)
        go(*pressed == 0 ? Page::reading : Page::done);
}

void TapePage::done(Sheet& sheet)
{
    const bool proved = !desk::doc(outside_.book, "pipe", pipe_).value("compared", Json::array()).empty();
    if (ask(sheet,
            {proved ? say("{} is read by two, and counts", name_) : say("{} waits for a second reading", name_),
             proved ? "Its mass is worked out from its sizes." : "Compare shows it until somebody else has read it.",
             {{"Understood", "", std::nullopt}},
             false,
             ""}))
        go(Page::gone);
}

bool TapePage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::who: who(sheet); break;
    case Page::name: name(sheet); break;
    case Page::reading: reading(sheet); break;
    case Page::sum: sum(sheet); break;
    case Page::second: second(sheet); break;
    case Page::differ: differ(sheet); break;
    case Page::done: done(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
