#pragma once

// Typed data beside the page that they come from: a second person compares them.

#include "choice.hpp"
#include "outside.hpp"
#include "picture_pane.hpp"
#include "scroll.hpp"
#include "to_compare.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class Compare {
public:
    explicit Compare(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    enum class Page { list, who, beside, not_alike, gone };

    void list(Sheet& sheet);
    void who(Sheet& sheet);
    void beside(Sheet& sheet);
    void not_alike(Sheet& sheet);
    void page(Sheet& sheet, const Box& box);
    static double height_of(const Sheet& sheet, const std::string& value, double width);
    void lines(Sheet& sheet, const Box& box);
    void buttons(Sheet& sheet, double y);
    std::vector<std::string> foot() const;
    void press(const std::string& word);
    void open(const std::string& name);
    void proved();
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    Page page_ = Page::list;
    std::size_t turned_ = 0, shown_ = 0; // which page of several
    std::vector<desk::Typed> all_;
    std::string all_of_, second_;
    desk::Typed typed_;
    PicturePane pane_;
    TouchScroll scroll_;
};

} // namespace cotter::ui
