// judge: questions in, decisions out, a line each.

#include "program.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("judge");

namespace {

using Keys = std::vector<std::string>;

const std::string returned = R"({"id": "r", "purpose": "return"})"; // stops for nothing
const std::string bare = R"({"id": "q", "purpose": "lift"})";       // nothing is known

Ran judge(const std::string& lines) { return call({"judge"}, lines); }

} // namespace

TEST_CASE("a decision has id, outcome and findings, and a finding all of its nine fields")
{
    const Ran ran = judge(bare + "\n");
    CHECK(ran.code == 0);
    CHECK(ran.err == "");
    REQUIRE(ran.lines().size() == 1);
    const Json answer = ran.lines()[0];
    CHECK(keys(answer) == Keys{"findings", "id", "outcome"});
    CHECK(answer["outcome"] == "do_not_lift");
    REQUIRE(answer["findings"].size() > 5);
    for (const Json& finding : answer["findings"])
        CHECK(keys(finding) ==
              Keys{"about", "clears", "code", "limit", "measured", "says", "source", "unit", "weight"});
}

TEST_CASE("every finding says something, has a source and says what clears it")
{
    const Json answer = judge(bare).lines().at(0);
    for (const Json& finding : answer["findings"]) {
        CAPTURE(finding["code"].get<std::string>());
        CHECK(finding["says"].get<std::string>().size() > 5);
        CHECK(finding["source"] != "");
        CHECK(finding["clears"] != "");
        CHECK((finding["weight"] == "stop" || finding["weight"] == "caution" || finding["weight"] == "note"));
    }
}

TEST_CASE("judging exits 0 whatever the outcome, if every line was answered")
{
    const Ran ran = judge(bare + "\n\n" + returned + "\n" + bare);
    CHECK(ran.code == 0);
    REQUIRE(ran.lines().size() == 3);
    CHECK(ran.lines()[1] == Json{{"id", "r"}, {"outcome", "may_lift"}, {"findings", Json::array()}});
    CHECK(judge("").code == 0);
    CHECK(judge("").out == "");
}

TEST_CASE("a file and standard input are judged alike")
{
    const Scratch scratch;
    write_bytes(scratch.folder() / "q.jsonl", bare + "\n");
    CHECK(call({"judge", (scratch.folder() / "q.jsonl").string()}).out == judge(bare).out);
    CHECK(call({"judge", "-"}, bare).out == judge(bare).out);
    CHECK(call({"judge", "--json"}, bare).out == judge(bare).out);
    CHECK(not_refused(call({"judge", "/nowhere/q.jsonl"}), {"/nowhere/q.jsonl", "cannot be read", "accepted"}) == "");
    CHECK(not_refused(call({"judge", scratch.folder().string()}), {"cannot be read", "accepted"}) == "");
}

TEST_CASE("a line of blanks is passed over, and counted")
{
    const Ran ran = judge(bare + "\n \t\r\n" + bare + "\n{}\n");
    CHECK(ran.lines().size() == 2);
    CHECK(ran.err.starts_with("cotter: line 4: "));
}

TEST_CASE("an answer that cannot be written is no answer")
{
    const Ran ran = run_program("/bin/sh", {"-c", "exec " COTTER_PROGRAM " judge >/dev/full"}, bare);
    CHECK(ran.code == 2);
    CHECK(ran.err == "cotter: standard output cannot be written; an open file, pipe or terminal is accepted\n");
}

TEST_CASE("the first bad line is named by its number, and those before it are answered")
{
    const Ran ran = judge(bare + "\n" + returned + "\n{\"id\": 7}\n" + bare);
    CHECK(ran.code == 2);
    CHECK(ran.lines().size() == 2);
    CHECK(ran.err == "cotter: line 3: id: an object with an id (a text) is accepted\n");
}

TEST_CASE("a line that is no question is refused with field, value and what is accepted")
{
    for (const auto& row :
         {std::pair<std::string, Keys>{"7", {"id"}},
          {"[]", {"id"}},
          {"{}", {"id"}},
          {"{\"id\": \"q\"", {"not JSON"}},
          {"nonsense", {"not JSON"}},
          {R"({"id": "q"} {"id": "r"})", {"not JSON"}},
          {"\xff", {"not JSON"}},
          {R"({"id": "q", "colour": 1})", {"colour", "accepted"}},
          {R"({"id": "q", "id": "q"})", {"id", "twice"}},
          {R"({"id": "q", "now": "noon"})", {"now", "noon", "whole number"}},
          {R"({"id": "q", "now": 1.5})", {"now", "1.5", "whole number"}},
          {R"({"id": "q", "now": 1e3})", {"now", "whole number"}},
          {R"({"id": "q", "now": 99999999999999999999})", {"now", "whole number"}},
          {R"({"id": "q", "day": "2026-02-30"})", {"day", "2026-02-30", "YYYY-MM-DD"}},
          {R"({"id": "q", "items": [{"tag": "A", "role": "crane"}]})", {"items[0].role", "crane", "attachment"}},
          {R"({"id": "q", "items": [{"role": "hook"}]})", {"items[0].tag", "text"}},
          {R"({"id": "q", "items": [{"tag": "A"}, {"tag": "A"}]})", {"items", "A", "twice"}}}) {
        CAPTURE(row.first);
        CHECK(not_refused(judge(row.first), row.second) == "");
    }
}

TEST_CASE("a line nested as deep as anybody likes is refused like any other")
{
    for (const std::size_t depth : {1'000U, 100'000U})
        CHECK(not_refused(judge(R"({"id": "q", "day": )" + std::string(depth, '[') + std::string(depth, ']') + "}"),
                          {"line 1"}) == "");
}

TEST_CASE("a missing fact is not known, and never an error")
{
    for (
        const char* line :
        {R"({"id": "q", "purpose": "lift", "items": null, "pipe": null, "people": null, "clock": null})",
         R"({"id": "q", "purpose": "lift", "items": [{"tag": "A"}], "pipe": {}, "people": {"operator": null}, "plan": {}})",
         R"({"id": "q", "purpose": null})", R"({"id": ""})"}) {
        CAPTURE(std::string{line});
        CHECK(judge(line).code == 0);
    }
}

TEST_CASE("the schema is one JSON object that closes itself to other fields")
{
    const Ran ran = call({"judge", "--schema"});
    CHECK(ran.code == 0);
    CHECK(ran.json()["type"] == "object");
    CHECK(ran.json()["additionalProperties"] == false);
    CHECK(ran.json()["required"] == Json::array({"id"}));
    CHECK(ran.json()["properties"].contains("items"));
}

TEST_CASE("what a question names is printed as JSON again, whatever is in it")
{
    const Ran ran = judge(R"({"id": "a\"b\\c\u0007\n\u00e9", "purpose": "return"})");
    CHECK(ran.code == 0);
    CHECK(ran.json()["id"] == "a\"b\\c\a\n\u00e9");
}

TEST_SUITE_END();
