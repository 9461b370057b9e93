#pragma once

// All that can be read of a damaged store file: by the table's order from both ends, by its indices, and place by
// place. A record is taken if its device signed it; where it stood does not matter.

#include "known_gaps.hpp"
#include "private_data.hpp"
#include "record.hpp"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace cotter::db {

class FoundRecords {
public:
    // `file` is a copy that may be written; `own_key` the device's, if it is there. StoreError if the file is no
    // SQLite file any more, or a newer Cotter's.
    FoundRecords(const std::filesystem::path& file, std::optional<records::DeviceKey> own_key);

    bool is_empty() const { return kept_.empty(); }
    void for_each(const std::function<void(const records::Record&)>& visit) const; // by device and number
    std::string newest_device() const;                                             // of the newest record

    // Numbers that are missing, but for those that a record kept names as lost already. Where no seal says which
    // records were the last, an end of each device may be missing too.
    std::vector<Lost> lost() const;

    bool is_cut() const { return !mark_.empty() && own_key_ && !is_end_sealed(); } // says the seal

    const std::vector<records::PrivateRow>& private_rows() const { return private_rows_; }
    bool all_private_read() const { return all_private_read_; }

private:
    using Place = std::pair<std::string, std::int64_t>; // device and number
    struct Found {
        std::string bytes, sig, hash, prev;
        std::int64_t at;
    };
    using Numbers = std::map<std::int64_t, const Found*>;

    bool each_row(const char* sql, const std::function<void(SQLite::Statement&)>& visit); // false: not all was read
    void read_rows();
    void read_places();
    void take(SQLite::Statement& row);
    void look_at(const Place& place);
    void look_into_gaps();
    void keep_what_is_signed();
    void know_keys();
    bool is_good(const Found& found) const;
    void drop_what_does_not_follow();
    void read_private();
    void read_seal();
    bool is_end_sealed() const;
    std::map<std::string, Numbers> by_device() const;
    void add_gaps(const std::string& device, const Numbers& numbers, std::vector<Lost>& lost) const;
    bool is_named(const Lost& gap) const;

    SQLite::Database database_;
    std::optional<records::DeviceKey> own_key_;
    std::multimap<Place, Found> candidates_; // as their bytes say, signed or not
    std::map<Place, Found> kept_;
    std::set<Place> places_;                  // that an index knows
    std::map<std::string, std::string> keys_; // public, by device
    std::vector<Lost> named_;                 // lost already
    std::vector<records::PrivateRow> private_rows_;
    bool all_private_read_ = false;
    std::string sum_, mark_;
};

} // namespace cotter::db
