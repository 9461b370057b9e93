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

// A manager, a supervisor, an operator, a fitter and a competent person; a site and two units.
class Staffed : public FakeBook {
public:
    Staffed() // a sample book: no PIN is asked (test_pins.cpp)
    {
        as_sample()
            .with("person", "quill", admitted({"manager"}))
            .with("person", "hallam", admitted({"supervisor"}))
            .with("person", "farrow", admitted({"operator"}))
            .with("person", "oakes", admitted({"fitter"}))
            .with("person", "varley", admitted({"competent"}))
            .with("site", "s", {{"zone", "Europe/London"}})
            .with("unit", "cl-02", {{"tag", "CL-02"}, {"role", "attachment"}})
            .with("unit", "sl-07", {{"role", "sling"}})
            .with("unit", "ex-21", {{"tag", "EX-21"}, {"role", "machine"}});
        records::Record admission;
        admission.hash = "a";
        admission.entry.kind = "admission";
        admission.entry.about = "hallam";
        with(admission);
    }
};

records::Entry entry(const std::string& kind, const std::string& about, Json body, const std::string& by = "farrow")
{
    records::Entry made;
    made.kind = kind;
    made.about = about;
    made.who = made.by = by;
    made.how = "name only";
    made.at = rules::Instant{1795590000}; // 2026-11-25T07:00:00Z
    made.day = rules::utc_day(made.at);
    made.body = std::move(body);
    return made;
}

