// The Yard's list of a hundred thousand units: what a frame costs while it scrolls.

#include "rig.hpp"

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

} // namespace

TEST_CASE("a list of 100,000 units scrolls at under 4 ms of CPU a frame, and says how far it is read")
{
    Fleet fleet{100'000};
    tests::Rig rig{fleet, ui::Door::yard};
    rig.frame();
    CHECK(rig.shows("of 100000 units"));
    rig.tap("Stop reading");
    CHECK_FALSE(rig.target("Stop reading"));
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {640, 300});
    rig.frame();
    constexpr int frames = 300;
    const double before = cpu_ms();
    for (int i = 0; i < frames; ++i) {
        io.MouseWheel = -3; // 45 mm, more than two lines
        rig.frame();
    }
    const double a_frame = (cpu_ms() - before) / frames;
    MESSAGE("CPU a frame: ", a_frame, " ms");
    CHECK(a_frame < 4);
    CHECK_FALSE(rig.shows("u-100000")); // it has moved
}
