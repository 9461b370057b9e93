#pragma once

#include "quantity.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::rules {

// Where a lift is held until what is asked there is so. Source: LOLER 1998 reg. 8 (planned, supervised, carried out
// safely); who speaks and who watches, the roles of BS 7121; the points themselves are the firm's own rule.
enum class HoldPoint { before_grip, just_clear, at_trench, before_release };

// What the lift card is made from: the pipe that is asked for, the attachment's model, the plan's standing place.
struct CardFacts {
    bool first_of_type = true; // then the whole card

    std::string pipe;                            // as it is read on it
    std::optional<std::string> setting;          // that stands; nothing where the model has none
    std::optional<double> test_tilt, entry_tilt; // degrees; nothing: the model has no such step
    std::optional<double> tilt_limit;            // degrees
    std::optional<bool> faces_dry, may_push;     // as the model says; not said: clean is enough, and no pushing
    struct Own {
        HoldPoint at;
        std::string ask, if_not;
    };
    std::vector<Own> own; // the model's own steps

    std::string place, waits_at, light, route;
    std::optional<std::int64_t> zone_mm, wind_limit_mm_s;
    bool has_trench = true, someone_enters = true, is_strutted = true; // unless recorded otherwise
    struct Near {
        std::string what, whose_rule;
        std::int64_t least_mm;
    };
    std::vector<Near> near;
};

} // namespace cotter::rules
