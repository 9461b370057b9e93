#pragma once

// Site of a book that has just been begun: what comes first, one step after the other, to the first check.

#include "admitting.hpp"
#include "outside.hpp"
#include "read_page.hpp"
#include "record_page.hpp"

#include "first_steps.hpp"

#include <optional>

namespace cotter::ui {

class FirstSteps {
public:
    explicit FirstSteps(const Outside& outside) : outside_{outside} {}
    bool has_the_glass() const { return admitting_ || record_ || !able_.empty(); } // while a step is done
    TouchScroll& scroll() { return reading_.scroll(); }
    void draw_page(Sheet& sheet);
    void list(Sheet& sheet, const Box& area);

private:
    void begin(desk::FirstStep::Kind kind);
    void begin_unit(const char* role, const char* of_class);
    void admit();
    void write_sheets();
    void ask_who(Sheet& sheet); // of those who may, then it is signed

    const Outside& outside_;
    ReadPage reading_;
    std::vector<std::string> able_; // people who may do what was begun; empty: nothing is asked
    std::function<void(const std::string& by)> then_;
    std::size_t turned_ = 0;
    std::optional<Admitting> admitting_;
    std::optional<RecordPage> record_;
};

} // namespace cotter::ui
