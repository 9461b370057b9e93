#pragma once

// What every command that writes is given, and the book opened for it.

#include "session.hpp"

#include <string>

namespace cotter::cli {

struct Writer {
    std::string store, as, pin_file;
    Given at{"--at", ""};
    bool json = false;
};

// --store, --as, --pin-file, --at and --json; `who` says whose id --as is.
void add_writer_options(Command command, Writer& writer, const char* who);

// The clock is watched before anything else is written, the try of a PIN included: it is compared with the newest
// record.
Session open_to_write(const Writer& writer);

} // namespace cotter::cli
