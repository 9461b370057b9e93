#pragma once

// A plan that has a worksheet, drawn: one of its standing places, on one of its pictures.

#include "lift_plan.hpp"
#include "plan_sheet.hpp"

#include "sheet.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

enum class PlanPicture { above, section, chart, path };

class PlanPictures {
public:
    PlanPictures(const records::Book& book, const records::Json& plan, rules::Instant now);

    bool has(PlanPicture picture) const { return picture != PlanPicture::path || path_asked_.has_value(); }
    std::string caption(PlanPicture picture) const;
    figures::Figure figure(PlanPicture picture, double width, double height) const;

    void next_stand() { stand_ = (stand_ + 1) % plan_.sheet.at("stands").size(); }
    std::size_t stands() const { return plan_.sheet.at("stands").size(); }
    void step(); // of the path; from the last to the first
    std::size_t steps() const { return path_.size(); }

private:
    const records::Json& stand() const { return plan_.sheet.at("stands").at(stand_); }
    figures::StandDrawn drawn() const;

    desk::PlanSheet plan_;
    records::Json whole_; // the plan's body
    rules::Pipe pipe_;    // widest over all
    std::size_t stand_ = 0, step_ = 0;
    std::optional<rules::PathAsked> path_asked_;
    std::vector<rules::Pose> path_;
};

} // namespace cotter::ui
