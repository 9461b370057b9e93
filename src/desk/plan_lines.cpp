#include "plan_lines.hpp"

#include "reason.hpp"

namespace cotter::desk {

namespace {

std::string amount_in(const Json& from, const char* field, const char* unit)
{
    return from.contains(field) ? from.at(field).dump() + " " + unit : "not stated";
}

std::string names_in(const Book& book, const Json& plan, const char* field)
{
    std::string names;
    for (const std::string each : plan.value(field, Json::array()))
        names += (names.empty() ? "" : ", ") + shown_name(book, each);
    return names.empty() ? "not stated" : names;
}

Json line(const std::string& what, const std::string& says, const char* source = "the planner's")
{
    return {{"what", what}, {"says", says}, {"formula", "as entered"}, {"source", source}};
}

void add_place(const Json& place, Json& lines)
{
    for (const auto& [field, what] : {std::pair{"nose_radius_mm", "radius to the arm-nose pin"},
                                      {"centre_radius_mm", "radius to the centre of gravity"},
                                      {"pick_height_mm", "height at pick-up"},
                                      {"slew_height_mm", "height at slew"},
                                      {"lay_height_mm", "height where laid"}}) {
        lines.push_back(line(what, amount_in(place, field, "mm")));
        lines.back()["about"] = place.value("id", "");
    }
}

void add_roles(const Json& plan, Json& lines)
{
    const Json roles = plan.value("roles", Json::object());
    for (const auto& [role, is] : roles.items())
        if (is == true)
            lines.push_back(line("who is needed", role));
    if (roles.empty())
        lines.push_back(line("who is needed", "not stated"));
}

std::string sequence_in(const Json& plan)
{
    std::string steps;
    int number = 0;
    for (const std::string each : plan.value("sequence", Json::array()))
        steps += (steps.empty() ? "" : "; ") + std::to_string(++number) + ". " + each;
    return steps.empty() ? "not stated" : steps;
}

// What people are briefed on, whoever worked the figures out.
void add_said(const Json& plan, Json& lines)
{
    lines.push_back(line(key("category"), plan.value("category", "not stated")));
    add_roles(plan, lines);
    lines.push_back(line(key("sequence"), sequence_in(plan)));
    const Json sheet = plan.value("worksheet", Json::object()), trench = sheet.value("trench", Json::object());
    for (const auto& [field, what] : {std::pair{"light", key("light")}, {"route", "way from the stack to the trench"}})
        if (sheet.contains(field))
            lines.push_back(line(what, sheet.at(field)));
    if (sheet.contains("wind_limit_mm_s"))
        lines.push_back(line("wind at which lifting stops", sheet.at("wind_limit_mm_s").dump() + " mm/s"));
    for (const auto& [field, what] :
         {std::pair{"support", "sides of the trench held by"}, {"waits_at", "who is in the trench waits at"}})
        if (trench.contains(field))
            lines.push_back(line(what, trench.at(field)));
}

Json lines_of_entered(const Book& book, const Json& plan)
{
    constexpr const char* outside = "made outside Cotter, so it is not drawn";
    Json lines = Json::array();
    add_said(plan, lines);
    for (const Json& place : plan.value("places", Json::array()))
        add_place(place, lines);
    lines.push_back(line("greatest load", amount_in(plan, "greatest_kg", "kg"), outside));
    lines.push_back(line("greatest radius", amount_in(plan, "greatest_radius_mm", "mm"), outside));
    lines.push_back(line("nobody inside", amount_in(plan, "zone_mm", "mm"), outside));
    for (const auto& [field, what] : {std::pair{"machines", key("machines")},
                                      {"attachments", key("attachments")},
                                      {"models", key("models")},
                                      {"pipes", "pipe types"}})
        lines.push_back(line(what, names_in(book, plan, field), outside));
    return lines;
}

Json lines_of_worked_out(const Json& plan)
{
    Json lines = Json::array();
    add_said(plan, lines);
    const Json results = plan.value("results", Json::array());
    for (const Json& each : results)
        lines.push_back(each);
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
    return plan.contains("worksheet") ? lines_of_worked_out(plan) : lines_of_entered(book, plan);
}

} // namespace cotter::desk
