#include "cell.hpp"

#include "csv_out.hpp"
#include "day.hpp"
#include "number_text.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace cotter::desk {

using records::FormError;

namespace {

using Texts = std::vector<std::string>;

std::string trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t"), last = text.find_last_not_of(" \t");
    return first == std::string_view::npos ? "" : std::string{text.substr(first, last - first + 1)};
}

[[noreturn]] void refuse(const std::string& text, const std::string& accepted)
{
    throw FormError{records::shown(text) + " is not accepted; " + accepted + " is"};
}

Texts parted(const std::string& text, const char* separators)
{
    Texts items;
    for (std::size_t from = 0; from <= text.size();) {
        const auto to = std::min(text.find_first_of(separators, from), text.size());
        if (std::string item = trimmed(std::string_view{text}.substr(from, to - from)); !item.empty())
            items.push_back(std::move(item));
        from = to + 1;
    }
    return items;
}

// Where one of them is not plain, or would be read as "none", they stand a line each.
std::string joined(const Texts& items)
{
    const bool plainly = items != Texts{"none"} && std::all_of(items.begin(), items.end(), [](const std::string& each) {
                             return each.find_first_of(";,\n") == std::string::npos;
                         });
    std::string text;
    for (const std::string& each : items)
        text += (text.empty() || !plainly ? "" : "; ") + each + (plainly ? "" : "\n");
    return text;
}

// What people and things are also called.
std::string meant_by(const std::string& said)
{
    static const std::map<std::string, std::string> meant{
        {"plantoperator", "operator"},    {"liftingsupervisor", "supervisor"},
        {"slinger", "signaller"},         {"slingersignaller", "signaller"},
        {"sitemanager", "manager"},       {"appointedperson", "appointed"},
        {"competentperson", "competent"}, {"excavator", "machine"},
        {"quickhitch", "hitch"}};
    const auto found = meant.find(said);
    return found == meant.end() ? said : found->second;
}

Json choice_of(const Column& column, const std::string& text)
{
    const std::string said = normal(meant_by(normal(text)));
    for (const std::string& each : column.choices)
        if (normal(each) == said)
            return each;
    refuse(text, one_of(column.choices));
}

Json list_of(const Column& column, const std::string& text)
{
    Json list = Json::array();
    if (text == "none")
        return list;
    const bool lines = column.holds == Holds::steps || text.find('\n') != std::string::npos;
    for (const std::string& item : parted(text, lines ? "\r\n" : ";,"))
        list.push_back(column.choices.empty() ? Json(item) : choice_of(column, item));
    return list;
}

Json yes_or_no(const std::string& text)
{
    const std::string said = normal(text);
    if (said == "yes" || said == "y" || said == "true")
        return true;
    if (said == "no" || said == "n" || said == "false")
        return false;
    refuse(text, "yes or no");
}

// "31 Mar 2027": the month by its name, so that nobody takes it for the day.
std::optional<rules::Day> day_by_name(const std::string& text)
{
    constexpr std::array<std::string_view, 12> months{"january",   "february", "march",    "april",
                                                      "may",       "june",     "july",     "august",
                                                      "september", "october",  "november", "december"};
    const Texts parts = parted(text, " -");
    if (parts.size() != 3 || parts[0].size() > 2 || parts[1].size() < 3 || parts[2].size() != 4)
        return std::nullopt;
    const auto month = std::find_if(months.begin(), months.end(),
                                    [&](std::string_view each) { return each.starts_with(normal(parts[1])); });
    if (month == months.end())
        return std::nullopt;
    const auto two = [](const std::string& digits) { return digits.size() == 1 ? "0" + digits : digits; };
    return rules::parse_day(parts[2] + "-" + two(std::to_string(month - months.begin() + 1)) + "-" + two(parts[0]));
}

Json day_of(const Column& column, const Unit& unit, const std::string& text)
{
    const auto iso = rules::parse_day(text);
    const auto day = iso ? iso : day_by_name(text);
    if (!day)
        refuse(text, accepted_in(column, unit));
    return rules::to_string(*day);
}

bool is_plausible(const Plausible& plausible, std::int64_t value)
{
    const std::int64_t size = plausible.negative && value < 0 ? -value : value;
    return value == 0 && plausible.zero ? true : size >= plausible.least && size <= plausible.greatest;
}

Json number_of(const Column& column, const Unit& unit, const std::string& text)
{
    const auto value = whole(text, unit.power, column.rounding);
    if (!value || !is_plausible(column.plausible, *value))
        refuse(text, accepted_in(column, unit));
    return *value;
}

Json sides_of(const Column& column, const Unit& unit, const std::string& text)
{
    Json sides = Json::array();
    for (const std::string& each : parted(text, "xX"))
        sides.push_back(number_of(column, unit, each));
    if (sides.empty() || sides.size() > 2)
        refuse(text, accepted_in(column, unit));
    return sides;
}

