#include "import.hpp"

#include "accept.hpp"
#include "entitled.hpp"
#include "foreseen.hpp"
#include "import_checks.hpp"
#include "import_diff.hpp"
#include "import_ids.hpp"
#include "import_parts.hpp"
#include "import_sheet.hpp"
#include "kinds.hpp"

namespace cotter::desk {

using records::FormError;

namespace {

struct Group {
    std::string id;
    std::vector<std::size_t> rows;
};

class Importing {
public:
    Importing(const Book& book, const Hand& hand, const Shape& shape, std::string_view table)
        : book_{book}, foreseen_{book}, hand_{hand}, shape_{shape}, sheet_{shape, table}
    {
        if (shape.what == What::units)
            unit_ids_.emplace(book);
    }

    Import run(const Progress& progress)
    {
        std::size_t rows = 0;
        if (sheet_.is_headed())
            for (const Group& group : groups()) {
                take(group);
                if (!progress(rows += group.rows.size(), sheet_.rows())) {
                    import_ = {};
                    import_.cancelled = true;
                    return std::move(import_);
                }
            }
        import_.problems = sheet_.take_problems();
        if (!import_.problems.empty())
            import_.entries.clear();
        return std::move(import_);
    }

private:
    const Column& id_column() const { return shape_.own.front(); }

    std::vector<Group> groups()
    {
        std::vector<Group> found;
        std::map<std::string, std::size_t> places;
        std::string above;
        for (std::size_t row = 0; row < sheet_.rows(); ++row) {
            const std::string id = id_of(row, above);
            if (id.empty())
                continue;
            above = id;
            const auto [place, is_new] = places.try_emplace(id, found.size());
            if (is_new)
                found.push_back({id, {row}});
            else if (!shape_.parts.empty())
                found[place->second].rows.push_back(row);
            else
                sheet_.say(row, &id_column(),
                           records::shown(id) + " stands on line " +
                               std::to_string(sheet_.line(found[place->second].rows.front())) +
                               " already; once is accepted");
        }
        return found;
    }

    // Below the first row of a thing with parts the id may be left out. "" once a problem is said.
    std::string id_of(std::size_t row, const std::string& above)
    try {
        const std::string id = sheet_.cell(row, id_column());
        if (unit_ids_)
            return unit_id(row, id);
        if (!id.empty())
            return id;
        if (shape_.parts.empty() || above.empty())
            throw FormError{"an id is missing; each of the " + shape_.name + " needs one"};
        return above;
    } catch (const FormError& e) {
        sheet_.say(row, &id_column(), e.what());
        return "";
    }

    std::string unit_id(std::size_t row, const std::string& id)
    {
        const std::string owner = own_cell(row, "/owner_firm"), serial = own_cell(row, "/serial");
        if (id.empty())
            return unit_ids_->id_of(owner, serial, own_cell(row, "/tag"));
        unit_ids_->check(id, owner, serial);
        return id;
    }

    const Column* column_of(const std::string& field) const
    {
        for (const Column* each : columns_of(shape_))
            if (each->field == field)
                return each;
        return nullptr;
    }

    std::string own_cell(std::size_t row, const std::string& field) const
    {
        return sheet_.cell(row, *column_of(field));
    }

    void take(const Group& group)
    {
        const std::size_t problems = sheet_.problems().size();
        const Json before = thing_in(book_, shape_, group.id);
        Json now = read(group, before);
        if (known_in(now) != known_in(before))
            for (const char* worked_out :
                 {"worksheet", "results", "pipe_sizes", "gear_planned"}) // no longer of these figures
                now.erase(worked_out);
        for (const Fault& each : faults_in(shape_, before, now))
            sheet_.say(group.rows.front(), column_of(each.field), each.why);
        if (sheet_.problems().size() > problems)
            return;
        std::vector<Entry> entries = entries_for(hand_, shape_, before, now);
        for (Entry& each : entries)
            if (!is_accepted(group, each))
                return;
        add(group, before, now, std::move(entries));
    }

    Json read(const Group& group, const Json& before)
    {
        Json now = before;
        now["id"] = group.id;
        for (const Column& column : shape_.own)
            if (&column != &id_column())
                read_own(now, group, column);
        if (shape_.what == What::pipes) {
            const auto says = [&](const std::string& field) { return !own_cell(group.rows.front(), field).empty(); };
            for (const Fault& each : take_wall(now, says))
                sheet_.say(group.rows.front(), column_of(each.field), each.why);
        }
        read_parts(sheet_, shape_, group.rows, now);
        return now;
    }

    // What is the thing's own stands on its first row; below it may stand again.
    void read_own(Json& now, const Group& group, const Column& column)
    {
        sheet_.put(now, group.rows.front(), column);
        const std::string first = sheet_.cell(group.rows.front(), column);
        for (const std::size_t row : group.rows)
            if (const std::string text = sheet_.cell(row, column); !text.empty() && text != first)
                sheet_.say(row, &column,
                           records::shown(text) + " is not accepted; what line " +
                               std::to_string(sheet_.line(group.rows.front())) + " says of " +
                               records::shown(group.id) + ", or nothing, is");
    }

    // As the book will be asked when it is written.
    bool is_accepted(const Group& group, Entry& entry)
    try {
        records::check_body(*records::find_kind(entry.kind), entry.body);
        accept(foreseen_, entry);
        foreseen_.add(entry);
        return true;
    } catch (const FormError& e) {
        say_refused(group, entry.kind == "admission" ? "/admission/" : "/", e.what());
        return false;
    }

    // "machines[1]: ...", "serial is missing; ...": the field's column is named instead of it, where there is one.
    void say_refused(const Group& group, const std::string& within, const std::string& why)
    {
        const auto end = why.find_first_of("[: ");
        const Column* column = column_of(within + why.substr(0, end));
        const auto rest = why.find_first_not_of(": ", why.find_first_of(": "));
        const bool named = column && sheet_.has(*column) && rest != std::string::npos;
        sheet_.say(group.rows.front(), named ? column : nullptr, named ? why.substr(rest) : why);
    }

    void add(const Group& group, const Json& before, const Json& now, std::vector<Entry> entries)
    {
        const std::size_t line = sheet_.line(group.rows.front());
        const Outcome outcome = before.empty() ? Outcome::added : entries.empty() ? Outcome::same : Outcome::changed;
        import_.things.push_back({line, group.id, outcome, {}});
        if (outcome == Outcome::changed)
            import_.things.back().changes = changes_between(shape_, before, now);
        for (Entry& each : entries) {
            import_.entries.push_back(std::move(each));
            import_.entry_lines.push_back(line);
        }
    }

    const Book& book_;
    Foreseen foreseen_;
    const Hand& hand_;
    const Shape& shape_;
    Sheet sheet_;
    std::optional<UnitIds> unit_ids_;
    Import import_;
};

} // namespace

Import prepare_import(const Book& book, const Hand& hand, What what, std::string_view table, const Progress& progress)
{
    const Shape& shape = shape_of(what);
    if (hand.by.empty())
        throw FormError{"by: the id of a person is needed"};
    check_entitled(book, entry(hand, shape.kind, "", Json::object())); // said once, not for every row
    return Importing{book, hand, shape, table}.run(progress);
}

} // namespace cotter::desk
