// Lists and searches of great fleets: what a frame costs, and how they are stopped.

#include "rig.hpp"

#include "written.hpp"

#include <doctest/doctest.h>

#include <ctime>

using namespace cotter;
using records::Json;

namespace {

// Units that are made as they are asked for; nothing else is in the book.
class Fleet : public records::Book {
public:
    explicit Fleet(std::size_t count) : count_{count} {}

    records::BookState state() const override { return {}; }
    std::vector<records::Record> append(std::vector<records::Entry>) override
    {
        throw std::logic_error{"is only read"};
    }
    std::optional<records::Fact> fact(const std::string& kind, const std::string& key) const override
    {
        if (kind != "unit" || !key.starts_with("u-"))
            return std::nullopt;
        records::Fact fact;
        fact.key = {kind, key};
        fact.doc = {{"id", key},     {"tag", key},           {"owner_firm", "Ellerthwick Plant Hire (invented)"},
                    {"serial", key}, {"role", "attachment"}, {"class", "accessory"},
                    {"owner", "own"}};
        return fact;
    }
    std::vector<records::Fact> facts(const std::string& kind) const override
    {
        std::vector<records::Fact> all;
        for (const std::string& key : keys(kind))
            all.push_back(*fact(kind, key));
        return all;
    }
    std::vector<records::Fact> facts_about(const std::string&, const std::string&) const override { return {}; }
    std::vector<std::string> keys(const std::string& kind) const override
    {
        std::vector<std::string> all;
        for (std::size_t i = 0; kind == "unit" && i < count_; ++i)
            all.push_back("u-" + std::to_string(100'000 + i));
        return all;
    }
    std::size_t units_with_tag(const std::string&) const override { return 1; }
    std::optional<std::string> private_value(const std::string&, const std::string&) const override { return {}; }
    std::optional<records::Record> find(const std::string&) const override { return {}; }
    std::vector<records::Record> newest(const std::string&, std::size_t) const override { return {}; }

private:
    std::size_t count_;
};

double cpu_ms() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

double cpu_of_a_turning_frame(tests::Rig& rig)
{
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {640, 300});
    rig.frame();
    constexpr int frames = 300;
    const double before = cpu_ms();
    for (int i = 0; i < frames; ++i) {
        io.MouseWheel = -3; // 45 mm, more than two lines
        rig.frame();
    }
    return (cpu_ms() - before) / frames;
}

} // namespace

TEST_CASE("a list of 100,000 units scrolls at under 4 ms of CPU a frame, and says how far it is read")
{
    Fleet fleet{100'000};
    tests::Rig rig{fleet, ui::Door::yard};
    rig.frame();
    CHECK(rig.shows("of 100000 units"));
    rig.tap("Stop reading");
    CHECK_FALSE(rig.target("Stop reading"));
    const double a_frame = cpu_of_a_turning_frame(rig);
    MESSAGE("CPU a frame: ", a_frame, " ms");
    CHECK(a_frame < 4);
    CHECK_FALSE(rig.shows("u-100000")); // it has moved
}

TEST_CASE("a search through 100,000 units says how far it is, and can be stopped")
{
    Fleet fleet{100'000};
    tests::Rig rig{fleet, ui::Door::yard};
    rig.tap("Stop reading");
    rig.type("u-19990");
    rig.key(ImGuiKey_Enter);
    CHECK(rig.shows("of 100000 units"));
    rig.tap("Stop reading");
    CHECK(rig.target("Read on"));
    CHECK_FALSE(rig.target("Stop reading"));
    CHECK_FALSE(rig.shows("No tag in this book")); // what was not looked at may have it
    rig.tap("Read on");
    for (int i = 0; i < 2000 && rig.target("Stop reading"); ++i)
        rig.frame();
    CHECK(rig.shows("u-199900"));
    CHECK_FALSE(rig.shows("No tag in this book"));
    rig.tap("Back");
    CHECK(rig.target("Orders"));
}

namespace {

double cpu_of_the_due_list(records::Book& book, const char* shows)
{
    tests::Rig rig{book, ui::Door::site};
    for (int i = 0; i < 600 && rig.target("Stop reading"); ++i)
        rig.frame();
    rig.tap("View");
    rig.tap("As a list");
    CHECK(rig.shows(shows));
    return cpu_of_a_turning_frame(rig);
}

void add_units(records::Book& book, int count)
{
    desk::Hand hand;
    hand.by = "quill";
    hand.at = *desk::parse_instant("2026-11-25T07:30:00Z");
    hand.day = rules::utc_day(hand.at);
    const Json like = book.newest("unit", 1).front().entry.body;
    std::vector<records::Entry> units;
    for (int i = 0; i < count; ++i) {
        Json body = like;
        body["tag"] = "ZZ-" + std::to_string(1000 + i);
        body["serial"] = "S" + std::to_string(i);
        units.push_back(desk::entry(hand, "unit", "zz-" + std::to_string(1000 + i), body));
    }
    desk::write(book, std::move(units));
}

} // namespace

// Tests are built without optimisation, so one page is held against the same with few lines.
TEST_CASE("the due list of a stored book of two thousand units costs hardly more a frame than one of twenty")
{
    tests::SampleBook sample;
    const double few = cpu_of_the_due_list(sample.store(), "22 units");
    add_units(sample.store(), 2000);
    const double many = cpu_of_the_due_list(sample.store(), "2022 units");
    MESSAGE("CPU a frame: ", few, " ms of 22 units, ", many, " ms of 2022");
    CHECK(many < few + 4);
}
