#include "column_makers.hpp"

#include "kinds.hpp"

namespace cotter::desk {

namespace {

Column made(const char* name, std::string field, Holds holds, Names also)
{
    Column column;
    column.name = name;
    column.field = std::move(field);
    column.holds = holds;
    column.also = std::move(also);
    return column;
}

Column measured(Column column, Measure measure, Plausible plausible, Rounding rounding = Rounding::none)
{
    if (measure != Measure::none)
        column.unit = units_of(measure).front();
    column.plausible = plausible;
    column.rounding = rounding;
    return column;
}

Column with_choices(Column column, Names choices)
{
    column.choices = std::move(choices);
    return column;
}

// The schema of a field: "/a/b" stands under properties.a.properties.b.
const records::Json& property(const records::Json& schema, const std::string& field)
{
    const records::Json* found = &schema;
    for (std::size_t from = 1; from <= field.size();) {
        const auto to = std::min(field.find('/', from), field.size());
        found = &found->at("properties").at(field.substr(from, to - from));
        from = to + 1;
    }
    return *found;
}

} // namespace

Column text(const char* name, std::string field, Names also)
{
    return made(name, std::move(field), Holds::text, std::move(also));
}

Column yes_no(const char* name, std::string field, Names also)
{
    return made(name, std::move(field), Holds::yes_no, std::move(also));
}

Column day(const char* name, std::string field, Names also)
{
    return made(name, std::move(field), Holds::day, std::move(also));
}

Column list(const char* name, std::string field, Names choices, Names also)
{
    return with_choices(made(name, std::move(field), Holds::list, std::move(also)), std::move(choices));
}

Column steps(const char* name, std::string field) { return made(name, std::move(field), Holds::steps, {}); }

Column needed(const char* name, std::string field, Names roles)
{
    return with_choices(made(name, std::move(field), Holds::needed, {}), std::move(roles));
}

Column not_needed(const char* name, std::string field, Names roles)
{
    return with_choices(made(name, std::move(field), Holds::not_needed, {}), std::move(roles));
}

Column choice(const char* name, std::string field, const char* kind, Names also, const char* in)
{
    const records::Json& schema = records::find_kind(kind)->schema;
    const std::string list{in};
    const records::Json& its = property(list.empty() ? schema : property(schema, list).at("items"), field);
    Names choices = its.at("enum").get<Names>();
    return with_choices(made(name, std::move(field), Holds::choice, std::move(also)), std::move(choices));
}

Column count(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::none, plausible);
}

Column months(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::months, plausible);
}

Column percent(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::percent, plausible);
}

Column density(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::density, plausible);
}

Column angle(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::angle, plausible);
}

Column load(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::mass, plausible,
                    Rounding::up);
}

Column rating(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::mass, plausible,
                    Rounding::down);
}

Column length(const char* name, std::string field, Plausible plausible, Names also)
{
    return measured(made(name, std::move(field), Holds::number, std::move(also)), Measure::length, plausible);
}

Column sides(const char* name, std::string field, Plausible plausible)
{
    return measured(made(name, std::move(field), Holds::sides, {}), Measure::length, plausible);
}

Column in_metres(Column column)
{
    column.unit = units_of(Measure::length).back();
    return column;
}

Column wall_thickness(const char* name, std::string field, Plausible plausible, Names also)
{
    Column column = length(name, std::move(field), plausible, std::move(also));
    column.taken_only = true;
    return column;
}

Plausible or_none(Plausible plausible)
{
    plausible.zero = true;
    return plausible;
}

} // namespace cotter::desk
