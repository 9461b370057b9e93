#pragma once

// A book in memory of records that a device of its own signed: all of it invented.

#include "local_time.hpp"
#include "memory_book.hpp"
#include "receipt.hpp"

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace cotter::tests {

class SignedBook {
public:
    using Json = records::Json;

    SignedBook() : key_{records::DeviceKey::from_seed(std::string(64, '7'))}
    {
        add("device", key_.device(), {{"name", "test tablet"}, {"public_key", key_.public_hex()}, {"sample", true}},
            "2026-10-01T05:00:00Z");
    }

    // Gives the record's hash. `after` is what the book itself would put there.
    std::string add(const std::string& kind, const std::string& about, const Json& body,
                    const std::string& at = "2026-11-25T07:00:00Z", const std::string& who = "farrow",
                    const std::vector<std::string>& roles = {})
    {
        records::Entry entry;
        entry.kind = kind;
        entry.about = about;
        entry.who = entry.by = who;
        entry.how = "name only";
        entry.roles = roles;
        entry.body = body;
        entry.at = *desk::parse_instant(at);
        entry.day = rules::utc_day(entry.at);
        records::Record draft;
        draft.entry = entry;
        const auto find = [this](const std::string& hash) { return find_record(hash); };
        for (const auto& fact : touched_by(draft, find))
            if (!fact.key.empty())
                for (const std::string& each : heads_of(touching_[fact]))
                    entry.after.push_back(each);
        const records::Record record = sign(entry, key_, head_);
        head_ = {record.seq, record.hash};
        for (const auto& fact : touched_by(record, find))
            touching_[fact].push_back(record);
        records_.push_back(record);
        return record.hash;
    }

    desk::MemoryBook book() const
    {
        records::BookState state;
        state.sample = state.checked = true;
        state.device = key_.device();
        state.head = head_;
        return {records_, state, [](const std::string& subject, const std::string&) {
                    return std::optional{subject.substr(subject.find(' ') + 1) + " (invented)"};
                }};
    }

    records::Receipt receipt() const { return make_receipt(key_, head_, rules::Instant{1'795'593'600}); }
    const records::DeviceKey& key() const { return key_; }
    const std::vector<records::Record>& records() const { return records_; }

private:
    std::optional<records::Record> find_record(const std::string& hash) const
    {
        for (const auto& each : records_)
            if (each.hash == hash)
                return each;
        return std::nullopt;
    }

    records::DeviceKey key_;
    records::Head head_;
    std::vector<records::Record> records_;
    std::map<records::FactKey, std::vector<records::Record>> touching_;
};

// A site with a machine, an attachment on it, its papers and a plan, and this morning's shift.
inline SignedBook site_book()
{
    using Json = records::Json;
    SignedBook book;
    const std::string early = "2026-10-02T06:00:00Z";
    book.add("site", "marsh-lane", {{"name", "Marsh Lane (invented)"}, {"zone", "Europe/London"}}, early, "quill");
    for (const auto& [who, role] :
         {std::pair{"quill", "manager"}, {"hallam", "supervisor"}, {"farrow", "operator"}, {"penrose", "competent"}}) {
        book.add("person", who, {{"name", who}}, early, "quill");
        book.add("admission", who, {{"site", "marsh-lane"}, {"card_seen", true}, {"roles", {role}}}, early, "quill");
    }
    for (const auto& [id, role, item] :
         {std::tuple{"digger", "machine", "hoses"}, {"clasper", "attachment", "marking"}})
        book.add("model", id,
                 {{"name", std::string{id} + " (invented)"},
                  {"role", role},
                  {"adjusts", std::string{role} == "attachment"},
                  {"check_items", {{{"id", item}, {"text", std::string{"Look at "} + item}, {"if_not", "Stop"}}}}},
                 early, "quill");
    for (const auto& [id, tag, role, item_class, model] : {std::tuple{"ex-21", "EX-21", "machine", "machine", "digger"},
                                                           {"cl-02", "CL-02", "attachment", "accessory", "clasper"},
                                                           {"cl-05", "CL-05", "attachment", "accessory", "clasper"}}) {
        book.add("unit", id,
                 {{"tag", tag},
                  {"owner_firm", "Ridgeway (invented)"},
                  {"serial", id},
                  {"model", model},
                  {"role", role},
                  {"class", item_class},
                  {"owner", "own"}},
                 early, "quill");
        book.add("examination_report", std::string{"rep-"} + id,
                 {{"units", {id}},
                  {"identity", id},
                  {"examiner", "kept apart"},
                  {"basis", "six_months"},
                  {"examined", "2026-09-01"},
                  {"report_day", "2026-09-02"},
                  {"latest", "2027-03-01"},
                  {"swl_kg", 3000},
                  {"safe", true},
                  {"full", true},
                  {"particulars", {{"employer", "given"}, {"premises", "lacking"}, {"tests", "not_typed"}}},
                  {"copy", {{"legible", true}, {"here", std::string{id} != "cl-05"}}}},
                 early, "quill");
        book.add("received", id, {{"site", "marsh-lane"}, {"condition", "whole"}}, early, "quill");
    }
    book.add("lift_plan", "plan-1",
             {{"issue", 2},
              {"issued", true},
              {"signed", true},
              {"site", "marsh-lane"},
              {"first_day", "2026-11-01"},
              {"last_day", "2026-12-20"},
              {"places",
               {{{"id", "A"}, {"trench", {{"none", true}}}}, {{"id", "B"}, {"trench", {{"someone_enters", true}}}}}}},
             early, "quill");
    book.add("briefing", "plan-1", {{"issue", 2}, {"person", "hallam"}}, early, "quill");
    book.add("shift", "shift-1",
             {{"site", "marsh-lane"}, {"start", 1'795'590'000}, {"end", 1'795'626'000}, {"last_day", "2026-11-25"}},
             "2026-11-25T07:00:00Z");
    book.add("people_today", "marsh-lane",
             {{"day", "2026-11-25"}, {"roles", {{"supervisor", "hallam"}, {"operator", "farrow"}}}},
             "2026-11-25T07:01:00Z", "hallam");
    book.add("coupled", "ex-21", {{"attachment", "cl-02"}, {"no_hitch", true}}, "2026-11-25T07:02:00Z");
    for (const auto& [unit, item] : {std::pair{"ex-21", "hoses"}, {"cl-02", "marking"}})
        book.add("pre_use_check", unit,
                 {{"machine", "ex-21"}, {"answers", Json::array({{{"item", item}, {"answer", "right"}}})}},
                 "2026-11-25T07:10:00Z");
    return book;
}

} // namespace cotter::tests
