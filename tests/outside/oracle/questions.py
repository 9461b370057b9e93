"""Questions to compare two writings of the decision with.

question(seed, number) is a question in the exact form that the question page demands,
and always the same one for the same two numbers. It starts from a complete case that may
lift (or leave the yard) and makes up to six small changes from CHANGES, most of which move
one fact to just under, at or just over a limit, or make it unknown. All names are invented.
"""

import math
import random
from datetime import date, datetime, timedelta, timezone

import oracle

HOUR = 3600
PEOPLE = ("ada", "bert", "cleo", "dora", "egon", "finn")

# DN, bore, barrel, socket, overall, effective
PIPES = (
    (300, 300, 410, 490, 2600, 2500),
    (450, 450, 580, 690, 2600, 2500),
    (600, 600, 764, 900, 2600, 2500),
    (750, 750, 930, 1080, 2620, 2500),
    (900, 900, 1100, 1280, 2620, 2500),
    (1200, 1200, 1450, 1450, 2640, 2500),
)


def day_text(day):
    return day.isoformat()


def noon(day):
    return int(datetime(day.year, day.month, day.day, 12, tzinfo=timezone.utc).timestamp())


def chance(rng, percent):
    return rng.random() * 100 < percent


# --- a complete case ------------------------------------------------------------

