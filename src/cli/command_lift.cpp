// cotter lift: may this pipe be lifted now, by the records of a book? Reads only.

#include "card_facts.hpp"
#include "command.hpp"
#include "decision_json.hpp"
#include "lift_card.hpp"
#include "lift_question.hpp"
#include "session.hpp"

#include <cmath>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, unit, pipe, machine, on_the_levers, supervisor, signaller, standing, over;
    Given radius{"--radius", ""}, height{"--height", ""}, at{"--at", ""};
    bool text = false, json = false, card = false;
};

rules::Sector sector(const std::string& over)
{
    if (over == "front")
        return rules::Sector::front;
    if (over == "side")
        return rules::Sector::side;
    if (over.empty() || over == "both")
        return rules::Sector::both;
    throw BadInput{"--over: \"" + over + "\" is not accepted; front, side or both is"};
}

void need(const records::Book& book, const char* kind, const char* option, const std::string& id)
{
    if (!id.empty() && !book.fact(kind, id))
        throw BadInput{std::string{option} + ": \"" + id + "\" is not in this book; the id of a " + kind +
                       " in it is accepted"};
}

// What is taped replaces the plan's figures: loads up, so a radius is rounded up.
void tape(const Options& options, desk::LiftAsked& asked)
{
    const bool taped = options.radius.is_given();
    if (taped != options.height.is_given() || (taped && !options.standing.empty()) || (!taped && !options.over.empty()))
        throw BadInput{"--standing, --radius, --height, --over: accepted is --standing, or --radius with --height and, "
                       "if need be, --over"};
    if (!taped)
        return;
    asked.radius =
        rules::Millimetres{static_cast<std::int64_t>(std::ceil(radius_metres(options.radius) * 1000 - 1e-6))};
    asked.height = rules::Millimetres{static_cast<std::int64_t>(std::llround(metres(options.height) * 1000))};
    asked.sector = sector(options.over);
}

desk::LiftAsked asked_by(const Options& options, const records::Book& book, rules::Instant at)
{
    for (const auto& [kind, option, id] : {std::tuple{"pipe", "--pipe", options.pipe},
                                           {"person", "--operator", options.on_the_levers},
                                           {"person", "--supervisor", options.supervisor},
                                           {"person", "--signaller", options.signaller}})
        need(book, kind, option, id);
    desk::LiftAsked asked;
    asked.unit = desk::find_unit(book, options.unit);
    asked.machine = desk::find_unit(book, options.machine);
    asked.pipe = options.pipe;
    asked.on_the_levers = options.on_the_levers;
    asked.supervisor = options.supervisor;
    asked.signaller = options.signaller;
    asked.standing = options.standing;
    asked.now = at;
    tape(options, asked);
    return asked;
}

Json card_json(const std::vector<words::CardPoint>& card)
{
    Json points = Json::array();
    for (const auto& point : card) {
        Json lines = Json::array();
        for (const auto& line : point.lines)
            lines.push_back({{"ask", line.ask}, {"if_not", line.if_not}});
        points.push_back({{"title", point.title}, {"before_pick_up", point.by_touch}, {"lines", lines}});
    }
    return points;
}

void tell_card(const std::vector<words::CardPoint>& card, bool may_lift)
{
    if (!card.empty())
        std::cout << (may_lift ? "LIFT CARD\n"
                               : "LIFT CARD, for when what stops this lift is cleared: DO NOT LIFT now\n");
    for (const auto& point : card) {
        std::cout << point.title << (point.by_touch ? "" : " (spoken with the signaller)") << ":\n";
        for (const auto& line : point.lines)
            std::cout << "  " << line.ask << ". If not: " << line.if_not << '\n';
    }
}

int run(const Options& options)
{
    Reading reading{store_or_own(options.store)};
    Session session{reading.take(), options.at, false};
    const auto& book = session.store();
    const desk::LiftAsked asked = asked_by(options, book, session.at());
    rules::Question question = lift_question(book, asked);
    for (const desk::Entry& notice : session.clock_notices())
        question.clock->notices.push_back(records::read_clock_notice(notice.body));
    const rules::Decision decision = decide(question);
    const auto naming = [&](const std::string& id) { return desk::shown_name(book, id); };
    const auto card =
        options.card ? words::lift_card(desk::card_facts(book, asked, question)) : std::vector<words::CardPoint>{};
    if (options.text) {
        tell(question, decision, naming, std::cout);
        tell_card(card, decision.may_lift());
    } else {
        Json answer = decision_json(question, decision, naming);
        if (question.place && question.place->id)
            answer["standing"] = *question.place->id;
        if (question.plan && question.plan->id)
            answer["plan"] = {{"id", *question.plan->id}, {"issue", question.plan->issue.value_or(0)}};
        if (options.card)
            answer["card"] = card_json(card);
        std::cout << answer.dump() << '\n';
    }
    return decision.may_lift() ? done : negative;
}

} // namespace

void add_lift(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("lift", "May this pipe be lifted now?");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--unit", options->unit, "attachment: tag, or OWNER/SERIAL").required();
    command.option("--pipe", options->pipe, "pipe type").required();
    command.option("--machine", options->machine, "excavator: tag, or OWNER/SERIAL").required();
    command.option("--operator", options->on_the_levers, "who is on the levers").required();
    command.option("--supervisor", options->supervisor, "instead of the one named for today");
    command.option("--signaller", options->signaller, "instead of the one named for today");
    command.option("--standing", options->standing, "mark on the ground (default: the one confirmed last)");
    command.option("--radius", options->radius.text, "taped, m");
    command.option("--height", options->height.text, "taped, m");
    command.option("--over", options->over, "front, side or both (default both where taped)");
    command.option("--at", options->at.text, "instant asked about, YYYY-MM-DDThh:mm:ssZ");
    command.flag("--text", options->text, "print sentences instead of a JSON object");
    command.flag("--json", options->json, "as always without --text");
    command.flag("--card", options->card, "also prints the lift card: what is asked at each hold point");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
