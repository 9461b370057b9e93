#!/usr/bin/env python3
"""Checks the oracle with cases worked by hand from the page, and that the questions made
have the form that the question page demands. Exit status 0: all hold."""

import copy
import math
import sys
from datetime import date

import oracle
import questions

NOW = 1781517600  # 2026-06-15 10:00 UTC, a Monday
START = NOW - 3 * 3600
DAY = "2026-06-15"


# --- a small lift that may be made ----------------------------------------------

def proof():
    return {"changed": {"at": 1000, "by": "ann"}, "compared": [{"at": 1000, "by": "ben"}]}


def report(tag, months):
    return dict(proof(), id="R-" + tag, units=[tag], examined="2026-03-01", latest={
        6: "2026-09-01", 12: "2027-03-01"}[months], report_day="2026-03-02",
        identity="plate", examiner="E", basis={6: "six_months", 12: "twelve_months"}[months],
        swl_kg=9000, safe=True, full=True, copy={"legible": True, "here": True},
        particulars={n: "given" for n in (
            "employer", "premises", "last_examined", "qualifications", "employment",
            "report_day", "manufactured", "tests", "installation", "defect_parts",
            "authenticator")})


def item(role, tag, kind):
    return {"role": role, "tag": tag, "class": kind, "mass_kg": 500, "owner": "own",
            "at_site": "S", "plate_kg": 5000, "sheet": [{"id": "1", "staled_by": []}],
            "model": dict(proof(), id="M-" + role)}


def lift():
    """Machine and clamp, a pipe of 900 x 700 x 2500 mm: 1570.8 kg."""
    machine, clamp = item("machine", "A", "machine"), item("attachment", "C", "accessory")
    clamp["model"].update(
        adjusts=True, states=[{"name": "h1", "least_mm": 700, "greatest_mm": 899},
                              {"name": "h2", "least_mm": 900, "greatest_mm": 1000}],
        bore_mm={"least": 600, "greatest": 700}, socket_mm="any",
        length_mm={"least": 2000, "greatest": 2500}, materials=["concrete"],
        greatest_pipe_kg=1571, envelope_length_mm=1000, above_crown_mm=100, below_invert_mm=0,
        tilt_limit_mdeg=60000)
    return {
        "id": "hand", "purpose": "lift", "day": DAY, "now": NOW,
        "shift": {"start": START, "end": START + 36000, "last_day": DAY},
        "site": {"id": "S", "warning_days": 14, "expired_card_stops": True},
        "items": [machine, clamp], "no_hitch": True, "no_sling": True,
        "reports": [report("A", 12), report("C", 6)],
        "answers": [{"unit": t, "item": "1", "at": START, "by": "op", "machine": "A",
                     "answer": "right"} for t in ("A", "C")],
        "setting_records": [
            {"id": "s1", "kind": "changed", "state": "h2", "at": START - 9000, "by": "fit",
             "after": []},
            {"id": "s2", "kind": "seen", "state": "h2", "at": START, "by": "op", "after": ["s1"],
             "by_eye": True, "at_unit": True, "own_pin": True, "authorised": True}],
        "pipe": dict(proof(), id="P", shape="straight", material="concrete", bore_mm=700,
                     barrel_mm=900, socket_mm=0, overall_mm=2500, effective_mm=2500),
        "move": {"water_kg": 0, "mud_kg": 0, "shackles_kg": 0, "bucket_kg": 0,
                 "nose_radius_mm": 5000, "centre_radius_mm": 4900, "pick_height_mm": 0,
                 "slew_height_mm": 0, "lay_height_mm": -2000, "sector": "front"},
        "chart": dict(proof(), id="L", arm="a", blade="b", counterweight="c", includes_hitch=False,
                      cells=[{"over": "front", "height_mm": h, "radius_mm": r, "rated_kg": kg}
                             for h in (-2000, 0) for r, kg in ((4000, 5000), (6000, 3000))]),
        "set_up": {"arm": "a", "blade": "b", "counterweight": "c", "mounting": "free",
                   "valves_proved_at": START, "overload_warning_proved_at": START},
        "people": {"operator": {"id": "op", "authorised": ["M-machine", "M-attachment"],
                                "card_last_day": "2027-01-01"},
                   "supervisor": {"id": "sup", "authorised": ["supervisor"],
                                  "card_last_day": "2027-01-01"},
                   "signaller": {"id": "sig", "authorised": ["signaller"],
                                 "card_last_day": "2027-01-01"}},
        "plan": {"id": "PL", "issue": 1, "issued": True, "signed": True, "site": "S",
                 "first_day": DAY, "last_day": DAY, "machines": ["A"], "attachments": ["C"],
                 "pipes": ["P"], "places": ["W"], "greatest_kg": 2071, "greatest_radius_mm": 5000,
                 "briefed": [{"person": p, "issue": 1} for p in ("op", "sup", "sig")]},
        "place": {"id": "W", "confirmed": [{"at": START, "by": "sup", "level": True,
                                            "ground_and_edge": True, "services": True,
                                            "zone_closed": True}]},
        "trench": {"someone_enters": False}, "thread": {"strutted": False},
        "clock": {"notices": [], "newest_record_at": NOW}, "book": {"opening_check_done": True}}


