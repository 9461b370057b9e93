#pragma once

// The built program, run as anybody runs it: arguments and standard input in, output and exit code out.

#include "db/scratch.hpp"

#include <nlohmann/json.hpp>

#include <fcntl.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

#include <sstream>
#include <string>
#include <vector>

namespace cotter::tests {

using Json = nlohmann::json;

struct Ran {
    int code = -1;
    std::string out, err;

    Json json() const { return Json::parse(out); }
    std::vector<Json> lines() const
    {
        std::vector<Json> all;
        std::istringstream in{out};
        for (std::string line; std::getline(in, line);)
            all.push_back(Json::parse(line));
        return all;
    }
};

namespace detail {

// Opens a file in place of a standard stream.
inline void put(const fs::path& path, int flags, int stream)
{
    const int file = ::open(path.c_str(), flags, 0600);
    ::dup2(file, stream);
    ::close(file);
}

} // namespace detail

// Runs a program by its path; standard input is `in`.
inline Ran run_program(const std::string& program, const std::vector<std::string>& arguments,
                       const std::string& in = "")
{
    const Scratch scratch;
    write_bytes(scratch.folder() / "in", in);
    const pid_t child = ::fork();
    if (child == 0) {
        detail::put(scratch.folder() / "in", O_RDONLY, 0);
        detail::put(scratch.folder() / "out", O_WRONLY | O_CREAT, 1);
        detail::put(scratch.folder() / "err", O_WRONLY | O_CREAT, 2);
        std::vector<char*> argv{const_cast<char*>(program.c_str())};
        for (const std::string& each : arguments)
            argv.push_back(const_cast<char*>(each.c_str()));
        argv.push_back(nullptr);
        ::execv(program.c_str(), argv.data());
        ::_exit(127);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 256 + WTERMSIG(status), bytes_of(scratch.folder() / "out"),
            bytes_of(scratch.folder() / "err")};
}

inline Ran call(const std::vector<std::string>& arguments, const std::string& in = "")
{
    return run_program(COTTER_PROGRAM, arguments, in);
}

// Words cut at spaces, for arguments without any.
inline std::vector<std::string> words(const std::string& text)
{
    std::vector<std::string> all;
    std::istringstream in{text};
    for (std::string word; in >> word;)
        all.push_back(word);
    return all;
}

inline std::vector<std::string> keys(const Json& object)
{
    std::vector<std::string> all;
    for (const auto& [key, unused] : object.items())
        all.push_back(key);
    return all; // in name order
}

inline bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

// Bad input: exit 2, nothing out, one line on standard error that has each of the parts.
inline std::string not_refused(const Ran& ran, const std::vector<std::string>& parts)
{
    std::string wrong;
    if (ran.code != 2)
        wrong += "exit " + std::to_string(ran.code) + "; ";
    if (!ran.out.empty())
        wrong += "prints " + ran.out.substr(0, 200) + "; ";
    if (ran.err.empty() || ran.err.find('\n') != ran.err.size() - 1)
        wrong += "not one line: " + ran.err + "; ";
    for (const std::string& part : parts)
        if (!contains(ran.err, part))
            wrong += "no \"" + part + "\" in " + ran.err + "; ";
    return wrong;
}

} // namespace cotter::tests
