#include "first_steps.hpp"

#include "entitled.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

bool any_unit(const Book& book, const char* role)
{
    const auto units = book.facts("unit");
    return std::any_of(units.begin(), units.end(),
                       [&](const records::Fact& unit) { return unit.doc.value("role", "") == role; });
}

// An operator who knows the models of a machine and of what hangs on it, as far as they have one.
bool any_operator_of_a_rig(const Book& book)
{
    const auto people = book.facts("person"), rigs = book.facts("coupling");
    const auto knows = [&](const records::Fact& person, const std::string& unit) {
        const std::string model = doc(book, "unit", unit).value("model", "");
        const Json known = person.doc.value("admission", Json::object()).value("models", Json::array());
        return model.empty() || std::find(known.begin(), known.end(), model) != known.end();
    };
    return std::any_of(people.begin(), people.end(), [&](const records::Fact& person) {
        return has_role(book, person.key.key, "operator") &&
               std::any_of(rigs.begin(), rigs.end(), [&](const records::Fact& rig) {
                   return knows(person, rig.key.key) && knows(person, rig.doc.value("attachment", ""));
               });
    });
}

bool any_coupled(const Book& book)
{
    const auto all = book.facts("coupling");
    return std::any_of(all.begin(), all.end(),
                       [](const records::Fact& each) { return !each.doc.value("attachment", "").empty(); });
}

Json item(const char* id, const char* text, const char* if_not, Json staled_by = Json::array())
{
    Json it{{"id", id}, {"text", text}, {"if_not", if_not}};
    if (!staled_by.empty())
        it["staled_by"] = std::move(staled_by);
    return it;
}

} // namespace

std::vector<FirstStep> first_steps(const Book& book)
{
    using Kind = FirstStep::Kind;
    return {{Kind::admit, !who_may_admit(book).empty() && !book.keys("site").empty()},
            {Kind::sheets, !book.keys("check_sheet").empty()},
            {Kind::machine, any_unit(book, "machine")},
            {Kind::attachment, any_unit(book, "attachment")},
            {Kind::couple, any_coupled(book)},
            {Kind::operator_, any_operator_of_a_rig(book)}};
}

bool is_begun(const Book& book)
{
    if (!book.keys("shift").empty())
        return true;
    const auto steps = first_steps(book);
    return std::all_of(steps.begin(), steps.end(), [](const FirstStep& each) { return each.done; });
}

std::vector<Entry> sheets_to_begin_with(const Hand& hand)
{
    return {entry(hand, "check_sheet", "general-attachment",
                  {{"name", "Attachment, to begin with"},
                   {"edition", 1},
                   {"role", "attachment"},
                   {"items",
                    {item("plate", "Plate is there and can be read", "Leave it down. Ask the yard for its plate."),
                     item("structure", "No crack, no bend, no damaged weld", "Leave it down and call a stop."),
                     item("pins", "Pins, bolts and keepers are there and tight", "Leave it down until they are.",
                          {"setting", "coupling"}),
                     item("faces", "Gripping faces are whole and clean", "Clean them; worn ones are renewed first."),
                     item("hydraulics", "Hoses and couplings do not leak or chafe", "Leave it down. Call the fitter.",
                          {"coupling"})}}}),
            entry(hand, "check_sheet", "general-machine",
                  {{"name", "Machine, to begin with"},
                   {"edition", 1},
                   {"role", "machine"},
                   {"items",
                    {item("walk", "Walked round it: nothing leaks, hangs loose or is cracked",
                          "Do not start. Call the fitter."),
                     item("controls", "Controls, slew lock and horn work", "Do not work with it. Call the fitter."),
                     item("view", "Windows, mirrors and cameras are clean and whole",
                          "Clean them, or have them mended first."),
                     item("chart", "The lift chart is in the cab and can be read", "Lift nothing until it is there."),
                     item("tracks", "Tracks and undercarriage are sound", "Do not work with it. Call the fitter.")}}})};
}

} // namespace cotter::desk
