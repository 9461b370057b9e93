#pragma once

// How a field of a record is read: its name, its unit, its value in words.

#include "book.hpp"
#include "form.hpp"

#include <string>

namespace cotter::ui {

std::string name_of(const records::Json& schema, const std::string& field); // "Depth", from the kind's schema

// "3000 mm", "yes", a person's name, "3 lines"; "" for what is not known.
std::string value_in_words(const records::Book& book, const records::Json& schema, const std::string& field,
                           const records::Json& value);

// Of a plan: "Mon 30 Nov to Fri 18 Dec".
std::string days_in_words(const records::Json& body);

// Those fields of a body that a schema has.
records::Json fields_of(const records::Json& schema, const records::Json& body);

// What may be chosen for a field that names something of the book: ids, newest facts last in their own order.
std::vector<std::string> ids_for(const records::Book& book, const records::Json& schema);

// What a person reads for such an id.
std::string id_in_words(const records::Book& book, const records::Json& schema, const std::string& id);

} // namespace cotter::ui
