#pragma once

// What was written last, and how it is put right: an older record is made void, or says something else from now on;
// both stay in the book.

#include "choice.hpp"
#include "form_page.hpp"
#include "outside.hpp"
#include "phrases.hpp"
#include "read_page.hpp"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace cotter::ui {

class CorrectPage {
public:
    explicit CorrectPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    enum class Page { list, kind, how, form, why, who, done, gone };

    void look();
    void list(Sheet& sheet);
    void choose_kind(Sheet& sheet);
    void how(Sheet& sheet);
    void form(Sheet& sheet);
    void why(Sheet& sheet);
    void who(Sheet& sheet);
    void write(const std::string& person);
    void go(Page page);
    bool is_corrected(const std::string& hash);
    std::string name_of_record(const records::Record& record) const;
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    Page page_ = Page::list;
    std::size_t turned_ = 0, older_ = 0; // so many pages back
    std::string kind_;                   // "": all
    std::vector<std::string> kinds_;
    std::string looked_of_, corrected_of_;
    std::set<std::string> corrected_; // hashes
    std::vector<records::Record> newest_;
    std::vector<ReadLine> lines_;
    ReadPage reading_;
    std::optional<records::Record> old_;
    bool is_void_ = false;
    std::optional<FormPage> form_;
    std::optional<Phrases> why_;
};

} // namespace cotter::ui
