#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

constexpr std::array every_role{Role::machine, Role::hitch, Role::headplate, Role::hook, Role::sling, Role::attachment};

std::string one(Code code, const Id& tag) { return std::string{name(code)} + "(" + tag + ") "; }

} // namespace

TEST_CASE("a stop that was called quarantines the unit until somebody entitled lifts it")
{
    for (const Role role : every_role) {
        Question q = good_lift();
        Item& each = item(q, role);
        each.stops = {Stop{"stop", true}};
        CHECK(is_silent(q));
        each.stops = {Stop{"stop", true}, Stop{"again", false}};
        CHECK(codes(q) == one(Code::unit_quarantined, each.tag));
        each.stops = {Stop{"stop", std::nullopt}};
        CHECK(codes(q) == one(Code::unit_quarantined, each.tag));
    }
}

TEST_CASE("a unit is here by its newest record or elsewhere")
{
    for (const Role role : every_role) {
        Question q = good_lift();
        Item& each = item(q, role);
        each.at_site = "yard";
        CHECK(codes(q) == one(Code::unit_elsewhere, each.tag));
        each.at_site.reset();
        CHECK(codes(q) == one(Code::unit_elsewhere, each.tag));
    }
}

TEST_CASE("on a site that is not known every unit is elsewhere")
{
    Question q = good_lift();
    q.site->id.reset();
    item(q, Role::hook).at_site.reset();
    CHECK(finds(q, Code::unit_elsewhere, "K1"));
}

TEST_CASE("a unit that is off hire or scrapped stops and without such a record does not")
{
    for (const Role role : every_role) {
        Question q = good_lift();
        Item& each = item(q, role);
        each.off_hire = each.scrapped = false;
        CHECK(is_silent(q));
        each.off_hire = true;
        CHECK(codes(q) == one(Code::unit_off_hire, each.tag));
        each.off_hire.reset();
        each.scrapped = true;
        CHECK(codes(q) == one(Code::unit_scrapped, each.tag));
    }
}

} // namespace cotter::rules
