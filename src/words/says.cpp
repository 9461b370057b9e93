#include "amounts.hpp"
#include "finding_table.hpp"
#include "finding_words.hpp"
#include "language.hpp"
#include "setting.hpp"
#include "standing.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

namespace cotter::words {

using namespace rules;

namespace {

std::string stands(const Question& question)
{
    return standing_of(question.setting_records).state.value_or(in_language("not known"));
}

// The states that take this barrel, "hole 1 or hole 2".
std::string wanted(const Question& question)
{
    const Item* attachment = find_item(question, Role::attachment);
    std::string names;
    if (attachment && attachment->model && question.pipe && question.pipe->barrel)
        for (const State& state : attachment->model->states)
            if (serves(state, *question.pipe->barrel))
                names += (names.empty() ? "" : " " + in_language("or") + " ") + state.name.value_or("?");
    return names.empty() ? in_language("another setting") : names;
}

std::string days_left(const Finding& finding)
{
    const auto* today = std::get_if<Day>(&finding.measured);
    const auto* last = std::get_if<Day>(&finding.limit);
    if (!today || !last)
        return in_language("soon");
    const auto days = days_between(*today, *last).count();
    return days <= 0 ? in_language("today") : say_many(static_cast<std::size_t>(days), "in {} day", "in {} days");
}

std::string outside(const Finding& finding)
{
    if (finding.unit == Unit::none)
        return in_language("Machine, attachment, pipe or place is not in it");
    return say(finding.unit == Unit::kilogram ? "Load {} of {}" : "Radius {} of {}",
               amount(finding.measured, finding.unit), amount(finding.limit, finding.unit, Rounding::down));
}

// A pipe's figure that is not known says nothing against the attachment, and nothing for it.
std::optional<Sentence> of_unknown(const Finding& finding, const std::string& who)
{
    const bool is_known = !std::holds_alternative<std::monostate>(finding.measured) &&
                          !std::holds_alternative<std::monostate>(finding.limit);
    const char* what = finding.code == Code::pipe_size     ? "Its size, or the maker's, is not known"
                       : finding.code == Code::pipe_length ? "Its length, or the maker's, is not known"
                       : finding.code == Code::pipe_mass   ? "Its mass, or the maker's, is not known"
                                                           : nullptr;
    if (is_known || !what)
        return std::nullopt;
    return Sentence{in_language("Not known whether this attachment takes the pipe") + who, in_language(what)};
}

class Filling {
public:
    Filling(const Finding& finding, const Question& question, const Naming& naming)
    {
        const std::string measured = amount(finding.measured, finding.unit);
        const std::string limit = amount(finding.limit, finding.unit, Rounding::down);
        put("who", finding.about.empty() ? "" : ": " + naming(finding.about));
        put("measured", measured);
        put("limit", limit);
        put("of", say("{} of {}", measured, limit));
        put("left", days_left(finding));
        put("outside", outside(finding));
        const bool setting = row(finding.code) == Row::setting;
        put("stands", setting ? stands(question) : "");
        put("wanted", setting ? wanted(question) : "");
    }
    std::string fill(std::string_view text) const { return fmt::vformat(in_language(std::string{text}), arguments_); }

private:
    void put(const char* name, std::string value) { arguments_.push_back(fmt::arg(name, std::move(value))); }
    fmt::dynamic_format_arg_store<fmt::format_context> arguments_;
};

} // namespace

std::string as_is(const std::string& id) { return id; }

std::string Sentence::joined() const { return detail.empty() ? headline + "." : headline + ". " + detail + "."; }

Sentence says(const Finding& finding, const Question& question, const Naming& naming)
{
    const Filling filling{finding, question, naming};
    const FindingWords& words = words_of(finding.code);
    if (auto unknown = of_unknown(finding, finding.about.empty() ? "" : ": " + naming(finding.about)))
        return *unknown;
    if (finding.code == Code::setting_unknown && !was_ever_set(question))
        return {filling.fill(words.headline),
                in_language("It was never set by the record: two people set it by the steps")};
    return {filling.fill(words.headline), filling.fill(words.detail)};
}

std::string_view clears(Code code) { return words_of(code).clears; }
std::string_view button(Code code) { return words_of(code).button; }
std::string_view source(Code code) { return words_of(code).source; }

std::string short_source(Code code)
{
    std::string text{source(code).substr(0, source(code).find(';'))};
    for (const std::string_view part : {" 1998", " 2015", "reg. ", "regs "})
        if (const auto at = text.find(part); at != std::string::npos)
            text.erase(at, part.size());
    return text;
}

// A second look after a move; the items that a move or a coupling touches; the briefing for a plan not yet in force.
bool waits_for(Code later, Code first)
{
    return (later == Code::setting_unseen && first == Code::setting_wrong) ||
           (later == Code::check_stale && (first == Code::setting_wrong || first == Code::hitch_unseen)) ||
           (later == Code::briefing_none && first == Code::plan_out_of_date);
}

std::string_view verdict(bool may_lift) { return may_lift ? "MAY LIFT" : "DO NOT LIFT"; }

std::string says_of_planned_lift(const std::string& mark, const rules::Finding& finding,
                                 const rules::Question& question, const Naming& naming)
{
    return (mark.empty() ? "" : say("A lift from mark {} would be stopped: ", mark)) +
           says(finding, question, naming).joined();
}

} // namespace cotter::words
