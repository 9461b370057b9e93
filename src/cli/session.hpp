#pragma once

// A store opened for one run of the program: which clock holds, who writes.

#include "command.hpp"
#include "numbers.hpp"
#include "private_copy.hpp"
#include "store.hpp"
#include "work.hpp"

#include <filesystem>
#include <memory>
#include <vector>

namespace cotter::cli {

class Session {
public:
    // `at` is the whole clock of a sample book; BadInput if it is given for any other book that is to be written.
    Session(std::unique_ptr<db::Store> store, const Given& at, bool writes);

    db::Store& store() { return *store_; }
    rules::Instant at() const;
    rules::Day day() const;                       // at the site
    desk::Hand hand(const std::string& by) const; // with the PIN, if that person signed in

    // Reads the PIN from a file that nobody else may read, and tries it. BadInput if it is not the one; "" signs nobody
    // in.
    void sign_in(const std::string& by, const std::string& pin_file);

    // What is wrong with the clock now, to be written; nothing where it is believed, or --at is the clock.
    std::vector<desk::Entry> clock_notices() const;
    void watch_the_clock_now(); // writes it

private:
    std::unique_ptr<db::Store> store_;
    std::optional<rules::Instant> at_;
    std::string signed_in_;
};

// The PIN in a file: its first line. BadInput if others may read the file.
std::string read_pin(const char* option, const std::string& file);

// The book named, or this user's own.
std::string store_or_own(const std::string& given);

// A book that asks of each entry what the desk asks; its opening check is still to be done.
std::unique_ptr<db::Store> open_unchecked(const std::string& path);
std::unique_ptr<db::Store> open_store(const std::string& path); // with the opening check done

// A book to be read: one that cannot be written is read from a copy.
class Reading {
public:
    explicit Reading(const std::string& path);
    std::unique_ptr<db::Store> take() { return std::move(store_); }

private:
    std::unique_ptr<db::PrivateCopy> copy_; // outlives the store that is taken
    std::unique_ptr<db::Store> store_;
};

// Exit code of a command that has shown what a book says: a damaged book is said to be one.
int shown_from(const db::Store& store);

} // namespace cotter::cli
