#pragma once

#include "document.hpp"
#include "session.hpp"

namespace cotter::cli {

// The title block of what is printed now. `as` is who prints it, an id or "".
paper::TitleBlock title_block(const records::Book& book, const std::string& title, const std::string& site,
                              const std::string& as, rules::Instant at);

} // namespace cotter::cli
