#pragma once

// Site: the log of laid pipes, newest first, each joint drawn against its maker's tolerance.

#include "laid.hpp"
#include "outside.hpp"
#include "record_page.hpp"
#include "scroll.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class LaidPage {
public:
    explicit LaidPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look();
    void list(Sheet& sheet, const Box& area);
    void draw_line(Sheet& sheet, const desk::LaidPipe& laid, const Box& box);

    const Outside& outside_;
    std::vector<desk::LaidPipe> laid_;
    std::string laid_of_;
    TouchScroll scroll_;
    std::optional<RecordPage> record_;
};

} // namespace cotter::ui
