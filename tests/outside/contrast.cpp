// The colours of the look, against the contrast of WCAG 2.

#include "table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace outside;

namespace {

const std::string white = "#FFFFFF", black = "#000000";

// Source: WCAG 2.2, definition of relative luminance (sRGB, threshold 0.04045).
double linear(int channel)
{
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double luminance(const std::string& hex)
{
    const auto channel = [&](std::size_t place) { return linear(std::stoi(hex.substr(place, 2), nullptr, 16)); };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

// Source: WCAG 2.2, definition of contrast ratio.
double contrast(const std::string& a, const std::string& b)
{
    const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

std::map<std::string, std::string> theme(const std::string& name)
{
    std::map<std::string, std::string> colours;
    for (const Record& row : read_table("look_colours"))
        if (row.at("theme") == name)
            colours[row.at("name")] = row.at("hex");
    return colours;
}

// The digits of a colour as the program's own list writes them.
std::string as_written(const std::string& hex)
{
    std::string made;
    for (const std::size_t place : {1U, 3U, 5U})
        made += (made.empty() ? "0x" : ", 0x") + hex.substr(place, 2);
    return made;
}

std::string theme_source()
{
    std::ifstream file{std::filesystem::path{COTTER_SOURCE} / "ui" / "theme.hpp"};
    return {std::istreambuf_iterator<char>{file}, {}};
}

} // namespace

// Source: WCAG 2.2: black on white is 21:1 and a colour on itself 1:1.
TEST_CASE("The measure of contrast has the ends that the standard gives it")
{
    CHECK(contrast(black, white) == doctest::Approx(21));
    CHECK(contrast("#47525C", "#47525C") == doctest::Approx(1));
    CHECK(contrast("#777777", white) == doctest::Approx(4.48).epsilon(0.002));
}

// Source: NUREG-0700 rev 3 prefers 10:1 with reflections. That the verdict and its numbers have it is the look's own
// rule.
TEST_CASE("Ink stands ten to one or more on ground and sheet by day and by night")
{
    for (const std::string name : {"day", "night"}) {
        const auto colours = theme(name);
        INFO(name);
        CHECK(contrast(colours.at("ink"), colours.at("ground")) >= 10);
        CHECK(contrast(colours.at("ink"), colours.at("sheet")) >= 10);
    }
}

// Source: WCAG success criterion 1.4.6 (AAA), 7:1, from memory.
TEST_CASE("Second ink stands seven to one or more on ground and sheet by day and by night")
{
    for (const std::string name : {"day", "night"}) {
        const auto colours = theme(name);
        INFO(name);
        CHECK(contrast(colours.at("second ink"), colours.at("ground")) >= 7);
        CHECK(contrast(colours.at("second ink"), colours.at("sheet")) >= 7);
    }
}

// Source: ISO 3864-1 and -4 as tabulated (RAL numbers read, ratios derived by another program).
TEST_CASE("Every sign colour has the contrast that the table gives it")
{
    const auto rows = read_table("safety_colours");
    REQUIRE(rows.size() == 7);
    for (const Record& row : rows) {
        INFO(row.at("colour"));
        CHECK(std::abs(contrast(row.at("hex"), white) - number(row, "wcag_ratio_vs_white")) < 0.01);
        CHECK(std::abs(contrast(row.at("hex"), black) - number(row, "wcag_ratio_vs_black")) < 0.01);
    }
}

// Source: ISO 3864-1 for which contrast colour goes with which; WCAG 1.4.11, 3:1 for what is not text, from memory;
// 1.4.3, 4.5:1 for text, from memory, for the four that signs use.
TEST_CASE("Every sign colour stands out from its contrast colour")
{
    for (const Record& row : read_table("safety_colours")) {
        INFO(row.at("colour"));
        const double ratio = contrast(row.at("hex"), row.at("contrast_colour") == "white" ? white : black);
        CHECK(ratio >= 3);
        if (row.at("shape") != "panel")
            CHECK(ratio >= 4.5);
    }
}

// Source: the same table; the program's list of colours is read as text, as drawing is no part of this program.
TEST_CASE("The colours that are tested are the ones that the program draws with")
{
    const std::string source = theme_source();
    REQUIRE_FALSE(source.empty());
    for (const auto& colour : theme("day")) {
        INFO(colour.first);
        if (colour.second != white)
            CHECK(source.find(as_written(colour.second)) != std::string::npos);
    }
    for (const Record& row : read_table("safety_colours")) {
        INFO(row.at("colour"));
        const bool is_sign = row.at("colour") != "orange" && row.at("meaning") != "Contrast";
        if (is_sign)
            CHECK(source.find(as_written(row.at("hex"))) != std::string::npos);
    }
}
