#include "cab.hpp"

#include "amounts.hpp"
#include "local_time.hpp"
#include "people.hpp"
#include "plan_in_force.hpp"
#include "setting.hpp"
#include "written.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace cotter::ui {

using records::Json;
using rules::Code;

void Cab::go(Page page)
{
    if (page == Page::move)
        step_ = 0; // parked, isolated and nobody beneath are asked each time
    page_ = page;
    opened_ = outside_.ticks();
    turned_ = first_ = 0;
}

void Cab::write(records::Entry entry) { desk::write(outside_.book, {std::move(entry)}); }

bool Cab::is_settled() const
{
    constexpr double settling = 0.35; // s
    return outside_.ticks() - opened_ >= settling;
}

std::optional<std::size_t> Cab::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "OPERATOR", operator_));
    return is_settled() ? pressed : std::nullopt;
}

std::string Cab::unit_of(const std::string& tag) const
{
    for (const std::string& each : desk::load_path(outside_.book, asked()))
        if (desk::tag_of(outside_.book, each) == tag)
            return each;
    return "";
}

desk::LiftAsked Cab::asked() const
{
    desk::LiftAsked asked;
    asked.unit = unit_;
    asked.pipe = pipe_;
    asked.machine = machine_;
    asked.on_the_levers = operator_;
    asked.standing = standing_;
    asked.now = outside_.now();
    return asked;
}

void Cab::think()
{
    const desk::LiftAsked now = asked();
    const auto state = outside_.book.state();
    const std::string of = std::to_string(state.head.seq) + (state.checked ? " " : "? ") +
                           std::to_string(now.now.count()) + unit_ + "|" + standing_ + "|" + pipe_ + "|" + machine_ +
                           "|" + operator_;
    if (of == thought_of_)
        return;
    question_ = lift_question(outside_.book, now);
    decision_ = decide(question_);
    thought_of_ = of;
}

Json Cab::model() const
{
    return desk::doc(outside_.book, "model", desk::doc(outside_.book, "unit", unit_).value("model", ""));
}

std::string Cab::hitch() const { return desk::doc(outside_.book, "coupling", machine_).value("hitch", ""); }

