#include "good_question.hpp"

#include <algorithm>
#include <stdexcept>

namespace cotter::rules {

namespace {

Proof proved()
{
    Proof proof;
    proof.changed = Change{minute(-9000), "ann"};
    proof.compared = {Change{minute(-8000), "ben"}};
    return proof;
}

Particulars all_given()
{
    const Known<Particular> given = Particular::given;
    return {given, given, given, given, given, given, given, given, given, given, given};
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

Model plain_model(const Id& id)
{
    Model made;
    made.id = id;
    made.rating = 9000_kg;
    made.proof = proved();
    return made;
}

State state(const Id& name, Millimetres least, Millimetres greatest)
{
    return {name, least, greatest};
}

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
    made.sheet = {SheetItem{"body", {}}, SheetItem{"pin", {StaledBy::setting}}, SheetItem{"lock", {StaledBy::coupling}}};
    return made;
}

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

// Computed: pi/4 x (0.8 x 0.8 - 0.6 x 0.6) m2 x 2.5 m x 2,500 kg/m3 = 1,374.4 kg, under the 1,400 stated.
Pipe good_pipe()
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

Move good_move()
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

Chart good_chart()
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

SetUp good_set_up()
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

Plan good_plan()
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

Strutting good_strutting()
{
    return {true, 4000_mm, 100_mm, 200_mm, 3000_mm};
}

void add_people(Question& question)
{
    question.people["operator"] = person("olga", {"model-M", "model-H", "model-A"});
    question.people["supervisor"] = person("sam", {"supervisor"});
    question.people["signaller"] = person("sid", {"signaller"});
}

void add_surroundings(Question& question)
{
    question.place = Place{"place", {Confirmation{minute(20), "sam", true, true, true, true}}, {}};
    question.trench = Trench{false, true, {Inspection{minute(-30), true, true}}, {}};
    question.thread = good_strutting();
    question.clock = Clock{{}, minute(100)};
    question.book = Book{true, false, false};
}

void add_items(Question& question)
{
    question.items = {good_machine(), good_hitch(),      good_headplate(), plain_item(Role::hook, "K1", 20_kg),
                      good_sling(),   good_attachment()};
    for (const Item& each : question.items) {
        question.reports.push_back(half_yearly(each.tag));
        for (const SheetItem& line : each.sheet)
            question.answers.push_back(right(each.tag, *line.id));
    }
    Report& of_machine = report(question, Role::machine);
    of_machine.basis = Basis::twelve_months;
    of_machine.latest = day("2027-09-01");
}

Order good_order()
{
    return {"order", {good_pipe()}, "S60", day("2026-11-30"), day("2027-01-29")};
}

} // namespace

Question good_lift()
{
    Question question;
    question.id = "good";
    question.purpose = Purpose::lift;
    question.day = day("2026-11-25");
    question.now = minute(180);
    question.shift = Shift{minute(0), minute(600), day("2026-11-25")};
    question.site = Site{"site", Days{14}, true};
    add_items(question);
    question.coupled_at = minute(60);
    question.setting_records = {changed(), seen()};
    question.pipe = good_pipe();
    question.move = good_move();
    question.chart = good_chart();
    question.set_up = good_set_up();
    question.plan = good_plan();
    add_people(question);
    add_surroundings(question);
    return question;
}

Question good_use()
{
    Question question = good_lift();
    question.purpose = Purpose::use;
    for (const Role role : {Role::machine, Role::hitch}) {
        remove_report(question, role);
        remove_item(question, role);
    }
    item(question, Role::attachment).loose_parts = LooseParts{Listed::listed, Listed::listed, Listed::listed};
    question.answers.clear();
    question.people.clear();
    question.coupled_at.reset();
    question.pipe.reset();
    question.move.reset();
    question.chart.reset();
    question.set_up.reset();
    question.plan.reset();
    question.place.reset();
    question.trench.reset();
    question.thread.reset();
    question.order = good_order();
    return question;
}

Day day(std::string_view text)
{
    const auto read = parse_day(text);
    if (!read)
        throw std::invalid_argument{"no such day"};
    return *read;
}

Instant minute(int after_start_of_shift)
{
    return Instant{1'795'600'000 + std::int64_t{60} * after_start_of_shift};
}

Item& item(Question& question, Role role)
{
    for (Item& each : question.items)
        if (each.role == role)
            return each;
    throw std::invalid_argument{"no such item"};
}

Model& model(Question& question, Role role)
{
    return item(question, role).model.value();
}

Report& report(Question& question, Role role)
{
    for (Report& each : question.reports)
        if (contains(each.units, item(question, role).tag))
            return each;
    throw std::invalid_argument{"no such report"};
}

void remove_item(Question& question, Role role)
{
    std::erase_if(question.items, [&](const Item& each) { return each.role == role; });
}

void remove_report(Question& question, Role role)
{
    const Id tag = item(question, role).tag;
    std::erase_if(question.reports, [&](const Report& each) { return contains(each.units, tag); });
}

Event event(EventKind kind, const Id& unit)
{
    Event made;
    made.id = "E1";
    made.kind = kind;
    made.day = day("2026-11-25");
    made.at = minute(10);
    made.units = {unit};
    return made;
}

Report exceptional(Question& question, Role role)
{
    Report made = report(question, role);
    made.id = "R-again";
    made.basis = Basis::exceptional;
    made.full.reset();
    made.examined = question.day;
    made.report_day = question.day;
    return made;
}

std::optional<Finding> finding(const Question& question, Code code, std::string_view about)
{
    for (const Finding& each : decide(question).findings)
        if (each.code == code && each.about == about)
            return each;
    return std::nullopt;
}

bool finds(const Question& question, Code code, std::string_view about)
{
    return finding(question, code, about).has_value();
}

bool finds(const Question& question, Code code)
{
    const auto found = decide(question).findings;
    return std::any_of(found.begin(), found.end(), [&](const Finding& each) { return each.code == code; });
}

bool is_silent(const Question& question)
{
    return decide(question).findings.empty();
}

std::string codes(const Question& question)
{
    std::string text;
    for (const Finding& each : decide(question).findings)
        text += std::string{name(each.code)} + "(" + each.about + ") ";
    return text;
}

} // namespace cotter::rules
