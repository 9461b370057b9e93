// The inspector's bundle on paper and as tables.

#include "bundle.hpp"
#include "desk/signed_book.hpp"
#include "kinds.hpp"
#include "pages.hpp"
#include "pages_of.hpp"
#include "schedule1.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;
using records::Json;

TEST_SUITE_BEGIN("bundle");

namespace {

records::Files files_of(const SignedBook& signed_book, const std::string& from = "2026-11-25",
                        const std::string& to = "2026-11-25")
{
    const auto book = signed_book.book();
    const auto period = unit_period(book, "cl-02", *rules::parse_day(from), *rules::parse_day(to));
    const paper::TitleBlock block{"Bundle",
                                  "Marsh Lane",
                                  "today",
                                  "P. Quill (invented)",
                                  "1 \u00b7 12345678",
                                  true,
                                  rules::Instant{1'795'593'600}};
    return paper::bundle_files(book, period, {block, signed_book.receipt()});
}

std::string pdf_of(const SignedBook& book) { return files_of(book)["bundle.pdf"]; }

// Rows of a table in CSV whose cells have no line breaks, without the headings.
std::size_t rows(const std::string& csv) { return times(csv, "\r\n") - 1; }

Json asked(const std::string& outcome, const Json& findings)
{
    return {{"question", {{"id", "lift"}, {"items", {{{"tag", "CL-02"}}}}}},
            {"outcome", outcome},
            {"findings", findings},
            {"edition", 1}};
}

const Json knocked_finding = {{"code", "check_stopped"},
                              {"weight", "stop"},
                              {"about", "CL-02"},
                              {"says", "Check says stop: CL-02. The defect is not cleared."},
                              {"source", "PUWER 1998 reg. 5"},
                              {"clears", "Have the defect cleared"}};

} // namespace

TEST_CASE("five hundred lifts are all there, with every finding, over as many pages as they take")
{
    SignedBook book = site_book();
    for (int i = 0; i < 500; ++i)
        book.add("lift_asked", "lift-" + std::to_string(i), asked("do_not_lift", Json::array({knocked_finding})));
    auto files = files_of(book);
    const std::string text = flowing(files["bundle.pdf"]);
    CHECK(times(text, "DO NOT LIFT") == 500);
    CHECK(times(text, "Check says stop: CL-02. The defect is not cleared.") == 500);
    CHECK(rows(files["csv/lift_asked.csv"]) == 500);
    CHECK(rows(files["csv/lift_findings.csv"]) == 500);
    for (const auto& each : book.records())
        if (each.entry.kind == "lift_asked")
            CHECK(contains(text, std::to_string(each.seq) + " " + each.hash.substr(0, 8)));
    const auto pages = pages_of(files["bundle.pdf"]);
    CHECK(pages.size() > 20);
    for (const std::string& page : pages) {
        CHECK(contains(page, paper::caution));
        CHECK(contains(page, " of " + std::to_string(pages.size())));
        if (contains(page, "DO NOT LIFT"))
            CHECK(contains(page, "ANSWER AND FINDINGS"));
    }
}

TEST_CASE("the counts on the first page are those of the book")
{
    SignedBook book = site_book();
    for (int i = 0; i < 7; ++i)
        book.add("stop_called", "cl-02", {{"why", "again"}});
    const std::string first = pages_of(pdf_of(book)).at(0);
    CHECK(std::regex_search(first, std::regex{"Anyone calls a stop +7 +0 +0"}));
    CHECK(
        std::regex_search(first, std::regex{"A report of thorough examination \\(LOLER 1998 Schedule 1\\) +0 +1 +0"}));
    CHECK(std::regex_search(first, std::regex{"All of them +9 +3 +0"}));
}

TEST_CASE("of a report each particular of Schedule 1 that is missing is named")
{
    const std::string text = flowing(pdf_of(site_book()));
    CHECK(contains(text, "Missing of Schedule 1: para. 2 address of the premises of the examination (lacking in the "
                         "report)"));
    CHECK(contains(text, "para. 8(e) particulars of any test (not yet typed)"));
    CHECK(contains(text, "para. 9 address and qualifications of that person (not recorded)"));
    CHECK_FALSE(contains(text, "para. 1 name and address of the employer (")); // the copy has it
    CHECK(contains(text, "In force before the period."));
    CHECK(contains(text, "rep-cl-02 (invented)")); // the examiner's name, which stands apart
}

TEST_CASE("a defect of a report wants its remedy, and one that could become a danger its time")
{
    const auto missing = [](const Json& defect) {
        return paper::missing_of(paper::schedule_1({{"defects", Json::array({defect})}}));
    };
    const Json present = {{"id", "d-1"}, {"danger", "present"}, {"part", "keeper"}};
    CHECK(contains(missing(present), "8(b)"));
    CHECK_FALSE(contains(missing(present), "8(c)"));
    Json later = {{"id", "d-1"}, {"danger", "could_become"}, {"part", "jaw"}, {"remedy", "weld"}};
    CHECK(contains(missing(later), "8(c)(i)"));
    CHECK_FALSE(contains(missing(later), "8(c)(ii)"));
    later["by_day"] = "2026-12-01";
    CHECK_FALSE(contains(missing(later), "8(c)"));
    CHECK_FALSE(contains(missing(later), "8(a)"));
    CHECK(contains(paper::missing_of(paper::schedule_1(Json::object())), "8(a)"));
}

TEST_CASE("a pin move has both names, a check its answers, a correction old and new")
{
    SignedBook book = site_book();
    const Json yes = {{"state", "hole 2"}, {"parked", true}, {"isolated", true}, {"clear", true}, {"steps_done", true}};
    book.add("setting_changed", "cl-02", yes, "2026-11-25T07:20:00Z");
    const std::string seen = book.add("setting_seen", "cl-02", {{"state", "hole 2"}}, "2026-11-25T07:25:00Z", "hallam");
    book.add("pre_use_check", "cl-02",
             {{"machine", "ex-21"},
              {"answers", Json::array({{{"item", "marking"}, {"answer", "stop"}, {"note", "tag gone"}}})}},
             "2026-11-25T07:30:00Z");
    book.add("correction", "cl-02", {{"corrects", seen}, {"why", "misread"}, {"body", {{"state", "hole 3"}}}},
             "2026-11-25T07:40:00Z", "hallam");
    const std::string text = flowing(pdf_of(book));
    CHECK(contains(text, "Moved to hole 2"));
    CHECK(contains(text, "hallam (invented), Wed 25 Nov 2026 07:25, saw hole 2"));
    CHECK(contains(text, "Stop: Look at marking (tag gone)"));
    CHECK(contains(text, "Right: Look at marking"));
    CHECK(contains(text, "misread"));
    CHECK(std::regex_search(text, std::regex{"state that is seen hole 2 hole 3"}));
    CHECK(contains(text, "Corrected by record"));
}

TEST_CASE("a text that a spreadsheet would take for a formula is text in the tables")
{
    SignedBook book = site_book();
    book.add("stop_called", "cl-02", {{"why", "=1+1, \"bent\""}});
    CHECK(contains(files_of(book)["csv/stop_called.csv"], "\"'=1+1, \"\"bent\"\"\""));
}

TEST_CASE("every kind has its table, and the same book gives the same bytes")
{
    const SignedBook book = site_book();
    const auto files = files_of(book);
    for (const std::string& kind : paper::all_kinds()) {
        CAPTURE(kind);
        CHECK(files.count("csv/" + kind + ".csv") == 1);
        CHECK(records::find_kind(kind) != nullptr);
    }
    CHECK(files == files_of(book));
    for (const auto& [name, bytes] : files)
        CHECK(name.find(':') == std::string::npos);
}

TEST_CASE("the records stand as they were signed, with the key of their device")
{
    const SignedBook book = site_book();
    auto files = files_of(book);
    const std::string text = files[records::records_file];
    std::istringstream in{text};
    std::size_t lines = 0;
    for (std::string line; std::getline(in, line); ++lines) {
        const auto record = records::read_record_line(line);
        CHECK(records::is_signed_by(book.key().public_hex(), record.bytes, record.sig));
        CHECK(record.bytes == book.records()[static_cast<std::size_t>(record.seq - 1)].bytes);
    }
    CHECK(lines == 6); // two of today, three in force, and the device's own
    CHECK(contains(text, book.key().public_hex()));
}

TEST_CASE("the page of the day says plan, people, stops, units with their checks, and trenches")
{
    SignedBook signed_book = site_book();
    signed_book.add("stop_called", "cl-02", {{"why", "Jaw bent"}}, "2026-11-25T07:30:00Z", "hallam");
    const auto book = signed_book.book();
    const auto day = site_day(book, "marsh-lane", rules::Instant{1'795'593'600});
    const std::string text = flowing(paper::day_pdf({"This day", "", "", "", "", true, day.at}, day, book));
    for (const char* part : {"plan-1, issue 2, 2026-11-01 to 2026-12-20: in force.", "supervisor", "Jaw bent",
                             "rep-cl-02", "Mon 1 Mar 2027", "farrow (invented), Wed 25 Nov 2026 07:10",
                             "hangs on no machine here", "no copy here", "nobody goes in, by the plan",
                             "not found safe this shift: nobody goes in", "check done", "Stop called: CL-02"}) {
        CAPTURE(std::string{part});
        CHECK(contains(text, part));
    }
}

TEST_CASE("the pages of the due board and of a receipt have their caution")
{
    const SignedBook signed_book = site_book();
    const auto book = signed_book.book();
    const paper::TitleBlock block{"Board", "", "", "", "", true, rules::Instant{1'795'593'600}};
    const rules::Day today = *rules::parse_day("2026-11-25");
    const std::string due = paper::board_pdf(block, desk::board(book, block.made, today), book, today);
    CHECK(contains(flowing(due), "CL-05"));
    CHECK(contains(flowing(due), paper::caution));
    const std::string receipt = paper::receipt_pdf(block, signed_book.receipt(), "site diary");
    CHECK(contains(flowing(receipt), "COTTER-RECEIPT 1 " + signed_book.key().device()));
    CHECK(contains(flowing(receipt), paper::caution));
}

TEST_SUITE_END();
