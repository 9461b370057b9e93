// The due board never hides what is out of date.

#include "due_section.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;

namespace {

std::vector<std::string> labels_of(const figures::Figure& figure)
{
    std::vector<std::string> all;
    for (const auto& shape : figure.shapes)
        if (const auto* label = std::get_if<figures::Label>(&shape))
            all.push_back(label->text);
    return all;
}

std::size_t stops_of(const figures::Figure& figure)
{
    return static_cast<std::size_t>(std::count_if(figure.shapes.begin(), figure.shapes.end(), [](const auto& shape) {
        const auto* mark = std::get_if<figures::Mark>(&shape);
        return mark && mark->sign == figures::Sign::stop;
    }));
}

} // namespace

TEST_CASE("more out of date than a column has room for are counted above ground, never as due later")
{
    const rules::Day today = *rules::parse_day("2026-11-25");
    for (const double width : {217.0, 136.0}) {
        std::vector<figures::DueMark> marks;
        for (int i = 0; i < 9; ++i)
            marks.push_back({"AT-" + std::to_string(i), "", 0, today - date::days{1 + i}, figures::Sign::stop});
        const auto section = figures::due_section(marks, today, width, 100,
                                                  {[](rules::Day) { return std::string{"Wed 25 Nov"}; },
                                                   [](int left, int) { return std::to_string(left) + " later"; },
                                                   [](int more) { return std::to_string(more) + " more"; }});
        CHECK(section.left_out == 0);
        const auto labels = labels_of(section.figure);
        CHECK(std::count(labels.begin(), labels.end(), "AT-8") == 1); // the longest out of date
        const auto shown = std::count_if(labels.begin(), labels.end(),
                                         [](const std::string& each) { return each.starts_with("AT-"); });
        CHECK(std::count(labels.begin(), labels.end(), std::to_string(9 - shown) + " more") == 1);
        CHECK(stops_of(section.figure) == static_cast<std::size_t>(shown) + 1);
    }
}

TEST_CASE("the calendar says how many are out of date or without a date, and goes back to them")
{
    tests::SampleBook sample;
    tests::Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"View", "As a calendar"})
        rig.tap(each);
    CHECK(rig.shows("out of date: 1"));
    CHECK(rig.shows("CL-05")); // yesterday, in this week
    rig.tap("Later");
    CHECK_FALSE(rig.shows("CL-05"));
    rig.tap("Earlier");
    rig.tap("Earlier");
    CHECK_FALSE(rig.shows("CL-05"));
}

TEST_CASE("one unit alone is shown on the board")
{
    tests::SampleBook sample;
    tests::Rig rig{sample.store(), ui::Door::site};
    rig.tap("View");
    if (!rig.target("One unit"))
        rig.tap("More");
    rig.tap("One unit");
    rig.tap("CL-05");
    CHECK(rig.shows("1 unit"));
    CHECK_FALSE(rig.shows("PL-03"));
}

TEST_CASE("of those that are not drawn it is said how many may not lift")
{
    const auto today = *rules::parse_day("2026-11-25");
    std::vector<figures::DueMark> marks;
    for (int i = 0; i < 30; ++i)
        marks.push_back({"AT-" + std::to_string(i), "", 0, today + date::days{7 + i},
                         i % 3 == 0 ? std::optional{figures::Sign::stop} : std::nullopt});
    std::string said;
    const auto section = figures::due_section(
        marks, today, 217, 100,
        {[](rules::Day) { return std::string{"Wed 25 Nov"}; },
         [&](int left, int stops) { return said = std::to_string(left) + "; " + std::to_string(stops); },
         [](int more) { return std::to_string(more) + " more"; }});
    REQUIRE(section.left_out > 3);
    const auto labels = labels_of(section.figure);
    int left = 0, stops = 0;
    for (const figures::DueMark& each : marks)
        if (std::find(labels.begin(), labels.end(), each.label) == labels.end()) {
            ++left;
            stops += each.sign ? 1 : 0;
        }
    CHECK(section.left_out == left);
    CHECK(section.left_out_stops == stops);
    CHECK(said == std::to_string(left) + "; " + std::to_string(stops));
}
