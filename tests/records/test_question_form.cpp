// The question is read strictly and written as it was read.

#include "question_form.hpp"
#include "schema_walk.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;
using records::read_question;
using records::write_question;

TEST_SUITE_BEGIN("question form");

namespace {

std::string said_against(const std::string& line)
try {
    read_question(line);
    return "";
} catch (const records::FormError& e) {
    return e.what();
}

Json whole_question()
{
    Json question = whole(records::question_schema());
    question["purpose"] = "lift";
    return question;
}

Json read_and_written(const Json& question) { return write_question(read_question(question.dump())); }

bool is_needed(const Place& place)
{
    return place.name == "id" || place.name == "items[0].tag" || place.name == "items" || place.name == "items[0]";
}

} // namespace

TEST_CASE("a question with everything in it is written as it was read")
{
    const Json question = whole_question();
    CHECK(question.size() == 27);
    CHECK(read_and_written(question) == question);
}

TEST_CASE("a question written and read again is the same question")
{
    const std::string once = read_and_written(whole_question()).dump();
    CHECK(write_question(read_question(once)).dump() == once);
}

TEST_CASE("an empty question is written as its id alone")
{
    CHECK(read_and_written({{"id", "q"}}) == Json{{"id", "q"}, {"purpose", "use"}});
}

TEST_CASE("a wrong type anywhere is refused with its place and what is accepted")
{
    int tried = 0;
    const Json good = whole_question();
    for (const Place& place : places_in(records::question_schema()))
        for (const Json& wrong : wrong_for(place.schema)) {
            Json question = good;
            question[place.pointer] = wrong;
            const std::string said = said_against(question.dump());
            CAPTURE(place.name);
            CAPTURE(wrong.dump());
            CAPTURE(said);
            CHECK(said.starts_with(place.name + ": "));
            CHECK(said.find('\n') == std::string::npos);
            CHECK(said.find("accepted") != std::string::npos);
            ++tried;
        }
    CHECK(tried > 800);
}

TEST_CASE("a number too great for 64 bits with a sign is refused, and not read as one below nought")
{
    for (const char* number : {"9223372036854775808", "18446744073709551615", "18446744073709551616"})
        CHECK(said_against(std::string{R"({"id": "q", "items": [{"tag": "A", "mass_kg": )"} + number + "}]}") != "");
}

TEST_CASE("an unknown field anywhere is refused by its place")
{
    std::vector<Place> places = places_in(records::question_schema());
    places.push_back({Json::json_pointer{}, "", records::question_schema()});
    const Json good = whole_question();
    for (const Place& place : places) {
        if (bare(place.schema).value("additionalProperties", Json(true)) != false)
            continue;
        Json question = good;
        question[place.pointer / "colour"] = "red";
        const std::string said = said_against(question.dump());
        CAPTURE(place.name);
        CHECK(said.starts_with((place.name.empty() ? "" : place.name + ".") + "colour is not a field; accepted are "));
    }
}

TEST_CASE("a doubled field is refused wherever it stands")
{
    for (const std::string line :
         {R"({"id": "q", "id": "q"})", R"({"id": "q", "now": 1, "now": 2})",
          R"({"id": "q", "pipe": {"id": "p", "id": "p"}})", R"({"id": "q", "items": [{"tag": "A", "tag": "A"}]})",
          R"({"id": "q", "people": {"operator": null, "operator": null}})"}) {
        CAPTURE(line);
        CHECK(said_against(line).find("stands twice in one object") != std::string::npos);
    }
    CHECK(said_against(R"({"id": "q", "pipe": {"id": "q"}, "chart": {"id": "q"}})") == "");
}

TEST_CASE("an id twice in its list is refused")
{
    for (const std::string list : {"reports", "events", "setting_records"})
        CHECK(
            said_against(R"({"id": "q", ")" + list + R"(": [{"id": "a"}, {"id": "a"}]})").find("\"a\" stands twice") !=
            std::string::npos);
    for (const std::string list : {"stops", "interims", "declarations", "sheet"})
        CHECK(said_against(R"({"id": "q", "items": [{"tag": "A", ")" + list + R"(": [{"id": "a"}, {"id": "a"}]}]})")
                  .find("stands twice") != std::string::npos);
    CHECK(said_against(R"({"id": "q", "items": [{"tag": "A"}, {"tag": "A"}]})").find("stands twice") !=
          std::string::npos);
}