class Base:
    """Builds a question that may lift, remembering what the parts have in common."""

    def __init__(self, rng, number):
        self.rng = rng
        self.today = date(2027, 1, 1) + timedelta(days=rng.randrange(3000))
        self.now = noon(self.today) - rng.choice((0, 1, 2)) * HOUR
        self.start = noon(self.today) - 5 * HOUR
        self.lift = chance(rng, 76)
        self.adjusts = chance(rng, 75)
        self.reports = []
        self.q = {"id": "q%d" % number}

    def pick(self, *values):
        return self.rng.choice(values)

    def proof(self, thing):
        at = self.now - self.rng.randrange(20, 200) * 24 * HOUR
        by, second = self.rng.sample(PEOPLE, 2)
        thing["changed"] = {"at": at, "by": by}
        thing["compared"] = [{"at": at + self.rng.choice((0, 60, 9000)), "by": second}]
        thing["disputed"] = []
        return thing

    def copy(self):
        return {"legible": True, "here": True}

    def before(self, least, greatest):
        return self.today - timedelta(days=self.rng.randrange(least, greatest))

    # papers

    def report(self, number, units, months, swl, basis):
        examined = self.before(20, 130)
        latest = oracle.plus_months(examined, months)
        if chance(self.rng, 30):
            latest -= timedelta(days=self.rng.randrange(1, 15))
        answer = {name: "given" for name in oracle.ALWAYS_DUE}
        answer.update({name: self.pick("given", "not_applicable") for name in oracle.IF_THERE_ARE})
        return self.proof({
            "id": "rep%d" % number, "units": units, "examined": day_text(examined),
            "report_day": day_text(examined + timedelta(days=self.rng.randrange(0, 15))),
            "latest": day_text(latest), "identity": "plate read", "examiner": "Examiner Nine",
            "basis": basis, "swl_kg": swl, "safe": True,
            "full": True if basis in ("exceptional", "installation") or chance(self.rng, 70)
            else None,
            "configurations": [], "defects": [], "remedies": [], "names_events": [],
            "particulars": answer, "copy": self.copy()})

    def paper(self, item, rating):
        """A report, an interim statement or a declaration."""
        kind = self.rng.random()
        if kind < 0.8:
            months, basis = 6, "six_months"
            if item["role"] in ("machine", "hitch"):
                months, basis = 12, "twelve_months"
            if chance(self.rng, 10):
                basis, item["scheme_months"] = "scheme", self.pick(5, 6, 8, 9)
                months = item["scheme_months"]
            if chance(self.rng, 5):
                basis, months = "installation", 6
            self.reports.append(self.report(len(self.reports), [item["tag"]], months, rating,
                                            basis))
        elif kind < 0.9:
            item["interims"] = [{
                "id": "int-" + item["tag"], "examined": day_text(self.before(0, 25)),
                "names_events": [], "copy": self.copy(), "signed": True, "by_competent": True,
                "swl_kg": rating, "safe": True}]
        else:
            made = self.before(30, 120)
            served = made + timedelta(days=self.rng.randrange(0, 30))
            item["first_service"] = self.pick(None, day_text(served))
            item["declarations"] = [{"id": "dec-" + item["tag"], "made": day_text(made),
                                     "copy": self.copy()}]

    def share_report(self):
        """One report that names hitch and machine."""
        machine = [r for r in self.reports if "EX1" in r["units"] and r["basis"] != "scheme"]
        hitch = [r for r in self.reports if "QH2" in r["units"] and r["basis"] != "scheme"]
        if machine and hitch and chance(self.rng, 30):
            self.reports.remove(hitch[0])
            machine[0]["units"].append("QH2")

    # items

    def item(self, role, tag, kind, mass, rating):
        item = {
            "role": role, "tag": tag, "class": kind, "mass_kg": mass, "plate_kg": rating,
            "configuration": self.pick("std", None), "owner": self.pick("own", "own", "hired",
                                                                      "lent", "cross_hired"),
            "between_own_sites": False, "at_site": "S1",
            "off_hire": self.pick(None, False), "scrapped": self.pick(None, False),
            "stops": [{"id": "st1", "lifted_by_entitled": True}] if chance(self.rng, 10) else [],
            "scheme_months": None, "first_service": None, "interims": [], "declarations": [],
            "sheet": self.sheet(role), "disputed": [],
            "model": self.proof({"id": "mod-" + role, "rating_kg": rating,
                                 "like_for_like": ["pin", "hose"]})}
        if role in ("hook", "headplate", "hitch") and chance(self.rng, 30):
            item["plate_kg"] = None
        return item

    def sheet(self, role):
        if role == "headplate":
            return []
        lines = [{"id": "c1", "staled_by": []}, {"id": "c2", "staled_by": ["coupling"]}]
        if role == "attachment":
            lines.append({"id": "c3", "staled_by": ["setting"]})
            lines.append({"id": "c4", "staled_by": ["coupling", "setting"]})
        return lines

    def items(self):
        rng, mass = self.rng, self.mass
        margin = rng.choice((1.2, 1.5, 2.5))
        self.safe_load = int((mass + 2500) * margin)
        items = []
        if self.lift or chance(rng, 15):
            items.append(self.item("machine", "EX1", "machine", 21000, None))
        self.has_hitch = chance(rng, 70) if self.lift else chance(rng, 20)
        if self.has_hitch:
            items.append(self.item("hitch", "QH2", self.pick("machine", "undecided", "accessory"),
                                   280, self.safe_load))
            items[-1]["pattern"] = "P40"
            items[-1]["lock_seen"] = []
        if self.has_hitch or chance(rng, 50):
            items.append(self.item("headplate", "HP3", "accessory", 90, self.safe_load))
            items[-1]["pattern"] = "P40"
        self.has_sling = False
        for n in range(rng.choice((0, 0, 1, 1, 2))):
            if chance(rng, 70):
                items.append(self.item("hook", "HK%d" % n, "accessory", 12, self.safe_load))
            items.append(self.item("sling", "SL%d" % n, "accessory", 18, None))
            items[-1]["sling"] = self.sling(int(mass) + 1500)
            self.has_sling = True
        if not self.has_sling and chance(rng, 20):
            items.append(self.item("hook", "HK0", "accessory", 12, self.safe_load))
        items.append(self.item("attachment", "CL4", "accessory", rng.choice((350, 520)),
                               int((mass + 60) * margin)))
        if not self.lift and chance(rng, 12):
            items.pop()
        for item in items:
            rating = int((mass + 2500) * margin) if item["role"] != "attachment" else \
                item["plate_kg"]
            self.paper(item, rating)
        self.share_report()
        return items

    def sling(self, load):
        rng = self.rng
        legs = rng.choice((1, 2, 2, 3, 4, 4))
        upper = legs > 1 and chance(rng, 40)
        kind, grade = rng.choice((("chain", 8), ("chain", 8), ("chain", 8), ("chain", 10),
                                  ("wire_rope", None), ("webbing", None)))
        column = {1: 0, 2: 1, 3: 3, 4: 3}[legs] + upper
        size = next((s for s in oracle.EN_818_4 if oracle.EN_818_4[s][column] > load * 1.3), 32)
        wanted = max(oracle.EN_818_4[size][column], load * 2)
        sling = {"kind": kind, "grade": grade, "chain_mm": size if kind == "chain" else None,
                 "legs": legs, "angle_mdeg": 0 if legs == 1 else rng.randrange(46000, 60001)
                 if upper else rng.randrange(15000, 45001), "spread_mm": [],
                 "leg_length_mm": None, "tag_0_45_kg": int(wanted * (1.4 if upper else 1)),
                 "tag_45_60_kg": int(wanted) if upper else self.pick(None, int(wanted)),
                 "symmetric": True if legs > 1 else self.pick(None, True)}
        if legs in (2, 4) and chance(rng, 50):
            sling["leg_length_mm"] = 2000
            side = 3000 if upper else 2400
            sling["spread_mm"] = [side] if legs == 2 else [int(side * 0.8), int(side * 0.6)]
            sling["angle_mdeg"] = rng.choice((None, sling["angle_mdeg"]))
        return sling

    # pipe and model of the attachment

    def pipe(self, index):
        dn, bore, barrel, socket, overall, effective = PIPES[index]
        material = self.pick("concrete", "concrete", "concrete", "clay")
        pipe = self.proof({
            "id": "pipe%d" % dn, "shape": self.pick("straight", "straight", "straight", "bend"),
            "material": material, "bore_mm": bore, "barrel_mm": barrel,
            "socket_mm": self.pick(socket, socket, socket, 0), "overall_mm": overall,
            "effective_mm": effective, "socket_length_mm": self.pick(None, 110),
            "density_kg_m3": self.pick(None, 2450, 2500) if material == "concrete" else 2200,
            "allowance_percent": self.pick(None, 0, 3, 5), "stated_kg": None})
        pipe["stated_kg"] = self.pick(None, int(float(oracle.computed_mass(pipe))
                                                * self.rng.uniform(0.86, 1.06)))
        return pipe

    def shape_model(self, item):
        model, rng = item["model"], self.rng
        barrels = [p["barrel_mm"] for p in self.pipes]
        lowest, highest = min(barrels), max(barrels)
        self.states = [
            {"name": "hole1", "least_mm": lowest - 260, "greatest_mm": lowest - 20},
            {"name": "hole2", "least_mm": lowest - rng.choice((0, 30, 60)),
             "greatest_mm": highest + rng.choice((0, 1, 90))},
            {"name": "hole3", "least_mm": highest - rng.choice((20, 1)), "greatest_mm": 2000}]
        sizes = {"least": 200, "greatest": 2500}
        model.update({
            "adjusts": self.adjusts, "states": self.states if self.adjusts else [],
            "setting_is_configuration": self.pick(False, False, True, None)
            if self.adjusts else self.pick(False, None),
            "bore_mm": self.pick("any", dict(sizes)), "barrel_mm": self.pick("any", dict(sizes)),
            "socket_mm": self.pick("any", {"least": 0, "greatest": 2500}),
            "length_mm": {"least": 1000, "greatest": 3000}, "shapes": ["bend", "cut"],
            "materials": ["concrete", "clay"], "greatest_pipe_kg": int(self.mass) + 400,
            "envelope_length_mm": rng.choice((900, 1400, 2900)), "above_crown_mm": 180,
            "below_invert_mm": rng.choice((0, 40)), "tilt_limit_mdeg": 15000})
        if self.adjusts and model["barrel_mm"] != "any":
            model["barrel_mm"] = self.pick(None, model["barrel_mm"])
        item["loose_parts"] = {"headplate": "listed", "pin": self.pick("listed", "not_applicable"),
                               "keeper": self.pick("listed", "not_applicable")}
        if model["setting_is_configuration"] and chance(rng, 50):
            for report in self.reports:
                if item["tag"] in report["units"]:
                    report["configurations"] = [
                        {"name": "hole2", "swl_kg": report["swl_kg"]},
                        {"name": "hole3", "swl_kg": report["swl_kg"] + 100}]

    # checks and setting

    def answers(self, items):
        at = self.start + self.rng.choice((-HOUR, 0, 600, 1800))
        return [{"unit": i["tag"], "item": line["id"], "at": at, "by": "ada", "machine": "EX1",
                 "answer": "right", "cleared": []}
                for i in items for line in i["sheet"]]

    def setting_records(self):
        start, rng = self.start, self.rng
        if not self.adjusts:
            return []
        records = [
            {"id": "g1", "kind": "changed", "state": "hole2", "at": start - 50 * HOUR,
             "by": "egon", "after": [], "by_eye": True, "at_unit": True, "own_pin": True,
             "authorised": True},
            {"id": "g2", "kind": "seen", "state": "hole2", "at": start - 49 * HOUR,
             "by": "finn", "after": ["g1"], "by_eye": True, "at_unit": True, "own_pin": True,
             "authorised": True},
            {"id": "g3", "kind": "seen", "state": "hole2", "at": start + 300, "by": "ada",
             "after": ["g2"], "by_eye": True, "at_unit": True, "own_pin": None,
             "authorised": rng.choice((True, None))}]
        if chance(rng, 25):  # the same person's look serves both needs
            records[1:] = [dict(records[2], after=["g1"], by="finn", own_pin=True,
                                authorised=True)]
        rng.shuffle(records)
        return records

    # where it stands

    def chart(self, load):
        rng = self.rng
        least = int(load * rng.choice((1.15, 1.5, 2)))
        radii, heights = (3000, 4000, 5500, 7000), (-3000, 0, 3000)
        cells = []
        for side, share in (("front", 100), ("side", 95)):
            for height in heights:
                for radius in radii:
                    rated = least * 7000 * share // (radius * 95) + rng.randrange(50)
                    far = radius == 7000 and height == 3000
                    cells.append({"over": side, "height_mm": height, "radius_mm": radius,
                                  "rated_kg": None if far else rated})
        return self.proof({"id": "chart7", "arm": "arm29", "blade": "down", "counterweight": "cw1",
                           "includes_hitch": self.pick(False, False, True, None), "cells": cells})

    def move(self):
        nose = self.rng.randrange(4000, 6800)
        return {"water_kg": self.pick(0, 0, 30), "mud_kg": self.pick(0, 0, 20),
                "shackles_kg": self.pick(0, 9), "bucket_kg": self.pick(0, 0, 0, 450),
                "nose_radius_mm": nose, "centre_radius_mm": nose + self.pick(-50, 0, 120),
                "pick_height_mm": self.pick(-1000, 0, 0), "slew_height_mm": self.pick(-500, 0),
                "lay_height_mm": self.pick(-3000, -2500, -1200),
                "sector": self.pick("front", "side", "both", None), "pin_to_centre_mm": 250}

    def set_up(self):
        kg, nm = self.pick((None, None), (int(self.safe_load * 2), 60000))
        rigid = kg is not None and chance(self.rng, 70)
        return {"arm": "arm29", "blade": "down", "counterweight": "cw1",
                "mounting": "rigid" if rigid else "free", "mount_kg": kg, "mount_nm": nm,
                "valves_proved_at": self.start + self.pick(-HOUR, 0, 1200),
                "overload_warning_proved_at": self.start + self.pick(0, 1200)}

    def people(self):
        far = day_text(self.today + timedelta(days=self.rng.randrange(20, 900)))

        def person(name, allowed):
            return {"id": name, "authorised": allowed, "card_last_day": far, "disputed": []}
        people = {"operator": person("ada", ["mod-machine", "mod-hitch", "mod-attachment"])}
        self.supervised = chance(self.rng, 85)
        if self.supervised:
            people["supervisor"] = person("bert", ["supervisor"])
        people["signaller"] = person("cleo", ["signaller", "slinger2"])
        if chance(self.rng, 15):
            people["appointed"] = person("dora", ["appointed"])
        if chance(self.rng, 5):
            people["slinger2"] = dict(people["signaller"])
        return people

    def plan(self, people):
        return {"id": "plan6", "issue": 3, "issued": True, "signed": True, "site": "S1",
                "first_day": day_text(self.before(0, 30)),
                "last_day": day_text(self.today + timedelta(days=self.rng.randrange(0, 60))),
                "machines": ["EX1"], "attachments": self.pick(["CL4"], ["CL4", "CL8"], []),
                "models": [], "pipes": ["pipe%d" % p[0] for p in PIPES], "places": ["P-A", "P-B"],
                "greatest_kg": int(self.safe_load * 2), "greatest_radius_mm": 7000,
                "roles": {"supervisor": self.pick(True, None) if self.supervised else False,
                          "signaller": self.pick(True, None)},
                "briefed": [{"person": p["id"], "issue": 3} for p in people.values()],
                "disputed": []}

    def place(self):
        return {"id": "P-A", "disputed": [], "confirmed": [
            {"at": self.start + self.pick(-HOUR, 0, 900), "by": "bert" if self.supervised else
             "ada", "level": True, "ground_and_edge": True, "services": True,
             "zone_closed": True}]}

    def trench(self):
        kind = self.pick("none", "nobody", "checked", "checked", "fallen")
        trench = {"none": True if kind == "none" else self.pick(False, None),
                  "someone_enters": {"none": None, "nobody": False}.get(kind, True),
                  "inspections": [], "disturbed_at": []}
        if kind in ("checked", "fallen"):
            at = self.start + self.pick(-HOUR, 100, 3000)
            trench["inspections"] = [{"at": at, "by_competent": True, "safe": True}]
            if kind == "fallen":
                trench["disturbed_at"] = [at - self.pick(0, 0, 90, 90000)]
        return trench

    def thread(self, case):
        """Not strutted, or with a gap made for one of the ways."""
        kind = self.pick("open", "open", "level", "tilted", "threaded")
        thread = {"strutted": False, "gap_mm": None, "clearance_mm": None, "strut_depth_mm": None,
                  "room_mm": None}
        if kind == "open":
            return thread
        length, depth = oracle.envelope(case)
        clearance, strut = self.pick(0, 50, 100), self.pick(150, 300)
        model = case.attachment["model"]
        if kind == "level":
            gap, room = length + 2 * clearance + self.pick(0, 1, 400), depth + 2 * clearance
            room += self.pick(0, 1, 300)
        else:
            tilt = math.radians(self.rng.uniform(48, 66))
            model["tilt_limit_mdeg"] = self.rng.randrange(66000, 80000)
            if kind == "tilted":
                gap = length * math.cos(tilt) + depth * math.sin(tilt) + 2 * clearance
            else:
                gap = (depth + 2 * clearance) / math.sin(tilt) + strut / math.tan(tilt)
            gap = int(gap) + 1
            room = int(math.hypot(length, depth)) + 2 * clearance + 1
        thread.update(strutted=True, gap_mm=gap, clearance_mm=clearance, strut_depth_mm=strut,
                      room_mm=room)
        return thread

    def order(self):
        first = self.today + timedelta(days=self.rng.randrange(0, 4))
        self.pipes = self.pipes or [self.pipe(2)]
        return {"id": "ord9", "pipes": self.pipes, "hitch": self.pick("P40", "none"),
                "first_use_day": day_text(first),
                "end_day": day_text(first + timedelta(days=self.rng.choice((5, 20, 60, 120))))}

    def devices(self):
        notices = []
        if chance(self.rng, 15):
            notices = [{"kind": self.pick("back", "jump", None), "confirmed": self.confirmed()}]
        self.q["clock"] = {"notices": notices, "newest_record_at": self.now - 60}
        self.q["book"] = {"opening_check_done": True, "damaged": self.pick(None, False),
                          "forked": self.pick(None, False)}

    def confirmed(self):
        one = {"by": "bert", "supervisor": True, "how": self.pick("pin", "phone"),
               "to": self.now - self.pick(60, 0)}
        two = [{"by": p, "supervisor": self.pick(False, None), "how": "phone", "to": self.now}
               for p in ("cleo", "dora")]
        return self.pick([one], two)

    def build(self):
        rng, q = self.rng, self.q
        indexes = [rng.randrange(6)]
        if not self.lift and chance(rng, 40):
            indexes = sorted(rng.sample(range(6), 2))
        self.pipes = [self.pipe(i) for i in indexes]
        self.mass = max(float(oracle.pipe_mass(p)) for p in self.pipes)
        items = self.items()
        attachment = next((i for i in items if i["role"] == "attachment"), None)
        if attachment:
            self.shape_model(attachment)
        q.update(purpose="lift" if self.lift else "use", day=day_text(self.today), now=self.now,
                 site={"id": "S1", "warning_days": self.pick(7, 14, 14, 0),
                       "expired_card_stops": self.pick(True, True, None, False)},
                 items=items, reports=self.reports, clearings=[], events=[],
                 setting_records=self.setting_records() if attachment else [])
        if self.lift:
            self.build_lift(items)
        else:
            midnight = noon(self.today) - 12 * HOUR
            self.q["shift"] = {"start": midnight, "end": midnight + 24 * HOUR - 1,
                               "last_day": q["day"]}
            q["order"] = self.order()
            q["people"] = {}
        self.devices()
        return q

    def build_lift(self, items):
        q, rng = self.q, self.rng
        q["no_hitch"] = None if self.has_hitch else True
        q["no_sling"] = None if self.has_sling else True
        last_day = self.today + timedelta(days=self.pick(0, 0, 1))
        q["shift"] = {"start": self.start, "end": self.start + 10 * HOUR,
                      "last_day": day_text(last_day)}
        q["answers"] = self.answers(items)
        q["coupled_at"] = self.start - HOUR - self.pick(0, 900, 90000)
        if self.has_hitch:
            items[1]["lock_seen"] = [{"at": self.start - self.pick(-900, 0, HOUR),
                                      "own_eyes": True, "locked": True}]
        q["pipe"] = self.pipes[0]
        q["move"] = self.move()
        q["set_up"] = self.set_up()
        q["chart"] = {"includes_hitch": None}
        load = oracle.load_on_machine(oracle.Case(q), q["pipe"], True)
        q["chart"] = self.chart(float(load))
        q["people"] = self.people()
        q["plan"] = self.plan(q["people"])
        if not q["plan"]["attachments"]:
            q["plan"]["models"] = ["mod-attachment", "mod-other"]
        q["place"] = self.place()
        q["trench"] = self.trench()
        q["thread"] = self.thread(oracle.Case(q))


