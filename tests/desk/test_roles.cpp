// Every role against every kind of record, written and corrected, by the table in DEVELOPERS.md.

#include "entitled.hpp"
#include "fake_book.hpp"
#include "kinds.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <sstream>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::FakeBook;
using records::Json;

TEST_SUITE_BEGIN("roles");

namespace {

const std::vector<std::string> all_roles{"operator",  "signaller", "supervisor", "manager",
                                         "appointed", "hire_desk", "fitter",     "competent"};
const std::string clearing = "supervisor, manager, appointed, competent, fitter";

struct Allowed {
    std::string written = "any person of the book", corrected = "those who may clear";
};

// What the page says: kind, by whom written, by whom corrected.
std::map<std::string, Allowed> table()
{
    std::map<std::string, Allowed> rows;
    std::ifstream page{COTTER_SOURCE "/DEVELOPERS.md"};
    bool in_table = false;
    for (std::string line; std::getline(page, line);) {
        in_table = line.starts_with("| kind | written by") || (in_table && line.starts_with("|"));
        std::istringstream cells{line};
        std::string none, kind, written, corrected;
        if (in_table && std::getline(cells, none, '|') && std::getline(cells, kind, '|') &&
            std::getline(cells, written, '|') && std::getline(cells, corrected, '|'))
            rows[kind.substr(1, kind.size() - 2)] = {written.substr(1, written.size() - 2),
                                                     corrected.substr(1, corrected.size() - 2)};
    }
    return rows;
}

bool names(const std::string& list, const std::string& role)
{
    return (", " + list + ",").find(", " + role + ",") != std::string::npos;
}

bool may_write(const Allowed& allowed, const std::string& role)
{
    return allowed.written == "any person of the book" || names(allowed.written, role);
}

bool may_correct(const Allowed& allowed, const std::string& role)
{
    if (allowed.corrected == "as written")
        return names(allowed.written, role);
    return names(allowed.corrected == "those who may clear" ? clearing : allowed.corrected, role);
}

// A book with one record of a kind, somebody admitted, and "x" in one role.
class Book : public FakeBook {
public:
    Book(const std::string& role, const std::string& kind)
    {
        with("person", "x", {{"admission", {{"roles", {role}}}}});
        records::Record admission, old;
        admission.hash = "a";
        admission.entry.kind = "admission";
        old.hash = "h";
        old.entry.kind = kind;
        old.entry.who = old.entry.about = "other";
        with(admission).with(old);
    }
};

bool is_accepted(const std::string& role, const std::string& kind)
{
    records::Entry entry;
    entry.kind = kind;
    entry.about = "other";
    entry.who = entry.by = "x";
    entry.body = {{"roles", {"operator"}}};
    try {
        check_entitled(Book{role, kind}, entry);
        return true;
    } catch (const records::FormError&) {
        return false;
    }
}

bool is_correction_accepted(const std::string& role, const std::string& kind)
{
    records::Entry entry;
    entry.kind = "correction";
    entry.about = "other";
    entry.who = entry.by = "x";
    entry.body = {{"corrects", "h"}};
    try {
        check_entitled(Book{role, kind}, entry);
        return true;
    } catch (const records::FormError&) {
        return false;
    }
}

// "x" writes down what "y", who has every role, is said to have done.
bool is_accepted_for_another(const std::string& role, const std::string& kind)
{
    Book book{role, kind};
    book.with("person", "y", {{"admission", {{"roles", all_roles}}}});
    records::Entry entry;
    entry.kind = kind;
    entry.about = "other";
    entry.who = "y";
    entry.by = "x";
    entry.how = "phone";
    entry.body = {{"roles", {"operator"}}};
    try {
        check_entitled(book, entry);
        return true;
    } catch (const records::FormError&) {
        return false;
    }
}

bool may_write_for_another(const Allowed& allowed, const std::string& role, const std::string& kind)
{
    static const std::string anyones = "stop_called, defect_found, event, fall_of_ground, lift_without_answer";
    if (names(anyones, kind))
        return true;
    return names(allowed.written == "any person of the book" ? clearing : allowed.written, role) ||
           names("supervisor, manager, appointed", role);
}

bool may_admit_himself_in_anothers_name()
{
    Book book{"supervisor", "person"};
    book.with("person", "y", {{"admission", {{"roles", all_roles}}}});
    records::Entry entry;
    entry.kind = "admission";
    entry.about = entry.by = "x";
    entry.who = "y";
    entry.how = "phone";
    try {
        check_entitled(book, entry);
        return true;
    } catch (const records::NotEntitled&) {
        return false;
    }
}

} // namespace

TEST_CASE("what another did is written down by whoever might do it, may clear or may admit, and by no one else")
{
    const auto rows = table();
    for (const auto& kind : records::kinds()) {
        if (kind.name == "device" || kind.name == "correction" || kind.name == "pin_set")
            continue;
        const auto found = rows.find(kind.name);
        for (const std::string& role : all_roles) {
            CAPTURE(kind.name);
            CAPTURE(role);
            CHECK(is_accepted_for_another(role, kind.name) ==
                  may_write_for_another(found == rows.end() ? Allowed{} : found->second, role, kind.name));
        }
    }
}

TEST_CASE("nobody admits himself in another's name") { CHECK_FALSE(may_admit_himself_in_anothers_name()); }

TEST_CASE("each role may write and correct the kinds that the table names, and no others")
{
    const auto rows = table();
    CHECK(rows.size() > 20);
    int asked = 0;
    for (const auto& kind : records::kinds()) {
        if (kind.name == "device" || kind.name == "correction")
            continue;
        const auto found = rows.find(kind.name);
        const Allowed allowed = found == rows.end() ? Allowed{} : found->second;
        for (const std::string& role : all_roles) {
            CAPTURE(kind.name);
            CAPTURE(role);
            CHECK(is_accepted(role, kind.name) == may_write(allowed, role));
            CHECK(is_correction_accepted(role, kind.name) == may_correct(allowed, role));
            ++asked;
        }
    }
    CHECK(asked == 8 * static_cast<int>(records::kinds().size() - 2));
}

TEST_SUITE_END();
