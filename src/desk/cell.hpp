#pragma once

// From the text of a cell to what a record holds, and back.

#include "column.hpp"
#include "question_form.hpp"

#include <string>

namespace cotter::desk {

using records::Json;

// What stands in the thing, as an export has it; "" where it is not known.
std::string text_of(const Column& column, const Json& thing);

// Puts what the cell says into the thing; an empty cell takes away what stood there. A text as an export has it leaves
// everything as it is. FormError: what stands in the cell, and what is accepted.
void put(Json& thing, const Column& column, const Unit& unit, const std::string& text);

// What is accepted in the column's cells, in that unit.
std::string accepted_in(const Column& column, const Unit& unit);

// Without blanks at its ends, and without the apostrophe that keeps a spreadsheet from taking it for a formula.
std::string plain(std::string_view cell);

} // namespace cotter::desk
