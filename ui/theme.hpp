#pragma once

// The look in one place: ink and paper, sign colours, line widths, letter sizes in millimetres of capital height.

#include "compat.hpp"
#include "looks.hpp"

#include <array>
#include <string>

namespace cotter::ui {

struct Colours {
    ImU32 ground, sheet, ink, second, rule, steel;
};
inline constexpr Colours day_sheet{IM_COL32(0xF4, 0xF1, 0xEA, 255), IM_COL32(255, 255, 255, 255),
                                   IM_COL32(0x14, 0x18, 0x1C, 255), IM_COL32(0x47, 0x52, 0x5C, 255),
                                   IM_COL32(0xB9, 0xB2, 0xA4, 255), IM_COL32(0xDA, 0xD6, 0xCB, 255)};
inline constexpr Colours night_sheet{IM_COL32(0x10, 0x14, 0x18, 255), IM_COL32(0x17, 0x1C, 0x21, 255),
                                     IM_COL32(0xE8, 0xE4, 0xDA, 255), IM_COL32(0xA9, 0xB0, 0xB5, 255),
                                     IM_COL32(0x4A, 0x52, 0x59, 255), IM_COL32(0x33, 0x3A, 0x41, 255)};

// What everything is drawn with now.
const Colours& colours();
bool is_night();

// The same by day and by night. Source: ISO 3864-4 as tabulated, RAL 3001, 1003, 5005, 6032.
inline constexpr ImU32 sign_red = IM_COL32(0x9B, 0x24, 0x23, 255), sign_yellow = IM_COL32(0xF9, 0xA8, 0x00, 255),
                       sign_blue = IM_COL32(0x00, 0x53, 0x87, 255), sign_green = IM_COL32(0x23, 0x7F, 0x52, 255),
                       sign_black = IM_COL32(0x14, 0x18, 0x1C, 255), sign_white = IM_COL32(255, 255, 255, 255);

inline constexpr double thick_mm = 0.5, thin_mm = 0.25;

enum class Letter { verdict, heading, bold, text, second, small, drawing };
inline constexpr std::size_t letters = 7;

// A letter as large as the person chose, or plain, as at 100 %, where there is no room for more. The verdict, what
// stands in drawings and the labels of the title block do not grow.
struct Lettering {
    Letter letter;
    bool plain = false;
    // NOLINTNEXTLINE(google-explicit-constructor): a letter is as large as was chosen
    constexpr Lettering(Letter of, bool is_plain = false) : letter{of}, plain{is_plain} {}
};

// Capital height on the glass at 100 %, mm. Nothing under 2.0.
constexpr double plain_capital_mm(Letter letter)
{
    switch (letter) {
    case Letter::verdict: return 10;
    case Letter::heading: return 5;
    case Letter::bold:
    case Letter::text: return 3.5;
    case Letter::second:
    case Letter::drawing: return 2.8;
    case Letter::small: return 2.0;
    }
    return 3.5;
}

// As the person chose.
double capital_mm(Lettering lettering);

struct Hand {
    double target, gap, opposite_gap;
};
inline constexpr Hand glove{19, 6, 13}; // Source: MIL-STD-1472E 5.4.3.1.3.3 (19 mm with mittens), Table VII (13 mm)
inline constexpr Hand bare{10, 2, 2};

const Hand& at_desk(); // bare, or glove where a tablet is used so

// While it lives a desk's page is drawn for gloves, as where it opens in the Cab.
class InGloves {
public:
    explicit InGloves(bool are_worn);
    ~InGloves();
    InGloves(const InGloves&) = delete;
    InGloves& operator=(const InGloves&) = delete;

private:
    bool before_;
};

inline constexpr double head_mm = 13; // of a page: its heading

// One letter size: an ImGui font and where its capitals stand in it.
struct Face {
    ImFont* font = nullptr;
    float capital_top = 0; // px from the top of a line to the top of a capital
    float capital = 0;     // px
};

class Theme {
public:
    // Loads every size into the current context's atlas; std::runtime_error names a font file that is missing.
    explicit Theme(double px_per_mm);
    bool fits_looks() const { return text_percent_ == looks().text_percent; } // else a new one is wanted

    double px_per_mm() const { return px_per_mm_; }
    const Face& face(Lettering of) const { return (of.plain ? plain_ : chosen_)[static_cast<std::size_t>(of.letter)]; }
    float px(double mm) const { return static_cast<float>(mm * px_per_mm_); }

private:
    void load(std::array<Face, letters>& faces, bool plain) const;

    double px_per_mm_;
    int text_percent_;
    std::array<Face, letters> chosen_, plain_;
};

// Characters of a size that no loaded font has; empty if all are there.
std::string missing_characters(const Face& face, const std::string& text);

} // namespace cotter::ui
