#pragma once

// Pages for the wall and the file: this site, this day; the due board; a receipt of the book.

#include "document.hpp"

#include "receipt.hpp"
#include "site_day.hpp"

#include <string>
#include <vector>

namespace cotter::paper {

std::string day_pdf(const TitleBlock& block, const desk::SiteDay& day, const records::Book& book);
std::string board_pdf(const TitleBlock& block, const std::vector<desk::BoardRow>& rows, const records::Book& book,
                      rules::Day today);
std::string receipt_pdf(const TitleBlock& block, const records::Receipt& receipt, const std::string& to);

} // namespace cotter::paper
