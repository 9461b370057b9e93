#include "rig.hpp"

#include "lift_question.hpp"

#include "decide.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using records::Json;
using tests::Rig;
using tests::SampleBook;

namespace {

void go_to_the_sheet(Rig& rig, const std::string& pipe, const std::string& state)
{
    rig.tap("I. Farrow (invented)");
    rig.tap("EX-21");
    rig.tap("Mark B");
    rig.tap(pipe);
    rig.tap(state);
}

std::string name_of(const records::Book& book, const char* kind, const std::string& id)
{
    return book.fact(kind, id)->doc.value("name", "");
}

// Asks for the lift and goes through its card.
void ask_and_read(Rig& rig)
{
    rig.tap("Lift");
    if (rig.target("All so"))
        rig.tap("All so");
    while (rig.target("Read"))
        rig.tap("Read");
}

// Answers every item of every sheet that is asked for.
void check_all(Rig& rig)
{
    rig.tap("Check");
    for (int i = 0; i < 200 && rig.target("Right"); ++i)
        rig.tap("Right");
}

void change_setting(Rig& rig, const std::string& to)
{
    rig.tap("Move");
    for (int i = 0; i < 30 && rig.target("Done"); ++i)
        rig.tap("Done");
    rig.tap(to);
}

std::string state_on_record(const records::Book& book)
{
    return desk::doc(book, "setting", desk::find_unit(book, "CL-02"))["records"].back()["state"].get<std::string>();
}

// Where the pin must not stand for the pipe of the sample's story, and where it must.
struct Story {
    std::string wrong, right;
};
Story story(const records::Book& book)
{
    const auto unit = desk::find_unit(book, "CL-02");
    const auto model = records::read_model(desk::doc(book, "model", desk::doc(book, "unit", unit)["model"]));
    const auto pipe = records::read_pipe(desk::doc(book, "pipe", "sk-600"));
    Story found;
    for (const auto& state : model.states)
        (*state.least <= *pipe.barrel && *pipe.barrel <= *state.greatest ? found.right : found.wrong) = *state.name;
    return found;
}

} // namespace

TEST_CASE("before anybody has said how it stands, nothing is drawn that shows what is wanted")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    rig.tap("I. Farrow (invented)");
    rig.tap("EX-21");
    rig.tap("Mark B");
    rig.tap(name_of(sample.store(), "pipe", "sk-600"));
    CHECK(rig.shows("Say what you see"));
    CHECK_FALSE(rig.shows("wants"));
    rig.tap("Back");
    CHECK(rig.shows("DO NOT LIFT"));
    CHECK_FALSE(rig.shows("wants"));
    CHECK(rig.shows("Look at the attachment first"));
}

TEST_CASE("a shift: wrong hole, check, setting changed by two, the items it touches again, MAY LIFT, lift done")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    const Story holes = story(sample.store());
    const std::string standing = state_on_record(sample.store());
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), standing);
    CHECK(rig.shows("DO NOT LIFT"));
    CHECK(rig.shows("Set to " + standing));
    check_all(rig);
    CHECK(rig.shows("DO NOT LIFT"));
    change_setting(rig, holes.right);
    CHECK(rig.shows("A second trained person"));
    CHECK_FALSE(rig.target("I. Farrow (invented)"));
    for (const auto& each : rig.seen())
        if (each.target && each.text != "Later") {
            rig.tap(std::string{each.text});
            break;
        }
    rig.tap(holes.right);
    CHECK(rig.shows("Part of the check to do again"));
    check_all(rig);
    CHECK(rig.shows("MAY LIFT"));
    CHECK(rig.shows("On the signaller's signal, nobody inside the zone"));
    ask_and_read(rig);
    rig.tap("Lift done");
    CHECK(rig.shows("MAY LIFT"));

    const auto newest = sample.store().newest("", 2);
    CHECK(newest[0].entry.kind == "lift_done");
    CHECK(newest[1].entry.kind == "lift_asked");
    CHECK(newest[1].entry.body["outcome"] == "may_lift");
    CHECK(sample.store().verify().damaged.empty());
}

