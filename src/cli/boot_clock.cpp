#include "boot_clock.hpp"

#include "numbers.hpp"

#include <ctime>
#include <fstream>

namespace cotter::cli {

desk::ClockFacts clock_facts()
{
    desk::ClockFacts facts;
    facts.wall = now();
    facts.built = rules::Instant{COTTER_BUILT_AT};
    std::ifstream{"/proc/sys/kernel/random/boot_id"} >> facts.boot;
    timespec since{};
    if (clock_gettime(CLOCK_BOOTTIME, &since) == 0)
        facts.boot_seconds = since.tv_sec;
    return facts;
}

} // namespace cotter::cli
