#include "cab_view.hpp"

#include "attachment_picture.hpp"

#include "amounts.hpp"
#include "case.hpp"
#include "chart.hpp"
#include "check_lines.hpp"
#include "finding_words.hpp"
#include "load.hpp"
#include "local_time.hpp"
#include "may_lift_until.hpp"
#include "setting.hpp"
#include "standing.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::ui {

using namespace rules;

namespace {

constexpr double figure_width = 78;

std::optional<figures::Sign> sign_of_weight(Weight weight)
{
    switch (weight) {
    case Weight::stop: return figures::Sign::stop;
    case Weight::caution: return figures::Sign::warning;
    case Weight::note: return std::nullopt;
    }
    return std::nullopt;
}

std::optional<double> number(const Figure& figure)
{
    const auto* value = std::get_if<double>(&figure);
    return value ? std::optional{*value} : std::nullopt;
}

// A number against its limit as a dimension line; a wrong setting against the range that stands.
std::optional<figures::Figure> figure_of(const Finding& finding, const Question& question)
{
    const auto value = number(finding.measured), limit = number(finding.limit);
    if (finding.code == Code::setting_wrong && value) {
        const Item* attachment = find_item(question, Role::attachment);
        const State* state = state_named(*attachment->model, standing_of(question.setting_records).state);
        const std::string text = fmt::format("\u00d8 {}: {}\u2013{} mm", std::llround(*value), state->least->count(),
                                             state->greatest->count());
        return figures::range_line(*value, static_cast<double>(state->least->count()),
                                   static_cast<double>(state->greatest->count()), text, figure_width);
    }
    const bool drawn =
        finding.unit == Unit::kilogram || finding.unit == Unit::millimetre || finding.unit == Unit::newton_metre;
    if (!value || !limit || !drawn)
        return std::nullopt;
    return figures::limit_line(
        *value, *limit,
        say("{} of {}", words::whole(*value), words::amount(finding.limit, finding.unit, words::Rounding::down)),
        figure_width);
}

bool waits(const Finding& finding, const std::vector<Finding>& all)
{
    return std::any_of(all.begin(), all.end(),
                       [&](const Finding& first) { return words::waits_for(finding.code, first.code); });
}

Row row_of(const Finding& finding, const Question& question, const words::Naming& naming)
{
    const words::Sentence sentence = words::says(finding, question, naming);
    return {sign_of_weight(weight(finding.code)),
            sentence.headline,
            sentence.detail,
            words::in_language(words::short_source(finding.code)),
            figure_of(finding, question),
            std::string{words::button(finding.code)}};
}

// First what makes all further work vain; then what the operator himself puts right at the machine; then what he asks
// others for.
int nearness(Code code)
{
    switch (code) {
    case Code::person_not_authorised:
    case Code::exam_event:
    case Code::unit_quarantined: return -1;
    case Code::setting_wrong:
    case Code::setting_unknown:
    case Code::setting_disputed: return 0;
    case Code::check_none:
    case Code::check_stale:
    case Code::hitch_unseen: return 1;
    default: return 2;
    }
}

struct Ordered {
    std::vector<Finding> shown, waiting;
};

Ordered in_order_of_work(const std::vector<Finding>& findings)
{
    Ordered ordered;
    for (const Finding& each : findings)
        (waits(each, findings) ? ordered.waiting : ordered.shown).push_back(each);
    std::stable_sort(ordered.shown.begin(), ordered.shown.end(), [](const Finding& a, const Finding& b) {
        return std::pair{weight(a.code), nearness(a.code)} < std::pair{weight(b.code), nearness(b.code)};
    });
    return ordered;
}

bool any_in_row(const std::vector<Finding>& findings, std::initializer_list<rules::Row> rows)
{
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& each) {
        return weight(each.code) == Weight::stop && std::find(rows.begin(), rows.end(), row(each.code)) != rows.end();
    });
}

