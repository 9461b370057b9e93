// Every target's size and gaps, every text within the glass, nothing clipped, no text over another, contrast: on every
// page that the flows open, on every glass, in every language, at every size of text, by day and night.

#include "deepest_run.hpp"
#include "drawn.hpp"
#include "own_book.hpp"
#include "picture.hpp"
#include "vocabulary.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

using namespace cotter;
using tests::Glass;
using tests::Rig;
using tests::SampleBook;

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

bool overlap(const ui::Seen& a, const ui::Seen& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
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
const tests::Vocabulary& words_of_book(const records::Book& book)
{
    static std::string of;
    static tests::Vocabulary all;
    if (const std::string head = book.state().device + book.state().head.hash; head != of) {
        of = head;
        all = tests::words_of(book);
    }
    return all;
}

// In another language each word is one of its catalogue, or of the book.
void check_words(const Rig& rig, const tests::Vocabulary& book)
{
    const auto language = rig.glass().looks.language;
    if (language == words::Language::english)
        return;
    for (const ui::Seen& each : rig.seen())
        if (!each.target && each.ink != 0) {
            CAPTURE(each.text);
            CHECK(tests::unknown_words(each.text, {&tests::words_of(language), &book}) == "");
        }
}

// Night changes colours alone, so it goes with every other glass.
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
        tests::keep_as_picture(std::string{folder} + "/" + name + ", " + ending + ".png");
    }
}

// The page as it is now, everywhere; at a desk also with gloves.
void check_everywhere(Rig& rig, const ui::Hand& hand, const std::string& page)
{
    const Glass before = rig.glass();
    keep_pictures(rig, page);
    const tests::Vocabulary& book = words_of_book(rig.book());
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

} // namespace

TEST_CASE("the Cab's targets are 19 mm and 6 mm apart, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark B"},
                                    pipe_name(sample), std::string{"hole 2"}}) {
        check_everywhere(rig, ui::glove, "before " + next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "sheet");
    rig.tap("Report");
    rig.tap("Stand down");
    check_everywhere(rig, ui::glove, "stand down");
    rig.hold("Hold to stand down");
    check_everywhere(rig, ui::glove, "receipt");
    rig.tap("Not now");
    rig.tap("Cab");
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"8 hours"}, std::string{"EX-21"},
                                    std::string{"Mark B"}, pipe_name(sample)})
        rig.tap(next);
    for (const char* button : {"Report", "Check"}) {
        rig.tap(button);
        check_everywhere(rig, ui::glove, button);
        rig.tap(rig.target("Back") ? "Back" : "Leave it");
    }
}

TEST_CASE("the pages of a lift keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    const std::string pipe = sample.store().fact("pipe", "sk-450")->doc.value("name", "");
    for (const std::string& next :
         {std::string{"T. Dunmore (invented)"}, std::string{"EX-14"}, std::string{"Mark B"}, pipe, std::string{"Lift"},
          std::string{"Not so"}, std::string{"Back"}, std::string{"All so"}, std::string{"Read"}, std::string{"Read"},
          std::string{"Read"}, std::string{"Load is up"}, std::string{"Set down, laid"}, std::string{"Report"},
          std::string{"Knock"}}) {
        if (!rig.target(next))
            continue; // a later lift of the type has the short card
        rig.tap(next);
        check_everywhere(rig, ui::glove, "after " + next);
    }
}

TEST_CASE("the pages of a moved pin keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark B"},
                                    pipe_name(sample), std::string{"hole 2"}, std::string{"Move"}})
        rig.tap(next);
    for (int i = 0; i < 30 && rig.target("Done"); ++i) {
        check_everywhere(rig, ui::glove, "step");
        rig.tap("Done");
    }
    for (const char* next : {"hole 4", "B. Oakes (invented)"}) {
        check_everywhere(rig, ui::glove, next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "second look");
}

TEST_CASE("a page without an open shift keeps to the Cab's sizes")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    rig.now = rig.now + rules::Instant{86'400};
    rig.tap("I. Farrow (invented)");
    check_everywhere(rig, ui::glove, "shift");
}

