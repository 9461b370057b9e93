#include "language.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include <fmt/args.h>
#include <libintl.h>
#include <locale.h>

namespace cotter::words {

namespace {

constexpr const char* domain = "cotter";

std::string folder;
Language chosen = Language::english;
int in_english = 0;

std::filesystem::path catalogue_of(Language language)
{
    return std::filesystem::path{folder} / code_of(language) / "LC_MESSAGES" / (std::string{domain} + ".mo");
}

// C.UTF-8 is on every Debian; LANGUAGE then names the catalogue, whichever locales are installed.
void turn_gettext_to(Language language)
{
    setlocale(LC_MESSAGES, "C.UTF-8");
    setenv("LANGUAGE", std::string{code_of(language)}.c_str(), 1);
    bindtextdomain(domain, folder.c_str());
    bind_textdomain_codeset(domain, "UTF-8");
    textdomain(domain); // forgets what was found in another language
}

} // namespace

std::string_view code_of(Language language)
{
    switch (language) {
    case Language::english: return "en";
    case Language::polish: return "pl";
    case Language::romanian: return "ro";
    }
    return "en";
}

std::string_view name_of(Language language)
{
    switch (language) {
    case Language::english: return "English";
    case Language::polish: return "Polski";
    case Language::romanian: return "Rom\u00e2n\u0103";
    }
    return "";
}

void catalogues_in(const std::string& given) { folder = given; }

bool set_language(Language language)
{
    if (language != Language::english) {
        if (!std::filesystem::exists(catalogue_of(language)))
            return false;
        turn_gettext_to(language);
    }
    chosen = language;
    return true;
}

Language language() { return in_english > 0 ? Language::english : chosen; }

InEnglish::InEnglish() { ++in_english; }
InEnglish::~InEnglish() { --in_english; }

std::string in_language(const std::string& english)
{
    return language() == Language::english || english.empty() ? english : dgettext(domain, english.c_str());
}

std::string in_language(const char* one, const char* many, std::size_t count)
{
    return language() == Language::english ? (count == 1 ? one : many) : dngettext(domain, one, many, count);
}

std::string filled_in(const std::string& text, const std::vector<std::string>& values)
{
    fmt::dynamic_format_arg_store<fmt::format_context> arguments;
    for (const std::string& each : values)
        arguments.push_back(each);
    return fmt::vformat(text, arguments);
}

std::string decimal(std::string text)
{
    if (language() != Language::english)
        std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

std::string decimals_in(std::string text)
{
    const auto is_digit = [&](std::size_t i) { return i < text.size() && '0' <= text[i] && text[i] <= '9'; };
    for (std::size_t i = 1; i < text.size(); ++i)
        if (text[i] == '.' && is_digit(i - 1) && is_digit(i + 1))
            text[i] = decimal(".")[0];
    return text;
}

} // namespace cotter::words
