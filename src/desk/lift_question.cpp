#include "lift_question.hpp"

#include "clock.hpp"
#include "entitled.hpp"
#include "local_time.hpp"
#include "plan_in_force.hpp"
#include "question_items.hpp"

#include <algorithm>

namespace cotter::desk {

using namespace rules;

namespace {

std::optional<std::string> text(const Json& doc, const char* field)
{
    const auto found = doc.find(field);
    return found != doc.end() && found->is_string() && *found != "" ? std::optional{found->get<std::string>()}
                                                                    : std::nullopt;
}

void copy_field(const Json& from, Json& to, const char* field)
{
    if (from.contains(field))
        to[field] = from[field];
}

// How the machine is coupled to this attachment; {} if it is coupled to another, or the attachment hangs on another
// machine by a newer record.
Json coupling_of(const Book& book, const LiftAsked& asked)
{
    const Json coupling = doc(book, "coupling", asked.machine);
    if (coupling.value("attachment", "") != asked.unit)
        return Json::object();
    for (const auto& other : book.facts_about("coupling", asked.unit))
        if (other.doc.value("attachment", "") == asked.unit && other.at > coupling.value("at", std::int64_t{0}))
            return Json::object();
    return coupling;
}

// Builds one question; each part is named after what it fills.
class Building {
public:
    Building(const Book& book, const LiftAsked& asked) : book_{book}, asked_{asked}, site_{current_site(book)}
    {
        zone_ = zone_of(book, site_);
        day_ = local_day(asked.now, zone_);
        rigging_ = doc(book, "rigging", asked.machine);
        coupling_ = coupling_of(book, asked);
        plan_ = plan_for(book, site_, day_, standing_asked_or_confirmed());
        made_ = made_at(book, plan_.value("id", ""));
    }

    Question question()
    {
        q_.id = "lift";
        q_.purpose = Purpose::lift;
        q_.day = day_;
        q_.now = asked_.now;
        when_and_where();
        gear();
        what_hangs();
        setting();
        people();
        plan_and_place();
        clock_and_book();
        return std::move(q_);
    }

private:
    void when_and_where();
    void gear();
    void plan(const ItemsOfQuestion& gear, const std::string& chart);
    bool is_taped_inside() const;
    void what_hangs();
    void setting();
    void people();
    void add_person(const std::string& role, const std::string& id);
    void plan_and_place();
    void tape(Move& move) const;
    std::string standing_asked_or_confirmed() const;
    Json place_in_plan() const;
    std::string at_site(const std::string& place) const
    {
        return site_ + " " + place;
    } // two sites may both have a mark A
    void trench(const Json& place);
    void clock_and_book();