TEST_CASE("the pages on which people sign, admit and stop keep to the Cab's sizes, and no text is clipped")
{
    tests::OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::none};
    for (const char* next : {"Stop a unit", "cl-02", "bent, cracked or broken", "iqbal", "Seen", "Understood", "Site",
                             "People", "Admit a person"}) {
        rig.tap(next);
        check_everywhere(rig, std::string{next} == "Site" ? ui::bare : ui::glove, next);
    }
    tests::type(rig, tests::hallams);
    for (const char* next : {"farrow", "Seen", "Go on", "Go on", "Go on", "Set a PIN", "iqbal"}) {
        check_everywhere(rig, ui::glove, next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "choose");
    rig.tap("Back");
    rig.ticks += 3600;
    rig.frame();
    CHECK(rig.shows("Locked"));
    check_everywhere(rig, ui::glove, "locked");
}

TEST_CASE("what is ahead, and the Yard's orders, keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig site{sample.store(), ui::Door::site};
        for (const char* each : {"Ahead", "Per day"}) {
            site.tap(each);
            check_everywhere(site, ui::bare, each);
        }
    }
    Rig yard{sample.store(), ui::Door::yard};
    for (const char* each : {"Orders", "Units", "Back", "Weeks"}) {
        yard.tap(each);
        check_everywhere(yard, ui::bare, each);
    }
}

TEST_CASE("plans, their pictures and their forms keep to Site's sizes, and no text is clipped")
{
    SampleBook sample;
    tests::issue_deepest_run(sample.store());
    Rig rig{sample.store(), ui::Door::site};
    for (const char* next : {"Plans",
                             "plan-2, issue 1",
                             "Above",
                             "Next mark",
                             "Section",
                             "Chart",
                             "Path",
                             "Next step",
                             "Numbers",
                             "New issue",
                             "J. Quill (invented)",
                             "Title",
                             "Leave it",
                             "In force from",
                             "Leave it",
                             "Worksheet",
                             "Stretches of pipes, in the order of the drawings",
                             "1",
                             "How many",
                             "Take it",
                             "Back",
                             "Back",
                             "Back",
                             "Work it out"}) {
        for (int pages = 0; !rig.target(next) && pages < 8; ++pages)
            rig.key(ImGuiKey_PageDown);
        rig.tap(next);
        check_everywhere(rig, ui::bare, std::string{"after "} + next);
    }
}

TEST_CASE("Site and Yard have targets of 10 mm, 2 mm apart, and no text is clipped")
{
    SampleBook sample;
    {
        Rig site{sample.store(), ui::Door::site};
        check_everywhere(site, ui::bare, "due");
        site.tap("Stopped");
        check_everywhere(site, ui::bare, "stopped");
        for (const char* next :
             {"This day", "Back", "People", "Supervisor", "Back", "Back", "Compare", "Back", "Place", "Mark C"}) {
            site.tap(next);
            check_everywhere(site, ui::bare, next);
        }
    }
    Rig yard{sample.store(), ui::Door::yard};
    check_everywhere(yard, ui::bare, "yard");
}

TEST_CASE("what else Site has, and this glass, keep to their sizes, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        for (const char* next : {"View",
                                 "As a list",
                                 "View",
                                 "As a calendar",
                                 "Later",
                                 "View",
                                 "One kind",
                                 "sling",
                                 "View",
                                 "Everything",
                                 "Record",
                                 "A unit has come",
                                 "O. Hallam (invented)",
                                 "ST-12",
                                 "1",
                                 "Go on",
                                 "It says so",
                                 "It is here",
                                 "It is here",
                                 "Yes, seen",
                                 "Without",
                                 "Not to be used",
                                 "Other words",
                                 "Back",
                                 "plate cannot be read",
                                 "No",
                                 "Understood",
                                 "Units come and go",
                                 "Call the yard",
                                 "CL-02",
                                 "Collect",
                                 "work is finished",
                                 "O. Hallam (invented)",
                                 "Understood",
                                 "Back",
                                 "Put right",
                                 "Put right",
                                 "It is void",
                                 "typed wrong",
                                 "Back",
                                 "Back",
                                 "Back",
                                 "Back",
                                 "Papers and data",
                                 "A pipe by tape",
                                 "O. Hallam (invented)",
                                 "Back",
                                 "Back"}) {
            if (!rig.target(next))
                continue; // not every unit has the same parts
            rig.tap(next);
            check_everywhere(rig, ui::bare, std::string{"Site, "} + next);
        }
    }
    Rig rig{sample.store(), ui::Door::none};
    check_everywhere(rig, ui::glove, "first screen");
    rig.tap("This glass");
    check_everywhere(rig, ui::glove, "this glass");
}