// What is in order comes last: the load against both ratings.
std::optional<Row> load_row_in_order(const Question& question, const std::vector<Finding>& findings)
{
    if (any_in_row(findings, {rules::Row::load, rules::Row::reach, rules::Row::pipe}) || !question.pipe ||
        !question.chart)
        return std::nullopt;
    const Case asked{question, question.day};
    const auto load = load_on_machine(asked, false), hanging = hanging_kg(asked, *question.pipe);
    const auto radius = greatest_radius(question);
    const Item* attachment = find_item(question, Role::attachment);
    if (!load || !hanging || !radius || !question.move->pick_height || !attachment || !attachment->plate)
        return std::nullopt;
    Known<Kilograms> rated;
    for (const auto& height : {question.move->pick_height, question.move->slew_height, question.move->lay_height})
        if (const auto at =
                height ? rated_at(*question.chart, question.move->sector, {*radius, *height}) : std::nullopt)
            rated = rated ? std::min(*rated, *at) : *at;
    if (!rated)
        return std::nullopt;
    const double limit = static_cast<double>(rated->count());
    const std::string reach = say("{}: {} of {} kg", words::metres(radius->count()), words::whole(*load),
                                  words::whole(limit, words::Rounding::down));
    return Row{figures::Sign::in_order,
               "Load inside both ratings",
               say("Attachment {} of {} kg", words::whole(*hanging),
                   words::whole(static_cast<double>(attachment->plate->count()))),
               "",
               figures::limit_line(*load, limit, reach, figure_width),
               ""};
}

void add_rows(CabSheet& sheet, const Question& question, const std::vector<Finding>& findings,
              const words::Naming& naming)
{
    const Ordered ordered = in_order_of_work(findings);
    const auto add = [&](Row row, std::optional<Finding> finding) {
        sheet.rows.push_back(std::move(row));
        sheet.findings.push_back(std::move(finding));
    };
    for (std::size_t i = 0; i < ordered.shown.size(); ++i) {
        add(row_of(ordered.shown[i], question, naming), ordered.shown[i]);
        for (const Finding& later : ordered.waiting)
            if (words::waits_for(later.code, ordered.shown[i].code) &&
                (i == 0 || !words::waits_for(later.code, ordered.shown[0].code))) {
                Row row = row_of(later, question, naming);
                add({std::nullopt, say("then: {}", row.headline), row.detail, row.rule, std::nullopt, ""}, later);
            }
    }
    if (auto row = load_row_in_order(question, findings))
        add(std::move(*row), std::nullopt);
}

std::string count_line(const std::vector<Finding>& findings)
{
    std::size_t stops = 0, after = 0, cautions = 0;
    for (const Finding& each : findings)
        switch (weight(each.code)) {
        case Weight::stop: ++(waits(each, findings) ? after : stops); break;
        case Weight::caution: ++cautions; break;
        case Weight::note: break;
        }
    std::string line = stops > 0 ? say_many(stops, "{} stop", "{} stops") : say("No stop");
    if (after > 0)
        line = say_many(after, "{1}, and {0} after", "{1}, and {0} after", line);
    return cautions > 0 ? line + " \u00b7 " + say_many(cautions, "{} caution", "{} cautions") : line;
}

void add_picture(CabSheet& sheet, const Outside& outside, const desk::LiftAsked& asked, const Question& question)
{
    const auto& book = outside.book;
    const std::string model_id = desk::doc(book, "unit", asked.unit).value("model", "");
    sheet.gear = desk::label_of(book, asked.unit) + " \u00b7 " + desk::shown_name(book, model_id);
    sheet.pipe = asked.pipe.empty() ? "No pipe chosen" : desk::shown_name(book, asked.pipe);
    const Item* attachment = find_item(question, Role::attachment);
    if (!attachment || !attachment->model)
        return;
    sheet.has_setting = !no(attachment->model->adjusts);
    if (sheet.has_setting && !has_looked(question))
        return;
    sheet.picture = picture_of(desk::doc(book, "model", model_id), *attachment->model, question);
    for (const State& state : attachment->model->states)
        sheet.ranges.push_back({state.name.value_or("?"), length_of(state.least), length_of(state.greatest)});
}

