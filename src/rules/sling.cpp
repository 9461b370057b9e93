#include "sling.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace cotter::rules {

namespace {

struct ChainRow {
    int chain_mm;
    std::array<int, 5> kg; // 1 leg; 2 legs to 45, to 60; 3 or 4 legs to 45, to 60
};

// Source: EN 818-4, Table 3, grade 8, as reproduced in a public catalogue; tonnes there, kg here.
constexpr std::array<ChainRow, 10> grade8{{
    {6, {1120, 1600, 1120, 2360, 1700}},
    {7, {1500, 2120, 1500, 3150, 2240}},
    {8, {2000, 2800, 2000, 4250, 3000}},
    {10, {3150, 4250, 3150, 6700, 4750}},
    {13, {5300, 7500, 5300, 11200, 8000}},
    {16, {8000, 11200, 8000, 17000, 11800}},
    {20, {12500, 17000, 12500, 26500, 19000}},
    {22, {15000, 21200, 15000, 31500, 22400}},
    {26, {21200, 30000, 21200, 45000, 31500}},
    {32, {31500, 45000, 31500, 67000, 47500}},
}};

std::optional<std::size_t> column(std::int64_t legs, Band band)
{
    if (legs == 1)
        return 0;
    const std::size_t upper = band == Band::to_45 ? 0 : 1;
    if (legs == 2)
        return 1 + upper;
    if (legs == 3 || legs == 4)
        return 3 + upper;
    return std::nullopt;
}

// Four times the square of half the spread: compared with the leg length in whole numbers.
std::optional<std::int64_t> spread_squared(const Sling& sling)
{
    if (sling.legs == 2 && sling.spread.size() == 1)
        return sling.spread[0].count() * sling.spread[0].count();
    if (sling.legs == 4 && sling.spread.size() == 2)
        return sling.spread[0].count() * sling.spread[0].count() + sling.spread[1].count() * sling.spread[1].count();
    return std::nullopt;
}

// sin 45 = sqrt(2)/2 and sin 60 = sqrt(3)/2, so with s the spread and l the leg: s*s <= 2*l*l, s*s <= 3*l*l.
std::optional<LegAngle> from_spread(const Sling& sling)
{
    const auto squared = spread_squared(sling);
    if (!squared || !sling.leg_length || sling.leg_length->count() <= 0)
        return std::nullopt;
    const std::int64_t leg = sling.leg_length->count();
    const Band band = *squared <= 2 * leg * leg ? Band::to_45 : *squared <= 3 * leg * leg ? Band::to_60 : Band::over;
    return LegAngle{band, spread_angle_degrees(std::sqrt(static_cast<double>(*squared)) / 2, static_cast<double>(leg))};
}

std::optional<LegAngle> from_measure(const Sling& sling)
{
    if (!sling.angle || sling.angle->count() < 0)
        return std::nullopt;
    const std::int64_t angle = sling.angle->count();
    const Band band = angle <= 45'000 ? Band::to_45 : angle <= 60'000 ? Band::to_60 : Band::over;
    return LegAngle{band, static_cast<double>(angle) / 1000};
}

bool must_use_table(const Sling& sling) { return sling.kind == "chain" && sling.grade == 8; }

// Which rule applies is itself unknown.
bool kind_unknown(const Sling& sling) { return !sling.kind || (sling.kind == "chain" && !sling.grade); }

} // namespace

std::optional<Kilograms> grade8_wll(Millimetres chain, std::int64_t legs, Band band)
{
    const auto place = column(legs, band);
    if (!place || band == Band::over)
        return std::nullopt;
    for (const ChainRow& each : grade8)
        if (each.chain_mm == chain.count())
            return Kilograms{each.kg[*place]};
    return std::nullopt;
}

double spread_angle_degrees(double half_spread_mm, double leg_length_mm)
{
    const double sine = half_spread_mm / leg_length_mm;
    return sine >= 1 ? 90 : std::asin(sine) * 180 / std::numbers::pi;
}

std::optional<LegAngle> leg_angle(const Sling& sling)
{
    const auto measured = from_measure(sling);
    if (sling.legs == 1)
        return measured && measured->degrees == 0 ? measured : std::nullopt;
    const auto spread = from_spread(sling);
    if (!measured || !spread)
        return measured ? measured : spread;
    return LegAngle{std::max(measured->band, spread->band), std::max(measured->degrees, spread->degrees)};
}

std::optional<Kilograms> sling_limit(const Sling& sling, Band band)
{
    if (kind_unknown(sling) || !sling.legs || *sling.legs < 1 || *sling.legs > 4)
        return std::nullopt;
    const auto tag = band == Band::to_45 ? sling.tag_to_45 : sling.tag_to_60;
    if (!tag || !must_use_table(sling))
        return tag;
    const auto table = sling.chain ? grade8_wll(*sling.chain, *sling.legs, band) : std::nullopt;
    return table ? std::optional{std::min(*tag, *table)} : std::nullopt;
}

Kilograms tag_for_fewer_legs(Kilograms tag, std::int64_t legs, std::int64_t used)
{
    if (used >= legs || (legs == 4 && used == 3))
        return tag;
    return Kilograms{legs == 2 ? tag.count() / 2 : tag.count() * used / 3};
}

} // namespace cotter::rules
