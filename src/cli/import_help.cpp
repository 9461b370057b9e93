#include "import_help.hpp"

#include "cell.hpp"
#include "command.hpp"
#include "import_columns.hpp"

namespace cotter::cli {

namespace {

std::string joined(const std::vector<std::string>& names)
{
    std::string text;
    for (const std::string& each : names)
        text += (text.empty() ? "" : ", ") + each;
    return text;
}

// What may stand over the column, besides its name.
std::string other_names(const desk::Column& column)
{
    std::vector<std::string> names = column.also;
    if (column.unit.measure != desk::Measure::none && desk::units_of(column.unit.measure).size() > 1)
        names.push_back("in " + desk::unit_names(column.unit.measure));
    return names.empty() ? "" : " [" + joined(names) + "]";
}

void explain(const std::vector<desk::Column>& columns, std::ostream& out)
{
    for (const desk::Column& each : columns)
        out << "  " << each.heading() << ": " << accepted_in(each, each.unit) << other_names(each) << '\n';
}

const char* what_to_know(desk::What what)
{
    switch (what) {
    case desk::What::units:
        return "A row each. Where id is empty a unit is known by owner_firm and serial, and a new one gets an id from "
               "its "
               "tag.\n";
    case desk::What::people:
        return "A row each; id is what the person signs with. The admission (site to setting_models) may be left "
               "empty; "
               "if not, site and card_seen are needed.\n";
    case desk::What::pipes:
        return "A row each. length alone is the overall length, the socket included. wall with bore stands for the "
               "barrel.\n";
    case desk::What::charts:
        return "A row a grid point; an empty rated is not permitted there. The chart's own columns (id to "
               "travel) stand on its first row, and below are the same or empty. The rows of a chart are its "
               "whole grid.\n";
    case desk::What::plans:
        return "A row a standing place. The plan's own columns (id to zone) stand on its first row, and below are the "
               "same or empty. The rows of a plan are all its places. An issued plan changes only with a greater "
               "issue.\n";
    }
    return "";
}

} // namespace

std::string names_of_lists()
{
    std::vector<std::string> names;
    for (const desk::Shape& each : desk::shapes())
        names.push_back(each.name);
    return desk::one_of(names);
}

void explain_import(std::ostream& out)
{
    out << "cotter import WHAT --store FILE --as ID [--preview] FILE.csv, WHAT being " << names_of_lists() << ".\n"
        << "A heading line, then rows; UTF-8; cells parted by comma, semicolon or tab. Case, blanks, underscores, "
           "hyphens, dots and brackets in a heading do not matter. A number's unit stands in its heading (\"wall mm\", "
           "\"Length (m)\", \"mass t\"); decimals have a point. A day is 2027-03-31 or 31 Mar 2027. A list is parted "
           "by "
           "semicolons; \"none\" is an empty one.\n"
           "What is in the book keeps what the table has no column for; an empty cell says that it is not known. Only "
           "what is new or changed is written. Every cell that is not accepted is named, and then nothing is written.\n"
           "`cotter export WHAT` writes the same columns. `cotter help import WHAT` explains them:\n";
    for (const desk::Shape& shape : desk::shapes()) {
        std::vector<std::string> names;
        for (const desk::Column* each : columns_of(shape))
            names.push_back(each->heading());
        out << "  " << shape.name << ": " << joined(names) << '\n';
    }
}

void explain_list(const std::string& name, std::ostream& out)
{
    const auto what = desk::what_named(name);
    if (!what)
        throw BadInput{"help: \"" + name + "\" is not accepted after import; " + names_of_lists() + " is"};
    const desk::Shape& shape = desk::shape_of(*what);
    out << what_to_know(*what) << "Columns of " << name
        << ", what their cells hold, and in brackets what else they are called:\n";
    explain(shape.own, out);
    explain(shape.parts, out);
}

} // namespace cotter::cli
