// Rates and ratios of this machine. Disks drift, so only ratios taken in one run mean anything.

#include "bench.hpp"

#include <cstdio>
#include <exception>
#include <fstream>
#include <thread>

namespace {

std::string processor()
{
    std::ifstream in{"/proc/cpuinfo"};
    for (std::string line; std::getline(in, line);)
        if (line.starts_with("model name"))
            return line.substr(line.find(": ") + 2);
    return "processor not known";
}

} // namespace

int main(int count, char** arguments)
try {
    if (count < 2 || count > 3) {
        std::puts("bench QUESTIONS.jsonl [FOLDER]: a file of questions, and a folder on the disk to be timed");
        return 2;
    }
    std::printf("%u cores, %s\n", std::thread::hardware_concurrency(), processor().c_str());
    cotter::bench::time_decisions(arguments[1]);
    cotter::bench::time_signing_off(count > 2 ? std::filesystem::path{arguments[2]}
                                              : std::filesystem::temp_directory_path());
    return 0;
} catch (const std::exception& e) {
    std::puts(e.what());
    return 2;
}
