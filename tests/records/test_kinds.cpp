// Every kind of record takes its own example, and says which field is wrong in anything else.

#include "kinds.hpp"
#include "schema_walk.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;
using records::kinds;

TEST_SUITE_BEGIN("kinds");

namespace {

// What is said against a body; "" if it is accepted.
std::string said_against(const records::Kind& kind, const Json& body)
try {
    check_body(kind, body);
    return "";
} catch (const records::FormError& e) {
    return e.what();
}

Json example(const records::Kind& kind) { return kind.schema.at("examples").at(0); }

// The example with another value at a place, made where the example has nothing; nothing if it cannot be put there.
Json with(const records::Kind& kind, const Place& place, const Json& value)
{
    Json body = example(kind);
    body[place.pointer] = value;
    return body;
}

bool is_one_line(const std::string& text) { return !text.empty() && text.find('\n') == std::string::npos; }

// The field that a message is to name; of a range that may also be "any" it is the range.
std::string field_of(const Place& place)
{
    for (const std::string end : {".least", ".greatest"})
        if (place.name.ends_with("_mm" + end))
            return place.name.substr(0, place.name.size() - end.size());
    return place.name;
}

bool names_it(const std::string& said, const std::string& place)
{
    return is_one_line(said) && said.starts_with(place + ": ") && said.find("is not accepted; ") != std::string::npos &&
           said.ends_with(" is");
}

} // namespace

TEST_CASE("each kind's own example is accepted")
{
    CHECK(kinds().size() > 45);
    for (const auto& kind : kinds()) {
        CAPTURE(kind.name);
        CHECK(said_against(kind, example(kind)) == "");
        CHECK(kind.schema.at("x-example-about").get<std::string>() != "");
        CHECK(kind.schema.at("x-about").get<std::string>() != "");
        CHECK(kind.schema.at("title").get<std::string>() != "");
    }
}

TEST_CASE("each kind is found by its name, in name order, and no other is")
{
    std::string last;
    for (const auto& kind : kinds()) {
        CHECK(records::find_kind(kind.name) == &kind);
        CHECK(last < kind.name);
        last = kind.name;
    }
    CHECK(records::find_kind("pipes") == nullptr);
    CHECK(records::find_kind("") == nullptr);
}

// The least that a site, a yard and a cab write.
TEST_CASE("every kind that a site needs is there")
{
    for (const std::string name : {"site",
                                   "shift",
                                   "model",
                                   "unit",
                                   "pipe",
                                   "chart",
                                   "check_sheet",
                                   "person",
                                   "admission",
                                   "device",
                                   "examination_report",
                                   "declaration",
                                   "interim_statement",
                                   "compared",
                                   "defect_found",
                                   "defect_cleared",
                                   "stop_called",
                                   "stop_lifted",
                                   "event",
                                   "event_assessed",
                                   "setting_changed",
                                   "setting_seen",
                                   "headplate_fitted",
                                   "coupled",
                                   "uncoupled",
                                   "lock_seen",
                                   "machine_set_up",
                                   "devices_proved",
                                   "rigging",
                                   "pre_use_check",
                                   "place_confirmed",
                                   "trench_inspection",
                                   "fall_of_ground",
                                   "lift_plan",
                                   "briefing",
                                   "lift_asked",
                                   "picked_up",
                                   "set_down",
                                   "lift_done",
                                   "lift_without_answer",
                                   "order",
                                   "dispatched",
                                   "received",
                                   "returned",
                                   "off_hire",
                                   "correction",
                                   "clock_notice"}) {
        CAPTURE(name);
        CHECK(records::find_kind(name) != nullptr);
    }
}

TEST_CASE("everything filled in at once is accepted by every kind")
{
    for (const auto& kind : kinds()) {
        CAPTURE(kind.name);
        CHECK(said_against(kind, whole(kind.schema)) == "");
    }
}