Json value_of(const Column& column, const Unit& unit, const std::string& text)
{
    switch (column.holds) {
    case Holds::text: return text;
    case Holds::choice: return choice_of(column, text);
    case Holds::yes_no: return yes_or_no(text);
    case Holds::number: return number_of(column, unit, text);
    case Holds::sides: return sides_of(column, unit, text);
    case Holds::day: return day_of(column, unit, text);
    case Holds::list:
    case Holds::steps:
    case Holds::needed:
    case Holds::not_needed: return list_of(column, text);
    }
    return {};
}

bool is_map(const Column& column) { return column.holds == Holds::needed || column.holds == Holds::not_needed; }

Json found_in(const Json& thing, const std::string& field)
{
    const Json::json_pointer pointer{field};
    return thing.contains(pointer) ? thing.at(pointer) : Json{};
}

// With it goes an object that has nothing else in it.
void take_away(Json& thing, const std::string& field)
{
    const Json::json_pointer pointer{field};
    if (!thing.contains(pointer))
        return;
    Json& parent = thing.at(pointer.parent_pointer());
    parent.erase(pointer.back());
    if (parent.empty() && !pointer.parent_pointer().empty())
        take_away(thing, pointer.parent_pointer().to_string());
}

// Roles by whether they are needed: two columns of one field.
void put_roles(Json& thing, const Column& column, const Json& list)
{
    const bool needed = column.holds == Holds::needed;
    Json roles = Json::object();
    const Json stands = found_in(thing, column.field);
    for (const auto& [role, is_needed] : stands.items())
        if (is_needed != needed)
            roles[role] = is_needed;
    for (const Json& each : list) {
        if (!needed && roles.value(each.get<std::string>(), false))
            throw FormError{each.dump() + " stands among the roles that are needed too; one of the two is accepted"};
        roles[each.get<std::string>()] = needed;
    }
    thing[Json::json_pointer{column.field}] = roles;
    if (roles.empty())
        take_away(thing, column.field);
}

Texts roles_that_are(bool needed, const Json& roles)
{
    Texts names;
    for (const auto& [role, is_needed] : roles.items())
        if (is_needed == needed)
            names.push_back(role);
    return names;
}

std::string sides_text(const Column& column, const Json& sides)
{
    std::string text;
    for (const Json& each : sides)
        text += (text.empty() ? "" : "x") + number_text(each.get<std::int64_t>(), column.unit.power);
    return text;
}

std::string list_text(const Column& column, const Json& list)
{
    if (list.empty())
        return "none";
    const auto items = list.get<Texts>();
    std::string text;
    if (column.holds != Holds::steps || items == Texts{"none"})
        return joined(items);
    for (const std::string& each : items)
        text += (text.empty() ? "" : "\n") + each;
    return text;
}

} // namespace

std::string plain(std::string_view cell) { return without_guard(trimmed(cell)); }

std::string text_of(const Column& column, const Json& thing)
{
    const Json value = found_in(thing, column.field);
    if (is_map(column))
        return joined(roles_that_are(column.holds == Holds::needed, value));
    if (value.is_null())
        return "";
    if (value.is_boolean())
        return value.get<bool>() ? "yes" : "no";
    if (value.is_number_integer())
        return number_text(value.get<std::int64_t>(), column.unit.power);
    if (value.is_array())
        return column.holds == Holds::sides ? sides_text(column, value) : list_text(column, value);
    return value.is_string() ? value.get<std::string>() : value.dump();
}

void put(Json& thing, const Column& column, const Unit& unit, const std::string& text)
{
    if (unit.power == column.unit.power && text == plain(guarded(text_of(column, thing))))
        return;
    const Json value = text.empty() ? Json{} : value_of(column, unit, text);
    if (is_map(column))
        put_roles(thing, column, value);
    else if (value.is_null())
        take_away(thing, column.field);
    else
        thing[Json::json_pointer{column.field}] = value;
}

std::string accepted_in(const Column& column, const Unit& unit)
{
    switch (column.holds) {
    case Holds::number: return accepted_numbers(column, unit);
    case Holds::sides: return "one or two lengths as 900 or 600x900, each " + accepted_numbers(column, unit);
    case Holds::yes_no: return "yes or no";
    case Holds::day: return "a day as 2027-03-31 or 31 Mar 2027";
    case Holds::choice: return one_of(column.choices);
    case Holds::list:
    case Holds::needed:
    case Holds::not_needed:
        return column.choices.empty() ? "a list parted by semicolons" : "a list of " + one_of(column.choices);
    case Holds::steps: return "a text a line";
    case Holds::text: break;
    }
    return "text";
}

} // namespace cotter::desk
