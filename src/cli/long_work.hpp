#pragma once

// What takes long at the screens, done between two of their frames: the opening check, and the day's copy after it and
// at a day's end.

#include "session.hpp"
#include "window.hpp"

#include <string>

namespace cotter::cli {

class LongWork {
public:
    LongWork(Session& session, std::string path) : session_{session}, path_{std::move(path)} {}

    ui::Between do_it(const ui::Wait& wait); // what is owed
    void owe_a_copy() { owes_copy_ = true; }
    const std::string& notice() const { return notice_; } // why there is no copy; "": there is one, or none is wanted

private:
    ui::Between check(const ui::Wait& wait);
    void copy(const ui::Wait& wait);

    Session& session_;
    std::string path_;
    bool owes_check_ = true, owes_copy_ = true;
    std::string notice_;
};

} // namespace cotter::cli