# --- small changes ---------------------------------------------------------------

CHANGES = []


def change(times=1, needs=None):
    """Registers a change; `needs` are keys without which it is not applied."""
    def register(function):
        CHANGES.extend([(function, needs or ())] * times)
        return function
    return register


def an_item(rng, q, *roles):
    items = [i for i in q["items"] if not roles or i["role"] in roles]
    return rng.choice(items) if items else None


def reports_of(q, item):
    return [r for r in q["reports"] if item["tag"] in r["units"]]


def a_report(rng, q):
    return rng.choice(q["reports"]) if q["reports"] else None


def shift_day(text, days):
    return None if text is None else day_text(date.fromisoformat(text) + timedelta(days=days))


def today(q, days=0):
    return shift_day(q["day"], days)


def blank(rng, thing, *keys):
    """Makes one of the facts unknown."""
    there = [k for k in keys if k in thing]
    if there:
        thing[rng.choice(there)] = None


def around(rng):
    return rng.choice((-1, 0, 0, 1))


def shift_start(q):
    return (q.get("shift") or {}).get("start") or noon(date.fromisoformat(q["day"])) - 5 * HOUR


# exam

@change(2)
def no_papers(rng, q):
    item = an_item(rng, q)
    if item:
        q["reports"] = [r for r in q["reports"] if item["tag"] not in r["units"]]
        item["interims"], item["declarations"] = [], []


@change(3)
def future_report(rng, q):
    report = a_report(rng, q)
    if report:
        report["examined"] = today(q, rng.choice((0, 0, 1, 2)))
        report["report_day"] = report["examined"]
        report["latest"] = shift_day(report["examined"], 150)


@change(2)
def report_day(rng, q):
    report = a_report(rng, q)
    if report:
        report["report_day"] = rng.choice((None, today(q, 0), today(q, 1)))


@change(5)
def examined_to_the_limit(rng, q):
    """Examined so long ago that its own day or the law's is today, yesterday or tomorrow."""
    report = a_report(rng, q)
    if report:
        day = date.fromisoformat(q["day"]) + timedelta(days=rng.choice((-1, 0, 0, 1, 1, 2, 8, 9)))
        months = rng.choice((6, 6, 6, 12))
        report["examined"] = day_text(oracle.plus_months(day, -months))
        report["latest"] = rng.choice((day_text(day), day_text(day + timedelta(days=200)),
                                       report["latest"]))


@change(5)
def own_latest(rng, q):
    report = a_report(rng, q)
    if report:
        site_days = (q.get("site") or {}).get("warning_days") or 14
        report["latest"] = today(q, rng.choice((-1, 0, 1, 2, site_days - 1, site_days,
                                                site_days + 1)))
        if q.get("site") and (q.get("shift") or {}).get("last_day") and chance(rng, 25):
            q["site"]["warning_days"] = 0
            report["latest"] = shift_day(q["shift"]["last_day"], around(rng))


@change(3)
def latest_beyond_law(rng, q):
    report = a_report(rng, q)
    if report and report.get("examined"):
        law = oracle.plus_months(date.fromisoformat(report["examined"]), rng.choice((6, 12)))
        report["latest"] = day_text(law + timedelta(days=around(rng)))


@change(3)
def report_field_unknown(rng, q):
    report = a_report(rng, q)
    if report:
        blank(rng, report, "identity", "examiner", "basis", "examined", "latest", "swl_kg", "safe",
              "full")


@change(2)
def report_not_safe(rng, q):
    report = a_report(rng, q)
    if report:
        report["safe"] = rng.choice((False, False, None))


@change(2)
def basis(rng, q):
    report = a_report(rng, q)
    if report:
        report["basis"] = rng.choice(("six_months", "twelve_months", "scheme", "exceptional",
                                      "installation"))
        if chance(rng, 50):
            report["full"] = rng.choice((None, False, True))


@change(2)
def scheme(rng, q):
    report = a_report(rng, q)
    if report:
        report["basis"] = "scheme"
        for item in q["items"]:
            if item["tag"] in report["units"]:
                item["scheme_months"] = rng.choice((None, 1, 3, 6, 9, 12))


@change(2)
def hitch_months(rng, q):
    """A hitch examined between six and twelve months ago, or lifting people."""
    item = an_item(rng, q, "hitch")
    for report in reports_of(q, item) if item else ():
        report["examined"] = today(q, -rng.choice((100, 250, 250)))
        report["latest"] = shift_day(report["examined"], rng.choice((150, 300, 300)))
        report["basis"] = rng.choice(("six_months", "six_months", "twelve_months",
                                      "installation"))
        report["units"] = rng.choice(([item["tag"]], [item["tag"], "EX1"]))
        item["class"] = rng.choice(("people", "machine", "accessory", "undecided"))


@change(2)
def item_class(rng, q):
    item = an_item(rng, q)
    if item:
        item["class"] = rng.choice(("accessory", "machine", "people", "undecided", None))


@change(3)
def particulars(rng, q):
    report = a_report(rng, q)
    if report:
        name = rng.choice(oracle.ALWAYS_DUE + oracle.IF_THERE_ARE)
        if chance(rng, 8):
            report["particulars"] = None
        elif chance(rng, 20):
            report["particulars"] = dict(report["particulars"] or {}, **{name: None})
        else:
            report["particulars"] = dict(report["particulars"] or {}, **{
                name: rng.choice(("not_typed", "not_typed", "lacking"))})


@change(2)
def copies(rng, q):
    report = a_report(rng, q)
    if report:
        report["copy"] = rng.choice((None, {"legible": True}, {"legible": True, "here": False},
                                     {"legible": False, "here": True}, {"here": True}))


