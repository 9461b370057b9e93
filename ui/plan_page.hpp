#pragma once

// Site: lift plans. Looked at in numbers and pictures; made, worked out and issued by an appointed person.

#include "choice.hpp"
#include "form_page.hpp"
#include "outside.hpp"
#include "plan_numbers.hpp"
#include "plan_pictures.hpp"
#include "plan_work.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class PlanPage {
public:
    explicit PlanPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    enum class Page { list, delivery, view, who, form, worked, confirm, issued, gone };

    void list(Sheet& sheet);
    void view(Sheet& sheet);
    void delivery(Sheet& sheet);
    void who(Sheet& sheet);
    void form(Sheet& sheet);
    void confirm(Sheet& sheet);
    void issued(Sheet& sheet);
    void show(records::Json plan);
    void draw_from(const records::Json& plan, std::vector<std::string>& without);
    void begin(const std::string& person);
    void work_out();
    void work_out_lift_plan();
    void work_out_delivery();
    void issue();
    void draw_figures(Sheet& sheet, const Box& area);
    void press(const std::string& word);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    std::string new_id() const;

    const Outside& outside_;
    Page page_ = Page::list;
    std::size_t turned_ = 0;
    std::string id_, planner_;
    bool is_delivery_ = false;                     // of a unit, not of the work
    records::Json plan_ = records::Json::object(); // that is looked at
    std::optional<PlanPicture> picture_;           // nothing: numbers
    PlanNumbers numbers_;
    std::optional<PlanPictures> pictures_;
    std::optional<FormPage> form_;
    std::optional<desk::PlanWork> work_;
};

} // namespace cotter::ui
