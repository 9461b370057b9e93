#pragma once

// One field of a record asked for: a number on a pad, a choice, or a text for the keyboard.

#include "choice.hpp"
#include "date_wheel.hpp"
#include "form.hpp"
#include "number_pad.hpp"
#include "outside.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

class FormField {
public:
    // Schema and value as in the record; null where nothing is known yet.
    FormField(const Outside& outside, const records::Json& schema, std::string field, const records::Json& value);

    enum class Left { nothing, as_it_was, changed };
    Left draw(Sheet& sheet, const std::string& person);
    const records::Json& value() const { return value_; } // null: not known

private:
    Left choose(Sheet& sheet, const std::string& person);
    Left number(Sheet& sheet);
    Left date(Sheet& sheet);
    Left text(Sheet& sheet, const std::string& person);
    Left take(records::Json value);

    struct Option {
        records::Json value;
        std::string words;
    };
    std::vector<Option> options() const;
    std::string range_in_words() const;

    const Outside& outside_;
    const records::Json& schema_;
    std::string field_, text_, said_;
    records::Json value_;
    NumberPad pad_;
    std::optional<DateWheel> wheel_;
    std::size_t turned_ = 0;
};

} // namespace cotter::ui
