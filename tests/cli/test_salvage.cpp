// `cotter salvage`: what is lost is said, and until somebody has looked nothing is lifted.

#include "db/raw.hpp"
#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("salvage");

namespace {

struct Salvaging : SampleBook {
    std::string again() const { return (scratch.folder() / "again.db").string(); }
    Ran salvage(const std::string& more = "") const
    {
        return call(words("salvage --from " + path() + " --store " + again() +
                          " --name spare --at 2026-11-25T07:50:00Z " + more));
    }
    Ran lift_again() const
    {
        return call(words("lift --unit CL-02 --pipe sk-450 --machine EX-21 --operator farrow --at "
                          "2026-11-25T08:00:00Z --store " +
                          again()));
    }
    void remove_record(const std::string& where) const
    {
        Raw raw{path()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE " + where);
    }
};

bool has_finding(const Json& decision, const std::string& code, const std::string& about)
{
    for (const Json& each : decision["findings"])
        if (each["code"] == code && each["about"] == about)
            return true;
    return false;
}

} // namespace

TEST_CASE("a sound book is carried on whole, and what might be lifted may be lifted")
{
    const Salvaging book;
    REQUIRE(book.lift().code == 0);
    const std::string before = bytes_of(book.path());
    const Ran ran = book.salvage();
    CHECK(ran.code == 0);
    CHECK(contains(ran.out, "nothing is lost"));
    CHECK(book.lift_again().code == 0);
    CHECK(call({"verify", "--store", book.again()}).code == 0);
    CHECK(bytes_of(book.path()) == before);
}

TEST_CASE("a lost stop does not let a lift through: every unit is stopped until somebody entitled lifts it")
{
    const Salvaging book;
    REQUIRE(book.record(record_line("stop_called", "cl-02", {{"why", "Jaw looks bent"}}), "iqbal").code == 0);
    REQUIRE(book.record(record_line("pipe", "sk-600", {{"name", "DN 600 (invented)"}}, "07:30")).code == 0);
    REQUIRE(book.lift().code == 1);
    book.remove_record("kind = 'stop_called'");
    const Ran ran = book.salvage("--json");
    CHECK(ran.code == 1);
    CHECK(keys(ran.json()) == words("book device lost private_lost private_values records stopped"));
    CHECK(ran.json()["stopped"] == Json{"cl-02", "ex-21"});
    REQUIRE(ran.json()["lost"].size() == 1);
    const Json lost = ran.json()["lost"][0];
    CHECK(lost["first"] == lost["last"]);
    CHECK(lost["before"] == "2026-11-25T07:30:00Z");
    const Ran lift = book.lift_again();
    CHECK(lift.code == 1);
    CHECK(has_finding(lift.json(), "unit-quarantined", "CL-02"));
    CHECK(has_finding(lift.json(), "unit-quarantined", "EX-21"));
    const Ran verified = call({"verify", "--store", book.again(), "--json"});
    CHECK(verified.code == 0);
    CHECK(verified.json()["lost"] == ran.json()["lost"]); // known, and said
}

TEST_CASE("once a supervisor has looked at each unit and lifted its stop, work goes on")
{
    const Salvaging book;
    REQUIRE(book.record(record_line("pipe", "sk-600", {{"name", "DN 600 (invented)"}}, "07:30")).code == 0);
    book.remove_record("kind = 'pipe' AND about = 'sk-600'");
    REQUIRE(book.record("", "quill").code == 2); // nothing to record; and the book is cut
    REQUIRE(book.salvage().code == 1);
    const auto stops = call({"list", "stop_called", "--store", book.again(), "--json"}).lines();
    REQUIRE(stops.size() == 2);
    std::string lines;
    for (const Json& each : stops)
        lines += record_line("stop_lifted", each["about"], {{"stop", each["hash"]}, {"why", "looked at (invented)"}},
                             "07:55");
    CHECK(call({"record", "any", "--store", book.again(), "--as", "farrow"}, lines).code == 2); // an operator may not
    CHECK(book.lift_again().code == 1);
    CHECK(call({"record", "any", "--store", book.again(), "--as", "hallam"}, lines).code == 0);
    CHECK(book.lift_again().code == 0);
}

TEST_CASE("it says in words what is lost")
{
    const Salvaging book;
    book.remove_record("kind = 'rigging'");
    const Ran ran = book.salvage();
    CHECK(ran.code == 1);
    CHECK(contains(ran.out, "lost: record "));
    CHECK(contains(ran.out, "and before 2026-11-25T"));
    CHECK(contains(ran.out, "stopped: cl-02\nstopped: ex-21\n"));
    CHECK(ran.err.empty());
}

TEST_CASE("bad input is refused in one line")
{
    const Salvaging book;
    write_bytes(book.again(), "taken");
    CHECK(not_refused(book.salvage(), {"again.db", "is there already"}) == "");
    CHECK(not_refused(call({"salvage", "--from", "nowhere.db", "--store", "x.db", "--name", "n"}),
                      {"nowhere.db", "cannot be read"}) == "");
    CHECK(not_refused(call({"salvage", "--from", book.path()}), {"--store"}) == "");
}

TEST_SUITE_END();
