#include "orders.hpp"

#include "clock.hpp"
#include "lift_question.hpp"
#include "question_items.hpp"
#include "setting.hpp"
#include "standing.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace cotter::desk {

using namespace rules;

namespace {

Order order_of(const records::Fact& fact)
{
    return {fact.key.key,
            fact.doc.value("customer", ""),
            fact.doc.value("site", ""),
            fact.doc.value("hitch", ""),
            fact.doc.value("pipes", std::vector<std::string>{}),
            fact.doc.value("units", std::vector<std::string>{}),
            day_in(fact.doc, "first_use_day"),
            day_in(fact.doc, "end_day"),
            fact.doc.value("machine", "")};
}

rules::Order asked_of(const Book& book, const Order& order)
{
    rules::Order asked;
    asked.id = order.id;
    for (const std::string& each : order.pipes) {
        const Json pipe = doc(book, "pipe", each);
        asked.pipes.push_back(pipe.empty() ? Pipe{} : records::read_pipe(pipe)); // not in the book: its size is open
    }
    if (!order.hitch.empty())
        asked.hitch = order.hitch;
    asked.first_use_day = order.first_use;
    asked.end_day = order.end;
    return asked;
}

// The unit with the headplate that is fitted to it, as it would be loaded.
Question question_of(const Book& book, const Order& order, const std::string& unit, Instant now, Day today)
{
    Question question = unit_question(book, unit, now, today);
    question.purpose = Purpose::use;
    question.order = asked_of(book, order);
    std::vector<std::string> sent;
    if (const std::string headplate = doc(book, "headplate", unit).value("headplate", ""); !headplate.empty())
        sent.push_back(headplate);
    sent.push_back(unit);
    const ItemsOfQuestion gear{book, sent, now};
    question.items = gear.items();
    question.reports = gear.reports();
    question.events = gear.events();
    question.clearings = gear.clearings();
    question.answers = gear.answers();
    for (const Json& each : doc(book, "setting", unit).value("records", Json::array()))
        question.setting_records.push_back(records::read_setting_record(each));
    question.clock = clock_of(book, now);
    question.book = rules::Book{book.state().checked, book.state().damaged, book.state().forked};
    return question;
}

// A pattern that fits, or the attachment cannot be coupled.
std::optional<Reason> headplate_for(const Book& book, const Order& order, const std::string& unit)
{
    if (order.hitch.empty() || order.hitch == "none")
        return std::nullopt;
    const std::string fitted = doc(book, "headplate", unit).value("headplate", "");
    if (fitted.empty())
        return Reason{"", "No headplate is fitted by the record; the order's hitch takes {}", {order.hitch}};
    const std::string pattern = doc(book, "unit", fitted).value("pattern", "");
    if (pattern == order.hitch)
        return std::nullopt;
    const std::string label = label_of(book, fitted);
    if (pattern.empty())
        return Reason{"", "Headplate {} is of no known pattern; the order's hitch takes {}", {label, order.hitch}};
    return Reason{"", "Headplate {} is {}; the order's hitch takes {}", {label, pattern, order.hitch}};
}

} // namespace

OrderUnit unit_for(const Book& book, const Order& order, const std::string& unit, Instant now, Day today)
{
    OrderUnit asked{unit,
                    label_of(book, unit),
                    shown_name(book, doc(book, "unit", unit).value("model", "")),
                    "",
                    question_of(book, order, unit, now, today),
                    {},
                    {},
                    headplate_for(book, order, unit)};
    const Standing standing = standing_of(asked.question.setting_records);
    asked.setting = standing.disputed ? "disputed" : standing.state.value_or("");
    for (Finding& each : decide(asked.question).findings)
        if (weight(each.code) == Weight::stop)
            asked.stops.push_back(std::move(each));
        else if (weight(each.code) == Weight::caution)
            asked.cautions.push_back(std::move(each));
    return asked;
}

std::vector<Order> orders(const Book& book)
{
    std::vector<Order> all;
    for (const auto& fact : book.facts("order"))
        all.push_back(order_of(fact));
    std::stable_sort(all.begin(), all.end(), [](const Order& a, const Order& b) {
        return std::tuple{!a.first_use, a.first_use, a.id} < std::tuple{!b.first_use, b.first_use, b.id};
    });
    return all;
}

std::vector<std::string> attachments(const Book& book)
{
    std::vector<std::string> units = book.keys("unit");
    units.erase(std::remove_if(units.begin(), units.end(),
                               [&](const std::string& each) {
                                   return doc(book, "unit", each).value("role", "") != "attachment" ||
                                          doc(book, "whereabouts", each).value("scrapped", false);
                               }),
                units.end());
    return units;
}

