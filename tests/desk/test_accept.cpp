// What a book takes as its next record, and what it refuses in one line.

#include "accept.hpp"
#include "entitled.hpp"
#include "fake_book.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::FakeBook;
using records::Json;

TEST_SUITE_BEGIN("accept");

namespace {

Json admitted(std::vector<std::string> roles) { return {{"admission", {{"roles", std::move(roles)}}}}; }

// A manager, a supervisor, an operator and a fitter; a site and two units.
class Staffed : public FakeBook {
public:
    Staffed()
    {
        with("person", "quill", admitted({"manager"}))
            .with("person", "hallam", admitted({"supervisor"}))
            .with("person", "farrow", admitted({"operator"}))
            .with("person", "oakes", admitted({"fitter"}))
            .with("site", "s", {{"zone", "Europe/London"}})
            .with("unit", "cl-02", {{"tag", "CL-02"}})
            .with("unit", "ex-21", {{"tag", "EX-21"}});
    }
};

records::Entry entry(const std::string& kind, const std::string& about, Json body, const std::string& by = "farrow")
{
    records::Entry made;
    made.kind = kind;
    made.about = about;
    made.who = made.by = by;
    made.how = "name only";
    made.body = std::move(body);
    return made;
}

std::string refusal(const FakeBook& book, const records::Entry& entry)
try {
    check_acceptable(book, entry);
    return "";
} catch (const records::FormError& e) {
    return e.what();
}

bool is_about(const std::string& said, const std::string& field)
{
    return said.starts_with(field + ": ") && said.find('\n') == std::string::npos;
}

const Json stop = {{"why", "bent"}};

} // namespace

TEST_CASE("who writes is a person of the book, once somebody may admit people")
{
    records::Entry by_stranger = entry("stop_called", "cl-02", stop, "nobody");
    CHECK(is_about(refusal(Staffed{}, by_stranger), "by"));
    CHECK(refusal(Staffed{}, entry("stop_called", "cl-02", stop)) == "");
    CHECK(is_about(refusal(Staffed{}, entry("stop_called", "cl-02", stop, "")), "by"));
    FakeBook new_book;
    new_book.with("unit", "cl-02", Json::object());
    CHECK(refusal(new_book, by_stranger) == "");
}

TEST_CASE("how it is signed is one of four words, and a PIN is none of them yet")
{
    records::Entry made = entry("stop_called", "cl-02", stop);
    for (const char* how : {"name only", "seen", "phone", "copy"}) {
        made.how = how;
        CHECK(refusal(Staffed{}, made) == "");
    }
    for (const char* how : {"pin", "", "PIN", "mail"}) {
        made.how = how;
        CHECK(is_about(refusal(Staffed{}, made), "how"));
    }
}

TEST_CASE("what another says is written down as seen, by phone or from a copy")
{
    records::Entry made = entry("stop_lifted", "cl-02", {{"why", "straight"}});
    made.who = "hallam";
    CHECK(is_about(refusal(Staffed{}, made), "how"));
    made.how = "phone";
    CHECK(refusal(Staffed{}, made) == "");
}

TEST_CASE("a record about a unit, a person, a plan or a record that is not there is refused by its field")
{
    const Staffed book;
    CHECK(is_about(refusal(book, entry("stop_called", "CL-02", stop)), "about"));
    CHECK(is_about(refusal(book, entry("coupled", "ex-21", {{"attachment", "cl-99"}})), "attachment"));
    CHECK(is_about(refusal(book, entry("event", "e", {{"kind", "knock"}, {"units", {"cl-02", "cl-99"}}})), "units[1]"));
    CHECK(is_about(refusal(book, entry("people_today", "s", {{"day", "2026-11-25"}, {"roles", {{"supervisor", "x"}}}})),
                   "roles.supervisor"));
    CHECK(
        is_about(refusal(book, entry("stop_lifted", "cl-02", {{"stop", std::string(64, '0')}, {"why", "w"}})), "stop"));
    CHECK(is_about(refusal(book, entry("compared", "p", {{"what", "pipe"}})), "about"));
    CHECK(is_about(refusal(book, entry("picked_up", "lift", Json::object())), "about"));
    CHECK(refusal(book, entry("coupled", "ex-21", {{"attachment", "cl-02"}, {"hitch", nullptr}})) == "");
}