TEST_CASE("a stop called in the cab stops the next lift, and nobody is asked for a PIN")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), story(sample.store()).wrong);
    rig.tap("Report");
    rig.tap("Stop");
    rig.tap("CL-02");
    rig.tap("worn or loose");
    bool found = rig.shows("Stop called");
    for (int i = 0; i < 4 && !found; ++i) {
        for (const auto& each : rig.seen())
            if (each.target && each.text.find("more below") != std::string::npos) {
                rig.tap(std::string{each.text});
                break;
            }
        found = rig.shows("Stop called");
    }
    CHECK(found);
    CHECK(sample.store().newest("stop_called", 1).front().entry.who == "farrow");
}

TEST_CASE("standing down ends the shift and leads back to the three doors")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), story(sample.store()).wrong);
    rig.tap("Report");
    rig.tap("Stand down");
    CHECK(rig.shows("for everybody on this site"));
    rig.hold("Hold to stand down");
    CHECK(rig.shows("Photograph this with a phone"));
    rig.tap("Photographed");
    CHECK(rig.shows("never replaces"));
    const auto receipt = sample.store().newest("receipt", 1).front().entry;
    CHECK(receipt.body["records"] == sample.store().state().head.seq - 1);
    CHECK(rig.shows("witnessed just now"));
    CHECK(sample.store().newest("stood_down", 1).size() == 1);
    CHECK(desk::open_shift(sample.store(), desk::current_site(sample.store())).empty());
}

TEST_CASE("a drag that ends on a button does not press it, a tap does")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::none};
    rig.drag("Cab", 60);
    CHECK(rig.target("Cab"));
    rig.tap("Cab");
    CHECK_FALSE(rig.target("Cab"));
}

namespace {

// Everything done that the sample's morning leaves open, up to MAY LIFT.
void make_ready(SampleBook& sample, Rig& rig)
{
    const Story holes = story(sample.store());
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), state_on_record(sample.store()));
    check_all(rig);
    change_setting(rig, holes.right);
    rig.tap("B. Oakes (invented)");
    rig.tap(holes.right);
    check_all(rig);
}

desk::Hand hand_at(const Rig& rig, const std::string& by)
{
    desk::Hand hand;
    hand.by = by;
    hand.at = rig.now;
    hand.day = rules::utc_day(rig.now);
    return hand;
}

} // namespace

TEST_CASE("an item answered stop is in the book at once, whatever is pressed then")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), story(sample.store()).wrong);
    rig.tap("Check");
    rig.tap("Right");
    rig.tap("Stop");
    const auto newest = sample.store().newest("pre_use_check", 1).front().entry;
    REQUIRE(newest.body["answers"].size() == 2);
    CHECK(newest.body["answers"][1]["answer"] == "stop");
    rig.tap("Understood");
    rig.tap("Right");
    rig.tap("Leave it");
    CHECK(sample.store().newest("pre_use_check", 1).front().entry.body["answers"].size() == 1);
    CHECK(rig.shows("DO NOT LIFT"));
}

TEST_CASE("while the load is up the plate says LOAD UP, and a stop that arrives says to set down first")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    ask_and_read(rig);
    CHECK(rig.shows("MAY LIFT"));
    rig.tap("Load is up");
    CHECK(rig.shows("LOAD UP"));
    sample.store().append({call_a_stop(hand_at(rig, "iqbal"), desk::find_unit(sample.store(), "CL-02"), "crack seen")});
    rig.frame();
    CHECK(rig.shows("Set down safely, then stop."));
    rig.tap("Set down, laid");
    CHECK(rig.shows("DO NOT LIFT"));
    CHECK(sample.store().newest("lift_done", 1).size() == 1);
}

