#include "good_question.hpp"

#include "good_parts.hpp"

#include <algorithm>
#include <stdexcept>

namespace cotter::rules {

namespace {

void add_people(Question& question)
{
    question.people["operator"] = good::person("olga", {"model-M", "model-H", "model-A"});
    question.people["supervisor"] = good::person("sam", {"supervisor"});
    question.people["signaller"] = good::person("sid", {"signaller"});
}

void add_surroundings(Question& question)
{
    question.place = Place{"place", {Confirmation{minute(20), "sam", true, true, true, true}}, {}};
    question.trench = Trench{false, true, {Inspection{minute(-30), true, true}}, {}};
    question.thread = good::strutting();
    question.clock = Clock{{}, minute(100)};
    question.book = Book{true, false, false};
}

void add_items(Question& question)
{
    question.items = good::items();
    for (const Item& each : question.items) {
        question.reports.push_back(good::half_yearly(each.tag));
        for (const SheetItem& line : each.sheet)
            question.answers.push_back(good::right(each.tag, *line.id));
    }
    Report& of_machine = report(question, Role::machine);
    of_machine.basis = Basis::twelve_months;
    of_machine.latest = day("2027-09-01");
}

} // namespace

Question good_lift()
{
    Question question;
    question.id = "good";
    question.purpose = Purpose::lift;
    question.day = day("2026-11-25");
    question.now = minute(180);
    question.shift = Shift{minute(0), minute(600), day("2026-11-25")};
    question.site = Site{"site", Days{14}, true};
    add_items(question);
    question.coupled_at = minute(60);
    question.setting_records = good::setting_records();
    question.pipe = good::pipe();
    question.move = good::move();
    question.chart = good::chart();
    question.set_up = good::set_up();
    question.plan = good::plan();
    add_people(question);
    add_surroundings(question);
    return question;
}

Question good_use()
{
    Question question = good_lift();
    question.purpose = Purpose::use;
    for (const Role role : {Role::machine, Role::hitch}) {
        remove_report(question, role);
        remove_item(question, role);
    }
    item(question, Role::attachment).loose_parts = LooseParts{Listed::listed, Listed::listed, Listed::listed};
    question.answers.clear();
    question.people.clear();
    question.coupled_at.reset();
    question.pipe.reset();
    question.move.reset();
    question.chart.reset();
    question.set_up.reset();
    question.plan.reset();
    question.place.reset();
    question.trench.reset();
    question.thread.reset();
    question.order = good::order();
    return question;
}

Day day(std::string_view text)
{
    const auto read = parse_day(text);
    if (!read)
        throw std::invalid_argument{"no such day"};
    return *read;
}

Instant minute(int after_start_of_shift) { return Instant{1'795'600'000 + std::int64_t{60} * after_start_of_shift}; }

Item& item(Question& question, Role role)
{
    for (Item& each : question.items)
        if (each.role == role)
            return each;
    throw std::invalid_argument{"no such item"};
}

Model& model(Question& question, Role role) { return item(question, role).model.value(); }

Report& report(Question& question, Role role)
{
    for (Report& each : question.reports)
        if (contains(each.units, item(question, role).tag))
            return each;
    throw std::invalid_argument{"no such report"};
}

void remove_item(Question& question, Role role)
{
    std::erase_if(question.items, [&](const Item& each) { return each.role == role; });
}

void remove_report(Question& question, Role role)
{
    const Id tag = item(question, role).tag;
    std::erase_if(question.reports, [&](const Report& each) { return contains(each.units, tag); });
}

Event event(EventKind kind, const Id& unit)
{
    Event made;
    made.id = "E1";
    made.kind = kind;
    made.day = day("2026-11-25");
    made.at = minute(10);
    made.units = {unit};
    return made;
}

Report exceptional(Question& question, Role role)
{
    Report made = report(question, role);
    made.id = "R-again";
    made.basis = Basis::exceptional;
    made.full.reset();
    made.examined = question.day;
    made.report_day = question.day;
    return made;
}

std::optional<Finding> finding(const Question& question, Code code, std::string_view about)
{
    for (const Finding& each : decide(question).findings)
        if (each.code == code && each.about == about)
            return each;
    return std::nullopt;
}

bool finds(const Question& question, Code code, std::string_view about)
{
    return finding(question, code, about).has_value();
}

bool finds(const Question& question, Code code)
{
    const auto found = decide(question).findings;
    return std::any_of(found.begin(), found.end(), [&](const Finding& each) { return each.code == code; });
}

bool is_silent(const Question& question) { return decide(question).findings.empty(); }

std::string codes(const Question& question)
{
    std::string text;
    for (const Finding& each : decide(question).findings)
        text += std::string{name(each.code)} + "(" + each.about + ") ";
    return text;
}

} // namespace cotter::rules
