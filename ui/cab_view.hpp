#pragma once

// What the Cab's sheet shows, made from the book and the decision: nothing to look up, nothing to decide.

#include "attachment.hpp"
#include "choice.hpp"
#include "lift_question.hpp"
#include "outside.hpp"
#include "plate.hpp"
#include "title_block.hpp"

#include "finding.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

struct CabSheet {
    Plate plate;
    std::vector<Row> rows;
    std::vector<std::optional<rules::Finding>> findings; // behind the rows
    std::string gear, pipe, signaller, supervisor;       // over the picture
    std::optional<figures::AttachmentPicture> picture;   // nothing: look first
    std::vector<figures::NamedRange> ranges;
    std::vector<std::string> under; // under MAY LIFT: pipe, setting, place, until when, signal and zone
    bool check_done = false, setting_right = false, has_setting = false;
    TitleBlock title;
};

// `question` and `decision` belong together.
CabSheet cab_sheet(const Outside& outside, const desk::LiftAsked& asked, const rules::Question& question,
                   const rules::Decision& decision);

// Has anybody said this shift how the setting stands? Cotter shows what is wanted only afterwards.
bool has_looked(const rules::Question& question);

// Units of the load path whose check is missing or stale, and the lines to be answered.
struct ToCheck {
    std::string unit;
    std::vector<desk::SheetLine> lines;
};
std::vector<ToCheck> to_check(const Outside& outside, const desk::LiftAsked& asked, const rules::Question& question);

} // namespace cotter::ui
