// Row load for attachment, hook, headplate and hitch. What slings bear stands in row_sling_test.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

struct Rated {
    Role role;
    std::string tag;
    std::int64_t load; // kg under it in the good question
    Code unrated, over, near;
};

const std::array<Rated, 4> plain{{
    {Role::attachment, "A1", 1400, Code::attachment_unrated, Code::attachment_over_rating,
     Code::attachment_near_rating},
    {Role::hook, "K1", 1680, Code::hook_unrated, Code::hook_over_rating, Code::hook_near_rating},
    {Role::headplate, "P1", 1700, Code::headplate_unrated, Code::headplate_over_rating, Code::headplate_near_rating},
    {Role::hitch, "H1", 1800, Code::hitch_unrated, Code::hitch_over_rating, Code::hitch_near_rating},
}};

Question plate_of(const Rated& each, std::int64_t kg)
{
    Question q = good_lift();
    item(q, each.role).plate = Kilograms{kg};
    return q;
}

std::string one(Code code, const std::string& about) { return std::string{name(code)} + "(" + about + ") "; }

} // namespace

TEST_CASE("a load equal to the plate is allowed and a kilogram more is not")
{
    for (const Rated& each : plain) {
        CHECK(codes(plate_of(each, each.load)) == one(each.near, each.tag));
        CHECK(codes(plate_of(each, each.load - 1)) == one(each.over, each.tag));
    }
}

TEST_CASE("an item over its rating says load and rating")
{
    for (const Rated& each : plain) {
        const auto found = finding(plate_of(each, each.load - 1), each.over, each.tag);
        CHECK(found->measured == Figure{static_cast<double>(each.load)});
        CHECK(found->limit == Figure{static_cast<double>(each.load - 1)});
    }
}

// 1,800 is 90 % of 2,000; 1,800 of 1,999 is over 90 %.
TEST_CASE("at 90 % of the rating the load is not near and over it is")
{
    CHECK(is_silent(plate_of(plain[3], 2000)));
    CHECK(codes(plate_of(plain[3], 1999)) == "hitch-near-rating(H1) ");
}

// 90 % of 1,555 is 1,399.5 and of 1,556 is 1,400.4; of 1,866 is 1,679.4 and of 1,867 is 1,680.3; of 1,888 is 1,699.2
// and of 1,889 is 1,700.1.
TEST_CASE("each item is near its rating over 90 % of it")
{
    const std::array<std::int64_t, 3> near{1555, 1866, 1888};
    for (std::size_t i = 0; i < near.size(); ++i) {
        CHECK(codes(plate_of(plain[i], near[i])) == one(plain[i].near, plain[i].tag));
        CHECK(is_silent(plate_of(plain[i], near[i] + 1)));
    }
}

TEST_CASE("the model's rating serves where there is no plate and without both the item is unrated")
{
    for (const Rated& each : plain) {
        Question q = good_lift();
        item(q, each.role).plate.reset();
        CHECK(is_silent(q));
        model(q, each.role).rating.reset();
        CHECK(codes(q) == one(each.unrated, each.tag));
    }
}

TEST_CASE("a report's SWL alone does not rate an item")
{
    Question q = good_lift();
    item(q, Role::hook).plate.reset();
    model(q, Role::hook).rating.reset();
    report(q, Role::hook).swl = 9000_kg;
    CHECK(codes(q) == "hook-unrated(K1) ");
}

TEST_CASE("the lowest of plate and model and report governs")
{
    for (const Rated& each : plain) {
        Question q = good_lift();
        model(q, each.role).rating = Kilograms{each.load - 1};
        CHECK(codes(q) == one(each.over, each.tag));
        q = good_lift();
        report(q, each.role).swl = Kilograms{each.load - 1};
        CHECK(codes(q) == one(each.over, each.tag));
    }
}