TEST_CASE("a lift asked for names people by their ids, for a name in a record could never be taken out again")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    records::Entry card = entry(hand_at(rig, "quill"), "person", "farrow",
                                {{"name", "T. Farrow (invented)"}, {"card_last_day", "2026-01-31"}});
    sample.store().append({card});
    rig.frame();
    ask_and_read(rig);
    const auto asked = sample.store().newest("lift_asked", 1).front();
    CHECK(asked.entry.body["findings"].dump().find("farrow") != std::string::npos);
    CHECK(asked.bytes.find("T. Farrow") == std::string::npos);
}

TEST_CASE("a stop that arrives after the answer offers no lifting, and asks for a load that may hang to be set down")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    ask_and_read(rig);
    sample.store().append({call_a_stop(hand_at(rig, "iqbal"), desk::find_unit(sample.store(), "CL-02"), "crack seen")});
    rig.frame();
    CHECK(rig.shows("DO NOT LIFT"));
    CHECK(rig.shows("If a load hangs, set it down safely, then stop."));
    CHECK_FALSE(rig.target("Load is up"));
    CHECK_FALSE(rig.target("Lift done"));
}

TEST_CASE("a program that is opened while a load is up by the record asks for it to be set down")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::cab};
        make_ready(sample, rig);
        ask_and_read(rig);
        rig.tap("Load is up");
    }
    Rig rig{sample.store(), ui::Door::cab};
    rig.tap("I. Farrow (invented)");
    CHECK(rig.shows("LOAD UP"));
    CHECK(rig.shows("If a load hangs, set it down safely, then stop."));
    rig.tap("Set down, laid");
    CHECK(rig.target("EX-21"));
}

TEST_CASE("with no shift open the operator opens one, which the book takes")
{
    SampleBook sample;
    const std::string site = desk::current_site(sample.store());
    Rig rig{sample.store(), ui::Door::cab};
    rig.now = rig.now + rules::Instant{86'400}; // yesterday's has ended
    rig.tap("I. Farrow (invented)");
    CHECK(rig.shows("No shift is open"));
    rig.tap("10 hours");
    const auto shift = desk::open_shift(sample.store(), site);
    CHECK(shift["end"].get<std::int64_t>() - shift["start"].get<std::int64_t>() == 10 * 3600);
    CHECK(rig.target("EX-21"));
}

TEST_CASE("what must hold before a pin is drawn is asked each time, also where the steps were left in the middle")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), state_on_record(sample.store()));
    rig.tap("Move");
    for (int i = 0; i < 3; ++i)
        rig.tap("Done");
    rig.tap("Leave it");
    rig.tap("Pin");
    CHECK(rig.shows("Step 1 of"));
    CHECK(rig.shows("Park and support it"));
}

TEST_CASE("a unit whose sheet has no items has nothing to answer, and says so")
{
    SampleBook sample;
    Json hitch = desk::doc(sample.store(), "unit", "qh-4");
    for (const char* key : {"sheet", "id", "at", "by"})
        hitch.erase(key);
    desk::Hand hand;
    hand.by = "quill";
    hand.at = *desk::parse_instant("2026-11-25T07:55:00Z");
    hand.day = rules::utc_day(hand.at);
    sample.store().append({entry(hand, "unit", "qh-4", hitch)});
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), state_on_record(sample.store()));
    check_all(rig);
    for (int i = 0; i < 12 && !rig.shows("QH-4. 0 of 0"); ++i)
        for (const auto& each : rig.seen())
            if (each.target &&
                (each.text.find("more below") != std::string::npos || each.text == "Back to the first")) {
                rig.tap(std::string{each.text});
                break;
            }
    rig.tap("Check");
    CHECK(rig.shows("Do the check"));
}

TEST_CASE("whoever takes the tablet while a load is up is told of it, and no other rig's verdict is shown")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::cab};
        make_ready(sample, rig);
        ask_and_read(rig);
        rig.tap("Load is up");
    }
    Rig rig{sample.store(), ui::Door::cab};
    rig.tap("T. Dunmore (invented)");
    CHECK(rig.shows("If a load hangs, set it down safely, then stop."));
}

