#include "cab.hpp"

#include "may_lift_until.hpp"
#include "standing.hpp"
#include "written.hpp"

namespace cotter::ui {

using records::Json;

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
    ui::draw(sheet, title_block(outside_, "OPERATOR", page_ == Page::who ? "" : operator_));
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
    holds_until_ = desk::may_lift_until(question_, desk::zone_of(outside_.book, desk::current_site(outside_.book)));
    thought_of_ = of;
}

Json Cab::model() const
{
    return desk::doc(outside_.book, "model", desk::doc(outside_.book, "unit", unit_).value("model", ""));
}

std::string Cab::hitch() const { return desk::doc(outside_.book, "coupling", machine_).value("hitch", ""); }

void Cab::work(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    if (const std::string worst = view.rows.empty() ? "" : view.rows.front().headline; worst != worst_) {
        worst_ = worst; // a new worst one is in sight
        first_ = 0;
    }
    const auto pressed = ui::draw(sheet, view, first_);
    if (pressed && is_settled())
        act(*pressed, view, cab_rows(sheet, view));
}

namespace {

// A look at the unit settles it; until then nothing is moved. What is in the middle of a change is changed on.
bool is_disputed(const rules::Question& question)
{
    const auto& records = question.setting_records;
    return standing_of(records).disputed && !records.empty() && records.back().state != being_changed;
}

} // namespace

void Cab::act(const CabPressed& pressed, const CabSheet& view, std::size_t fit)
{
    using What = CabPressed::What;
    switch (pressed.what) {
    case What::check: explained_.reset(); return begin_check("");
    case What::pin:
        return go(!view.has_setting ? Page::pipe : !view.picture || is_disputed(question_) ? Page::look : Page::move);
    case What::lift: return ask_for_lift();
    case What::report: return go(Page::report);
    case What::different_pipe: return go(Page::pipe);
    case What::more: first_ = first_ + fit - 1 < view.rows.size() ? first_ + fit - 1 : 0; return;
    case What::row:
        if (view.findings[pressed.row])
            act_on(*view.findings[pressed.row]);
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
    case Page::confirm_place: return confirms_->draw(sheet) ? void() : go(Page::sheet);
    case Page::record: return record(sheet);
    case Page::laid: return laid(sheet);
    case Page::report: return report(sheet);
    case Page::report_unit: return report_unit(sheet);
    case Page::report_words: return report_words(sheet);
    case Page::report_photo: return report_photo(sheet);
    case Page::receive: return receive_->draw(sheet) ? void() : go(operator_.empty() ? Page::who : Page::sheet);
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

// The answer holds until some second: then the glass is drawn without a touch.
bool Cab::draw(Sheet& sheet)
{
    draw_page(sheet);
    const std::int64_t left = holds_until_.count() - outside_.now().count();
    if (!thought_of_.empty() && decision_.may_lift() && left >= 0)
        sheet.draw_again_in(static_cast<double>(left + 1));
    if (page_ != Page::gone)
        return true;
    page_ = Page::who;
    return false;
}

} // namespace cotter::ui
