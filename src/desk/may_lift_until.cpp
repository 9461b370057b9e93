#include "may_lift_until.hpp"

#include "decide.hpp"
#include "local_time.hpp"

namespace cotter::desk {

using namespace rules;

namespace {

bool may_lift_at(Question question, Instant at, const std::string& zone)
{
    question.now = at;
    question.day = local_day(at, zone);
    return decide(question).may_lift();
}

} // namespace

// What ends an answer comes once, so the last second is found by halving.
Instant may_lift_until(const Question& question, const std::string& zone)
{
    if (!question.now || !question.shift || !question.shift->end || *question.shift->end <= *question.now ||
        !decide(question).may_lift())
        return question.now.value_or(Instant{0});
    Instant holds = *question.now, ends = *question.shift->end + Instant{1};
    while ((ends - holds).count() > 1) {
        const Instant middle{(holds.count() + ends.count()) / 2};
        (may_lift_at(question, middle, zone) ? holds : ends) = middle;
    }
    return holds;
}

} // namespace cotter::desk
