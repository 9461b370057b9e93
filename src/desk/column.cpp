#include "column.hpp"

#include "form.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace cotter::desk {

using records::FormError;

namespace {

struct Spelling {
    std::string_view text; // normal
    Unit unit;
};

// The first spelling of each unit is its name.
constexpr std::array spellings{Spelling{"mm", {"mm", Measure::length, 0}},
                               Spelling{"millimetre", {"mm", Measure::length, 0}},
                               Spelling{"millimetres", {"mm", Measure::length, 0}},
                               Spelling{"cm", {"cm", Measure::length, 1}},
                               Spelling{"m", {"m", Measure::length, 3}},
                               Spelling{"metre", {"m", Measure::length, 3}},
                               Spelling{"metres", {"m", Measure::length, 3}},
                               Spelling{"kg", {"kg", Measure::mass, 0}},
                               Spelling{"kgs", {"kg", Measure::mass, 0}},
                               Spelling{"t", {"t", Measure::mass, 3}},
                               Spelling{"te", {"t", Measure::mass, 3}},
                               Spelling{"tonne", {"t", Measure::mass, 3}},
                               Spelling{"tonnes", {"t", Measure::mass, 3}},
                               Spelling{"deg", {"deg", Measure::angle, 3}},
                               Spelling{"degrees", {"deg", Measure::angle, 3}},
                               Spelling{"percent", {"percent", Measure::percent, 0}},
                               Spelling{"kgm3", {"kg/m3", Measure::density, 0}},
                               Spelling{"months", {"months", Measure::months, 0}}};

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool is_letter_or_digit(char c) { return (lower(c) >= 'a' && lower(c) <= 'z') || (c >= '0' && c <= '9'); }

void replace_all(std::string& text, std::string_view from, std::string_view to)
{
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

std::optional<Unit> unit_spelt(std::string_view text)
{
    for (const Spelling& each : spellings)
        if (each.text == text)
            return each.unit;
    return std::nullopt;
}

std::vector<std::string> names_of(const Column& column)
{
    std::vector<std::string> names{normal(column.name)};
    for (const std::string& each : column.also)
        names.push_back(normal(each));
    return names;
}

bool has_unit(const Column& column) { return column.unit.measure != Measure::none; }

std::string with_units(const Column& column)
{
    std::vector<std::string> names;
    for (const Unit& unit : units_of(column.unit.measure))
        names.push_back("\"" + column.name + " " + std::string{unit.name} + "\"");
    return one_of(names);
}

// The unit that the heading gives the column; nothing if it is another column's. Throws if only the unit is wrong.
std::optional<Unit> unit_in(const std::string& heading, const std::string& said, const Column& column)
{
    for (const std::string& name : names_of(column)) {
        if (!said.starts_with(name))
            continue;
        const auto unit = unit_spelt(std::string_view{said}.substr(name.size()));
        if (unit && unit->measure == column.unit.measure)
            return unit;
        if (unit)
            throw FormError{records::shown(heading) + ": " + std::string{unit->name} + " is not a unit of " +
                            column.name + "; " + unit_names(column.unit.measure) + " is accepted"};
    }
    return std::nullopt;
}

bool is_called(const Column& column, const std::string& said)
{
    const auto names = names_of(column);
    return std::find(names.begin(), names.end(), said) != names.end();
}

[[noreturn]] void refuse_heading(const std::string& heading, const std::string& said,
                                 const std::vector<const Column*>& columns)
{
    std::string accepted;
    for (const Column* column : columns) {
        if (is_called(*column, said))
            throw FormError{records::shown(heading) + ": its unit is missing; " + with_units(*column) + " is accepted"};
        accepted += (accepted.empty() ? "" : ", ") + column->heading();
    }
    throw FormError{records::shown(heading) + " is not a column; accepted are " + accepted};
}

} // namespace

std::string Column::heading() const
{
    std::string text{name};
    if (unit.measure != Measure::none)
        text += "_" + std::string{unit.measure == Measure::density ? "kg_m3" : unit.name};
    return text;
}

std::vector<Unit> units_of(Measure measure)
{
    std::vector<Unit> units;
    for (const Spelling& each : spellings)
        if (each.unit.measure == measure && (units.empty() || units.back().name != each.unit.name))
            units.push_back(each.unit);
    return units;
}

std::string unit_names(Measure measure)
{
    std::vector<std::string> names;
    for (const Unit& unit : units_of(measure))
        names.emplace_back(unit.name);
    return one_of(names);
}

std::string one_of(const std::vector<std::string>& names)
{
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i)
        text += (i == 0 ? "" : i + 1 == names.size() ? " or " : ", ") + names[i];
    return text;
}

std::string normal(std::string_view given)
{
    std::string text{given};
    replace_all(text, "%", "percent");
    replace_all(text, "\xC2\xB3", "3"); // the small 3 of m3
    replace_all(text, "\xC2\xA0", "");  // the blank that keeps words together
    std::erase_if(text, [](char c) { return static_cast<unsigned char>(c) < 0x80 && !is_letter_or_digit(c); });
    std::transform(text.begin(), text.end(), text.begin(), lower);
    return text;
}

Heading heading_of(const std::string& text, const std::vector<const Column*>& columns)
{
    const std::string said = normal(text);
    for (const Column* column : columns)
        if (!has_unit(*column) && is_called(*column, said))
            return {column, {}};
    for (const Column* column : columns)
        if (has_unit(*column))
            if (const auto unit = unit_in(text, said, *column))
                return {column, *unit};
    refuse_heading(text, said, columns);
}

} // namespace cotter::desk
