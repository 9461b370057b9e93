#pragma once

// The briefing on the plan in force: what is read out, and each person's own signature under this issue.

#include "outside.hpp"
#include "read_page.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

// A person signs that he was briefed on the issue that the plan has now.
void sign_briefing(const Outside& outside, const records::Json& plan, const std::string& person);

// The first plan in force today whose issue the person has not signed; of several each has its own briefing.
std::optional<records::Json> plan_to_sign(const Outside& outside, const std::string& person);

class BriefingPage {
public:
    explicit BriefingPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look();
    void add_people(const records::Json& plan);

    const Outside& outside_;
    std::string looked_of_;
    std::vector<records::Json> plans_; // in force today
    std::size_t shown_ = 0;
    std::vector<std::string> people_; // behind the lines that follow the first heading
    std::vector<ReadLine> lines_;
    ReadPage reading_;
};

} // namespace cotter::ui