def put(question, path, value):
    """Sets "a.0.b" in a question."""
    *way, last = [int(k) if k.isdigit() else k for k in path.split(".")]
    for key in way:
        question = question[key]
    if isinstance(last, int) and last == len(question):
        question.append(value)
    else:
        question[last] = value


def with_sling(question, **facts):
    sling = item("sling", "B", "accessory")
    del sling["plate_kg"]
    sling["sling"] = dict({"kind": "chain", "grade": 8, "chain_mm": 8, "legs": 2,
                           "angle_mdeg": 45000, "tag_0_45_kg": 9000, "tag_45_60_kg": 9000,
                           "symmetric": True}, **facts)
    question["items"].insert(1, sling)
    question["reports"].append(report("B", 6))
    question["answers"].append(dict(question["answers"][0], unit="B"))
    question["plan"]["greatest_kg"] = 9000


def with_hitch(question):
    hitch, plate = item("hitch", "H", "machine"), item("headplate", "K", "accessory")
    hitch.update(mass_kg=200, pattern="p",
                 lock_seen=[{"at": START, "own_eyes": True, "locked": True}])
    plate.update(mass_kg=200, pattern="p", sheet=[])
    question["items"][1:1] = [hitch, plate]
    question["reports"] += [report("H", 12), report("K", 6)]
    question["answers"].append(dict(question["answers"][0], unit="H"))
    question["coupled_at"] = START
    question["plan"]["greatest_kg"] = 9000
    question["people"]["operator"]["authorised"].append("M-hitch")


