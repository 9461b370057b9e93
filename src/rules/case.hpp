#pragma once

// What every row of the decision reads: the question on one day, with what is worked out once.

#include "finding.hpp"
#include "papers.hpp"
#include "question.hpp"

#include <vector>

namespace cotter::rules {

struct Case {
    Case(const Question& question, Known<Day> day);

    const Question& question;
    Day today; // a day that is not known is after everything
    bool dispatch;
    std::vector<Papers> papers;          // one an item, in the items' order
    Known<Instant> shift_from, shift_to; // nothing: nothing was done this shift

    // Was it done this shift? A dispatch has the instants of its day as its shift.
    bool this_shift(Known<Instant> at) const;
};

// Collects the findings of the rows.
class Findings {
public:
    void add(Code code, std::string about = {}) { list_.push_back({code, std::move(about), {}, {}, Unit::none}); }
    void add(Code code, std::string about, Figure measured, Figure limit, Unit unit)
    {
        list_.push_back({code, std::move(about), measured, limit, unit});
    }
    std::vector<Finding> sorted() &&; // one for each code and about, in the order of the table

private:
    std::vector<Finding> list_;
};

Figure figure(Day day); // nothing for a day that is not known
Figure figure(Known<Day> day);
Figure figure(std::optional<double> number);
template <class U> Figure figure(Known<Quantity<U>> quantity)
{
    return quantity ? Figure{static_cast<double>(quantity->count())} : Figure{};
}

std::string about(const Known<Id>& id); // "" for nothing
std::string about(const Item* item);    // its tag, "" for no item

// Is the plan issued and signed for this site?
bool is_in_force_here(const Question& question);

// Does the plan need somebody in this role? Operator always; supervisor and signaller unless it says otherwise.
bool needs_role(const Question& question, const Id& role);

// Days before a date that it is said; 14 where the site says nothing. Source: firm's own rule.
Days warning_days(const Question& question);

// The greater of the two radii of the move; both must be known.
Known<Millimetres> greatest_radius(const Question& question);

// Kg on the machine; `hitch_too`: also where the chart includes it. Nothing: a mass is unknown.
std::optional<double> load_on_machine(const Case& asked, bool hitch_too);

// The rows. Each is asked whatever the others say.
void exam_row(const Case& asked, Findings& out);
void evidence_row(const Case& asked, Findings& out);
void data_row(const Case& asked, Findings& out);
void check_row(const Case& asked, Findings& out);
void setting_row(const Case& asked, Findings& out);
void pipe_row(const Case& asked, Findings& out);
void load_row(const Case& asked, Findings& out);
void reach_row(const Case& asked, Findings& out);
void hitch_row(const Case& asked, Findings& out);
void plan_row(const Case& asked, Findings& out);
void people_row(const Case& asked, Findings& out);
void place_row(const Case& asked, Findings& out);
void trench_row(const Case& asked, Findings& out);
void unit_row(const Case& asked, Findings& out);
void thread_row(const Case& asked, Findings& out);
void dispatch_row(const Case& asked, Findings& out);
void clock_row(const Case& asked, Findings& out);
void book_row(const Case& asked, Findings& out);

} // namespace cotter::rules