TEST_CASE("what else the Yard has, and a book just begun, keep to their sizes, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::yard};
        for (const char* next : {"Orders", "Units", "Draw", "Back", "Back", "Weeks", "Back", "Back", "Calls", "Back",
                                 "Examined", "CL-02", "K. Sefton (invented)", "Day of the examination", "Take it"}) {
            if (!rig.target(next))
                continue; // the orders' page stays where a record was begun
            rig.tap(next);
            check_everywhere(rig, ui::bare, std::string{"Yard, "} + next);
        }
    }
    const auto folder = sample.path().parent_path() / "empty";
    auto empty = db::Store::make(folder / "book.db", {"a device", true, rules::Instant{1795590000}, rules::Day{}});
    Rig rig{*empty, ui::Door::site};
    check_everywhere(rig, ui::bare, "a new site");
}

namespace {

// Each step must be there; what a list hides is looked for.
void walk(Rig& rig, const ui::Hand& hand, const std::string& name, const std::vector<std::string>& steps)
{
    for (const std::string& each : steps) {
        for (int i = 0; i < 10 && !rig.target(each); ++i)
            rig.key(ImGuiKey_PageDown);
        for (int i = 0; i < 12 && !rig.target(each) && rig.target("More"); ++i)
            rig.tap("More");
        rig.tap(each);
        check_everywhere(rig, hand, name + ", " + each);
    }
}

std::string small_jpeg()
{
    ui::Picture picture{80, 60, std::vector<std::uint8_t>(std::size_t{80} * 60 * 4, 255)};
    return ui::to_jpeg(picture);
}

void give_photos(Rig& rig)
{
    rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg"}; };
    rig.photos.bytes = [](const std::string&) { return std::optional{small_jpeg()}; };
    rig.photos.keep = [](const std::string&) { return std::string(64, 'a'); };
}

} // namespace

TEST_CASE(
    "the pages on which findings are cleared, and a tag is found, keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    give_photos(rig);
    walk(rig, ui::glove, "Cab",
         {"Find a unit",
          "0",
          "2",
          "Find",
          "Back",
          "A unit has come",
          "Back",
          "I. Farrow (invented)",
          "EX-21",
          "Mark B",
          pipe_name(sample),
          "hole 2",
          "Lift",
          "Back",
          "Check",
          "Report",
          "worn or loose",
          "Understood",
          "Leave it",
          "Report",
          "Defect",
          "CL-02",
          "worn or loose",
          "p.jpg",
          "Another",
          "Without",
          "Report",
          "Call the yard",
          "Breakdown",
          "something is not right",
          "Understood"});
}

TEST_CASE("more of Site's pages keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        give_photos(rig);
        walk(rig, ui::bare, "Site",
             {"Stopped",
              "Lift the stop",
              "O. Hallam (invented)",
              "Back",
              "Back",
              "Photograph",
              "O. Hallam (invented)",
              "p.jpg",
              "Take it",
              "Back",
              "Another",
              "Back",
              "Back",
              "People",
              "Briefing",
              "Back",
              "Back",
              "Ahead",
              "Clear",
              "O. Hallam (invented)",
              "part renewed, like for like",
              "Back",
              "Back",
              "Back",
              "Back",
              "Laid",
              "Log a pipe",
              "O. Hallam (invented)",
              "Chainage of its spigot end",
              "Leave it",
              "Leave it",
              "Back"});
    }
    Rig rig{sample.store(), ui::Door::site};
    walk(rig, ui::bare, "Site, Record",
         {"Record", "Put right", "One kind", "All of them", "Older", "Put right", "It says something else", "Leave it",
          "Back", "Back", "Papers and data", "A pipe by tape", "O. Hallam (invented)"});
    rig.type("A pipe (invented)");
    rig.frame();
    walk(rig, ui::bare, "Site, tape", {"Go on", "1", "Next", "Back"});
}

