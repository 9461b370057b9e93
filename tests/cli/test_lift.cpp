// lift: the decision by the records of a book. It reads only.

#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("lift");

namespace {

using Keys = std::vector<std::string>;

// The codes of all findings, or what stood in the way of an answer.
std::string codes(const Ran& ran)
{
    if (ran.out.empty())
        return ran.err;
    std::string text;
    const Json answer = ran.json();
    for (const Json& finding : answer["findings"])
        text += finding["code"].get<std::string>() + " ";
    return text;
}

const Json hired_1 = {{"tag", "PC-07"},
                      {"owner_firm", "Fenwold Hire"},
                      {"serial", "OG-1107"},
                      {"role", "attachment"},
                      {"class", "accessory"}};
const Json hired_2 = {{"tag", "PC-07"},
                      {"owner_firm", "Ridgeway Drainage"},
                      {"serial", "A-2"},
                      {"role", "attachment"},
                      {"class", "accessory"}};

} // namespace

TEST_CASE("a lift against which nothing stands may be made, and exits 0")
{
    const SampleBook book;
    const Ran ran = book.lift();
    CHECK(codes(ran) == "");
    CHECK(ran.code == 0);
    CHECK(keys(ran.json()) == Keys{"findings", "id", "outcome", "plan", "standing"});
    CHECK(ran.json()["outcome"] == "may_lift");
    CHECK(ran.json()["standing"] == "B");
    CHECK(ran.json()["plan"] == Json{{"id", "plan-1"}, {"issue", 1}});
    CHECK(contains(book.lift("--text").out, "at mark B, by plan-1 issue 1."));
    CHECK(ran.err == "");
}

TEST_CASE("a stop anybody calls holds the lift, and exits 1")
{
    const SampleBook book;
    REQUIRE(book.record(record_line("stop_called", "cl-02", {{"why", "Jaw looks bent"}})).code == 0);
    const Ran ran = book.lift();
    CHECK(ran.code == 1);
    CHECK(ran.json()["outcome"] == "do_not_lift");
    REQUIRE(ran.json()["findings"].size() == 1);
    CHECK(keys(ran.json()["findings"][0]) ==
          Keys{"about", "clears", "code", "limit", "measured", "says", "source", "unit", "weight"});
    CHECK(ran.json()["findings"][0]["weight"] == "stop");
    CHECK(ran.json()["findings"][0]["about"] == "CL-02");
}

