#include "field_unit.hpp"

#include "number_text.hpp"

#include <array>
#include <utility>

namespace cotter::desk {

FieldUnit unit_of(const std::string& field)
{
    static const std::array<std::pair<const char*, FieldUnit>, 12> units{{{"chainage_mm", {"m", 3}},
                                                                          {"invert_mm", {"m", 3}},
                                                                          {"_kg_m3", {"kg/m\u00b3", 0}},
                                                                          {"_mm_s", {"m/s", 3}},
                                                                          {"_mdeg", {"\u00b0", 3}},
                                                                          {"_kpa", {"kPa", 0}},
                                                                          {"_nm", {"N m", 0}},
                                                                          {"_mm", {"mm", 0}},
                                                                          {"_kg", {"kg", 0}},
                                                                          {"_percent", {"%", 0}},
                                                                          {"_months", {"months", 0}},
                                                                          {"_minutes", {"minutes", 0}}}};
    for (const auto& [ending, unit] : units)
        if (field.ends_with(ending))
            return unit;
    return {};
}

std::string with_unit(const std::string& field, std::int64_t value)
{
    const FieldUnit unit = unit_of(field);
    const bool stands_apart = !unit.text.empty() && unit.text != "\u00b0";
    return number_text(value, unit.power) + (stands_apart ? " " : "") + unit.text;
}

} // namespace cotter::desk
