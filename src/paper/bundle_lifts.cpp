// Lifts asked for: the answer, and every finding as it was shown then.

#include "bundle_tables.hpp"

#include "dimension.hpp"
#include "finding_words.hpp"

#include <map>

namespace cotter::paper {

namespace {

std::optional<rules::Code> code_named(const std::string& name)
{
    static const std::map<std::string, rules::Code> codes = [] {
        std::map<std::string, rules::Code> all;
        for (int i = 0; i < rules::code_count; ++i)
            all.emplace(rules::name(static_cast<rules::Code>(i)), static_cast<rules::Code>(i));
        return all;
    }();
    const auto found = codes.find(name);
    return found == codes.end() ? std::nullopt : std::optional{found->second};
}

// As it was shown then; where only the code stands in the record, as it reads now.
std::string sentence_of(const Readable& readable, const Json& finding)
{
    if (const std::string says = finding.value("says", ""); !says.empty())
        return says;
    const auto code = code_named(finding.value("code", ""));
    return code ? words::says({*code, finding.value("about", ""), {}, {}, rules::Unit::none}, {},
                              [&](const std::string& id) { return readable.name(id); })
                      .joined()
                : finding.value("code", "");
}

std::optional<figures::Figure> figure_of(const Json& finding)
{
    constexpr double width = 90;
    const Json measured = finding.value("measured", Json{}), limit = finding.value("limit", Json{});
    const std::string unit = finding.value("unit", "");
    if (!measured.is_number_integer() || !limit.is_number_integer() || (unit != "kg" && unit != "mm" && unit != "N m"))
        return std::nullopt;
    return figures::limit_line(measured.get<double>(), limit.get<double>(),
                               measured.dump() + " of " + limit.dump() + " " + unit, width);
}

std::optional<figures::Sign> sign_of(const std::string& weight)
{
    return weight == "stop"      ? std::optional{figures::Sign::stop}
           : weight == "caution" ? std::optional{figures::Sign::warning}
                                 : std::nullopt;
}

Row row_of(const Readable& readable, const Json& finding)
{
    const std::string weight = finding.value("weight", ""), clears = finding.value("clears", "");
    return {
        {weight, "", finding.value("source", ""),
         sentence_of(readable, finding) + (clears.empty() || weight == "note" ? "" : " Clears it: " + clears + ".")},
        sign_of(weight),
        figure_of(finding)};
}

std::string what_was_asked(const Readable& readable, const Json& question)
{
    std::string path;
    for (const Json& each : question.value("items", Json::array()))
        path += (path.empty() ? "" : ", ") + each.value("tag", "");
    const std::string pipe = question.value("pipe", Json::object()).value("id", ""),
                      place = question.value("place", Json::object()).value("id", "");
    return (pipe.empty() ? "no pipe" : readable.name(pipe)) + (place.empty() ? "" : ", mark " + place) +
           (path.empty() ? "" : ", with " + path);
}

// "and was made: picked up ..., set down ..., done ...".
std::string what_became(const Readable& readable, const std::string& lift)
{
    const Json doc = desk::doc(readable.book(), "lift", lift);
    std::string text;
    for (const auto& [field, says] :
         {std::pair{"picked_up_at", "Picked up "}, {"set_down_at", "set down "}, {"lift_done_at", "done "}})
        if (doc.contains(field))
            text += (text.empty() ? "" : ", ") + std::string{says} +
                    readable.when(rules::Instant{doc[field].get<std::int64_t>()});
    return text.empty() ? "Not made by the record." : text + ".";
}

} // namespace

Table lifts(const Readable& readable, const Records& records)
{
    Table table{{{"WHEN, WEIGHT", 2.2}, {"ASKED BY", 2}, {"RECORD, RULE", 2.2}, {"ANSWER AND FINDINGS", 6.6}}, {}};
    for (const auto& each : records) {
        const Record& record = each.record;
        const Json& body = record.entry.body;
        const bool may = body.value("outcome", "") == "may_lift";
        const std::string standing = readable.standing(each);
        table.rows.push_back(
            {{readable.when(record), readable.who(record.entry), readable.place(record),
              std::string{words::verdict(may)} + ": " +
                  what_was_asked(readable, body.value("question", Json::object())) + ". " +
                  what_became(readable, record.entry.about) + (standing.empty() ? "" : "\n" + standing)},
             may ? figures::Sign::in_order : figures::Sign::stop});
        for (const Json& finding : body.value("findings", Json::array()))
            table.rows.push_back(row_of(readable, finding));
    }
    return table;
}

} // namespace cotter::paper
