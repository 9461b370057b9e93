#pragma once

// The language that people read. English is the key of every text; its translation stands in a gettext catalogue.
// Records, files and exit lines stay English: they are written under InEnglish, or where no language was chosen.

#include <fmt/format.h>

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace cotter::words {

enum class Language { english, polish, romanian };
inline constexpr std::array languages{Language::english, Language::polish, Language::romanian};

std::string_view code_of(Language language);   // "en", "pl", "ro"
std::string_view name_of(Language language);   // as its speakers write it
void catalogues_in(const std::string& folder); // that holds pl/LC_MESSAGES/cotter.mo and so on
bool set_language(Language language);          // false where its catalogue is missing; then nothing changes
Language language();                           // English while an InEnglish lives

class InEnglish {
public:
    InEnglish();
    ~InEnglish();
    InEnglish(const InEnglish&) = delete;
    InEnglish& operator=(const InEnglish&) = delete;
};

// The whole text as it stands in the catalogue; what is not in it stays as it is, such as names.
std::string in_language(const std::string& english);
std::string in_language(const char* one, const char* many, std::size_t count);

// A number's text with the language's decimal sign: "6.2 m", "6,2 m".
std::string decimal(std::string text);
std::string decimals_in(std::string text); // of each number in a text

// What a literal among the values says is translated too; a std::string, which is data, is not.
inline std::string shown(const char* english) { return in_language(english); }
template <typename Value> const Value& shown(const Value& value) { return value; }

namespace detail {

template <typename... Values> std::string filled(const std::string& text, const Values&... values)
{
    return fmt::vformat(text, fmt::make_format_args(values...));
}

} // namespace detail

std::string filled_in(const std::string& text, const std::vector<std::string>& values);

// A sentence with its places {} filled: say("Mark {}, issue {}", mark, issue).
template <typename... Values> std::string say(const char* english, const Values&... values)
{
    return detail::filled(in_language(english), shown(values)...);
}

// For a count, which is also the first value: say_many(n, "{} unit", "{} units").
template <typename... Values>
std::string say_many(std::size_t count, const char* one, const char* many, const Values&... values)
{
    return detail::filled(in_language(one, many, count), count, shown(values)...);
}

// What waits for its language (desk::Reason): {about, text, values}. A value that is a key itself is translated too.
template <typename Reason> std::string said(const Reason& reason)
{
    std::vector<std::string> values;
    for (const std::string& each : reason.values)
        values.push_back(in_language(each));
    const std::string sentence = filled_in(in_language(reason.text), values);
    return reason.about.empty() ? sentence : reason.about + ": " + sentence;
}

} // namespace cotter::words
