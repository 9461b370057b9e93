#include "decision_json.hpp"

#include "decision_form.hpp"

namespace cotter::cli {

Json decision_json(const rules::Question& question, const rules::Decision& decision, const words::Naming& naming)
{
    Json answer = records::write_decision(
        decision, {[&](const rules::Finding& finding) { return words::says(finding, question, naming).joined(); },
                   [](rules::Code code) { return std::string{words::source(code)}; },
                   [](rules::Code code) { return std::string{words::clears(code)}; }});
    answer["id"] = question.id;
    return answer;
}

void tell(const rules::Question& question, const rules::Decision& decision, const words::Naming& naming,
          std::ostream& out)
{
    out << words::verdict(decision.may_lift()) << '\n';
    if (decision.may_lift() && question.pipe && question.pipe->id && question.place && question.place->id &&
        question.plan && question.plan->id)
        out << "  " << naming(*question.pipe->id) << ", at mark " << *question.place->id << ", by " << *question.plan->id
            << " issue " << question.plan->issue.value_or(0)
            << ". On the signaller's signal, nobody inside the zone.\n";
    for (const rules::Finding& finding : decision.findings)
        out << "  " << records::name(weight(finding.code)) << ": " << words::says(finding, question, naming).joined()
            << "\n      " << words::clears(finding.code) << " (" << words::source(finding.code) << ")\n";
}

} // namespace cotter::cli
