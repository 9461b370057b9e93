#pragma once

// Site: any record that has no page of its own, by its kind's form: what, about what, who, the fields, signed.

#include "choice.hpp"
#include "form_page.hpp"
#include "outside.hpp"
#include "photo_page.hpp"
#include "record_menu.hpp"
#include "unit_choice.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class RecordPage {
public:
    // `kind` "": it is chosen first. With `begun` it is a new thing, of which so much is known already. `about` "": it
    // is asked what it is about.
    RecordPage(const Outside& outside, std::string kind, records::Json begun = records::Json::object(),
               std::string about = "");
    bool draw(Sheet& sheet); // false when it is left or written

private:
    enum class Page { menu, about, who, form, photo, written, gone };

    void menu(Sheet& sheet);
    void about(Sheet& sheet);
    void about_a_unit(Sheet& sheet);
    bool is_about_a_unit() const;
    void who(Sheet& sheet);
    void form(Sheet& sheet);
    void photo(Sheet& sheet);
    void written(Sheet& sheet);
    void begin();
    void write();
    void go(Page page);
    void go_back();
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    const records::Json& schema() const;
    std::vector<std::string> known_things() const; // that the record may be about
    records::Json first_body() const;
    records::Json typed_schema() const; // with what a person must not leave out

    const Outside& outside_;
    bool was_given_kind_;
    Page page_;
    std::size_t turned_ = 0;
    records::Json begun_;
    std::string kind_, about_, person_, unit_; // unit_: of whose paper this is
    std::optional<FormPage> form_;
    std::optional<PhotoPage> photo_;
    std::string picture_; // the photo's SHA-256
    bool stops_ = false;  // what was written stops the unit
    PicturePane paper_;   // a copy that is typed from
    UnitChoice units_;
    RecordMenu menu_;
};

} // namespace cotter::ui
