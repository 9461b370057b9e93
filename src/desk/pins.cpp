#include "pins.hpp"

#include "entitled.hpp"
#include "pin.hpp"

#include <algorithm>
#include <set>

namespace cotter::desk {

using records::FormError;

namespace {

std::string subject(const std::string& person) { return "pin_set " + person; }

std::optional<std::string> hash_of(const Book& book, const std::string& person)
{
    return book.private_value(subject(person), "pin_hash");
}

std::string said(std::int64_t seconds)
{
    return seconds < 120 ? std::to_string(seconds) + " seconds" : std::to_string((seconds + 59) / 60) + " minutes";
}

std::string what_now(std::int64_t wait, std::int64_t wrong)
{
    if (wait > 0)
        return "it may be tried again in " + said(wait);
    const std::int64_t left = free_tries - wrong;
    return std::to_string(left) + (left == 1 ? " try is left" : " tries are left") + " before there is a wait";
}

} // namespace

bool are_pins_asked(const Book& book) { return !book.state().sample && is_staffed(book); }

bool has_pin(const Book& book, const std::string& person) { return hash_of(book, person).has_value(); }

bool has_anybody_a_pin(const Book& book) { return !book.newest("pin_set", 1).empty(); }

bool needs_no_pin(const Entry& entry)
{
    static const std::set<std::string> kinds{"stop_called",         "defect_found", "event",    "fall_of_ground",
                                             "lift_without_answer", "picked_up",    "set_down", "lift_done",
                                             "clock_notice",        "pin_tried",    "refused"};
    return kinds.count(entry.kind) > 0;
}

std::int64_t wait_seconds(const Book& book, const std::string& person, rules::Instant now)
{
    const Json tries = doc(book, "pin", person);
    const auto wrong = tries.value("wrong", std::int64_t{0});
    if (wrong < free_tries)
        return 0;
    const auto doublings = std::min<std::int64_t>(wrong - free_tries, 20);
    const auto wait = std::min(first_wait_seconds << doublings, longest_wait_seconds);
    return std::max<std::int64_t>(0, tries.value("wrong_at", std::int64_t{0}) + wait - now.count());
}

void give_pin(Book& book, const Hand& hand, const std::string& person, const std::string& pin)
{
    const auto hash = hash_of(book, person);
    if (!hash)
        throw FormError{"PIN: " + records::shown(person) +
                        " has none yet; a supervisor, manager or appointed person sets one"};
    if (const auto wait = wait_seconds(book, person, hand.at); wait > 0)
        throw FormError{"PIN: too many wrong ones; it may be tried again in " + said(wait)};
    const bool right = records::is_pin(*hash, pin);
    Hand tried = hand;
    tried.by = person;
    tried.how = "name only";
    tried.with_pin = false;
    book.append({entry(tried, "pin_tried", person, {{"right", right}})});
    if (!right)
        throw FormError{
            "PIN: that is not the right one; " +
            what_now(wait_seconds(book, person, hand.at), doc(book, "pin", person).value("wrong", std::int64_t{0}))};
}

Hand signed_by(Hand hand)
{
    hand.how = "pin";
    hand.with_pin = true;
    return hand;
}

Entry set_pin(const Hand& hand, const std::string& person, const std::string& pin)
{
    records::check_pin(pin);
    return entry(hand, "pin_set", person, {{"pin_hash", records::hash_pin(pin)}});
}

void check_pin_given(const Book& book, const Entry& entry)
{
    if (entry.how == "pin" && !entry.with_pin)
        throw FormError{
            "how: \"pin\" is not accepted without the PIN; \"name only\", \"seen\", \"phone\" or \"copy\" is"};
    if (entry.with_pin || !are_pins_asked(book) || needs_no_pin(entry))
        return;
    if (entry.kind == "pin_set" && entry.who == entry.about && !has_anybody_a_pin(book)) // whoever begins sets his own
        return;
    throw FormError{"by: " + records::shown(entry.by) +
                    " has not given a PIN; in this book people sign with a PIN of six digits (--pin-file)"};
}

} // namespace cotter::desk
