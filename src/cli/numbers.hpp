#pragma once

// Numbers, days and instants as typed: decimal digits with optional sign and point only. BadInput names the option.

#include "day.hpp"
#include "quantity.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace cotter::cli {

// An option's text with its name, as given; empty: not given.
struct Given {
    std::string option, text;
    bool is_given() const { return !text.empty(); }
};

double number(const Given& given);   // any size, finite
double positive(const Given& given); // over 0
double at_least_zero(const Given& given);
std::optional<double> optional_positive(const Given& given);
double metres(const Given& given);        // no further either way than a record may say, 1,000 m
double radius_metres(const Given& given); // and at least 0
std::int64_t whole_between(const Given& given, std::int64_t least, std::int64_t greatest);
rules::Day day(const Given& given);
rules::Instant instant(const Given& given);

// The real clock; the only place that asks for it.
rules::Instant now();
rules::Day today(); // UTC, where no site says otherwise

} // namespace cotter::cli
