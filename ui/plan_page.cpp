#include "plan_page.hpp"

#include "finding_words.hpp"
#include "kinds.hpp"
#include "people.hpp"
#include "plan_in_force.hpp"
#include "title_block.hpp"
#include "unloading.hpp"
#include "written.hpp"

#include <algorithm>
#include <stdexcept>

namespace cotter::ui {

using records::Json;

namespace {

constexpr std::array typed_fields{"title", "first_day", "last_day", "category", "roles", "sequence", "worksheet"};

// What the planner says; all else is worked out.
Json schema_of_typed()
{
    Json schema = records::find_kind("lift_plan")->schema;
    Json properties = Json::object();
    for (const char* each : typed_fields)
        properties[each] = schema.at("properties").at(each);
    schema["properties"] = properties;
    schema["required"] = {"first_day", "last_day", "worksheet"};
    return schema;
}

Json typed_of(const Json& plan)
{
    Json typed = Json::object();
    for (const char* each : typed_fields)
        if (plan.contains(each))
            typed[each] = plan.at(each);
    return typed;
}

Json schema_of_delivery()
{
    Json schema = records::find_kind("unloading_plan")->schema;
    schema["properties"].erase("results");
    return schema;
}

// The fields that a form has.
Json kept(const Json& from, const Json& schema)
{
    Json body = Json::object();
    for (const auto& [field, value] : from.items())
        if (schema.at("properties").contains(field))
            body[field] = value;
    return body;
}

std::vector<std::string> reasons(const desk::PlanWork& work, const records::Book& book)
{
    std::vector<std::string> all = work.refusals;
    const auto naming = [&](const std::string& id) { return desk::shown_name(book, id); };
    for (const desk::PlanStop& each : work.stops)
        all.push_back((each.place.empty() ? "" : "A lift from mark " + each.place + " would be stopped: ") +
                      words::says(each.finding, each.question, naming).joined());
    return all;
}

std::string days_of(const Json& plan) { return plan.value("first_day", "?") + " to " + plan.value("last_day", "?"); }

} // namespace

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

std::string PlanPage::new_id() const
{
    for (int i = 1;; ++i)
        if (const std::string id = "plan-" + std::to_string(i); !outside_.book.fact("plan", id))
            return id;
}

void PlanPage::list(Sheet& sheet)
{
    Choice choice{"Lift plans", "", {}, false, "Back"};
    std::vector<Json> plans;
    for (const auto& fact : outside_.book.facts("plan")) {
        plans.push_back(fact.doc);
        choice.options.push_back({fact.key.key + ", issue " + std::to_string(fact.doc.value("issue", 0)) +
                                      (fact.doc.value("issued", false) ? "" : ", not issued"),
                                  fact.doc.value("title", days_of(fact.doc)), std::nullopt});
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

void PlanPage::show(const Json& plan)
{
    plan_ = plan;
    id_ = plan.value("id", "");
    picture_.reset();
    pictures_.reset();
    std::vector<std::string> without;
    if (plan.contains("worksheet"))
        draw_from(plan, without);
    else
        without.emplace_back("This plan was made outside and entered: it has no worksheet, so it is not drawn");
    numbers_.show(outside_.book, plan.value("results", Json::array()), without);
    go(Page::view);
}

// The word that was pressed, "" for none. In two rows where the glass is narrow.
std::string PlanPage::view_buttons(Sheet& sheet, const std::vector<std::string>& words)
{
    const std::size_t rows = sheet.is_narrow() ? 2 : 1, columns = (words.size() + rows - 1) / rows;
    const double gap = 3, w = (sheet.width() - static_cast<double>(columns + 1) * gap) / static_cast<double>(columns);
    const double top = sheet.height() - title_height(sheet) - static_cast<double>(rows) * foot_mm + 1;
    std::string pressed;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (sheet.button(words[i], {gap + static_cast<double>(i % columns) * (w + gap),
                                    top + static_cast<double>(i / columns) * foot_mm, w, foot_mm - 2}))
            pressed = words[i];
    return pressed;
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
    if (word == "Issue it")
        issue();
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
        buttons.emplace_back("Issue it");
    sheet.fill({0, 0, sheet.width(), sheet.height()}, day.ground);
    const double foot = foot_mm * (sheet.is_narrow() ? 2 : 1);
    const Box area{0, head_mm, sheet.width(), sheet.height() - head_mm - foot - title_height(sheet)};
    sheet.fill(area, day.sheet);
    draw_figures(sheet, area);
    const std::string head = picture_    ? pictures_->caption(*picture_)
                             : is_worked ? (work_->fits() ? "It fits. Nothing is issued yet" : "It does not fit")
                                         : id_ + ", issue " + std::to_string(plan_.value("issue", 0));
    sheet.wrapped({4, 3.8, sheet.width() - 8, 0}, Letter::heading, head, 1);
    sheet.line(0, area.y, sheet.width(), area.y, thin_mm);
    sheet.line(0, area.y + area.h, sheet.width(), area.y + area.h, thin_mm);
    const std::string pressed = view_buttons(sheet, buttons);
    ui::draw(sheet, title_block(outside_, "APPOINTED PERSON", planner_));
    press(pressed);
}

void PlanPage::who(Sheet& sheet)
{
    const auto able = people_with(outside_.book, "roles", "appointed");
    Choice choice{"Which appointed person makes it?",
                  able.empty() ? "Nobody is admitted as appointed person. People admits them." : "",
                  {},
                  false,
                  "Back"};
    for (const std::string& each : able)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == able.size())
        return go(Page::list);
    outside_.signing.in(able[*pressed], [this, person = able[*pressed]] { begin(person); });
}

// Which unit comes; what was planned for it before is the start.
void PlanPage::delivery(Sheet& sheet)
{
    Choice choice{"Which unit is unloaded?",
                  "Its mass as delivered and its lifting points are in its records.",
                  {},
                  false,
                  "Back"};
    const auto units = outside_.book.facts("unit");
    for (const auto& each : units)
        choice.options.push_back(
            {desk::label_of(outside_.book, each.key.key), each.doc.value("role", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == units.size())
        return go(Page::list);
    id_ = units[*pressed].key.key;
    plan_ = desk::doc(outside_.book, "unloading", id_);
    go(Page::who);
}

void PlanPage::begin(const std::string& person)
{
    planner_ = person;
    if (is_delivery_)
        form_.emplace(outside_, desk::label_of(outside_.book, id_) + ": unloading", schema_of_delivery(),
                      kept(plan_, schema_of_delivery()), "Work it out");
    else
        form_.emplace(outside_, "Lift plan", schema_of_typed(), typed_of(plan_), "Work it out");
    go(Page::form);
}

void PlanPage::form(Sheet& sheet)
{
    const auto left = form_->draw(sheet, planner_);
    if (left == FormPage::Left::back)
        go(Page::list);
    if (left == FormPage::Left::done)
        work_out();
}

void PlanPage::work_out()
try {
    is_delivery_ ? work_out_delivery() : work_out_lift_plan();
    numbers_.show(outside_.book, work_->body.at("results"), reasons(*work_, outside_.book));
    picture_.reset();
    go(Page::worked);
} catch (const std::exception& why) { // a form that is not whole, a thing that is not in the book, a circle of runs
    form_->say(why.what());
}

void PlanPage::work_out_delivery()
{
    records::check_body(*records::find_kind("unloading_plan"), form_->body());
    work_ = desk::work_out_unloading(outside_.book, id_, form_->body(), outside_.now());
    pictures_.reset();
}

void PlanPage::work_out_lift_plan()
{
    Json body = form_->body();
    body["site"] = plan_.value("site", desk::current_site(outside_.book));
    body["issue"] = desk::doc(outside_.book, "plan", id_).value("issue", std::int64_t{0}) + 1;
    if (!body.contains("worksheet"))
        throw records::FormError{"worksheet: what the plan is worked out from is missing"};
    records::check_body(*records::find_kind("lift_plan"), body);
    work_ = desk::work_out_plan(outside_.book, id_, body, outside_.now());
    pictures_.reset();
    if (work_->refusals.empty())
        pictures_.emplace(outside_.book, work_->body, outside_.now());
}

void PlanPage::issue()
try {
    Json body = work_->body;
    if (is_delivery_) {
        desk::write(outside_.book, {desk::entry(outside_.hand(planner_), "unloading_plan", id_, body)});
        said_ = "How " + desk::label_of(outside_.book, id_) + " is unloaded is in the book";
        return go(Page::issued);
    }
    body["issued"] = body["signed"] = true;
    desk::write(outside_.book, {desk::entry(outside_.hand(planner_), "lift_plan", id_, body)});
    said_ = id_ + ", issue " + std::to_string(body.at("issue").get<int>()) + ", is in force from " +
            body.at("first_day").get<std::string>();
    go(Page::issued);
} catch (const records::FormError& why) {
    form_->say(why.what());
    go(Page::form);
}

void PlanPage::issued(Sheet& sheet)
{
    if (ask(sheet,
            {said_,
             is_delivery_
                 ? "Tell everybody who is there where to stand."
                 : "Everybody named for the day signs the briefing of this issue before the next lift; marks are "
                   "confirmed on the ground.",
             {{"Understood", "", figures::Sign::to_do}},
             false,
             ""}))
        go(Page::list);
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
    case Page::issued: issued(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
