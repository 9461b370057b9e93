// Row load: is what hangs under each item inside what the item is rated for?
// Source: LOLER 1998 reg. 4 (strength) and reg. 7 (marking of SWL); EN 818-4 for chain slings.

#include "configuration.hpp"
#include "load.hpp"
#include "sling.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

struct Codes {
    Code unrated, over, near;
};

std::optional<Codes> codes_of(Role role)
{
    switch (role) {
    case Role::machine: return std::nullopt;
    case Role::hitch: return Codes{Code::hitch_unrated, Code::hitch_over_rating, Code::hitch_near_rating};
    case Role::headplate:
        return Codes{Code::headplate_unrated, Code::headplate_over_rating, Code::headplate_near_rating};
    case Role::hook: return Codes{Code::hook_unrated, Code::hook_over_rating, Code::hook_near_rating};
    case Role::sling: return Codes{Code::sling_unrated, Code::sling_over_rating, Code::sling_near_rating};
    case Role::attachment:
        return Codes{Code::attachment_unrated, Code::attachment_over_rating, Code::attachment_near_rating};
    }
    return std::nullopt;
}

Known<Kilograms> lowest(Known<Kilograms> a, Known<Kilograms> b) { return a && b ? std::min(*a, *b) : (a ? a : b); }

// The governing report's SWL, for today's configuration where it gives one for each.
Known<Kilograms> reported_swl(const Case& asked, std::size_t i)
{
    const Paper& governing = asked.papers[i].governing;
    Known<Kilograms> swl = governing.swl;
    if (!governing.report || governing.report->configurations.empty())
        return swl;
    const auto today = configuration_of(asked, asked.question.items[i]);
    for (const Configuration& each : governing.report->configurations)
        if (today && each.name == today && each.swl)
            swl = each.swl;
    return swl;
}

Known<Kilograms> model_rating(const Item& item) { return item.model ? item.model->rating : std::nullopt; }

void compare(const Item& item, const Codes& codes, std::optional<double> load, Kilograms rating, Findings& out)
{
    if (!load)
        return;
    const Figure limit{static_cast<double>(rating.count())};
    if (*load > static_cast<double>(rating.count()))
        out.add(codes.over, item.tag, *load, limit, Unit::kilogram);
    else if (is_near(*load, rating))
        out.add(codes.near, item.tag, *load, limit, Unit::kilogram);
}

// With 80 % or more of its limit on it and symmetry not confirmed, a sling counts half.
Kilograms halved_if_askew(const Sling& sling, std::optional<double> load, Kilograms limit)
{
    const bool heavy = load && *load * 100 >= static_cast<double>(limit.count()) * symmetry_percent;
    return sling.legs >= 2 && heavy && !yes(sling.symmetric) ? Kilograms{limit.count() / 2} : limit;
}

void ask_sling(const Case& asked, std::size_t i, std::optional<double> load, Findings& out)
{
    const Item& item = asked.question.items[i];
    const auto angle = item.sling ? leg_angle(*item.sling) : std::nullopt;
    if (!angle || angle->band == Band::over) {
        const auto measured = angle ? Figure{angle->degrees * 1000} : Figure{};
        out.add(Code::sling_angle, item.tag, measured, 60'000.0, Unit::millidegree);
        return;
    }
    const auto own = sling_limit(*item.sling, angle->band);
    if (!own) {
        out.add(Code::sling_unrated, item.tag);
        return;
    }
    const Kilograms limit = *lowest(lowest(own, reported_swl(asked, i)), model_rating(item));
    compare(item, *codes_of(Role::sling), load, halved_if_askew(*item.sling, load, limit), out);
}

void ask_plain(const Case& asked, std::size_t i, const Codes& codes, std::optional<double> load, Findings& out)
{
    const Item& item = asked.question.items[i];
    const auto rated = lowest(item.plate, model_rating(item));
    if (!rated)
        out.add(codes.unrated, item.tag);
    else
        compare(item, codes, load, *lowest(rated, reported_swl(asked, i)), out);
}

void ask_item(const Case& asked, std::size_t i, std::optional<double> load, Findings& out)
{
    const Item& item = asked.question.items[i];
    if (!item.role)
        return;
    if (!load)
        out.add(Code::load_unknown, item.tag);
    if (item.role == Role::sling)
        ask_sling(asked, i, load, out);
    else if (const auto codes = codes_of(*item.role))
        ask_plain(asked, i, *codes, load, out);
}

void ask_pipe(const Case& asked, const Pipe& pipe, Findings& out)
{
    const auto hanging = hanging_kg(asked, pipe);
    for (std::size_t i = 0; i < asked.question.items.size(); ++i) {
        const bool machine = asked.question.items[i].role == Role::machine;
        ask_item(asked, i, machine ? load_on_machine(asked, false, hanging) : load_under(asked, i, hanging), out);
    }
}

void ask_missing(const Question& question, Findings& out)
{
    if (!find_item(question, Role::machine) || !find_item(question, Role::attachment))
        out.add(Code::load_unknown);
    if (!find_item(question, Role::sling) && !yes(question.no_sling))
        out.add(Code::sling_unrated);
}

} // namespace

void load_row(const Case& asked, Findings& out)
{
    const Question& question = asked.question;
    if (!asked.dispatch) {
        ask_missing(question, out);
        ask_pipe(asked, question.pipe.value_or(Pipe{}), out);
    } else if (find_item(question, Role::attachment) && question.order) {
        for (const Pipe& pipe : question.order->pipes)
            if (pipe.barrel)
                ask_pipe(asked, pipe, out);
    }
}

} // namespace cotter::rules