@change(2)
def configurations(rng, q):
    item = an_item(rng, q)
    for report in reports_of(q, item) if item else ():
        swl = report.get("swl_kg")
        item["configuration"] = rng.choice((None, "std", "long"))
        name = rng.choice(("std", "std", "long", "hole2", "hole3"))
        report["configurations"] = [{"name": name, "swl_kg": swl}, {"name": "hole1",
                                                                    "swl_kg": None}]


@change()
def configuration_swl(rng, q):
    """The SWL for today's configuration at the load."""
    item = an_item(rng, q, "hook", "headplate", "hitch", "attachment")
    load = under(q, item) if item else None
    for report in reports_of(q, item) if load is not None else ():
        item["configuration"] = "std"
        report["configurations"] = [
            {"name": "std", "swl_kg": math.ceil(load) + around(rng)},
            {"name": "long", "swl_kg": 9000}]


def event(rng, q, item, kind, days_ago):
    number = len(q["events"])
    at = noon(date.fromisoformat(q["day"])) - days_ago * 24 * HOUR - rng.randrange(3 * HOUR)
    return {"id": "ev%d" % number, "kind": kind, "day": today(q, -days_ago), "at": at,
            "units": [item["tag"]], "structural": None, "part": None, "assessments": [],
            "looked_by": []}


@change(5)
def grave_event(rng, q):
    item = an_item(rng, q)
    if not item:
        return
    kind = rng.choice(("overload", "repair", "repair", "welding", "alteration", "accident",
                       "like_for_like", "lay_up"))
    new = event(rng, q, item, kind, rng.choice((0, 1, 5, 40, 150)))
    new["structural"] = rng.choice((True, False, None)) if kind == "repair" else None
    new["part"] = rng.choice(("pin", "bush", None)) if kind == "like_for_like" else None
    if kind == "accident":
        new["units"] += [i["tag"] for i in q["items"] if i["role"] in ("machine", "hitch")
                         and i["tag"] != item["tag"]]
    if chance(rng, 20):
        new["day"] = rng.choice((None, today(q, 1)))
    if chance(rng, 15):
        new["at"] = None
    if chance(rng, 15):
        new["assessments"] = [{"at": new["at"] or 0, "by_competent": True, "fit": True}]
    settle_event(rng, q, item, new)
    q["events"].append(new)


def settle_event(rng, q, item, new):
    """Examinations around the event's day, of which some clear it."""
    report = rng.choice(reports_of(q, item) or [None])
    if report is None or chance(rng, 30):
        for interim in item.get("interims") or []:
            interim["names_events"] = [new["id"]]
        return
    if chance(rng, 60):
        report["names_events"] = report["names_events"] + [new["id"]]
    if chance(rng, 70) and new["day"] and report.get("examined"):
        new["day"] = shift_day(report["examined"], rng.choice((-1, 0, 0, 1)))
        new["at"] = noon(date.fromisoformat(new["day"]))
    if chance(rng, 30):
        extra = exceptional(rng, q, item)
        extra["names_events"] = rng.choice(([new["id"]], []))
        extra["examined"] = shift_day(new["day"] or q["day"], rng.choice((-1, 0, 1)))
        extra["compared"] = rng.choice((extra.get("compared"), []))


def exceptional(rng, q, item):
    """Adds a report after exceptional circumstances."""
    model = rng.choice(q["reports"] or [None])
    if model is None:
        model = Base(rng, 0).report(0, [], 6, 5000, "six_months")
    extra = dict(model, id="rex%d-%d" % (len(q["reports"]), rng.randrange(10 ** 9)), units=[item["tag"]], basis="exceptional",
                 full=rng.choice((None, False, False, True)), defects=[], remedies=[],
                 names_events=[], particulars=dict(model.get("particulars") or {}),
                 configurations=[])
    extra["examined"] = today(q, -rng.choice((0, 0, 1, 3, 10)))
    extra["report_day"] = extra["examined"]
    extra["latest"] = shift_day(extra["examined"], 90)
    extra["safe"] = rng.choice((True, True, True, False, None))
    q["reports"].append(extra)
    return extra


@change(2)
def exceptional_report(rng, q):
    item = an_item(rng, q)
    if item:
        exceptional(rng, q, item)


@change(4)
def mark_event(rng, q):
    item = an_item(rng, q)
    if not item:
        return
    days_ago = rng.choice((0, 0, 1, 20))
    new = event(rng, q, item, rng.choice(("knock", "slip", "drop")), days_ago)
    at = new["at"]
    for _ in range(rng.choice((0, 1, 1, 2))):
        fit = {"at": at + rng.choice((0, 60, 60, 120)), "by_competent": True, "fit": True}
        if chance(rng, 30):
            fit[rng.choice(("by_competent", "fit"))] = rng.choice((False, None))
        new["assessments"].append(fit)
    if chance(rng, 20):
        new["day"], new["at"] = None, None
    if chance(rng, 40):
        settle_event(rng, q, item, new)
    q["events"].append(new)


@change(3)
def touch_event(rng, q):
    item = an_item(rng, q)
    if item:
        new = event(rng, q, item, "touch", rng.choice((0, 0, 1, 30)))
        new["looked_by"] = rng.choice(([], ["ada"], ["ada", "ada"], ["ada", "bert"]))
        q["events"].append(new)


@change(4)
def defect(rng, q):
    report = a_report(rng, q)
    if not report:
        return
    number = len(q["clearings"]) + sum(len(r["defects"]) for r in q["reports"])
    new = {"id": "df%d" % number, "danger": rng.choice(("present", "could_become",
                                                         "could_become", "could_become", None)),
           "by_day": rng.choice((None, today(q, -1), today(q), today(q, 1), today(q, 20))),
           "unit": rng.choice((None, rng.choice(report["units"] or [None])))}
    report["defects"] = report["defects"] + [new]
    settle = rng.random()
    if settle < 0.3:
        q["clearings"].append({"defect": new["id"], "by_competent": rng.choice((True, True, None,
                                                                                False))})
    elif settle < 0.6 and report.get("examined"):
        units = rng.choice((report["units"], report["units"][:1]))
        later = dict(report, id="rlt%d" % len(q["reports"]), units=units, defects=[],
                     remedies=[new["id"]],
                     examined=shift_day(report["examined"], rng.choice((-1, 0, 1, 5))))
        later["compared"] = rng.choice((later.get("compared"), []))
        q["reports"].append(later)
        if chance(rng, 30):  # and one more, so that neither is the newest
            q["reports"].append(dict(later, id=later["id"] + "b", remedies=[],
                                     examined=shift_day(report["examined"], 7),
                                     compared=report.get("compared")))


@change(3)
def second_report(rng, q):
    """Another full report, often of the same day."""
    report = a_report(rng, q)
    if not report or not report.get("examined"):
        return
    extra = dict(report, id="r%s%d" % (rng.choice("az"), len(q["reports"])), defects=[],
                 remedies=[], examined=shift_day(report["examined"], rng.choice((-9, 0, 0, 0, 4))))
    if chance(rng, 10):
        extra["examined"] = None
    key = rng.choice(("safe", "latest", "swl_kg", "copy", "identity"))
    extra[key] = {"safe": rng.choice((False, None)),
                  "latest": rng.choice((None, today(q, 3), today(q, -1))),
                  "swl_kg": rng.choice((None, 40)), "copy": None, "identity": None}[key]
    q["reports"].append(extra)


@change(3)
def interim(rng, q):
    item = an_item(rng, q)
    if not item:
        return
    if chance(rng, 60):
        q["reports"] = [r for r in q["reports"] if item["tag"] not in r["units"]]
    new = {"id": "inx", "examined": today(q, -rng.choice((-1, 0, 13, 14, 27, 28, 29))),
           "names_events": [], "copy": {"legible": True, "here": True}, "signed": True,
           "by_competent": True, "swl_kg": 9000, "safe": True}
    if chance(rng, 40):
        key = rng.choice(("signed", "by_competent", "swl_kg", "safe", "copy", "examined"))
        new[key] = rng.choice((None, False)) if key in ("signed", "by_competent", "safe") else None
    if chance(rng, 30) and q["events"]:
        new["names_events"] = [rng.choice(q["events"])["id"]]
    item["interims"] = [new]


@change(3)
def declaration(rng, q):
    item = an_item(rng, q)
    if not item:
        return
    if chance(rng, 80):
        q["reports"] = [r for r in q["reports"] if item["tag"] not in r["units"]]
        item["interims"] = []
    day = date.fromisoformat(q["day"])
    served = rng.choice((None, day_text(day + timedelta(days=rng.choice((1, 30)))),
                         day_text(oracle.plus_months(day, -6) + timedelta(days=around(rng))),
                         today(q), today(q, -40)))
    start = date.fromisoformat(served) if served else day
    made = rng.choice((oracle.plus_months(start, -12) + timedelta(days=around(rng)),
                       start + timedelta(days=around(rng)),
                       oracle.plus_months(day, -6) + timedelta(days=around(rng)),
                       day + timedelta(days=around(rng))))
    item["first_service"] = served
    item["declarations"] = [{"id": "decx", "made": rng.choice((day_text(made), day_text(made),
                                                               day_text(made), None)),
                             "copy": rng.choice((None, {"legible": True, "here": True}))}]


# evidence, data, unit

@change(5)
def owner(rng, q):
    item = an_item(rng, q)
    if item:
        item["owner"] = rng.choice(("own", "own", "own", "hired", "lent", "cross_hired", None))
        item["between_own_sites"] = rng.choice((True, True, False, None))
        if chance(rng, 70):
            for paper in reports_of(q, item) + (item.get("interims") or []):
                paper["copy"] = {"legible": True, "here": False}


