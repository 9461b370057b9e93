#pragma once

// The facts that a decision is asked with: plain values, nothing to look up.
// std::nullopt is "not recorded, not known". Ids are text; what a field means stands in question_form.cpp, which reads
// it.

#include "facts.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace cotter::rules {

// A known range includes both ends; `any` means that the maker does not limit it.
struct Range {
    bool any = false;
    Known<Millimetres> least, greatest;
};

struct Change {
    Known<Instant> at;
    Known<Id> by;
};
struct Proof {
    Known<Change> changed;
    std::vector<Change> compared;
};

struct Copy {
    Flag legible, here;
};

struct State {
    Known<Id> name;
    Known<Millimetres> least, greatest;
};

struct Model {
    Known<Id> id;
    Known<Kilograms> rating;
    std::vector<Id> like_for_like;
    Proof proof;
    std::vector<Id> disputed;
    Flag adjusts;
    std::vector<State> states;
    Flag setting_is_configuration;
    Known<Range> bore, barrel, socket, length;
    std::vector<Shape> shapes;
    std::vector<Id> materials;
    Known<Kilograms> greatest_pipe;
    Known<Millimetres> envelope_length, above_crown, below_invert;
    Known<Millidegrees> tilt_limit;
};

struct Sling {
    Known<Id> kind;
    Known<std::int64_t> grade;
    Known<Millimetres> chain;
    Known<std::int64_t> legs;
    Known<Millidegrees> angle;
    std::vector<Millimetres> spread;
    Known<Millimetres> leg_length;
    Known<Kilograms> tag_to_45, tag_to_60;
    Flag symmetric;
};

struct Stop {
    Known<Id> id;
    Flag lifted_by_entitled;
};

struct Interim {
    Known<Id> id;
    Known<Day> examined;
    std::vector<Id> names_events;
    Copy copy;
    Flag signed_, by_competent;
    Known<Kilograms> swl;
    Flag safe;
};

struct Declaration {
    Known<Id> id;
    Known<Day> made;
    Copy copy;
};

struct SheetItem {
    Known<Id> id;
    std::vector<StaledBy> staled_by;
};

struct LockSeen {
    Known<Instant> at;
    Flag own_eyes, locked;
};
struct LooseParts {
    Known<Listed> headplate, pin, keeper;
};

struct Item {
    Known<Role> role;
    Id tag;
    Known<ItemClass> item_class;
    Known<Kilograms> mass, plate;
    Known<Id> configuration;
    Known<Owner> owner;
    Flag between_own_sites;
    Known<Id> at_site;
    Flag off_hire, scrapped;
    std::vector<Stop> stops;
    Known<Months> scheme_months;
    Known<Day> first_service;
    std::vector<Interim> interims;
    std::vector<Declaration> declarations;
    std::vector<SheetItem> sheet;
    Known<Model> model;
    Known<Id> pattern;
    std::vector<LockSeen> lock_seen;
    Known<Sling> sling;
    Known<LooseParts> loose_parts;
    std::vector<Id> disputed;
};

struct Configuration {
    Known<Id> name;
    Known<Kilograms> swl;
};

struct Defect {
    Known<Id> id;
    Known<Danger> danger;
    Known<Day> by_day;
    Known<Id> unit;
};

// The particulars of LOLER 1998 Schedule 1 that are not fields of their own.
struct Particulars {
    Known<Particular> employer, premises, last_examined, qualifications, employment, report_day;
    Known<Particular> manufactured, tests, installation, defect_parts, authenticator;
};

struct Report {
    Known<Id> id;
    std::vector<Id> units;
    Known<Day> examined, report_day, latest;
    Known<std::string> identity, examiner;
    Known<Basis> basis;
    Known<Kilograms> swl;
    Flag safe, full;
    std::vector<Configuration> configurations;
    std::vector<Defect> defects;
    std::vector<Id> remedies, names_events;
    Particulars particulars;
    Copy copy;
    Proof proof;
    std::vector<Id> disputed;
};

struct Clearing {
    Known<Id> defect;
    Flag by_competent;
};
struct Assessment {
    Known<Instant> at;
    Flag by_competent, fit;
};

struct Event {
    Known<Id> id;
    Known<EventKind> kind;
    Known<Day> day;
    Known<Instant> at;
    std::vector<Id> units;
    Flag structural;
    Known<Id> part;
    std::vector<Assessment> assessments;
    std::vector<Id> looked_by;
};

struct ClearedBy {
    Known<Id> by;
    Flag entitled;
};

struct Answer {
    Known<Id> unit, item;
    Known<Instant> at;
    Known<Id> by, machine;
    Known<Answered> answer;
    std::vector<ClearedBy> cleared;
};

