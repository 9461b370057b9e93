#include "csv_out.hpp"

namespace cotter::desk {

namespace {

// A spreadsheet would take it for a formula; also behind apostrophes, which would else be taken for guards.
bool is_like_a_formula(const std::string& text)
{
    const auto first = text.find_first_not_of('\'');
    return first != std::string::npos && std::string{"=+-@\t\r"}.find(text[first]) != std::string::npos;
}

} // namespace

std::string guarded(std::string text)
{
    if (is_like_a_formula(text))
        text.insert(0, "'");
    return text;
}

std::string csv_cell(std::string text)
{
    text = guarded(std::move(text));
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string{"\"\""} : std::string{c};
    return quoted + '"';
}

std::string csv_line(const std::vector<std::string>& cells)
{
    std::string line;
    for (const std::string& cell : cells)
        line += (&cell == &cells.front() ? "" : ",") + cell;
    return line + "\r\n";
}

std::string csv_row(const std::vector<std::string>& texts)
{
    std::vector<std::string> cells;
    for (const std::string& text : texts)
        cells.push_back(csv_cell(text));
    return csv_line(cells);
}

std::string without_guard(std::string text)
{
    if (text.starts_with('\'') && is_like_a_formula(text))
        text.erase(0, 1);
    return text;
}

} // namespace cotter::desk