# What is changed in the small lift, and all findings that follow.
CASES = (
    ({}, ""),
    ({"book.damaged": True}, "book-damaged "),
    # exam: six months from 15 December end on 15 June, which is still a day of use
    ({"reports.1.examined": "2025-12-15", "reports.1.latest": "2026-06-15"}, "exam-due C"),
    ({"reports.1.examined": "2025-12-14", "reports.1.latest": "2026-06-14"},
     "exam-out-of-date C"),
    ({"reports.1.examined": "2025-12-14"}, "exam-out-of-date C, exam-long C"),
    ({"reports.1.latest": "2026-06-29"}, "exam-due C"),
    ({"reports.1.latest": "2026-06-30"}, ""),
    ({"reports.1.examined": "2026-06-16", "reports.1.report_day": "2026-06-16"},
     "exam-none C, exam-future C"),
    ({"reports.1.safe": False}, "exam-unsafe C"),
    ({"reports.1.safe": None}, "exam-incomplete C"),
    ({"reports.1.particulars.premises": "not_typed"}, "exam-particulars C"),
    ({"reports.1.particulars.premises": "lacking"}, "exam-incomplete C"),
    ({"reports.1.particulars.premises": "not_typed", "reports.1.copy": None},
     "exam-incomplete C"),
    ({"reports.1.copy": None, "items.1.owner": "hired"}, "evidence-missing C"),
    ({"reports.1.copy": None, "items.1.between_own_sites": True}, "evidence-own-sites C"),
    ({"reports.1.basis": "scheme"}, "exam-incomplete C"),
    ({"reports.1.basis": "scheme", "items.1.scheme_months": 3}, "exam-out-of-date C, exam-long C"),
    ({"reports.1.basis": "exceptional", "reports.1.full": None}, "exam-none C"),
    ({"reports.1.configurations": [{"name": "x", "swl_kg": 9000}]}, "exam-config C"),
    ({"reports.1.configurations": [{"name": "h2", "swl_kg": 1570}],
      "items.1.model.setting_is_configuration": True}, "attachment-over-rating C"),
    ({"reports.1.defects": [{"id": "d", "danger": "could_become", "by_day": DAY}]},
     "exam-defect-dated C"),
    ({"reports.1.defects": [{"id": "d", "danger": "could_become", "by_day": "2026-06-14"}]},
     "exam-unsafe C"),
    ({"reports.1.defects": [{"id": "d", "danger": "present"}],
      "clearings": [{"defect": "d", "by_competent": True}]}, ""),
    ({"reports.1": None, "items.1.declarations": [{"id": "D", "made": "2025-06-15", "copy": None}],
      "items.1.first_service": "2026-06-15"}, ""),
    ({"reports.1": None, "items.1.declarations": [{"id": "D", "made": "2025-06-14", "copy": None}],
      "items.1.first_service": "2026-06-15"}, "exam-none C"),
    ({"reports.1": None, "items.1.interims": [
        {"id": "I", "examined": "2026-05-18", "signed": True, "by_competent": True,
         "swl_kg": 9000, "safe": True}]}, "exam-due C"),
    ({"reports.1": None, "items.1.interims": [
        {"id": "I", "examined": "2026-06-14", "signed": True, "by_competent": True,
         "swl_kg": 9000, "safe": None}]}, "exam-none C"),
    ({"events": [{"id": "e", "kind": "overload", "day": "2026-02-28", "at": 9, "units": ["C"]}]},
     ""),
    ({"events": [{"id": "e", "kind": "overload", "day": "2026-03-01", "at": 9, "units": ["C"]}]},
     "exam-event C"),
    ({"events": [{"id": "e", "kind": "overload", "day": "2026-03-01", "at": 9, "units": ["C"]}],
      "reports.1.names_events": ["e"]}, ""),
    ({"events": [{"id": "e", "kind": "knock", "day": DAY, "at": START, "units": ["C"],
                  "assessments": [{"at": NOW, "by_competent": True, "fit": True}]}]}, ""),
    ({"events": [{"id": "e", "kind": "knock", "day": DAY, "at": START + 1, "units": ["C"],
                  "assessments": [{"at": NOW, "by_competent": True, "fit": True},
                                  {"at": NOW, "by_competent": True, "fit": False}]}]},
     "exam-event C, check-stale C"),
    ({"events": [{"id": "e", "kind": "touch", "day": DAY, "at": NOW, "units": ["C"],
                  "looked_by": ["op", "op"]}]}, "event-touch C"),
    # data
    ({"pipe.compared": [{"at": 1000, "by": "ann"}]}, "data-unproved P"),
    ({"pipe.compared": [{"at": 999, "by": "ben"}]}, "data-unproved P"),
    ({"chart.disputed": ["arm"]}, "fact-disputed L"),
    # check
    ({"answers.1.at": START - 3601}, "check-none C"),
    ({"answers.1.at": START - 3600}, ""),
    ({"answers.1.by": "sup"}, "check-stale C"),
    ({"items.1.sheet": [{"id": "1", "staled_by": ["coupling"]}], "coupled_at": START + 1},
     "check-stale C"),
    ({"items.1.sheet": [{"id": "1", "staled_by": ["coupling"]}], "coupled_at": START}, ""),
    ({"answers.2": {"unit": "C", "item": "1", "at": 1, "by": "op", "answer": "stop",
                    "cleared": [{"by": "op", "entitled": True}]}}, "check-stopped C"),
    ({"answers.2": {"unit": "C", "item": "1", "at": 1, "by": "op", "answer": "stop",
                    "cleared": [{"by": "sup", "entitled": True}]}}, ""),
    # setting
    ({"setting_records.1.at": START - 3601}, "setting-unknown C"),
    ({"setting_records.1.own_pin": None}, "setting-unseen C"),
    ({"setting_records.0.by": "op"}, "setting-unseen C"),
    ({"setting_records.1.state": "h1"}, "setting-disputed C"),
    ({"pipe.barrel_mm": 899}, "setting-wrong C"),
    ({"items.1.model.states.1.least_mm": 901}, "setting-none C"),
    ({"items.1.model.adjusts": False}, "pipe-size P"),
    ({"items.1.model.adjusts": None}, "setting-unknown C"),
    ({"setting_records.2": {"id": "s3", "kind": "changed", "state": "h1", "at": START - 8000,
                            "by": "x", "after": []}}, "setting-disputed C"),
    ({"setting_records.2": {"id": "s3", "kind": "changed", "state": "h1", "at": START - 8000,
                            "by": "x", "after": []},
      "setting_records.3": {"id": "s4", "kind": "seen", "state": "h2", "at": NOW, "by": "y",
                            "after": ["s2", "s3"], "by_eye": True, "at_unit": True,
                            "own_pin": True, "authorised": True}}, ""),
    # pipe
    ({"items.1.model.bore_mm": {"least": 701, "greatest": 900}}, "pipe-size P"),
    ({"items.1.model.length_mm": {"least": 2501, "greatest": 2600}}, "pipe-length P"),
    ({"pipe.shape": "bend"}, "pipe-shape P"),
    ({"items.1.model.greatest_pipe_kg": 1570}, "pipe-mass P"),
    ({"pipe.material": "iron", "pipe.density_kg_m3": 2500}, "pipe-material P"),
    ({"pipe.stated_kg": 1335}, "pipe-mass-differs P"),  # 85 % of 1570.8 is 1335.18
    ({"pipe.stated_kg": 1336}, ""),
    # load: 1570.8 kg under the clamp, 2070.8 kg on the machine
    ({"items.1.plate_kg": 1570}, "attachment-over-rating C"),
    ({"items.1.plate_kg": 1745}, "attachment-near-rating C"),  # 90 % is 1570.5
    ({"items.1.plate_kg": 1746}, ""),  # 90 % is 1571.4
    ({"items.1.plate_kg": None}, "attachment-unrated C"),
    ({"move.water_kg": None}, "load-unknown A, load-unknown C"),
    ({"no_sling": None}, "sling-unrated "),
    ({"no_hitch": None}, "hitch-unseen , person-not-authorised op"),
    # reach: at 5 m the lower corner is 3000 kg, beyond 6 m there is none
    ({"move.bucket_kg": 930, "plan.greatest_kg": 9000}, "reach-over-rating A"),
    ({"move.bucket_kg": 929, "plan.greatest_kg": 9000}, "reach-near-rating A"),
    ({"move.nose_radius_mm": 4000, "move.centre_radius_mm": 4000, "move.bucket_kg": 930,
      "plan.greatest_kg": 9000}, ""),
    ({"move.nose_radius_mm": 6001, "plan.greatest_radius_mm": 6001}, "reach-off-chart A"),
    ({"move.sector": None}, "reach-off-chart A"),
    ({"set_up.blade": None}, "chart-other A"),
    ({"chart": None}, "chart-none A"),
    ({"set_up.valves_proved_at": None}, "machine-device A"),
    ({"set_up.mounting": "rigid"}, "mount-unrated A"),
    # 2070.8 kg x 9.81 x 0.25 m is 5078.6 N m
    ({"set_up.mounting": "rigid", "set_up.mount_kg": 2071, "set_up.mount_nm": 5079,
      "move.pin_to_centre_mm": 250}, ""),
    ({"set_up.mounting": "rigid", "set_up.mount_kg": 2071, "set_up.mount_nm": 5078,
      "move.pin_to_centre_mm": 250}, "mount-over-rating A"),
    # plan, people, place, trench, unit, thread
    ({"plan.signed": None}, "plan-none "),
    ({"plan.last_day": "2026-06-14"}, "plan-out-of-date PL"),
    ({"plan.greatest_kg": 2070}, "plan-outside PL"),
    ({"plan.greatest_radius_mm": 4999}, "plan-outside PL"),
    ({"plan.attachments": [], "plan.models": ["M-attachment"]}, ""),
    ({"plan.issue": 2}, "briefing-none op, briefing-none sig, briefing-none sup"),
    ({"people.signaller": None}, "person-none signaller"),
    ({"people.signaller": None, "plan.roles": {"signaller": False}}, ""),
    ({"people.supervisor": None}, "person-none supervisor, place-unconfirmed W"),
    ({"people.operator.authorised": ["M-machine"]}, "person-not-authorised op"),
    ({"people.operator.card_last_day": "2026-06-14"}, "card-expired op"),
    ({"people.operator.card_last_day": None, "site.expired_card_stops": False},
     "card-expired-allowed op"),
    ({"people.operator.card_last_day": "2026-06-29"}, "card-due op"),
    ({"place.confirmed.0.services": False}, "place-unconfirmed W"),
    ({"trench.someone_enters": None}, "trench-unchecked W"),
    ({"trench": {"someone_enters": True, "disturbed_at": [START],
                 "inspections": [{"at": START, "by_competent": True, "safe": True}]}}, ""),
    ({"trench": {"someone_enters": True, "disturbed_at": [START + 1],
                 "inspections": [{"at": START, "by_competent": True, "safe": True}]}},
     "trench-unchecked W"),
    ({"items.1.stops": [{"id": "x", "lifted_by_entitled": None}]}, "unit-quarantined C"),
    ({"items.1.at_site": "T", "items.0.scrapped": True}, "unit-scrapped A, unit-elsewhere C"),
    ({"thread.strutted": None}, "thread-unknown W"),
    # 2500 x 1000 mm, 100 mm clear all round
    ({"thread": {"strutted": True, "gap_mm": 2700, "clearance_mm": 100, "strut_depth_mm": 200,
                 "room_mm": 1200}}, ""),
    ({"thread": {"strutted": True, "gap_mm": 2699, "clearance_mm": 100, "strut_depth_mm": 200,
                 "room_mm": 1200}}, "thread-tight W"),
    # clock, book
    ({"clock.notices": [{"kind": "jump", "confirmed": [
        {"by": "sup", "supervisor": True, "to": NOW - 1}]}]}, "clock-jump "),
    ({"clock.notices": [{"confirmed": [{"by": p, "how": "phone", "to": NOW}
                                       for p in ("op", "sig")]}]}, ""),
    ({"book.opening_check_done": None}, "book-unchecked "),
    ({"now": None}, "check-none A, check-none C, setting-unknown C, machine-device A, "
                    "place-unconfirmed W"),
)