struct SettingRecord {
    Known<Id> id;
    Known<SettingKind> kind;
    Known<Id> state;
    Known<Instant> at;
    Known<Id> by;
    std::vector<Id> after;
    Flag by_eye, at_unit, own_pin, authorised;
};

struct Pipe {
    Known<Id> id;
    Known<Shape> shape;
    Known<Id> material;
    Known<Millimetres> bore, barrel, socket, overall, effective, socket_length;
    Known<Density> density;
    Known<Percent> allowance;
    Known<Kilograms> stated;
    Proof proof;
    std::vector<Id> disputed;
};

struct Move {
    Known<Kilograms> water, mud, shackles, bucket;
    Known<Millimetres> nose_radius, centre_radius;
    Known<Millimetres> pick_height, slew_height, lay_height;
    Known<Sector> sector;
    Known<Millimetres> pin_to_centre;
};

struct Cell {
    Known<Sector> over;
    Known<Millimetres> height, radius;
    Known<Kilograms> rated;
};

struct Chart {
    Known<Id> id, arm, blade, counterweight;
    Flag includes_hitch;
    std::vector<Cell> cells;
    Proof proof;
    std::vector<Id> disputed;
};

struct SetUp {
    Known<Id> arm, blade, counterweight;
    Known<Mounting> mounting;
    Known<Kilograms> mount_mass;
    Known<NewtonMetres> mount_moment;
    Known<Instant> valves_proved_at, overload_warning_proved_at;
};

struct Person {
    Known<Id> id;
    std::vector<Id> authorised;
    Known<Day> card_last_day;
    std::vector<Id> disputed;
};

struct Signature {
    Known<Id> person;
    Known<std::int64_t> issue;
};

struct Plan {
    Known<Id> id;
    Known<std::int64_t> issue;
    Flag issued, signed_;
    Known<Id> site;
    Known<Day> first_day, last_day;
    std::vector<Id> machines, attachments, models, pipes, places;
    Known<Kilograms> greatest;
    Known<Millimetres> greatest_radius;
    std::map<Id, Flag> roles;
    std::vector<Signature> briefed;
    std::vector<Id> disputed;
};

struct Confirmation {
    Known<Instant> at;
    Known<Id> by;
    Flag level, ground_and_edge, services, zone_closed;
};

struct Place {
    Known<Id> id;
    std::vector<Confirmation> confirmed;
    std::vector<Id> disputed;
};

struct Inspection {
    Known<Instant> at;
    Flag by_competent, safe;
};

struct Trench {
    Flag none, someone_enters;
    std::vector<Inspection> inspections;
    std::vector<Known<Instant>> disturbed_at;
};

struct Strutting {
    Flag strutted;
    Known<Millimetres> gap, clearance, strut_depth, room;
};

struct Order {
    Known<Id> id;
    std::vector<Pipe> pipes;
    Known<Id> hitch;
    Known<Day> first_use_day, end_day;
};

struct ClockConfirmation {
    Known<Id> by;
    Flag supervisor;
    Known<How> how;
    Known<Instant> to;
};

struct ClockNotice {
    Known<NoticeKind> kind;
    std::vector<ClockConfirmation> confirmed;
};

struct Clock {
    std::vector<ClockNotice> notices;
    Known<Instant> newest_record_at;
};

struct Book {
    Flag opening_check_done, damaged, forked;
};
struct Shift {
    Known<Instant> start, end;
    Known<Day> last_day;
};

struct Site {
    Known<Id> id;
    Known<Days> warning_days;
    Flag expired_card_stops;
};

struct Question {
    Id id;
    Purpose purpose = Purpose::use; // what is not one of the six is a dispatch for use
    Known<Day> day;
    Known<Instant> now;
    Known<Shift> shift;
    Known<Site> site;
    std::vector<Item> items; // in the load path, top first
    Flag no_hitch, no_sling;
    std::vector<Report> reports;
    std::vector<Clearing> clearings;
    std::vector<Event> events;
    std::vector<Answer> answers;
    Known<Instant> coupled_at;
    std::vector<SettingRecord> setting_records;
    Known<Pipe> pipe;
    Known<Move> move;
    Known<Chart> chart;
    Known<SetUp> set_up;
    std::map<Id, Known<Person>> people;
    Known<Plan> plan;
    Known<Place> place;
    Known<Trench> trench;
    Known<Strutting> thread;
    Known<Order> order;
    Known<Clock> clock;
    Known<Book> book;
};

const Item* find_item(const Question& question, Role role);
const Person* find_person(const Question& question, const Id& role);

} // namespace cotter::rules
