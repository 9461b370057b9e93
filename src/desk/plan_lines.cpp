#include "plan_lines.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

std::string mm_in(const Json& place, const char* field) { return std::to_string(place.value(field, std::int64_t{0})); }

std::string names_in(const Book& book, const Json& plan, const char* field)
{
    std::string names;
    for (const std::string each : plan.value(field, Json::array()))
        names += (names.empty() ? "" : ", ") + shown_name(book, each);
    return names;
}

Json line_of_place(const Json& place)
{
    const auto radius =
        std::max(place.value("nose_radius_mm", std::int64_t{0}), place.value("centre_radius_mm", std::int64_t{0}));
    return {{"what", "mark " + place.value("id", "")},
            {"says", "radius " + std::to_string(radius) + " mm, heights " + mm_in(place, "pick_height_mm") + ", " +
                         mm_in(place, "slew_height_mm") + ", " + mm_in(place, "lay_height_mm") + " mm"}};
}

Json lines_of_entered(const Book& book, const Json& plan)
{
    Json lines = Json::array();
    for (const Json& place : plan.value("places", Json::array()))
        lines.push_back(line_of_place(place));
    lines.push_back({{"what", "greatest load and radius"},
                     {"says", mm_in(plan, "greatest_kg") + " kg, " + mm_in(plan, "greatest_radius_mm") + " mm"}});
    for (const auto& [field, what] : {std::pair{"machines", "machines"}, {"models", "models"}, {"pipes", "pipe types"}})
        lines.push_back({{"what", what}, {"says", names_in(book, plan, field)}});
    for (Json& each : lines) {
        each["formula"] = "as entered";
        each["source"] = "made outside Cotter, so it is not drawn";
    }
    return lines;
}

} // namespace

std::string head_of_plan(const Json& plan)
{
    const std::string title = plan.value("title", "");
    return plan.value("id", "") + ", issue " + std::to_string(plan.value("issue", std::int64_t{0})) +
           (title.empty() ? "" : " (" + title + ")") + ", " + plan.value("first_day", "?") + " to " +
           plan.value("last_day", "?");
}

Json lines_of_plan(const Book& book, const Json& plan)
{
    return plan.contains("worksheet") ? plan.value("results", Json::array()) : lines_of_entered(book, plan);
}

} // namespace cotter::desk
