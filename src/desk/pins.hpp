#pragma once

// Who signs proves it with a PIN of six digits; the tries are records, so that ending the program does not reset them.
// Source: firm's own rule.

#include "work.hpp"

#include <optional>
#include <string>

namespace cotter::desk {

inline constexpr std::int64_t free_tries = 5;          // wrong ones in a row before there is a wait
inline constexpr std::int64_t first_wait_seconds = 30; // it doubles with each wrong one more
inline constexpr std::int64_t longest_wait_seconds = 3600;

// Not in a sample book, and not before anybody has been admitted.
bool are_pins_asked(const Book& book);

bool has_pin(const Book& book, const std::string& person);
bool has_anybody_a_pin(const Book& book);

// Never asks for a PIN: a stop or what went wrong, said by anybody; what a load that hangs needs; the program's own.
bool needs_no_pin(const Entry& entry);

// Seconds from now until this person's PIN may be tried again; 0 if it may be now.
std::int64_t wait_seconds(const Book& book, const std::string& person, rules::Instant now);

// Writes the try, and only then says whether it was right. FormError in one line if it was not, if it must wait, or if
// the person has no PIN; the hand is that of whoever is named.
void give_pin(Book& book, const Hand& hand, const std::string& person, const std::string& pin);

// A hand that has given its PIN.
Hand signed_by(Hand hand);

// Sets the PIN of `person`; the hand is the person's own, or that of somebody who may admit people. FormError if the
// PIN is not accepted.
Entry set_pin(const Hand& hand, const std::string& person, const std::string& pin);

// FormError where the entry's author has not given a PIN that is asked.
void check_pin_given(const Book& book, const Entry& entry);

} // namespace cotter::desk
