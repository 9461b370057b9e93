#include "finding_table.hpp"
#include "kinds.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

#include <fstream>

using namespace cotter;

namespace {

// Every text in a book's data, whatever its field.
void add_texts(const records::Json& json, std::string& all)
{
    if (json.is_string())
        all += json.get<std::string>();
    else if (json.is_structured())
        for (const auto& each : json)
            add_texts(each, all);
}

} // namespace

TEST_CASE("every letter size has every character that a sentence or the sample's data use")
{
    tests::SampleBook sample;
    tests::Rig rig{sample.store(), ui::Door::none};
    std::string all = "\u00d8\u00b0\u00b7\u2264\u2265\u2212\u2248\u2192\u2713\u2717\u2026\u2013";
    for (int i = 0; i < rules::code_count; ++i) {
        const auto& words = words::words_of(static_cast<rules::Code>(i));
        for (const auto text : {words.headline, words.detail, words.clears, words.button, words.source})
            all += text;
    }
    for (const char* kind : {"site", "model", "unit", "pipe", "chart", "check_sheet", "plan", "person"})
        for (const auto& fact : sample.store().facts(kind))
            add_texts(fact.doc, all);
    for (const char* catalogue : {"pl", "ro"}) {
        std::ifstream in{std::string{COTTER_SOURCE "/src/words/languages/"} + catalogue + ".po"};
        REQUIRE(in);
        all += std::string{std::istreambuf_iterator<char>{in}, {}};
    }
    std::erase(all, '\n');
    for (const auto letter : {ui::Letter::heading, ui::Letter::bold, ui::Letter::text, ui::Letter::second,
                              ui::Letter::small, ui::Letter::drawing}) {
        CAPTURE(static_cast<int>(letter));
        CHECK(ui::missing_characters(rig.theme().face(letter), all) == "");
    }
}

TEST_CASE("the verdict's size has the letters of its verdicts, and another is missed")
{
    tests::SampleBook sample;
    tests::Rig rig{sample.store(), ui::Door::none};
    for (const auto language : words::languages) {
        ui::set_looks({false, 100, language});
        for (const char* verdict : {"MAY LIFT", "DO NOT LIFT", "LOAD UP"})
            CHECK(ui::missing_characters(rig.theme().face(ui::Letter::verdict), words::in_language(verdict)) == "");
        CHECK((language == words::Language::english) == (words::in_language("MAY LIFT") == "MAY LIFT"));
    }
    CHECK(ui::missing_characters(rig.theme().face(ui::Letter::verdict), "a") == "a");
}

TEST_CASE("capitals have the height on the glass that the theme says")
{
    tests::SampleBook sample;
    for (const double px_per_mm : {5.88, 8.83}) {
        tests::Rig rig{sample.store(), ui::Door::none, {1280, 800, px_per_mm}};
        for (std::size_t i = 0; i < ui::letters; ++i) {
            const auto letter = static_cast<ui::Letter>(i);
            CAPTURE(i);
            CHECK(static_cast<double>(rig.theme().face(letter).capital) / px_per_mm ==
                  doctest::Approx(ui::capital_mm(letter)).epsilon(0.06));
        }
    }
}

TEST_CASE("the sheet turns to night and back from the first screen")
{
    tests::SampleBook sample;
    tests::Rig rig{sample.store(), ui::Door::none};
    CHECK_FALSE(ui::is_night());
    rig.tap("This glass");
    rig.tap("Night sheet");
    CHECK(ui::is_night());
    CHECK(ui::colours().ink == ui::night_sheet.ink);
    rig.tap("Day sheet");
    CHECK_FALSE(ui::is_night());
}
