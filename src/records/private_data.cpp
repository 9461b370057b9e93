#include "private_data.hpp"

namespace cotter::records {

std::string private_subject(const Entry& entry) { return entry.kind + " " + entry.about; }

std::vector<PrivateRow> set_apart(Entry& entry, const Kind& kind)
{
    std::vector<PrivateRow> rows;
    for (const std::string& field : private_fields(kind)) {
        if (!entry.body.contains(field) || !entry.body[field].is_string())
            continue;
        rows.push_back({private_subject(entry), field, new_salt(), entry.body[field].get<std::string>()});
        entry.body[field] = rows.back().hash();
    }
    return rows;
}

} // namespace cotter::records
