#include "vocabulary.hpp"

#include "local_time.hpp"

#include <fstream>
#include <map>

namespace cotter::tests {

namespace {

// A word with a letter of another alphabet, a digit or a hyphen, such as a tag, is of no interest.
std::vector<std::string> ascii_words(const std::string& text)
{
    std::vector<std::string> found;
    std::string word;
    for (const char c : text + " ") {
        const auto byte = static_cast<unsigned char>(c);
        const bool digit = c >= '0' && c <= '9', capital = c >= 'A' && c <= 'Z', small = c >= 'a' && c <= 'z';
        if (capital || small || digit || c == '-' || c == '.' || byte >= 0x80) {
            word += capital ? static_cast<char>(c - 'A' + 'a') : c;
            continue;
        }
        while (!word.empty() && word.back() == '.')
            word.pop_back();
        if (word.size() >= 3 && word.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos)
            found.push_back(word);
        word.clear();
    }
    return found;
}

void add(Vocabulary& all, const std::string& text)
{
    for (auto& each : ascii_words(text))
        all.insert(std::move(each));
}

// What a person has written: a value of a choice has small letters alone, and is translated.
bool is_written(const std::string& text)
{
    return text.find_first_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ ") != std::string::npos;
}

void add_values(Vocabulary& all, const records::Json& json)
{
    if (json.is_string() && is_written(json.get<std::string>()))
        add(all, json.get<std::string>());
    if (json.is_structured())
        for (const auto& each : json)
            add_values(all, each);
}

Vocabulary read_catalogue(words::Language language)
{
    Vocabulary all;
    std::ifstream file{COTTER_SOURCE "/src/words/languages/" + std::string{words::code_of(language)} + ".po"};
    for (std::string line; std::getline(file, line);)
        if (line.rfind("msgstr", 0) == 0)
            add(all, line.substr(6));
    for (const auto each : words::languages)
        add(all, std::string{words::name_of(each)});
    return all;
}

} // namespace

const Vocabulary& words_of(words::Language language)
{
    static std::map<words::Language, Vocabulary> all;
    const auto [found, is_new] = all.try_emplace(language);
    if (is_new)
        found->second = read_catalogue(language);
    return found->second;
}

Vocabulary words_of(const records::Book& book)
{
    Vocabulary all;
    add(all, desk::zone_here()); // as the device has it
    for (const records::Record& record : book.newest("", 1'000'000)) {
        add_values(all, record.entry.body);
        add(all, record.entry.body.value("category", "")); // of a lift plan: a word of its own
        add(all, book.private_value("person " + record.entry.about, "name").value_or(""));
    }
    return all;
}

std::string unknown_words(const std::string& text, const std::vector<const Vocabulary*>& known)
{
    std::string unknown;
    for (const std::string& word : ascii_words(text)) {
        bool found = false;
        for (const Vocabulary* each : known)
            found = found || each->count(word) > 0;
        if (!found)
            unknown += (unknown.empty() ? "" : " ") + word;
    }
    return unknown;
}

} // namespace cotter::tests