# The same with a sling of grade 8 and two legs between machine and clamp: 2070.8 kg under it.
SLINGS = (
    ({}, ""),  # 8 mm at 45 degrees: 2800 kg
    ({"angle_mdeg": 45001}, "sling-over-rating B"),  # 2000 kg
    ({"angle_mdeg": 60001}, "sling-angle B"),
    ({"angle_mdeg": 60000, "chain_mm": 10}, ""),  # 3150 kg
    ({"angle_mdeg": None, "spread_mm": [1414], "leg_length_mm": 1000}, ""),
    ({"angle_mdeg": None, "spread_mm": [1415], "leg_length_mm": 1000}, "sling-over-rating B"),
    ({"angle_mdeg": None}, "sling-angle B"),
    ({"legs": 1}, "sling-angle B"),
    ({"legs": 1, "angle_mdeg": 0}, "sling-over-rating B"),  # 2000 kg
    ({"chain_mm": 9}, "sling-unrated B"),
    ({"tag_0_45_kg": None}, "sling-unrated B"),
    ({"tag_0_45_kg": 2300}, "sling-near-rating B"),  # 90 %: 2070
    ({"symmetric": None}, ""),  # 2070.8 is under 80 % of 2800
    ({"symmetric": None, "tag_0_45_kg": 2588}, "sling-over-rating B"),  # 80 %: 2070.4
    ({"kind": "wire_rope", "grade": None, "chain_mm": None}, ""),
)