    const Book& book_;
    const LiftAsked& asked_;
    std::string site_, zone_;
    Day day_{};
    Json rigging_, coupling_, plan_;
    Instant made_{0}; // the plan's issue
    Question q_;
};

void Building::when_and_where()
{
    if (book_.fact("site", site_))
        q_.site = records::read_site(doc(book_, "site", site_));
    if (const Json shift = open_shift(book_, site_); !shift.empty())
        q_.shift = records::read_shift(shift);
}

// What would stand in for another, unseen.
void refuse_doubles(const std::vector<Item>& items)
{
    for (std::size_t i = 0; i < items.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (items[i].role == items[j].role && items[i].role != Role::hook && items[i].role != Role::sling)
                throw NotFound{
                    "rigging: " + items[j].tag + " and " + items[i].tag +
                    " are of one kind in this load path; one of a kind is accepted, but for hooks and slings"};
}

void Building::gear()
{
    const ItemsOfQuestion gear{book_, load_path(book_, asked_), asked_.now};
    q_.items = gear.items();
    refuse_doubles(q_.items);
    q_.reports = gear.reports();
    q_.events = gear.events();
    q_.clearings = gear.clearings();
    q_.answers = gear.answers();
    q_.no_hitch = flag(coupling_, "no_hitch");
    q_.no_sling = flag(rigging_, "no_sling");
    if (coupling_.contains("at"))
        q_.coupled_at = Instant{coupling_["at"].get<std::int64_t>()};
    const Json set_up = doc(book_, "set_up", asked_.machine);
    if (!set_up.empty()) {
        Json both = doc(book_, "devices", asked_.machine);
        both.update(set_up);
        q_.set_up = records::read_set_up(both);
    }
    if (const auto chart = book_.fact("chart", set_up.value("chart", "")))
        q_.chart = records::read_chart(chart->doc);
    if (!plan_.empty())
        plan(gear, set_up.value("chart", ""));
}

void Building::plan(const ItemsOfQuestion& gear, const std::string& chart)
{
    Json plan = plan_;
    plan["places"] = Json::array();
    for (const Json& place : plan_.value("places", Json::array()))
        plan["places"].push_back(place.at("id"));
    plan["pipes"] = pipes_as_planned(book_, plan_, made_);
    q_.plan = records::read_plan(plan);
    q_.plan->machines = gear.labels(q_.plan->machines);
    q_.plan->attachments = gear.labels(q_.plan->attachments);
    if (!is_as_planned(book_, plan_, made_, load_path(book_, asked_), chart) || !is_taped_inside())
        q_.plan->machines.clear(); // outside of it
}

// Is what was taped no more than what the plan says of the mark? A sector of its own counts as both.
bool Building::is_taped_inside() const
{
    const Json place = place_in_plan();
    const auto stated = [&](const char* field) {
        return place.contains(field) ? std::optional{Millimetres{place.at(field).get<std::int64_t>()}} : std::nullopt;
    };
    const auto farthest = std::max(stated("nose_radius_mm"), stated("centre_radius_mm"));
    if (asked_.radius && farthest && *asked_.radius > *farthest)
        return false;
    if (const auto lowest = stated("lay_height_mm"); asked_.height && lowest && *asked_.height < *lowest)
        return false;
    if (const auto highest = std::max(stated("slew_height_mm"), stated("pick_height_mm"));
        asked_.height && highest && *asked_.height > *highest)
        return false;
    const auto planned = records::read_move(place).sector;
    return !asked_.sector || *asked_.sector == Sector::both || !planned || *asked_.sector == *planned;
}

void Building::what_hangs()
{
    if (const auto pipe = book_.fact("pipe", asked_.pipe))
        q_.pipe = records::read_pipe(pipe->doc);
    Json move = place_in_plan();
    for (const char* field : {"water_kg", "mud_kg", "shackles_kg", "bucket_kg"})
        copy_field(rigging_, move, field);
    const Json planned = plan_.value("worksheet", Json::object()).value("hanging", Json::object());
    for (const char* field : {"water_kg", "mud_kg", "shackles_kg"}) // what the plan counts with hangs at the least
        if (move.contains(field) && planned.contains(field))
            move[field] = std::max(move.at(field).get<std::int64_t>(), planned.at(field).get<std::int64_t>());
    q_.move = records::read_move(move);
    tape(*q_.move);
}

// Taped figures in place of the plan's: one radius, one height.
void Building::tape(Move& move) const
{
    if (asked_.radius)
        move.nose_radius = move.centre_radius = asked_.radius;
    if (asked_.height)
        move.pick_height = move.slew_height = move.lay_height = asked_.height;
    if (asked_.sector)
        move.sector = asked_.sector;
}

void Building::setting()
{
    const std::string model = doc(book_, "unit", asked_.unit).value("model", "");
    for (const Json& each : doc(book_, "setting", asked_.unit).value("records", Json::array())) {
        SettingRecord record = records::read_setting_record(each);
        record.own_pin = flag(each, book_.state().sample ? "own_hand" : "own_pin"); // a sample book asks no PIN
        const Json admission = doc(book_, "person", each.value("by", "")).value("admission", Json::object());
        record.authorised = contains(admission.value("setting_models", std::vector<std::string>{}), model);
        q_.setting_records.push_back(std::move(record));
    }
}

void Building::add_person(const std::string& role, const std::string& id)
{
    const auto fact = book_.fact("person", id);
    if (!fact)
        return;
    Person person = records::read_person(fact->doc);
    const Json admission = fact->doc.value("admission", Json::object());
    for (const char* list : {"models", "roles"})
        for (const auto& each : admission.value(list, std::vector<std::string>{}))
            person.authorised.push_back(each);
    q_.people[role] = std::move(person);
}

void Building::people()
{
    const Json named = doc(book_, "people_today", site_ + " " + rules::to_string(working_day(book_, site_, asked_.now)))
                           .value("roles", Json::object());
    for (const auto& [role, id] : named.items())
        add_person(role, id.get<std::string>());
    add_person("operator", asked_.on_the_levers);
    if (!asked_.supervisor.empty())
        add_person("supervisor", asked_.supervisor);
    if (!asked_.signaller.empty())
        add_person("signaller", asked_.signaller);
}

// The place asked for, else the one confirmed last, in whatever plan.
std::string Building::standing_asked_or_confirmed() const
{
    if (!asked_.standing.empty())
        return asked_.standing;
    std::pair<std::int64_t, std::string> newest{0, ""};
    for (const records::Fact& confirmed : book_.facts("place"))
        if (confirmed.key.key.starts_with(at_site("")) && confirmed.at > newest.first)
            newest = {confirmed.at, confirmed.key.key.substr(at_site("").size())};
    return newest.second;
}

// Else the plan's first.
Json Building::place_in_plan() const
{
    const Json places = plan_.value("places", Json::array());
    const std::string standing = standing_asked_or_confirmed();
    for (const Json& place : places)
        if (standing == place.at("id"))
            return place;
    return !standing.empty() ? Json{{"id", standing}} : !places.empty() ? places.front() : Json::object();
}

void Building::trench(const Json& place)
{
    Json trench = place.value("trench", Json::object());
    trench.update(doc(book_, "trench", at_site(place.value("id", ""))));
    for (Json& each : trench["inspections"])
        each["by_competent"] = is_competent(each);
    q_.trench = records::read_trench(trench);
    if (place.contains("thread"))
        q_.thread = records::read_strutting(place.at("thread"));
}

void Building::plan_and_place()
{
    const Json place = place_in_plan();
    if (place.empty())
        return;
    Json confirmed = {{"id", place.at("id")}, {"confirmed", Json::array()}};
    for (const Json& look : doc(book_, "place", at_site(place.value("id", ""))).value("looks", Json::array()))
        if (look.value("at", std::int64_t{0}) >= made_.count()) // what was confirmed before was another issue's mark
            confirmed["confirmed"].push_back(look);
    q_.place = records::read_place(confirmed);
    trench(place);
}

void Building::clock_and_book()
{
    const records::BookState state = book_.state();
    q_.clock = clock_of(book_, asked_.now);
    q_.book = rules::Book{state.checked, state.damaged, state.forked};
}

} // namespace

std::vector<std::string> load_path(const Book& book, const LiftAsked& asked)
{
    std::vector<std::string> path;
    const auto add = [&](const std::optional<std::string>& unit) {
        if (unit)
            path.push_back(*unit); // also one that the book does not know: it stops the lift
    };
    add(asked.machine);
    add(text(coupling_of(book, asked), "hitch"));
    add(text(doc(book, "headplate", asked.unit), "headplate"));
    const Json rigging = doc(book, "rigging", asked.machine);
    for (const auto& each : rigging.value("hangs", std::vector<std::string>{}))
        add(each);
    add(asked.unit);
    return path;
}

// What a damaged book says may be no fact at all: the question then holds nothing else, and stops.
Question lift_question(const Book& book, const LiftAsked& asked)
try {
    return Building{book, asked}.question();
} catch (const std::exception&) {
    const records::BookState state = book.state();
    if (!state.damaged)
        throw;
    Question question;
    question.id = "lift";
    question.purpose = Purpose::lift;
    question.now = asked.now;
    question.book = rules::Book{state.checked, state.damaged, state.forked};
    return question;
}

Question unit_question(const Book& book, const std::string& unit, Instant now, Day day)
{
    Question question;
    question.id = unit;
    question.purpose = Purpose::lift;
    question.day = day;
    question.now = now;
    const std::string site = current_site(book);
    if (book.fact("site", site))
        question.site = records::read_site(doc(book, "site", site));
    const ItemsOfQuestion gear{book, {unit}, now};
    question.items = gear.items();
    question.reports = gear.reports();
    question.events = gear.events();
    question.clearings = gear.clearings();
    question.answers = gear.answers();
    return question;
}

} // namespace cotter::desk
