// Ctrl-C while a list is imported.

#include "sample_book.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <csignal>
#include <fstream>
#include <thread>

using namespace cotter::tests;

TEST_SUITE_BEGIN("import");

namespace {

// Once it is the program: until then it is a copy of this test, which has a handler of its own.
bool catches_interrupts(pid_t process)
{
    const fs::path its = "/proc/" + std::to_string(process);
    std::error_code none;
    if (fs::read_symlink(its / "exe", none) != fs::canonical(COTTER_PROGRAM))
        return false;
    std::ifstream status{its / "status"};
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("SigCgt:"))
            return (std::stoull(line.substr(7), nullptr, 16) & (1ULL << (SIGINT - 1))) != 0;
    return false;
}

// Runs the program on a pipe, presses Ctrl-C while it waits for the rest of the table, and then gives it.
Ran interrupted(const std::vector<std::string>& arguments, const std::string& table)
{
    const Scratch scratch;
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[0], 0);
        ::close(ends[0]);
        ::close(ends[1]);
        detail::put(scratch.folder() / "out", O_WRONLY | O_CREAT, 1);
        detail::put(scratch.folder() / "err", O_WRONLY | O_CREAT, 2);
        std::vector<char*> argv{const_cast<char*>(COTTER_PROGRAM)};
        for (const std::string& each : arguments)
            argv.push_back(const_cast<char*>(each.c_str()));
        argv.push_back(nullptr);
        ::execv(COTTER_PROGRAM, argv.data());
        ::_exit(127);
    }
    ::close(ends[0]);
    for (int i = 0; i < 1000 && !catches_interrupts(child); ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds{20});
    CHECK(catches_interrupts(child));
    ::kill(child, SIGINT);
    const auto written = ::write(ends[1], table.data(), table.size());
    CHECK(written == static_cast<ssize_t>(table.size()));
    ::close(ends[1]);
    int status = 0;
    ::waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 256 + WTERMSIG(status), bytes_of(scratch.folder() / "out"),
            bytes_of(scratch.folder() / "err")};
}

} // namespace

TEST_CASE("Ctrl-C cancels an import: one line, exit 2, nothing written")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    const Ran ran =
        interrupted({"import", "pipes", "--store", book.path(), "--as", "quill", "--at", "2026-11-25T12:00:00Z", "-"},
                    "id,name\nnew,N (invented)\n");
    CHECK(not_refused(ran, {"cancelled; nothing is written"}) == "");
    CHECK(book.scratch.files() == before);
}

TEST_SUITE_END();
