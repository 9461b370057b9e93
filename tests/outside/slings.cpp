// Chain slings of grade 8, against EN 818-4 and EN 818-6.

#include "asking.hpp"
#include "sling.hpp"
#include "table.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace outside;
using namespace cotter::rules::literals;
using rules::Band;
using rules::Code;

namespace {

std::int64_t kg(const Record& row, const std::string& column) { return std::llround(number(row, column) * 1000); }

std::int64_t table_kg(const Record& row, std::int64_t legs, Band band)
{
    const auto found = rules::grade8_wll(rules::Millimetres{std::stoll(row.at("chain_mm"))}, legs, band);
    return found ? found->count() : -1;
}

rules::Sling measured(std::int64_t legs, std::int64_t millidegrees)
{
    rules::Sling sling;
    sling.legs = legs;
    sling.angle = rules::Millidegrees{millidegrees};
    return sling;
}

rules::Sling spread(std::vector<rules::Millimetres> between, rules::Millimetres leg)
{
    rules::Sling sling;
    sling.legs = between.size() == 1 ? 2 : 4;
    sling.spread = std::move(between);
    sling.leg_length = leg;
    return sling;
}

Band band_of(const rules::Sling& sling) { return rules::leg_angle(sling).value().band; }

// A two-leg 8 mm chain at 30 degrees: 2,800 kg by the table. The stated mass of the pipe is all that hangs.
rules::Question hanging(rules::Kilograms load)
{
    rules::Question question = lift();
    rules::Item sling = item(rules::Role::sling, "S");
    sling.sling = measured(2, 30'000);
    sling.sling->kind = "chain";
    sling.sling->grade = 8;
    sling.sling->chain = 8_mm;
    sling.sling->tag_to_45 = 2800_kg;
    rules::Item attachment = item(rules::Role::attachment, "C");
    attachment.mass = 0_kg;
    question.items = {item(rules::Role::machine, "A"), sling, attachment};
    rules::Pipe pipe;
    pipe.material = "concrete";
    pipe.bore = 300_mm, pipe.barrel = 400_mm, pipe.socket = 400_mm, pipe.overall = 1000_mm; // 137 kg
    pipe.stated = load;
    question.pipe = pipe;
    question.move = rules::Move{};
    question.move->water = 0_kg;
    question.move->mud = 0_kg;
    return question;
}

rules::Question hanging_askew(rules::Kilograms load, rules::Flag symmetric)
{
    rules::Question question = hanging(load);
    question.items[1].sling->symmetric = symmetric;
    return question;
}

} // namespace

// Source: EN 818-4, Table 3, grade 8, as reproduced in a public catalogue.
TEST_CASE("Every cell of EN 818-4 is what the table of the project says")
{
    const auto rows = read_table("chain_sling_en818_4");
    REQUIRE(rows.size() == 10);
    for (const Record& row : rows) {
        INFO("chain ", row.at("chain_mm"));
        CHECK(table_kg(row, 1, Band::to_45) == kg(row, "wll_t_1leg_0deg"));
        CHECK(table_kg(row, 2, Band::to_45) == kg(row, "wll_t_2leg_0_45"));
        CHECK(table_kg(row, 2, Band::to_60) == kg(row, "wll_t_2leg_over45_60"));
        for (const std::int64_t legs : {3, 4}) {
            CHECK(table_kg(row, legs, Band::to_45) == kg(row, "wll_t_3_4leg_0_45"));
            CHECK(table_kg(row, legs, Band::to_60) == kg(row, "wll_t_3_4leg_over45_60"));
        }
    }
}

// Source: EN 818-4: a leg is never over 60 degrees to the vertical; the table has ten sizes and one to four legs.
TEST_CASE("What the table of EN 818-4 does not have is not rated")
{
    for (const Record& row : read_table("chain_sling_en818_4"))
        for (const std::int64_t legs : {1, 2, 3, 4})
            CHECK(table_kg(row, legs, Band::over) == -1);
    for (const std::int64_t legs : {0, 5, -1})
        CHECK_FALSE(rules::grade8_wll(8_mm, legs, Band::to_45));
    for (const rules::Millimetres chain : {0_mm, 5_mm, 9_mm, 11_mm, 18_mm, 33_mm})
        CHECK_FALSE(rules::grade8_wll(chain, 2, Band::to_45));
}

// Source: EN 818-4 mode factors 1.4, 1.0, 2.1 and 1.5 (read). The table is rounded both ways, by less than 4 %.
TEST_CASE("The table lies within four per cent of one leg times the mode factor")
{
    struct Column {
        std::int64_t legs;
        Band band;
        std::string sling, angle;
    };
    const Column columns[] = {{2, Band::to_45, "2 leg", "0-45"},
                              {2, Band::to_60, "2 leg", ">45-60"},
                              {4, Band::to_45, "3 and 4 leg", "0-45"},
                              {4, Band::to_60, "3 and 4 leg", ">45-60"}};
    int compared = 0;
    for (const Record& factor : read_table("sling_mode_factors"))
        for (const Column& column : columns) {
            if (factor.at("standard") != "EN 818-4" || factor.at("sling") != column.sling ||
                factor.at("angle_to_vertical") != column.angle)
                continue;
            for (const Record& row : read_table("chain_sling_en818_4")) {
                INFO("chain ", row.at("chain_mm"), ", ", column.sling, " ", column.angle);
                const double multiplied = static_cast<double>(kg(row, "wll_t_1leg_0deg")) * number(factor, "factor");
                CHECK(std::abs(static_cast<double>(table_kg(row, column.legs, column.band)) / multiplied - 1) < 0.04);
                ++compared;
            }
        }
    CHECK(compared == 40);
}

// Source: EN 818-4 rates three and four legs alike (read). That a fourth leg carries nothing is common practice,
// no source.
TEST_CASE("Four legs are rated as three")
{
    for (const Record& row : read_table("chain_sling_en818_4"))
        for (const Band band : {Band::to_45, Band::to_60})
            CHECK(table_kg(row, 3, band) == table_kg(row, 4, band));
}

// Source: EN 818-4: bands 0 to 45 and over 45 to 60 degrees to the vertical, both ends included.
TEST_CASE("A measured angle falls in its band on both sides of 45 and of 60 degrees")
{
    for (const std::int64_t legs : {2, 3, 4}) {
        CHECK(band_of(measured(legs, 0)) == Band::to_45);
        CHECK(band_of(measured(legs, 44'999)) == Band::to_45);
        CHECK(band_of(measured(legs, 45'000)) == Band::to_45);
        CHECK(band_of(measured(legs, 45'001)) == Band::to_60);
        CHECK(band_of(measured(legs, 60'000)) == Band::to_60);
        CHECK(band_of(measured(legs, 60'001)) == Band::over);
    }
}

// Source: the same, with sin 45 = sqrt(2)/2 and sin 60 = sqrt(3)/2.
TEST_CASE("An angle by spread falls in its band on both sides of 45 and of 60 degrees")
{
    CHECK(band_of(spread({1414_mm}, 1000_mm)) == Band::to_45);          // 44.99 degrees
    CHECK(band_of(spread({1415_mm}, 1000_mm)) == Band::to_60);          // 45.03
    CHECK(band_of(spread({1732_mm}, 1000_mm)) == Band::to_60);          // 59.997
    CHECK(band_of(spread({1733_mm}, 1000_mm)) == Band::over);           // 60.05
    CHECK(band_of(spread({1000_mm, 1000_mm}, 1000_mm)) == Band::to_45); // exactly 45
    CHECK(band_of(spread({1000_mm, 1001_mm}, 1000_mm)) == Band::to_60);
    CHECK(band_of(spread({1000_mm, 1414_mm}, 1000_mm)) == Band::to_60); // 59.99
    CHECK(band_of(spread({1000_mm, 1415_mm}, 1000_mm)) == Band::over);
    CHECK(band_of(spread({2000_mm}, 999_mm)) == Band::over); // legs that do not reach
}

// Source: the C library's arc sine in extended precision.
TEST_CASE("An angle by spread agrees with the arc sine for many slings")
{
    std::mt19937 random{818};
    std::uniform_int_distribution<int> between{100, 3000}, leg{400, 4000};
    for (int i = 0; i < 20'000; ++i) {
        const int a = between(random), b = i % 2 ? between(random) : 0, l = leg(random);
        const long double half = std::hypot(static_cast<long double>(a), static_cast<long double>(b)) / 2;
        const long double angle = half >= l ? 90 : std::asin(half / l) * 180 / std::acos(-1.0L);
        std::vector<rules::Millimetres> sides{rules::Millimetres{a}};
        if (b)
            sides.emplace_back(b);
        const auto found = rules::leg_angle(spread(sides, rules::Millimetres{l})).value();
        INFO("between ", a, " and ", b, ", leg ", l);
        REQUIRE(found.degrees == doctest::Approx(static_cast<double>(angle)).epsilon(1e-9));
        if (std::abs(angle - 45) > 1e-9L && std::abs(angle - 60) > 1e-9L)
            REQUIRE(found.band == (angle < 45 ? Band::to_45 : angle < 60 ? Band::to_60 : Band::over));
    }
}

// Source: EN 818-4: loading may be taken as symmetric below 80 % of the limit (read). That otherwise half the limit
// counts is from memory (EN 818-6). 80 % of 2,800 kg is 2,240 kg.
TEST_CASE("From 80 per cent of its limit on a sling of unconfirmed symmetry counts half")
{
    CHECK_FALSE(finds(hanging_askew(2239_kg, std::nullopt), Code::sling_over_rating));
    CHECK(finds(hanging_askew(2240_kg, std::nullopt), Code::sling_over_rating));
    CHECK(finds(hanging_askew(2240_kg, false), Code::sling_over_rating));
    CHECK_FALSE(finds(hanging_askew(2240_kg, true), Code::sling_over_rating));
    CHECK_FALSE(finds(hanging_askew(2800_kg, true), Code::sling_over_rating));
    CHECK(finds(hanging_askew(2801_kg, true), Code::sling_over_rating));
}

// Source: own rule: of the sling's tag and the table the lower governs.
TEST_CASE("A tag above the table of EN 818-4 does not raise the limit")
{
    rules::Question question = hanging_askew(2801_kg, true);
    question.items[1].sling->tag_to_45 = 9000_kg;
    CHECK(finds(question, Code::sling_over_rating));
}

// Source: EN 818-4: over 60 degrees is refused, whatever hangs.
TEST_CASE("A sling over 60 degrees stops the lightest lift")
{
    rules::Question question = hanging(140_kg);
    question.items[1].sling->tag_to_60 = 2000_kg;
    question.items[1].sling->angle = rules::Millidegrees{60'000};
    CHECK_FALSE(finds(question, Code::sling_angle));
    question.items[1].sling->angle = rules::Millidegrees{60'001};
    CHECK(finds(question, Code::sling_angle));
}

// Source: EN 818-6 annex A, one leg of two, two and one of three or four; from memory.
TEST_CASE("Fewer legs than the tag is for: a half, two thirds, a third")
{
    CHECK(tag_for_fewer_legs(2'800_kg, 2, 2) == 2'800_kg);
    CHECK(tag_for_fewer_legs(2'800_kg, 2, 1) == 1'400_kg);
    for (const std::int64_t legs : {3, 4}) {
        CHECK(tag_for_fewer_legs(4'250_kg, legs, 3) == 4'250_kg);
        CHECK(tag_for_fewer_legs(4'250_kg, legs, 2) == 2'833_kg);
        CHECK(tag_for_fewer_legs(4'250_kg, legs, 1) == 1'416_kg);
    }
}
