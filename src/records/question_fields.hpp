#pragma once

#include "question.hpp"

// The field names of a question, once for reading, writing and the schema. Units stand in the names: _mm, _kg, _nm,
// _mdeg (thousandths of a degree); instants are whole UTC seconds.

namespace cotter::rules {

// A table, a line a few fields.
// clang-format off

template <class V>
void describe(V& v, Change& it)
{
    v("at", it.at); v("by", it.by);
}

template <class V>
void describe(V& v, Copy& it)
{
    v("legible", it.legible); v("here", it.here);
}

template <class V>
void describe(V& v, State& it)
{
    v("name", it.name); v("least_mm", it.least); v("greatest_mm", it.greatest);
}

template <class V>
void describe(V& v, Model& it)
{
    v("id", it.id); v("rating_kg", it.rating); v("like_for_like", it.like_for_like); v("changed", it.proof.changed);
    v("compared", it.proof.compared); v("disputed", it.disputed); v("adjusts", it.adjusts); v("states", it.states);
    v("setting_is_configuration", it.setting_is_configuration); v("bore_mm", it.bore); v("barrel_mm", it.barrel);
    v("socket_mm", it.socket); v("length_mm", it.length); v("shapes", it.shapes); v("materials", it.materials);
    v("greatest_pipe_kg", it.greatest_pipe); v("envelope_length_mm", it.envelope_length);
    v("above_crown_mm", it.above_crown); v("below_invert_mm", it.below_invert); v("tilt_limit_mdeg", it.tilt_limit);
}

template <class V>
void describe(V& v, Sling& it)
{
    v("kind", it.kind); v("grade", it.grade); v("chain_mm", it.chain); v("legs", it.legs); v("angle_mdeg", it.angle);
    v("spread_mm", it.spread); v("leg_length_mm", it.leg_length); v("tag_0_45_kg", it.tag_to_45);
    v("tag_45_60_kg", it.tag_to_60); v("symmetric", it.symmetric);
}

template <class V>
void describe(V& v, Stop& it)
{
    v("id", it.id); v("lifted_by_entitled", it.lifted_by_entitled);
}

template <class V>
void describe(V& v, Interim& it)
{
    v("id", it.id); v("examined", it.examined); v("names_events", it.names_events); v("copy", it.copy);
    v("signed", it.signed_); v("by_competent", it.by_competent); v("swl_kg", it.swl); v("safe", it.safe);
}

template <class V>
void describe(V& v, Declaration& it)
{
    v("id", it.id); v("made", it.made); v("copy", it.copy);
}

template <class V>
void describe(V& v, SheetItem& it)
{
    v("id", it.id); v("staled_by", it.staled_by);
}

template <class V>
void describe(V& v, LockSeen& it)
{
    v("at", it.at); v("own_eyes", it.own_eyes); v("locked", it.locked);
}

template <class V>
void describe(V& v, LooseParts& it)
{
    v("headplate", it.headplate); v("pin", it.pin); v("keeper", it.keeper);
}

template <class V>
void describe(V& v, Item& it)
{
    v("role", it.role); v("tag", it.tag); v("class", it.item_class); v("mass_kg", it.mass); v("plate_kg", it.plate);
    v("configuration", it.configuration); v("owner", it.owner); v("between_own_sites", it.between_own_sites);
    v("at_site", it.at_site); v("off_hire", it.off_hire); v("scrapped", it.scrapped); v("stops", it.stops);
    v("scheme_months", it.scheme_months); v("first_service", it.first_service); v("interims", it.interims);
    v("declarations", it.declarations); v("sheet", it.sheet); v("model", it.model); v("pattern", it.pattern);
    v("lock_seen", it.lock_seen); v("sling", it.sling); v("loose_parts", it.loose_parts); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Configuration& it)
{
    v("name", it.name); v("swl_kg", it.swl);
}

template <class V>
void describe(V& v, Defect& it)
{
    v("id", it.id); v("danger", it.danger); v("by_day", it.by_day); v("unit", it.unit);
}

template <class V>
void describe(V& v, Particulars& it)
{
    v("employer", it.employer); v("premises", it.premises); v("last_examined", it.last_examined);
    v("qualifications", it.qualifications); v("employment", it.employment); v("report_day", it.report_day);
    v("manufactured", it.manufactured); v("tests", it.tests); v("installation", it.installation);
    v("defect_parts", it.defect_parts); v("authenticator", it.authenticator);
}

template <class V>
void describe(V& v, Report& it)
{
    v("id", it.id); v("units", it.units); v("examined", it.examined); v("report_day", it.report_day);
    v("latest", it.latest); v("identity", it.identity); v("examiner", it.examiner); v("basis", it.basis);
    v("swl_kg", it.swl); v("safe", it.safe); v("full", it.full); v("configurations", it.configurations);
    v("defects", it.defects); v("remedies", it.remedies); v("names_events", it.names_events);
    v("particulars", it.particulars); v("copy", it.copy); v("changed", it.proof.changed);
    v("compared", it.proof.compared); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Clearing& it)
{
    v("defect", it.defect); v("by_competent", it.by_competent);
}

template <class V>
void describe(V& v, Assessment& it)
{
    v("at", it.at); v("by_competent", it.by_competent); v("fit", it.fit);
}

template <class V>
void describe(V& v, Event& it)
{
    v("id", it.id); v("kind", it.kind); v("day", it.day); v("at", it.at); v("units", it.units);
    v("structural", it.structural); v("part", it.part); v("assessments", it.assessments);
    v("looked_by", it.looked_by);
}

template <class V>
void describe(V& v, ClearedBy& it)
{
    v("by", it.by); v("entitled", it.entitled);
}

template <class V>
void describe(V& v, Answer& it)
{
    v("unit", it.unit); v("item", it.item); v("at", it.at); v("by", it.by); v("machine", it.machine);
    v("answer", it.answer); v("cleared", it.cleared);
}

template <class V>
void describe(V& v, SettingRecord& it)
{
    v("id", it.id); v("kind", it.kind); v("state", it.state); v("at", it.at); v("by", it.by); v("after", it.after);
    v("by_eye", it.by_eye); v("at_unit", it.at_unit); v("own_pin", it.own_pin); v("authorised", it.authorised);
}

template <class V>
void describe(V& v, Pipe& it)
{
    v("id", it.id); v("shape", it.shape); v("material", it.material); v("bore_mm", it.bore);
    v("barrel_mm", it.barrel); v("socket_mm", it.socket); v("overall_mm", it.overall);
    v("effective_mm", it.effective); v("socket_length_mm", it.socket_length); v("density_kg_m3", it.density);
    v("allowance_percent", it.allowance); v("stated_kg", it.stated); v("changed", it.proof.changed);
    v("compared", it.proof.compared); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Move& it)
{
    v("water_kg", it.water); v("mud_kg", it.mud); v("shackles_kg", it.shackles); v("bucket_kg", it.bucket);
    v("nose_radius_mm", it.nose_radius); v("centre_radius_mm", it.centre_radius); v("pick_height_mm", it.pick_height);
    v("slew_height_mm", it.slew_height); v("lay_height_mm", it.lay_height); v("sector", it.sector);
    v("pin_to_centre_mm", it.pin_to_centre);
}

template <class V>
void describe(V& v, Cell& it)
{
    v("over", it.over); v("height_mm", it.height); v("radius_mm", it.radius); v("rated_kg", it.rated);
}

template <class V>
void describe(V& v, Chart& it)
{
    v("id", it.id); v("arm", it.arm); v("blade", it.blade); v("counterweight", it.counterweight);
    v("includes_hitch", it.includes_hitch); v("cells", it.cells); v("changed", it.proof.changed);
    v("compared", it.proof.compared); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, SetUp& it)
{
    v("arm", it.arm); v("blade", it.blade); v("counterweight", it.counterweight); v("mounting", it.mounting);
    v("mount_kg", it.mount_mass); v("mount_nm", it.mount_moment); v("valves_proved_at", it.valves_proved_at);
    v("overload_warning_proved_at", it.overload_warning_proved_at);
}

template <class V>
void describe(V& v, Person& it)
{
    v("id", it.id); v("authorised", it.authorised); v("card_last_day", it.card_last_day); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Signature& it)
{
    v("person", it.person); v("issue", it.issue);
}

template <class V>
void describe(V& v, Plan& it)
{
    v("id", it.id); v("issue", it.issue); v("issued", it.issued); v("signed", it.signed_); v("site", it.site);
    v("first_day", it.first_day); v("last_day", it.last_day); v("machines", it.machines);
    v("attachments", it.attachments); v("models", it.models); v("pipes", it.pipes); v("places", it.places);
    v("greatest_kg", it.greatest); v("greatest_radius_mm", it.greatest_radius); v("roles", it.roles);
    v("briefed", it.briefed); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Confirmation& it)
{
    v("at", it.at); v("by", it.by); v("level", it.level); v("ground_and_edge", it.ground_and_edge);
    v("services", it.services); v("zone_closed", it.zone_closed);
}

template <class V>
void describe(V& v, Place& it)
{
    v("id", it.id); v("confirmed", it.confirmed); v("disputed", it.disputed);
}

template <class V>
void describe(V& v, Inspection& it)
{
    v("at", it.at); v("by_competent", it.by_competent); v("safe", it.safe);
}

template <class V>
void describe(V& v, Trench& it)
{
    v("none", it.none); v("someone_enters", it.someone_enters); v("inspections", it.inspections);
    v("disturbed_at", it.disturbed_at);
}

template <class V>
void describe(V& v, Strutting& it)
{
    v("strutted", it.strutted); v("gap_mm", it.gap); v("clearance_mm", it.clearance);
    v("strut_depth_mm", it.strut_depth); v("room_mm", it.room);
}

template <class V>
void describe(V& v, Order& it)
{
    v("id", it.id); v("pipes", it.pipes); v("hitch", it.hitch); v("first_use_day", it.first_use_day);
    v("end_day", it.end_day);
}

template <class V>
void describe(V& v, ClockConfirmation& it)
{
    v("by", it.by); v("supervisor", it.supervisor); v("how", it.how); v("to", it.to);
}

template <class V>
void describe(V& v, ClockNotice& it)
{
    v("kind", it.kind); v("confirmed", it.confirmed);
}

template <class V>
void describe(V& v, Clock& it)
{
    v("notices", it.notices); v("newest_record_at", it.newest_record_at);
}

template <class V>
void describe(V& v, Book& it)
{
    v("opening_check_done", it.opening_check_done); v("damaged", it.damaged); v("forked", it.forked);
}

template <class V>
void describe(V& v, Shift& it)
{
    v("start", it.start); v("end", it.end); v("last_day", it.last_day);
}

template <class V>
void describe(V& v, Site& it)
{
    v("id", it.id); v("warning_days", it.warning_days); v("expired_card_stops", it.expired_card_stops);
}

template <class V>
void describe(V& v, Question& it)
{
    v("id", it.id); v("purpose", it.purpose); v("day", it.day); v("now", it.now); v("shift", it.shift);
    v("site", it.site); v("items", it.items); v("no_hitch", it.no_hitch); v("no_sling", it.no_sling);
    v("reports", it.reports); v("clearings", it.clearings); v("events", it.events); v("answers", it.answers);
    v("coupled_at", it.coupled_at); v("setting_records", it.setting_records); v("pipe", it.pipe); v("move", it.move);
    v("chart", it.chart); v("set_up", it.set_up); v("people", it.people); v("plan", it.plan); v("place", it.place);
    v("trench", it.trench); v("thread", it.thread); v("order", it.order); v("clock", it.clock); v("book", it.book);
}

} // namespace cotter::rules
