#pragma once

#include "bundle_form.hpp"
#include "bundle_tables.hpp"

namespace cotter::paper {

// csv/KIND.csv for each kind that a bundle has, and the findings and answers a row each. RFC 4180.
records::Files csv_files(const Readable& readable, const Records& all);

} // namespace cotter::paper
