#include "command.hpp"

namespace cotter::cli {

namespace {

std::string text_of(const Json& value)
{
    return value.is_string() ? value.get<std::string>() : value.is_null() ? "-" : value.dump();
}

} // namespace

void print(const Json& object, bool as_json, std::ostream& out)
{
    if (as_json) {
        out << object.dump() << '\n';
        return;
    }
    for (const auto& [key, value] : object.items())
        out << key << ": " << text_of(value) << '\n';
}

std::string one_line(std::string text)
{
    for (char& c : text)
        if (static_cast<unsigned char>(c) < ' ' || c == '\x7f')
            c = ' ';
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    return text;
}

} // namespace cotter::cli
