"""What happened in the six weeks: each thing that goes wrong, once, on some unit, pipe or place."""

from datetime import timedelta

import days
import shifts
import stock
from stock import SITE, Clock

CHANGE_BACK = 10  # working days ago the pin was moved from hole 4 to hole 2


def faults(back):
    """Answers that were not "right": unit -> (answer, name for later records)."""
    if back == 18:
        return {"qh-4": ({"item": "clear_of_dirt", "answer": "report", "note": "Clay packed behind the lock, cleaned out"}, "@qh-4")}
    return {}


def add_settings(lines, working):
    first = days.at(working[0], "06:50") + timedelta(minutes=30)
    shifts.add_setting(lines, first, "cl-02", "hole 4", "oakes", "farrow")
    shifts.add_setting(lines, first + timedelta(minutes=10), "cl-05", "hole 3", "oakes", "dunmore")
    shifts.add_setting(lines, days.at(working[-1 - CHANGE_BACK], "13:00"), "cl-02", "hole 2", "farrow", "dunmore")
    lines.add(days.at(working[-2], "14:30"), "dunmore", "headplate_fitted", "st-11", {"headplate": "hp-5"})
    shifts.add_setting(lines, days.at(working[-2], "15:00"), "st-11", "thin spacers", "dunmore", None)
    lines.add(days.at(working[0], "14:00"), "oakes", "headplate_fitted", "cl-05", {"headplate": "hp-2"})


def add_cleared(lines, working):
    """Reported or stopped, and put right again."""
    day = working[-26]
    lines.add(days.at(day, "11:40"), "farrow", "event", "knock-1",
              {"kind": "knock", "day": day.isoformat(), "at": days.seconds(days.at(day, "11:40")), "units": ["cl-05"],
               "what": "Jaw against the edge of the trench box"})
    lines.add(days.at(day, "13:00"), "varley", "event_assessed", "knock-1",
              {"fit": True, "words": "Paint only, jaw straight by the rule, pivots free"})
    lines.add(days.at(working[-19], "12:30"), "oakes", "defect_cleared", "qh-4",
              {"check": "@qh-4", "item": "clear_of_dirt", "remedy": "Washed out and greased, lock free"})
    day = working[-16]
    lines.add(days.at(day, "14:30"), "iqbal", "stop_called", "cl-02", {"why": "Keeper chain broken"}, ref="@keeper")
    lines.add(days.at(day, "15:40"), "oakes", "stop_lifted", "cl-02", {"stop": "@keeper", "why": "New keeper chain fitted, keeper holds"})


def add_open(lines, sheets, working):
    """Reported or stopped, and still so."""
    day = working[-10]
    lines.add(days.at(day, "14:10"), "dunmore", "event", "touch-1",
              {"kind": "touch", "day": day.isoformat(), "at": days.seconds(days.at(day, "14:10")), "units": ["pl-04"],
               "what": "Tongs touched the fence when slewing, no mark"})
    lines.add(days.at(day, "14:20"), "dunmore", "event_looked", "touch-1", {"note": "No mark found"})
    unlike = {"item": "pads", "answer": "stop", "note": "Left pad split along the bolts"}
    lines.add(days.at(working[-3], "13:30"), "dunmore", "pre_use_check", "pl-04", sheets.answered("pl-04", "ex-14", unlike))
    lines.add(days.at(working[-2], "14:20"), "iqbal", "stop_called", "pl-06", {"why": "Catch let go before the weight was off"})


def add_papers(lines, today, working):
    units = stock.data("units")
    day = working[-7]
    lines.add(days.at(day, "14:00"), "quill", "interim_statement", "int-sl-12",
              {"unit": "sl-12", "examined": day.isoformat(), "signed": True, "by_competent": True, "swl_kg": 4250, "safe": True,
               "copy": {"legible": True, "here": True}})
    stock.add_report(lines, Clock(days.at(working[-4], "14:00")), "quill", "hallam", "sl-15", units["sl-15"], today)
    lines.add(days.at(working[0], "14:30"), "sefton", "declaration", "dec-st-12",
              {"unit": "st-12", "made": (today - timedelta(days=60)).isoformat(), "copy": {"legible": True, "here": True}})
    lines.add(days.at(working[-3], "14:30"), "quill", "pipe", stock.UNPROVED, stock.data("pipes")[stock.UNPROVED])


def add_yard(lines, today, working):
    lines.add(days.at(working[-6], "14:50"), "sefton", "order", "ord-118",
              {"customer": "Thackmire Drainage (invented)", "site": SITE, "pipes": ["sk-600"], "hitch": "SB-2",
               "first_use_day": (today + timedelta(days=2)).isoformat(),
               "end_day": (today + timedelta(days=60)).isoformat(), "units": ["cl-08", "hp-8"]})
    lines.add(days.at(working[-2], "15:30"), "sefton", "dispatched", "st-12", {"purpose": "use", "to": SITE})


def add_mishaps(lines, sheets, today, working):
    add_settings(lines, working)
    add_cleared(lines, working)
    add_open(lines, sheets, working)
    add_papers(lines, today, working)
    add_yard(lines, today, working)
    stock.add_plan(lines, days.at(working[-21], "14:00"), 2, today, ["A", "B", "C"])