void best_first(std::vector<OrderUnit>& all, const Order& order)
{
    std::stable_sort(all.begin(), all.end(), [](const OrderUnit& a, const OrderUnit& b) {
        return std::pair{a.still_to_do(), a.cautions.size()} < std::pair{b.still_to_do(), b.cautions.size()};
    });
    std::stable_partition(all.begin(), all.end(), [&](const OrderUnit& each) {
        return std::find(order.units.begin(), order.units.end(), each.unit) != order.units.end();
    });
}

std::vector<OrderUnit> units_for(const Book& book, const Order& order, Instant now, Day today)
{
    std::vector<OrderUnit> all;
    for (const std::string& each : attachments(book))
        all.push_back(unit_for(book, order, each, now, today));
    best_first(all, order);
    return all;
}

std::vector<PipeNeeds> needs_of(const Book& book, const Order& order, const std::string& model)
{
    const Json known = doc(book, "model", model);
    const Model it = known.empty() ? Model{} : records::read_model(known);
    std::vector<PipeNeeds> needs;
    for (const std::string& each : order.pipes) {
        PipeNeeds need{each, {}};
        const Json pipe = doc(book, "pipe", each);
        for (const State& state : it.states)
            if (pipe.contains("barrel_mm") && serves(state, Millimetres{pipe["barrel_mm"].get<std::int64_t>()}))
                need.states.push_back(state.name.value_or(""));
        needs.push_back(std::move(need));
    }
    return needs;
}

bool serves_all(const std::vector<PipeNeeds>& needs)
{
    return std::none_of(needs.begin(), needs.end(), [](const PipeNeeds& each) { return each.states.empty(); });
}

bool needs_two_states(const std::vector<PipeNeeds>& needs)
{
    if (needs.size() < 2 || !serves_all(needs))
        return false;
    return std::none_of(needs[0].states.begin(), needs[0].states.end(), [&](const std::string& state) {
        return std::all_of(needs.begin(), needs.end(), [&](const PipeNeeds& each) {
            return std::find(each.states.begin(), each.states.end(), state) != each.states.end();
        });
    });
}

namespace {

bool is_in(const Order& order, const Week& week)
{
    return order.first_use && *order.first_use <= week.monday + date::days{6} &&
           (!order.end || week.monday <= *order.end);
}

// Models of which units are there, and for each order those that serve all of its sizes.
struct Fleet {
    std::vector<std::string> models;
    std::map<std::string, std::vector<std::string>> serving; // by order

    Fleet(const Book& book, const std::vector<Order>& orders, const std::vector<BoardRow>& rows)
    {
        for (const BoardRow& row : rows)
            if (const std::string model = doc(book, "unit", row.unit).value("model", "");
                row.kind == "attachment" && !row.scrapped() && !model.empty() &&
                std::find(models.begin(), models.end(), model) == models.end())
                models.push_back(model);
        for (const Order& order : orders)
            for (const std::string& model : models)
                if (const auto needs = needs_of(book, order, model); !needs.empty() && serves_all(needs))
                    serving[order.id].push_back(model);
    }

    bool only_by(const std::string& model, const Order& order) const
    {
        const auto found = serving.find(order.id);
        return found != serving.end() && found->second.size() == 1 && found->second.front() == model;
    }
};

} // namespace

std::vector<Week> weeks_ahead(const Book& book, const std::vector<BoardRow>& rows, Day today, int count)
{
    const std::vector<Order> wanted = orders(book);
    const Fleet fleet{book, wanted, rows};
    const auto is_in_date = [](const BoardRow& row, Day sunday) {
        return row.kind == "attachment" && !row.scrapped() && row.latest && sunday <= *row.latest;
    };
    std::vector<Week> weeks;
    Week week{today - (date::weekday{today} - date::Monday), 0, 0};
    for (int i = 0; i < count; ++i, week.monday += date::days{7}) {
        const Day sunday = week.monday + date::days{6};
        week.wanted = static_cast<int>(
            std::count_if(wanted.begin(), wanted.end(), [&](const Order& each) { return is_in(each, week); }));
        week.in_date = static_cast<int>(
            std::count_if(rows.begin(), rows.end(), [&](const BoardRow& row) { return is_in_date(row, sunday); }));
        week.models.clear();
        for (const std::string& model : fleet.models)
            week.models.push_back(
                {model,
                 static_cast<int>(std::count_if(rows.begin(), rows.end(),
                                                [&](const BoardRow& row) {
                                                    return is_in_date(row, sunday) &&
                                                           doc(book, "unit", row.unit).value("model", "") == model;
                                                })),
                 static_cast<int>(std::count_if(wanted.begin(), wanted.end(), [&](const Order& each) {
                     return is_in(each, week) && fleet.only_by(model, each);
                 }))});
        weeks.push_back(week);
    }
    return weeks;
}

} // namespace cotter::desk
