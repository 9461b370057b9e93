#pragma once

// The form in which records are handed out in a folder and can be checked later: a line a record, and a list of every
// file's hash that the device has signed.

#include "book.hpp"
#include "receipt.hpp"

#include <map>
#include <string>

namespace cotter::records {

using Files = std::map<std::string, std::string>; // name within the folder, with '/', and bytes

inline constexpr const char* list_file = "hashes.txt";
inline constexpr const char* records_file = "records.jsonl";

// {"bytes", "hash", "sig"}: the stored bytes as text, so that hash and signature can be worked out from them again.
std::string record_line(const Record& record);
Record read_record_line(std::string_view line); // FormError; hash and signature are not checked

// What hashes.txt says of these files, in the form of sha256sum, and the receipt; without its last line.
std::string list_of(const Files& files, const Receipt& receipt);

// What a device signs of that text, and the last line with the signature.
std::string signed_of_list(const std::string& device, std::string_view list);
std::string last_line(const std::string& device, const std::string& sig);

struct BundleCheck {
    std::size_t files = 0, records = 0;
    Receipt receipt;
    std::string wrong; // "" if everything fits; else the first thing that does not, and how
};

// Every file's hash, every record's own hash and signature, the receipt and the list's signature; with a book, also
// that it holds each record with the same bytes, and had the receipt's head.
BundleCheck check_bundle(const Files& files, const Book* book);

} // namespace cotter::records
