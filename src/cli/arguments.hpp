#pragma once

// The words of the command line. CLI11 reads them, and only arguments.cpp sees it: every file that did took half a
// minute to build.

#include <functional>
#include <string>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace cotter::cli {

class Argument {
public:
    explicit Argument(CLI::Option& option) : option_{&option} {}
    Argument required();
    Argument excludes(Argument other);

private:
    CLI::Option* option_;
};

// The program itself, or one of its commands. A copy is the same command; the program owns them all.
class Command {
public:
    explicit Command(CLI::App& app) : app_{&app} {}
    Command subcommand(const std::string& name, const std::string& says);
    Argument option(const std::string& name, std::string& value, const std::string& says); // without --: a word
    Argument flag(const std::string& name, bool& value, const std::string& says);
    void callback(std::function<void()> act);

private:
    CLI::App* app_;
};

// Adds the program's commands by way of `add`, then reads the words. False: help was asked for, and is printed.
// Throws BadInput.
bool parse(const std::string& says, const std::function<void(Command)>& add, int count, const char* const* words);

} // namespace cotter::cli
