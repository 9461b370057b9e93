#pragma once

// Orders of the hire desk: which units would do, what must be done before the wagon leaves, which weeks are short.

#include "board.hpp"
#include "reason.hpp"
#include "register.hpp"

#include "decide.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

// A unit asked for an order as if it were sent today.
struct OrderUnit {
    std::string unit, label, model, setting; // setting: that stands
    rules::Question question;
    std::vector<rules::Finding> stops, cautions;
    std::optional<Reason> headplate; // what is wrong with it for the order's hitch
    std::size_t still_to_do() const { return stops.size() + (headplate ? 1 : 0); }
    bool would_do() const { return still_to_do() == 0; }
};

// What each pipe of an order needs of one model: the states that serve it.
struct PipeNeeds {
    std::string pipe;
    std::vector<std::string> states; // empty: none serves it
};

struct Order {
    std::string id, customer, site, hitch;
    std::vector<std::string> pipes, units; // units: chosen for it
    std::optional<rules::Day> first_use, end;
    std::string machine = ""; // the hirer's, as he says it
    bool is_over(rules::Day today) const { return end && *end < today; }
};

// By first day of use, those without one last.
std::vector<Order> orders(const Book& book);

// Every attachment that is not scrapped, by id.
std::vector<std::string> attachments(const Book& book);
OrderUnit unit_for(const Book& book, const Order& order, const std::string& unit, rules::Instant now, rules::Day today);
// The order's chosen ones, then those that would do, then by how much is still to do.
void best_first(std::vector<OrderUnit>& units, const Order& order);
std::vector<OrderUnit> units_for(const Book& book, const Order& order, rules::Instant now, rules::Day today);

std::vector<PipeNeeds> needs_of(const Book& book, const Order& order, const std::string& model);

// Each pipe has a state that serves it, but none serves all: it is moved on site, or two units are sent.
bool needs_two_states(const std::vector<PipeNeeds>& needs);
// Every pipe has a state that serves it.
bool serves_all(const std::vector<PipeNeeds>& needs);

// Of one model in a week: how many are in date to its end, and how many orders no other model would serve.
struct ModelWeek {
    std::string model;
    int in_date = 0, only = 0;
    bool is_short() const { return only > in_date; }
};

// A week from Monday: how many orders want an attachment in it, and how many are in date to its end.
struct Week {
    rules::Day monday;
    int wanted = 0, in_date = 0;
    std::vector<ModelWeek> models = {};
    bool is_short() const
    {
        return wanted > in_date ||
               std::any_of(models.begin(), models.end(), [](const auto& m) { return m.is_short(); });
    }
};
// With the board's rows, of the whole fleet.
std::vector<Week> weeks_ahead(const Book& book, const std::vector<BoardRow>& rows, rules::Day today, int count);

} // namespace cotter::desk