TEST_CASE("pages of a paper beside what is typed keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::yard};
        give_photos(rig);
        walk(rig, ui::bare, "Yard",
             {"Find", "0", "5", "Find", "Back", "Examined", "CL-02", "K. Sefton (invented)", "p.jpg", "Take it",
              "Larger", "Sign it", "Says safe to operate", "Yes", "Leave it", "Back", "Leave it"});
        rig.hold("Hold to give it up");
        walk(rig, ui::bare, "Yard", {"Returned", "Back", "Orders", "Record one"});
    }
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Compare");
    const auto& seen = rig.seen();
    std::string first;
    for (const auto& each : seen)
        if (each.target && each.text != "Back" && each.text != "More" && first.empty())
            first = each.text;
    walk(rig, ui::bare, "Compare", {first, "O. Hallam (invented)", "Not alike", "Understood"});
}

namespace {

void type_and(Rig& rig, const std::string& typed, const char* button)
{
    rig.type(typed);
    rig.frame();
    rig.tap(button);
}

// As long as one of them is there it is pressed, and the page measured.
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

} // namespace

TEST_CASE("a unit that arrives, a call and its answer keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        give_photos(rig);
        rig.tap("Stopped");
        walk(rig, ui::bare, "Arrival", {"Receive", "O. Hallam (invented)"});
        type_and(rig, "1", "Go on");
        walk(rig, ui::bare, "Arrival", {"Read it again", "Cannot be read"});
        walk_while(rig, ui::bare, "Arrival",
                   {"Missing", "Yes, seen", "p.jpg", "Take it", "Yes, that day", "In part", "Not to be used",
                    "plate cannot be read", "Call for a swap", "Understood"});
    }
    Rig rig{sample.store(), ui::Door::yard};
    walk(rig, ui::bare, "Answer",
         {"Calls", "Answer", "K. Sefton (invented)", "another leaves the yard tomorrow", "Back"});
}

TEST_CASE("a pipe read with a tape by two keeps to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "Papers and data", "A pipe by tape", "O. Hallam (invented)"})
        rig.tap(each);
    type_and(rig, "A pipe (invented)", "Go on");
    type_and(rig, "1835", "Next"); // 584 across
    check_everywhere(rig, ui::bare, "tape, none may be");
    rig.tap("None");
    for (const char* reading : {"450", "67", "2600"})
        type_and(rig, reading, "Next");
    rig.tap("None");
    check_everywhere(rig, ui::bare, "tape, what it comes to");
    walk(rig, ui::bare, "tape", {"Sign it", "B. Oakes (invented)", "Back", "Understood"});
}

TEST_CASE("what the Cab explains, and what could not be done, keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    walk(rig, ui::glove, "Cab, explained",
         {"I. Farrow (invented)", "EX-21", "At none of them", pipe_name(sample), "hole 2"});
    for (const char* each : {"Plan", "Confirm", "Tell", "Swap"})
        if (rig.target(each)) {
            rig.tap(each);
            check_everywhere(rig, ui::glove, std::string{"explained, "} + each);
            rig.tap("Back");
        }
    rig.photos.bytes = [](const std::string&) -> std::optional<std::string> { throw std::runtime_error{"CL-02"}; };
    rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg"}; };
    for (const char* each : {"Report", "Knock", "CL-02", "dropped or fell over", "p.jpg"})
        rig.tap(each);
    CHECK(rig.shows("That could not be done"));
    check_everywhere(rig, ui::glove, "could not be done");
}

TEST_CASE("no label of the due board lies on another")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Further", "Further", "Nearer", "Nearer", "Nearer", "Nearer"}) {
        for (const Glass& glass : all_glasses()) {
            rig.look_on(glass);
            for (const ui::Seen& a : rig.seen())
                for (const ui::Seen& b : rig.seen())
                    if (!a.target && !b.target && &a < &b && a.y > 0) {
                        CAPTURE(a.text);
                        CAPTURE(b.text);
                        CHECK_FALSE(overlap(a, b));
                    }
        }
        rig.look_on({});
        rig.tap(each);
    }
}

TEST_CASE("a list on the glass keeps its place under a finger and can be thrown")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    const auto top_of = [&] {
        for (const ui::Seen& each : rig.seen())
            if (!each.target && each.text.find("-") != std::string::npos && each.y > 100)
                return each.y;
        return 0.0F;
    };
    const float before = top_of();
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {640, 500});
    rig.frame();
    ui::feed_press(io, true);
    rig.frame();
    for (int i = 1; i <= 10; ++i) {
        ui::feed_pointer(io, {640, 500 - 12.0F * static_cast<float>(i)});
        rig.frame();
    }
    ui::feed_press(io, false);
    rig.frame();
    CHECK(top_of() != before);
}
