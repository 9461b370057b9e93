#include "decide.hpp"

#include "case.hpp"

namespace cotter::rules {

namespace {

void ask_lift(const Question& question, Findings& out)
{
    const Case asked{question, question.day};
    for (const auto ask :
         {exam_row, evidence_row, data_row, check_row, setting_row, pipe_row, load_row, reach_row, hitch_row, plan_row,
          people_row, place_row, trench_row, unit_row, thread_row, clock_row, book_row})
        ask(asked, out);
}

void ask_dispatch(const Question& question, Findings& out)
{
    const auto first_use = question.order ? question.order->first_use_day : std::nullopt;
    for (const Known<Day>& day : {question.day, first_use}) {
        const Case asked{question, day};
        for (const auto ask : {exam_row, evidence_row, data_row, setting_row, pipe_row, load_row, unit_row,
                               dispatch_row, clock_row, book_row})
            ask(asked, out);
    }
}

} // namespace

Decision decide(const Question& question)
{
    Findings findings;
    if (question.purpose == Purpose::lift)
        ask_lift(question, findings);
    else if (question.purpose == Purpose::use)
        ask_dispatch(question, findings);
    return Decision{std::move(findings).sorted()};
}

} // namespace cotter::rules
