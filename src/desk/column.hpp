#pragma once

// A column of a table that is imported or exported: which field of a record it is, what its cells hold, and what may
// stand over it.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace cotter::desk {

enum class Measure { none, length, mass, angle, percent, density, months };

// What a heading says after a column's name. A record holds millimetres, kilograms, thousandths of a degree.
struct Unit {
    std::string_view name;
    Measure measure = Measure::none;
    int power = 0; // of ten, from a number in the cell to the record's
};

enum class Holds {
    text,
    choice, // one of `choices`
    yes_no,
    number,
    sides, // one or two lengths, "900" or "600x900"
    day,
    list,      // parted by semicolons, commas or lines; of `choices` where there are any
    steps,     // a text a line
    needed,    // roles that the plan needs
    not_needed // and those that it says it does not
};

// To what a fraction of the record's unit goes: loads up, ratings down, and none elsewhere.
enum class Rounding { none, up, down };

// What a number can be, in the record's unit: outside of it a unit or a digit is wrong.
struct Plausible {
    std::int64_t least = 0, greatest = 0;
    bool zero = false;     // besides
    bool negative = false; // the same range below zero, besides
};

struct Column {
    std::string name;  // as in an export, without its unit
    std::string field; // in the thing, a JSON pointer
    Holds holds = Holds::text;
    std::vector<std::string> also; // what else it is called in the trade, without unit
    Unit unit;                     // as in an export
    Plausible plausible;
    Rounding rounding = Rounding::none;
    std::vector<std::string> choices;
    bool taken_only = false; // read and never written: it stands in the record as something else

    std::string heading() const; // as in an export: "mass_kg"
};

// All units of a measure, shortest first; for messages and help.
std::vector<Unit> units_of(Measure measure);
std::string unit_names(Measure measure); // "mm, cm or m"

// "a, b or c".
std::string one_of(const std::vector<std::string>& names);

// Without case, blanks, underscores, hyphens, dots, brackets and the like.
std::string normal(std::string_view text);

struct Heading {
    const Column* column = nullptr;
    Unit unit;
};

// What the text over a column says. FormError: it is none of these columns, its unit is missing or is none of its.
Heading heading_of(const std::string& text, const std::vector<const Column*>& columns);

} // namespace cotter::desk
