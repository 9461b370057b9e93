// laid: the log of laid pipes, each joint and level against what its maker and the drawing allow.

#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("laid");

namespace {

Json laid(const Json& more)
{
    Json body{{"site", "marsh-lane"}, {"pipe", "sk-450"}, {"chainage_mm", 312500}};
    body.update(more);
    return body;
}

// What `laid` says of one pipe that lies so, and its exit code before it.
std::string said_of(const Json& more)
{
    const SampleBook book;
    REQUIRE(book.record(record_line("pipe_laid", "laid-1", laid(more))).code == 0);
    const Ran ran = book.run("laid");
    CHECK(ran.err.empty());
    return std::to_string(ran.code) + " " + ran.out;
}

Json levels(int invert) { return {{"invert_mm", invert}, {"planned_invert_mm", 41235}, {"level_tolerance_mm", 20}}; }

} // namespace

TEST_CASE("a level is read against the drawing's tolerance, ends included, and with its sign")
{
    CHECK(said_of(levels(41235)).starts_with("0 "));
    CHECK(contains(said_of(levels(41235)), ", as planned"));
    CHECK(said_of(levels(41255)).starts_with("0 "));
    CHECK(said_of(levels(41215)).starts_with("0 "));
    CHECK(contains(said_of(levels(41215)), ", 20 mm below planned\n"));
    for (const int beyond : {41214, 41256}) {
        CHECK(said_of(levels(beyond)).starts_with("1 "));
        CHECK(contains(said_of(levels(beyond)), "OUTSIDE the drawing's 20 mm"));
    }
}

TEST_CASE("a level without a tolerance is shown and judged by nobody")
{
    const std::string said = said_of({{"invert_mm", 41335}, {"planned_invert_mm", 41235}});
    CHECK(said.starts_with("0 "));
    CHECK(contains(said, "100 mm above planned\n"));
}

TEST_CASE("a gasket that is not in its place is said")
{
    CHECK(said_of({{"gasket_seen", true}}).starts_with("0 "));
    CHECK(said_of({{"gasket_seen", false}}).starts_with("1 "));
    CHECK(contains(said_of({{"gasket_seen", false}}), "gasket NOT seen in its place"));
}

TEST_SUITE_END();