@change(4)
def unproved(rng, q):
    things = [i["model"] for i in q["items"] if i.get("model")] + q["reports"]
    things += [t for t in (q.get("pipe"), q.get("chart")) if t]
    things += (q.get("order") or {}).get("pipes") or []
    if not things:
        return
    thing = rng.choice(things)
    changed = thing.get("changed") or {}
    at, by = changed.get("at") or 1800000000, changed.get("by") or "ada"
    thing["compared"] = rng.choice((
        [], [{"at": at + 5, "by": by}], [{"at": at - 1, "by": "gus"}], [{"at": at, "by": "gus"}],
        [{"at": None, "by": "gus"}], [{"at": at + 9, "by": None}],
        [{"at": at - 8, "by": "gus"}, {"at": at + 8, "by": "hal"}]))
    if chance(rng, 20):
        thing["changed"] = rng.choice((None, {"at": at}, {"by": by}))


@change(2)
def disputed(rng, q):
    named = [(i, ("owner", "at_site", "class")) for i in q["items"]]
    named += [(i["model"], ("rating_kg",)) for i in q["items"] if i.get("model")]
    named += [(r, ("latest", "safe", "swl_kg")) for r in q["reports"]]
    named += [(q.get("pipe"), ("barrel_mm", "bore_mm")), (q.get("chart"), ("arm",)),
              (q.get("plan"), ("last_day",)), (q.get("place"), ("confirmed",))]
    named += [(p, ("card_last_day",)) for p in (q.get("people") or {}).values()]
    there = [n for n in named if n[0]]
    if there:
        thing, fields = rng.choice(there)
        thing["disputed"] = [rng.choice(fields)]


@change(3)
def unit_place(rng, q):
    item = an_item(rng, q)
    if item:
        item["at_site"] = rng.choice(("S2", None))


@change(6)
def unit_out(rng, q):
    item = an_item(rng, q)
    if item:
        key = rng.choice(("off_hire", "scrapped", "stops"))
        item[key] = True if key != "stops" else [
            {"id": "st1", "lifted_by_entitled": rng.choice((True, False, None))},
            {"id": "st2", "lifted_by_entitled": rng.choice((True, None))}]


@change()
def site(rng, q):
    if chance(rng, 15):
        q["site"] = None
    elif q.get("site"):
        blank(rng, q["site"], "id", "warning_days", "expired_card_stops")


# check

@change(3, ("answers",))
def answer_missing(rng, q):
    if q["answers"]:
        q["answers"].remove(rng.choice(q["answers"]))


@change(5, ("answers",))
def answer_time(rng, q):
    """One sheet answered at another time, about the changes that touch it."""
    item = an_item(rng, q)
    start = shift_start(q)
    marks = [q.get("coupled_at"), start - HOUR, q.get("now")]
    marks += [r.get("at") for r in q["setting_records"]] + [e.get("at") for e in q["events"]]
    at = rng.choice([m for m in marks if m is not None]) + around(rng)
    for answer in q["answers"]:
        if item and answer["unit"] == item["tag"] and (answer["item"] == "c1" or chance(rng, 70)):
            answer["at"] = at


@change(3, ("answers",))
def answer_by(rng, q):
    if q["answers"]:
        answer = rng.choice(q["answers"])
        answer[rng.choice(("by", "machine"))] = rng.choice(("zoe", "EX7", None))


@change(6, ("answers",))
def answer_bad(rng, q):
    if not q["answers"]:
        return
    answer = rng.choice(q["answers"])
    bad = dict(answer, answer=rng.choice(("stop", "report")),
               at=answer["at"] - rng.choice((0, 60, 200000)), cleared=[])
    for _ in range(rng.choice((0, 1, 1, 2))):
        bad["cleared"].append({"by": rng.choice(("zoe", "zoe", "ada", None)),
                               "entitled": rng.choice((True, True, False, None))})
    headplates = [item["tag"] for item in q["items"] if item["role"] == "headplate"]
    if headplates and chance(rng, 20):
        bad["unit"] = headplates[0]
    if chance(rng, 50):
        q["answers"].remove(answer)
    q["answers"].append(bad)


@change(2, ("answers",))
def answer_twice(rng, q):
    """Two answers of one instant, one of them by another person."""
    if q["answers"]:
        answer = rng.choice(q["answers"])
        q["answers"].append(dict(answer, by=rng.choice(("zoe", "ada")),
                                 at=answer["at"] + rng.choice((-1, 0, 1))))


@change(3, ("coupled_at",))
def coupled(rng, q):
    times = [a["at"] for a in q.get("answers") or [] if a.get("at")] + [shift_start(q) + 60]
    q["coupled_at"] = rng.choice((None, rng.choice(times) + around(rng)))


@change(2)
def sheet(rng, q):
    item = an_item(rng, q, "machine", "hitch", "hook", "sling", "attachment")
    if item:
        item["sheet"] = rng.choice(([], None, (item.get("sheet") or []) + [
            {"id": "c9", "staled_by": ["setting"]}]))


# setting

def change_of(q):
    return next((r for r in q["setting_records"] if r["id"] == "g1"), None)


def look(number, at, by, after, state="hole2"):
    return {"id": "g%d" % number, "kind": "seen", "state": state, "at": at, "by": by,
            "after": after, "by_eye": True, "at_unit": True, "own_pin": True, "authorised": True}


@change(4, ("setting_records",))
def setting_field(rng, q):
    if q["setting_records"]:
        record = rng.choice(q["setting_records"])
        record[rng.choice(("by_eye", "at_unit", "own_pin", "authorised"))] = \
            rng.choice((None, False))


@change(2, ("setting_records", "coupled_at"))
def setting_seen_at(rng, q):
    """Every look at the edges of the shift."""
    for record in q["setting_records"]:
        if record["kind"] == "seen" and chance(rng, 70):
            record["at"] = rng.choice((shift_start(q) - HOUR, q.get("now") or 0)) + around(rng)


@change(3, ("setting_records",))
def setting_person(rng, q):
    if q["setting_records"]:
        rng.choice(q["setting_records"])["by"] = rng.choice(("egon", "finn", "ada", None))


@change(2, ("setting_records",))
def setting_forgotten(rng, q):
    if q["setting_records"]:
        q["setting_records"] = [r for r in q["setting_records"]
                                if r["kind"] != rng.choice(("changed", "seen"))]


@change(2, ("setting_records",))
def setting_look_removed(rng, q):
    looks = [r for r in q["setting_records"] if r["kind"] == "seen"]
    if looks:
        q["setting_records"].remove(rng.choice(looks))


@change(4, ("setting_records",))
def setting_everywhere(rng, q):
    state = rng.choice(("hole1", "hole1", "hole3", "hole3", "hole9", None))
    for record in q["setting_records"]:
        record["state"] = state


@change(3, ("setting_records",))
def setting_other_seen(rng, q):
    if q["setting_records"]:
        rng.choice(q["setting_records"])["state"] = rng.choice(("hole1", "hole3"))


@change(3, ("setting_records",))
def setting_changed_again(rng, q):
    """A later change, this shift, with or without looks after it."""
    if not change_of(q) or "g5" in [r["id"] for r in q["setting_records"]]:
        return
    start, known = shift_start(q), [r["id"] for r in q["setting_records"]]
    state = rng.choice(("hole2", "hole3"))
    new = dict(look(5, start + 700, rng.choice(("egon", "ada")), known, state), kind="changed")
    q["setting_records"].append(new)
    if chance(rng, 70):
        q["setting_records"].append(look(6, new["at"] + rng.choice((-1, 0, 60)),
                                         rng.choice(("finn", "finn", "egon")), ["g5"], state))


@change(6, ("setting_records",))
def setting_concurrent(rng, q):
    """A change that did not know the first, and what was done about it."""
    first = change_of(q)
    if not first or {"g5", "g7", "g8", "g9"} & {r["id"] for r in q["setting_records"]}:
        return
    start = shift_start(q)
    other = dict(first, id="g7", by=rng.choice(("dora", "egon", "finn")), after=[],
                 at=rng.choice((first["at"] - 60, first["at"] + 60, start + 400))
                 if first.get("at") else None,
                 state=rng.choice(("hole3", "hole3", "hole2", "hole1")))
    q["setting_records"].append(other)
    heads = [r["id"] for r in q["setting_records"]]
    settle = rng.choice(("none", "look", "look", "look", "part", "change", "change and look",
                         "look, change, look"))
    known = ["g1"] if settle == "part" else heads
    state = rng.choice((first["state"], other["state"]))
    if settle == "look, change, look":
        q["setting_records"] += [
            look(8, start + 900, "bert", heads, state),
            dict(look(9, start + 1000, "egon", ["g8"], state), kind="changed"),
            look(11, start + 1100, rng.choice(("dora", "egon", "finn")), ["g9"], state)]
    elif "change" in settle:
        q["setting_records"].append(dict(look(9, start + 1000, "egon", known, state),
                                         kind="changed"))
        known = ["g9"]
    if settle in ("look", "part", "change and look"):
        ending = look(8, start + 1500, rng.choice(("bert", "bert", "egon", "dora")), known, state)
        if chance(rng, 15):
            ending["at_unit"] = None
        q["setting_records"].append(ending)
        if chance(rng, 30):
            q["setting_records"].append(dict(
                ending, id="g10", by="cleo", at=ending["at"] + 60, after=rng.choice(
                    (known, known + ["g8"])), state=rng.choice((state, state, "hole1"))))


