// Everything works with the keyboard alone: a new site to its first person, and a thrown list runs on by itself.

#include "accept.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;

namespace {

const ui::Seen* under_keyboard(const Rig& rig)
{
    for (const ui::Seen& each : rig.seen())
        if (each.target && each.has_keyboard)
            return &each;
    return nullptr;
}

// Towards the target: the longer way first, the other where that leads nowhere.
void step_to(Rig& rig, const ui::Seen& from, const ui::Seen& to)
{
    const float across = to.x + to.w / 2 - from.x - from.w / 2, down = to.y + to.h / 2 - from.y - from.h / 2;
    const ImGuiKey sideways = across > 0 ? ImGuiKey_RightArrow : ImGuiKey_LeftArrow,
                   upright = down > 0 ? ImGuiKey_DownArrow : ImGuiKey_UpArrow;
    const std::string before = from.text;
    const bool is_flat = std::abs(across) > std::abs(down);
    rig.key(is_flat ? sideways : upright);
    if (rig.keyboard_is_at(before))
        rig.key(is_flat ? upright : sideways);
}

// By the arrows, as somebody without a pointer goes; the frame round a target is where the keyboard stands.
void go_to(Rig& rig, const std::string& words)
{
    for (int i = 0; i < 40 && !rig.keyboard_is_at(words); ++i) {
        const ui::Seen *from = under_keyboard(rig), *to = rig.target(words);
        if (!to)
            throw std::runtime_error{"not on the screen: " + words};
        if (from)
            step_to(rig, ui::Seen{*from}, ui::Seen{*to});
        else
            rig.key(ImGuiKey_DownArrow);
    }
    if (!rig.keyboard_is_at(words))
        throw std::runtime_error{"the arrows do not lead to " + words};
}

void press(Rig& rig, const std::string& words)
{
    go_to(rig, words);
    rig.key(ImGuiKey_Space);
    rig.now = rig.now + rules::Instant{60};
    rig.ticks += 1;
    rig.frame();
    rig.frame();
}

} // namespace

TEST_CASE("a new site is begun without a pointer")
{
    tests::Folder folder;
    const auto at = *desk::parse_instant("2026-11-25T08:00:00Z");
    const auto store = db::Store::make(folder.path() / "book.db", {"this device", true, at, rules::utc_day(at)});
    store->accept_by(desk::accept);
    store->check_on_opening();
    Rig rig{*store, ui::Door::site};
    press(rig, "Begin");
    press(rig, "Somebody new");
    rig.type("P. Ashby (invented)");
    rig.frame();
    rig.key(ImGuiKey_Enter);
    for (const char* each : {"Seen", "Site manager", "Go on", "Go on", "Go on"})
        press(rig, each);
    rig.type("Marsh Lane (invented)");
    rig.frame();
    rig.key(ImGuiKey_Escape); // out of the line, which keeps what was typed
    press(rig, "Go on");
    CHECK(store->newest("admission", 1).size() == 1);
    CHECK(store->fact("site", store->keys("site").front())->doc["name"] == "Marsh Lane (invented)");
}

TEST_CASE("a thrown list wants frames until it comes to rest")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {640, 600});
    rig.frame();
    ui::feed_press(io, true);
    rig.frame();
    for (int i = 1; i <= 10; ++i) {
        ui::feed_pointer(io, {640, 600 - 14.0F * static_cast<float>(i)});
        rig.frame();
    }
    ui::feed_press(io, false);
    rig.frame();
    CHECK(rig.again_in() == 0);
    int frames = 0;
    for (; rig.again_in() == 0 && frames < 1000; ++frames)
        rig.frame();
    CHECK(frames > 10);
    CHECK(frames < 1000);
}

TEST_CASE("Escape goes back from a list, a choice and a pad")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    for (const char* each : {"Orders", "Find"}) {
        rig.tap(each);
        CHECK_FALSE(rig.shows("Units, papers, settings"));
        rig.key(ImGuiKey_Escape);
        CHECK(rig.shows("Units, papers, settings"));
    }
    rig.tap("Examined");
    rig.key(ImGuiKey_Escape);
    CHECK(rig.shows("Units, papers, settings"));
}