HITCHES = (
    ({}, ""),
    ({"items.2.pattern": "q"}, "hitch-headplate H"),
    ({"coupled_at": None}, "hitch-unseen H"),
    ({"items.1.lock_seen.0.at": START - 1}, "hitch-unseen H"),
    ({"items.1.lock_seen.1": {"at": START + 1, "own_eyes": None, "locked": True}},
     "hitch-unseen H"),
    ({"items.1.plate_kg": None}, "hitch-unrated H"),
    # a hitch of its own has six months, named by the machine's report twelve
    ({"reports.2.basis": "six_months"}, "exam-long H"),
    ({"reports.2.basis": "six_months", "reports.2.units": ["H", "A"]}, ""),
)


def as_text(findings):
    return ", ".join("%s %s" % (code, about) for code, _, about in findings)


def case(change, base):
    question = copy.deepcopy(base)
    for path, value in change.items():
        put(question, path, value)
    question["reports"] = [r for r in question["reports"] if r is not None]
    return question


def check_cases():
    hitched = lift()
    with_hitch(hitched)
    made = [(case(change, lift()), change, wanted) for change, wanted in CASES]
    made += [(case(change, hitched), change, wanted) for change, wanted in HITCHES]
    for facts, wanted in SLINGS:
        question = lift()
        with_sling(question, **facts)
        made.append((question, facts, wanted))
    for question, change, wanted in made:
        got = as_text(oracle.decide(question))
        assert got == wanted, "%s\n  wanted %s\n  got    %s" % (change, wanted, got)
        well_formed(QUESTION, question, "question")


