// Row load for slings. 1,650 kg hang under the sling of the good question.

#include "good_question.hpp"
#include "sling.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Sling& sling(Question& q) { return item(q, Role::sling).sling.value(); }

template <class Change> std::string after(const Change& change)
{
    Question q = good_lift();
    change(sling(q));
    return codes(q);
}

Sling legs_of(std::int64_t legs, std::vector<Millimetres> spread, Millimetres leg)
{
    Sling made;
    made.legs = legs;
    made.spread = std::move(spread);
    made.leg_length = leg;
    return made;
}

Band band(const Sling& s)
{
    const auto angle = leg_angle(s);
    REQUIRE(angle.has_value());
    return angle->band;
}

const std::string unrated = "sling-unrated(S1) ";
const std::string bad_angle = "sling-angle(S1) ";

} // namespace

TEST_CASE("a load equal to the tag is allowed and a kilogram more is not")
{
    CHECK(after([](Sling& s) { s.tag_to_45 = 1650_kg; }) == "sling-near-rating(S1) ");
    CHECK(after([](Sling& s) { s.tag_to_45 = 1649_kg; }) == "sling-over-rating(S1) ");
}

// 90 % of 1,833 is 1,649.7 and of 1,834 is 1,650.6.
TEST_CASE("a sling is near its rating over 90 % of it")
{
    CHECK(after([](Sling& s) { s.tag_to_45 = 1833_kg; }) == "sling-near-rating(S1) ");
    CHECK(after([](Sling& s) { s.tag_to_45 = 1834_kg; }) == "");
}

TEST_CASE("the table governs below the tag")
{
    CHECK(after([](Sling& s) { s.chain = 6_mm; }) == "sling-over-rating(S1) "); // 1,600
    CHECK(after([](Sling& s) { s.chain = 7_mm; }) == "");                       // 2,120
}

TEST_CASE("report and model limit a sling below its tag")
{
    Question q = good_lift();
    report(q, Role::sling).swl = 1649_kg;
    CHECK(codes(q) == "sling-over-rating(S1) ");
    q = good_lift();
    model(q, Role::sling).rating = 1649_kg;
    CHECK(codes(q) == "sling-over-rating(S1) ");
}

TEST_CASE("what rates a sling must be known")
{
    CHECK(after([](Sling& s) { s.tag_to_45.reset(); }) == unrated);
    CHECK(after([](Sling& s) { s.chain.reset(); }) == unrated);
    CHECK(after([](Sling& s) { s.chain = 9_mm; }) == unrated); // not in the table
    CHECK(after([](Sling& s) { s.legs.reset(); }) == unrated);
    CHECK(after([](Sling& s) { s.legs = 0; }) == unrated);
    CHECK(after([](Sling& s) { s.legs = 5; }) == unrated);
    CHECK(after([](Sling& s) { s.kind.reset(); }) == unrated);
    CHECK(after([](Sling& s) { s.grade.reset(); }) == unrated);
}

TEST_CASE("other kinds and grades go by the tag alone")
{
    CHECK(after([](Sling& s) { s.grade = 10, s.chain.reset(); }) == "");
    CHECK(after([](Sling& s) { s.kind = "webbing", s.chain.reset(), s.grade.reset(); }) == "");
    CHECK(after([](Sling& s) { s.kind = "webbing", s.tag_to_45 = 1649_kg; }) == "sling-over-rating(S1) ");
    CHECK(after([](Sling& s) { s.kind = "webbing", s.tag_to_45.reset(); }) == unrated);
}

