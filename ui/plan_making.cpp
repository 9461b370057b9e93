// Lift plans in Site: one made by touch, worked out, issued; and how a delivery is unloaded.

#include "plan_page.hpp"

#include "amounts.hpp"
#include "finding_words.hpp"
#include "form_words.hpp"
#include "kinds.hpp"
#include "people.hpp"
#include "plan_lines.hpp"
#include "unloading.hpp"
#include "written.hpp"

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

Json schema_of_delivery()
{
    Json schema = records::find_kind("unloading_plan")->schema;
    schema["properties"].erase("results");
    return schema;
}

std::vector<std::string> reasons(const desk::PlanWork& work, const records::Book& book)
{
    std::vector<std::string> all;
    for (const desk::Reason& each : work.refusals)
        all.push_back(words::said(each));
    const auto naming = [&](const std::string& id) { return desk::shown_name(book, id); };
    for (const desk::PlanStop& each : work.stops)
        all.push_back(words::says_of_planned_lift(each.place, each.finding, each.question, naming));
    return all;
}

// Of a lift plan: its marks, pipes, greatest load, radius and zone.
std::string said_of_work(const records::Book& book, const Json& body)
{
    if (!body.contains("greatest_kg"))
        return "";
    std::string marks, pipes;
    for (const Json& each : body.at("places"))
        marks += (marks.empty() ? "" : ", ") + each.at("id").get<std::string>();
    for (const std::string each : body.at("pipes"))
        pipes += (pipes.empty() ? "" : ", ") + desk::shown_name(book, each);
    return say("Marks {} \u00b7 {} \u00b7 up to {} kg at {} mm \u00b7 nobody inside {} mm", marks, pipes,
               body.value("greatest_kg", 0), body.value("greatest_radius_mm", 0), body.value("zone_mm", 0));
}

} // namespace

std::string PlanPage::new_id() const
{
    for (int i = 1;; ++i)
        if (const std::string id = "plan-" + std::to_string(i); !outside_.book.fact("plan", id))
            return id;
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
    const Json schema = is_delivery_ ? schema_of_delivery() : schema_of_typed();
    form_.emplace(outside_, is_delivery_ ? "A delivery" : "Lift plan", schema, fields_of(schema, plan_), "Work it out");
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

// What is signed, in one look, before it is in force.
void PlanPage::confirm(Sheet& sheet)
{
    const std::string by = desk::shown_name(outside_.book, planner_);
    const std::string head =
        is_delivery_ ? say("Unloading of {}", desk::label_of(outside_.book, id_))
                     : say("{}, issue {}", id_, work_->body.at("issue").get<int>()) + ", " + days_in_words(work_->body);
    const auto pressed = ask(sheet, {head,
                                     said_of_work(outside_.book, work_->body) + ". " +
                                         say("Signed by {}. It is never changed, only issued anew.", by),
                                     {{"Hold to issue it", "", figures::Sign::to_do, false, true}},
                                     true,
                                     "Back"});
    if (!pressed)
        return;
    *pressed == 0 ? issue() : go(Page::worked);
}

void PlanPage::issue()
try {
    Json body = work_->body;
    if (is_delivery_) {
        desk::write(outside_.book, {desk::entry(outside_.hand(planner_), "unloading_plan", id_, body)});
        return go(Page::issued);
    }
    body["issued"] = body["signed"] = true;
    desk::write(outside_.book, {desk::entry(outside_.hand(planner_), "lift_plan", id_, body)});
    go(Page::issued);
} catch (const records::FormError& why) {
    form_->say(why.what());
    go(Page::form);
}

void PlanPage::issued(Sheet& sheet)
{
    const Json& body = work_->body;
    const std::string said = is_delivery_
                                 ? say("How {} is unloaded is in the book", desk::label_of(outside_.book, id_))
                                 : say("{}, issue {}, is in force from {}", id_, body.at("issue").get<int>(),
                                       words::long_day(*rules::parse_day(body.at("first_day").get<std::string>())));
    if (ask(sheet,
            {said,
             is_delivery_
                 ? "Tell everybody who is there where to stand."
                 : "Everybody named for the day signs the briefing of this issue before the next lift; marks are "
                   "confirmed on the ground.",
             {{"Understood", "", figures::Sign::to_do}},
             false,
             ""}))
        go(Page::list);
}

} // namespace cotter::ui
