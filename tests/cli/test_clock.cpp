// A clock that jumped is noticed before the try of a PIN is written.

#include "pins.hpp"
#include "program.hpp"
#include "store.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <fstream>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("clock");

namespace {

// This boot, and seconds since it, as the program sees them. Source: proc(5).
std::string boot()
{
    std::string id;
    std::ifstream{"/proc/sys/kernel/random/boot_id"} >> id;
    return id;
}

std::int64_t seconds_since_boot()
{
    double seconds = 0;
    std::ifstream{"/proc/uptime"} >> seconds;
    return static_cast<std::int64_t>(seconds);
}

std::int64_t wall()
{
    const auto since = std::chrono::system_clock::now().time_since_epoch();
    return std::chrono::duration_cast<std::chrono::seconds>(since).count();
}

} // namespace

TEST_CASE("a clock that ran an hour further than the boot did is noticed by a command that is signed with a PIN")
{
    const Scratch scratch;
    const fs::path path = scratch.folder() / "book.db", pin = scratch.folder() / "pin";
    desk::Hand hand;
    hand.by = "quill";
    hand.at = rules::Instant{wall() - 3600};
    hand.day = rules::utc_day(hand.at);
    hand.boot = boot();
    hand.boot_seconds = seconds_since_boot();
    REQUIRE_FALSE(hand.boot.empty());
    {
        const auto store = db::Store::make(path, {"tablet", false, hand.at, hand.day});
        store->append({entry(hand, "site", "s", {{"name", "S (invented)"}, {"zone", "Europe/London"}}),
                       entry(hand, "person", "quill", {{"name", "Q (invented)"}}),
                       entry(hand, "admission", "quill", {{"site", "s"}, {"card_seen", true}, {"roles", {"manager"}}}),
                       desk::set_pin(hand, "quill", "402716")});
    }
    write_bytes(pin, "402716\n");
    fs::permissions(pin, fs::perms::owner_read);
    const Ran ran = call(
        {"record", "place_confirmed", "--store", path.string(), "--as", "quill", "--pin-file", pin.string()},
        R"({"about": "B", "body": {"site": "s", "level": true, "ground_and_edge": true, "services": true, "zone_closed": true}})");
    CHECK(ran.err == "");
    CHECK(ran.code == 0);
    CHECK(contains(call({"list", "clock_notice", "--store", path.string()}).out, "jump"));
}

TEST_SUITE_END();
