#include "import_columns.hpp"

#include "column_makers.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

constexpr Plausible is_across{50, 6000};               // mm, a pipe
constexpr Plausible is_height{20, 30'000, true, true}; // mm
constexpr Plausible is_radius{500, 40'000};            // mm
constexpr Plausible is_load{1, 300'000};               // kg

const std::vector<std::string> roles{"operator",  "signaller", "supervisor", "manager",
                                     "appointed", "competent", "fitter",     "hire_desk", "gateman"};

std::vector<Column> sling_columns()
{
    const auto field = [](const char* name) { return std::string{"/sling/"} + name; };
    return {text("sling_kind", field("kind")),
            count("sling_grade", field("grade"), {1, 200}, {"grade of chain"}),
            length("sling_chain", field("chain_mm"), {4, 60}, {"chain size"}),
            count("sling_legs", field("legs"), {1, 4}, {"legs"}),
            angle("sling_angle", field("angle_mdeg"), {1, 90'000, true}, {"leg to vertical"}),
            sides("sling_spread", field("spread_mm"), {50, 20'000}),
            length("sling_leg_length", field("leg_length_mm"), {100, 30'000}, {"leg length"}),
            rating("sling_tag_0_45", field("tag_0_45_kg"), is_load),
            rating("sling_tag_45_60", field("tag_45_60_kg"), is_load),
            yes_no("sling_symmetric", field("symmetric"))};
}

std::vector<Column> unit_columns()
{
    std::vector<Column> columns{
        text("id", "/id", {"unit", "unit id"}),
        text("tag", "/tag", {"label", "plant no", "plant number", "fleet no", "fleet number", "asset no"}),
        text("owner_firm", "/owner_firm", {"owner", "owned by", "firm"}),
        text("serial", "/serial",
             {"serial no", "serial number", "maker's serial", "maker's serial no", "maker's serial number"}),
        text("model", "/model", {"model id"}),
        choice("role", "/role", "unit"),
        choice("class", "/class", "unit"),
        choice("whose", "/owner", "unit", {"own or hired", "hired or own"}),
        yes_no("between_own_sites", "/between_own_sites"),
        load("mass", "/mass_kg", is_load, {"own mass", "weight", "own weight"}),
        rating("plate", "/plate_kg", is_load,
               {"plate rating", "rating on the plate", "SWL", "WLL", "safe working load", "working load limit",
                "rated capacity"}),
        text("configuration", "/configuration"),
        months("scheme", "/scheme_months", {1, 120}, {"scheme interval", "examination interval"}),
        day("first_service", "/first_service", {"in service since"}),
        text("pattern", "/pattern", {"coupling pattern"}),
        text("sheet", "/sheet", {"check sheet"}),
        text("manufactured", "/manufactured", {"date of manufacture", "year of manufacture"}),
        length("tail_swing", "/tail_swing_mm", {300, 15'000}),
        load("delivered", "/delivered_kg", is_load, {"mass as delivered"}),
        choice("headplate", "/loose_parts/headplate", "unit"),
        choice("pin", "/loose_parts/pin", "unit"),
        choice("keeper", "/loose_parts/keeper", "unit")};
    for (Column& each : sling_columns())
        columns.push_back(std::move(each));
    return columns;
}

std::vector<Column> people_columns()
{
    return {text("id", "/id", {"person"}),
            text("name", "/name", {"full name"}),
            text("firm", "/firm", {"employer", "company"}),
            text("card", "/card", {"kind of card", "card type"}),
            day("card_last_day", "/card_last_day", {"card expires", "card expiry", "card valid until"}),
            text("site", "/admission/site"),
            yes_no("card_seen", "/admission/card_seen"),
            list("roles", "/admission/roles", roles, {"role"}),
            list("models", "/admission/models", {}, {"familiarised on"}),
            list("setting_models", "/admission/setting_models", {})};
}

std::vector<Column> pipe_columns()
{
    return {text("id", "/id", {"pipe"}),
            text("name", "/name", {"pipe name", "description"}),
            text("maker", "/maker", {"manufacturer"}),
            count("dn", "/dn", {50, 6000}, {"nominal size", "nominal diameter"}),
            choice("shape", "/shape", "pipe"),
            text("material", "/material"),
            length("bore", "/bore_mm", is_across, {"inside diameter", "internal diameter", "ID"}),
            length("barrel", "/barrel_mm", is_across,
                   {"OD", "outside diameter", "external diameter", "barrel OD", "barrel outside",
                    "barrel outside diameter", "outside of the barrel"}),
            wall_thickness("wall", "/wall_mm", {10, 1000}, {"wall thickness"}),
            length("socket", "/socket_mm", or_none(is_across),
                   {"socket OD", "socket outside", "socket outside diameter", "outside of the socket"}),
            length("overall", "/overall_mm", {300, 12'000}, {"length", "overall length", "total length"}),
            length("effective", "/effective_mm", {200, 12'000}, {"effective length", "laying length"}),
            length("socket_length", "/socket_length_mm", {10, 2000, true}, {"length of the socket"}),
            density("density", "/density_kg_m3", {500, 9000}),
            percent("allowance", "/allowance_percent", {1, 50, true}),
            load("stated", "/stated_kg", {5, 100'000}, {"stated mass", "mass", "weight", "maker's mass"}),
            length("joint_least", "/joint_least_mm", {0, 200}),
            length("joint_greatest", "/joint_greatest_mm", {0, 200})};
}

std::vector<Column> chart_columns()
{
    return {text("id", "/id", {"chart"}),
            text("name", "/name", {"chart name"}),
            text("machine", "/machine"),
            text("arm", "/arm"),
            text("blade", "/blade"),
            text("counterweight", "/counterweight"),
            yes_no("includes_hitch", "/includes_hitch"),
            angle("slope", "/slope_mdeg", {0, 45'000}),
            rating("travel", "/travel_kg", is_load)};
}

std::vector<Column> grid_columns()
{
    return {choice("over", "/over", "chart", {"sector"}, "/cells"),
            in_metres(length("height", "/height_mm", is_height)), in_metres(length("radius", "/radius_mm", is_radius)),
            rating("rated", "/rated_kg", is_load, {"rating", "capacity", "SWL", "WLL"})};
}

std::vector<Column> plan_columns()
{
    return {text("id", "/id", {"plan"}),
            count("issue", "/issue", {1, 10'000}),
            yes_no("issued", "/issued"),
            yes_no("signed", "/signed"),
            text("site", "/site"),
            text("title", "/title"),
            day("first_day", "/first_day", {"in force from", "from"}),
            day("last_day", "/last_day", {"in force to", "to"}),
            list("machines", "/machines", {}),
            list("attachments", "/attachments", {}),
            list("models", "/models", {}),
            list("pipes", "/pipes", {}, {"pipe types"}),
            rating("greatest", "/greatest_kg", is_load, {"greatest load"}),
            length("greatest_radius", "/greatest_radius_mm", is_radius),
            needed("roles_needed", "/roles", roles),
            not_needed("roles_not_needed", "/roles", roles),
            text("category", "/category", {"category of lift"}),
            steps("sequence", "/sequence"),
            length("zone", "/zone_mm", is_radius, {"exclusion zone"})};
}

std::vector<Column> place_columns()
{
    constexpr Plausible is_room{20, 20'000};
    return {text("place", "/id", {"standing place", "mark"}),
            length("nose_radius", "/nose_radius_mm", is_radius),
            length("centre_radius", "/centre_radius_mm", is_radius),
            length("pick_height", "/pick_height_mm", is_height),
            length("slew_height", "/slew_height_mm", is_height),
            length("lay_height", "/lay_height_mm", is_height),
            choice("sector", "/sector", "lift_plan", {}, "/places"),
            length("pin_to_centre", "/pin_to_centre_mm", or_none(is_room)),
            yes_no("no_trench", "/trench/none"),
            yes_no("someone_enters", "/trench/someone_enters"),
            yes_no("strutted", "/thread/strutted"),
            length("gap", "/thread/gap_mm", {300, 20'000}, {"gap between struts"}),
            length("clearance", "/thread/clearance_mm", or_none(is_room)),
            length("strut_depth", "/thread/strut_depth_mm", or_none(is_room)),
            length("room", "/thread/room_mm", or_none(is_room), {"room below the struts"})};
}

} // namespace

// What a number can be is the firm's own rule, drawn wide: a slip of the unit is caught, not an odd pipe.
const std::vector<Shape>& shapes()
{
    static const std::vector<Shape> all{
        {What::units, "units", "unit", "unit", unit_columns(), {}, 0, "", ""},
        {What::people, "people", "person", "person", people_columns(), {}, 0, "", ""},
        {What::pipes, "pipes", "pipe", "pipe", pipe_columns(), {}, 0, "", ""},
        {What::charts, "charts", "chart", "chart", chart_columns(), grid_columns(), 3, "/cells", "grid point"},
        {What::plans, "plans", "lift_plan", "plan", plan_columns(), place_columns(), 1, "/places", "standing place"}};
    return all;
}

const Shape& shape_of(What what)
{
    return *std::find_if(shapes().begin(), shapes().end(), [&](const Shape& each) { return each.what == what; });
}

std::optional<What> what_named(std::string_view name)
{
    for (const Shape& each : shapes())
        if (each.name == name)
            return each.what;
    return std::nullopt;
}

std::vector<const Column*> columns_of(const Shape& shape)
{
    std::vector<const Column*> columns;
    for (const auto* list : {&shape.own, &shape.parts})
        for (const Column& each : *list)
            columns.push_back(&each);
    return columns;
}

} // namespace cotter::desk
