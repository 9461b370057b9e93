#include "terminal.hpp"

#include <csignal>

#include <unistd.h>

namespace cotter::cli {

namespace {

volatile std::sig_atomic_t interrupted = 0;
void (*before)(int) = SIG_DFL;

void note(int) { interrupted = 1; }

} // namespace

std::filesystem::path folder_of_program() { return std::filesystem::read_symlink("/proc/self/exe").parent_path(); }

bool shows_to_a_person() { return isatty(STDERR_FILENO) == 1; }

Interrupts::Interrupts()
{
    interrupted = 0;
    before = std::signal(SIGINT, note);
}

Interrupts::~Interrupts() { std::signal(SIGINT, before); }

bool Interrupts::asked() const { return interrupted != 0; }

} // namespace cotter::cli
