#include "unloading.hpp"

#include "chart.hpp"
#include "leg_forces.hpp"
#include "lift_question.hpp"
#include "local_time.hpp"
#include "papers.hpp"
#include "physics.hpp"
#include "plan_parts.hpp"
#include "sling.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace cotter::desk {

using namespace rules;
using records::FormError;

namespace {

struct Delivery {
    std::string unit, sling_unit;
    Json body;
    double load = 0, on_hook = 0; // kg: as delivered; with sling and what else hangs
    Sling sling;
    std::optional<Kilograms> reported; // the lowest of the sling's report and model
    std::vector<Lug> lugs;             // from the centre of gravity
};

Json known(const Book& book, const char* kind, const char* field, const std::string& id)
{
    const auto fact = book.fact(kind, id);
    if (!fact)
        throw NotFound{std::string{field} + ": \"" + id + "\" is not in this book; the id of a " + kind +
                       " in it is accepted"};
    return fact->doc;
}

double mass_of(const Json& unit, const std::string& id, const char* field)
{
    if (!unit.contains(field))
        throw NotFound{id + ": " + field + " is not in this book; record unit gives it"};
    return unit.at(field).get<double>();
}

std::vector<Lug> lugs_of(const Json& model, const Json& body, const std::string& id)
{
    std::vector<Lug> lugs;
    for (const Json& each : model.value("lifting_points", Json::array()))
        lugs.push_back({number(each, "x_mm") - number(body, "centre_x_mm"),
                        number(each, "y_mm") - number(body, "centre_y_mm"), 0});
    if (lugs.empty())
        throw NotFound{id + ": its lifting points are not in this book; record model with lifting_points gives them"};
    return lugs;
}

// The sling as a lift's question has it, and the lowest of its report and model.
void read_sling(const Book& book, Delivery& d, Instant now)
{
    const Day today = local_day(now, zone_of(book, current_site(book)));
    const Question question = unit_question(book, d.sling_unit, now, today);
    const Item& item = question.items.front();
    d.sling = item.sling.value_or(Sling{});
    d.reported = papers_of(question, item, today).governing.swl;
    if (item.model && item.model->rating)
        d.reported = d.reported ? std::min(*d.reported, *item.model->rating) : *item.model->rating;
}

// What is coupled hangs too, unless the chart has taken it off.
void refuse_left_out_hitch(const Book& book, const Delivery& d, const Chart& chart, Results& out)
{
    const std::string on = d.body.at("machine"), hitch = doc(book, "coupling", on).value("hitch", "");
    const Json hangs = d.body.value("hangs", Json::array());
    if (!hitch.empty() && !chart.includes_hitch.value_or(false) &&
        std::find(hangs.begin(), hangs.end(), hitch) == hangs.end())
        out.refuse(on, "has {} coupled by the record; it belongs among what hangs", hitch);
    const std::string chosen = doc(book, "set_up", on).value("chart", "");
    if (chosen != d.body.at("chart").get<std::string>())
        out.refuse(on, "is set up for chart {}; that chart is accepted", chosen);
}

// A chart that nobody compared with its page proves nothing, nor does one for another arm, blade or counterweight.
void refuse_other_chart(const Book& book, const Delivery& d, const Chart& chart, Results& out)
{
    const std::string on = d.body.at("machine"), id = d.body.at("chart");
    const Json set_up = doc(book, "set_up", on);
    const auto refuse = [&](const char* field, const char* why, const Known<std::string>& charted) {
        if (!charted || set_up.value(field, "") != *charted)
            out.refuse(on, why, set_up.value(field, "not known"), charted.value_or("not known"));
    };
    refuse("arm", "its arm is \"{}\", the chart is for \"{}\"", chart.arm);
    refuse("blade", "its blade is \"{}\", the chart is for \"{}\"", chart.blade);
    refuse("counterweight", "its counterweight is \"{}\", the chart is for \"{}\"", chart.counterweight);
    if (doc(book, "chart", id).value("compared", Json::array()).empty())
        out.refuse(id, "this chart was not compared with its page by a second person");
}

// Each unit between machine and load carries all that hangs on the hook.
void ratings_of_what_hangs(const Book& book, const Delivery& d, Results& out)
{
    for (const std::string each : d.body.value("hangs", Json::array())) {
        const Json unit = doc(book, "unit", each), model = doc(book, "model", unit.value("model", ""));
        std::optional<std::int64_t> rating;
        for (const auto& [from, field] : {std::pair{&unit, "plate_kg"}, {&model, "rating_kg"}})
            if (from->contains(field))
                rating = std::min(rating.value_or(INT64_MAX), from->at(field).get<std::int64_t>());
        if (!rating)
            out.refuse(each, "its rating is not in this book: write it down with the unit");
        else
            out.at_most({"load on it", each, up(d.on_hook), "kg", "as delivered, sling and what hangs with it",
                         "its plate and its model"},
                        *rating);
    }
}

Delivery read(const Book& book, const std::string& unit, const Json& body, Instant now)
{
    Delivery d;
    d.unit = unit;
    d.body = body;
    const Json it = known(book, "unit", "about", unit);
    d.sling_unit = body.at("sling").get<std::string>();
    const Json sling = known(book, "unit", "sling", d.sling_unit);
    d.load = mass_of(it, unit, "delivered_kg");
    d.on_hook = d.load + mass_of(sling, d.sling_unit, "mass_kg");
    for (const Json& each : body.value("hangs", Json::array()))
        d.on_hook += mass_of(known(book, "unit", "hangs", each), each, "mass_kg");
    read_sling(book, d, now);
    d.lugs = lugs_of(doc(book, "model", it.value("model", "")), body, unit);
    return d;
}

double greatest_angle(const std::vector<Lug>& lugs)
{
    double greatest = 0;
    for (const Lug& each : lugs)
        greatest = std::max(greatest, degrees(std::atan2(std::hypot(each.x, each.y), each.below)));
    return greatest;
}

Sling used_of(const Delivery& d)
{
    Sling used = d.sling;
    used.legs = static_cast<std::int64_t>(d.lugs.size());
    for (auto* tag : {&used.tag_to_45, &used.tag_to_60})
        if (*tag)
            *tag = tag_for_fewer_legs(**tag, d.sling.legs.value_or(0), *used.legs);
    return used;
}

// A report and a model rate the whole sling too.
std::optional<Kilograms> reported_for(const Delivery& d, std::int64_t legs)
{
    if (!d.reported)
        return std::nullopt;
    return tag_for_fewer_legs(*d.reported, d.sling.legs.value_or(0), legs);
}

// What one leg may carry: the sling's lowest rating by the factor that its legs were counted with, and the table's one
// leg. Source: EN 818-4: two legs up to 45 degrees are rated 1.4 times one, three and four 2.1 times.
std::optional<Kilograms> one_leg(const Delivery& d)
{
    const std::int64_t legs = d.sling.legs.value_or(0);
    const double factor = legs <= 1 ? 1 : legs == 2 ? 1.4 : 2.1;
    std::optional<Kilograms> least;
    if (d.sling.chain && d.sling.kind == "chain" && d.sling.grade == 8)
        least = grade8_wll(*d.sling.chain, 1, Band::to_45);
    for (const auto& whole : {d.sling.tag_to_45, d.reported})
        if (whole) {
            const Kilograms share{static_cast<std::int64_t>(real(*whole) / factor)};
            least = least ? std::min(*least, share) : share;
        }
    return least;
}

bool is_centred(const Delivery& d)
{
    double x = 0, y = 0;
    for (const Lug& each : d.lugs) {
        x += each.x;
        y += each.y;
    }
    return std::hypot(x, y) < 1;
}

void sling_limits(const Delivery& d, double angle, Results& out)
{
    const Sling used = used_of(d);
    const Band band = angle <= 45 ? Band::to_45 : Band::to_60;
    auto limit = sling_limit(used, band);
    if (const auto reported = reported_for(d, *used.legs); limit && reported)
        limit = std::min(*limit, *reported);
    if (!limit)
        return out.refuse(d.sling_unit,
                          "has no limit for {} legs at this angle: tag, chain size or grade is not "
                          "known",
                          d.lugs.size());
    const bool heavy = d.load * 100 >= static_cast<double>(limit->count()) * symmetry_percent;
    const bool askew = !is_centred(d);
    const bool halved = (heavy && (askew || !d.sling.symmetric.value_or(false))) || (askew && d.lugs.size() == 4);
    out.at_most({"load on the sling", d.sling_unit, up(d.load), "kg",
                 halved ? key("half of the limit: the load is off centre, or 80 % of it is reached and symmetry is not "
                              "confirmed")
                        : "the lowest of tag and table at this angle, for the legs that are used",
                 "EN 818-4 table 3; EN 818-6"},
                halved ? limit->count() / 2 : limit->count());
}

void leg_limits(const Delivery& d, std::vector<Lug> lugs, Results& out)
{
    const auto forces = lugs.size() == 4 ? greatest_leg_forces(lugs, d.load) : leg_forces(lugs, d.load);
    if (!forces)
        return out.refuse(d.unit, "the centre of gravity does not hang between the lifting points: it would tip");
    const double greatest = *std::max_element(forces->begin(), forces->end());
    const Result result{"greatest force in a leg",
                        d.unit,
                        up(greatest),
                        "kg",
                        lugs.size() == 4 ? "statics of every two or three legs that can hold the load alone"
                                         : "statics of the legs",
                        "equilibrium at the hook; EN 818-6 counts on three legs of four at most"};
    if (lugs.size() == 4) // two opposite ones may carry all: shown, as EN 818-4 rates four by three
        return out.add(result);
    const auto one = one_leg(d);
    if (!one)
        return out.refuse(d.sling_unit,
                          "what one of its legs may carry is not known: tag, report, chain size or grade");
    out.at_most(result, one->count());
}

void slings(const Delivery& d, Results& out)
{
    if (static_cast<std::int64_t>(d.lugs.size()) > d.sling.legs.value_or(0))
        return out.refuse(d.sling_unit, "has fewer legs than there are lifting points");
    const auto hanging = hung(d.lugs, d.sling.leg_length ? real(*d.sling.leg_length) : 0);
    if (!hanging)
        return out.refuse(d.sling_unit,
                          "its legs are too short for these lifting points, their length is not known, or "
                          "no hook is as far from every lifting point");
    const std::vector<Lug>& lugs = *hanging;
    const double angle = greatest_angle(lugs);
    out.at_most({"greatest angle of a leg to the vertical", d.sling_unit, up(angle * 1000), "thousandths of a degree",
                 "legs of one length, the load turned until its centre of gravity is beneath the hook",
                 "EN 818-4: 60 degrees"},
                60'000);
    leg_limits(d, lugs, out);
    if (angle <= 60)
        sling_limits(d, angle, out);
}

void machine(const Book& book, const Delivery& d, Results& out)
{
    const Chart chart = records::read_chart(known(book, "chart", "chart", d.body.at("chart")));
    const ChartPoint at{Millimetres{d.body.at("radius_mm").get<std::int64_t>()},
                        Millimetres{d.body.at("height_mm").get<std::int64_t>()}};
    const Sector over = as_charted(chart, *records::read_move({{"sector", d.body.at("over")}}).sector,
                                   d.body.value("blade_ahead", false));
    const auto rated = rated_at(chart, over, at);
    const std::string on = d.body.at("machine").get<std::string>();
    refuse_left_out_hitch(book, d, chart, out);
    refuse_other_chart(book, d, chart, out);
    ratings_of_what_hangs(book, d, out);
    if (!rated)
        return out.refuse(on, "the lift is off the chart");
    out.at_most({"load on the machine", on, up(d.on_hook), "kg", "as delivered, sling and what hangs with it",
                 "lowest corner of the chart's cell"},
                rated->count());
}

// Out of date, quarantined, off hire: what stops a lift with it at any place.
std::vector<PlanStop> stops_of(const Book& book, const Delivery& d, Instant now)
{
    std::vector<std::string> gear{d.body.at("machine").get<std::string>(), d.sling_unit};
    for (const Json& each : d.body.value("hangs", Json::array()))
        gear.push_back(each.get<std::string>());
    const Day today = local_day(now, zone_of(book, current_site(book)));
    std::vector<PlanStop> stops;
    for (const std::string& each : gear) {
        const Question question = unit_question(book, each, now, today);
        for (const Finding& finding : decide(question).findings)
            if (weight(finding.code) == Weight::stop && finding.about == question.items.front().tag &&
                (row(finding.code) == Row::exam || finding.code == Code::unit_quarantined ||
                 finding.code == Code::unit_off_hire || finding.code == Code::unit_scrapped))
                stops.push_back({"", question, finding});
    }
    return stops;
}

} // namespace

PlanWork work_out_unloading(const Book& book, const std::string& unit, const Json& given, Instant now)
{
    Json body = given;
    body.erase("results");
    const Delivery d = read(book, unit, body, now);
    Results out;
    out.add({"mass as delivered", unit, up(d.load), "kg", "as on record", "delivery note or plate"});
    slings(d, out);
    machine(book, d, out);
    out.say("the machine stands", unit, body.at("stands_at").get<std::string>(), "as planned", "the plan's");
    body["results"] = out.take();
    return {std::move(body), std::move(out.refusals), stops_of(book, d, now)};
}

void check_unloading(const Book& book, const std::string& unit, const Json& body, Instant now)
try {
    const PlanWork work = work_out_unloading(book, unit, body, now);
    if (body.contains("results") && body.at("results") != work.body.at("results"))
        throw FormError{"results: are not what this plan gives; `cotter plan --unloading` works them out"};
    if (!work.fits())
        throw FormError{"results: the delivery does not fit; `cotter plan --unloading` says why"};
} catch (const NotFound& e) {
    throw FormError{e.what()};
}

} // namespace cotter::desk
