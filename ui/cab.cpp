#include "cab.hpp"

#include "finding_words.hpp"

#include <algorithm>
#include <utility>

namespace cotter::ui {

using records::Json;
using rules::Code;

namespace {

std::vector<std::string> people_with(const records::Book& book, const char* list, const std::string& wanted)
{
    std::vector<std::string> people;
    for (const auto& fact : book.facts("person")) {
        const auto has = fact.doc.value("admission", Json::object()).value(list, std::vector<std::string>{});
        if (std::find(has.begin(), has.end(), wanted) != has.end())
            people.push_back(fact.key.key);
    }
    return people;
}

} // namespace

void Cab::go(Page page)
{
    page_ = page;
    turned_ = first_ = 0;
}

void Cab::write(records::Entry entry)
{
    outside_.book.append({std::move(entry)});
}

std::optional<std::size_t> Cab::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "OPERATOR", operator_));
    return pressed;
}

desk::LiftAsked Cab::asked() const
{
    desk::LiftAsked asked;
    asked.unit = unit_;
    asked.pipe = pipe_;
    asked.machine = machine_;
    asked.on_the_levers = operator_;
    asked.now = outside_.now();
    return asked;
}

void Cab::think()
{
    const desk::LiftAsked now = asked();
    const auto state = outside_.book.state();
    const std::string of = std::to_string(state.head.seq) + (state.checked ? " " : "? ") + std::to_string(now.now.count() / 30) + unit_ + "|" + pipe_ + "|" + machine_ + "|" + operator_;
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

std::string Cab::hitch() const
{
    return desk::doc(outside_.book, "coupling", machine_).value("hitch", "");
}

void Cab::choose_person(Sheet& sheet)
{
    const auto people = people_with(outside_.book, "roles", "operator");
    Choice choice{"Who is on the levers?", people.empty() ? "Nobody is admitted as operator. The supervisor admits people in Site." : "", {}, false, "Back"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::gone);
    operator_ = people[*pressed];
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
        choice.options.push_back({desk::label_of(outside_.book, fact.key.key), "with " + desk::label_of(outside_.book, attachment), std::nullopt});
    }
    if (rigs.empty())
        choice.hint = "Nothing is coupled by the record. Couple an attachment and record it first.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == rigs.size())
        return go(Page::who);
    std::tie(machine_, unit_) = rigs[*pressed];
    go(Page::pipe);
}

