#pragma once

// The words that a screen may show in another language: those of its catalogue, and those of the book.

#include "book.hpp"
#include "language.hpp"

#include <set>
#include <string>
#include <vector>

namespace cotter::tests {

using Vocabulary = std::set<std::string>; // in small letters, three and more, ASCII

const Vocabulary& words_of(words::Language language); // of its catalogue's translations, and of all languages' names
Vocabulary words_of(const records::Book& book);       // what people have written in its records

// Those of the text that none of them has, with a space between.
std::string unknown_words(const std::string& text, const std::vector<const Vocabulary*>& known);

} // namespace cotter::tests