std::string refusal(const FakeBook& book, records::Entry entry)
try {
    accept(book, entry);
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

TEST_CASE("how it is signed is one of five words, and a PIN must have been given")
{
    records::Entry made = entry("stop_called", "cl-02", stop);
    for (const char* how : {"name only", "seen", "phone", "copy", "pin"}) {
        made.how = how;
        made.with_pin = made.how == "pin";
        CHECK(refusal(Staffed{}, made) == "");
    }
    made.with_pin = false;
    for (const char* how : {"pin", "", "PIN", "mail"}) {
        made.how = how;
        CHECK(is_about(refusal(Staffed{}, made), "how"));
    }
}

TEST_CASE("what another says is written down as seen, by phone or from a copy, and both are people of the book")
{
    records::Entry made = entry("stop_lifted", "cl-02", {{"why", "straight"}});
    made.who = "hallam";
    CHECK(is_about(refusal(Staffed{}, made), "how"));
    made.how = "phone";
    CHECK(is_about(refusal(Staffed{}, made), "by")); // his word alone, and he may lift no stop
    made.by = "quill";
    CHECK(refusal(Staffed{}, made) == "");
    made.by = "farrow";
    made.who = "a ghost";
    CHECK(is_about(refusal(Staffed{}, made), "who"));
    made.who = "";
    CHECK(is_about(refusal(Staffed{}, made), "who"));
    records::Entry called = entry("stop_called", "cl-02", stop);
    called.who = "a passer-by";
    called.how = "seen";
    CHECK(refusal(Staffed{}, called) == ""); // anybody may stop
}

TEST_CASE("an accepted entry has the roles in which it was written, and says nothing of what is null")
{
    records::Entry made =
        entry("received", "cl-02", {{"site", "s"}, {"condition", "whole"}, {"serial_seen", nullptr}}, "hallam");
    accept(Staffed{}, made);
    CHECK(made.roles == Roles{"supervisor"});
    CHECK(made.body == Json{{"site", "s"}, {"condition", "whole"}});
}

TEST_CASE("the place of the daily copies is named for this device, and for no other")
{
    records::Entry place = entry("backup_place", "device", {{"folder", "/media/stick"}}, "quill");
    accept(Staffed{}, place);
    CHECK(place.about == Staffed{}.state().device);
    CHECK(
        is_about(refusal(Staffed{}, entry("backup_place", "office", {{"folder", "/media/stick"}}, "quill")), "about"));
}

TEST_CASE("a unit hangs as what it is: no attachment stands in for a sling, a hitch or a machine")
{
    const Staffed book;
    CHECK(refusal(book, entry("rigging", "ex-21", {{"hangs", {"sl-07"}}})) == "");
    CHECK(is_about(refusal(book, entry("rigging", "ex-21", {{"hangs", {"sl-07", "cl-02"}}})), "hangs[1]"));
    CHECK(is_about(refusal(book, entry("rigging", "cl-02", {{"no_sling", true}})), "about"));
    CHECK(is_about(refusal(book, entry("coupled", "ex-21", {{"attachment", "sl-07"}})), "attachment"));
    CHECK(is_about(refusal(book, entry("coupled", "ex-21", {{"attachment", "cl-02"}, {"hitch", "sl-07"}})), "hitch"));
    CHECK(is_about(refusal(book, entry("headplate_fitted", "cl-02", {{"headplate", "ex-21"}})), "headplate"));
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

TEST_CASE("a shift begins about now and ends after its start, at most fourteen hours later, on its own last day")
{
    const std::int64_t now = 1795590000; // 2026-11-25T07:00:00Z
    const auto shift = [&](std::int64_t start, std::int64_t seconds, const char* last_day) {
        return refusal(
            Staffed{},
            entry("shift", "x",
                  {{"site", "s"}, {"start", now + start}, {"end", now + start + seconds}, {"last_day", last_day}}));
    };
    CHECK(shift(0, 14 * 3600, "2026-11-25") == "");
    CHECK(shift(0, 1, "2026-11-25") == "");
    CHECK(is_about(shift(0, 14 * 3600 + 1, "2026-11-25"), "end"));
    CHECK(is_about(shift(0, 0, "2026-11-25"), "end"));
    CHECK(is_about(shift(0, -3600, "2026-11-25"), "end"));
    CHECK(is_about(shift(0, 3600, "2026-12-31"), "last_day"));
    CHECK(shift(0, 3600, "2026-11-26") == ""); // of a zone where it is morning
    CHECK(shift(3600, 3600, "2026-11-25") == "");
    CHECK(is_about(shift(3601, 3600, "2026-11-25"), "start"));
    CHECK(shift(-3600, 7200, "2026-11-25") == "");
    CHECK(is_about(shift(-3601, 7200, "2026-11-25"), "start"));
}

TEST_CASE("an event has happened, on a day and at a time up to now")
{
    const auto event = [](Json more) {
        Json body = {{"kind", "knock"}, {"units", {"cl-02"}}};
        body.update(more);
        return refusal(Staffed{}, entry("event", "e", body));
    };
    CHECK(event(Json::object()) == "");
    CHECK(event({{"day", "2026-11-25"}, {"at", 1795590000}}) == "");
    CHECK(is_about(event({{"day", "2026-11-26"}}), "day"));
    CHECK(is_about(event({{"at", 1795590001}}), "at"));
}

TEST_CASE("a lift asked for holds a question that can be read again")
{
    CHECK(refusal(Staffed{}, entry("lift_asked", "l", {{"question", {{"id", "q"}}}})) == "");
    CHECK(
        is_about(refusal(Staffed{}, entry("lift_asked", "l", {{"question", {{"id", "q"}, {"pipe", 5}}}})), "question"));
}

TEST_CASE("an event, a lift and a paper that are recorded already are corrected, not recorded anew")
{
    Staffed book;
    book.with("event", "knock-1", Json::object())
        .with("lift", "lift-1", Json::object())
        .with("report", "rep-1", Json::object())
        .with("interim", "int-1", Json::object())
        .with("declaration", "dec-1", Json::object());
    for (const auto& [kind, id] :
         {std::pair{"examination_report", "rep-1"}, {"interim_statement", "int-1"}, {"declaration", "dec-1"}})
        CHECK(is_about(refusal(book, entry(kind, id, {{"units", {"cl-02"}}, {"unit", "cl-02"}}, "varley")), "about"));
    CHECK(is_about(refusal(book, entry("event", "knock-1", {{"kind", "touch"}, {"units", {"cl-02"}}})), "about"));
    CHECK(is_about(refusal(book, entry("lift_asked", "lift-1", {{"question", {{"id", "q"}}}})), "about"));
}

TEST_CASE("a site's zone is one that there is, and does not change")
{
    CHECK(refusal(Staffed{}, entry("site", "t", {{"zone", "Europe/London"}}, "quill")) == "");
    CHECK(is_about(refusal(Staffed{}, entry("site", "t", {{"zone", "Mars/Base"}}, "quill")), "zone"));
    CHECK(is_about(refusal(Staffed{}, entry("site", "s", {{"zone", "Etc/GMT+12"}}, "quill")), "zone"));
}

TEST_CASE("a device is a book's first record and no other")
{
    CHECK(is_about(refusal(Staffed{}, entry("device", "d", {{"name", "x"}}, "quill")), "kind"));
}

// Source: "few may clear"; which roles those are is the firm's own rule.
TEST_CASE("people are admitted by a supervisor, a manager or an appointed person, and nobody admits himself")
{
    const Json roles = {{"site", "s"}, {"roles", {"supervisor"}}};
    CHECK(is_about(refusal(Staffed{}, entry("admission", "farrow", roles, "oakes")), "who"));
    CHECK(is_about(refusal(Staffed{}, entry("person", "farrow", roles, "farrow")), "who"));
    CHECK(refusal(Staffed{}, entry("admission", "farrow", roles, "hallam")) == "");
    CHECK(refusal(Staffed{}, entry("person", "farrow", roles, "quill")) == "");
    for (const char* each : {"farrow", "oakes", "hallam", "quill"})
        CHECK(is_about(refusal(Staffed{}, entry("admission", each, roles, each)), "who"));
}

TEST_CASE("the first who is admitted is one who may admit others")
{
    FakeBook new_book;
    new_book.with("person", "quill", Json::object()).with("site", "s", Json::object());
    CHECK_FALSE(is_staffed(new_book));
    CHECK(refusal(new_book, entry("admission", "quill", {{"site", "s"}, {"roles", {"manager"}}}, "quill")) == "");
    CHECK(is_about(refusal(new_book, entry("admission", "quill", {{"site", "s"}, {"roles", {"operator"}}}, "quill")),
                   "roles"));
}

TEST_CASE("an issued plan changes only with a greater issue, since people are briefed on an issue")
{
    const auto again = [](int issue, bool issued) {
        Staffed book;
        book.with("person", "pryce", admitted({"appointed"}));
        book.with("plan", "p", {{"site", "s"}, {"issue", 2}, {"issued", issued}});
        return refusal(book, entry("lift_plan", "p", {{"site", "s"}, {"issue", issue}, {"greatest_kg", 9}}, "pryce"));
    };
    CHECK(again(2, false) == "");
    CHECK(is_about(again(1, false), "issue"));
    CHECK(is_about(again(2, true), "issue"));
    CHECK(is_about(again(1, true), "issue"));
    CHECK(again(3, true) == "");
}

TEST_CASE("what decides lifts is written by those whose work it is")
{
    const Json plan = {{"site", "s"}, {"issue", 1}};
    CHECK(is_about(refusal(Staffed{}, entry("lift_plan", "p", plan, "hallam")), "who"));
    CHECK(is_about(refusal(Staffed{}, entry("site", "s", {{"zone", "Europe/London"}}, "farrow")), "who"));
    CHECK(is_about(refusal(Staffed{}, entry("unit", "cl-02", {{"tag", "CL-02"}}, "farrow")), "who"));
    CHECK(is_about(refusal(Staffed{}, entry("received", "cl-02", {{"site", "s"}, {"condition", "whole"}}, "farrow")),
                   "who"));
    CHECK(refusal(Staffed{}, entry("received", "cl-02", {{"site", "s"}, {"condition", "whole"}}, "hallam")) == "");
}

namespace {

// Of a record that somebody wrote, to be corrected by somebody.
std::string refusal_to_correct(const std::string& kind, const std::string& written_by, const std::string& corrected_by,
                               const Json& more = {{"void", true}}, const std::string& about = "cl-02")
{
    records::Record old;
    old.hash = "h";
    old.entry = entry(kind, about, Json::object(), written_by);
    Staffed book;
    book.with(old);
    Json body = {{"corrects", "h"}, {"why", "w"}};
    body.update(more);
    return refusal(book, entry("correction", "cl-02", body, corrected_by));
}

} // namespace

TEST_CASE("a called stop, a change or a look is corrected by somebody entitled to clear, and by nobody else")
{
    for (const char* kind : {"stop_called", "setting_changed", "rigging", "lock_seen"}) {
        CHECK(is_about(refusal_to_correct(kind, "farrow", "farrow"), "who"));
        CHECK(refusal_to_correct(kind, "farrow", "hallam") == "");
        CHECK(refusal_to_correct(kind, "hallam", "oakes") == "");
    }
}

TEST_CASE("what only a competent person may clear, only a competent person corrects")
{
    for (const char* kind : {"event", "event_assessed", "trench_inspection", "fall_of_ground", "interim_statement"}) {
        CAPTURE(std::string{kind});
        for (const char* by : {"farrow", "oakes", "hallam", "quill"})
            CHECK(is_about(refusal_to_correct(kind, "farrow", by), "who"));
        CHECK(refusal_to_correct(kind, "farrow", "varley") == "");
    }
    CHECK(is_about(refusal_to_correct("clock_notice", "farrow", "oakes"), "who"));
    CHECK(refusal_to_correct("clock_notice", "farrow", "hallam") == "");
    CHECK(is_about(refusal_to_correct("examination_report", "quill", "oakes"), "who"));
}

TEST_CASE("an admission is corrected by those who may admit, and not by whom it admits")
{
    for (const char* kind : {"person", "admission"}) {
        CHECK(is_about(refusal_to_correct(kind, "quill", "oakes"), "who"));
        CHECK(is_about(refusal_to_correct(kind, "quill", "varley"), "who"));
        CHECK(refusal_to_correct(kind, "quill", "hallam") == "");
    }
    CHECK(is_about(refusal_to_correct("admission", "quill", "hallam", {{"void", true}}, "hallam"), "who"));
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

TEST_CASE("a correction's body is asked what the record was asked")
{
    const auto shift = [](std::int64_t hours) {
        return Json{
            {"body",
             {{"site", "s"}, {"start", 1795590000}, {"end", 1795590000 + hours * 3600}, {"last_day", "2026-11-25"}}}};
    };
    CHECK(refusal_to_correct("shift", "farrow", "hallam", shift(10), "shift") == "");
    CHECK(is_about(refusal_to_correct("shift", "farrow", "hallam", shift(15), "shift"), "end"));
    CHECK(is_about(refusal_to_correct("coupled", "farrow", "hallam", {{"body", {{"attachment", "cl-99"}}}}, "ex-21"),
                   "attachment"));
}

TEST_CASE("clearing a defect says which")
{
    CHECK(is_about(refusal(Staffed{}, entry("defect_cleared", "cl-02", {{"remedy", "renewed"}}, "oakes")), "check"));
    CHECK(refusal(Staffed{}, entry("defect_cleared", "cl-02", {{"remedy", "renewed"}, {"defect", "d-1"}}, "oakes")) ==
          "");
}

TEST_CASE("a deed is cleared by a record of the kind that can be cleared")
{
    records::Record pipe;
    pipe.hash = "p";
    pipe.entry = entry("pipe", "x", Json::object());
    Staffed book;
    book.with(pipe);
    CHECK(is_about(refusal(book, entry("stop_lifted", "cl-02", {{"stop", "p"}, {"why", "w"}}, "hallam")), "stop"));
    CHECK(is_about(refusal(book, entry("clock_confirmed", "d", {{"notice", "p"}, {"to", 1}}, "hallam")), "notice"));
}

TEST_SUITE_END();