TEST_CASE("a shift ends after its start, at most fourteen hours later, on its own last day")
{
    const std::int64_t start = 1795590000; // 2026-11-25T07:00:00Z
    const auto shift = [&](std::int64_t seconds, const char* last_day) {
        return refusal(
            Staffed{},
            entry("shift", "x", {{"site", "s"}, {"start", start}, {"end", start + seconds}, {"last_day", last_day}}));
    };
    CHECK(shift(14 * 3600, "2026-11-25") == "");
    CHECK(shift(1, "2026-11-25") == "");
    CHECK(is_about(shift(14 * 3600 + 1, "2026-11-25"), "end"));
    CHECK(is_about(shift(0, "2026-11-25"), "end"));
    CHECK(is_about(shift(-3600, "2026-11-25"), "end"));
    CHECK(is_about(shift(3600, "2026-12-31"), "last_day"));
    CHECK(shift(3600, "2026-11-26") == ""); // of a zone where it is morning
}

TEST_CASE("an event and a lift that are recorded already are corrected, not recorded anew")
{
    Staffed book;
    book.with("event", "knock-1", Json::object()).with("lift", "lift-1", Json::object());
    CHECK(is_about(refusal(book, entry("event", "knock-1", {{"kind", "touch"}, {"units", {"cl-02"}}})), "about"));
    CHECK(is_about(refusal(book, entry("lift_asked", "lift-1", Json::object())), "about"));
}

TEST_CASE("a site's zone is one that there is")
{
    CHECK(refusal(Staffed{}, entry("site", "t", {{"zone", "Europe/London"}})) == "");
    CHECK(is_about(refusal(Staffed{}, entry("site", "t", {{"zone", "Mars/Base"}})), "zone"));
}

// Source: "few may clear"; which roles those are is the firm's own rule.
TEST_CASE("people are admitted by a supervisor, a manager or an appointed person, and nobody admits himself")
{
    const Json operator_roles = {{"site", "s"}, {"roles", {"supervisor"}}};
    for (const char* kind : {"admission", "person"}) {
        CHECK(is_about(refusal(Staffed{}, entry(kind, "farrow", operator_roles, "farrow")), "who"));
        CHECK(is_about(refusal(Staffed{}, entry(kind, "farrow", operator_roles, "oakes")), "who"));
        CHECK(refusal(Staffed{}, entry(kind, "farrow", operator_roles, "hallam")) == "");
        CHECK(refusal(Staffed{}, entry(kind, "farrow", operator_roles, "quill")) == "");
    }
    FakeBook new_book;
    new_book.with("person", "quill", Json::object()).with("site", "s", Json::object());
    CHECK_FALSE(is_staffed(new_book));
    CHECK(refusal(new_book, entry("admission", "quill", operator_roles, "quill")) == "");
}

namespace {

// Of a record that somebody wrote, to be corrected by somebody.
std::string refusal_to_correct(const std::string& kind, const std::string& written_by, const std::string& corrected_by,
                               const Json& more = {{"void", true}})
{
    records::Record old;
    old.hash = "h";
    old.entry = entry(kind, "cl-02", Json::object(), written_by);
    Staffed book;
    book.with(old);
    Json body = {{"corrects", "h"}, {"why", "w"}};
    body.update(more);
    return refusal(book, entry("correction", "cl-02", body, corrected_by));
}

} // namespace

TEST_CASE("any record is corrected by somebody entitled to clear, and by nobody else")
{
    for (const char* kind : {"stop_called", "event", "examination_report", "setting_changed", "pipe", "received"}) {
        CHECK(is_about(refusal_to_correct(kind, "farrow", "farrow"), "who"));
        CHECK(refusal_to_correct(kind, "farrow", "hallam") == "");
        CHECK(refusal_to_correct(kind, "hallam", "oakes") == "");
    }
}

TEST_CASE("answers of a check are corrected by another than who gave them")
{
    for (const char* kind : {"pre_use_check", "defect_found"}) {
        CHECK(is_about(refusal_to_correct(kind, "hallam", "hallam"), "who"));
        CHECK(refusal_to_correct(kind, "hallam", "oakes") == "");
    }
}

TEST_CASE("a correction is not itself corrected, and says what the record should have said")
{
    CHECK(is_about(refusal_to_correct("correction", "farrow", "hallam"), "corrects"));
    CHECK(is_about(refusal_to_correct("pipe", "farrow", "hallam", Json::object()), "body"));
}

TEST_SUITE_END();
