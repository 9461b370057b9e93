#pragma once

// Everything that SQLite does to its files, in order: a layer over the system's own that notes each write, cut, sync
// and removal, and can fail at the n-th of them.

#include <cstdint>
#include <string>
#include <vector>

namespace cotter::tests {

struct Io {
    enum class What { write, truncate, sync, remove, rename, acknowledged } what;
    std::string path;
    std::int64_t offset = 0; // of a write; the new size of a truncation; the last record's number where acknowledged
    std::string bytes;       // of a write; the new path of a rename
};

class IoLog {
public:
    // Becomes the default of every store opened from now on. Once a program.
    static IoLog& install();

    std::vector<Io> take();             // what was noted since the last time
    void acknowledge(std::int64_t seq); // the program was told that its records up to this one are kept
    void note(Io io);

    // The n-th operation from now (0: the next) fails, and all after it if `for_good`; -1: none.
    void fail_at(long n, bool for_good);
    bool fails(); // asked before each operation
    bool has_failed() const { return failed_; }

    bool notes = true; // off: nothing is kept of what is done from now on
    bool forgets_syncs = false; // a sync is reported done and not noted: what a wrong commit order comes to

private:
    IoLog() = default;
    std::vector<Io> noted_;
    long left_ = -1;
    bool for_good_ = false, failed_ = false;
};

} // namespace cotter::tests
