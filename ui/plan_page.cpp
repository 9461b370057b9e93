#include "plan_page.hpp"

#include "foot.hpp"
#include "form_words.hpp"
#include "plan_in_force.hpp"
#include "plan_lines.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

void PlanPage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> PlanPage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "APPOINTED PERSON", planner_));
    return pressed;
}

void PlanPage::list(Sheet& sheet)
{
    Choice choice{"Lift plans", "", {}, false, "Back"};
    std::vector<Json> plans;
    for (const auto& fact : outside_.book.facts("plan")) {
        plans.push_back(fact.doc);
        choice.options.push_back({say("{}, issue {}", fact.key.key, fact.doc.value("issue", 0)) +
                                      (fact.doc.value("issued", false) ? "" : ", " + say("not issued")),
                                  fact.doc.value("title", days_in_words(fact.doc)), std::nullopt});
    }
    choice.options.push_back({"A new plan", "made by the appointed person", std::nullopt});
    choice.options.push_back({"A delivery", "how a unit is unloaded", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::gone);
    is_delivery_ = *pressed > plans.size();
    if (is_delivery_)
        return go(Page::delivery);
    if (*pressed < plans.size())
        return show(plans[*pressed]);
    id_ = new_id();
    plan_ = Json::object();
    go(Page::who);
}

// What the worksheet names may have gone from the book.
void PlanPage::draw_from(const Json& plan, std::vector<std::string>& without)
try {
    pictures_.emplace(outside_.book, plan, outside_.now());
} catch (const std::exception& why) {
    without.emplace_back(why.what());
}

void PlanPage::show(Json plan)
{
    plan_ = plan;
    id_ = plan.value("id", "");
    picture_.reset();
    pictures_.reset();
    std::vector<std::string> without;
    for (const desk::Reason& each : desk::changes_since(outside_.book, plan))
        without.push_back(say("Outside of it now: {}", words::said(each)));
    if (plan.contains("worksheet"))
        draw_from(plan, without);
    numbers_.show(outside_.book, desk::lines_of_plan(outside_.book, plan), without);
    go(Page::view);
}

void PlanPage::draw_figures(Sheet& sheet, const Box& area)
{
    if (!picture_)
        return numbers_.draw(sheet, area);
    sheet.figure(pictures_->figure(*picture_, area.w, area.h), area.x, area.y);
}

void PlanPage::press(const std::string& word)
{
    if (word == "Numbers")
        picture_.reset();
    numbers_.scroll().press(word);
    for (const auto& [name, picture] : {std::pair{"Above", PlanPicture::above},
                                        {"Section", PlanPicture::section},
                                        {"Chart", PlanPicture::chart},
                                        {"Path", PlanPicture::path}})
        if (word == name)
            picture_ = picture;
    if (word == "Next mark")
        pictures_->next_stand();
    if (word == "Next step")
        pictures_->step();
    if (word == "New issue")
        go(Page::who);
    if (word == "Back")
        go(page_ == Page::worked ? Page::form : Page::list);
    if (word == "Issue")
        go(Page::confirm);
}

void PlanPage::view(Sheet& sheet)
{
    std::vector<std::string> buttons{"Back"};
    if (pictures_) {
        for (const char* each : {"Numbers", "Above", "Section", "Chart"})
            buttons.emplace_back(each);
        if (pictures_->has(PlanPicture::path))
            buttons.emplace_back("Path");
        if (picture_ && *picture_ != PlanPicture::path && pictures_->stands() > 1)
            buttons.emplace_back("Next mark");
        if (picture_ == PlanPicture::path && pictures_->steps() > 1)
            buttons.emplace_back("Next step");
    }
    const bool is_worked = page_ == Page::worked;
    if (!is_worked)
        buttons.emplace_back("New issue");
    else if (work_->fits())
        buttons.emplace_back("Issue");
    buttons = with_button(buttons, picture_ ? "" : numbers_.scroll().button());
    const std::string head = picture_    ? pictures_->caption(*picture_)
                             : is_worked ? (work_->fits() ? "It fits. Nothing is issued yet" : "It does not fit")
                                         : say("{}, issue {}", id_, plan_.value("issue", 0));
    draw_figures(sheet, begin_page(sheet, head, buttons));
    const std::string pressed = draw_foot(sheet, buttons);
    ui::draw(sheet, title_block(outside_, "APPOINTED PERSON", planner_));
    press(pressed);
}

bool PlanPage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::list: list(sheet); break;
    case Page::view:
    case Page::worked: view(sheet); break;
    case Page::delivery: delivery(sheet); break;
    case Page::who: who(sheet); break;
    case Page::form: form(sheet); break;
    case Page::confirm: confirm(sheet); break;
    case Page::issued: issued(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
