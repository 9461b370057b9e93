#pragma once

// The inspector's bundle: one unit and a period of days, as a PDF, as tables in CSV, and as the records themselves.

#include "bundle_tables.hpp"
#include "document.hpp"

#include "bundle_form.hpp"

namespace cotter::paper {

struct BundleFacts {
    TitleBlock block;
    records::Receipt receipt; // of the book that it is drawn from
};

// Every file of the folder but the list of hashes.
records::Files bundle_files(const records::Book& book, const desk::UnitPeriod& period, const BundleFacts& facts);

} // namespace cotter::paper
