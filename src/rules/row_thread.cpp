// Row thread: does the pipe with its attachment go down between the struts?
// Source: plane geometry (threading.hpp); gap, clearance and strut depth are the plan's.

#include "case.hpp"
#include "threading.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool known(const Strutting& s) { return s.gap && s.clearance && s.strut_depth && s.room; }

bool known(const Model& model)
{
    return model.envelope_length && model.above_crown && model.below_invert && model.tilt_limit;
}

bool known(const Pipe& pipe) { return pipe.overall && pipe.barrel && pipe.socket; }

// The pipe together with the attachment: the greater length, the greatest outside and what stands above and below it.
Passage passage(const Strutting& s, const Model& model, const Pipe& pipe)
{
    Passage p;
    p.length = real(std::max(*pipe.overall, *model.envelope_length));
    p.depth = real(std::max(*pipe.barrel, *pipe.socket) + *model.above_crown + *model.below_invert);
    p.gap = real(*s.gap);
    p.max_tilt = static_cast<double>(model.tilt_limit->count()) / 1000;
    p.clearance = real(*s.clearance);
    p.strut_depth = real(*s.strut_depth);
    p.room = real(*s.room);
    return p;
}

} // namespace

void thread_row(const Case& asked, Findings& out)
{
    const Question& question = asked.question;
    if (question.thread && no(question.thread->strutted))
        return;
    const std::string place = question.place ? about(question.place->id) : std::string{};
    const Item* attachment = find_item(question, Role::attachment);
    const Model* model = attachment && attachment->model ? &*attachment->model : nullptr;
    if (!question.thread || !known(*question.thread) || !model || !known(*model) || !question.pipe ||
        !known(*question.pipe)) {
        out.add(Code::thread_unknown, place);
        return;
    }
    const Threading way = thread(passage(*question.thread, *model, *question.pipe));
    if (way.way == Way::none)
        out.add(Code::thread_tight, place, figure(question.thread->gap), figure(way.gap_needed), Unit::millimetre);
}

} // namespace cotter::rules
