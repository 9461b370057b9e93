#pragma once

// What every command shares: how it is added, where it prints, and its exit codes.

#include "bad_input.hpp"
#include "form.hpp"

#include <CLI/CLI.hpp>

#include <functional>
#include <iostream>
#include <string>

namespace cotter::cli {

using records::Json;

inline constexpr int done = 0;      // done, in date, fits or may lift
inline constexpr int negative = 1;  // do not lift, out of date, does not fit, off the chart, damage found
inline constexpr int bad_input = 2; // one line on standard error, nothing changed

// The command that was chosen, to be run once everything is parsed.
using Chosen = std::function<int()>;

void add_due(CLI::App& app, Chosen& chosen);
void add_weigh(CLI::App& app, Chosen& chosen);
void add_sling(CLI::App& app, Chosen& chosen);
void add_reach(CLI::App& app, Chosen& chosen);
void add_thread(CLI::App& app, Chosen& chosen);
void add_judge(CLI::App& app, Chosen& chosen);
void add_lift(CLI::App& app, Chosen& chosen);
void add_record(CLI::App& app, Chosen& chosen);
void add_list(CLI::App& app, Chosen& chosen);
void add_receipt(CLI::App& app, Chosen& chosen);
void add_backup(CLI::App& app, Chosen& chosen);
void add_page(CLI::App& app, Chosen& chosen);
void add_witness(CLI::App& app, Chosen& chosen);
void add_pin(CLI::App& app, Chosen& chosen);
void add_salvage(CLI::App& app, Chosen& chosen);
void add_plan(CLI::App& app, Chosen& chosen);
void add_board(CLI::App& app, Chosen& chosen);
void add_bundle(CLI::App& app, Chosen& chosen);
void add_day(CLI::App& app, Chosen& chosen);
void add_import(CLI::App& app, Chosen& chosen);
void add_export(CLI::App& app, Chosen& chosen);
void add_verify(CLI::App& app, Chosen& chosen);
void add_screens(CLI::App& app, Chosen& chosen);
void add_help(CLI::App& app, Chosen& chosen);

// One object on a line as JSON, or its fields a line each for people.
void print(const Json& object, bool as_json, std::ostream& out = std::cout);

// Without line ends and other characters that a terminal acts on.
std::string one_line(std::string text);

// The whole program, without the process: arguments in, exit code out.
int run(int count, const char* const* arguments);

} // namespace cotter::cli
