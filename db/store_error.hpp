#pragma once

#include <stdexcept>
#include <string>

namespace cotter::db {

// The store or the disk failed. The text is one line that names the file and what helps.
class StoreError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

// The file is a book, but cannot be read as one any more.
class DamagedError : public StoreError {
public:
    using StoreError::StoreError;
};

// Somebody told long work to stop; nothing is wrong.
class StoppedError : public StoreError {
public:
    using StoreError::StoreError;
};

} // namespace cotter::db