TEST_CASE("a report gives the SWL of today's configuration")
{
    Question q = good_lift();
    item(q, Role::hook).configuration = "tip";
    report(q, Role::hook).configurations = {Configuration{"seat", 9000_kg}, Configuration{"tip", 1679_kg}};
    CHECK(codes(q) == "hook-over-rating(K1) ");
    item(q, Role::hook).configuration = "seat";
    CHECK(is_silent(q));
}

TEST_CASE("an interim statement's SWL counts as a report's does")
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    Interim interim;
    interim.examined = day("2026-11-20");
    interim.copy = Copy{true, true};
    interim.signed_ = interim.by_competent = interim.safe = true;
    interim.swl = 1679_kg;
    item(q, Role::hook).interims = {interim};
    CHECK(codes(q) == "hook-over-rating(K1) ");
}

TEST_CASE("water and mud hang on every item")
{
    for (Known<Kilograms> Move::*each : {&Move::water, &Move::mud}) {
        Question q = plate_of(plain[0], 1400);
        (*q.move).*each = 1_kg;
        CHECK(finds(q, Code::attachment_over_rating, "A1"));
    }
}

TEST_CASE("an item's own mass is not under it and those below are")
{
    Question q = plate_of(plain[1], 1680);
    item(q, Role::hook).mass = 500_kg;
    CHECK_FALSE(finds(q, Code::hook_over_rating));
    item(q, Role::sling).mass = 31_kg;
    CHECK(finds(q, Code::hook_over_rating, "K1"));
}

TEST_CASE("what hangs on the machine beside the load path is under no item")
{
    Question q = plate_of(plain[3], 2000);
    q.move->shackles = 50_kg;
    q.move->bucket = 50_kg;
    CHECK_FALSE(finds(q, Code::hitch_over_rating));
    CHECK_FALSE(finds(q, Code::hitch_near_rating));
}

TEST_CASE("a mass that is not known is said for every item above it")
{
    Question q = good_lift();
    item(q, Role::sling).mass.reset();
    CHECK_FALSE(finds(q, Code::load_unknown, "A1"));
    CHECK_FALSE(finds(q, Code::load_unknown, "S1"));
    for (const char* above : {"K1", "P1", "H1", "M1"})
        CHECK(finds(q, Code::load_unknown, above));
}

TEST_CASE("water or mud that is not known leaves every load unknown")
{
    for (Known<Kilograms> Move::*each : {&Move::water, &Move::mud}) {
        Question q = good_lift();
        (*q.move).*each = std::nullopt;
        for (const char* tag : {"A1", "S1", "K1", "P1", "H1", "M1"})
            CHECK(finds(q, Code::load_unknown, tag));
    }
}

TEST_CASE("shackles or a bucket that are not known leave the machine's load unknown")
{
    for (Known<Kilograms> Move::*each : {&Move::shackles, &Move::bucket}) {
        Question q = good_lift();
        (*q.move).*each = std::nullopt;
        CHECK(finds(q, Code::load_unknown, "M1"));
        CHECK_FALSE(finds(q, Code::load_unknown, "H1"));
    }
}

TEST_CASE("the machine's own mass is not asked")
{
    Question q = good_lift();
    item(q, Role::machine).mass.reset();
    CHECK(is_silent(q));
}

TEST_CASE("an unknown load is not also over a rating")
{
    Question q = plate_of(plain[0], 1);
    q.move->water.reset();
    CHECK_FALSE(finds(q, Code::attachment_over_rating));
}

TEST_CASE("a lift without a machine or an attachment has no known load")
{
    for (const Role role : {Role::machine, Role::attachment}) {
        Question q = good_lift();
        remove_item(q, role);
        CHECK(finds(q, Code::load_unknown, ""));
    }
}

TEST_CASE("no sling must be recorded")
{
    Question q = good_lift();
    remove_report(q, Role::sling);
    remove_item(q, Role::sling);
    CHECK(codes(q) == "sling-unrated() ");
    q.no_sling = false;
    CHECK(codes(q) == "sling-unrated() ");
    q.no_sling = true;
    CHECK(is_silent(q));
}

} // namespace cotter::rules
