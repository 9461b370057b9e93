"""Six weeks of shifts, and the morning of the day on which the book is opened."""

from datetime import timedelta

import days
import stock
from stock import SITE, Clock

RIGS = {"farrow": {"machine": "ex-21", "hitch": "qh-4", "attachment": "cl-02", "chart": "ex-21-chart", "arm": "2.9",
                   "rigging": {"no_sling": True}, "units": ["ex-21", "qh-4", "cl-02"]},
        "dunmore": {"machine": "ex-14", "hitch": "qh-2", "attachment": "pl-03", "chart": "ex-14-chart", "arm": "2.5",
                    "rigging": {"hangs": ["hk-2", "sl-07"]}, "units": ["ex-14", "qh-2", "hk-2", "sl-07", "pl-03"]}}
HEADPLATES = {"cl-02": "hp-7", "cl-05": "hp-2", "pl-03": "hp-3", "st-11": "hp-5"}
SUITS = {"hole 4": "sk-600", "hole 2": "sk-450"}


class Sheets:
    """Every line of a unit's sheet, answered."""

    def __init__(self):
        self.units, self.models, self.sheets = stock.data("units"), stock.data("models"), stock.sheets()

    def answered(self, unit, machine, unlike=None):
        body = self.units[unit]["body"]
        items = self.sheets[body["sheet"]]["items"] + self.models.get(body.get("model"), {}).get("check_items", [])
        answers = [{"item": item["id"], "answer": "right"} for item in items]
        answers = [unlike if unlike and unlike["item"] == each["item"] else each for each in answers]
        return {"machine": machine, "sheet": body["sheet"], "edition": self.sheets[body["sheet"]]["edition"], "answers": answers}


def add_rig(lines, clock, by, set_up_anew):
    """Set up, coupled, seen and proved."""
    rig = RIGS[by]
    machine = rig["machine"]
    if set_up_anew:
        lines.add(clock(), by, "machine_set_up", machine, {"arm": rig["arm"], "blade": "down", "counterweight": "standard",
                                                           "mounting": "free", "chart": rig["chart"]})
        lines.add(clock(), by, "headplate_fitted", rig["attachment"], {"headplate": HEADPLATES[rig["attachment"]]})
        lines.add(clock(), by, "coupled", machine, {"attachment": rig["attachment"], "hitch": rig["hitch"]})
        lines.add(clock(), by, "rigging", machine, {**rig["rigging"], "shackles_kg": 0, "bucket_kg": 0, "water_kg": 0, "mud_kg": 0})
    lines.add(clock(), by, "lock_seen", rig["hitch"], {"own_eyes": True, "locked": True})
    lines.add(clock(), by, "devices_proved", machine, {"valves": True, "overload_warning": True})


def add_checks(lines, clock, by, sheets, units, faults):
    for unit in units:
        unlike, ref = faults.get(unit, (None, None))
        lines.add(clock(), by, "pre_use_check", unit, sheets.answered(unit, RIGS[by]["machine"], unlike), ref=ref)


def open_shift(lines, day):
    start, end = days.at(day, "06:30"), days.at(day, "17:30")
    shift = "shift " + days.instant(start)
    lines.add(start, "quill", "shift", shift, {"site": SITE, "start": days.seconds(start), "end": days.seconds(end), "last_day": day.isoformat()})
    lines.add(days.at(day, "06:31"), "quill", "people_today", SITE,
              {"day": day.isoformat(), "roles": {"supervisor": "hallam", "signaller": "iqbal"}})
    return shift


def inspect_trenches(lines, day):
    for clock, place in (("06:36", "A"), ("06:42", "B")):
        lines.add(days.at(day, clock), "varley", "trench_inspection", place,
                  {"site": SITE, "safe": True, "words": "Sheets tight, props tight, no water at the toe"})


def confirm_places(lines, day):
    for clock, place in (("06:44", "A"), ("06:45", "B")):
        lines.add(days.at(day, clock), "hallam", "place_confirmed", place,
                  {"site": SITE, "level": True, "ground_and_edge": True, "services": True, "zone_closed": True})


def lay_pipes(lines, day, pipe, count):
    """Lifts asked for and done, forty minutes apart."""
    for n in range(count):
        asked = days.at(day, "08:10") + timedelta(minutes=40 * n)
        lift = "lift " + days.instant(asked)
        lines.add(asked, "farrow", "lift_asked", lift,
                  {"question": {"id": lift, "purpose": "lift", "day": day.isoformat(), "now": days.seconds(asked), "pipe": {"id": pipe}},
                   "outcome": "may_lift", "findings": [], "edition": 1})
        for minutes, kind in ((2, "picked_up"), (7, "set_down"), (8, "lift_done")):
            lines.add(asked + timedelta(minutes=minutes), "farrow", kind, lift, {})


def add_setting(lines, moment, unit, state, changed_by, seen_by):
    done = {"parked": True, "isolated": True, "clear": True, "steps_done": True, "by_eye": True, "at_unit": True}
    lines.add(moment, changed_by, "setting_changed", unit, {"state": state, **done})
    if seen_by:
        lines.add(moment + timedelta(minutes=6), seen_by, "setting_seen", unit, {"state": state, "by_eye": True, "at_unit": True})


def add_past_shift(lines, sheets, day, number, state, faults):
    shift = open_shift(lines, day)
    inspect_trenches(lines, day)
    confirm_places(lines, day)
    anew = number == 1 or day.weekday() == 0
    for by, start in (("dunmore", "06:46"), ("farrow", "07:03")):
        clock = Clock(days.at(day, start), 90)
        add_rig(lines, clock, by, anew)
        if by == "farrow":
            lines.add(clock(), by, "setting_seen", "cl-02", {"state": state, "by_eye": True, "at_unit": True})
        add_checks(lines, clock, by, sheets, RIGS[by]["units"], faults)
    lay_pipes(lines, day, SUITS[state], 3 + number % 3)
    lines.add(days.at(day, "17:20"), "farrow", "stood_down", shift, {"note": "Parked on the hardstanding, attachments on their stands"})


def add_this_morning(lines, sheets, day):
    """Two rigs: ex-14 is ready; ex-21 is ready but for the attachment, not checked and its pin not looked at."""
    open_shift(lines, day)
    inspect_trenches(lines, day)
    confirm_places(lines, day)
    clock = Clock(days.at(day, "06:46"), 90)
    add_rig(lines, clock, "dunmore", True)
    add_checks(lines, clock, "dunmore", sheets, RIGS["dunmore"]["units"], {})
    lines.add(clock(), "dunmore", "setting_seen", "st-11", {"state": "thin spacers", "by_eye": True, "at_unit": True})
    clock = Clock(days.at(day, "07:04"), 90)
    add_rig(lines, clock, "farrow", True)
    add_checks(lines, clock, "farrow", sheets, ["ex-21", "qh-4"], {})
