#include "import_checks.hpp"

#include <optional>

namespace cotter::desk {

namespace {

std::optional<std::int64_t> mm(const Json& pipe, const char* field)
{
    const auto found = pipe.find(field);
    return found != pipe.end() && found->is_number_integer() ? std::optional{found->get<std::int64_t>()} : std::nullopt;
}

std::string in_mm(std::int64_t value) { return std::to_string(value) + " mm"; }

// The greater of two sizes is not under the lesser.
void need_order(const Json& pipe, const char* lesser, const char* greater, const std::string& words,
                std::vector<Fault>& faults)
{
    const auto a = mm(pipe, lesser), b = mm(pipe, greater);
    if (a && b && *b != 0 && *b < *a)
        faults.push_back({std::string{"/"} + greater,
                          in_mm(*b) + " is not accepted; at least the " + words + ", " + in_mm(*a) + ", is"});
}

std::vector<Fault> faults_in_pipe(const Json& pipe)
{
    std::vector<Fault> faults;
    need_order(pipe, "bore_mm", "barrel_mm", "bore", faults);
    need_order(pipe, "barrel_mm", "socket_mm", "barrel's outside", faults);
    need_order(pipe, "effective_mm", "overall_mm", "effective length", faults);
    need_order(pipe, "socket_length_mm", "overall_mm", "length of the socket", faults);
    return faults;
}

// People are briefed on an issue: another plan of the same issue would count as read.
std::vector<Fault> faults_in_plan(const Json& before, const Json& now)
{
    const auto old = before.value("issue", std::int64_t{0}), issue = now.value("issue", std::int64_t{0});
    if (!before.value("issued", false) || known_in(before) == known_in(now) || issue > old)
        return {};
    return {
        {"/issue", "issue " + std::to_string(old) + " is issued and says something else; a greater issue is accepted"}};
}

} // namespace

std::vector<Fault> take_wall(Json& pipe, const Says& says)
{
    const auto wall = mm(pipe, "wall_mm"), bore = mm(pipe, "bore_mm"), barrel = mm(pipe, "barrel_mm");
    pipe.erase("wall_mm");
    if (!wall)
        return {};
    if (!bore)
        return {{"/wall_mm", "a wall is accepted with a bore, or the outside diameter instead"}};
    const std::int64_t outside = *bore + 2 * *wall;
    if (says("/barrel_mm") && barrel && *barrel != outside)
        return {{"/wall_mm", in_mm(*wall) + " is not accepted; bore and wall make a barrel of " + in_mm(outside) +
                                 " outside, and the table says " + in_mm(*barrel)}};
    pipe["barrel_mm"] = outside;
    return {};
}

std::vector<Fault> faults_in(const Shape& shape, const Json& before, const Json& now)
{
    if (shape.what == What::pipes)
        return faults_in_pipe(now);
    if (shape.what == What::plans)
        return faults_in_plan(before, now);
    return {};
}

} // namespace cotter::desk
