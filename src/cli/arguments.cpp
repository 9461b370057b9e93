#include "arguments.hpp"

#include "bad_input.hpp"

#include <CLI/CLI.hpp>

#include <iostream>
#include <utility>

namespace cotter::cli {

Argument Argument::required()
{
    option_->required();
    return *this;
}

Argument Argument::excludes(Argument other)
{
    option_->excludes(other.option_);
    return *this;
}

Command Command::subcommand(const std::string& name, const std::string& says)
{
    return Command{*app_->add_subcommand(name, says)};
}

Argument Command::option(const std::string& name, std::string& value, const std::string& says)
{
    return Argument{*app_->add_option(name, value, says)};
}

Argument Command::flag(const std::string& name, bool& value, const std::string& says)
{
    return Argument{*app_->add_flag(name, value, says)};
}

void Command::callback(std::function<void()> act) { app_->callback(std::move(act)); }

bool parse(const std::string& says, const std::function<void(Command)>& add, int count, const char* const* words)
{
    CLI::App app{says, "cotter"};
    app.require_subcommand(0, 1); // `help record`: the second word is no command
    add(Command{app});
    try {
        app.parse(count, words);
        return true;
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() != 0)
            throw BadInput{std::string{error.what()} + "; `cotter help` lists what is accepted"};
        const auto picked = app.get_subcommands();
        std::cout << (picked.empty() ? app : *picked.front()).help("", CLI::AppFormatMode::Normal);
        return false;
    }
}

} // namespace cotter::cli
