// help: every command with an example that runs as it stands.

#include "sample_book.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace cotter::tests;

TEST_SUITE_BEGIN("help");

namespace {

const std::set<std::string> opens_a_screen{"cab", "site", "yard"};

struct Example {
    std::string name, command;
};

std::vector<Example> examples()
{
    std::vector<Example> all;
    std::istringstream in{call({"help"}).out};
    for (std::string line; std::getline(in, line);)
        if (const auto colon = line.find(": "); line.starts_with("  ") && colon != std::string::npos)
            all.push_back({line.substr(2, colon - 2), line.substr(colon + 2)});
    return all;
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

// As somebody types it who has the program on the path.
Ran in_a_shell(const std::string& command)
{
    return run_program("/bin/sh",
                       {"-c", "PATH=\"$0:$PATH\"; " + command, fs::path{COTTER_PROGRAM}.parent_path().string()});
}

} // namespace

TEST_CASE("every example in the help runs as it stands")
{
    const SampleBook book;
    const fs::path chart = book.scratch.folder() / "chart.csv";
    write_bytes(chart,
                "over,height_m,radius_m,rated_kg\nfront,0,4,4000\nfront,0,6,3000\nside,0,4,2000\nside,0,6,1500\n");
    int run = 0;
    for (const Example& example : examples()) {
        if (opens_a_screen.contains(example.name))
            continue;
        CAPTURE(example.command);
        const Ran ran = in_a_shell(replaced(replaced(example.command, "BOOK", book.path()), "CHART", chart.string()));
        CHECK((ran.code == 0 || ran.code == 1));
        CHECK(ran.err == "");
        ++run;
    }
    CHECK(run >= 12);
}

TEST_CASE("the help of a word has the same example, and every word has one")
{
    std::set<std::string> seen;
    for (const Example& example : examples()) {
        seen.insert(example.name);
        if (example.name == "record")
            continue; // lists the kinds
        const Ran ran = call({"help", example.name});
        CAPTURE(example.name);
        CHECK(ran.code == 0);
        CHECK(contains(ran.out, example.command));
    }
    for (const char* word : {"due", "weigh", "sling", "reach", "thread", "judge", "lift", "record", "board", "plan",
                             "verify", "rebuild", "import", "export"})
        CHECK(seen.contains(word));
}

TEST_CASE("a word that is no command, and a kind that is none, are refused with those that are")
{
    CHECK(not_refused(call({"help", "hoist"}), {"hoist", "due", "weigh"}) == "");
    CHECK(not_refused(call({"help", "record", "hoist"}), {"hoist", "help record"}) == "");
}

TEST_CASE("a command, an option or a word too many is refused in one line that names it")
{
    CHECK(not_refused(call({"hoist"}), {"hoist"}) == "");
    CHECK(not_refused(call(words("due --examined 2026-11-01 --colour red")), {"--colour"}) == "");
    CHECK(not_refused(call(words("due --examined 2026-11-01 --on 2026-11-02 more")), {"more"}) == "");
    CHECK(not_refused(call({"due"}), {"--examined"}) == "");
    CHECK(not_refused(call({"due", "--examined"}), {"--examined"}) == "");
}

TEST_CASE("help that is asked for by an option is no error")
{
    for (const char* word : {"due", "weigh", "sling", "reach", "thread", "judge", "lift", "record", "board", "plan",
                             "verify", "rebuild", "import", "export", "help"}) {
        const Ran ran = call({word, "--help"});
        CAPTURE(std::string{word});
        CHECK(ran.code == 0);
        CHECK(ran.out != "");
        CHECK(ran.err == "");
    }
    CHECK(call({"--help"}).code == 0);
    CHECK(contains(call({"help"}).out, "never replaces"));
}

TEST_SUITE_END();
