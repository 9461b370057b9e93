#include "register.hpp"

#include "local_time.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

bool is_called(const Json& unit, const std::string& key, const std::string& wanted)
{
    const std::string tag = unit.value("tag", ""), owner = unit.value("owner_firm", "");
    return key == wanted || tag == wanted || owner + "/" + unit.value("serial", "") == wanted ||
           tag + " (" + owner + ")" == wanted;
}

void add_lines(std::vector<SheetLine>& lines, const Json& items)
{
    for (const Json& each : items)
        lines.push_back({each.value("id", ""), each.value("text", ""), each.value("if_not", ""),
                         each.value("staled_by", std::vector<std::string>{}), each.value("stop_only", false)});
}

} // namespace

Json doc(const Book& book, const std::string& kind, const std::string& key)
{
    const auto fact = book.fact(kind, key);
    return fact ? fact->doc : Json::object();
}

std::optional<rules::Day> day_in(const Json& doc, const char* field) { return rules::parse_day(doc.value(field, "")); }

rules::Flag flag(const Json& doc, const char* field)
{
    const auto found = doc.find(field);
    return found != doc.end() && found->is_boolean() ? rules::Flag{found->get<bool>()} : std::nullopt;
}

std::string find_unit(const Book& book, const std::string& tag)
{
    std::vector<records::Fact> found;
    for (auto& fact : book.facts("unit"))
        if (is_called(fact.doc, fact.key.key, tag))
            found.push_back(std::move(fact));
    if (found.empty())
        throw NotFound{"unit: \"" + tag + "\" is not in this book; `cotter board` lists its units"};
    if (found.size() == 1)
        return found.front().key.key;
    std::string owners;
    for (const auto& fact : found)
        owners += (owners.empty() ? "\"" : ", \"") + fact.doc.value("owner_firm", "") + "/" +
                  fact.doc.value("serial", "") + "\"";
    throw NotFound{"unit: \"" + tag + "\" is the tag of " + std::to_string(found.size()) + " units; accepted are " +
                   owners};
}

std::string tag_of(const Book& book, const std::string& unit) { return doc(book, "unit", unit).value("tag", unit); }

std::string label_of(const Book& book, const std::string& unit)
{
    const Json mine = doc(book, "unit", unit);
    const std::string tag = mine.value("tag", unit);
    return book.units_with_tag(tag) > 1 ? tag + " (" + mine.value("owner_firm", "") + ")" : tag;
}

std::string shown_name(const Book& book, const std::string& id)
{
    if (book.fact("person", id))
        return book.private_value("person " + id, "name").value_or("removed");
    for (const char* kind : {"pipe", "model", "chart", "site"})
        if (const auto fact = book.fact(kind, id))
            return fact->doc.value("name", id);
    return book.fact("unit", id) ? label_of(book, id) : id;
}

std::string current_site(const Book& book)
{
    std::string site;
    std::int64_t start = -1;
    for (const auto& fact : book.facts("shift"))
        if (fact.doc.value("start", std::int64_t{0}) > start) {
            start = fact.doc.value("start", std::int64_t{0});
            site = fact.doc.value("site", "");
        }
    if (!site.empty())
        return site;
    const auto sites = book.facts("site");
    const auto newest =
        std::max_element(sites.begin(), sites.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    return newest == sites.end() ? "" : newest->key.key;
}

std::string zone_of(const Book& book, const std::string& site) { return doc(book, "site", site).value("zone", "UTC"); }

Json open_shift(const Book& book, const std::string& site)
{
    Json newest = Json::object();
    for (const auto& fact : book.facts("shift"))
        if (fact.doc.value("site", "") == site &&
            fact.doc.value("start", std::int64_t{0}) > newest.value("start", std::int64_t{-1}))
            newest = fact.doc;
    return newest.contains("ended_at") ? Json::object() : newest;
}

rules::Day working_day(const Book& book, const std::string& site, rules::Instant now)
{
    const std::string zone = zone_of(book, site);
    const Json shift = open_shift(book, site);
    const rules::Instant start{shift.value("start", now.count())}, end{shift.value("end", now.count())};
    return local_day(start <= now && now <= end ? start : now, zone);
}

std::vector<SheetLine> sheet_of(const Book& book, const std::string& unit)
{
    const Json it = doc(book, "unit", unit);
    std::vector<SheetLine> lines;
    add_lines(lines, doc(book, "check_sheet", it.value("sheet", "")).value("items", Json::array()));
    add_lines(lines, doc(book, "model", it.value("model", "")).value("check_items", Json::array()));
    return lines;
}

} // namespace cotter::desk
