#pragma once

// How columns are said in a table of them: what the cells hold, name, field, what is plausible, other names.

#include "column.hpp"

namespace cotter::desk {

using Names = std::vector<std::string>;

Column text(const char* name, std::string field, Names also = {});
Column yes_no(const char* name, std::string field, Names also = {});
Column day(const char* name, std::string field, Names also = {});
Column list(const char* name, std::string field, Names choices, Names also = {});
Column steps(const char* name, std::string field);
Column needed(const char* name, std::string field, Names roles);
Column not_needed(const char* name, std::string field, Names roles);

// What may be chosen stands in the kind's schema; `in` is the list whose items have the field.
Column choice(const char* name, std::string field, const char* kind, Names also = {}, const char* in = "");

Column count(const char* name, std::string field, Plausible plausible, Names also = {});
Column months(const char* name, std::string field, Plausible plausible, Names also = {});
Column percent(const char* name, std::string field, Plausible plausible, Names also = {});
Column density(const char* name, std::string field, Plausible plausible, Names also = {});
Column angle(const char* name, std::string field, Plausible plausible, Names also = {});
Column load(const char* name, std::string field, Plausible plausible, Names also = {});   // rounded up
Column rating(const char* name, std::string field, Plausible plausible, Names also = {}); // rounded down
Column length(const char* name, std::string field, Plausible plausible, Names also = {});
Column sides(const char* name, std::string field, Plausible plausible);
Column in_metres(Column column); // as an export writes it

// Read and taken into the barrel.
Column wall_thickness(const char* name, std::string field, Plausible plausible, Names also);

Plausible or_none(Plausible plausible); // 0 says that there is none

} // namespace cotter::desk
