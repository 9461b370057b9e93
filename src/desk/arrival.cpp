#include "arrival.hpp"

#include "register.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

std::string name_of(Condition condition)
{
    switch (condition) {
    case Condition::whole: return "whole";
    case Condition::in_part: return "in_part";
    case Condition::not_to_be_used: return "not_to_be_used";
    case Condition::refused: return "refused";
    }
    return "not_to_be_used";
}

std::string digits_of(const std::string& text)
{
    std::string digits;
    for (const char c : text)
        if ('0' <= c && c <= '9')
            digits += c;
    return digits;
}

} // namespace

bool was_sent_here(const Book& book, const std::string& unit, const std::string& site)
{
    const std::string place = doc(book, "whereabouts", unit).value("at_site", "");
    return place == "on the way to " + site || place == "on the way to " + shown_name(book, site);
}

std::vector<std::string> units_to_receive(const Book& book, const std::string& site)
{
    std::vector<std::string> units;
    for (const auto& unit : book.facts("unit")) {
        const Json where = doc(book, "whereabouts", unit.key.key);
        if (where.value("at_site", "") != site && !where.value("scrapped", false))
            units.push_back(unit.key.key);
    }
    std::stable_partition(units.begin(), units.end(),
                          [&](const std::string& unit) { return was_sent_here(book, unit, site); });
    return units;
}

std::vector<std::string> listed_parts(const Book& book, const std::string& unit)
{
    std::vector<std::string> parts;
    const Json loose = doc(book, "unit", unit).value("loose_parts", Json::object());
    for (const auto& [name, how] : loose.items())
        if (how == "listed")
            parts.push_back(name);
    return parts;
}

bool is_serial(const Book& book, const std::string& unit, const std::string& digits)
{
    const std::string own = digits_of(doc(book, "unit", unit).value("serial", ""));
    return !own.empty() && own == digits;
}

Condition best_condition(const Arrival& arrival)
{
    if (!arrival.serial_seen)
        return Condition::not_to_be_used;
    return arrival.missing.empty() ? Condition::whole : Condition::in_part;
}

Entry receive(const Hand& hand, const Book& book, const Arrival& arrival, Condition condition)
{
    Json body{{"site", arrival.site},
              {"condition", name_of(condition)},
              {"serial_seen", arrival.serial_seen},
              {"evidence_seen", arrival.evidence_seen},
              {"without_dispatch", !was_sent_here(book, arrival.unit, arrival.site)}};
    if (!arrival.missing.empty())
        body["missing"] = arrival.missing;
    if (!arrival.photos.empty())
        body["photos"] = arrival.photos;
    if (!arrival.why.empty())
        body["why"] = arrival.why;
    return entry(hand, "received", arrival.unit, std::move(body));
}

} // namespace cotter::desk
