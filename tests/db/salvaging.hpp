#pragma once

// A book to be damaged and salvaged, and what must hold of what is made of it.

#include "books.hpp"
#include "raw.hpp"
#include "salvage.hpp"

#include <algorithm>

namespace cotter::tests {

inline constexpr std::size_t page = 4096;
inline constexpr std::int64_t records_made = 46;
inline const db::NewBook spare{"spare tablet", false, morning + rules::Instant{36'000}, rules::utc_day(morning)};

inline Entry unit(const std::string& id, const std::string& role)
{
    return entry("unit", id,
                 {{"tag", id},
                  {"owner_firm", "Ridgeway (invented)"},
                  {"serial", id},
                  {"model", "m"},
                  {"role", role},
                  {"class", "accessory"},
                  {"owner", "own"}});
}

// Two units, a person, forty pipes and, in the middle of them, a stop: record 25.
inline void make_long_book(const fs::path& path)
{
    const auto store = make_book(path);
    store->append({unit("cl-02", "attachment"), unit("ex-21", "machine"), person("hallam", "O. Hallam (invented)"),
                   entry("coupled", "ex-21", {{"attachment", "cl-02"}})});
    for (int i = 0; i < 40; ++i) {
        if (i == 19)
            store->append({entry("stop_called", "cl-02", {{"why", "Jaw looks bent"}}, 600)});
        store->append({pipe("sk-" + std::to_string(i), 690 + i, 120 + 60 * i)});
    }
}

struct Made {
    Scratch scratch;
    fs::path book = scratch.book(), again = scratch.folder() / "again.db";
    db::Salvaged salvage() const { return db::Store::salvage(book, again, spare); }
    void damage(const std::string& sql) const
    {
        Raw raw{book};
        raw.drop_triggers();
        raw.run(sql);
    }
};

struct Long : Made {
    Long() { make_long_book(book); }
};

inline bool is_lost(const std::vector<db::Lost>& lost, const records::Record& record)
{
    return std::any_of(lost.begin(), lost.end(), [&](const db::Lost& each) {
        return each.device == record.device && each.first <= record.seq && (each.last == 0 || record.seq <= each.last);
    });
}

// "" if the new book is sound, holds each old record as it was or names it as lost, and then stops every unit.
inline std::string wrong_with(const Made& made, const db::Salvaged& salvaged,
                              const std::vector<records::Record>& before)
{
    const auto store = db::Store::open(made.again);
    store->check_on_opening();
    if (store->state().damaged || !store->verify().damaged.empty())
        return "the new book is damaged";
    for (const records::Record& each : before) {
        const auto kept = store->find(each.hash);
        if (kept ? kept->bytes != each.bytes || kept->sig != each.sig : !is_lost(salvaged.lost, each))
            return "record " + std::to_string(each.seq) + " is neither kept nor named";
    }
    if (salvaged.lost.empty())
        return "";
    for (const char* unit : {"cl-02", "ex-21"})
        if (store->facts_about("stop", unit).empty() && store->fact("unit", unit))
            return std::string{unit} + " is not stopped";
    return "";
}

inline std::vector<records::Record> all_of(const fs::path& book) { return db::Store::open(book)->newest("", 1000); }

} // namespace cotter::tests