def check_dispatch():
    question = lift()
    question.update(purpose="use", order={"id": "O", "hitch": "none", "pipes": [question["pipe"]],
                                          "first_use_day": "2026-09-01",
                                          "end_day": "2026-09-02"})
    question["items"] = question["items"][1:]
    question["items"][0]["loose_parts"] = {"headplate": "listed", "pin": "listed",
                                           "keeper": "not_applicable"}
    assert as_text(oracle.decide(question)) == "exam-due C, hire-due C"
    question["order"]["first_use_day"] = "2026-09-02"
    assert as_text(oracle.decide(question)) == "exam-out-of-date C"
    question["order"]["end_day"] = None
    question["items"][0]["loose_parts"]["pin"] = "missing"
    assert as_text(oracle.decide(question)) == "exam-out-of-date C, loose-parts C, order-open O"
    question["purpose"] = "return"
    assert oracle.decide(question) == []


def check_figures():
    for start, months, end in (
            ("1978-09-30", 4, "1979-01-30"), ("2025-08-31", 6, "2026-02-28"),
            ("2023-08-31", 6, "2024-02-29"), ("2025-09-30", 6, "2026-03-30"),
            ("2024-02-29", 12, "2025-02-28"), ("2025-12-31", 6, "2026-06-30")):
        got = oracle.plus_months(date.fromisoformat(start), months)
        assert got == date.fromisoformat(end), (start, months, got)
    pipe = {"bore_mm": 700, "barrel_mm": 900, "socket_mm": 0, "overall_mm": 2500,
            "material": "concrete"}
    assert 1570.79 < oracle.computed_mass(pipe) < 1570.80  # a published example: 1571 kg
    pipe.update(socket_mm=1000, effective_mm=2400, allowance_percent=10)
    # ring of 100 mm: pi/4 x (1.00 - 0.81) m2 x 0.1 m x 2500 kg/m3 = 37.31 kg
    assert 1608.10 < oracle.computed_mass(pipe) < 1608.11
    assert 1768.9 < oracle.pipe_mass(pipe) < 1769.0
    # A first tilt makes the plan longer: back to L only at twice atan(D/L).
    tilt = oracle.tilted_at(3000, 1000, 2999.999999)
    assert math.isclose(tilt, 2 * math.atan(1 / 3), rel_tol=1e-6)
    # 1000 mm through 2000 mm, no strut depth: 30 degrees; with a depth it is steeper
    assert math.isclose(oracle.threaded_at(1000, 0, 2000), math.pi / 6)
    way, tilt = oracle.thread_way(6000, 1000, 3000, 0, 300, 9000, 60000)
    assert way == "threaded"
    assert math.isclose(1000 / math.sin(tilt) + 300 / math.tan(tilt), 3000)


def check_order():
    """Stops before cautions, then rows, then about by bytes, then place in the row."""
    question = lift()
    for number in (0, 1):
        question["reports"][number].update(safe=False, latest="2026-06-16")
        question["items"][number]["at_site"] = None
    assert as_text(oracle.decide(question)) == (
        "exam-unsafe A, exam-unsafe C, unit-elsewhere A, unit-elsewhere C, exam-due A, exam-due C")
    assert len(oracle.CODES) == 83


# --- the form of a question ------------------------------------------------------

def objects(text):
    """A small language: `name: type`, [x] a list of x, capital letters an object."""
    return dict(part.split(": ") for part in " ".join(text.split()).split("; "))


