#pragma once

// What each person does, as records to be written: one function an act. Nothing here writes; the caller appends.

#include "register.hpp"

#include "finding.hpp"
#include "question.hpp"

#include <map>
#include <string>
#include <vector>

namespace cotter::desk {

using records::Entry;

// Whose hand writes, when and where.
struct Hand {
    std::string by;
    std::string how = "name only";
    bool with_pin = false; // was it given (pins.hpp)
    rules::Instant at{0};
    rules::Day day{}; // at the site
    std::string boot;
    std::int64_t boot_seconds = 0;
};

Entry entry(const Hand& hand, std::string kind, std::string about, Json body);

Entry open_a_shift(const Hand& hand, const std::string& site, std::int64_t seconds, const std::string& zone);
Entry stand_down(const Hand& hand, const std::string& shift);

struct CheckAnswer {
    std::string item, answer, note; // answer: right, report, stop
};
Entry check_a_unit(const Hand& hand, const Book& book, const std::string& unit, const std::string& machine,
                   const std::vector<CheckAnswer>& answers);

Entry see_the_setting(const Hand& hand, const std::string& unit, const std::string& state);
Entry change_the_setting(const Hand& hand, const std::string& unit, const std::string& state);
Entry see_the_lock(const Hand& hand, const std::string& hitch, bool locked);
Entry prove_devices(const Hand& hand, const std::string& machine, bool valves, bool warning);
Entry confirm_place(const Hand& hand, const std::string& site, const std::string& place, bool level, bool ground,
                    bool services, bool zone);
Entry inspect_trench(const Hand& hand, const std::string& site, const std::string& place, bool safe);
Entry name_people(const Hand& hand, const Book& book, const std::string& site,
                  const std::map<std::string, std::string>& roles);
Entry brief(const Hand& hand, const Json& plan, const std::string& person);
Entry show_page(const Hand& hand, const std::string& what, const std::string& id, const std::string& sha256,
                const std::string& says, bool legible = false);
Entry compare(const Hand& hand, const std::string& what, const std::string& id);
Entry call_a_stop(const Hand& hand, const std::string& unit, const std::string& why);
Entry something_happened(const Hand& hand, const std::string& kind, const std::string& unit, const std::string& what,
                         const std::vector<std::string>& photos = {}); // by their SHA-256
Entry find_a_defect(const Hand& hand, const std::string& unit, const std::string& answer, const std::string& what,
                    const std::vector<std::string>& photos = {}); // answer: report, stop

// The lift with the whole decision as it is written (decision_form.hpp); its id is "lift " and the instant.
Entry ask_for_a_lift(const Hand& hand, const rules::Question& question, Json decision);
Entry lift_step(const Hand& hand, const std::string& kind, const std::string& lift); // picked_up, set_down, lift_done

// The receipt of another device's book was seen here; FormError if it is none.
Entry witness(const Hand& hand, const std::string& receipt);

// A receipt of the book up to `head` went to somebody, or is kept somewhere.
Entry give_a_receipt(const Hand& hand, const Book& book, const records::Head& head, const std::string& to);

} // namespace cotter::desk