@change(3, ("setting_records",))
def setting_look_after_dispute(rng, q):
    """One more look that knows everything, at the unit."""
    known = [r["id"] for r in q["setting_records"]]
    if known and "g20" not in known:
        state = q["setting_records"][0].get("state")
        q["setting_records"].append(look(20, shift_start(q) + 2500, rng.choice(PEOPLE), known,
                                         state))


@change(4)
def adjustment(rng, q):
    item = an_item(rng, q, "attachment")
    if not item or not item.get("model"):
        return
    model = item["model"]
    if chance(rng, 40):
        model["adjusts"] = rng.choice((None, False))
        if chance(rng, 50):
            model["barrel_mm"] = {"least": 200, "greatest": 2000}
    else:
        model["setting_is_configuration"] = rng.choice((True, False, None))


@change(5)
def state_ranges(rng, q):
    item, barrel = an_item(rng, q, "attachment"), a_pipe(rng, q).get("barrel_mm")
    states = (item or {}).get("model", {}).get("states") if item and item.get("model") else None
    if not states or barrel is None:
        return
    if chance(rng, 25):
        for state in states:
            state.update(rng.choice(({"least_mm": barrel + 1}, {"greatest_mm": barrel - 1})))
        return
    for state in rng.sample(states, rng.choice((1, 1, len(states)))):
        key = rng.choice(("least_mm", "greatest_mm"))
        state[key] = barrel + around(rng) if chance(rng, 85) else None


# pipe

def a_pipe(rng, q):
    pipes = [q.get("pipe")] if q.get("purpose") == "lift" else \
        (q.get("order") or {}).get("pipes") or []
    pipes = [p for p in pipes if p]
    return rng.choice(pipes) if pipes else {}


@change(4)
def pipe_limits(rng, q):
    item, pipe = an_item(rng, q, "attachment"), a_pipe(rng, q)
    key, of = rng.choice((("bore_mm", "bore_mm"), ("barrel_mm", "barrel_mm"),
                          ("socket_mm", "socket_mm"), ("length_mm", "overall_mm"),
                          ("length_mm", "overall_mm")))
    if not item or not item.get("model") or pipe.get(of) is None:
        return
    limits = {"least": 0, "greatest": 9000}
    limits[rng.choice(("least", "greatest"))] = pipe[of] + around(rng)
    if chance(rng, 20):
        limits = rng.choice((None, "any", dict(limits, least=None)))
    item["model"][key] = limits


@change(3)
def pipe_unknown(rng, q):
    pipe = a_pipe(rng, q)
    blank(rng, pipe, "shape", "material", "bore_mm", "barrel_mm", "socket_mm", "overall_mm",
          "effective_mm", "socket_length_mm", "density_kg_m3", "allowance_percent", "stated_kg",
          "barrel_mm")


@change(3)
def pipe_kind(rng, q):
    pipe, item = a_pipe(rng, q), an_item(rng, q, "attachment")
    if pipe and chance(rng, 50):
        pipe["shape"] = rng.choice(("straight", "bend", "junction", "cut", "other"))
    elif pipe:
        pipe["material"] = rng.choice(("concrete", "clay", "iron"))
    if item and item.get("model") and chance(rng, 30):
        blank(rng, item["model"], "shapes", "materials")


@change(2)
def pipe_over_greatest(rng, q):
    item, mass = an_item(rng, q, "attachment"), oracle.pipe_mass(a_pipe(rng, q))
    if item and item.get("model") and mass is not None:
        item["model"]["greatest_pipe_kg"] = rng.choice((None, math.ceil(mass) + around(rng)))


@change(3)
def pipe_stated(rng, q):
    pipe = a_pipe(rng, q)
    computed = oracle.computed_mass(pipe)
    if computed is not None:
        pipe["stated_kg"] = math.ceil(computed * 85 / 100) + rng.choice((-1, 0, 1))


@change()
def pipe_socket(rng, q):
    pipe = a_pipe(rng, q)
    if pipe.get("barrel_mm"):
        pipe["socket_mm"] = pipe["barrel_mm"] + rng.choice((-1, 0, 1, 100))


@change()
def no_pipe(rng, q):
    if q.get("purpose") == "lift" and chance(rng, 50):
        q["pipe"] = None


# load

def under(q, item):
    """The load under the item, or None."""
    pipes = [p for p in oracle.Case(q).pipes() if p]
    if not pipes or item not in q["items"]:
        return None
    return oracle.load_under(oracle.Case(q), item, pipes[0])


def at_load(rng, load):
    """A rating such that the load is at, just over or just under it, or at nine tenths."""
    share = rng.choice((1, 1, 0.9))
    return math.ceil(load / share) + rng.choice((-1, 0, 1))


@change(16)
def rating_at_load(rng, q):
    role = rng.choice(("attachment", "hook", "headplate", "hitch"))
    item = an_item(rng, q, role) or an_item(rng, q, "attachment", "hook", "headplate")
    load = under(q, item) if item else None
    if load is None:
        return
    value = at_load(rng, float(load))
    where = rng.choice(("plate", "model", "report"))
    if where == "plate":
        item["plate_kg"] = value
    elif where == "model" and item.get("model"):
        item["model"]["rating_kg"] = value
    else:
        for report in reports_of(q, item):
            report["swl_kg"] = value


@change(10)
def no_rating(rng, q):
    item = an_item(rng, q, "attachment", "hook", "headplate", "hitch")
    if item:
        item["plate_kg"] = None
        if item.get("model") and chance(rng, 75):
            item["model"]["rating_kg"] = None


@change(2)
def mass_unknown(rng, q):
    item = an_item(rng, q)
    if item:
        blank(rng, item, "mass_kg")
    if chance(rng, 30) and q.get("move"):
        blank(rng, q["move"], "water_kg", "mud_kg", "shackles_kg", "bucket_kg")


@change(12)
def sling_tag(rng, q):
    item = an_item(rng, q, "sling")
    load = under(q, item) if item else None
    if load is None or not item.get("sling"):
        return
    value = math.ceil(float(load) / rng.choice((1, 0.9, 0.8, 0.5))) + rng.choice((-1, 0, 0, 1))
    where = rng.choice(("tag", "tag", "report", "model"))
    if where == "tag":
        item["sling"]["tag_0_45_kg"] = item["sling"]["tag_45_60_kg"] = value
    elif where == "report":
        for report in reports_of(q, item):
            report["swl_kg"] = value
    elif item.get("model"):
        item["model"]["rating_kg"] = value
    if chance(rng, 60):
        item["sling"]["symmetric"] = rng.choice((True, False, None))


@change(6)
def sling_chain(rng, q):
    """A smaller chain, so that the table governs."""
    item = an_item(rng, q, "sling")
    if item and item.get("sling"):
        item["sling"].update(kind="chain", grade=8, tag_0_45_kg=90000, tag_45_60_kg=90000,
                             chain_mm=rng.choice((6, 6, 7, 8, 10, 13, 32)),
                             symmetric=rng.choice((True, True, None)))


@change(8)
def sling_at_table(rng, q):
    """A pipe stated so heavy that the load is at the figure of the table, or at a share of
    it."""
    item, pipe = an_item(rng, q, "sling"), a_pipe(rng, q)
    load, mass = (under(q, item) if item else None), oracle.pipe_mass(pipe)
    if load is None or mass is None or not item.get("sling"):
        return
    size, legs, band = rng.choice(tuple(oracle.EN_818_4)), rng.choice((1, 2, 3, 4)), 0
    if legs > 1:
        band = rng.choice((0, 1))
    item["sling"].update(kind="chain", grade=8, chain_mm=size, legs=legs, spread_mm=[],
                         angle_mdeg=0 if legs == 1 else (45000, 60000)[band],
                         tag_0_45_kg=90000, tag_45_60_kg=90000,
                         symmetric=rng.choice((True, True, None)))
    if item.get("model"):
        item["model"]["rating_kg"] = None
    for report in reports_of(q, item):
        report["swl_kg"] = 90000
    figure = oracle.EN_818_4[size][{1: 0, 2: 1, 3: 3, 4: 3}[legs] + band]
    share = 80 if item["sling"]["symmetric"] is None else rng.choice((100, 100, 90))
    wanted = math.ceil(figure * share / 100) + rng.choice((0, 0, 1, -1)) - (load - mass)
    if wanted > mass:
        pipe["stated_kg"] = int(wanted)


@change(6)
def sling_angle(rng, q):
    item = an_item(rng, q, "sling")
    if not item or not item.get("sling"):
        return
    sling = item["sling"]
    kind = rng.choice(("angle", "angle", "spread", "none", "legs"))
    if kind == "angle":
        sling["angle_mdeg"] = rng.choice((0, 0, 1, 45000, 45001, 60000, 60001))
        sling["tag_45_60_kg"] = rng.choice((None, sling["tag_0_45_kg"], 800))
    elif kind == "spread":
        sling["legs"] = rng.choice((2, 4))
        sling["leg_length_mm"] = 1000
        # sine 0.707 is a spread of 1414, sine 0.866 one of 1732
        if sling["legs"] == 2:
            sling["spread_mm"] = [rng.choice((1414, 1415, 1732, 1733, 2000, 2001))]
        else:
            sling["spread_mm"] = rng.choice(([1000, 1000], [1000, 1001], [1200, 1249],
                                             [1200, 1250], [1000, 1414], [1000, 1415]))
        sling["angle_mdeg"] = rng.choice((None, 30000, 45001))
    elif kind == "none":
        blank(rng, sling, "angle_mdeg", "spread_mm", "leg_length_mm", "legs")
    else:
        sling["legs"] = rng.choice((1, 2, 3, 4))


