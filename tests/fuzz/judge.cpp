// A line of `judge`: a question that is read has an answer in words; written again, it reads the same and is answered
// the same; and there is no MAY LIFT with a stop among the findings.

#include "decide.hpp"
#include "decision_json.hpp"
#include "fuzzing.hpp"
#include "json_mutator.hpp"
#include "question_form.hpp"

using namespace cotter;
using namespace cotter::tests;

namespace {

std::string answered(const rules::Question& question)
{
    const rules::Decision decision = decide(question);
    for (const rules::Finding& finding : decision.findings)
        must(!decision.may_lift() || weight(finding.code) != rules::Weight::stop, "no stop in a lift that may be made");
    return cli::decision_json(question, decision).dump(-1, ' ', false, records::Json::error_handler_t::replace);
}

const records::Json& part_of(const records::Json& given, const std::string& key)
{
    static const records::Json nothing;
    if (given.is_array())
        return std::stoul(key) < given.size() ? given[std::stoul(key)] : nothing;
    return given.is_object() && given.contains(key) ? given[key] : nothing;
}

// Every number that was read is the one that stood there; as text, since nlohmann compares some that differ as equal.
void must_have_the_numbers_of(const records::Json& written, const records::Json& given)
{
    if (written.is_number())
        must(written.dump() == given.dump(), "a number is read as it stands");
    if (written.is_structured())
        for (const auto& [key, each] : written.items())
            must_have_the_numbers_of(each, part_of(given, key));
}

} // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed)
{
    return mutate_json(data, size, most, seed);
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    const rules::Question question = records::read_question(text_of(data, size));
    const std::string answer = answered(question);
    const std::string written = records::write_question(question).dump();
    must_have_the_numbers_of(records::Json::parse(written), records::parse_strictly(text_of(data, size)));
    const rules::Question again = records::read_question(written);
    must(records::write_question(again).dump() == written, "what is written reads the same");
    must(answered(again) == answer, "it is answered the same");
    return 0;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return 0;
}
