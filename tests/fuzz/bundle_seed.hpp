#pragma once

// A small bundle that fits: a device's first record and a pipe.

#include "bundle_form.hpp"

namespace cotter::tests {

inline records::Entry seed_entry(const std::string& kind, const std::string& about, records::Json body)
{
    records::Entry entry;
    entry.kind = kind;
    entry.about = about;
    entry.who = entry.by = "quill";
    entry.how = "name only";
    entry.at = rules::Instant{1795590000};
    entry.day = rules::utc_day(entry.at);
    entry.body = std::move(body);
    return entry;
}

inline records::Files bundle_seed(const records::DeviceKey& key)
{
    const auto first = records::sign(
        seed_entry("device", key.device(), {{"name", "tablet"}, {"public_key", key.public_hex()}}), key, {});
    const auto pipe =
        records::sign(seed_entry("pipe", "sk-450", {{"name", "DN 450 (invented)"}}), key, {first.seq, first.hash});
    records::Files files{{records::records_file, record_line(first) + "\n" + record_line(pipe) + "\n"}};
    const std::string list = list_of(files, make_receipt(key, {pipe.seq, pipe.hash}, rules::Instant{1795590000}));
    files[records::list_file] =
        list + records::last_line(key.device(), key.sign(records::signed_of_list(key.device(), list)));
    return files;
}

} // namespace cotter::tests