TEST_CASE("the second tap of a double one does nothing on the page that it falls on")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    ask_and_read(rig);
    rig.tap("Load is up");
    rig.ticks -= 1; // at once
    rig.tap("Set down, laid");
    CHECK(rig.shows("LOAD UP"));
    CHECK(sample.store().newest("set_down", 1).front().entry.at <
          sample.store().newest("picked_up", 1).front().entry.at);
}

TEST_CASE("a pin that was drawn and left stands nowhere until somebody says how")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    CHECK(rig.shows("MAY LIFT"));
    rig.tap("Pin");
    for (int i = 0; i < 4; ++i)
        rig.tap("Done");
    rig.tap("Leave it");
    CHECK(rig.shows("DO NOT LIFT"));
}

TEST_CASE("asking under DO NOT LIFT gives an answer, and the row's own button opens its unit's check")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), state_on_record(sample.store()));
    ask_and_read(rig);
    CHECK(rig.shows("You asked, and the answer is on record"));
    CHECK(sample.store().newest("lift_asked", 1).front().entry.body["outcome"] == "do_not_lift");
    rig.tap("Back");
    CHECK(rig.shows("DO NOT LIFT"));
}

TEST_CASE("the second lift of a type has the short card, and the count has gone up")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    make_ready(sample, rig);
    rig.tap("Lift");
    rig.tap("All so");
    CHECK(rig.target("Read"));
    while (rig.target("Read"))
        rig.tap("Read");
    CHECK(rig.shows("Laid this shift: 0"));
    rig.tap("Load is up");
    rig.tap("Set down, laid");
    rig.tap("Lift");
    rig.tap("All so");
    CHECK_FALSE(rig.target("Read"));
    CHECK(rig.shows("Laid this shift: 1, of this pipe 1"));
}

TEST_CASE("a wrong item is noted with a phrase, and cleared in the Cab by somebody else who may")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, name_of(sample.store(), "pipe", "sk-600"), story(sample.store()).wrong);
    rig.tap("Check");
    const auto stop_at = rig.target("Stop")->x;
    while (!rig.target("Report")) {
        CHECK(rig.target("Stop")->x == stop_at); // each answer has its place, whether or not one is missing
        rig.tap("Right");
    }
    CHECK(rig.target("Stop")->x == stop_at);
    const auto before = sample.store().state().head.seq;
    rig.tap("Report");
    rig.tap("Back"); // a misplaced finger writes nothing
    CHECK(sample.store().state().head.seq == before);
    rig.tap("Report");
    rig.tap("worn or loose");
    CHECK(rig.shows("Not right:"));
    const auto check = sample.store().newest("pre_use_check", 1).front().entry;
    const auto wrong = std::find_if(check.body["answers"].begin(), check.body["answers"].end(),
                                    [](const auto& each) { return each["answer"] == "report"; });
    REQUIRE(wrong != check.body["answers"].end());
    CHECK((*wrong)["note"] == "worn or loose");
    rig.tap("Understood");
    rig.tap("Leave it");
    for (int i = 0; i < 4 && !rig.target("Clear"); ++i)
        for (const auto& each : rig.seen())
            if (each.target && each.text.find("more below") != std::string::npos) {
                rig.tap(std::string{each.text});
                break;
            }
    rig.tap("Clear");
    CHECK_FALSE(rig.target("I. Farrow (invented)")); // found it
    rig.tap("O. Hallam (invented)");
    rig.tap("looked at; no defect is there");
    CHECK_FALSE(rig.target("Other words"));
    rig.tap("Without");
    CHECK(rig.shows("The defect is cleared"));
}

TEST_CASE("where every item is answered the check says so, and asks nothing")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"T. Dunmore (invented)"}, std::string{"EX-14"}, std::string{"Mark B"},
                                    name_of(sample.store(), "pipe", "sk-450")})
        rig.tap(next);
    CHECK(rig.shows("MAY LIFT"));
    rig.tap("Check");
    CHECK(rig.shows("Every item of this shift is answered"));
    CHECK_FALSE(rig.shows("Check not done"));
}
