#pragma once

#include <stdexcept>

namespace cotter::cli {

// A field, flag, file or record that is not accepted. One line: what is wrong and what is accepted.
class BadInput : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

} // namespace cotter::cli
