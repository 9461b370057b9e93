#pragma once

// What takes long at the screens, done between two of their frames: the opening check, the day's first copy after it,
// and another when somebody has stood down.

#include "daily_backup.hpp"
#include "window.hpp"

#include <string>

namespace cotter::cli {

class LongWork {
public:
    LongWork(Session& session, std::string path) : session_{session}, path_{std::move(path)} {}

    ui::Between do_it(const ui::Wait& wait); // what is due
    void day_ends() { copy_ = Copy::owed; }  // the copy waits until the receipt was seen
    void day_is_over();
    void finish(); // the copy that is owed, without a window
    ui::Notice notice() const { return {wrong_.why, wrong_.mend}; }

private:
    enum class Copy { none, owed, due };
    ui::Between check(const ui::Wait& wait);
    void copy(const records::Watch& watch);

    Session& session_;
    std::string path_;
    bool checked_ = false;
    Copy copy_ = Copy::none;
    NotCopied wrong_;
};

} // namespace cotter::cli
