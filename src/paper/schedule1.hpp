#pragma once

// The particulars of a report of thorough examination, and which of them are missing.
// Source: LOLER 1998 (SI 1998/2307) Schedule 1; paragraphs 8(d) to 11 from memory of it.

#include "form.hpp"

#include <string>
#include <vector>

namespace cotter::paper {

struct Particular {
    std::string paragraph, words, value; // value: as it was recorded, "" where it was not
    std::string missing;                 // "" if it is there or need not be; else why it is not
};

// In the order of the Schedule. `body` is an examination report's, its private values as they read.
std::vector<Particular> schedule_1(const records::Json& body);

// "para. 1 name and address of the employer (not yet typed); ..."; "" if nothing is missing.
std::string missing_of(const std::vector<Particular>& particulars);

} // namespace cotter::paper
