#include "laid.hpp"

#include "local_time.hpp"

#include <algorithm>
#include <cstdlib>

namespace cotter::desk {

namespace {

std::optional<std::int64_t> number_in(const Json& doc, const char* field)
{
    return doc.contains(field) ? std::optional{doc.at(field).get<std::int64_t>()} : std::nullopt;
}

template <class T> Json or_null(const std::optional<T>& value) { return value ? Json(*value) : Json{}; }

LaidPipe laid_pipe(const Book& book, const records::Fact& fact)
{
    const Json pipe = doc(book, "pipe", fact.doc.value("pipe", ""));
    LaidPipe laid;
    laid.id = fact.key.key;
    laid.pipe = fact.doc.value("pipe", "");
    laid.run = fact.doc.value("run", "");
    laid.bedding = fact.doc.value("bedding", "");
    laid.words = fact.doc.value("words", "");
    laid.day =
        local_day(rules::Instant{fact.doc.value("at", std::int64_t{0})}, zone_of(book, fact.doc.value("site", "")));
    laid.chainage_mm = fact.doc.value("chainage_mm", std::int64_t{0});
    laid.invert_mm = number_in(fact.doc, "invert_mm");
    laid.planned_invert_mm = number_in(fact.doc, "planned_invert_mm");
    laid.level_tolerance_mm = number_in(fact.doc, "level_tolerance_mm");
    laid.joint_mm = number_in(fact.doc, "joint_mm");
    laid.joint_least_mm = number_in(pipe, "joint_least_mm");
    laid.joint_greatest_mm = number_in(pipe, "joint_greatest_mm");
    laid.gasket_seen = flag(fact.doc, "gasket_seen");
    return laid;
}

} // namespace

rules::Flag LaidPipe::is_joint_within() const
{
    if (!joint_mm)
        return std::nullopt;
    if ((joint_least_mm && *joint_mm < *joint_least_mm) || (joint_greatest_mm && *joint_mm > *joint_greatest_mm))
        return false;
    return joint_greatest_mm ? rules::Flag{true} : std::nullopt;
}

std::optional<std::int64_t> LaidPipe::above_planned_mm() const
{
    return invert_mm && planned_invert_mm ? std::optional{*invert_mm - *planned_invert_mm} : std::nullopt;
}

rules::Flag LaidPipe::is_level_within() const
{
    const auto above = above_planned_mm();
    if (!above || !level_tolerance_mm)
        return std::nullopt;
    return std::abs(*above) <= *level_tolerance_mm;
}

bool LaidPipe::is_in_order() const
{
    return is_joint_within().value_or(true) && is_level_within().value_or(true) && gasket_seen.value_or(true);
}

std::vector<LaidPipe> laid_pipes(const Book& book, const std::string& site)
{
    std::vector<records::Fact> facts = book.facts("laid");
    std::stable_sort(facts.begin(), facts.end(),
                     [](const records::Fact& a, const records::Fact& b) { return a.at > b.at; });
    std::vector<LaidPipe> all;
    for (const auto& fact : facts)
        if (fact.doc.value("site", "") == site)
            all.push_back(laid_pipe(book, fact));
    return all;
}

Json to_json(const LaidPipe& laid)
{
    return {{"id", laid.id},
            {"day", rules::to_string(laid.day)},
            {"pipe", laid.pipe},
            {"run", laid.run},
            {"chainage_mm", laid.chainage_mm},
            {"invert_mm", or_null(laid.invert_mm)},
            {"planned_invert_mm", or_null(laid.planned_invert_mm)},
            {"level_tolerance_mm", or_null(laid.level_tolerance_mm)},
            {"level_within", or_null(laid.is_level_within())},
            {"joint_mm", or_null(laid.joint_mm)},
            {"joint_least_mm", or_null(laid.joint_least_mm)},
            {"joint_greatest_mm", or_null(laid.joint_greatest_mm)},
            {"joint_within", or_null(laid.is_joint_within())},
            {"gasket_seen", or_null(laid.gasket_seen)},
            {"bedding", laid.bedding},
            {"words", laid.words}};
}

} // namespace cotter::desk
