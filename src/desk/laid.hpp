#pragma once

// The log of laid pipes: where each lies, and its joint against its maker's tolerance.

#include "register.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

struct LaidPipe {
    std::string id, pipe, run, bedding, words;
    rules::Day day;
    std::int64_t chainage_mm = 0;
    std::optional<std::int64_t> invert_mm, planned_invert_mm, joint_mm, joint_least_mm, joint_greatest_mm;
    rules::Flag gasket_seen;

    // Is the joint's gap within what the pipe's maker says, ends included? Nothing where either is not known.
    rules::Flag is_joint_within() const;
};

// At that site, newest first.
std::vector<LaidPipe> laid_pipes(const Book& book, const std::string& site);

Json to_json(const LaidPipe& laid); // as `cotter laid` prints it

} // namespace cotter::desk
