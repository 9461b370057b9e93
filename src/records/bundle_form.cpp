#include "bundle_form.hpp"

#include "signing.hpp"

#include <sstream>
#include <vector>

namespace cotter::records {

namespace {

constexpr std::string_view about =
    "# Cotter. `sha256sum -c hashes.txt` checks each file; `cotter verify --bundle FOLDER` checks all of it.";
constexpr std::string_view mark = "# COTTER-BUNDLE 1 ";

// The first thing that does not fit.
class Misfit : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

std::vector<std::string> lines_of(const std::string& text, const std::string& name)
{
    if (text.empty() || text.back() != '\n')
        throw Misfit{name + ": its last line is cut off"};
    std::vector<std::string> lines;
    std::istringstream in{text};
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

struct List {
    Receipt receipt;
    Files hashes; // by file
    std::string text, device, sig;
};

void read_last_line(const std::string& line, List& list)
{
    std::istringstream in{line.starts_with(mark) ? line.substr(mark.size()) : ""};
    in >> list.device >> list.sig;
    if (line + "\n" != last_line(list.device, list.sig))
        throw Misfit{std::string{list_file} + ": its last line is not a device's signature"};
}

List read_list(const std::string& text)
{
    const auto lines = lines_of(text, list_file);
    if (lines.size() < 3 || lines[0] != about || !lines[1].starts_with("# "))
        throw Misfit{std::string{list_file} + ": it does not begin as a list of a bundle does"};
    List list;
    list.receipt = read_receipt(lines[1].substr(2));
    for (std::size_t i = 2; i + 1 < lines.size(); ++i) {
        const bool whole = lines[i].size() > 66 && lines[i].compare(64, 2, "  ") == 0;
        if (!whole || !list.hashes.emplace(lines[i].substr(66), lines[i].substr(0, 64)).second)
            throw Misfit{std::string{list_file} + ": line " + std::to_string(i + 1) + " is not a hash and a file"};
    }
    read_last_line(lines.back(), list);
    list.text = text.substr(0, text.size() - lines.back().size() - 1);
    return list;
}

void check_files(const Files& files, const List& list)
{
    for (const auto& [name, hash] : list.hashes) {
        const auto found = files.find(name);
        if (found == files.end())
            throw Misfit{name + ": is missing"};
        if (sha256(found->second) != hash)
            throw Misfit{name + ": its bytes are not those that were listed"};
    }
    for (const auto& [name, bytes] : files)
        if (name != list_file && list.hashes.count(name) == 0)
            throw Misfit{name + ": is not in the list"};
}

std::string place_of(std::size_t line) { return std::string{records_file} + " line " + std::to_string(line); }

std::vector<Record> read_records(const Files& files)
{
    const auto found = files.find(records_file);
    if (found == files.end())
        throw Misfit{std::string{records_file} + ": is missing"};
    std::vector<Record> records;
    std::size_t number = 0;
    for (const std::string& line : lines_of(found->second, records_file)) {
        ++number;
        try {
            records.push_back(read_record_line(line));
        } catch (const FormError& e) {
            throw Misfit{place_of(number) + ": " + e.what()};
        }
        if (record_line(records.back()) != line)
            throw Misfit{place_of(number) + ": its hash is not that of its bytes"};
    }
    return records;
}

using Keys = std::map<std::string, std::string>; // by device

Keys keys_in(const std::vector<Record>& records)
{
    Keys keys;
    for (const Record& each : records) {
        if (each.entry.kind != "device" || each.seq != 1)
            continue;
        const Json said = each.entry.body.value("public_key", Json{});
        const std::string key = said.is_string() ? said.get<std::string>() : "";
        if (!key.empty() && key.size() % 2 == 0 && key.find_first_not_of("0123456789abcdef") == std::string::npos &&
            sha256(from_hex(key)) == each.device)
            keys[each.device] = key;
    }
    return keys;
}

std::string key_of(const Keys& keys, const std::string& device, const std::string& of)
{
    const auto found = keys.find(device);
    if (found == keys.end())
        throw Misfit{of + ": the key of its device is not among the records"};
    return found->second;
}

void check_signatures(const std::vector<Record>& records, const List& list)
{
    const Keys keys = keys_in(records);
    for (std::size_t i = 0; i < records.size(); ++i)
        if (!is_signed_by(key_of(keys, records[i].device, place_of(i + 1)), records[i].bytes, records[i].sig))
            throw Misfit{place_of(i + 1) + ": its signature does not fit"};
    if (!is_signed_by(key_of(keys, list.receipt.device, "the receipt"), list.receipt))
        throw Misfit{"the receipt: it is not signed by its device"};
    if (!is_signed_by(key_of(keys, list.device, list_file), signed_of_list(list.device, list.text), list.sig))
        throw Misfit{std::string{list_file} + ": it is not signed by its device"};
}

void check_against(const Book& book, const std::vector<Record>& records, const Receipt& receipt)
{
    for (std::size_t i = 0; i < records.size(); ++i) {
        const auto found = book.find(records[i].hash);
        if (!found || found->bytes != records[i].bytes || found->sig != records[i].sig)
            throw Misfit{place_of(i + 1) + ": record " + std::to_string(records[i].seq) + " is not in the book"};
    }
    const auto head = book.find(receipt.head.hash);
    if (!head || head->device != receipt.device || head->seq != receipt.head.seq)
        throw Misfit{"the receipt: the book does not hold record " + std::to_string(receipt.head.seq) +
                     " as it was then"};
}

} // namespace

std::string record_line(const Record& record)
{
    return Json{{"bytes", record.bytes}, {"hash", record.hash}, {"sig", record.sig}}.dump();
}

Record read_record_line(std::string_view line)
{
    const Json json = parse_strictly(line);
    for (const char* field : {"bytes", "hash", "sig"})
        if (!json.is_object() || !json.contains(field) || !json[field].is_string())
            throw FormError{"not a record; an object with bytes, hash and sig is accepted"};
    return parse_record(json["bytes"].get<std::string>(), json["sig"].get<std::string>());
}

std::string list_of(const Files& files, const Receipt& receipt)
{
    std::string text = std::string{about} + "\n# " + to_text(receipt) + "\n";
    for (const auto& [name, bytes] : files)
        text += sha256(bytes) + "  " + name + "\n";
    return text;
}

std::string signed_of_list(const std::string& device, std::string_view list)
{
    return "COTTER-BUNDLE 1 " + device + " " + sha256(list);
}

std::string last_line(const std::string& device, const std::string& sig)
{
    return std::string{mark} + device + " " + sig + "\n";
}

BundleCheck check_bundle(const Files& files, const Book* book)
{
    BundleCheck check;
    try {
        const auto found = files.find(list_file);
        if (found == files.end())
            throw Misfit{std::string{list_file} + ": is missing"};
        const List list = read_list(found->second);
        check.files = list.hashes.size();
        check.receipt = list.receipt;
        check_files(files, list);
        const auto records = read_records(files);
        check.records = records.size();
        check_signatures(records, list);
        if (book)
            check_against(*book, records, list.receipt);
    } catch (const Misfit& e) {
        check.wrong = e.what();
    } catch (const FormError& e) { // the receipt
        check.wrong = std::string{list_file} + ": " + e.what();
    }
    return check;
}

} // namespace cotter::records
