"""What the site has: sites, people, sheets, models, pipes, charts, units and their papers, the lift plan."""

import csv
import json
from datetime import timedelta
from pathlib import Path

import days

HERE = Path(__file__).resolve().parent
SITE, YARD = "wendle-carr", "thorl-yard"
PARTICULARS = {"employer": "given", "premises": "given", "last_examined": "given", "qualifications": "given",
               "employment": "given", "report_day": "given", "manufactured": "given", "tests": "not_applicable",
               "installation": "not_applicable", "defect_parts": "not_applicable", "authenticator": "given"}
UNPROVED = "br-525"  # typed in, not yet compared by a second person


def data(name):
    return json.loads((HERE / "data" / f"{name}.json").read_text(encoding="utf-8"))


def sheets():
    return {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in sorted((HERE / "check_sheets").glob("*.json"))}


def chart_cells(name):
    """The grid of a chart file; a blank is not permitted."""
    with open(HERE / "charts" / name, newline="", encoding="utf-8") as file:
        return [{"over": row["over"],
                 "height_mm": round(float(row["height_m"]) * 1000),
                 "radius_mm": round(float(row["radius_m"]) * 1000),
                 "rated_kg": int(row["rated_kg"]) if row["rated_kg"] else None} for row in csv.DictReader(file)]


class Clock:
    """One line after another, so many seconds apart."""

    def __init__(self, start, step=5):
        self.next, self.step = start, timedelta(seconds=step)

    def __call__(self):
        now, self.next = self.next, self.next + self.step
        return now


def report(unit, paper, body, today):
    latest = today + timedelta(days=paper["left"])
    examined = days.examined_for(latest, paper["months"])
    own_latest = days.later_by_months(examined, paper["own_months"]) if "own_months" in paper else latest
    particulars = dict(PARTICULARS) if paper.get("typed", True) else {}
    made = {"units": [unit, *paper.get("with", [])], "identity": body["serial"], "examiner": "R. Tansley (invented)",
            "basis": "twelve_months" if paper["months"] == 12 else "six_months",
            "examined": examined.isoformat(), "report_day": (examined + timedelta(days=1)).isoformat(),
            "latest": own_latest.isoformat(), "swl_kg": paper["swl"], "safe": paper.get("safe", True), "full": True,
            "employer": body["owner_firm"], "manufactured": body.get("manufactured", "on the plate"),
            "copy": {"legible": True, "here": paper.get("copy_here", True)}}
    if "defect" in paper:
        defect = dict(paper["defect"])
        if "by" in defect:
            defect["by_day"] = (today + timedelta(days=defect.pop("by"))).isoformat()
        made["defects"] = [{**defect, "unit": unit}]
        particulars["defect_parts"] = "given"
    made["particulars"] = particulars
    return made, examined


def day_of_report(paper, body, today, working):
    """The working day on which the report came, if the examination was in the book's six weeks."""
    _, examined = report("", paper, body, today)
    return next(day for day in working if day > examined) if examined >= working[0] else None


def add_report(lines, clock, typed_by, compared_by, unit, it, today):
    made, _ = report(unit, it["paper"], it["body"], today)
    lines.add(clock(), typed_by, "examination_report", f"rep-{unit}", made)
    lines.add(clock() + timedelta(minutes=30), compared_by, "compared", f"rep-{unit}", {"what": "report"})


def add_people(lines, clock, today):
    for person, it in data("people").items():
        last = (today + timedelta(days=it["card_days"])).isoformat()
        lines.add(clock(), "quill", "person", person,
                  {"name": it["name"], "firm": it["firm"], "card": it["card"], "card_last_day": last})
        admission = {key: it[key] for key in ("roles", "models", "setting_models") if key in it}
        lines.add(clock(), "quill", "admission", person, {"site": SITE, "card_seen": True, **admission})


def add_data(lines, clock):
    """Typed by one, compared with plate, manual or delivery note by another."""
    found = [("model", key, body) for key, body in data("models").items()]
    found += [("pipe", key, body) for key, body in data("pipes").items() if key != UNPROVED]
    for key, meta in data("charts").items():
        body = {name: value for name, value in meta.items() if name != "file"}
        found.append(("chart", key, {**body, "cells": chart_cells(meta["file"])}))
    for kind, key, body in found:
        lines.add(clock(), "quill", kind, key, body)
        lines.add(clock() + timedelta(minutes=30), "hallam", "compared", key, {"what": kind})


def add_unit(lines, clock, by, unit, it):
    lines.add(clock(), by, "unit", unit, it["body"])
    if it["place"] == YARD:
        lines.add(clock(), by, "returned", unit, {"site": YARD})
    else:
        lines.add(clock(), by, "received", unit,
                  {"site": it["place"], "condition": "whole", "serial_seen": True, "evidence_seen": it.get("paper", {}).get("copy_here", True)})


def plan(issue, today, places):
    body = data("plan")
    body["places"] = [each for each in body["places"] if each["id"] in places]
    return {**body, "issue": issue, "issued": True, "signed": True, "site": SITE,
            "first_day": (today - timedelta(days=42)).isoformat(), "last_day": (today + timedelta(days=45)).isoformat()}


def add_plan(lines, moment, issue, today, places):
    """Issued and signed by the appointed person; everybody on the site is briefed on it."""
    lines.add(moment, "quill", "lift_plan", "plan-1", plan(issue, today, places))
    clock = Clock(moment + timedelta(minutes=10), 60)
    for person, it in data("people").items():
        if it["roles"] != ["hire_desk"]:
            lines.add(clock(), "hallam", "briefing", "plan-1", {"issue": issue, "person": person})


def add_stock(lines, today, working):
    """The first day: everything that the site starts with."""
    first = working[0]
    clock = Clock(days.at(first, "07:00"))
    lines.add(clock(), "quill", "device", "", {"name": "Site tablet, Wendle Carr", "sample": True})
    for site, body in data("sites").items():
        lines.add(clock(), "quill", "site", site, body)
    add_people(lines, clock, today)
    for sheet, body in sheets().items():
        lines.add(clock(), "quill", "check_sheet", sheet, body)
    add_data(lines, clock)
    add_site_units(lines, clock, today, working)
    add_plan(lines, days.at(first, "08:30"), 1, today, ["A", "B"])
    yard = Clock(days.at(first, "12:00"))
    there = {unit: it for unit, it in data("units").items() if it["place"] == YARD}
    for unit, it in there.items():
        add_unit(lines, yard, "sefton", unit, it)
    for unit, it in there.items():
        if "paper" in it:
            add_report(lines, yard, "sefton", "oakes", unit, it, today)


def add_site_units(lines, clock, today, working):
    """The units, then their papers: a report may name several of them."""
    there = {unit: it for unit, it in data("units").items() if it["place"] == SITE}
    arrived = {unit: Clock(days.at(working[-1 - it["arrives"]], "13:00")) if "arrives" in it else clock
               for unit, it in there.items()}
    for unit, it in there.items():
        add_unit(lines, arrived[unit], "quill", unit, it)
    for unit, it in there.items():
        if it.get("paper", {}).get("safe", "paper" in it):
            came = day_of_report(it["paper"], it["body"], today, working)
            add_report(lines, Clock(days.at(came, "13:30")) if came else arrived[unit], "quill", "hallam", unit, it, today)
