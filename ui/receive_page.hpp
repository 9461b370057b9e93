#pragma once

// A unit arrives: its plate read first, loose parts counted, evidence seen; then it is taken in whole, in part, as not
// to be used, or refused. In Site, and in the Cab by the gateman at night.

#include "choice.hpp"
#include "number_pad.hpp"
#include "outside.hpp"
#include "photo_page.hpp"
#include "phrases.hpp"
#include "unit_choice.hpp"

#include "arrival.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class ReceivePage {
public:
    // May words be typed? Not in the Cab. A unit that is known already is not asked for.
    ReceivePage(const Outside& outside, bool may_type, std::string unit = "");
    bool draw(Sheet& sheet); // false when it is left or done

private:
    enum class Page {
        who,
        unit,
        serial,
        other_serial,
        parts,
        evidence,
        photo,
        which_report,
        condition,
        why,
        swap,
        done,
        gone
    };

    void who(Sheet& sheet);
    void unit(Sheet& sheet);
    void serial(Sheet& sheet);
    void other_serial(Sheet& sheet);
    void parts(Sheet& sheet);
    void evidence(Sheet& sheet);
    void photo(Sheet& sheet);
    void is_it_that(Sheet& sheet);
    void step_back();
    void condition(Sheet& sheet);
    void why(Sheet& sheet);
    void swap(Sheet& sheet);
    void done(Sheet& sheet);
    void write();
    void ask_parts();
    void go(Page page);
    std::string label() const;
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    bool may_type_;
    std::string given_unit_;
    Page page_ = Page::who;
    std::size_t turned_ = 0, part_ = 0;
    std::string person_, report_; // report_: of which the photo is the copy; "": of none
    UnitChoice units_;
    NumberPad pad_;
    desk::Arrival arrival_;
    desk::Condition condition_ = desk::Condition::not_to_be_used;
    std::vector<std::string> parts_;
    std::optional<PhotoPage> photo_;
    std::optional<Phrases> why_;
};

} // namespace cotter::ui
