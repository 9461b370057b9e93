#pragma once

// Yard: calls from sites, the oldest without an answer on top, and their answers.

#include "outside.hpp"
#include "phrases.hpp"
#include "read_page.hpp"

#include "calls.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class YardCalls {
public:
    explicit YardCalls(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look();
    void who(Sheet& sheet);
    void answer(Sheet& sheet);

    const Outside& outside_;
    std::string looked_of_, person_;
    std::vector<desk::Call> calls_;
    std::vector<ReadLine> lines_;
    ReadPage reading_;
    std::size_t turned_ = 0;
    std::optional<desk::Call> answered_;
    std::optional<Phrases> what_;
};

} // namespace cotter::ui