@change(4)
def sling_unknown(rng, q):
    item = an_item(rng, q, "sling")
    if item and chance(rng, 8):
        item["sling"] = None
    elif item and item.get("sling"):
        blank(rng, item["sling"], "kind", "grade", "chain_mm", "chain_mm", "tag_0_45_kg",
              "tag_0_45_kg", "tag_45_60_kg", "symmetric")
        if chance(rng, 15):
            item["sling"]["chain_mm"] = 11


# reach

@change(2, ("set_up",))
def set_up(rng, q):
    if q["set_up"]:
        key = rng.choice(("arm", "blade", "counterweight"))
        q["set_up"][key] = rng.choice((None, "other"))
        if q.get("chart") and chance(rng, 15):
            q["chart"][key] = q["set_up"][key]


@change(2, ("chart",))
def no_chart(rng, q):
    if chance(rng, 70):
        q["chart"] = None
    elif q["chart"]:
        blank(rng, q["chart"], "arm", "blade", "counterweight", "cells", "includes_hitch")


@change(4, ("move",))
def off_chart(rng, q):
    move = q["move"]
    if not move:
        return
    if chance(rng, 15):
        blank(rng, move, "nose_radius_mm", "centre_radius_mm", "pick_height_mm", "lay_height_mm")
    elif chance(rng, 50):
        radius = rng.choice((2999, 3000, 5500, 5501, 7000, 7001))
        move["nose_radius_mm"], move["centre_radius_mm"] = radius, radius - rng.choice((0, 9))
    else:
        key = rng.choice(("pick_height_mm", "slew_height_mm", "lay_height_mm"))
        move[key] = rng.choice((-3001, -3000, 0, 1, 3000, 3001))


@change(1, ("move",))
def sector(rng, q):
    if q["move"]:
        q["move"]["sector"] = rng.choice(("front", "side", "both", None))


@change(1, ("chart",))
def chart_blank(rng, q):
    cells = (q["chart"] or {}).get("cells")
    if cells:
        if chance(rng, 50):
            rng.choice(cells)["rated_kg"] = None
        else:
            cells.remove(rng.choice(cells))


@change(6, ("chart",))
def rated_at_load(rng, q):
    """Some corners of the chart at the load."""
    chart, pipe = q["chart"], q.get("pipe")
    load = oracle.chart_load(oracle.Case(q), pipe) if chart and pipe else None
    if load is None or not chart.get("cells"):
        return
    value = at_load(rng, float(load))
    side = rng.choice(("front", "side"))
    for cell in chart["cells"]:
        if cell["over"] == side and cell["rated_kg"] is not None and chance(rng, 60):
            cell["rated_kg"] = value


@change(5, ("chart",))
def devices(rng, q):
    """A chart at the limits beyond which devices are needed, devices at those of the shift."""
    chart, up = q["chart"], q.get("set_up")
    if chart and chart.get("cells") and chance(rng, 50):
        blank_first = chance(rng, 30)
        for cell in chart["cells"]:
            if cell["radius_mm"] == 3000 and blank_first:
                cell["rated_kg"] = None
            if cell["rated_kg"] is not None:  # 1,000 kg, then 40,000 N m
                most = {3000: 1000, 4000: rng.choice((1000, 1019)), 5500: 741, 7000: 582}
                cell["rated_kg"] = min(cell["rated_kg"], most[cell["radius_mm"]])
        cell = rng.choice(chart["cells"])
        if cell["rated_kg"] is not None:
            cell["rated_kg"] += rng.choice((0, 1))
    if up:
        key = rng.choice(("valves_proved_at", "overload_warning_proved_at"))
        up[key] = rng.choice((None, shift_start(q) - HOUR, shift_start(q) - HOUR - 1,
                              (q.get("now") or 0) + around(rng)))


@change(5, ("set_up",))
def mounting(rng, q):
    up, move = q["set_up"], q.get("move")
    if not up:
        return
    up["mounting"] = rng.choice(("rigid", "rigid", None, "free"))
    pipe = q.get("pipe")
    load = oracle.load_on_machine(oracle.Case(q), pipe, True) if pipe else None
    if load is None or not move or move.get("pin_to_centre_mm") is None:
        return
    up["mount_kg"] = math.ceil(load) + rng.choice((-1, 0, 0, 900))
    moment = math.ceil(oracle.newton_metres(load, move["pin_to_centre_mm"]))
    up["mount_nm"] = moment + rng.choice((-1, 0, 0, 900))
    if chance(rng, 25):
        blank(rng, rng.choice((up, move)), "mount_kg", "mount_nm", "pin_to_centre_mm")


# hitch, items that are not there

@change(4)
def hitch_facts(rng, q):
    item = an_item(rng, q, "hitch")
    plate = an_item(rng, q, "headplate")
    if item:
        rng.choice([i for i in (item, plate) if i])["pattern"] = rng.choice(("P41", None))


@change(5)
def lock(rng, q):
    item = an_item(rng, q, "hitch")
    if not item:
        return
    start, now = shift_start(q), q.get("now") or 0
    marks = [start - HOUR, now] + ([q["coupled_at"]] if q.get("coupled_at") else [])
    at = rng.choice(marks) + around(rng)
    new = {"at": at, "own_eyes": rng.choice((True, True, False, None)),
           "locked": rng.choice((True, True, False, None))}
    if chance(rng, 50):
        item["lock_seen"] = item["lock_seen"] + [new]
    else:
        item["lock_seen"] = [new]


@change(4)
def item_gone(rng, q):
    if q["items"]:
        item = rng.choice(q["items"])
        q["items"].remove(item)
        if item["role"] == "hitch" and "no_hitch" in q:
            q["no_hitch"] = rng.choice((True, None, False))
        if item["role"] == "sling" and "no_sling" in q:
            q["no_sling"] = rng.choice((True, None, False))


@change(2)
def not_recorded(rng, q):
    key = rng.choice(("no_hitch", "no_sling"))
    if key in q:
        q[key] = rng.choice((None, False, True))


@change()
def no_model(rng, q):
    item = an_item(rng, q)
    if item:
        item["model"] = None


# plan, people, place, trench, thread

@change(3, ("plan",))
def plan_void(rng, q):
    plan = q["plan"]
    if chance(rng, 20):
        q["plan"] = None
    elif plan:
        key = rng.choice(("issued", "signed", "site"))
        plan[key] = rng.choice((None, "S2")) if key == "site" else rng.choice((None, False))


@change(3, ("plan",))
def plan_days(rng, q):
    if q["plan"]:
        q["plan"][rng.choice(("first_day", "last_day"))] = rng.choice(
            (None, today(q, -1), today(q), today(q, 1)))


@change(4, ("plan",))
def plan_lists(rng, q):
    plan = q["plan"]
    if plan:
        key = rng.choice(("machines", "attachments", "models", "pipes", "places"))
        plan[key] = rng.choice(([], None, ["other"], ["CL4", "EX1", "mod-attachment"]))


@change(3, ("plan",))
def plan_limits(rng, q):
    plan, pipe, move = q["plan"], q.get("pipe"), q.get("move")
    if not plan:
        return
    if chance(rng, 25):
        blank(rng, plan, "greatest_kg", "greatest_radius_mm")
    load = oracle.chart_load(oracle.Case(q), pipe) if pipe else None
    if load is not None:
        plan["greatest_kg"] = math.ceil(load) + around(rng)
    if move and move.get("nose_radius_mm") and move.get("centre_radius_mm"):
        plan["greatest_radius_mm"] = max(move["nose_radius_mm"], move["centre_radius_mm"]) + \
            around(rng)


@change(3, ("plan",))
def briefing(rng, q):
    plan = q["plan"]
    if plan and plan.get("briefed"):
        rng.choice(plan["briefed"])[rng.choice(("issue", "person"))] = None
    elif plan:
        plan["issue"] = rng.choice((3, 4, None))


@change(1, ("plan",))
def plan_issue(rng, q):
    if q["plan"]:
        q["plan"]["issue"] = rng.choice((2, 4, None))


@change(2, ("plan",))
def plan_roles(rng, q):
    if q["plan"]:
        role = rng.choice(("operator", "supervisor", "signaller", "banksman"))
        q["plan"]["roles"] = dict(q["plan"].get("roles") or {},
                                  **{role: rng.choice((True, False, False, None))})


@change(4, ("people",))
def person_gone(rng, q):
    if q.get("people"):
        role = rng.choice(sorted(q["people"]))
        if chance(rng, 50):
            q["people"][role] = None
        else:
            del q["people"][role]


@change(2, ("people",))
def person_twice(rng, q):
    people = q.get("people") or {}
    if people.get("operator"):
        role = rng.choice(("signaller", "signaller", "supervisor"))
        people[role] = dict(people["operator"], authorised=["signaller", "supervisor"])


@change(4, ("people",))
def authorisation(rng, q):
    people = [p for p in (q.get("people") or {}).values() if p]
    if people:
        person = rng.choice(people)
        person["authorised"] = rng.choice((None, [], (person["authorised"] or [])[1:],
                                           (person["authorised"] or [])[:-1]))


@change(6, ("people",))
def cards(rng, q):
    people = [p for p in (q.get("people") or {}).values() if p]
    if people:
        days = (q.get("site") or {}).get("warning_days") or 14
        rng.choice(people)["card_last_day"] = rng.choice(
            (None, today(q, -1), today(q), today(q, days), today(q, days + 1)))
        if q.get("site") and chance(rng, 40):
            q["site"]["expired_card_stops"] = False


