// A day that nobody chose is never taken: an examination's day decides for half a year.

#include "number_pad.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;

namespace {

void open_the_day(Rig& rig)
{
    for (const char* each : {"Examined", "CL-02", "K. Sefton (invented)", "Without", "Day of the examination"})
        rig.tap(each);
}

void enter(Rig& rig, const std::string& typed)
{
    rig.type(typed);
    rig.key(ImGuiKey_Enter);
}

} // namespace

TEST_CASE("eight digits are a day, year or day first")
{
    for (const char* typed : {"20260831", "31082026", "31.08.2026", "2026-08-31"}) {
        CAPTURE(typed);
        tests::SampleBook sample;
        Rig rig{sample.store(), ui::Door::yard};
        open_the_day(rig);
        enter(rig, typed);
        CHECK(rig.shows("Mon 31 Aug 2026"));
        CHECK(rig.target("Sign it"));
    }
}

TEST_CASE("what is no day, is cut short or was chosen by nobody is not taken")
{
    for (const char* typed : {"2026112", "31022026", "99999999", ""}) {
        CAPTURE(typed);
        tests::SampleBook sample;
        Rig rig{sample.store(), ui::Door::yard};
        open_the_day(rig);
        enter(rig, typed);
        CHECK_FALSE(rig.target("Sign it"));
        CHECK(rig.shows(*typed ? "is no day" : "nobody has chosen one yet"));
        rig.key(ImGuiKey_Enter);
        CHECK_FALSE(rig.target("Sign it"));
    }
}

TEST_CASE("a wheel that is turned there and back has chosen the day that it showed")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    open_the_day(rig);
    rig.tap("+");
    rig.tap("-");
    rig.tap("Take it");
    CHECK(rig.shows("Wed 25 Nov 2026"));
    CHECK(rig.target("Sign it"));
}

TEST_CASE("today is one touch, and taken by another")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    open_the_day(rig);
    rig.tap("Today");
    CHECK(rig.shows("Wed 25 Nov 2026"));
    CHECK_FALSE(rig.target("Sign it"));
    rig.tap("Take it");
    CHECK(rig.target("Sign it"));
}

TEST_CASE("a decimal comma is the decimal point")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::none}; // for its theme and keyboard
    ui::NumberPad pad;
    ImGui::GetIO().AddInputCharactersUTF8("6,2");
    ImGui::NewFrame();
    ImGui::Begin("sheet");
    ui::Sheet sheet{rig.theme()};
    pad.draw(sheet, {"Tilt", "", "\u00b0", false, true, {"Back"}});
    ImGui::End();
    ImGui::Render();
    CHECK(pad.typed == "6.2");
}