// Who is signaller and supervisor today.
void add_people(CabSheet& sheet, const Outside& outside)
{
    const std::string site = desk::current_site(outside.book);
    const rules::Day day = desk::working_day(outside.book, site, outside.now());
    const desk::Json roles = desk::doc(outside.book, "people_today", site + " " + rules::to_string(day))
                                 .value("roles", desk::Json::object());
    const auto name = [&](const char* role) {
        const std::string person = roles.value(role, "");
        return person.empty() ? say("not named") : desk::shown_name(outside.book, person);
    };
    sheet.signaller = say("Signaller: {}", name("signaller"));
    sheet.supervisor = say("Supervisor: {}", name("supervisor"));
}

void add_what_may_be_lifted(CabSheet& sheet, const Outside& outside, const Question& question)
{
    const Standing standing = standing_of(question.setting_records);
    const std::string zone = desk::zone_of(outside.book, desk::current_site(outside.book));
    const std::string place = question.place && question.place->id ? *question.place->id : "?";
    const std::string until = words::clock_time(desk::local_minutes(desk::may_lift_until(question, zone), zone));
    sheet.under = {sheet.has_setting ? say("{}, set to {}", sheet.pipe, standing.state.value_or("?")) : sheet.pipe,
                   say("Standing at mark {}, until {}", place, until),
                   "On the signaller's signal, nobody inside the zone"};
}

// Then no pipe is drawn in its jaws: it would look gripped.
bool is_not_for_this_pipe(const std::vector<Finding>& findings)
{
    return std::any_of(findings.begin(), findings.end(), [](const Finding& each) {
        return each.code == Code::pipe_size || each.code == Code::pipe_shape || each.code == Code::setting_none;
    });
}

} // namespace

bool has_looked(const Question& question)
{
    const Case asked{question, question.day};
    return std::any_of(
        question.setting_records.begin(), question.setting_records.end(),
        [&](const SettingRecord& each) { return each.kind == SettingKind::seen && asked.this_shift(each.at); });
}

CabSheet cab_sheet(const Outside& outside, const desk::LiftAsked& asked, const Question& question,
                   const Decision& decision)
{
    CabSheet sheet;
    const words::Naming naming = [&](const std::string& id) { return desk::shown_name(outside.book, id); };
    sheet.plate = {decision.may_lift(), false, count_line(decision.findings)};
    add_rows(sheet, question, decision.findings, naming);
    add_picture(sheet, outside, asked, question);
    if (sheet.picture && is_not_for_this_pipe(decision.findings))
        sheet.picture->barrel = 0;
    sheet.check_done = !any_in_row(decision.findings, {rules::Row::check});
    sheet.setting_right = !any_in_row(decision.findings, {rules::Row::setting});
    if (decision.may_lift())
        add_what_may_be_lifted(sheet, outside, question);
    add_people(sheet, outside);
    sheet.title = title_block(outside, "OPERATOR", asked.on_the_levers);
    return sheet;
}

std::vector<ToCheck> to_check(const Outside& outside, const desk::LiftAsked& asked, const Question& question)
{
    std::vector<ToCheck> found;
    const auto units = desk::load_path(outside.book, asked);
    for (std::size_t i = 0; i < units.size() && i < question.items.size(); ++i) {
        ToCheck unit{units[i], {}};
        const auto wanted = rules::lines_to_answer(question, question.items[i]);
        for (desk::SheetLine& line : desk::sheet_of(outside.book, units[i]))
            if (std::find(wanted.begin(), wanted.end(), line.id) != wanted.end())
                unit.lines.push_back(std::move(line));
        if (!unit.lines.empty())
            found.push_back(std::move(unit));
    }
    return found;
}

} // namespace cotter::ui
