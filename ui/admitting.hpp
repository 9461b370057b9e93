#pragma once

// A person is admitted: who, card seen, roles, familiarised on which models, whose setting may be changed, a PIN.

#include "choice.hpp"
#include "outside.hpp"

#include <set>
#include <string>
#include <utility>
#include <vector>

namespace cotter::ui {

class Admitting {
public:
    // `by` has signed in; "" where nobody may admit yet: then only the first person of a book is admitted, by himself.
    Admitting(const Outside& outside, std::string by) : outside_{outside}, by_{std::move(by)} {}
    bool draw(Sheet& sheet); // false once it is done or left

private:
    enum class Page { who, name, card, roles, models, settings, site, gone };

    void who(Sheet& sheet);
    void name(Sheet& sheet);
    void card(Sheet& sheet);
    void roles(Sheet& sheet);
    void models(Sheet& sheet);
    void settings(Sheet& sheet);
    void site(Sheet& sheet); // of a book that has none yet
    void admit();
    void go(Page page);

    // A list of which several are chosen; true when it is done.
    bool several(Sheet& sheet, const std::string& question, const std::string& hint,
                 const std::vector<std::pair<std::string, std::string>>& all, std::set<std::string>& chosen, Page back);
    std::vector<std::pair<std::string, std::string>> known_models(bool that_adjust) const;
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    std::string by_;
    Page page_ = Page::who;
    std::size_t turned_ = 0;
    std::string person_, name_, site_name_, said_;
    bool is_new_ = false;
    std::set<std::string> roles_, models_, settings_;
};

} // namespace cotter::ui
