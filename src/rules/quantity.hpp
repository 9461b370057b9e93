#pragma once

#include <compare>
#include <cstdint>

namespace cotter::rules {

// A whole number of one unit. Two quantities mix only if the unit is the same, so a length is never
// compared with a mass; integers, because a limit must compare the same on every machine.
// A quantity that nobody recorded is std::optional, never 0.
template <class Unit> class Quantity {
public:
    constexpr explicit Quantity(std::int64_t count) : count_{count} {}
    constexpr std::int64_t count() const { return count_; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity{a.count_ + b.count_}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity{a.count_ - b.count_}; }

private:
    std::int64_t count_;
};

// For formulas, which are in real numbers.
template <class Unit> constexpr double real(Quantity<Unit> q) { return static_cast<double>(q.count()); }

using Millimetres = Quantity<struct MillimetreUnit>;
using Kilograms = Quantity<struct KilogramUnit>;
using NewtonMetres = Quantity<struct NewtonMetreUnit>;
using Millidegrees = Quantity<struct MillidegreeUnit>;
using Density = Quantity<struct KilogramPerCubicMetreUnit>;
using Percent = Quantity<struct PercentUnit>;
using Days = Quantity<struct DayCountUnit>;
using Months = Quantity<struct MonthCountUnit>;
using Instant = Quantity<struct UtcSecondUnit>; // whole seconds since 1970-01-01T00:00:00Z

namespace literals {
constexpr Millimetres operator""_mm(unsigned long long n) { return Millimetres{static_cast<std::int64_t>(n)}; }
constexpr Kilograms operator""_kg(unsigned long long n) { return Kilograms{static_cast<std::int64_t>(n)}; }
} // namespace literals

} // namespace cotter::rules
