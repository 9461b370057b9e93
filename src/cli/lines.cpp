#include "lines.hpp"

#include "command.hpp"

#include <filesystem>
#include <fstream>

namespace cotter::cli {

namespace {

void for_each_line(std::istream& in, const std::function<void(std::size_t, const std::string&)>& each)
{
    std::string line;
    for (std::size_t number = 1; std::getline(in, line); ++number)
        if (line.find_first_not_of(" \t\r") != std::string::npos)
            each(number, line);
}

} // namespace

std::unique_ptr<std::istream> open_text(const std::string& file, const std::string& accepted)
{
    auto in = std::make_unique<std::ifstream>(file);
    if (std::filesystem::is_directory(file) || !*in)
        throw BadInput{file + ": cannot be read; " + accepted + " is accepted"};
    return in;
}

void for_each_line(const std::string& file, const std::string& accepted,
                   const std::function<void(std::size_t, const std::string&)>& each)
{
    if (file.empty() || file == "-")
        return for_each_line(std::cin, each);
    for_each_line(*open_text(file, accepted), each);
}

} // namespace cotter::cli
