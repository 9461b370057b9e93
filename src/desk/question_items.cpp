#include "question_items.hpp"

#include "entitled.hpp"
#include "question_fields.hpp"

#include <algorithm>
#include <set>

namespace cotter::desk {

using namespace rules;
using records::Fact;

namespace {

constexpr std::int64_t answers_asked_for = 2 * 24 * 3600; // a shift is at most 14 h; older ones only while open

// Two reports may call defects of different units alike: "d-1" of CL-02 is not "d-1" of CL-05.
Id of_unit(const Id& unit, const Id& defect) { return unit + " " + defect; }

// Each defect once for each unit that has it, each remedy for each unit that the report names.
void name_defects_by_unit(Report& report)
{
    std::vector<Defect> defects;
    for (const Defect& each : report.defects)
        for (const Id& unit : each.unit ? std::vector<Id>{*each.unit} : report.units) {
            Defect own = each;
            own.unit = unit;
            own.id = each.id ? Known<Id>{of_unit(unit, *each.id)} : std::nullopt;
            defects.push_back(std::move(own));
        }
    std::vector<Id> remedies;
    for (const Id& unit : report.units)
        for (const Id& each : report.remedies)
            remedies.push_back(of_unit(unit, each));
    report.defects = std::move(defects);
    report.remedies = std::move(remedies);
}

// A fact about several units is listed under each: once is enough.
std::vector<Fact> facts_about_all(const Book& book, const std::string& kind, const std::vector<std::string>& units)
{
    std::vector<Fact> all;
    std::set<std::string> seen;
    for (const std::string& unit : units)
        for (Fact& fact : book.facts_about(kind, unit))
            if (seen.insert(fact.key.key).second)
                all.push_back(std::move(fact));
    return all;
}

} // namespace

ItemsOfQuestion::ItemsOfQuestion(const Book& book, std::vector<std::string> units, Instant now)
    : book_{book}, units_{std::move(units)}, now_{now}
{
    std::map<std::string, int> uses;
    for (const std::string& unit : units_)
        ++uses[tag_of(book_, unit)];
    for (const std::string& unit : units_) {
        const Json it = doc(book_, "unit", unit);
        const std::string tag = it.value("tag", unit);
        labels_[unit] = uses[tag] == 1 ? tag : it.value("owner_firm", "") + "/" + it.value("serial", "");
    }
}

std::string ItemsOfQuestion::label(const std::string& unit) const
{
    const auto found = labels_.find(unit);
    return found == labels_.end() ? unit : found->second;
}

std::vector<Id> ItemsOfQuestion::labels(std::vector<Id> units) const
{
    for (Id& each : units)
        each = label(each);
    return units;
}

void ItemsOfQuestion::add_papers(Item& item, const std::string& unit) const
{
    for (const Fact& fact : book_.facts_about("interim", unit))
        item.interims.push_back(records::read_form<Interim>(fact.doc, records::Strictness::lenient));
    for (const Fact& fact : book_.facts_about("declaration", unit))
        item.declarations.push_back(records::read_form<Declaration>(fact.doc, records::Strictness::lenient));
}

void ItemsOfQuestion::add_stops(Item& item, const std::string& unit) const
{
    for (const Fact& fact : book_.facts_about("stop", unit))
        item.stops.push_back({fact.doc.value("id", ""), is_lifted(fact.doc)});
}

Item ItemsOfQuestion::item(const std::string& unit) const
{
    Json body = doc(book_, "unit", unit);
    const std::string model = body.value("model", "");
    body.erase("model"); // ids in a unit's record, whole objects in a question
    body.erase("sheet");
    Item item = records::read_item(body);
    item.tag = label(unit);
    const Json whereabouts = doc(book_, "whereabouts", unit);
    if (whereabouts.contains("at_site"))
        item.at_site = whereabouts.at("at_site").get<std::string>();
    item.off_hire = flag(whereabouts, "off_hire");
    item.scrapped = flag(whereabouts, "scrapped");
    add_stops(item, unit);
    add_papers(item, unit);
    for (const SheetLine& line : sheet_of(book_, unit)) {
        SheetItem sheet{line.id, {}};
        for (const std::string& by : line.staled_by)
            sheet.staled_by.push_back(by == "setting" ? StaledBy::setting : StaledBy::coupling);
        item.sheet.push_back(std::move(sheet));
    }
    if (const auto fact = book_.fact("model", model))
        item.model = records::read_model(fact->doc);
    for (const Json& look : doc(book_, "lock", unit).value("looks", Json::array()))
        item.lock_seen.push_back(records::read_form<LockSeen>(look, records::Strictness::lenient));
    return item;
}

std::vector<Item> ItemsOfQuestion::items() const
{
    std::vector<Item> items;
    for (const std::string& unit : units_)
        items.push_back(item(unit));
    return items;
}

namespace {

// A picture of it taken here, such as at the gate, is its copy.
bool has_legible_page(const Book& book, const std::string& report)
{
    const Json pages = doc(book, "page", "report " + report).value("pages", Json::array());
    return std::any_of(pages.begin(), pages.end(), [](const Json& page) { return page.value("legible", false); });
}

} // namespace

std::vector<Report> ItemsOfQuestion::reports() const
{
    std::vector<Report> reports;
    for (const Fact& fact : facts_about_all(book_, "report", units_)) {
        Report report = records::read_report(fact.doc);
        report.units = labels(std::move(report.units));
        for (Defect& defect : report.defects)
            if (defect.unit)
                defect.unit = label(*defect.unit);
        name_defects_by_unit(report);
        if (has_legible_page(book_, fact.key.key))
            report.copy.legible = report.copy.here = true;
        reports.push_back(std::move(report));
    }
    return reports;
}

std::vector<Event> ItemsOfQuestion::events() const
{
    std::vector<Event> events;
    for (const Fact& fact : facts_about_all(book_, "event", units_)) {
        Event event = records::read_event(fact.doc);
        event.units = labels(std::move(event.units));
        for (std::size_t i = 0; i < event.assessments.size(); ++i)
            event.assessments[i].by_competent = is_competent(fact.doc.at("assessments").at(i));
        events.push_back(std::move(event));
    }
    return events;
}

std::vector<Clearing> ItemsOfQuestion::clearings() const
{
    std::vector<Clearing> clearings;
    for (const Fact& fact : facts_about_all(book_, "defect", units_))
        for (const Json& each : fact.doc.at("cleared"))
            clearings.push_back(
                {of_unit(label(fact.doc.value("unit", "")), fact.doc.value("id", "")), is_competent(each)});
    return clearings;
}

std::vector<Answer> ItemsOfQuestion::answers() const
{
    std::vector<Answer> answers;
    for (const Fact& fact : facts_about_all(book_, "check", units_)) {
        if (!fact.open && fact.doc.value("at", std::int64_t{0}) < now_.count() - answers_asked_for)
            continue;
        for (Json each : fact.doc.at("answers")) {
            for (Json& cleared : each["cleared"])
                cleared["entitled"] = may_clear(written_as(cleared));
            each.update({{"unit", label(fact.doc.at("unit").get<std::string>())},
                         {"at", fact.doc.at("at")},
                         {"by", fact.doc.at("by")}});
            if (fact.doc.contains("machine"))
                each["machine"] = label(fact.doc.at("machine").get<std::string>());
            answers.push_back(records::read_answer(each));
        }
    }
    return answers;
}

} // namespace cotter::desk
