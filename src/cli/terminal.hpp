#pragma once

// Where the program stands; what a person at a terminal does and sees while something long is done.

#include <filesystem>

namespace cotter::cli {

std::filesystem::path folder_of_program();

bool shows_to_a_person(); // standard error is a terminal

// While it lives Ctrl-C is noted and ends nothing; afterwards it does again what it did before.
class Interrupts {
public:
    Interrupts();
    ~Interrupts();
    Interrupts(const Interrupts&) = delete;
    Interrupts& operator=(const Interrupts&) = delete;

    bool asked() const;
};

} // namespace cotter::cli
