#pragma once

// A row of CSV as RFC 4180 has it, safe to open in a spreadsheet: a text that begins with = + - @, a tab or a return
// would be taken for a formula and gets an apostrophe in front.

#include <string>
#include <vector>

namespace cotter::desk {

std::string csv_cell(std::string text);

// With the line's end, CR LF.
std::string csv_row(const std::vector<std::string>& texts);
std::string csv_line(const std::vector<std::string>& cells); // of cells that are ready, numbers as they are

// With such an apostrophe where one is needed; and the text that it was, any other apostrophe staying.
std::string guarded(std::string text);
std::string without_guard(std::string text);

} // namespace cotter::desk