TEST_CASE("null is not known and the same as missing")
{
    const Json question = whole_question();
    for (const Place& place : places_in(records::question_schema())) {
        if (is_needed(place) || place.name.ends_with("[0]") || place.name.ends_with(".operator") ||
            place.name == "purpose")
            continue;
        Json null = question, missing = question;
        null[place.pointer] = nullptr;
        missing[place.pointer.parent_pointer()].erase(place.pointer.back());
        CAPTURE(place.name);
        CHECK(read_and_written(null) == read_and_written(missing));
    }
}

TEST_CASE("the purpose is one of six, and anything else is use")
{
    for (const std::string purpose : {"lift", "use", "repair", "examination", "return", "scrap"})
        CHECK(read_and_written({{"id", "q"}, {"purpose", purpose}})["purpose"] == purpose);
    for (const Json& other :
         {Json("hoist"), Json(""), Json(7), Json(true), Json::array(), Json::object(), Json(1.5), Json(nullptr)})
        CHECK(read_and_written({{"id", "q"}, {"purpose", other}})["purpose"] == "use");
}

TEST_CASE("a range is any, or ends that may be open")
{
    for (const Json& range :
         {Json("any"), Json{{"least", 400}, {"greatest", 600}}, Json{{"least", 400}}, Json{{"greatest", 600}}}) {
        const Json question = {{"id", "q"},
                               {"purpose", "lift"},
                               {"items", {{{"tag", "A"}, {"model", {{"id", "m"}, {"bore_mm", range}}}}}}};
        CAPTURE(range.dump());
        CHECK(read_and_written(question) == question);
    }
    for (const std::string range : {"\"all\"", "7", "[400, 600]", R"({"least": "400"})", R"({"from": 400})"}) {
        CAPTURE(range);
        CHECK(said_against(R"({"id": "q", "items": [{"tag": "A", "model": {"bore_mm": )" + range + "}}]}")
                  .starts_with("items[0].model.bore_mm"));
    }
}

TEST_CASE("what is no JSON, or not all of the line, is refused")
{
    for (const std::string& line :
         {std::string{}, std::string{"{"}, std::string{R"({"id": "q"} x)"}, std::string{R"({"id": "q",})"},
          std::string{R"({'id': 'q'})"}, std::string{R"({"id": "q", "now": NaN})"},
          std::string{R"({"id": "q", "now": 0x1})"}, std::string{R"({"id": "q", "now": 01})"},
          std::string{"{\"id\": \"\xc3\x28\"}"}, std::string{"{\"id\": \"q\n\"}"}, std::string(100'000, '[')}) {
        const std::string said = said_against(line);
        CHECK(said != "");
        CHECK(said.find('\n') == std::string::npos);
    }
}

TEST_CASE("the schema names every field of the question's form")
{
    const Json schema = records::question_schema();
    CHECK(schema["type"] == "object");
    CHECK(schema["required"] == Json::array({"id"}));
    for (const std::string field :
         {"id",       "purpose", "day",       "now",    "shift",   "site",       "items",           "no_hitch",
          "no_sling", "reports", "clearings", "events", "answers", "coupled_at", "setting_records", "pipe",
          "move",     "chart",   "set_up",    "people", "plan",    "place",      "trench",          "thread",
          "order",    "clock",   "book"}) {
        CAPTURE(field);
        CHECK(schema["properties"].contains(field));
    }
    CHECK(schema["properties"].size() == 27);
}

TEST_CASE("a record's part is read leniently, its other keys left alone")
{
    const auto pipe = records::read_pipe({{"id", "sk-450"}, {"name", "DN 450"}, {"dn", 450}, {"stated_kg", 690}});
    CHECK(pipe.stated == rules::Kilograms{690});
    CHECK_THROWS_AS(records::read_pipe({{"stated_kg", "heavy"}}), records::FormError);
}

TEST_SUITE_END();
