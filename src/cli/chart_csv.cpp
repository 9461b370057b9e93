#include "chart_csv.hpp"

#include "bad_input.hpp"
#include "numbers.hpp"

#include <cmath>
#include <fstream>
#include <sstream>
#include <vector>

namespace cotter::cli {

namespace {

constexpr const char* heading = "over,height_m,radius_m,rated_kg";

std::vector<std::string> fields_of(const std::string& line)
{
    std::vector<std::string> fields;
    std::istringstream in{line};
    for (std::string field; std::getline(in, field, ',');)
        fields.push_back(field);
    if (!line.empty() && line.back() == ',')
        fields.emplace_back();
    return fields;
}

rules::Millimetres millimetres(const Given& given)
{
    const double mm = number(given) * 1000;
    if (std::abs(mm - std::round(mm)) > 1e-6 || std::abs(mm) > 1e6)
        throw BadInput{given.option + ": \"" + given.text + "\" is not accepted; metres to the millimetre are"};
    return rules::Millimetres{static_cast<std::int64_t>(std::llround(mm))};
}

rules::Sector sector(const Given& given)
{
    if (given.text == "front")
        return rules::Sector::front;
    if (given.text == "side")
        return rules::Sector::side;
    throw BadInput{given.option + ": \"" + given.text + "\" is not accepted; front or side is"};
}

// Rounded down; no more than a record may say.
rules::Kilograms rating(const Given& given)
{
    constexpr double most = 10'000'000;
    const double kg = at_least_zero(given);
    if (kg > most)
        throw BadInput{given.option + ": \"" + given.text + "\" is not accepted; up to 10000000 kg is"};
    return rules::Kilograms{static_cast<std::int64_t>(std::floor(kg))};
}

rules::Cell cell_of(const std::string& place, const std::vector<std::string>& fields)
{
    const auto given = [&](std::size_t i, const char* column) { return Given{place + " " + column, fields[i]}; };
    rules::Cell cell;
    cell.over = sector(given(0, "over"));
    cell.height = millimetres(given(1, "height_m"));
    cell.radius = millimetres(given(2, "radius_m"));
    if (!fields[3].empty())
        cell.rated = rating(given(3, "rated_kg"));
    return cell;
}

void strip_return(std::string& line)
{
    if (!line.empty() && line.back() == '\r')
        line.pop_back();
}

} // namespace

rules::Chart read_chart_file(const std::string& path)
{
    std::ifstream in{path};
    return read_chart(in, path);
}

rules::Chart read_chart(std::istream& in, const std::string& name)
{
    std::string line;
    if (!in || !std::getline(in, line))
        throw BadInput{name + ": cannot be read; a chart file (CSV " + heading + ") is accepted"};
    strip_return(line);
    if (line != heading)
        throw BadInput{name + " line 1: \"" + line.substr(0, 60) + "\" is not accepted; " + heading + " is"};
    rules::Chart chart;
    chart.id = name;
    for (int number = 2; std::getline(in, line); ++number) {
        strip_return(line);
        if (line.empty())
            continue;
        const auto fields = fields_of(line);
        const std::string place = name + " line " + std::to_string(number);
        if (fields.size() != 4)
            throw BadInput{place + ": " + std::to_string(fields.size()) + " fields are not accepted; 4 are"};
        chart.cells.push_back(cell_of(place, fields));
    }
    if (chart.cells.empty())
        throw BadInput{name + ": no grid point in it; one row a grid point is accepted"};
    return chart;
}

} // namespace cotter::cli
