#pragma once

// The log of laid pipes: where each lies, its joint against its maker's tolerance, its level against the drawing's.

#include "register.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

struct LaidPipe {
    std::string id, pipe, run, bedding, words;
    rules::Day day;
    std::int64_t chainage_mm = 0;
    std::optional<std::int64_t> invert_mm, planned_invert_mm, level_tolerance_mm, joint_mm, joint_least_mm,
        joint_greatest_mm;
    rules::Flag gasket_seen;

    // Is the joint's gap within what the pipe's maker says, ends included? Nothing where it is not known,
    // or inside of the one end that is.
    rules::Flag is_joint_within() const;

    std::optional<std::int64_t> above_planned_mm() const;
    rules::Flag is_level_within() const; // of what the drawing allows, ends included
    bool is_in_order() const;            // nothing that is known is wrong with joint, level or gasket
};

// At that site, newest first.
std::vector<LaidPipe> laid_pipes(const Book& book, const std::string& site);

Json to_json(const LaidPipe& laid); // as `cotter laid` prints it

} // namespace cotter::desk
