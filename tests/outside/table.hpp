#pragma once

// Reads the published tables beside these tests: CSV after RFC 4180, first line the names of the columns.

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace outside {

using Line = std::vector<std::string>;
using Record = std::map<std::string, std::string>;

class CsvReader {
public:
    explicit CsvReader(std::string text) : text_{std::move(text)} {}

    bool at_end() const { return place_ >= text_.size(); }

    Line line()
    {
        Line fields{field()};
        while (!at_end() && text_[place_] == ',') {
            ++place_;
            fields.push_back(field());
        }
        while (!at_end() && (text_[place_] == '\r' || text_[place_] == '\n'))
            ++place_;
        return fields;
    }

private:
    std::string field() { return !at_end() && text_[place_] == '"' ? quoted() : plain(); }

    std::string plain()
    {
        const auto end = std::min(text_.find_first_of(",\r\n", place_), text_.size());
        std::string found = text_.substr(place_, end - place_);
        place_ = end;
        return found;
    }

    // Two quotation marks stand for one.
    std::string quoted()
    {
        std::string found;
        for (++place_; !at_end(); ++place_) {
            if (text_[place_] == '"' && (++place_ >= text_.size() || text_[place_] != '"'))
                return found;
            found += text_[place_];
        }
        throw std::runtime_error{"a quoted field has no end"};
    }

    std::string text_;
    std::size_t place_ = 0;
};

inline Record named(const Line& names, const Line& fields)
{
    if (names.size() != fields.size())
        throw std::runtime_error{"a line of " + std::to_string(fields.size()) + " fields under " +
                                 std::to_string(names.size()) + " names"};
    Record record;
    for (std::size_t i = 0; i < names.size(); ++i)
        record[names[i]] = fields[i];
    return record;
}

inline std::vector<Record> read_table(const std::string& name)
{
    const auto path = std::filesystem::path{COTTER_TESTS} / "outside" / "data" / (name + ".csv");
    std::ifstream file{path, std::ios::binary};
    if (!file)
        throw std::runtime_error{path.string() + " cannot be read"};
    CsvReader reader{std::string{std::istreambuf_iterator<char>{file}, {}}};
    const Line names = reader.line();
    std::vector<Record> records;
    while (!reader.at_end())
        records.push_back(named(names, reader.line()));
    return records;
}

inline double number(const Record& record, const std::string& column) { return std::stod(record.at(column)); }

} // namespace outside
