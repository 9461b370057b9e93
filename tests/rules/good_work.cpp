// Pipe, move, chart, people and plan of the good question, and what was done this shift.

#include "good_parts.hpp"

namespace cotter::rules::good {

namespace {

SettingRecord changed()
{
    SettingRecord made;
    made.id = "C1";
    made.kind = SettingKind::changed;
    made.state = "hole 2";
    made.at = minute(30);
    made.by = "carl";
    return made;
}

SettingRecord seen()
{
    SettingRecord made;
    made.id = "L1";
    made.kind = SettingKind::seen;
    made.state = "hole 2";
    made.at = minute(40);
    made.by = "lena";
    made.after = {"C1"};
    made.by_eye = made.at_unit = made.own_pin = made.authorised = true;
    return made;
}

} // namespace

std::vector<SettingRecord> setting_records() { return {changed(), seen()}; }

Answer right(const Id& unit, const Id& line)
{
    Answer made;
    made.unit = unit;
    made.item = line;
    made.at = minute(90);
    made.by = "olga";
    made.machine = "M1";
    made.answer = Answered::right;
    return made;
}

// Computed: pi/4 x (0.8 x 0.8 - 0.6 x 0.6) m2 x 2.5 m x 2,500 kg/m3 = 1,374.4 kg, under the 1,400 stated.
Pipe pipe()
{
    Pipe made;
    made.id = "pipe-600";
    made.shape = Shape::straight;
    made.material = "concrete";
    made.bore = 600_mm;
    made.barrel = 800_mm;
    made.socket = 0_mm;
    made.overall = 2500_mm;
    made.effective = 2500_mm;
    made.socket_length = 0_mm;
    made.density = Density{2500};
    made.allowance = Percent{0};
    made.stated = 1400_kg;
    made.proof = proved();
    return made;
}

Move move()
{
    Move made;
    made.water = made.mud = made.shackles = made.bucket = 0_kg;
    made.nose_radius = 5000_mm;
    made.centre_radius = 5200_mm;
    made.pick_height = 1000_mm;
    made.slew_height = 1500_mm;
    made.lay_height = 500_mm;
    made.sector = Sector::front;
    made.pin_to_centre = 1000_mm;
    return made;
}

Chart chart()
{
    Chart made;
    made.id = "chart";
    made.arm = "long";
    made.blade = "down";
    made.counterweight = "standard";
    made.includes_hitch = false;
    for (const Sector over : {Sector::front, Sector::side})
        for (const Millimetres height : {0_mm, 2000_mm})
            for (const Millimetres radius : {4000_mm, 6000_mm})
                made.cells.push_back({over, height, radius, 4000_kg});
    made.proof = proved();
    return made;
}

SetUp set_up()
{
    SetUp made;
    made.arm = "long";
    made.blade = "down";
    made.counterweight = "standard";
    made.mounting = Mounting::rigid;
    made.mount_mass = 3000_kg;
    made.mount_moment = NewtonMetres{30'000};
    made.valves_proved_at = minute(10);
    made.overload_warning_proved_at = minute(12);
    return made;
}

Person person(const Id& id, std::vector<Id> authorised)
{
    Person made;
    made.id = id;
    made.authorised = std::move(authorised);
    made.card_last_day = day("2027-12-31");
    return made;
}

Plan plan()
{
    Plan made;
    made.id = "plan";
    made.issue = 3;
    made.issued = made.signed_ = true;
    made.site = "site";
    made.first_day = day("2026-11-02");
    made.last_day = day("2026-12-18");
    made.machines = {"M1"};
    made.attachments = {"A1"};
    made.pipes = {"pipe-600"};
    made.places = {"place"};
    made.greatest = 3000_kg;
    made.greatest_radius = 6000_mm;
    for (const char* who : {"olga", "sam", "sid"})
        made.briefed.push_back({who, 3});
    return made;
}

Strutting strutting() { return {true, 4000_mm, 100_mm, 200_mm, 3000_mm}; }

Order order() { return {"order", {pipe()}, "S60", day("2026-11-30"), day("2027-01-29")}; }

} // namespace cotter::rules::good
