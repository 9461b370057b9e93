#pragma once

// What poppler's pdftotext reads in a PDF: the text of each page, and the box of each word.

#include "cli/program.hpp"

#include <regex>
#include <string>
#include <vector>

namespace cotter::tests {

inline std::string pdftotext(const std::string& pdf, const std::vector<std::string>& options)
{
    const Scratch scratch;
    const auto file = scratch.folder() / "paper.pdf";
    write_bytes(file, pdf);
    std::vector<std::string> arguments = options;
    arguments.insert(arguments.end(), {file.string(), "-"});
    const Ran ran = run_program("/usr/bin/pdftotext", arguments);
    if (ran.code != 0 || !ran.err.empty())
        throw std::runtime_error{"pdftotext: " + ran.err};
    return ran.out;
}

inline std::vector<std::string> pages_of(const std::string& pdf)
{
    std::vector<std::string> pages;
    const std::string text = pdftotext(pdf, {"-layout"});
    for (std::size_t from = 0; from < text.size();) {
        const auto end = text.find('\f', from);
        pages.push_back(text.substr(from, end - from));
        from = end == std::string::npos ? text.size() : end + 1;
    }
    return pages;
}

// All of it with single blanks, as it is read.
inline std::string flowing(const std::string& pdf)
{
    return std::regex_replace(pdftotext(pdf, {}), std::regex{"\\s+"}, " ");
}

struct WordBox {
    double left, top, right, bottom; // mm from the page's top left
    std::string text;
};

inline std::vector<WordBox> words_in(const std::string& pdf)
{
    static const std::regex word{
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)</word>"};
    const std::string text = pdftotext(pdf, {"-bbox"});
    std::vector<WordBox> found;
    const auto mm = [](const std::ssub_match& each) { return std::stod(each.str()) * 25.4 / 72; };
    for (auto it = std::sregex_iterator{text.begin(), text.end(), word}; it != std::sregex_iterator{}; ++it)
        found.push_back({mm((*it)[1]), mm((*it)[2]), mm((*it)[3]), mm((*it)[4]), (*it)[5]});
    return found;
}

inline std::size_t times(const std::string& text, const std::string& part)
{
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++count;
    return count;
}

} // namespace cotter::tests