void Cab::choose_person(Sheet& sheet)
{
    const auto people = people_with(outside_.book, "roles", "operator");
    Choice choice{"Who is on the levers?",
                  people.empty() ? "Nobody is admitted as operator. The supervisor admits people in Site." : "",
                  {},
                  false,
                  "Back"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    choice.options.push_back({"A unit has come", "for the gateman", std::nullopt});
    choice.options.push_back({"Find a unit", "by the digits of its tag", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::gone);
    if (*pressed == people.size() + 1)
        return outside_.find ? outside_.find() : void();
    if (*pressed == people.size()) {
        receive_.emplace(outside_, false);
        return go(Page::receive);
    }
    if (!lift_still_up().empty())
        return take_the_levers(people[*pressed]); // setting down asks for no PIN
    outside_.signing.in(people[*pressed], [this, person = people[*pressed]] { take_the_levers(person); });
}

// A shift that runs is taken over without its last operator.
void Cab::take_the_levers(const std::string& person)
{
    operator_ = person;
    machine_.clear();
    unit_.clear();
    standing_.clear();
    pipe_.clear();
    lift_ = lift_still_up();
    go(!lift_.empty() ? Page::load_up : is_in_shift() ? Page::machine : Page::shift);
}

bool Cab::is_in_shift() const
{
    const Json shift = desk::open_shift(outside_.book, desk::current_site(outside_.book));
    return !shift.empty() && outside_.now().count() <= shift.value("end", std::int64_t{0});
}

std::string Cab::lift_still_up() const
{
    for (const auto& fact : outside_.book.facts("lift"))
        if (fact.open)
            return fact.key.key;
    return "";
}

void Cab::start_shift(Sheet& sheet)
{
    constexpr std::array<std::int64_t, 4> hours{8, 10, 12, 14};
    const std::string site = desk::current_site(outside_.book), zone = desk::zone_of(outside_.book, site);
    Choice choice{
        "No shift is open. How long is this one?", "It may cross midnight; 14 hours at most.", {}, false, "Back"};
    for (const std::int64_t each : hours) {
        const rules::Instant end = outside_.now() + rules::Instant{each * 3600};
        choice.options.push_back(
            {say("{} hours", each), say("to {}", words::clock_time(desk::local_minutes(end, zone))), std::nullopt});
    }
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == hours.size())
        return go(Page::who);
    write(open_a_shift(outside_.hand(operator_), site, hours[*pressed] * 3600, zone));
    go(Page::machine);
}

void Cab::choose_machine(Sheet& sheet)
{
    std::vector<std::pair<std::string, std::string>> rigs;
    Choice choice{"Which machine, with which attachment?", "", {}, false, "Back"};
    for (const auto& fact : outside_.book.facts("coupling")) {
        const std::string attachment = fact.doc.value("attachment", "");
        if (attachment.empty())
            continue;
        rigs.emplace_back(fact.key.key, attachment);
        choice.options.push_back({desk::label_of(outside_.book, fact.key.key),
                                  say("with {}", desk::label_of(outside_.book, attachment)), std::nullopt});
    }
    if (rigs.empty())
        choice.hint = "Nothing is coupled by the record. Couple an attachment and record it first.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == rigs.size())
        return go(Page::who);
    std::tie(machine_, unit_) = rigs[*pressed];
    standing_.clear();
    go(marks().empty() ? Page::pipe : Page::standing); // the sheet says that there is no plan
}

std::vector<Json> Cab::marks() const
{
    return desk::places_in_force(outside_.book, desk::current_site(outside_.book), outside_.hand("").day);
}

// Radius and heights come from the plan's place: the operator only says where the machine stands.
void Cab::choose_standing(Sheet& sheet)
{
    const auto places = marks();
    Choice choice{places.size() == 1 ? say("Standing at mark {}?", places[0].value("id", ""))
                                     : std::string{"At which mark do you stand?"},
                  "Look at the mark on the ground.",
                  {},
                  false,
                  "Back"};
    for (const Json& each : places)
        choice.options.push_back({say("Mark {}", each.value("id", "")), "", std::nullopt});
    choice.options.push_back({"At none of them", "the lift is not planned from there", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed > places.size())
        return go(Page::machine);
    standing_ = *pressed == places.size() ? "no mark" : places[*pressed].value("id", "");
    go(Page::pipe);
}

void Cab::choose_pipe(Sheet& sheet)
{
    const auto pipes = outside_.book.facts("pipe");
    Choice choice{"Read maker and size on the pipe. Which one is it?", "", {}, false, "Back"};
    for (const auto& fact : pipes)
        choice.options.push_back({fact.doc.value("name", fact.key.key), fact.doc.value("maker", ""), std::nullopt});
    choice.options.push_back({"None of these", "the check can be done; no lift", std::nullopt});
    if (!marks().empty())
        choice.options.push_back({"Another mark", "the machine has moved", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == pipes.size() + 1 && !marks().empty())
        return go(Page::standing);
    if (*pressed > pipes.size())
        return go(marks().empty() ? Page::machine : Page::standing);
    pipe_ = *pressed < pipes.size() ? pipes[*pressed].key.key : "";
    think();
    const bool adjusts = model().value("adjusts", true) && !model().value("states", Json::array()).empty();
    go(adjusts && !has_looked(question_) ? Page::look : Page::sheet);
}

void Cab::work(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    const auto pressed = ui::draw(sheet, view, first_);
    if (pressed && is_settled())
        act(*pressed, view, cab_rows(sheet, view));
}

void Cab::act(const CabPressed& pressed, const CabSheet& view, std::size_t fit)
{
    using What = CabPressed::What;
    switch (pressed.what) {
    case What::check: explained_.reset(); return begin_check("");
    case What::pin: return go(!view.has_setting ? Page::pipe : !view.picture ? Page::look : Page::move);
    case What::lift: return ask_for_lift();
    case What::report: return go(Page::report);
    case What::different_pipe: return go(Page::pipe);
    case What::more: first_ = first_ + fit - 1 < view.rows.size() ? first_ + fit - 1 : 0; return;
    case What::row:
        if (view.findings[pressed.row])
            act_on(*view.findings[pressed.row]);
    }
}

// A defect is cleared, a stop lifted, a report photographed by whom it concerns, on this screen.
bool Cab::open_what_clears(const rules::Finding& finding)
{
    const std::string unit = unit_of(finding.about);
    if (unit.empty())
        return false;
    if (finding.code == Code::check_stopped || finding.code == Code::check_report)
        for (const desk::OpenDefect& each : desk::open_defects(outside_.book, outside_.hand("").day))
            if (each.unit == unit) {
                clears_.emplace(outside_, each, false);
                go(Page::clear_defect);
                return true;
            }
    if (finding.code == Code::unit_quarantined && !open_stops(outside_.book, unit).empty()) {
        lifts_stop_.emplace(outside_, unit, false);
        go(Page::lift_stop);
        return true;
    }
    if (finding.code == Code::evidence_missing || finding.code == Code::evidence_own_sites) {
        copy_.emplace(outside_, unit);
        go(Page::copy);
        return true;
    }
    return false;
}

// Each finding's button leads to where it is cleared; what others clear is explained.
void Cab::act_on(const rules::Finding& finding)
{
    explained_ = finding;
    if (open_what_clears(finding))
        return;
    switch (row(finding.code)) {
    case rules::Row::check:
        return finding.code == Code::check_none || finding.code == Code::check_stale ? begin_check(finding.about)
                                                                                     : go(Page::clears);
    case rules::Row::setting:
        return go(finding.code == Code::setting_wrong || !was_ever_set(question_) ? Page::move
                  : finding.code == Code::setting_unseen                          ? Page::second
                  : finding.code == Code::setting_none                            ? Page::clears
                                                                                  : Page::look);
    case rules::Row::hitch:
        return go(finding.code == Code::hitch_unseen && !hitch().empty() ? Page::lock : Page::clears);
    default: return go(finding.code == Code::briefing_none ? Page::briefing : Page::clears);
    }
}

void Cab::draw_page(Sheet& sheet)
{
    switch (page_) {
    case Page::who: return choose_person(sheet);
    case Page::shift: return start_shift(sheet);
    case Page::machine: return choose_machine(sheet);
    case Page::standing: return choose_standing(sheet);
    case Page::pipe: return choose_pipe(sheet);
    case Page::sheet: return work(sheet);
    case Page::look: return look(sheet);
    case Page::move: return step_of_move(sheet);
    case Page::set_to: return choose_state(sheet);
    case Page::second: return choose_second(sheet);
    case Page::second_look: return second_look(sheet);
    case Page::check: return check(sheet);
    case Page::answer_words: return answer_words(sheet);
    case Page::checked: return nothing_to_check(sheet);
    case Page::failed: return say_what_now(sheet);
    case Page::lock: return look_at_lock(sheet);
    case Page::clears: return explain(sheet);
    case Page::briefing: return briefing(sheet);
    case Page::clear_defect: return clears_->draw(sheet) ? void() : go(Page::sheet);
    case Page::lift_stop: return lifts_stop_->draw(sheet) ? void() : go(Page::sheet);
    case Page::copy: return copy_->draw(sheet) ? void() : go(Page::sheet);
    case Page::report: return report(sheet);
    case Page::report_unit: return report_unit(sheet);
    case Page::report_words: return report_words(sheet);
    case Page::report_photo: return report_photo(sheet);
    case Page::receive: return receive_->draw(sheet) ? void() : go(Page::who);
    case Page::call: return call_->draw(sheet) ? void() : go(Page::sheet);
    case Page::card: return card(sheet);
    case Page::card_no: return card_no(sheet);
    case Page::card_ends: return card_ends(sheet);
    case Page::lift: return lift(sheet);
    case Page::load_up: return load_up(sheet);
    case Page::refused: return refused(sheet);
    case Page::stand_down: return confirm_stand_down(sheet);
    case Page::receipt: return receipt(sheet);
    case Page::gone: return;
    }
}

bool Cab::draw(Sheet& sheet)
{
    draw_page(sheet);
    if (page_ != Page::gone)
        return true;
    page_ = Page::who;
    return false;
}

} // namespace cotter::ui
