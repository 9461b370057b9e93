#pragma once

#include <functional>
#include <istream>
#include <memory>
#include <string>

namespace cotter::cli {

// Opens a file of text; BadInput naming it and what is accepted if it cannot be read, or is a folder.
std::unique_ptr<std::istream> open_text(const std::string& file, const std::string& accepted);

// Calls `each` with number and text of every line that is not blank, of the file or, for "" and "-", of standard input.
void for_each_line(const std::string& file, const std::string& accepted,
                   const std::function<void(std::size_t number, const std::string& line)>& each);

} // namespace cotter::cli
