#pragma once

// Drawing and touching in millimetres of the glass, origin at the top left.

#include "figure.hpp"
#include "theme.hpp"

#include <algorithm>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cotter::ui {

struct Box {
    double x = 0, y = 0, w = 0, h = 0;
};

// What stands on the screen, reported for tests and `--layout`: every button and every text with its box in pixels.
struct Seen {
    std::string text;
    bool target = false;
    float x = 0, y = 0, w = 0, h = 0;
    std::string clipped;       // what did not fit, if anything
    ImU32 ink = 0, ground = 0; // of a text, and of what it stands on
    bool has_keyboard = false; // a target on which it stands
};
using Spy = std::function<void(const Seen&)>;

class Sheet {
public:
    // Fingers are not heard for a moment after a press: a second tap of a double one answers no second question. On a
    // pad they are, where that press was on a pad too.
    explicit Sheet(const Theme& theme, Spy spy = {}, bool hears_fingers = true, bool hears_them_on_pads = true);

    double width() const;   // mm
    double height() const;  // mm
    bool is_narrow() const; // then things stand under each other
    const Theme& theme() const { return theme_; }

    void fill(const Box& box, ImU32 colour);
    void frame(const Box& box, double line_mm, ImU32 colour = colours().ink, double radius_mm = 0);
    void line(double x1, double y1, double x2, double y2, double line_mm, ImU32 colour = colours().ink);

    // What is drawn or measured is first translated, as a whole (language.hpp): English is its name in the code.
    // y is the top of the capitals. Returns the width in mm.
    double text(double x, double y, Lettering letter, const std::string& text, ImU32 colour = colours().ink);
    double width_of(Lettering letter, const std::string& text) const;

    int lines_of(Lettering letter, const std::string& text, double width) const; // that it takes

    double height_of(Lettering letter, const std::string& text, double width) const; // mm, to the foot of its last line

    // The first of these letters in which the text takes no more lines than that; the last where none is small enough.
    Lettering that_fits(const std::vector<Lettering>& letters, const std::string& text, double width, int lines) const;

    // For what only announces a page that opens: the text as it is if it takes no more lines than that, else its
    // beginning and "...".
    std::string cut(Lettering letter, std::string text, double width, int lines) const;

    // Broken into at most `lines` lines of the given width; plain where that is what fits. What does not fit is cut and
    // reported to the spy. Returns the height used, mm.
    double wrapped(const Box& box, Lettering letter, const std::string& text, int lines, ImU32 colour = colours().ink);

    void picture(ImTextureID texture, const Box& box, ImVec2 moved_px, ImVec2 size_px); // cut at the box
    void clip(const Box& box); // what is drawn from now on is cut at the box
    void clip_no_more();

    void sign(figures::Sign sign, double centre_x, double centre_y, double size);
    void figure(const figures::Figure& figure, double x, double y);

    // An empty frame that can be pressed; `words` names it. A drag that ends on it does not press.
    bool target(const std::string& words, const Box& box, bool chosen = false);

    // A target with its words, and a sign over them if there is one.
    bool button(const std::string& words, const Box& box, std::optional<figures::Sign> sign = std::nullopt,
                bool chosen = false, std::optional<Lettering> letter = std::nullopt);

    // The letters in which the words of a whole row of buttons fit; of one that has a sign over its words.
    Lettering common_letter(const std::vector<std::string>& words, double width, double height, bool with_sign) const;

    // A button for what cannot be undone: pressed once it has been held, by finger or key, for so long.
    static constexpr float hold_s = 0.8F;
    bool hold(const std::string& words, const Box& box, std::optional<figures::Sign> sign = std::nullopt);

    // A frame is wanted after so many seconds, though nobody touches anything; the soonest counts.
    void draw_again_in(double seconds) { drawn_again_in_ = std::min(drawn_again_in_, seconds); }
    double drawn_again_in() const { return drawn_again_in_; }
    bool was_pressed() const { return was_pressed_; } // a target, in this frame
    bool is_blank() const { return is_blank_; }       // nothing was drawn: the page went to another
    void take_digits()
    {
        takes_digits_ = true;
    } // typed ones are this page's, no tag; a pad's keys are as quick as fingers
    bool takes_digits() const { return takes_digits_; }

private:
    std::vector<std::string> broken(Lettering letter, const std::string& text, double width) const; // into lines
    bool fits(Lettering letter, const std::string& text, double width, int lines) const;
    double put(double x, double y, Lettering letter, const std::string& text, ImU32 colour); // as it stands
    double measure(Lettering letter, const std::string& text) const;                         // as it stands
    Lettering for_button(const std::string& text, const Box& box, bool with_sign, double beside) const;
    void draw(const figures::Line& line, double x, double y);
    void draw(const figures::Arrow& arrow, double x, double y);
    void draw(const figures::Polygon& polygon, double x, double y);
    void draw(const figures::Circle& circle, double x, double y);
    void draw(const figures::HatchedRing& ring, double x, double y);
    void draw(const figures::Mark& mark, double x, double y);
    void draw(const figures::Label& label, double x, double y);
    ImVec2 px(double x, double y) const { return {theme_.px(x), theme_.px(y)}; }
    void report(const std::string& text, bool target, const Box& box, const std::string& clipped, ImU32 ink = 0,
                bool has_keyboard = false);
    ImU32 ground_under(const Box& box) const;

    const Theme& theme_;
    Spy spy_;
    ImDrawList* list_;
    bool takes_digits_ = false, hears_fingers_ = true, hears_them_on_pads_ = true, was_pressed_ = false,
         is_blank_ = true;
    double drawn_again_in_ = std::numeric_limits<double>::infinity();
    std::vector<std::pair<Box, ImU32>> filled_; // so far, for the spy
};

// Did the finger that is down, or has just left, move too far to be a tap?
bool press_became_drag(const Theme& theme);

} // namespace cotter::ui
