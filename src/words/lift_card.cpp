#include "lift_card.hpp"

#include "amounts.hpp"
#include "language.hpp"

#include <fmt/format.h>

namespace cotter::words {

using rules::CardFacts;
using rules::HoldPoint;

namespace {

// Away from the favourable side: a distance kept is never shown less than it is, a wind never more.
std::string metres_kept(std::int64_t mm) { return metres((mm + 99) / 100 * 100); }
std::string wind_under(std::int64_t mm_s) { return decimal(fmt::format("{}.{} m/s", mm_s / 1000, mm_s % 1000 / 100)); }

std::string degrees(double angle) { return decimal(fmt::format("{:g}\u00b0", angle)); }

// One point's lines; those of the whole card only are left out of the short one.
class Lines {
public:
    explicit Lines(const CardFacts& facts) : facts_{facts} {}

    void always(std::string ask, std::string if_not) { lines_.push_back({std::move(ask), std::move(if_not)}); }
    void first_time(std::string ask, std::string if_not)
    {
        if (facts_.first_of_type)
            always(std::move(ask), std::move(if_not));
    }
    void own(HoldPoint at)
    {
        for (const auto& each : facts_.own)
            if (each.at == at)
                always(each.ask, each.if_not); // its maker's: each is asked each time
    }
    std::vector<CardLine> take() { return std::move(lines_); }

private:
    const CardFacts& facts_;
    std::vector<CardLine> lines_;
};

std::vector<CardLine> before_grip(const CardFacts& f)
{
    Lines lines{f};
    lines.always(say("Maker and size read on the pipe: {}", f.pipe),
                 "Another pipe: this answer ends. Ask for that one.");
    if (f.has_trench && !f.place.empty())
        lines.always(say("Tracks on mark {}", f.place), "Stand on the mark, or ask for the mark where you stand.");
    const bool dry = f.faces_dry.value_or(false);
    lines.always(dry ? "Gripping faces and barrel clean and dry" : "Gripping faces and barrel clean",
                 dry ? "Clean and dry both before they touch." : "Clean both before they touch.");
    const std::string but =
        f.has_trench && f.someone_enters ? ", " + in_language("but for who waits in the trench") : "";
    lines.always((f.zone_mm ? say("Nobody within {} of the slew axis", metres_kept(*f.zone_mm))
                            : say("Nobody inside the zone")) +
                     but,
                 "Wait. Nothing is gripped while anybody else is inside.");
    if (f.setting)
        lines.first_time(say("Set to {}, its keeper in", *f.setting),
                         "Leave the pipe. Report it, and look at the setting.");
    if (f.wind_limit_mm_s)
        lines.always(say("Wind under {}", wind_under(*f.wind_limit_mm_s)), "Wait for less wind.");
    if (!f.light.empty())
        lines.always(say("Light: {}", f.light), "Wait for the light.");
    for (const auto& each : f.near)
        lines.always(say("{}: keep {} ({})", each.what, metres_kept(each.least_mm), each.whose_rule),
                     "Do not lift. Tell the supervisor.");
    lines.own(HoldPoint::before_grip);
    return lines.take();
}

std::vector<CardLine> just_clear(const CardFacts& f)
{
    Lines lines{f};
    lines.always("A hand's breadth up, held: the grip holds, the pipe hangs as it should",
                 "Set it down. Look before another try; a slip is reported.");
    if (f.test_tilt)
        lines.always(say("Tilted to {} and back: nothing moved in the grip", degrees(*f.test_tilt)),
                     "Set it down and report a slip.");
    lines.own(HoldPoint::just_clear);
    return lines.take();
}

std::vector<CardLine> at_trench(const CardFacts& f)
{
    Lines lines{f};
    if (!f.has_trench) {
        lines.always("Over where it is laid, nobody beneath", "Hold it low. Set it down beside.");
        lines.own(HoldPoint::at_trench);
        return lines.take();
    }
    lines.always(f.place.empty() ? say("Tracks on their mark") : say("Tracks on mark {}", f.place),
                 "Keep the load low, set it down on the bank, and stand the machine right.");
    if (f.someone_enters)
        lines.always(f.waits_at.empty() ? say("Nobody beneath, and whoever is in the trench well clear")
                                        : say("Whoever is in the trench stands at {}", f.waits_at),
                     "Hold on the bank's side, low, until it is so.");
    else
        lines.always("Nobody in the trench", "Hold on the bank's side, low, until it is empty.");
    if (!f.route.empty())
        lines.first_time(say("Came {}", f.route), "Back the way it came, low.");
    if (f.entry_tilt)
        lines.always(say("Tilted to {} to go in", degrees(*f.entry_tilt)),
                     "Bring it back over the bank, then set it down.");
    if (f.is_strutted && f.tilt_limit)
        lines.always(say("Between the struts never over {}, clear all round", degrees(*f.tilt_limit)),
                     "Stop, up the same way, out over the bank.");
    lines.own(HoldPoint::at_trench);
    return lines.take();
}

std::vector<CardLine> before_release(const CardFacts& f)
{
    Lines lines{f};
    lines.always("The pipe bears along its barrel and cannot roll",
                 "Keep the weight on. Lift it again and mend the bed.");
    lines.always(f.may_push.value_or(false) ? "Pushed home only as its maker says"
                                            : "It is not pushed home with the attachment",
                 "Stop. Take the load again, hold, and let the signaller look.");
    lines.own(HoldPoint::before_release);
    return lines.take();
}

} // namespace

std::vector<CardPoint> lift_card(const CardFacts& facts)
{
    return {{"Before the attachment goes near the pipe", true, before_grip(facts)},
            {"Load just clear of the ground", false, just_clear(facts)},
            {"Machine placed at the trench", false, at_trench(facts)},
            {"Before letting go", false, before_release(facts)}};
}

} // namespace cotter::words
