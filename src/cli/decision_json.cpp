#include "decision_json.hpp"

namespace cotter::cli {

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

std::string weight_name(rules::Weight weight)
{
    switch (weight) {
    case rules::Weight::stop: return "stop";
    case rules::Weight::caution: return "caution";
    case rules::Weight::note: return "note";
    }
    return "stop";
}

Json finding_json(const rules::Finding& finding, const rules::Question& question, const words::Naming& naming)
{
    return {{"code", std::string{name(finding.code)}},
            {"weight", weight_name(weight(finding.code))},
            {"about", finding.about},
            {"says", words::says(finding, question, naming).joined()},
            {"measured", figure_json(finding.measured)},
            {"limit", figure_json(finding.limit)},
            {"unit", std::string{name(finding.unit)}},
            {"source", std::string{words::source(finding.code)}},
            {"clears", std::string{words::clears(finding.code)}}};
}

} // namespace

Json decision_json(const rules::Question& question, const rules::Decision& decision, const words::Naming& naming)
{
    Json findings = Json::array();
    for (const rules::Finding& finding : decision.findings)
        findings.push_back(finding_json(finding, question, naming));
    return {{"id", question.id}, {"outcome", decision.may_lift() ? "may_lift" : "do_not_lift"}, {"findings", findings}};
}

void tell(const rules::Question& question, const rules::Decision& decision, const words::Naming& naming,
          std::ostream& out)
{
    out << words::verdict(decision.may_lift()) << '\n';
    for (const rules::Finding& finding : decision.findings)
        out << "  " << weight_name(weight(finding.code)) << ": " << words::says(finding, question, naming).joined()
            << "\n      " << words::clears(finding.code) << " (" << words::source(finding.code) << ")\n";
}

} // namespace cotter::cli
