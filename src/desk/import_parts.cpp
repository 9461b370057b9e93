#include "import_parts.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

using Rows = std::vector<std::size_t>;

class Parts {
public:
    Parts(Sheet& sheet, const Shape& shape, const Json& old) : sheet_{sheet}, shape_{shape}
    {
        for (const Json& each : old)
            old_.try_emplace(key_of(shape, each), each);
    }

    Json read(const Rows& rows)
    {
        Json parts = Json::array();
        for (const std::size_t row : rows)
            if (says_something(row))
                if (Json part = read_part(row); is_new(row, part))
                    parts.push_back(std::move(part));
        return parts;
    }

private:
    bool says_something(std::size_t row) const
    {
        return std::any_of(shape_.parts.begin(), shape_.parts.end(),
                           [&](const Column& each) { return !sheet_.cell(row, each).empty(); });
    }

    Json read_part(std::size_t row)
    {
        Json part = as_it_stands(row);
        for (const Column& column : shape_.parts)
            sheet_.put(part, row, column);
        return part;
    }

    // The old part with that key, as an export writes it or in another unit; else nothing.
    Json as_it_stands(std::size_t row)
    {
        std::string key;
        for (std::size_t i = 0; i < shape_.keys; ++i)
            key += (i == 0 ? "" : " ") + sheet_.cell(row, shape_.parts[i]);
        auto found = old_.find(key);
        if (found == old_.end())
            found = old_.find(key_read(row));
        return found == old_.end() ? Json::object() : found->second;
    }

    std::string key_read(std::size_t row)
    {
        Json part = Json::object();
        for (std::size_t i = 0; i < shape_.keys; ++i)
            try {
                sheet_.put_unsaid(part, row, shape_.parts[i]);
            } catch (const records::FormError&) {
                return ""; // said when the whole part is read
            }
        return key_of(shape_, part);
    }

    bool is_new(std::size_t row, const Json& part)
    {
        for (std::size_t i = 0; i < shape_.keys; ++i)
            if (text_of(shape_.parts[i], part).empty()) {
                if (sheet_.cell(row, shape_.parts[i]).empty())
                    sheet_.say(row, &shape_.parts[i], "is missing; each " + shape_.part + " needs it");
                return false;
            }
        const auto [place, is_first] = lines_.try_emplace(key_of(shape_, part), sheet_.line(row));
        if (!is_first)
            sheet_.say(row, &shape_.parts.front(),
                       "this " + shape_.part + " stands on line " + std::to_string(place->second) +
                           " already; once is accepted");
        return is_first;
    }

    Sheet& sheet_;
    const Shape& shape_;
    std::map<std::string, Json> old_;
    std::map<std::string, std::size_t> lines_;
};

Json sorted(Json parts)
{
    std::sort(parts.begin(), parts.end());
    return parts;
}

Json known_parts(const Json& parts)
{
    Json known = Json::array();
    for (const Json& each : parts)
        known.push_back(known_in(each));
    return sorted(std::move(known));
}

} // namespace

void read_parts(Sheet& sheet, const Shape& shape, const Rows& rows, Json& thing)
{
    if (!sheet.has_parts())
        return;
    const Json old = parts_of(shape, thing);
    Json parts = Parts{sheet, shape, old}.read(rows);
    if (known_parts(parts) != known_parts(old)) // their order says nothing
        thing[Json::json_pointer{shape.list}] = std::move(parts);
}

} // namespace cotter::desk
