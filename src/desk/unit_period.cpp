#include "unit_period.hpp"

#include "kinds.hpp"
#include "memory_book.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace cotter::desk {

using records::Entry;
using records::Record;

namespace {

bool is_in_list(const Json& body, const char* field, const std::string& wanted)
{
    const auto found = body.find(field);
    return found != body.end() && found->is_array() && std::find(found->begin(), found->end(), wanted) != found->end();
}

bool is_about_a_unit(const Entry& entry)
{
    const records::Kind* kind = records::find_kind(entry.kind);
    return entry.kind == "unit" || entry.kind == "lift_without_answer" ||
           (kind && kind->schema.value("x-about-refers", "") == "unit");
}

// Does the record itself name the unit?
bool names_unit(const Entry& entry, const std::string& unit)
{
    if (is_about_a_unit(entry) && entry.about == unit)
        return true;
    for (const char* field : {"unit", "attachment", "hitch", "headplate"})
        if (entry.body.contains(field) && entry.body[field] == unit)
            return true;
    return is_in_list(entry.body, "units", unit) || is_in_list(entry.body, "hangs", unit);
}

// Which of a book's records concern one unit, also by way of an event, a report or a lift that does.
class Concerning {
public:
    Concerning(const Book& book, const std::vector<Record>& all, const std::string& unit) : unit_{unit}
    {
        const Json it = doc(book, "unit", unit);
        labels_ = {unit, it.value("tag", unit), it.value("owner_firm", "") + "/" + it.value("serial", "")};
        for (const Record& each : all) {
            by_hash_[each.hash] = &each;
            const Entry& e = each.entry;
            if ((e.kind == "event" || e.kind == "examination_report") && names_unit(e, unit))
                ids_.insert({e.kind, e.about});
            if (e.kind == "lift_asked" && is_in_path(e.body))
                ids_.insert({e.kind, e.about});
        }
    }

    bool operator()(const Record& record) const
    {
        if (record.entry.kind != "correction")
            return concerns(record.entry);
        const Record* old = corrected_by(record);
        if (!old)
            return false;
        Entry anew = old->entry;
        anew.body = record.entry.body.value("body", Json::object());
        return concerns(old->entry) || concerns(anew);
    }

    const Record* corrected_by(const Record& correction) const
    {
        const auto found = by_hash_.find(correction.entry.body.value("corrects", ""));
        return correction.entry.kind == "correction" && found != by_hash_.end() ? found->second : nullptr;
    }

private:
    // A question names units by labels; a tag that two firms use stands for both.
    bool is_in_path(const Json& lift) const
    {
        const Json items = lift.value("question", Json::object()).value("items", Json::array());
        return std::any_of(items.begin(), items.end(),
                           [&](const Json& each) { return labels_.count(each.value("tag", "")) > 0; });
    }

    bool concerns(const Entry& entry) const
    {
        static const std::map<std::string, std::string> by_way_of{
            {"event_assessed", "event"},       {"event_looked", "event"},  {"lift_asked", "lift_asked"},
            {"picked_up", "lift_asked"},       {"set_down", "lift_asked"}, {"lift_done", "lift_asked"},
            {"compared", "examination_report"}};
        const auto found = by_way_of.find(entry.kind);
        if (found == by_way_of.end())
            return names_unit(entry, unit_);
        return ids_.count({found->second, entry.about}) > 0 &&
               (entry.kind != "compared" || entry.body.value("what", "") == "report");
    }

    std::string unit_;
    std::set<std::string> labels_;
    std::set<std::pair<std::string, std::string>> ids_; // kind and id of what is of the unit
    std::map<std::string, const Record*> by_hash_;
};

bool is_earlier(const PeriodRecord& a, const PeriodRecord& b)
{
    return std::tie(a.record.entry.at, a.record.device, a.record.seq) <
           std::tie(b.record.entry.at, b.record.device, b.record.seq);
}

using Chosen = std::map<std::string, When>; // by hash

// Corrections of what is chosen, and what the chosen ones correct: both are shown, whenever they were written.
void add_corrections(const std::vector<Record>& all, const Concerning& concerning, Chosen& chosen)
{
    for (const Record& each : all)
        if (const Record* old = concerning.corrected_by(each)) {
            if (chosen.count(each.hash) > 0)
                chosen.emplace(old->hash, When::outside);
            if (chosen.count(old->hash) > 0)
                chosen.emplace(each.hash, When::outside);
        }
}

} // namespace

UnitPeriod unit_period(const Book& book, const std::string& unit, rules::Day from, rules::Day to)
{
    const std::vector<Record> all = book.newest("", std::numeric_limits<std::int32_t>::max());
    const Concerning concerning{book, all, unit};
    Chosen chosen;
    for (const std::string& hash : in_force(book_on(book, from - date::days{1}), unit, from))
        chosen.emplace(hash, When::before);
    for (const Record& each : all)
        if (from <= each.entry.day && each.entry.day <= to && concerning(each))
            chosen[each.hash] = When::within;
    add_corrections(all, concerning, chosen);
    UnitPeriod period{unit, from, to, {}};
    for (const Record& each : all)
        if (const auto found = chosen.find(each.hash); found != chosen.end())
            period.records.push_back({each, found->second});
    std::sort(period.records.begin(), period.records.end(), is_earlier);
    return period;
}

} // namespace cotter::desk
