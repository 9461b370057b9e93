#include "withdrawn.hpp"

#include <algorithm>

namespace cotter::records {

namespace {

// The correction as a record of another kind, by the same hand.
Record acting_as(const Record& correction, std::string kind, Json body)
{
    Record record = correction;
    record.entry.kind = std::move(kind);
    record.entry.body = std::move(body);
    return record;
}

std::string why(const Record& correction) { return correction.entry.body.value("why", "corrected"); }

const Json* answer_to(const Json& answers, const Json& item)
{
    const auto found =
        std::find_if(answers.begin(), answers.end(), [&](const Json& each) { return each["item"] == item; });
    return found == answers.end() ? nullptr : &*found;
}

bool still_stands(const Json& old_answer, const Json& answers)
{
    const Json* now = answer_to(answers, old_answer["item"]);
    return now && (*now)["answer"] == old_answer["answer"];
}

// The new answers, beside them each old defect that they leave out, with a clearing by the correction's author.
std::vector<Record> withdrawn_check(const Record& check, const Record& correction)
{
    const Json old_answers = check.entry.body.value("answers", Json::array());
    Json answers = is_void(correction) ? Json::array() : correction.entry.body["body"].value("answers", Json::array());
    std::vector<Record> left{check};
    Json kept = Json::array();
    for (const Json& each : old_answers) {
        if (each["answer"] == "right" || still_stands(each, answers))
            continue;
        kept.push_back(each);
        left.push_back(acting_as(correction, "defect_cleared",
                                 {{"check", check.hash}, {"item", each["item"]}, {"remedy", why(correction)}}));
    }
    for (const Json& each : answers)
        if (!answer_to(kept, each["item"]))
            kept.push_back(each);
    left.front().entry.body["answers"] = kept;
    return left;
}

} // namespace

bool is_void(const Record& correction)
{
    const Json& body = correction.entry.body;
    return body.value("void", false) || !body.contains("body");
}

bool may_stop(const Record& record)
{
    const std::string& kind = record.entry.kind;
    return kind == "stop_called" || kind == "pre_use_check" || kind == "defect_found" || kind == "event";
}

std::vector<Record> withdrawn(const Record& record, const Record& correction)
{
    const std::string& kind = record.entry.kind;
    if (kind == "pre_use_check")
        return withdrawn_check(record, correction);
    if (kind == "event")
        return {record, acting_as(correction, "event_corrected",
                                  is_void(correction) ? Json::object() : correction.entry.body["body"])};
    if (!is_void(correction)) // other words, the same stop
        return {record};
    if (kind == "defect_found")
        return {record, acting_as(correction, "defect_cleared", {{"check", record.hash}, {"remedy", why(correction)}})};
    return {record, acting_as(correction, "stop_lifted", {{"stop", record.hash}, {"why", why(correction)}})};
}

} // namespace cotter::records
