#pragma once

// A stop that was called is lifted: by somebody entitled, with what was found.

#include "choice.hpp"
#include "outside.hpp"
#include "phrases.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class LiftStop {
public:
    LiftStop(const Outside& outside, std::string unit, bool may_type); // may words be typed? Not in the Cab
    bool draw(Sheet& sheet);                                           // false when it is left or done

private:
    enum class Page { which, who, why, hold, done, gone };

    void which(Sheet& sheet);
    void who(Sheet& sheet);
    void why(Sheet& sheet);
    void hold(Sheet& sheet);
    void write();
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    std::string name_of(const records::Fact& stop) const;

    const Outside& outside_;
    std::string unit_, stop_, person_;
    Page page_;
    std::size_t turned_ = 0;
    Phrases why_;
};

// Called on a unit, and lifted by nobody yet.
std::vector<records::Fact> open_stops(const records::Book& book, const std::string& unit);

} // namespace cotter::ui