@change(4, ("place",))
def confirmation(rng, q):
    place = q["place"]
    if not place or not place.get("confirmed"):
        return
    first = place["confirmed"][0]
    kind = rng.choice(("no", "by", "at", "two", "two", "none"))
    if kind == "no":
        first[rng.choice(("level", "ground_and_edge", "services", "zone_closed"))] = \
            rng.choice((False, None))
    elif kind == "by":
        first["by"] = rng.choice(("ada", "bert", "cleo", None))
    elif kind == "at":
        first["at"] = shift_start(q) + rng.choice((-HOUR, -HOUR - 1)) if chance(rng, 70) else None
    elif kind == "two" and first.get("at") is not None:
        place["confirmed"].append(dict(first, at=first["at"] + around(rng),
                                       services=rng.choice((True, False)),
                                       by=rng.choice((first.get("by"), "cleo"))))
    elif chance(rng, 50):
        place["confirmed"] = []
    else:
        q["place"] = rng.choice((None, {"id": "P-C", "confirmed": place["confirmed"]}))


@change(6, ("trench",))
def trench(rng, q):
    start, now = shift_start(q), q.get("now") or 0
    if chance(rng, 15):
        q["trench"] = None
        return
    trench = q["trench"] = {"none": rng.choice((False, None)), "someone_enters":
                            rng.choice((True, True, None)), "inspections": [], "disturbed_at": []}
    for _ in range(rng.choice((0, 1, 1, 2))):
        look = {"at": rng.choice((start - HOUR, start + 900, now)) + rng.choice((0, 0, -1, 1)),
                "by_competent": True, "safe": True}
        if chance(rng, 35):
            look[rng.choice(("by_competent", "safe"))] = rng.choice((False, None))
        trench["inspections"].append(look)
    if chance(rng, 40):
        trench["disturbed_at"] = rng.choice((
            [start + 900 + around(rng)], [None], [start - 99999],
            [start - 99999, start + 900 + around(rng)]))


@change(3, ("thread",))
def thread_unknown(rng, q):
    thread = q["thread"]
    if chance(rng, 15):
        q["thread"] = None
    elif thread:
        blank(rng, thread, "strutted", "gap_mm", "clearance_mm", "strut_depth_mm", "room_mm")
        item = an_item(rng, q, "attachment")
        if item and item.get("model") and chance(rng, 30):
            blank(rng, item["model"], "envelope_length_mm", "above_crown_mm", "below_invert_mm",
                  "tilt_limit_mdeg")


@change(6, ("thread",))
def thread_at_limit(rng, q):
    """The gap, the room or the tilt limit at what one of the ways needs."""
    thread, case = q["thread"], oracle.Case(q)
    size = oracle.envelope(case)
    if not thread or size is None:
        return
    length, depth = size
    model = case.attachment["model"]
    clearance, strut = rng.choice((0, 50)), rng.choice((150, 300))
    thread.update(strutted=True, clearance_mm=clearance, strut_depth_mm=strut)
    way = rng.choice(("level", "tilted", "threaded"))
    gap, tilt = length + 2 * clearance, 0.0
    if way != "level":
        gap = rng.randrange(depth + 2 * clearance + 1, length + 2 * clearance + 2)
        found = oracle.tilted_at(length, depth, gap - 2 * clearance) if way == "tilted" else \
            oracle.threaded_at(depth + 2 * clearance, strut, gap)
        tilt = found or 0.0
        model["tilt_limit_mdeg"] = math.ceil(math.degrees(tilt) * 1000) + rng.choice((-1, 0, 0))
    room = length * math.sin(tilt) + depth * math.cos(tilt) + 2 * clearance
    thread["room_mm"] = math.ceil(room) + rng.choice((-1, 0, 0, 1500))
    thread["gap_mm"] = gap + (around(rng) if way == "level" else 0)
    if chance(rng, 10):
        thread["gap_mm"] = depth + 2 * clearance + around(rng)


# dispatch, clock, book, the question itself

@change(8, ("order",))
def loose_parts(rng, q):
    item = an_item(rng, q, "attachment")
    if item and chance(rng, 10):
        item["loose_parts"] = None
    elif item and item.get("loose_parts"):
        item["loose_parts"][rng.choice(("headplate", "pin", "keeper"))] = \
            rng.choice(("missing", None, "not_applicable"))


@change(6, ("order",))
def order(rng, q):
    the_order = q["order"]
    if not the_order:
        return
    kind = rng.choice(("end", "end", "blank", "size", "size", "none", "first"))
    if kind == "end":
        days = [r["latest"] for r in q["reports"] if r.get("latest")]
        if days:
            the_order["end_day"] = shift_day(rng.choice(days), around(rng))
    elif kind == "blank":
        blank(rng, the_order, "hitch", "end_day", "pipes")
    elif kind == "size" and the_order.get("pipes"):
        rng.choice(the_order["pipes"])["barrel_mm"] = None
    elif kind == "first":
        days = [r["latest"] for r in q["reports"] if r.get("latest")] or [today(q, 1)]
        the_order["first_use_day"] = rng.choice((None, shift_day(rng.choice(days), around(rng))))
    elif kind == "none" and chance(rng, 20):
        q["order"] = None


@change(1, ("order",))
def other_purpose(rng, q):
    q["purpose"] = rng.choice(("repair", "examination", "return", "scrap", None, "loan"))


@change(4)
def clock(rng, q):
    if not q.get("clock"):
        return
    now = q.get("now") or 0
    floor = q["clock"].get("newest_record_at")
    entries = []
    for _ in range(rng.choice((0, 1, 1, 2, 2, 3))):
        entries.append({"by": rng.choice(("bert", "cleo", "dora", None)),
                        "supervisor": rng.choice((True, False, None, None)),
                        "how": rng.choice(("phone", "phone", "pin", None)),
                        "to": rng.choice((now, now, floor, floor - 1 if floor else None, None))})
    q["clock"]["notices"] = (q["clock"].get("notices") or []) + [
        {"kind": rng.choice(("back", "jump", None)), "confirmed": entries}]
    if chance(rng, 5):
        q["clock"]["newest_record_at"] = None


@change(4)
def book(rng, q):
    if chance(rng, 10):
        q["book"] = None
    elif q.get("book"):
        key = rng.choice(("opening_check_done", "damaged", "forked"))
        q["book"][key] = rng.choice((False, None)) if key == "opening_check_done" else True


@change(2)
def moment(rng, q):
    """Now at the edges of the shift, or unknown."""
    shift = q.get("shift") or {}
    kind = rng.random()
    if kind < 0.1:
        q["shift"] = None
    elif kind < 0.2:
        blank(rng, q, "now")
    elif kind < 0.3 and shift:
        blank(rng, shift, "start", "end", "last_day")
    elif shift.get("end") is not None:
        q["now"] = shift["end"] + rng.choice((-1, 0, 1, 7200))


@change(1)
def day_unknown(rng, q):
    if chance(rng, 10):
        q["day"] = None


NEVER_FORGOTTEN = ("id", "tag", "role", "items")


def forget(rng, thing):
    """Makes any one fact of the question unknown."""
    while True:
        if isinstance(thing, dict):
            keys = [k for k in thing if k not in NEVER_FORGOTTEN
                    or (k == "items" and thing[k])]
            if not keys:
                return
            key = rng.choice(keys)
            if key != "items" and (not isinstance(thing[key], (dict, list)) or chance(rng, 15)):
                blank(rng, thing, key)
                return
            thing = thing[key]
        elif thing and isinstance(thing[0], dict):
            thing = rng.choice(thing)
        else:
            return


def leave_out(rng, thing):
    """Null and missing mean the same: leaves out some of what is null."""
    for key in list(thing) if isinstance(thing, dict) else ():
        if thing[key] is None and chance(rng, 50):
            del thing[key]
    for part in thing.values() if isinstance(thing, dict) else thing:
        if isinstance(part, (dict, list)):
            leave_out(rng, part)


# --- questions -------------------------------------------------------------------

def nearly_empty(rng, number):
    q = {"id": "q%d" % number}
    if chance(rng, 70):
        q["purpose"] = rng.choice(("lift", "use", "return"))
    if chance(rng, 50):
        q["day"] = "2030-05-0%d" % rng.randrange(1, 9)
    if chance(rng, 40):
        q["items"] = [{"role": role, "tag": "T%d" % n} for n, role in enumerate(
            ("machine", "hitch", "headplate", "hook", "sling", "attachment")) if chance(rng, 40)]
    if chance(rng, 30):
        q["pipe"] = {"id": "p"}
    if chance(rng, 30):
        q["chart"] = {"id": "c"}
    if chance(rng, 30):
        q["place"] = {"id": "w"}
    return q


def question(seed, number):
    rng = random.Random(seed * 1000003 + number)
    if chance(rng, 0.5):
        return nearly_empty(rng, number)
    q = Base(rng, number).build()
    wanted = rng.choice((0, 1, 1, 2, 2, 3, 3, 4, 5, 6))
    for _ in range(wanted):
        change_it, needs = rng.choice(CHANGES)
        if q.get("day") is not None and all(q.get(k) is not None for k in needs):
            change_it(rng, q)
    if wanted and chance(rng, 10):
        forget(rng, q)
    if chance(rng, 30):
        leave_out(rng, q)
    return q


def questions(count, seed):
    for number in range(count):
        yield question(seed, number)