PROOF = "changed: BY; compared: [BY]; disputed: [text]"
FORMS = {
    "BY": objects("at: int; by: text"),
    "QUESTION": objects("""id: text; purpose: text; day: day; now: int; shift: SHIFT; site: SITE;
        items: [ITEM]; no_hitch: flag; no_sling: flag; reports: [REPORT]; clearings: [CLEARING];
        events: [EVENT]; answers: [ANSWER]; coupled_at: int; setting_records: [RECORD]; pipe: PIPE;
        move: MOVE; chart: CHART; set_up: SETUP; people: {PERSON}; plan: PLAN; place: PLACE;
        trench: TRENCH; thread: THREAD; order: ORDER; clock: CLOCK; book: BOOK"""),
    "SHIFT": objects("start: int; end: int; last_day: day"),
    "SITE": objects("id: text; warning_days: int; expired_card_stops: flag"),
    "ITEM": objects("""role: text; tag: text; class: text; mass_kg: int; plate_kg: int;
        configuration: text; owner: text; between_own_sites: flag; at_site: text; off_hire: flag;
        scrapped: flag; stops: [STOP]; scheme_months: int; first_service: day;
        interims: [INTERIM]; declarations: [DECLARATION]; sheet: [LINE]; model: MODEL;
        pattern: text; lock_seen: [LOCK]; sling: SLING; loose_parts: PARTS; disputed: [text]"""),
    "STOP": objects("id: text; lifted_by_entitled: flag"),
    "LINE": objects("id: text; staled_by: [text]"),
    "LOCK": objects("at: int; own_eyes: flag; locked: flag"),
    "PARTS": objects("headplate: text; pin: text; keeper: text"),
    "MODEL": objects("id: text; rating_kg: int; like_for_like: [text]; adjusts: flag; "
                     "states: [STATE]; setting_is_configuration: flag; bore_mm: RANGE; "
                     "barrel_mm: RANGE; socket_mm: RANGE; length_mm: RANGE; shapes: [text]; "
                     "materials: [text]; greatest_pipe_kg: int; envelope_length_mm: int; "
                     "above_crown_mm: int; below_invert_mm: int; tilt_limit_mdeg: int; " + PROOF),
    "STATE": objects("name: text; least_mm: int; greatest_mm: int"),
    "RANGE": objects("least: int; greatest: int"),
    "SLING": objects("""kind: text; grade: int; chain_mm: int; legs: int; angle_mdeg: int;
        spread_mm: [int]; leg_length_mm: int; tag_0_45_kg: int; tag_45_60_kg: int;
        symmetric: flag"""),
    "REPORT": objects("id: text; units: [text]; examined: day; report_day: day; latest: day; "
                      "identity: text; examiner: text; basis: text; swl_kg: int; safe: flag; "
                      "full: flag; configurations: [CONFIGURATION]; defects: [DEFECT]; "
                      "remedies: [text]; names_events: [text]; particulars: {text}; copy: COPY; "
                      + PROOF),
    "CONFIGURATION": objects("name: text; swl_kg: int"),
    "DEFECT": objects("id: text; danger: text; by_day: day; unit: text"),
    "COPY": objects("legible: flag; here: flag"),
    "INTERIM": objects("""id: text; examined: day; names_events: [text]; copy: COPY; signed: flag;
        by_competent: flag; swl_kg: int; safe: flag"""),
    "DECLARATION": objects("id: text; made: day; copy: COPY"),
    "CLEARING": objects("defect: text; by_competent: flag"),
    "EVENT": objects("""id: text; kind: text; day: day; at: int; units: [text]; structural: flag;
        part: text; assessments: [ASSESSMENT]; looked_by: [text]"""),
    "ASSESSMENT": objects("at: int; by_competent: flag; fit: flag"),
    "ANSWER": objects("""unit: text; item: text; at: int; by: text; machine: text; answer: text;
        cleared: [CLEARED]"""),
    "CLEARED": objects("by: text; entitled: flag"),
    "RECORD": objects("""id: text; kind: text; state: text; at: int; by: text; after: [text];
        by_eye: flag; at_unit: flag; own_pin: flag; authorised: flag"""),
    "PIPE": objects("id: text; shape: text; material: text; bore_mm: int; barrel_mm: int; "
                    "socket_mm: int; overall_mm: int; effective_mm: int; socket_length_mm: int; "
                    "density_kg_m3: int; allowance_percent: int; stated_kg: int; " + PROOF),
    "MOVE": objects("""water_kg: int; mud_kg: int; shackles_kg: int; bucket_kg: int;
        nose_radius_mm: int; centre_radius_mm: int; pick_height_mm: int; slew_height_mm: int;
        lay_height_mm: int; sector: text; pin_to_centre_mm: int"""),
    "CHART": objects("id: text; arm: text; blade: text; counterweight: text; includes_hitch: flag;"
                     " cells: [CELL]; " + PROOF),
    "CELL": objects("over: text; height_mm: int; radius_mm: int; rated_kg: int"),
    "SETUP": objects("""arm: text; blade: text; counterweight: text; mounting: text;
        mount_kg: int; mount_nm: int; valves_proved_at: int; overload_warning_proved_at: int"""),
    "PERSON": objects("id: text; authorised: [text]; card_last_day: day; disputed: [text]"),
    "PLAN": objects("""id: text; issue: int; issued: flag; signed: flag; site: text;
        first_day: day; last_day: day; machines: [text]; attachments: [text]; models: [text];
        pipes: [text]; places: [text]; greatest_kg: int; greatest_radius_mm: int; roles: {flag};
        briefed: [BRIEFED]; disputed: [text]"""),
    "BRIEFED": objects("person: text; issue: int"),
    "PLACE": objects("id: text; confirmed: [CONFIRMED]; disputed: [text]"),
    "CONFIRMED": objects("""at: int; by: text; level: flag; ground_and_edge: flag; services: flag;
        zone_closed: flag"""),
    "TRENCH": objects("none: flag; someone_enters: flag; inspections: [INSPECTION]; "
                      "disturbed_at: [int]"),
    "INSPECTION": objects("at: int; by_competent: flag; safe: flag"),
    "THREAD": objects("""strutted: flag; gap_mm: int; clearance_mm: int; strut_depth_mm: int;
        room_mm: int"""),
    "ORDER": objects("id: text; pipes: [PIPE]; hitch: text; first_use_day: day; end_day: day"),
    "CLOCK": objects("notices: [NOTICE]; newest_record_at: int"),
    "NOTICE": objects("kind: text; confirmed: [CONFIRMATION]"),
    "CONFIRMATION": objects("by: text; supervisor: flag; how: text; to: int"),
    "BOOK": objects("opening_check_done: flag; damaged: flag; forked: flag"),
}
QUESTION = "QUESTION"
ROLE_ORDER = ("machine", "hitch", "headplate", ("hook", "sling"), "attachment")


