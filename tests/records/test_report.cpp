// A report of thorough examination carries every particular that the law lists.

#include "kinds.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

using namespace cotter;
using records::Json;

TEST_SUITE_BEGIN("report of thorough examination");

namespace {

// Where a particular stands in the record, and under which name its state is kept if it may be typed later.
struct Particular {
    const char *paragraph, *what, *field, *state;
};

// Source: The Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307), Schedule 1, as made.
const std::vector<Particular> schedule_1{
    {"1", "employer's name and address", "employer", "employer"},
    {"2", "address of the premises", "premises", "premises"},
    {"3", "particulars that identify the equipment", "identity", ""},
    {"3", "date of manufacture, where known", "manufactured", "manufactured"},
    {"4", "date of the last thorough examination", "last_examined", "last_examined"},
    {"5", "safe working load", "swl_kg", ""},
    {"5", "safe working load for the last configuration", "configurations.swl_kg", ""},
    {"6(a)", "first examination after installation or assembly", "installation", "installation"},
    {"6(b)", "installed correctly and safe to operate", "installation", "installation"},
    {"7(a)", "basis of the examination", "basis", ""},
    {"7(b)", "would be safe to operate", "safe", ""},
    {"8(a)", "part with a defect, and the defect", "defects.part", "defect_parts"},
    {"8(b)", "repair, renewal or alteration of a present danger", "defects.remedy", ""},
    {"8(c)(i)", "time by which it could become a danger", "defects.by_day", ""},
    {"8(c)(ii)", "repair, renewal or alteration of a future danger", "defects.remedy", ""},
    {"8(d)", "latest date of the next thorough examination", "latest", ""},
    {"8(e)", "particulars of any test", "tests", "tests"},
    {"8(f)", "date of the examination", "examined", ""},
    {"9", "name of the author", "examiner", ""},
    {"9", "qualifications and address of the author", "qualifications", "qualifications"},
    {"9", "self-employed, or the employer's name and address", "employment", "employment"},
    {"10", "who authenticates on behalf of the author", "authenticator", "authenticator"},
    {"11", "date of the report", "report_day", "report_day"}};

const Json& schema() { return records::find_kind("examination_report")->schema; }

// The schema of "defects.part", through the items of lists; null if there is none.
Json field(const std::string& path)
{
    Json at = schema();
    std::istringstream in{path};
    for (std::string name; std::getline(in, name, '.');) {
        if (at.contains("items"))
            at = Json(at["items"]);
        if (!at.contains("properties") || !at["properties"].contains(name))
            return {};
        at = Json(at["properties"][name]);
    }
    return at;
}

} // namespace

TEST_CASE("every particular of Schedule 1 has its place in the record")
{
    for (const Particular& each : schedule_1) {
        CAPTURE(std::string{each.paragraph});
        CAPTURE(std::string{each.what});
        CHECK(field(each.field).is_object());
    }
}

TEST_CASE("a particular that may be typed later says whether it is given, not typed, lacking or not applicable")
{
    const Json states{"given", "not_typed", "lacking", "not_applicable"};
    for (const Particular& each : schedule_1) {
        if (std::string{each.state}.empty())
            continue;
        CAPTURE(std::string{each.paragraph});
        CAPTURE(std::string{each.state});
        CHECK(field(std::string{"particulars."} + each.state).value("enum", Json{}) == states);
    }
}

TEST_CASE("there is no state of anything that Schedule 1 does not list")
{
    const Json particulars = field("particulars").at("properties");
    for (auto at = particulars.begin(); at != particulars.end(); ++at) {
        CAPTURE(at.key());
        CHECK(std::any_of(schedule_1.begin(), schedule_1.end(),
                          [&](const Particular& each) { return at.key() == each.state; }));
    }
}

// Source: Schedule 1, paragraph 7(a)(i) to (iv), and paragraph 6 for the fifth.
TEST_CASE("the basis is one of the four of paragraph 7, or the installation of paragraph 6")
{
    CHECK(field("basis")["enum"] == Json{"six_months", "twelve_months", "scheme", "exceptional", "installation"});
}

// Source: Schedule 1, paragraph 8(b) and (c).
TEST_CASE("a defect is a danger now, or could become one")
{
    CHECK(field("defects.danger")["enum"] == Json{"present", "could_become"});
}

TEST_CASE("the seven items that are typed on receipt each have a field, and names of people are private")
{
    for (const std::string name : {"units", "examiner", "basis", "examined", "latest", "swl_kg", "safe"})
        CHECK(field(name).is_object());
    for (const std::string name : {"examiner", "qualifications", "employment", "authenticator"})
        CHECK(field(name).value("x-private", false));
}

TEST_SUITE_END();
