#pragma once

// The copy of a unit's newest report is photographed, so that its evidence is here.

#include "choice.hpp"
#include "outside.hpp"
#include "photo_page.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

std::string newest_report(const records::Book& book, const std::string& unit); // its id; "": none

// "Is it the report of the examination on ...?": a photo is the copy only of the report that it is of.
Choice which_report(const records::Book& book, const std::string& report);

class CopyPage {
public:
    CopyPage(const Outside& outside, std::string unit);
    bool draw(Sheet& sheet); // false when it is left or done

private:
    enum class Page { who, photo, which, done, gone };

    void who(Sheet& sheet);
    void photo(Sheet& sheet);
    void which(Sheet& sheet);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    std::string unit_, report_, person_;
    Page page_ = Page::who;
    std::size_t turned_ = 0;
    PhotoPage photo_;
};

} // namespace cotter::ui
