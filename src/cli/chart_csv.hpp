#pragma once

#include "chart.hpp"

#include <istream>
#include <string>

namespace cotter::cli {

// Reads a chart file, CSV `over,height_m,radius_m,rated_kg`, one row a grid point, blank = not permitted.
// Metres become whole millimetres. BadInput names the file, the line and the column.
rules::Chart read_chart_file(const std::string& path);
rules::Chart read_chart(std::istream& text, const std::string& name); // the same from any text

} // namespace cotter::cli
