#pragma once

// A record's body on the screen, by its kind's schema: a line a field, one opened at a time, lists and parts one inside
// the other.

#include "form_body.hpp"
#include "form_field.hpp"
#include "picture_pane.hpp"
#include "scroll.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class FormPage {
public:
    // `done` is the button that ends it, as "Sign".
    FormPage(const Outside& outside, std::string title, records::Json schema, records::Json body, std::string done);

    enum class Left { nothing, back, done };
    // With `beside`, the paper that is typed from stands next to the lines.
    Left draw(Sheet& sheet, const std::string& person, PicturePane* beside = nullptr);
    const records::Json& body() const { return form_.body(); }
    void say(const std::string& why) // over the lines, and back to the top: what was not accepted
    {
        said_ = why;
        scrolls_.back() = {};
    }

private:
    using Line = FormBody::Line;
    void list(Sheet& sheet, const Box& area);
    void draw_line(Sheet& sheet, const Line& line, const Box& box, const Box& area);
    void open(const Line& line);
    void add();
    void take_out();
    std::vector<std::string> buttons() const;
    Left press(const std::string& word);
    std::string still_needed() const;                    // fields, by name; "": none
    Left leave(Sheet& sheet, const std::string& person); // is what was typed given up?
    void go_up();

    const Outside& outside_;
    std::string title_, done_, said_;
    records::Json begun_;                           // as it was when it opened
    bool leaves_ = false, asks_for_needed_ = false; // that: since it was to be signed without
    std::size_t turned_ = 0;
    FormBody form_;
    std::optional<FormField> field_;
    std::string field_key_;
    std::vector<TouchScroll> scrolls_{1}; // one a level
};

} // namespace cotter::ui
