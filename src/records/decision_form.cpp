#include "decision_form.hpp"

namespace cotter::records {

namespace {

Json figure_json(const rules::Figure& figure)
{
    if (const auto* number = std::get_if<double>(&figure)) {
        const auto whole = static_cast<std::int64_t>(*number);
        return static_cast<double>(whole) == *number ? Json(whole) : Json(*number);
    }
    if (const auto* day = std::get_if<rules::Day>(&figure))
        return rules::to_string(*day);
    return {};
}

Json finding_json(const rules::Finding& finding, const FindingTexts& texts)
{
    return {{"code", std::string{rules::name(finding.code)}},
            {"weight", std::string{name(weight(finding.code))}},
            {"about", finding.about},
            {"says", texts.says(finding)},
            {"measured", figure_json(finding.measured)},
            {"limit", figure_json(finding.limit)},
            {"unit", std::string{rules::name(finding.unit)}},
            {"source", texts.source(finding.code)},
            {"clears", texts.clears(finding.code)}};
}

} // namespace

std::string_view name(rules::Weight weight)
{
    switch (weight) {
    case rules::Weight::stop: return "stop";
    case rules::Weight::caution: return "caution";
    case rules::Weight::note: return "note";
    }
    return "stop";
}

Json write_decision(const rules::Decision& decision, const FindingTexts& texts)
{
    Json findings = Json::array();
    for (const rules::Finding& finding : decision.findings)
        findings.push_back(finding_json(finding, texts));
    return {{"outcome", decision.may_lift() ? "may_lift" : "do_not_lift"}, {"findings", findings}};
}

Json in_whole_numbers(Json decision)
{
    for (Json& finding : decision["findings"])
        for (const char* figure : {"measured", "limit"})
            if (finding[figure].is_number_float())
                finding[figure] = finding[figure].dump();
    return decision;
}

} // namespace cotter::records
