#pragma once

// What every command shares: how it is added, where it prints, and its exit codes.

#include "arguments.hpp"
#include "bad_input.hpp"
#include "form.hpp"

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

void add_due(Command app, Chosen& chosen);
void add_weigh(Command app, Chosen& chosen);
void add_sling(Command app, Chosen& chosen);
void add_reach(Command app, Chosen& chosen);
void add_thread(Command app, Chosen& chosen);
void add_judge(Command app, Chosen& chosen);
void add_lift(Command app, Chosen& chosen);
void add_record(Command app, Chosen& chosen);
void add_list(Command app, Chosen& chosen);
void add_receipt(Command app, Chosen& chosen);
void add_backup(Command app, Chosen& chosen);
void add_page(Command app, Chosen& chosen);
void add_witness(Command app, Chosen& chosen);
void add_pin(Command app, Chosen& chosen);
void add_salvage(Command app, Chosen& chosen);
void add_plan(Command app, Chosen& chosen);
void add_laid(Command app, Chosen& chosen);
void add_board(Command app, Chosen& chosen);
void add_bundle(Command app, Chosen& chosen);
void add_day(Command app, Chosen& chosen);
void add_import(Command app, Chosen& chosen);
void add_export(Command app, Chosen& chosen);
void add_verify(Command app, Chosen& chosen);
void add_screens(Command app, Chosen& chosen);
void add_help(Command app, Chosen& chosen);

// One object on a line as JSON, or its fields a line each for people.
void print(const Json& object, bool as_json, std::ostream& out = std::cout);

// Without line ends and other characters that a terminal acts on.
std::string one_line(std::string text);

// The whole program, without the process: arguments in, exit code out.
int run(int count, const char* const* arguments);

} // namespace cotter::cli