void Cab::choose_pipe(Sheet& sheet)
{
    const auto pipes = outside_.book.facts("pipe");
    Choice choice{"Read maker and size on the pipe. Which one is it?", "", {}, false, "Back"};
    for (const auto& fact : pipes)
        choice.options.push_back({fact.doc.value("name", fact.key.key), fact.doc.value("maker", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == pipes.size())
        return go(Page::machine);
    pipe_ = pipes[*pressed].key.key;
    think();
    const bool adjusts = model().value("adjusts", true);
    go(adjusts && !has_looked(question_) ? Page::look : Page::sheet);
}

Choice Cab::states_choice(const std::string& question) const
{
    const Json it = model();
    Choice choice{question, "Look at the " + it.value("adjustment", std::string{"setting"}) + " itself, not at the screen.", {}, false, "Back"};
    for (const Json& state : it.value("states", Json::array()))
        choice.options.push_back({state.value("name", ""), "", std::nullopt});
    return choice;
}

void Cab::look(Sheet& sheet)
{
    const Choice choice = states_choice("How does it stand? Say what you see.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    write(see_the_setting(outside_.hand(operator_), unit_, choice.options[*pressed].words));
    go(Page::sheet);
}

void Cab::work(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    if (const auto pressed = ui::draw(sheet, view, first_))
        act(*pressed, view, cab_rows(sheet));
}

void Cab::act(const CabPressed& pressed, const CabSheet& view, std::size_t fit)
{
    using What = CabPressed::What;
    switch (pressed.what) {
    case What::check:
        to_check_ = to_check(outside_, asked(), question_);
        line_ = 0;
        answers_.clear();
        return to_check_.empty() ? void() : go(Page::check);
    case What::pin: return go(!view.has_setting ? Page::pipe : !view.picture ? Page::look : Page::move);
    case What::lift: return ask_for_lift();
    case What::report: return go(Page::report);
    case What::more: first_ = first_ + fit - 1 < view.rows.size() ? first_ + fit - 1 : 0; return;
    case What::row:
        if (view.findings[pressed.row])
            act_on(*view.findings[pressed.row]);
    }
}

// Each finding's button leads to where it is cleared; what others clear is explained.
void Cab::act_on(const rules::Finding& finding)
{
    explained_ = finding;
    switch (row(finding.code)) {
    case rules::Row::check:
        if (finding.code == Code::check_none || finding.code == Code::check_stale) {
            to_check_ = to_check(outside_, asked(), question_);
            line_ = 0;
            answers_.clear();
            return go(Page::check);
        }
        return go(Page::clears);
    case rules::Row::setting:
        step_ = 0;
        return go(finding.code == Code::setting_wrong    ? Page::move
                  : finding.code == Code::setting_unseen ? Page::second
                  : finding.code == Code::setting_none   ? Page::clears
                                                         : Page::look);
    case rules::Row::hitch: return go(finding.code == Code::hitch_unseen && !hitch().empty() ? Page::lock : Page::clears);
    default: return go(Page::clears);
    }
}

// The model's steps one by one, with what must hold before the first.
void Cab::step_of_move(Sheet& sheet)
{
    const Json it = model();
    std::vector<std::string> steps{"Park and support it: " + it.value("parked_as", std::string{"as the maker says"}),
                                   "Isolate the machine: engine off, key out, safety lever up", "Nobody beneath, nobody at the controls"};
    for (const Json& each : it.value("setting_steps", Json::array()))
        steps.push_back(each.get<std::string>());
    const Choice choice{steps[std::min(step_, steps.size() - 1)], "Step " + std::to_string(step_ + 1) + " of " + std::to_string(steps.size()),
                        {{"Done", "", figures::Sign::to_do}}, false, "Leave it"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == 1)
        return go(Page::sheet);
    if (++step_ >= steps.size())
        go(Page::set_to);
}

void Cab::choose_state(Sheet& sheet)
{
    const Choice choice = states_choice("How is it set now? Keeper in, seen by eye.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    step_ = 0;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    write(change_the_setting(outside_.hand(operator_), unit_, choice.options[*pressed].words));
    go(Page::second);
}

void Cab::choose_second(Sheet& sheet)
{
    auto people = people_with(outside_.book, "setting_models", desk::doc(outside_.book, "unit", unit_).value("model", ""));
    std::erase(people, operator_);
    Choice choice{"A second trained person looks at it, at the unit. Who is it?", "", {}, false, "Later"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    if (people.empty())
        choice.hint = "Nobody else is admitted for this model. The supervisor admits somebody in Site.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::sheet);
    second_ = people[*pressed];
    go(Page::second_look);
}

void Cab::second_look(Sheet& sheet)
{
    const Choice choice = states_choice(desk::shown_name(outside_.book, second_) + ": how does it stand?");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed != choice.options.size())
        write(see_the_setting(outside_.hand(second_), unit_, choice.options[*pressed].words));
    go(Page::sheet);
}

void Cab::check(Sheet& sheet)
{
    const ToCheck& unit = to_check_.front();
    const desk::SheetLine& line = unit.lines[line_];
    Choice choice{line.text, desk::label_of(outside_.book, unit.unit) + " \u00b7 " + std::to_string(line_ + 1) + " of " + std::to_string(unit.lines.size()),
                  {{"Right", "", figures::Sign::in_order}}, true, "Leave it"};
    if (!line.stop_only)
        choice.options.push_back({"Report", "", figures::Sign::warning});
    choice.options.push_back({"Stop", "", figures::Sign::stop});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    answer(*pressed == 0 ? "right" : *pressed + 1 == choice.options.size() ? "stop" : "report");
}

void Cab::answer(const std::string& said)
{
    answers_.push_back({to_check_.front().lines[line_].id, said, ""});
    if (said == "right")
        finish_line();
    else
        go(Page::failed);
}

void Cab::say_what_now(Sheet& sheet)
{
    const Choice choice{to_check_.front().lines[line_].if_not, to_check_.front().lines[line_].text, {{"Understood", "", std::nullopt}}, false, ""};
    if (ask(sheet, choice))
        finish_line();
}

// The unit's answers are signed together after its last line; then the next unit.
void Cab::finish_line()
{
    go(Page::check);
    if (++line_ < to_check_.front().lines.size())
        return;
    write(check_a_unit(outside_.hand(operator_), outside_.book, to_check_.front().unit, machine_, answers_));
    answers_.clear();
    line_ = 0;
    to_check_.erase(to_check_.begin());
    if (to_check_.empty())
        go(Page::sheet);
}

void Cab::look_at_lock(Sheet& sheet)
{
    const Choice choice{"Get down and look at the hitch. Is it locked?", "Seen with own eyes, from where the lock can be seen.",
                        {{"Locked", "", figures::Sign::in_order}, {"Not locked", "", figures::Sign::stop}}, true, "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed < 2)
        write(see_the_lock(outside_.hand(operator_), hitch(), *pressed == 0));
    go(Page::sheet);
}

void Cab::explain(Sheet& sheet)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    const words::Sentence sentence = words::says(*explained_, question_, naming);
    const Choice choice{sentence.headline, sentence.detail + ". " + std::string{words::clears(explained_->code)} + ". Rule: " + std::string{words::source(explained_->code)} + ".", {}, false, "Back"};
    if (ask(sheet, choice))
        go(Page::sheet);
}

void Cab::report(Sheet& sheet)
{
    const Choice choice{"What is there to report?", "Anyone may call a stop.",
                        {{"Touch", "contact, no mark, nothing moved", figures::Sign::warning}, {"Knock", "a mark, bend, snag or drop", figures::Sign::warning},
                         {"Stop", "something is not right", figures::Sign::stop}, {"Different pipe", "another maker or size", std::nullopt},
                         {"Stand down", "the shift is over", std::nullopt}}, false, "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed < 3) {
        reported_ = *pressed == 0 ? "touch" : *pressed == 1 ? "knock" : "stop";
        return go(Page::report_unit);
    }
    if (*pressed == 3)
        return go(Page::pipe);
    if (*pressed == 4) {
        const Json shift = desk::open_shift(outside_.book, desk::current_site(outside_.book));
        if (!shift.empty())
            write(stand_down(outside_.hand(operator_), shift.value("id", "")));
        return go(Page::gone);
    }
    go(Page::sheet);
}

void Cab::report_unit(Sheet& sheet)
{
    const auto units = desk::load_path(outside_.book, asked());
    Choice choice{"Which one?", "", {}, false, "Back"};
    for (const std::string& each : units)
        choice.options.push_back({desk::label_of(outside_.book, each), desk::doc(outside_.book, "unit", each).value("role", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == units.size())
        return go(Page::report);
    const desk::Hand hand = outside_.hand(operator_);
    write(reported_ == "stop" ? call_a_stop(hand, units[*pressed], "called from the cab")
                              : something_happened(hand, reported_, units[*pressed], "reported from the cab"));
    go(Page::sheet);
}

void Cab::ask_for_lift()
{
    thought_of_.clear();
    think();
    records::Entry entry = ask_for_a_lift(outside_.hand(operator_), question_, decision_);
    lift_ = entry.about;
    write(std::move(entry));
    go(decision_.may_lift() ? Page::lift : Page::sheet);
}

void Cab::lift(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    std::string hint;
    for (const std::string& line : view.under)
        hint += line + ". ";
    const Choice choice{std::string{words::verdict(decision_.may_lift())}, hint,
                        {{"Load is up", "no touch until it is down", figures::Sign::to_do}, {"Lift done", "the pipe is laid", figures::Sign::in_order}}, true, "Not lifted"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == 0) {
        write(lift_step(outside_.hand(operator_), "picked_up", lift_));
        return go(Page::load_up);
    }
    if (*pressed == 1)
        write(lift_step(outside_.hand(operator_), "lift_done", lift_));
    go(Page::sheet);
}

// A finding that arrives now never stops a load in the air.
void Cab::load_up(Sheet& sheet)
{
    think();
    const Choice choice{"LOAD UP", decision_.may_lift() ? "On the signaller's signal, nobody inside the zone." : "Set down safely, then stop.",
                        {{"Set down, lift done", "the pipe is laid", figures::Sign::in_order}}, false, ""};
    if (!ask(sheet, choice))
        return;
    write(lift_step(outside_.hand(operator_), "set_down", lift_));
    write(lift_step(outside_.hand(operator_), "lift_done", lift_));
    go(Page::sheet);
}

void Cab::draw_page(Sheet& sheet)
{
    switch (page_) {
    case Page::who: return choose_person(sheet);
    case Page::machine: return choose_machine(sheet);
    case Page::pipe: return choose_pipe(sheet);
    case Page::sheet: return work(sheet);
    case Page::look: return look(sheet);
    case Page::move: return step_of_move(sheet);
    case Page::set_to: return choose_state(sheet);
    case Page::second: return choose_second(sheet);
    case Page::second_look: return second_look(sheet);
    case Page::check: return check(sheet);
    case Page::failed: return say_what_now(sheet);
    case Page::lock: return look_at_lock(sheet);
    case Page::clears: return explain(sheet);
    case Page::report: return report(sheet);
    case Page::report_unit: return report_unit(sheet);
    case Page::lift: return lift(sheet);
    case Page::load_up: return load_up(sheet);
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
