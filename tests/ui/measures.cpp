#include "measures.hpp"

#include "drawn.hpp"
#include "picture.hpp"
#include "vocabulary.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace cotter::tests {

bool overlap(const ui::Seen& a, const ui::Seen& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

namespace {

constexpr double rounding = 0.15; // mm

// Source: WCAG 2.2, relative luminance and contrast ratio.
double luminance(ImU32 colour)
{
    const auto linear = [&](unsigned shift) {
        const double value = static_cast<double>(colour >> shift & 0xFFU) / 255;
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(IM_COL32_R_SHIFT) + 0.7152 * linear(IM_COL32_G_SHIFT) + 0.0722 * linear(IM_COL32_B_SHIFT);
}

double contrast(ImU32 a, ImU32 b)
{
    const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

// Ten to one for what is read first, seven to one for the rest; no text over another.
void check_texts(const Rig& rig)
{
    const auto& seen = rig.seen();
    for (std::size_t i = 0; i < seen.size(); ++i) {
        if (seen[i].ink == 0)
            continue;
        CAPTURE(seen[i].text);
        CHECK(contrast(seen[i].ink, seen[i].ground) >= (seen[i].ink == ui::colours().ink ? 10 : 7));
        for (std::size_t j = i + 1; j < seen.size(); ++j) {
            const bool meets = seen[j].ink != 0 && seen[i].x + 1 < seen[j].x + seen[j].w &&
                               seen[j].x + 1 < seen[i].x + seen[i].w && seen[i].y + 1 < seen[j].y + seen[j].h &&
                               seen[j].y + 1 < seen[i].y + seen[i].h;
            if (meets) {
                CAPTURE(seen[j].text);
                CHECK_FALSE(meets);
            }
        }
    }
}

void check_targets(const Rig& rig, double target_mm)
{
    for (const ui::Seen& each : rig.seen()) {
        CAPTURE(each.text);
        CHECK(each.clipped == "");
        if (each.target) {
            CHECK(static_cast<double>(std::min(each.w, each.h)) / rig.glass().px_per_mm >= target_mm - rounding);
            CHECK(each.x >= 0);
            CHECK(each.y >= 0);
            CHECK(each.x + each.w <= rig.glass().width + 1);
            CHECK(each.y + each.h <= rig.glass().height + 1);
        }
    }
}

void check_gaps(const Rig& rig, double gap_mm)
{
    const float gap = static_cast<float>((gap_mm - rounding) * rig.glass().px_per_mm);
    for (const ui::Seen& a : rig.seen())
        for (const ui::Seen& b : rig.seen()) {
            if (!a.target || !b.target || &a >= &b)
                continue;
            CAPTURE(a.text);
            CAPTURE(b.text);
            CHECK_FALSE(overlap({a.text, true, a.x - gap, a.y - gap, a.w + 2 * gap, a.h + 2 * gap, ""}, b));
        }
}

// Answers that mean the contrary stand 13 mm apart under gloves.
void check_opposites(const Rig& rig)
{
    static const std::vector<std::pair<const char*, const char*>> opposites{{"Yes", "No"},
                                                                            {"Yes, seen", "No"},
                                                                            {"All so", "Not so"},
                                                                            {"Right", "Report"},
                                                                            {"Right", "Stop"},
                                                                            {"It is here", "Missing"},
                                                                            {"Locked", "Not locked"},
                                                                            {"All alike", "Not alike"},
                                                                            {"Load is up", "Lift done"},
                                                                            {"Set down, laid", "Set down, not laid"},
                                                                            {"Whole", "Refused"}};
    for (const auto& [one, other] : opposites)
        if (const ui::Seen* a = rig.target(one), *b = rig.target(other); a && b) {
            CAPTURE(a->text);
            CAPTURE(b->text);
            const float across = std::max(a->x - b->x - b->w, b->x - a->x - a->w),
                        down = std::max(a->y - b->y - b->h, b->y - a->y - a->h);
            CHECK(static_cast<double>(std::max(across, down)) / rig.glass().px_per_mm >=
                  ui::glove.opposite_gap - rounding);
        }
}

// Text stands on a button or beside it, never half under one.
void check_text_beside_buttons(const Rig& rig)
{
    for (const ui::Seen& text : rig.seen())
        for (const ui::Seen& button : rig.seen())
            if (!text.target && button.target && overlap(text, button)) {
                CAPTURE(text.text);
                CAPTURE(button.text);
                CHECK(text.y >= button.y - 1);
                CHECK(text.y + text.h <= button.y + button.h + 1);
            }
}

// Of a book as it is now; the last is kept.
const Vocabulary& words_of_book(const records::Book& book)
{
    static std::string of;
    static Vocabulary all;
    if (const std::string head = book.state().device + book.state().head.hash; head != of) {
        of = head;
        all = words_of(book);
    }
    return all;
}

// In another language each word is one of its catalogue, or of the book.
void check_words(const Rig& rig, const Vocabulary& book)
{
    const auto language = rig.glass().looks.language;
    if (language == words::Language::english)
        return;
    for (const ui::Seen& each : rig.seen())
        if (!each.target && each.ink != 0) {
            CAPTURE(each.text);
            CHECK(unknown_words(each.text, {&words_of(language), &book}) == "");
        }
}

// COTTER_PICTURES=FOLDER: each page that is measured is kept as pictures too, to be looked at.
void keep_pictures(Rig& rig, const std::string& page)
{
    static int number = 0;
    const char* folder = std::getenv("COTTER_PICTURES");
    if (!folder)
        return;
    std::string name = std::to_string(1000 + ++number) + " " + page;
    std::replace(name.begin(), name.end(), '/', '-');
    for (const auto& [ending, glass] : std::initializer_list<std::pair<const char*, Glass>>{
             {"wide", {}},
             {"upright night", {800, 1280, 5.88, {true, 100, words::Language::english, false}}},
             {"polish large", {1280, 800, 5.88, {false, 150, words::Language::polish, false}}}}) {
        rig.look_on(glass);
        keep_as_picture(std::string{folder} + "/" + name + ", " + ending + ".png");
    }
}

std::string small_jpeg()
{
    ui::Picture picture{80, 60, std::vector<std::uint8_t>(std::size_t{80} * 60 * 4, 255)};
    return ui::to_jpeg(picture);
}

} // namespace

std::vector<Glass> all_glasses()
{
    std::vector<Glass> all;
    for (const Glass& glass : {Glass{1280, 800, 5.88}, Glass{800, 1280, 5.88}, Glass{1920, 1200, 8.83}})
        for (const auto language : words::languages)
            for (const int percent : ui::text_sizes)
                all.push_back(
                    {glass.width, glass.height, glass.px_per_mm, {all.size() % 2 == 1, percent, language, false}});
    return all;
}

void check_everywhere(Rig& rig, const ui::Hand& hand, const std::string& page)
{
    const Glass before = rig.glass();
    keep_pictures(rig, page);
    const Vocabulary& book = words_of_book(rig.book());
    const auto check_here = [&](const Glass& glass, const ui::Hand& wanted) {
        CAPTURE(page);
        CAPTURE(glass.width);
        CAPTURE(glass.looks.text_percent);
        CAPTURE(words::name_of(glass.looks.language));
        CAPTURE(glass.looks.gloves);
        rig.look_on(glass);
        check_texts(rig);
        check_targets(rig, wanted.target);
        check_gaps(rig, wanted.gap);
        if (&wanted == &ui::glove)
            check_opposites(rig);
        check_text_beside_buttons(rig);
        check_words(rig, book);
    };
    for (Glass glass : all_glasses()) {
        check_here(glass, hand);
        glass.looks.gloves = true;
        if (&hand == &ui::bare)
            check_here(glass, ui::glove);
    }
    rig.look_on(before);
}

std::string pipe_name(SampleBook& sample) { return sample.store().fact("pipe", "sk-600")->doc.value("name", ""); }

void walk(Rig& rig, const ui::Hand& hand, const std::string& name, const std::vector<std::string>& steps)
{
    for (const std::string& each : steps) {
        for (int i = 0; i < 10 && !rig.target(each); ++i)
            rig.key(ImGuiKey_PageDown);
        for (int i = 0; i < 12 && !rig.target(each) && rig.target("More"); ++i)
            rig.tap("More");
        rig.tap_or_hold(each);
        check_everywhere(rig, hand, name + ", " + each);
    }
}

void give_photos(Rig& rig)
{
    rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg"}; };
    rig.photos.bytes = [](const std::string&) { return std::optional{small_jpeg()}; };
    rig.photos.keep = [](const std::string&) { return std::string(64, 'a'); };
}

void type_and(Rig& rig, const std::string& typed, const char* button)
{
    rig.type(typed);
    rig.frame();
    rig.tap(button);
}

void walk_while(Rig& rig, const ui::Hand& hand, const std::string& name, const std::vector<std::string>& any)
{
    for (int i = 0; i < 12; ++i) {
        const auto next = std::find_if(any.begin(), any.end(), [&](const auto& each) { return rig.target(each); });
        if (next == any.end())
            return;
        rig.tap(*next);
        check_everywhere(rig, hand, name + ", " + *next);
    }
}

} // namespace cotter::tests
