#pragma once

// Which paper about a unit governs, until when it serves, and what it leaves open.
// Source: LOLER 1998 regs 9 and 10, Schedule 1; the choice among papers of one day is the firm's own rule.

#include "question.hpp"

#include <optional>
#include <vector>

namespace cotter::rules {

enum class PaperKind { none, report, interim, declaration };

// A report, an interim statement or a declaration, as far as the rules ask.
struct Paper {
    PaperKind kind = PaperKind::none;
    const Report* report = nullptr; // only for a report
    const Id* id = nullptr;
    const std::vector<Id>* names_events = nullptr;
    Known<Day> examined; // or made
    Known<Day> latest;   // last day of use under it; nothing: not known
    Known<Kilograms> swl;
    Flag safe;
    Copy copy;

    explicit operator bool() const { return kind != PaperKind::none; }
};

// An interim statement serves 28 days from the examination. Source: firm's own rule.
inline constexpr Days interim_days{28};

struct OpenDefect {
    const Report* report;
    const Defect* defect;
};

struct Papers {
    Paper governing;
    Paper newest;                        // report of any kind
    std::vector<const Report*> doubtful; // neither full nor dated nor saying safe: each may be the newest
    bool future = false;                 // a report or declaration dated after today, which is not used
    std::vector<OpenDefect> open;
    std::vector<const Report*> reports; // that name the item and may be used
};

// The papers of an item as they stand on a day.
Papers papers_of(const Question& question, const Item& item, Day today);

bool is_legible_here(const Copy& copy);
bool names(const Report& report, const Item& item);

bool is_full(const Report& report);
bool is_usable(const Interim& interim, Day today);

// The law's own last day for a report of this item, whatever the report says; nothing: not known.
Known<Day> lawful_latest(const Question& question, const Item& item, const Report& report);

// Does this report name a defect of this item as remedied?
bool remedies(const Report& later, const Report& found_by, const Defect& defect);

} // namespace cotter::rules
