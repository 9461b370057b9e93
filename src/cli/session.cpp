#include "session.hpp"

#include "accept.hpp"
#include "boot_clock.hpp"
#include "local_time.hpp"
#include "pins.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>

namespace cotter::cli {

std::string store_or_own(const std::string& given)
{
    if (!given.empty())
        return given;
    if (const char* data = std::getenv("XDG_DATA_HOME"); data && *data != '\0')
        return std::string{data} + "/cotter/book.db";
    const char* home = std::getenv("HOME");
    return std::string{home ? home : "."} + "/.local/share/cotter/book.db";
}

std::unique_ptr<db::Store> open_unchecked(const std::string& path)
{
    auto store = db::Store::open(path);
    store->accept_by(desk::accept);
    return store;
}

std::unique_ptr<db::Store> open_store(const std::string& path)
{
    auto store = open_unchecked(path);
    store->check_on_opening();
    return store;
}

Reading::Reading(const std::string& path)
{
    const bool from_copy =
        std::filesystem::exists(path) && !std::filesystem::is_directory(path) && !db::is_writable(path);
    if (from_copy)
        copy_ = std::make_unique<db::PrivateCopy>(path);
    store_ = open_store(from_copy ? copy_->path().string() : path);
}

int shown_from(const db::Store& store)
{
    if (!store.state().damaged)
        return done;
    std::cout.flush();
    std::cerr << "cotter: this book is damaged; `cotter verify` names the first damaged record\n";
    return negative;
}

Session::Session(std::unique_ptr<db::Store> store, const Given& at, bool writes) : store_{std::move(store)}
{
    if (at.is_given())
        at_ = instant(at);
    if (at_ && writes && !store_->state().sample)
        throw BadInput{"--at: \"" + at.text + "\" is not accepted for writing in this book; in a sample book it is"};
    if (at_ || !writes || store_->state().sample)
        return;
    if (now() >= desk::end_of_zone_data)
        throw BadInput{"the clock says " + desk::to_string(now()) + "; a time before 2038 is accepted"};
}

std::vector<desk::Entry> Session::clock_notices() const
{
    if (at_)
        return {};
    return watch_the_clock(hand("clock"), *store_, clock_facts());
}

void Session::watch_the_clock_now()
{
    if (auto notices = clock_notices(); !notices.empty())
        store_->append(std::move(notices));
}

// The wall clock, but never before what is already in the book or before the program was built.
rules::Instant Session::at() const
{
    if (at_)
        return *at_;
    return store_->state().sample ? now() : std::max({now(), store_->state().newest_record_at, clock_facts().built});
}

rules::Day Session::day() const { return desk::local_day(at(), desk::zone_of(*store_, desk::current_site(*store_))); }

desk::Hand Session::hand(const std::string& by) const
{
    const desk::ClockFacts facts = clock_facts();
    desk::Hand hand;
    hand.by = by;
    hand.at = at();
    hand.day = day();
    if (!store_->state().sample) {
        hand.boot = facts.boot;
        hand.boot_seconds = facts.boot_seconds;
    }
    return signed_in_ == by && !by.empty() ? desk::signed_by(hand) : hand;
}

void Session::sign_in(const std::string& by, const std::string& pin_file)
{
    if (pin_file.empty())
        return;
    if (store_->state().sample)
        throw BadInput{"--pin-file: a sample book asks no PIN; leave it away"};
    const std::string pin = read_pin("--pin-file", pin_file);
    desk::give_pin(*store_, hand(by), by, pin);
    signed_in_ = by;
}

std::string read_pin(const char* option, const std::string& file)
{
    using std::filesystem::perms;
    std::error_code failed;
    const auto allowed = std::filesystem::status(file, failed).permissions();
    std::ifstream in{file};
    std::string pin;
    if (failed || !in || !std::getline(in, pin))
        throw BadInput{std::string{option} + ": " + file +
                       " cannot be read; a file with a PIN of six digits is accepted"};
    if ((allowed & (perms::group_all | perms::others_all)) != perms::none)
        throw BadInput{std::string{option} + ": others may read " + file +
                       "; a file that is yours alone (chmod 600) is accepted"};
    if (!pin.empty() && pin.back() == '\r')
        pin.pop_back();
    return pin;
}

} // namespace cotter::cli
