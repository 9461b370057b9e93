// The printed page: caution and title block, nothing clipped, tables over pages, the same bytes again.

#include "document.hpp"
#include "pages_of.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::paper;
using namespace cotter::tests;

TEST_SUITE_BEGIN("document");

namespace {

TitleBlock block()
{
    return {
        "A paper", "Marsh Lane (invented)",      "Wed 25 Nov 2026 08:00", "P. Quill (invented)", "812 \u00b7 1a2b3c4d",
        true,      rules::Instant{1'795'593'600}};
}

std::string drawn(const std::function<void(Document&)>& draw, const TitleBlock& with = block())
{
    return make_pdf(with, draw);
}

Table long_table(int rows)
{
    Table table{{{"NUMBER", 1}, {"WORDS", 4}}, {}};
    for (int i = 1; i <= rows; ++i)
        table.rows.push_back({{"row-" + std::to_string(i), "some words about it"}});
    return table;
}

// Every word stands within the frame: 20 mm from the left edge, 10 mm from the others.
void check_within_the_frame(const std::string& pdf)
{
    for (const WordBox& each : words_in(pdf)) {
        CAPTURE(each.text);
        CHECK(each.left >= 20);
        CHECK(each.right <= 200);
        CHECK(each.top >= 10);
        CHECK(each.bottom <= 287);
    }
}

} // namespace

TEST_CASE("every page has the caution, the title block and its number of how many")
{
    const auto pages = pages_of(drawn([](Document& document) { document.table(long_table(300)); }));
    REQUIRE(pages.size() > 5);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        CAPTURE(i);
        CHECK(contains(pages[i], caution));
        for (const char* cell : {"A paper", "Marsh Lane (invented)", "Wed 25 Nov 2026 08:00", "P. Quill (invented)",
                                 "812 \u00b7 1a2b3c4d", "SAMPLE"})
            CHECK(contains(pages[i], cell));
        CHECK(contains(pages[i], std::to_string(i + 1) + " of " + std::to_string(pages.size())));
    }
}

TEST_CASE("a book that is no sample is not called one")
{
    TitleBlock own = block();
    own.sample = false;
    CHECK_FALSE(contains(pages_of(drawn([](Document&) {}, own)).at(0), "SAMPLE"));
}

TEST_CASE("a table goes on over the pages with its headings, each row once")
{
    const std::string pdf = drawn([](Document& document) { document.table(long_table(300)); });
    const std::string all = flowing(pdf) + " ";
    for (int i = 1; i <= 300; ++i)
        CHECK(times(all, "row-" + std::to_string(i) + " ") == 1);
    for (const std::string& page : pages_of(pdf))
        CHECK(times(page, "NUMBER") == 1);
    check_within_the_frame(pdf);
}

TEST_CASE("a table without rows says so")
{
    CHECK(contains(flowing(drawn([](Document& document) { document.table(long_table(0)); })), "None."));
}

TEST_CASE("a word longer than a line, and a cell longer than a page, are broken and not lost")
{
    std::string word;
    for (int i = 0; i < 1500; ++i)
        word += std::to_string(1000 + i);
    const std::string pdf = drawn([&](Document& document) {
        document.paragraph(word);
        document.table({{{"A", 1}, {"B", 3}}, {{{"x", word}}, {{"y", "after it"}}}});
    });
    check_within_the_frame(pdf);
    std::string all; // of the words in the order of reading, the page's own words taken out
    for (const WordBox& each : words_in(pdf))
        if (each.text.size() > 12 && each.text.find_first_not_of("0123456789") == std::string::npos)
            all += each.text;
    CHECK(times(all, "1000100110021003") == 2);
    CHECK(times(all, "2496249724982499") == 2);
    CHECK(all.size() == 2 * word.size());
    CHECK(contains(flowing(pdf), "after it"));
}

TEST_CASE("a title block with long names is higher, and still whole on every page")
{
    TitleBlock wide = block();
    wide.site = "Marsh Lane outfall, second phase, between the pumping station and the old railway bridge (invented)";
    const std::string pdf = drawn([](Document& document) { document.table(long_table(120)); }, wide);
    check_within_the_frame(pdf);
    CHECK(times(flowing(pdf), "railway bridge (invented)") == pages_of(pdf).size());
}

TEST_CASE("letters of Polish and Romanian and the signs of figures are read back")
{
    const std::string text =
        "Za\u017c\u00f3\u0142\u0107 g\u0119\u015bl\u0105 ja\u017a\u0144 \u0218tef\u0103ni\u021b\u0103 "
        "\u00d8 580 \u2264 600 \u2212 \u2248 \u2192";
    CHECK(contains(flowing(drawn([&](Document& document) { document.paragraph(text); })), text));
}

TEST_CASE("the same input gives the same bytes, and another instant others")
{
    const auto draw = [](Document& document) {
        document.title("T", "under");
        document.table(long_table(100));
        document.qr("COTTER-RECEIPT", 40);
    };
    CHECK(drawn(draw) == drawn(draw));
    TitleBlock later = block();
    later.made = later.made + rules::Instant{1};
    CHECK(drawn(draw) != drawn(draw, later));
}

TEST_CASE("a text too long for a QR code is refused")
{
    CHECK_THROWS_WITH(drawn([](Document& document) { document.qr(std::string(3000, 'x'), 80); }),
                      "the text is too long for a QR code");
}

TEST_SUITE_END();