TEST_CASE("a stop is lifted by somebody entitled and by nobody else")
{
    const SampleBook book;
    const Ran called = call(
        {"record", "stop_called", "--store", book.path(), "--as", "iqbal", "--json", "--at", "2026-11-25T07:20:00Z"},
        R"({"about": "cl-02", "body": {"why": "Jaw looks bent"}})");
    REQUIRE(called.code == 0);
    const std::string lifted =
        record_line("stop_lifted", "cl-02", {{"stop", called.json()["hash"]}, {"why", "straight"}}, "07:30");
    CHECK(book.record(lifted, "farrow").code == 2);
    std::string by_phone = lifted;
    by_phone.insert(1, R"("who": "hallam", "how": "phone", )");
    CHECK(book.record(by_phone, "farrow").code == 2); // his word alone
    std::string of_another = lifted;
    of_another.replace(of_another.find("cl-02"), 5, "ex-21");
    CHECK(contains(book.record(of_another, "hallam").err, "the same unit"));
    CHECK(book.lift().code == 1);
    REQUIRE(book.record(lifted, "hallam").code == 0);
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("a correction takes a stop away for somebody entitled and for nobody else")
{
    const SampleBook book;
    const Ran called = call(
        {"record", "stop_called", "--store", book.path(), "--as", "iqbal", "--json", "--at", "2026-11-25T07:20:00Z"},
        R"({"about": "cl-02", "body": {"why": "Jaw looks bent"}})");
    REQUIRE(called.code == 0);
    const std::string taken_back = record_line(
        "correction", "cl-02", {{"corrects", called.json()["hash"]}, {"why", "wrong unit"}, {"void", true}}, "07:30");
    CHECK(book.record(taken_back, "farrow").code == 2);
    CHECK(book.lift().code == 1);
    REQUIRE(book.record(taken_back, "hallam").code == 0);
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("a correction takes an event, a defect or a check's stop away for somebody entitled and for nobody else")
{
    const Json stop_answer = {{"machine", "ex-21"},
                              {"answers", Json::array({{{"item", "extra"}, {"answer", "stop"}}})}};
    const Json right_answer = {{"machine", "ex-21"},
                               {"answers", Json::array({{{"item", "extra"}, {"answer", "right"}}})}};
    struct Case {
        const char* kind;
        const char* about;
        Json body;
        Json corrected;
    };
    for (const Case& each :
         {Case{"event", "ev-1", {{"kind", "knock"}, {"day", "2026-11-24"}, {"units", {"cl-02"}}}, {{"void", true}}},
          Case{"event",
               "ev-1",
               {{"kind", "knock"}, {"day", "2026-11-24"}, {"units", {"cl-02"}}},
               {{"body", {{"kind", "lay_up"}, {"units", {"cl-02"}}}}}},
          Case{"defect_found", "cl-02", {{"answer", "stop"}, {"what", "crack"}}, {{"void", true}}},
          Case{"pre_use_check", "cl-02", stop_answer, {{"void", true}}},
          Case{"pre_use_check", "cl-02", stop_answer, {{"body", right_answer}}}}) {
        CAPTURE(each.kind);
        CAPTURE(each.corrected.dump());
        const SampleBook book;
        const Ran written = call(
            {"record", each.kind, "--store", book.path(), "--as", "iqbal", "--json", "--at", "2026-11-25T05:00:00Z"},
            Json{{"about", each.about}, {"body", each.body}}.dump());
        REQUIRE(written.code == 0);
        REQUIRE(book.lift().code == 1);
        Json body = each.corrected;
        body.update({{"corrects", written.json()["hash"]}, {"why", "wrong unit"}});
        const std::string corrected = record_line("correction", each.about, body, "05:10");
        CHECK(book.record(corrected, "farrow").code == 2);
        CHECK(book.lift().code == 1);
        const bool event = std::string{each.kind} == "event"; // only a competent person clears one
        CHECK(book.record(corrected, "hallam").code == (event ? 2 : 0));
        if (event)
            REQUIRE(book.record(corrected, "penrose").code == 0);
        CHECK(codes(book.lift()) == "");
    }
}

TEST_CASE("asking for a lift changes nothing on disk")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    CHECK(book.lift().code == 0);
    CHECK(book.lift("--radius 9 --height 0").code == 1);
    CHECK(book.scratch.files() == before);
}

TEST_CASE("a taped radius and height replace the plan's, on every side unless said, inside of what it says of the mark")
{
    const SampleBook book;
    CHECK(codes(book.lift("--radius 4 --height 0")) == "");
    CHECK(codes(book.lift("--radius 4 --height 0 --over both")) == "");
    CHECK(codes(book.lift("--radius 4 --height 0 --over front")) == "plan-outside "); // planned for both
    CHECK(codes(book.lift("--radius 4.2 --height -2")) == "");
    CHECK(codes(book.lift("--radius 4.3 --height 0")) == "plan-outside ");
    CHECK(codes(book.lift("--radius 4 --height -2.1")) == "plan-outside ");
    CHECK(codes(book.lift("--radius 6.1 --height 0")) == "reach-off-chart plan-outside ");
    CHECK(codes(book.lift("--radius 4 --height 3.1")) == "reach-off-chart plan-outside ");
}

TEST_CASE("what a lift is asked with and the book does not have is named by its option")
{
    const SampleBook book;
    const auto without = [&](const std::string& option, const std::string& value) {
        auto all = words("lift --at 2026-11-25T08:00:00Z");
        for (const auto& [name, usual] :
             {std::pair{"--unit", "CL-02"}, {"--pipe", "sk-450"}, {"--machine", "EX-21"}, {"--operator", "farrow"}})
            all.insert(all.end(), {name, option == name ? value : usual});
        if (option == "--supervisor" || option == "--signaller")
            all.insert(all.end(), {option, value});
        all.insert(all.end(), {"--store", book.path()});
        return call(all);
    };
    CHECK(without("", "").code == 0);
    for (const char* option : {"--pipe", "--operator", "--supervisor", "--signaller"})
        CHECK(not_refused(without(option, "nobody"), {option, "nobody", "accepted"}) == "");
    for (const char* option : {"--unit", "--machine"})
        CHECK(not_refused(without(option, "no\nbody"), {"no body", "not in this book"}) == "");
}

TEST_CASE("a tag that two firms use is refused with both, and owner and serial tell them apart")
{
    const SampleBook book;
    REQUIRE(book.record(record_line("unit", "u-1", hired_1) + record_line("unit", "u-2", hired_2)).code == 0);
    const auto asked = [&](const std::string& unit) {
        return call({"lift", "--store", book.path(), "--unit", unit, "--pipe", "sk-450", "--machine", "EX-21",
                     "--operator", "farrow"});
    };
    CHECK(not_refused(asked("PC-07"), {"PC-07", "Fenwold Hire/OG-1107", "Ridgeway Drainage/A-2", "accepted"}) == "");
    CHECK(asked("Fenwold Hire/OG-1107").code == 1);
    CHECK(asked("Ridgeway Drainage/A-2").code == 1);
    CHECK(not_refused(asked("Fenwold Hire/A-2"), {"Fenwold Hire/A-2"}) == "");
}

TEST_CASE("options that do not go together, and numbers and instants that are none, are refused")
{
    const SampleBook book;
    for (const auto& [more, says] : {std::pair<std::string, Keys>{"--radius 4", {"--radius", "--height"}},
                                     {"--height 4", {"--radius", "--height"}},
                                     {"--standing B --radius 4 --height 0", {"--standing", "--radius"}},
                                     {"--radius nan --height 0", {"--radius", "nan"}},
                                     {"--radius 4 --height 0x1", {"--height", "0x1"}},
                                     {"--radius 1e1 --height 0", {"--radius", "1e1"}},
                                     {"--radius 4 --height 0 --over back", {"--over", "back", "front, side or both"}},
                                     {"--over front", {"--over", "--radius"}}})
        CHECK(not_refused(book.lift(more), says) == "");
    CHECK(not_refused(book.run("lift --unit CL-02 --pipe sk-450 --machine EX-21 --operator farrow --at noon"),
                      {"--at", "noon", "YYYY-MM-DD"}) == "");
}

TEST_CASE("for a person it prints sentences, with what clears each finding")
{
    const SampleBook book;
    const Ran ran = book.lift("--radius 9 --height 0 --text");
    CHECK(ran.code == 1);
    CHECK(ran.out.starts_with("DO NOT LIFT\n"));
    CHECK(book.lift("--text").out.starts_with("MAY LIFT\n"));
}

TEST_CASE("a unit whose record names its check sheet can be asked about")
{
    const SampleBook book;
    const Json sheet = {{"name", "Sling"},
                        {"edition", 1},
                        {"role", "sling"},
                        {"items", {{{"id", "tag"}, {"text", "Tag legible"}, {"if_not", "Take it out"}}}}};
    Json unit = hired_1;
    unit["sheet"] = "sling";
    REQUIRE(book.record(record_line("check_sheet", "sling", sheet) + record_line("unit", "u-1", unit)).code == 0);
    CHECK(
        call(words("lift --unit PC-07 --pipe sk-450 --machine EX-21 --operator farrow --store " + book.path())).code ==
        1);
    CHECK(book.run("board --on 2026-11-25").code == 0);
}

TEST_CASE("gear that the book does not know is not taken into the load path")
{
    const SampleBook book;
    for (const std::string& line :
         {record_line("rigging", "ex-21", {{"hangs", {"no such sling"}}}),
          record_line("headplate_fitted", "cl-02", {{"headplate", "no such headplate"}}),
          record_line("coupled", "ex-21", {{"attachment", "cl-02"}, {"hitch", "no such hitch"}})}) {
        CAPTURE(line);
        const Ran ran = book.record(line, "farrow");
        CHECK(ran.code == 2);
        CHECK(ran.err.find("no such") != std::string::npos);
    }
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("a unit received as not to be used stays stopped, also when it is received again, until somebody entitled "
          "lifts the stop")
{
    const SampleBook book;
    const Ran received =
        call({"record", "received", "--store", book.path(), "--as", "hallam", "--json", "--at", "2026-11-25T07:20:00Z"},
             R"({"about": "cl-02", "body": {"site": "marsh-lane", "condition": "not_to_be_used"}})");
    REQUIRE(received.code == 0);
    CHECK(codes(book.lift()) == "unit-quarantined ");
    REQUIRE(book.record(record_line("received", "cl-02", {{"site", "marsh-lane"}, {"condition", "whole"}}), "hallam")
                .code == 0);
    CHECK(codes(book.lift()) == "unit-quarantined ");
    const Json lifted = {{"stop", received.json()["hash"]}, {"why", "put right"}};
    CHECK(book.record(record_line("stop_lifted", "cl-02", lifted, "07:40"), "farrow").code == 2);
    CHECK(codes(book.lift()) == "unit-quarantined ");
    REQUIRE(book.record(record_line("stop_lifted", "cl-02", lifted, "07:41"), "hallam").code == 0);
    CHECK(codes(book.lift()) == "");
}

// Source: "until a competent person's record names that defect of that unit as remedied".
TEST_CASE("a defect is cleared by what names it on its own unit, and not by what names another's of the same name")
{
    const SampleBook book;
    const auto report = [](const std::string& unit) {
        return Json{{"units", {unit}},
                    {"identity", unit},
                    {"examiner", "A. Penrose"},
                    {"basis", "exceptional"},
                    {"examined", "2026-10-01"},
                    {"latest", "2027-03-01"},
                    {"swl_kg", 3000},
                    {"safe", true},
                    {"defects", {{{"id", "d-1"}, {"danger", "present"}}}},
                    {"copy", {{"legible", true}, {"here", true}}}};
    };
    const Json clearing = {{"defect", "d-1"}, {"remedy", "welded"}};
    REQUIRE(book.record(record_line("examination_report", "rep-8", report("cl-02")) +
                        record_line("examination_report", "rep-9", report("ex-21")))
                .code == 0);
    REQUIRE(book.record(record_line("compared", "rep-8", {{"what", "report"}}) +
                            record_line("compared", "rep-9", {{"what", "report"}}),
                        "hallam")
                .code == 0);
    CHECK(codes(book.lift()) == "exam-unsafe exam-unsafe ");
    REQUIRE(book.record(record_line("defect_cleared", "ex-21", clearing), "penrose").code == 0);
    CHECK(codes(book.lift()) == "exam-unsafe ");
    CHECK(book.record(record_line("defect_cleared", "cl-02", clearing), "farrow").code == 2);
    REQUIRE(book.record(record_line("defect_cleared", "cl-02", clearing), "hallam").code == 0); // not competent
    CHECK(codes(book.lift()) == "exam-unsafe ");
    REQUIRE(book.record(record_line("defect_cleared", "cl-02", clearing), "penrose").code == 0);
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("nobody compares what he typed himself, whoever writes it down")
{
    const SampleBook book;
    const Json typed = {{"name", "DN 450"},      {"shape", "straight"},    {"material", "concrete"},
                        {"bore_mm", 450},        {"barrel_mm", 584},       {"socket_mm", 720},
                        {"overall_mm", 2600},    {"effective_mm", 2500},   {"socket_length_mm", 100},
                        {"density_kg_m3", 2400}, {"allowance_percent", 5}, {"stated_kg", 900}};
    REQUIRE(book.record(record_line("pipe", "sk-450", typed), "quill").code == 0);
    CHECK(codes(book.lift()) == "data-unproved ");
    Json by_phone = Json::parse(record_line("compared", "sk-450", {{"what", "pipe"}}));
    by_phone.update({{"who", "quill"}, {"how", "phone"}});
    REQUIRE(book.record(by_phone.dump() + "\n", "hallam").code == 0);
    CHECK(codes(book.lift()) == "data-unproved ");
    REQUIRE(book.record(record_line("compared", "sk-450", {{"what", "pipe"}}), "iqbal").code == 0);
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("who lifts a stop does so in the roles of that day")
{
    const SampleBook book;
    const Ran called = call(
        {"record", "stop_called", "--store", book.path(), "--as", "iqbal", "--json", "--at", "2026-11-25T07:20:00Z"},
        R"({"about": "cl-02", "body": {"why": "Jaw looks bent"}})");
    const std::string lifted =
        record_line("stop_lifted", "cl-02", {{"stop", called.json()["hash"]}, {"why", "straight"}}, "07:30");
    const auto given = [](std::vector<std::string> roles, const char* who, const char* clock) {
        return record_line("admission", who,
                           {{"site", "marsh-lane"},
                            {"card_seen", true},
                            {"models", {"digger-21", "clasper-90"}},
                            {"setting_models", {"clasper-90"}},
                            {"roles", std::move(roles)}},
                           clock);
    };
    CHECK(book.record(lifted, "farrow").code == 2);
    REQUIRE(book.record(given({"operator", "fitter"}, "farrow", "07:35"), "quill").code == 0);
    CHECK(codes(book.lift()) == "unit-quarantined "); // he was no fitter then
    REQUIRE(book.record(lifted, "hallam").code == 0);
    CHECK(codes(book.lift()) == "");
    REQUIRE(book.record(given({"supervisor", "signaller"}, "iqbal", "07:36") + given({}, "penrose", "07:37"), "quill")
                .code == 0);
    CHECK(codes(book.lift()) == "");
}

TEST_CASE("a defect found on a headplate stops the lift")
{
    const SampleBook book;
    const Json headplate = {{"tag", "HP-1"},        {"owner_firm", "Ridgeway Drainage (invented)"},
                            {"serial", "H-1"},      {"role", "headplate"},
                            {"class", "accessory"}, {"owner", "own"}};
    REQUIRE(book.record(record_line("unit", "hp-1", headplate) +
                        record_line("headplate_fitted", "cl-02", {{"headplate", "hp-1"}}) +
                        record_line("defect_found", "hp-1", {{"answer", "stop"}, {"what", "weld cracked"}}))
                .code == 0);
    CHECK(codes(book.lift()).find("check-stopped") != std::string::npos);
}

// null is "not known" and accepted; it must not end every question and the due board.
TEST_CASE("a record in which something is not known is read, and stops at most what it is about")
{
    for (const std::string& line :
         {record_line("unit", "z",
                      {{"tag", "Z"},
                       {"owner_firm", "Z"},
                       {"serial", "Z"},
                       {"role", "attachment"},
                       {"class", "accessory"},
                       {"model", nullptr}}),
          record_line("unit", "cl-02",
                      {{"tag", "CL-02"},
                       {"owner_firm", "R"},
                       {"serial", "C-2"},
                       {"role", "attachment"},
                       {"class", "accessory"},
                       {"model", nullptr}}),
          record_line("rigging", "ex-21", {{"hangs", nullptr}, {"no_sling", nullptr}}),
          record_line("coupled", "ex-21", {{"attachment", "cl-02"}, {"hitch", nullptr}}),
          record_line("admission", "farrow",
                      {{"site", "marsh-lane"}, {"card_seen", true}, {"roles", nullptr}, {"models", nullptr}}),
          record_line("examination_report", "rep-9", {{"units", {"cl-02"}}, {"latest", nullptr}, {"defects", nullptr}}),
          record_line("model", "clasper-90",
                      {{"name", "C"}, {"role", "attachment"}, {"check_items", nullptr}, {"states", nullptr}}),
          record_line("event", "ev-1", {{"kind", "knock"}, {"units", {"cl-02"}}, {"day", nullptr}})}) {
        const SampleBook book;
        REQUIRE(book.record(line).code == 0);
        CAPTURE(line);
        const Ran board = book.run("board --on 2026-11-25"), lift = book.lift();
        CHECK(board.err == "");
        CHECK(board.code == 0);
        CHECK(lift.err == "");
        CHECK(lift.code != 2);
    }
}

TEST_SUITE_END();
