#include "looks.hpp"

#include <algorithm>
#include <sstream>

namespace cotter::ui {

namespace {

Looks chosen;

} // namespace

const Looks& looks() { return chosen; }

void set_looks(const Looks& looks)
{
    const words::Language before = chosen.language;
    chosen = looks;
    if (!words::set_language(looks.language))
        chosen.language = before;
}

std::string to_text(const Looks& looks)
{
    return std::string{looks.night ? "night" : "day"} + "\ntext " + std::to_string(looks.text_percent) + "\nlanguage " +
           std::string{words::code_of(looks.language)} + (looks.gloves ? "\ngloves\n" : "\n");
}

Looks read_looks(const std::string& text)
{
    Looks read;
    std::istringstream words{text};
    for (std::string word; words >> word;) {
        int percent = 0;
        std::string code;
        if (word == "night" || word == "gloves")
            (word == "night" ? read.night : read.gloves) = true;
        else if (word == "text" && words >> percent && std::ranges::count(text_sizes, percent) == 1)
            read.text_percent = percent;
        else if (word == "language" && words >> code)
            for (const auto each : words::languages)
                read.language = words::code_of(each) == code ? each : read.language;
    }
    return read;
}

} // namespace cotter::ui
