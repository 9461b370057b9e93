#pragma once

#include "finding.hpp"

#include <array>
#include <string_view>

namespace cotter::words {

using rules::Code;

struct FindingWords {
    Code code;
    std::string_view headline, detail, clears, button, source;
};

const FindingWords& words_of(Code code);

} // namespace cotter::words
