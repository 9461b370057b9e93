#include "calls.hpp"

#include <algorithm>

namespace cotter::desk {

std::vector<Call> calls(const Book& book)
{
    std::vector<Call> all;
    for (const auto& fact : book.facts("call")) {
        const Json& it = fact.doc;
        Call call{it.value("id", fact.key.key),
                  it.value("unit", ""),
                  it.value("kind", ""),
                  it.value("site", ""),
                  it.value("why", ""),
                  it.value("by", ""),
                  rules::Instant{it.value("at", std::int64_t{0})},
                  {}};
        if (const Json answer = it.value("answer", Json::object()); !fact.open) {
            call.answer = answer.value("what", "");
            call.answered_by = answer.value("by", "");
        }
        all.push_back(std::move(call));
    }
    std::stable_sort(all.begin(), all.end(), [](const Call& a, const Call& b) {
        if (a.answer.has_value() != b.answer.has_value())
            return !a.answer;
        return a.answer ? a.at > b.at : a.at < b.at;
    });
    return all;
}

Entry call_the_yard(const Hand& hand, const std::string& unit, const std::string& kind, const std::string& site,
                    const std::string& why)
{
    return entry(hand, "call", unit, {{"kind", kind}, {"site", site}, {"why", why}});
}

Entry answer_a_call(const Hand& hand, const Call& call, const std::string& what)
{
    return entry(hand, "call_answered", call.unit, {{"call", call.id}, {"what", what}});
}

Entry clear_defect(const Hand& hand, const OpenDefect& defect, const std::string& remedy,
                   const std::vector<std::string>& photos)
{
    Json body{{"remedy", remedy}};
    if (!defect.check.empty())
        body.update({{"check", defect.check}, {"item", defect.item}});
    else
        body["defect"] = defect.defect;
    if (!photos.empty())
        body["photos"] = photos;
    return entry(hand, "defect_cleared", defect.unit, std::move(body));
}

} // namespace cotter::desk