TEST_CASE("an angle up to 45 degrees takes the first band of the tag and over it the second")
{
    CHECK(after([](Sling& s) { s.tag_to_60 = 1649_kg, s.angle = Millidegrees{45'000}; }) == "");
    CHECK(after([](Sling& s) { s.tag_to_60 = 1649_kg, s.angle = Millidegrees{45'001}; }) == "sling-over-rating(S1) ");
    CHECK(after([](Sling& s) { s.tag_to_45.reset(), s.angle = Millidegrees{45'001}; }) == "");
}

TEST_CASE("60 degrees is allowed and over it is refused")
{
    CHECK(after([](Sling& s) { s.angle = Millidegrees{60'000}; }) == "");
    CHECK(after([](Sling& s) { s.angle = Millidegrees{60'001}; }) == bad_angle);
}

TEST_CASE("an angle that is not known or impossible is refused")
{
    CHECK(after([](Sling& s) { s.angle.reset(); }) == bad_angle);
    CHECK(after([](Sling& s) { s.angle = Millidegrees{-1}; }) == bad_angle);
}

TEST_CASE("a sling about which nothing is known has no angle")
{
    Question q = good_lift();
    item(q, Role::sling).sling.reset();
    CHECK(codes(q) == bad_angle);
}

TEST_CASE("a bad angle silences the sling's rating")
{
    CHECK(after([](Sling& s) { s.angle.reset(), s.tag_to_45.reset(); }) == bad_angle);
    CHECK(after([](Sling& s) { s.angle = Millidegrees{70'000}, s.tag_to_45 = s.tag_to_60 = 1_kg; }) == bad_angle);
}

TEST_CASE("one leg hangs vertical or is refused")
{
    CHECK(after([](Sling& s) { s.legs = 1, s.angle = Millidegrees{0}; }) == ""); // 3,150
    CHECK(after([](Sling& s) { s.legs = 1, s.angle = Millidegrees{1}; }) == bad_angle);
    CHECK(after([](Sling& s) { s.legs = 1, s.angle.reset(); }) == bad_angle);
}

// Legs of 1,000 mm reach sin 45 at half the spread 707.1 and sin 60 at 866.03 mm.
TEST_CASE("the angle of two legs comes from the lug distance")
{
    CHECK(band(legs_of(2, {1414_mm}, 1000_mm)) == Band::to_45);
    CHECK(band(legs_of(2, {1415_mm}, 1000_mm)) == Band::to_60);
    CHECK(band(legs_of(2, {1732_mm}, 1000_mm)) == Band::to_60);
    CHECK(band(legs_of(2, {1733_mm}, 1000_mm)) == Band::over);
}

// sin 45 is reached where the squared diagonal is twice the squared leg: 2,000,000 for legs of 1,000 mm.
TEST_CASE("exactly 45 degrees by the lug rectangle is the lower band")
{
    CHECK(band(legs_of(4, {1000_mm, 1000_mm}, 1000_mm)) == Band::to_45);
    CHECK(band(legs_of(4, {1000_mm, 1001_mm}, 1000_mm)) == Band::to_60);
    CHECK(band(legs_of(4, {1400_mm, 200_mm}, 1000_mm)) == Band::to_45); // 1,960,000 + 40,000
    CHECK(band(legs_of(4, {1400_mm, 201_mm}, 1000_mm)) == Band::to_60);
}

// A sum of two squares is never 3 times a square, so no whole lug rectangle gives exactly 60 degrees: the nearest.
TEST_CASE("60 degrees by the lug rectangle is reached and passed")
{
    CHECK(band(legs_of(4, {1000_mm, 1414_mm}, 1000_mm)) == Band::to_60); // 2,999,396 of 3,000,000
    CHECK(band(legs_of(4, {1000_mm, 1415_mm}, 1000_mm)) == Band::over);  // 3,002,225
}

TEST_CASE("of a measured angle and that of the spread the greater counts")
{
    Sling s = legs_of(2, {1415_mm}, 1000_mm);
    s.angle = Millidegrees{10'000};
    CHECK(band(s) == Band::to_60);
    s = legs_of(2, {100_mm}, 1000_mm);
    s.angle = Millidegrees{45'001};
    CHECK(band(s) == Band::to_60);
}

TEST_CASE("a spread without the leg length or of another form gives no angle")
{
    CHECK_FALSE(leg_angle(legs_of(2, {1000_mm}, 0_mm)));
    CHECK_FALSE(leg_angle(legs_of(2, {1000_mm, 1000_mm}, 1000_mm)));
    CHECK_FALSE(leg_angle(legs_of(4, {1000_mm}, 1000_mm)));
    CHECK_FALSE(leg_angle(legs_of(3, {1000_mm}, 1000_mm)));
    Sling s = legs_of(2, {1000_mm}, 1000_mm);
    s.leg_length.reset();
    CHECK_FALSE(leg_angle(s));
}

TEST_CASE("legs shorter than half the spread are refused")
{
    CHECK(band(legs_of(2, {2001_mm}, 1000_mm)) == Band::over);
    CHECK(leg_angle(legs_of(2, {2001_mm}, 1000_mm))->degrees == 90);
}

// 1,650 is under 80 % of 2,063 (1,650.4) and over 80 % of 2,062 (1,649.6).
TEST_CASE("from 80 % of its limit on a sling whose symmetry is not confirmed counts half")
{
    CHECK(after([](Sling& s) { s.symmetric = false, s.tag_to_45 = 2063_kg; }) == "");
    CHECK(after([](Sling& s) { s.symmetric = false, s.tag_to_45 = 2062_kg; }) == "sling-over-rating(S1) ");
    CHECK(after([](Sling& s) { s.symmetric.reset(), s.tag_to_45 = 2062_kg; }) == "sling-over-rating(S1) ");
    CHECK(after([](Sling& s) { s.symmetric = true, s.tag_to_45 = 2062_kg; }) == "");
}

TEST_CASE("at exactly 80 % of its limit a sling counts half")
{
    Question q = good_lift();
    q.pipe->stated = 1390_kg; // 1,640 under the sling, 80 % of 2,050
    sling(q).tag_to_45 = 2050_kg;
    sling(q).symmetric = false;
    CHECK(codes(q) == "sling-over-rating(S1) ");
    CHECK(finding(q, Code::sling_over_rating, "S1")->limit == Figure{1025.0});
}

TEST_CASE("the 80 % are of the lowest limit and not of the tag")
{
    Question q = good_lift();
    sling(q).symmetric = false;
    report(q, Role::sling).swl = 2062_kg;
    CHECK(codes(q) == "sling-over-rating(S1) ");
}

TEST_CASE("a sling of one leg has no symmetry to confirm")
{
    CHECK(after([](Sling& s) { s.legs = 1, s.angle = Millidegrees{0}, s.symmetric = false, s.tag_to_45 = 2000_kg; }) ==
          "");
}

// EN 818-4, grade 8, kg: one leg; two legs to 45 and to 60; three or four legs to 45 and to 60.
TEST_CASE("working load limits of grade 8 chain are looked up")
{
    CHECK(grade8_wll(8_mm, 1, Band::to_45) == 2000_kg);
    CHECK(grade8_wll(8_mm, 2, Band::to_45) == 2800_kg);
    CHECK(grade8_wll(8_mm, 2, Band::to_60) == 2000_kg);
    CHECK(grade8_wll(8_mm, 3, Band::to_45) == 4250_kg);
    CHECK(grade8_wll(13_mm, 4, Band::to_45) == 11'200_kg);
    CHECK(grade8_wll(13_mm, 4, Band::to_60) == 8000_kg);
    CHECK_FALSE(grade8_wll(8_mm, 2, Band::over));
    CHECK_FALSE(grade8_wll(9_mm, 2, Band::to_45));
    CHECK_FALSE(grade8_wll(8_mm, 5, Band::to_45));
}

TEST_CASE("of several slings each is asked with what hangs below it")
{
    Question q = good_lift();
    Item upper = item(q, Role::sling);
    upper.tag = "S0";
    upper.sling->tag_to_45 = 1679_kg; // 1,400 + 250 + 30 under it
    q.items.insert(q.items.begin() + 4, upper);
    CHECK(finds(q, Code::sling_over_rating, "S0"));
    CHECK_FALSE(finds(q, Code::sling_over_rating, "S1"));
}

} // namespace cotter::rules
