#include "csv_out.hpp"

namespace cotter::desk {

std::string csv_cell(std::string text)
{
    if (!text.empty() && std::string{"=+-@\t\r"}.find(text[0]) != std::string::npos)
        text.insert(0, "'");
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string{"\"\""} : std::string{c};
    return quoted + '"';
}

std::string csv_row(const std::vector<std::string>& texts)
{
    std::string row;
    for (const std::string& text : texts)
        row += (&text == &texts.front() ? "" : ",") + csv_cell(text);
    return row + "\r\n";
}

} // namespace cotter::desk
