// What reaches what, over any number of links.

#include "past.hpp"

#include <doctest/doctest.h>

using cotter::rules::past_of;

TEST_SUITE_BEGIN("past");

TEST_CASE("a chain is reached as a whole from its end, in whatever order it is given")
{
    // 2 -> 0 -> 3 -> 1
    const auto past = past_of({{3}, {}, {0}, {1}});
    CHECK(past[2] == std::vector<bool>{true, true, false, true});
    CHECK(past[1] == std::vector<bool>{false, false, false, false});
    CHECK(past[3] == std::vector<bool>{false, true, false, false});
}

TEST_CASE("two branches reach what is before both and not each other")
{
    const auto past = past_of({{}, {0}, {0}, {1, 2}});
    CHECK_FALSE(past[1][2]);
    CHECK_FALSE(past[2][1]);
    CHECK(past[3] == std::vector<bool>{true, true, true, false});
}

TEST_CASE("in a circle each reaches all, itself too")
{
    const auto past = past_of({{1}, {2}, {0}});
    for (const auto& row : past)
        CHECK(row == std::vector<bool>{true, true, true});
}

TEST_CASE("a long chain needs neither much time nor a deep stack")
{
    cotter::rules::Links links(2000);
    for (std::size_t i = 1; i < links.size(); ++i)
        links[i].push_back(i - 1);
    const auto past = past_of(links);
    CHECK(past[1999][0]);
    CHECK_FALSE(past[0][1999]);
}

TEST_SUITE_END();