TEST_CASE("a wrong value anywhere in any kind is refused with its place and what is accepted")
{
    int tried = 0;
    for (const auto& kind : kinds())
        for (const Place& place : places_in(kind.schema))
            for (const Json& wrong : wrong_for(place.schema)) {
                const std::string said = said_against(kind, with(kind, place, wrong));
                CAPTURE(kind.name);
                CAPTURE(place.name);
                CAPTURE(wrong.dump());
                CAPTURE(said);
                CHECK(names_it(said, field_of(place)));
                ++tried;
            }
    CHECK(tried > 1000);
}

TEST_CASE("an unknown field anywhere in any kind is refused with those that are accepted")
{
    for (const auto& kind : kinds()) {
        std::vector<Place> places = places_in(kind.schema);
        places.push_back({Json::json_pointer{}, "", kind.schema});
        for (const Place& place : places) {
            if (bare(place.schema).value("additionalProperties", Json(true)) != false)
                continue;
            Json object = whole(place.schema);
            object["colour"] = "red";
            const std::string said = said_against(kind, place.name.empty() ? object : with(kind, place, object));
            CAPTURE(kind.name);
            CAPTURE(said);
            CHECK(is_one_line(said));
            const bool or_any = place.schema.contains("anyOf"); // then the whole range is named
            CHECK(said.starts_with(or_any ? place.name + ": "
                                          : (place.name.empty() ? "" : place.name + ".") +
                                                "colour is not a field; accepted are "));
        }
    }
}

TEST_CASE("a needed field that is missing or null is refused with its name and what it is")
{
    for (const auto& kind : kinds())
        for (const Json& name : kind.schema.value("required", Json::array())) {
            Json without = example(kind), null = example(kind);
            without.erase(name.get<std::string>());
            null[name.get<std::string>()] = nullptr;
            CAPTURE(kind.name);
            CAPTURE(name.get<std::string>());
            for (const std::string& said : {said_against(kind, without), said_against(kind, null)}) {
                CHECK(is_one_line(said));
                CHECK(said.starts_with(name.get<std::string>() + " is missing; "));
                CHECK(said.ends_with(" is needed"));
            }
        }
}

TEST_CASE("null is not known, and accepted wherever nothing is needed")
{
    for (const auto& kind : kinds()) {
        const Json required = kind.schema.value("required", Json::array());
        for (const auto& [name, unused] : kind.schema.at("properties").items())
            if (std::find(required.begin(), required.end(), Json(name)) == required.end()) {
                Json body = example(kind);
                body[name] = nullptr;
                CAPTURE(kind.name);
                CHECK(said_against(kind, body) == "");
            }
    }
}

TEST_CASE("a body that is no object is refused")
{
    for (const Json& body : {Json(7), Json("text"), Json::array(), Json(nullptr), Json(true)}) {
        CAPTURE(body.dump());
        CHECK(said_against(*records::find_kind("pipe"), body) != "");
    }
}

TEST_CASE("every field of every kind is described, for the help")
{
    for (const auto& kind : kinds())
        for (const Place& place : places_in(kind.schema)) {
            if (place.name.ends_with("[0]") || place.name.ends_with(".operator"))
                continue; // has no name of its own
            CAPTURE(kind.name);
            CAPTURE(place.name);
            CHECK(place.schema.value("description", "") != "");
        }
}

TEST_CASE("names and other particulars of people are private, and nothing but text is")
{
    const auto fields_of = [](const char* kind) { return records::private_fields(*records::find_kind(kind)); };
    using Fields = std::vector<std::string>;
    CHECK(fields_of("person") == Fields{"name"});
    CHECK(fields_of("examination_report") == Fields{"authenticator", "employment", "examiner", "qualifications"});
    CHECK(fields_of("pipe").empty());
    for (const auto& kind : kinds())
        for (const std::string& field : records::private_fields(kind))
            CHECK(type_of(kind.schema["properties"][field]) == "string");
}

TEST_SUITE_END();
