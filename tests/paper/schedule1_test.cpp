// The particulars that are asked for, against LOLER 1998 Schedule 1 as tabulated in tests/outside/data.

#include "schedule1.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <set>
#include <string>

using namespace cotter;
using records::Json;

TEST_SUITE_BEGIN("schedule 1");

namespace {

// "7(a)(ii)" and "6(b)" are one particular each here: which limb, and whether installed.
std::string asked_under(const std::string& paragraph)
{
    return paragraph.starts_with("7(a)") ? "7(a)" : paragraph.starts_with("6") ? "6" : paragraph;
}

std::set<std::string> paragraphs_of_the_schedule()
{
    std::ifstream in{COTTER_TESTS "/outside/data/loler_schedule1.csv"};
    std::set<std::string> paragraphs;
    std::string line;
    std::getline(in, line); // headings
    while (std::getline(in, line))
        paragraphs.insert(asked_under(line.substr(0, line.find(','))));
    return paragraphs;
}

std::set<std::string> paragraphs_in(const Json& body, bool only_missing)
{
    std::set<std::string> paragraphs;
    for (const auto& each : paper::schedule_1(body))
        if (!only_missing || !each.missing.empty())
            paragraphs.insert(each.paragraph);
    return paragraphs;
}

const Json with_defects = {
    {"defects", Json::array({{{"id", "d-1"}, {"danger", "present"}}, {{"id", "d-2"}, {"danger", "could_become"}}})}};

} // namespace

TEST_CASE("every paragraph of the Schedule is asked for, and no other")
{
    REQUIRE(paragraphs_of_the_schedule().size() == 18);
    CHECK(paragraphs_in(with_defects, false) == paragraphs_of_the_schedule());
}

TEST_CASE("of a report that says nothing every paragraph is missing; the parts are there where a defect is named")
{
    auto wanted = paragraphs_of_the_schedule();
    wanted.erase("8(a)");
    CHECK(paragraphs_in(with_defects, true) == wanted);
    CHECK(paragraphs_in(Json::object(), true).count("8(a)") == 1);
}

TEST_SUITE_END();