def well_formed(kind, value, where):
    """Nothing but the keys and types of the page; ids unique in their list."""
    if value is None:
        assert where != "question.id"
    elif kind == "int":
        assert type(value) is int, where
    elif kind == "flag":
        assert type(value) is bool, where
    elif kind == "text":
        assert type(value) is str and value, where
    elif kind == "day":
        date.fromisoformat(value)
    elif kind[0] == "[":
        ids = [v["id"] for v in value if isinstance(v, dict) and "id" in v]
        assert len(ids) == len(set(ids)), where
        for part in value:
            well_formed(kind[1:-1], part, where)
    elif kind[0] == "{":
        for key, part in value.items():
            well_formed(kind[1:-1], part, where + "." + key)
    elif not (kind == "RANGE" and value == "any"):
        for key, part in value.items():
            assert key in FORMS[kind], where + "." + key
            well_formed(FORMS[kind][key], part, where + "." + key)


def items_in_order(items):
    def place(role):
        return next(n for n, r in enumerate(ROLE_ORDER) if role == r or role in r)
    places = [place(i["role"]) for i in items]
    single = [p for p in places if ROLE_ORDER[p] != ("hook", "sling")]
    tags = [i["tag"] for i in items]
    assert places == sorted(places) and len(single) == len(set(single))
    assert len(tags) == len(set(tags))


def check_questions():
    for number in range(3000):
        question = questions.question(7, number)
        well_formed(QUESTION, question, "question")
        items_in_order(question.get("items") or [])
    assert questions.question(7, 5) == questions.question(7, 5)


def main():
    for check in (check_figures, check_cases, check_dispatch, check_order, check_questions):
        try:
            check()
        except AssertionError as error:
            print("%s: %s" % (check.__name__, error))
            return 1
    print("all hold")
    return 0


if __name__ == "__main__":
    sys.exit(main())
