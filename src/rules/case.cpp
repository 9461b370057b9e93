#include "case.hpp"

#include <algorithm>
#include <tuple>

namespace cotter::rules {

namespace {

constexpr std::int64_t before_shift_seconds = 60 * 60; // Source: firm's own rule
constexpr Day after_everything{date::year{9999} / 12 / 31};

} // namespace

Case::Case(const Question& asked, Known<Day> day)
    : question{asked}, today{day.value_or(after_everything)}, dispatch{asked.purpose != Purpose::lift}
{
    papers.reserve(asked.items.size());
    for (const Item& item : asked.items)
        papers.push_back(papers_of(asked, item, today));
    if (!asked.now || !asked.shift || !asked.shift->start || !asked.shift->end)
        return;
    const Instant from = dispatch ? *asked.shift->start : *asked.shift->start - Instant{before_shift_seconds};
    if (*asked.now < from || *asked.now > *asked.shift->end)
        return;
    shift_from = from;
    shift_to = std::min(*asked.now, *asked.shift->end);
}

bool Case::this_shift(Known<Instant> at) const { return at && shift_from && *at >= *shift_from && *at <= *shift_to; }

std::vector<Finding> Findings::sorted() &&
{
    const auto key = [](const Finding& f) {
        return std::make_tuple(weight(f.code), row(f.code), std::string_view{f.about}, f.code);
    };
    std::stable_sort(list_.begin(), list_.end(), [&](const Finding& a, const Finding& b) { return key(a) < key(b); });
    const auto same = [](const Finding& a, const Finding& b) { return a.code == b.code && a.about == b.about; };
    list_.erase(std::unique(list_.begin(), list_.end(), same), list_.end());
    return std::move(list_);
}

Figure figure(Day day) { return day == after_everything ? Figure{} : Figure{day}; }

Figure figure(Known<Day> day) { return day ? Figure{*day} : Figure{}; }

Figure figure(std::optional<double> number) { return number ? Figure{*number} : Figure{}; }

std::string about(const Known<Id>& id) { return id.value_or(Id{}); }

std::string about(const Item* item) { return item ? item->tag : std::string{}; }

const Item* find_item(const Question& question, Role role)
{
    for (const Item& item : question.items)
        if (item.role == role)
            return &item;
    return nullptr;
}

const Person* find_person(const Question& question, const Id& role)
{
    const auto found = question.people.find(role);
    return found != question.people.end() && found->second && found->second->id ? &*found->second : nullptr;
}

bool is_in_force_here(const Question& question)
{
    return question.plan && yes(question.plan->issued) && yes(question.plan->signed_) && question.plan->site &&
           question.site && question.site->id && *question.plan->site == *question.site->id;
}

bool needs_role(const Question& question, const Id& role)
{
    if (role == "operator")
        return true;
    Flag said;
    if (is_in_force_here(question))
        if (const auto found = question.plan->roles.find(role); found != question.plan->roles.end())
            said = found->second;
    return role == "supervisor" || role == "signaller" ? !no(said) : yes(said);
}

Days warning_days(const Question& question)
{
    return question.site && question.site->warning_days ? *question.site->warning_days : Days{14};
}

Known<Millimetres> greatest_radius(const Question& question)
{
    if (!question.move || !question.move->nose_radius || !question.move->centre_radius)
        return std::nullopt;
    return std::max(*question.move->nose_radius, *question.move->centre_radius);
}

} // namespace cotter::rules
