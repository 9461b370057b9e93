// Items, models and reports of the good question.

#include "good_parts.hpp"

namespace cotter::rules::good {

namespace {

Particulars all_given()
{
    const Known<Particular> given = Particular::given;
    return {given, given, given, given, given, given, given, given, given, given, given};
}

Model plain_model(const Id& id)
{
    Model made;
    made.id = id;
    made.rating = 9000_kg;
    made.proof = proved();
    return made;
}

State state(const Id& name, Millimetres least, Millimetres greatest) { return {name, least, greatest}; }

Model grab_model()
{
    Model made = plain_model("model-A");
    made.adjusts = true;
    made.states = {state("hole 1", 600_mm, 700_mm), state("hole 2", 750_mm, 900_mm)};
    made.bore = Range{false, 400_mm, 700_mm};
    made.barrel = Range{false, 600_mm, 900_mm};
    made.socket = Range{false, 0_mm, 1000_mm};
    made.length = Range{false, 1000_mm, 3000_mm};
    made.materials = {"concrete"};
    made.greatest_pipe = 1500_kg;
    made.envelope_length = 1000_mm;
    made.above_crown = 300_mm;
    made.below_invert = 50_mm;
    made.tilt_limit = Millidegrees{30'000};
    return made;
}

Item plain_item(Role role, const Id& tag, Kilograms mass)
{
    Item made;
    made.role = role;
    made.tag = tag;
    made.item_class = ItemClass::accessory;
    made.mass = mass;
    made.plate = 9000_kg;
    made.owner = Owner::hired;
    made.at_site = "site";
    made.model = plain_model("model-" + tag.substr(0, 1));
    made.sheet = {SheetItem{"body", {}}};
    return made;
}

Item good_machine()
{
    Item made = plain_item(Role::machine, "M1", 14'000_kg);
    made.item_class = ItemClass::machine;
    return made;
}

Item good_hitch()
{
    Item made = plain_item(Role::hitch, "H1", 200_kg);
    made.pattern = "S60";
    made.lock_seen = {LockSeen{minute(65), true, true}};
    return made;
}

Item good_headplate()
{
    Item made = plain_item(Role::headplate, "P1", 100_kg);
    made.pattern = "S60";
    made.sheet.clear();
    return made;
}

// Two legs of 10 mm grade 8 chain: 4,250 kg to 45 degrees, 3,000 kg to 60.
Item good_sling()
{
    Item made = plain_item(Role::sling, "S1", 30_kg);
    Sling sling;
    sling.kind = "chain";
    sling.grade = 8;
    sling.chain = 10_mm;
    sling.legs = 2;
    sling.angle = Millidegrees{30'000};
    sling.tag_to_45 = 4250_kg;
    sling.tag_to_60 = 3000_kg;
    sling.symmetric = true;
    made.sling = sling;
    return made;
}

Item good_attachment()
{
    Item made = plain_item(Role::attachment, "A1", 250_kg);
    made.model = grab_model();
    made.sheet = {SheetItem{"body", {}}, SheetItem{"pin", {StaledBy::setting}},
                  SheetItem{"lock", {StaledBy::coupling}}};
    return made;
}

} // namespace

Proof proved()
{
    Proof proof;
    proof.changed = Change{minute(-9000), "ann"};
    proof.compared = {Change{minute(-8000), "ben"}};
    return proof;
}

Report half_yearly(const Id& unit)
{
    Report made;
    made.id = "R-" + unit;
    made.units = {unit};
    made.examined = day("2026-09-01");
    made.report_day = day("2026-09-02");
    made.latest = day("2027-03-01");
    made.identity = "as plate";
    made.examiner = "Examiner Ltd";
    made.basis = Basis::six_months;
    made.swl = 9000_kg;
    made.safe = true;
    made.full = true;
    made.particulars = all_given();
    made.copy = Copy{true, true};
    made.proof = proved();
    return made;
}

std::vector<Item> items()
{
    return {good_machine(), good_hitch(),     good_headplate(), plain_item(Role::hook, "K1", 20_kg),
            good_sling(),   good_attachment()};
}

} // namespace cotter::rules::good
