// Row pipe: may this model grip this pipe?
// Source: maker's limits (model data).

#include "case.hpp"
#include "mass.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

// A range that the maker does not limit takes anything; not known takes nothing.
bool takes(const Known<Range>& range, Known<Millimetres> value)
{
    if (!range || !value)
        return false;
    if (range->any)
        return true;
    return range->least && range->greatest && *range->least <= *value && *value <= *range->greatest;
}

Figure nearest_end(const Known<Range>& range, Known<Millimetres> value)
{
    if (!range || range->any || !value)
        return {};
    return range->least && *value < *range->least ? figure(range->least) : figure(range->greatest);
}

bool takes_socket(const Model& model, const Pipe& pipe) { return takes(model.socket, pipe.socket); }

bool takes_barrel(const Model& model, const Pipe& pipe)
{
    return pipe.barrel && (!no(model.adjusts) || takes(model.barrel, pipe.barrel));
}

void ask_size(const Model& model, const Pipe& pipe, Findings& out)
{
    const auto add = [&](const Known<Range>& range, Known<Millimetres> value) {
        out.add(Code::pipe_size, about(pipe.id), figure(value), nearest_end(range, value), Unit::millimetre);
    };
    if (!takes_barrel(model, pipe))
        add(model.barrel, pipe.barrel);
    else if (!takes(model.bore, pipe.bore))
        add(model.bore, pipe.bore);
    else if (!takes_socket(model, pipe))
        add(model.socket, pipe.socket);
}

void ask_length(const Model& model, const Pipe& pipe, Findings& out)
{
    if (!takes(model.length, pipe.overall))
        out.add(Code::pipe_length, about(pipe.id), figure(pipe.overall), nearest_end(model.length, pipe.overall),
                Unit::millimetre);
}

void ask_shape_and_material(const Model& model, const Pipe& pipe, Findings& out)
{
    if (!pipe.shape || (pipe.shape != Shape::straight && !contains(model.shapes, *pipe.shape)))
        out.add(Code::pipe_shape, about(pipe.id));
    if (!pipe.material || !contains(model.materials, *pipe.material))
        out.add(Code::pipe_material, about(pipe.id));
}

void ask_mass(const Model& model, const Pipe& pipe, Findings& out)
{
    const PipeMass mass = mass_of(pipe);
    const double limit = model.greatest_pipe ? static_cast<double>(model.greatest_pipe->count()) : 0;
    if (!mass.used || !model.greatest_pipe || *mass.used > limit)
        out.add(Code::pipe_mass, about(pipe.id), figure(mass.used), figure(model.greatest_pipe), Unit::kilogram);
    if (pipe.stated && mass.computed &&
        static_cast<double>(pipe.stated->count()) * 100 < *mass.computed * doubted_percent)
        out.add(Code::pipe_mass_differs, about(pipe.id), figure(pipe.stated), figure(mass.computed), Unit::kilogram);
}

void ask(const Model& model, const Pipe& pipe, Findings& out)
{
    ask_size(model, pipe, out);
    ask_length(model, pipe, out);
    ask_shape_and_material(model, pipe, out);
    ask_mass(model, pipe, out);
}

} // namespace

void pipe_row(const Case& asked, Findings& out)
{
    const Item* attachment = find_item(asked.question, Role::attachment);
    static const Model unknown;
    const Model& model = attachment && attachment->model ? *attachment->model : unknown;
    if (!asked.dispatch)
        ask(model, asked.question.pipe.value_or(Pipe{}), out);
    else if (attachment && asked.question.order)
        for (const Pipe& pipe : asked.question.order->pipes)
            if (pipe.barrel)
                ask(model, pipe, out);
}

} // namespace cotter::rules
