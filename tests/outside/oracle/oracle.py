"""A second, independent writing of the lift decision.

It is written from the page that states the rules (called "the page" below) and
from the page that states the form of a question, and from nothing else. It
exists to be compared with the program: see agree.py.

decide(question) returns every finding as (code, weight, about), in order.
Where a docstring reads like a rule, it is the page's own sentence.
"""

import calendar
import math
from datetime import date, timedelta
from fractions import Fraction

ITEMS = ("attachment", "hook", "sling", "headplate", "hitch")

# Row by row and, in a row, from left to right: this is the order of the answer.
ROWS = (
    ("exam",
     ("exam-none", "exam-future", "exam-out-of-date", "exam-unsafe",
      "exam-incomplete", "exam-config", "exam-event"),
     ("exam-due", "exam-particulars", "exam-defect-dated", "exam-long", "event-touch"), ()),
    ("evidence", ("evidence-missing",), (), ("evidence-own-sites",)),
    ("data", ("data-unproved",), ("fact-disputed",), ()),
    ("check", ("check-none", "check-stale", "check-stopped"), ("check-report",), ()),
    ("setting",
     ("setting-unknown", "setting-disputed", "setting-none", "setting-wrong",
      "setting-unseen"), (), ()),
    ("pipe", ("pipe-size", "pipe-length", "pipe-shape", "pipe-mass", "pipe-material"),
     ("pipe-mass-differs",), ()),
    ("load",
     tuple(i + "-unrated" for i in ITEMS) + ("load-unknown",)
     + tuple(i + "-over-rating" for i in ITEMS) + ("sling-angle",),
     tuple(i + "-near-rating" for i in ITEMS), ()),
    ("reach",
     ("chart-none", "chart-other", "reach-off-chart", "reach-over-rating",
      "mount-unrated", "mount-over-rating", "machine-device"),
     ("reach-near-rating",), ()),
    ("hitch", ("hitch-headplate", "hitch-unseen"), (), ()),
    ("plan", ("plan-none", "plan-out-of-date", "plan-outside", "briefing-none"), (), ()),
    ("people", ("person-none", "person-not-authorised", "card-expired"),
     ("card-expired-allowed", "card-due"), ()),
    ("place", ("place-unconfirmed",), (), ()),
    ("trench", ("trench-unchecked",), (), ()),
    ("unit", ("unit-quarantined", "unit-elsewhere", "unit-off-hire", "unit-scrapped"), (), ()),
    ("thread", ("thread-unknown", "thread-tight"), (), ()),
    ("dispatch", ("loose-parts",), ("hire-due", "order-open"), ()),
    ("clock", ("clock-back", "clock-jump"), (), ()),
    ("book", ("book-unchecked", "book-damaged", "book-forked"), (), ()),
)

WEIGHTS = ("stop", "caution", "note")
RANK = {code: (weight, row, place)
        for row, cells in enumerate(ROWS)
        for weight in range(3)
        for place, code in enumerate(cells[1 + weight])}
CODES = tuple(RANK)

# EN 818-4 Table 3, grade 8, in kg, as reproduced in a public catalogue: chain
# size: one leg; two legs to 45 and to 60 degrees; three or four legs likewise.
EN_818_4 = {
    6: (1120, 1600, 1120, 2360, 1700),
    7: (1500, 2120, 1500, 3150, 2240),
    8: (2000, 2800, 2000, 4250, 3000),
    10: (3150, 4250, 3150, 6700, 4750),
    13: (5300, 7500, 5300, 11200, 8000),
    16: (8000, 11200, 8000, 17000, 11800),
    20: (12500, 17000, 12500, 26500, 19000),
    22: (15000, 21200, 15000, 31500, 22400),
    26: (21200, 30000, 21200, 45000, 31500),
    32: (31500, 45000, 31500, 67000, 47500),
}

PI = Fraction(31415926535897932384626433832795028841971693993751, 10 ** 49)
G_HUNDREDTHS = 981  # 9.81

ALWAYS_DUE = ("employer", "premises", "last_examined", "qualifications", "employment",
              "report_day")
IF_THERE_ARE = ("manufactured", "tests", "installation", "defect_parts", "authenticator")

# "An event without a day is after everything"; so is a question without one.
AFTER_EVERYTHING = date.max
WARNING_DAYS = 14


# --- small things ------------------------------------------------------------

def get(thing, *path):
    """The value at the path, None (not known) as soon as anything is missing."""
    for key in path:
        if thing is None:
            return None
        thing = thing.get(key)
    return thing


def each(thing, *path):
    """The list at the path; a list missing is an empty list."""
    return get(thing, *path) or []


def as_day(text):
    return None if text is None else date.fromisoformat(text)


def text_order(text):
    return (text or "").encode()


def plus_months(start, months):
    """The corresponding date, the last day of the month where there is none."""
    index = start.year * 12 + start.month - 1 + months
    year, month = divmod(index, 12)
    month += 1
    return date(year, month, min(start.day, calendar.monthrange(year, month)[1]))


def newest(looks):
    """All looks of the newest instant."""
    last = max((look["at"] for look in looks), default=None)
    return [look for look in looks if look["at"] == last]


def newest_serves(looks, serves):
    """Of looks of one instant the safer counts: all of the newest must serve."""
    last = newest(looks)
    return bool(last) and all(map(serves, last))


def lowest(figures):
    return min((f for f in figures if f is not None), default=None)


def over(value, limit):
    return value > limit


def near(value, limit):
    return value <= limit and 10 * value > 9 * limit


# --- the question, with what several rows need --------------------------------

class Case:
    def __init__(self, question):
        self.q = question
        self.items = each(question, "items")
        self.lift = get(question, "purpose") == "lift"
        self.machine = self.one("machine")
        self.hitch = self.one("hitch")
        self.attachment = self.one("attachment")
        self.no_hitch = self.hitch is None and get(question, "no_hitch") is True
        self.found = set()
        self.papers_read = {}
        self.setting = Setting(self)

    def one(self, role):
        return next((i for i in self.items if i.get("role") == role), None)

    def say(self, code, about):
        self.found.add((code, about or ""))

    def site(self):
        return get(self.q, "site")

    def warning_days(self):
        days = get(self.q, "site", "warning_days")
        return WARNING_DAYS if days is None else days

    def today(self):
        return as_day(get(self.q, "day")) or AFTER_EVERYTHING

    def last_day(self):
        """*This shift* is then the dispatch day."""
        return as_day(get(self.q, "shift", "last_day") if self.lift else get(self.q, "day"))

    def this_shift(self, at):
        """From 60 minutes before its start to its end, both included, and not later
        than now; with no shift open, or now outside it, nothing was done this shift.
        *This shift* is then the dispatch day: that day and no minute before it."""
        now = get(self.q, "now")
        start, end = get(self.q, "shift", "start"), get(self.q, "shift", "end")
        if None in (at, now, start, end):
            return False
        first = start - 3600 if self.lift else start
        return first <= at <= now <= end

    def of_this_shift(self, looks, since=None):
        return [look for look in looks if self.this_shift(look.get("at"))
                and (since is None or look["at"] >= since)]

    def pipes(self):
        """The pipes asked about: "with an attachment only, for each size known"."""
        if self.lift:
            return [get(self.q, "pipe")]
        if self.attachment is None:
            return []
        return [p for p in each(self.q, "order", "pipes") if p.get("barrel_mm") is not None]

    def days(self):
        """On the dispatch day and on the first day of use."""
        if self.lift:
            return [self.today()]
        return [self.today(), as_day(get(self.q, "order", "first_use_day")) or AFTER_EVERYTHING]

    def papers(self, item, today):
        key = (item["tag"], today)
        if key not in self.papers_read:
            self.papers_read[key] = Papers(self, item, today)
        return self.papers_read[key]

    def plan(self):
        """The plan "issued and signed for this site", else None."""
        plan = get(self.q, "plan")
        here = get(plan, "site") is not None and get(plan, "site") == get(self.site(), "id")
        signed = get(plan, "issued") is True and get(plan, "signed") is True
        return plan if here and signed else None

    def role_needed(self, role):
        """Operator always; supervisor and slinger/signaller unless it says otherwise."""
        says = get(self.plan(), "roles", role)
        if role == "operator":
            return True
        if role in ("supervisor", "signaller"):
            return says is not False
        return says is True

    def person(self, role):
        person = get(self.q, "people", role)
        return None if get(person, "id") is None else person

    def people(self):
        return [(role, self.person(role)) for role in sorted(get(self.q, "people") or {})
                if self.person(role) is not None]


# --- papers of an examination ---------------------------------------------------

class Paper:
    """A report, interim statement or declaration, as it counts for one item."""

    def __init__(self, kind, body, item, machine_tag):
        self.kind = kind
        self.body = body
        self.id = body.get("id")
        self.day = as_day(body.get("made" if kind == "declaration" else "examined"))
        self.safe = body.get("safe")
        self.swl = body.get("swl_kg")
        self.basis = body.get("basis")
        copy = body.get("copy")
        self.copy_here = get(copy, "legible") is True and get(copy, "here") is True
        self.months = self.months_allowed(item, machine_tag)

    def is_full(self):
        """"After exceptional circumstances" and not said to be full is not full."""
        if self.kind != "report" or self.body.get("full") is False:
            return False
        return self.body.get("full") is True or self.basis != "exceptional"

    def months_allowed(self, item, machine_tag):
        """If the report's basis is an examination scheme, the scheme's interval
        replaces the class's."""
        if self.kind == "report" and self.basis == "scheme":
            return item.get("scheme_months")
        if item["role"] == "attachment":
            return 6
        if item["role"] == "hitch":
            return self.hitch_months(item, machine_tag)
        return 12 if item.get("class") == "machine" else 6

    def hitch_months(self, item, machine_tag):
        """6 if it lifts people; 12 if its governing report also names the machine, or
        has twelve months as its basis; else 6."""
        if item.get("class") == "people" or self.kind != "report":
            return 6
        names_machine = machine_tag is not None and machine_tag in each(self.body, "units")
        return 12 if names_machine or self.basis == "twelve_months" else 6

    def law_latest(self):
        if self.day is None or self.months is None:
            return None
        return plus_months(self.day, self.months)

    def own_latest(self):
        return as_day(self.body.get("latest"))

    def latest(self, item, today):
        """The latest date, None if it cannot be known."""
        if self.kind == "declaration":
            # "Months count from first service, or from the declaration if that is
            # unknown or in the future."
            served = as_day(item.get("first_service"))
            start = self.day if served is None or served > today else served
            return plus_months(start, self.months)
        if self.kind == "interim":
            return min(self.day + timedelta(days=28), self.law_latest())
        own, law = self.own_latest(), self.law_latest()
        return None if own is None or law is None else min(own, law)

    def safer_first(self, item, today):
        """Not safe, safe unknown, earlier latest date (unknown first), lower SWL
        (unknown first), no copy here, then id."""
        latest = self.latest(item, today)
        return ((self.safe is not False, self.safe is not None),
                (latest is not None, latest or date.min),
                (self.swl is not None, self.swl or 0),
                self.copy_here,
                text_order(self.id))


class Papers:
    """The papers of one item on one day."""

    def __init__(self, case, item, today):
        self.item, self.today = item, today
        machine_tag = get(case.machine, "tag")

        def papers(kind, bodies):
            return [Paper(kind, body, item, machine_tag) for body in bodies]

        reports = papers("report", [r for r in each(case.q, "reports")
                                    if item["tag"] in each(r, "units")])
        declarations = papers("declaration", each(item, "declarations"))
        self.future = [p for p in reports + declarations if self.dated_after_today(p)]
        self.reports = [p for p in reports if p not in self.future]
        self.interims = [p for p in papers("interim", each(item, "interims"))
                         if self.interim_counts(p)]
        self.declarations = [p for p in declarations
                             if p not in self.future and self.declaration_counts(p)]
        self.governing = self.choose_governing()
        self.newest_reports = self.choose_newest_reports()

    def dated_after_today(self, paper):
        days = (paper.day, as_day(paper.body.get("report_day")))
        return any(d is not None and d > self.today for d in days)

    def interim_counts(self, paper):
        """Signed by the competent person, with SWL and with safe or not safe stated,
        else it is none."""
        return (paper.day is not None and paper.day <= self.today
                and paper.body.get("signed") is True and paper.body.get("by_competent") is True
                and paper.swl is not None and paper.safe is not None)

    def declaration_counts(self, paper):
        """Made on or before first service and at most 12 months before it, also where
        first service lies in the future."""
        if paper.day is None:
            return False
        served = as_day(self.item.get("first_service"))
        return served is None or paper.day <= served <= plus_months(paper.day, 12)

    def safest_of_newest(self, papers):
        """One without an examination date counts as the newest."""
        undated = [p for p in papers if p.day is None]
        last = max((p.day for p in papers if p.day is not None), default=None)
        candidates = undated or [p for p in papers if p.day == last]
        return min(candidates, default=None,
                   key=lambda p: p.safer_first(self.item, self.today))

    def choose_governing(self):
        examined = [p for p in self.reports if p.is_full()] + self.interims
        return self.safest_of_newest(examined or self.declarations)

    def choose_newest_reports(self):
        """"The newest report of any kind". An undated one that is not full takes no
        other's place: it counts beside it, where it does not say safe."""
        beside = [p for p in self.reports if p.day is None and not p.is_full()]
        chosen = self.safest_of_newest([p for p in self.reports if p not in beside])
        return ([chosen] if chosen else []) + [p for p in beside if p.safe is not True]

    def latest(self):
        return self.governing.latest(self.item, self.today) if self.governing else None

    def in_date(self):
        latest = self.latest()
        return latest is not None and self.today <= latest

    def names_unit(self, defect):
        return defect.get("unit") in (None, self.item["tag"])

    def defects(self):
        """(report, defect) of this item, whether open or not."""
        return [(r, d) for r in self.reports for d in each(r.body, "defects")
                if self.names_unit(d)]

    def remedied_by_report(self, later, report, defect):
        return (later.day is not None and report.day is not None and later.day > report.day
                and defect["id"] in each(later.body, "remedies"))

    def open_defects(self, case):
        """Until a competent person's record (a later report or a clearing) names that
        defect of that unit as remedied."""
        cleared = {c.get("defect") for c in each(case.q, "clearings")
                   if c.get("by_competent") is True}
        return [(r, d) for r, d in self.defects()
                if d["id"] not in cleared
                and not any(self.remedied_by_report(l, r, d) for l in self.reports)]

    def clears_event(self, paper, event):
        """Until a full examination on a later day, or any examination that says safe to
        operate, not before the event's day (its day unknown: any that names it), and
        names the event."""
        event_day = as_day(event.get("day"))
        named = event["id"] in each(paper.body, "names_events") and paper.safe is True
        if event_day is None:
            return named
        if paper.day is None:
            return False
        return (paper.is_full() and paper.day > event_day) or (named and paper.day >= event_day)

    def events_asked(self, case):
        """Events stop from their day on."""
        return [e for e in events_of(case, self.item)
                if gravity(e, self.item) in ("grave", "mark")
                and (e.get("day") is None or as_day(e["day"]) <= self.today)]

    def open_events(self, case):
        return [e for e in self.events_asked(case)
                if not any(self.clears_event(p, e) for p in self.reports + self.interims)
                and not (gravity(e, self.item) == "mark" and assessed_fit(e))]

    def used_reports(self, case):
        """Governs, is the newest, holds an open defect, or clears an event or defect
        asked about here."""
        used = self.newest_reports + [r for r, _ in self.open_defects(case)]
        if self.governing and self.governing.kind == "report":
            used.append(self.governing)
        for report in self.reports:
            if (any(self.clears_event(report, e) for e in self.events_asked(case))
                    or any(self.remedied_by_report(report, r, d) for r, d in self.defects())):
                used.append(report)
        return used


def events_of(case, item):
    return [e for e in each(case.q, "events") if item["tag"] in each(e, "units")]


def gravity(event, item):
    """none: no event at all; touch; minor: stops by itself nothing; mark; grave."""
    kind = event.get("kind")
    if kind == "lay_up":
        return "none"
    if kind == "like_for_like":
        part = event.get("part")
        listed = part is not None and part in each(item, "model", "like_for_like")
        return "none" if listed else "grave"
    if kind == "touch":
        return "touch"
    if kind in ("knock", "slip", "drop"):
        return "mark"
    if kind == "repair" and event.get("structural") is False:
        return "minor"
    return "grave"


def assessed_fit(event):
    """Where the newest assessment is a competent person's and says fit."""
    def fit(look):
        return look.get("by_competent") is True and look.get("fit") is True
    undated = [a for a in each(event, "assessments") if a.get("at") is None]
    dated = [a for a in each(event, "assessments") if a.get("at") is not None]
    return newest_serves(dated, fit) and all(map(fit, undated))


# --- exam, evidence -------------------------------------------------------------

def exam(case):
    for today in case.days():
        for item in case.items:
            exam_item(case, item, case.papers(item, today))


def exam_item(case, item, papers):
    tag, governing = item["tag"], papers.governing
    if governing is None:
        case.say("exam-none", tag)
    if papers.future:
        case.say("exam-future", tag)
    exam_date(case, tag, papers)
    exam_safe(case, tag, papers)
    if governing and governing.kind == "report":
        exam_complete(case, item, governing)
        exam_configuration(case, item, governing)
    if papers.open_events(case):
        case.say("exam-event", tag)
    for event in events_of(case, item):
        if gravity(event, item) == "touch" and len(set(each(event, "looked_by"))) < 2:
            case.say("event-touch", tag)


def exam_date(case, tag, papers):
    latest = papers.latest()
    if latest is None:
        return  # exam-none or exam-incomplete says so
    if papers.today > latest:
        case.say("exam-out-of-date", tag)
    else:
        # "Days left <= the warning days or the latest date not after the shift's last day."
        soon = (latest - papers.today).days <= case.warning_days()
        last_day = case.last_day()
        if soon or (last_day is not None and latest <= last_day):
            case.say("exam-due", tag)
    governing = papers.governing
    if governing.kind == "report" and governing.own_latest() > governing.law_latest():
        case.say("exam-long", tag)


def exam_safe(case, tag, papers):
    """The newest report of any kind does not say safe to operate (not typed:
    `exam-incomplete` instead, whichever report it is), or an open defect is a present
    danger, or could become one and its stated day has passed or none is stated."""
    for report in papers.newest_reports:
        if report.safe is False:
            case.say("exam-unsafe", tag)
        elif report.safe is None:
            case.say("exam-incomplete", tag)
    if papers.governing and papers.governing.kind == "interim" and not papers.governing.safe:
        case.say("exam-unsafe", tag)
    for _, defect in papers.open_defects(case):
        by_day = as_day(defect.get("by_day"))
        dated = defect.get("danger") == "could_become" and by_day is not None
        if dated and papers.today <= by_day:
            case.say("exam-defect-dated", tag)
        else:
            case.say("exam-unsafe", tag)


def exam_complete(case, item, report):
    body = report.body
    typed = all(body.get(k) is not None for k in (
        "identity", "examiner", "basis", "examined", "latest", "swl_kg", "safe"))
    scheme_known = report.basis != "scheme" or item.get("scheme_months") is not None

    def answer(name):
        return get(body, "particulars", name) or "not_typed"

    lacking = any(answer(n) == "lacking" for n in ALWAYS_DUE)
    not_typed = any(answer(n) == "not_typed" for n in ALWAYS_DUE)
    if not typed or not scheme_known or lacking or (not_typed and not report.copy_here):
        case.say("exam-incomplete", item["tag"])
    others = any(answer(n) == "not_typed" for n in ALWAYS_DUE + IF_THERE_ARE)
    if others and report.copy_here:
        case.say("exam-particulars", item["tag"])


def todays_configuration(case, item):
    """"A pin hole is a configuration only if the model says so"; its name is then the
    state's."""
    model = item.get("model")
    by_state = get(model, "setting_is_configuration") is True and get(model, "adjusts") is not False
    if item["role"] == "attachment" and by_state:
        return case.setting.stands
    return item.get("configuration")


def configured_entry(case, item, report):
    today = todays_configuration(case, item)
    return next((c for c in each(report.body, "configurations")
                 if today is not None and c.get("name") == today), None)


def exam_configuration(case, item, report):
    limited = each(report.body, "configurations")
    if limited and configured_entry(case, item, report) is None:
        case.say("exam-config", item["tag"])


def swl_today(case, item, paper):
    """The governing report's SWL for this configuration."""
    entry = configured_entry(case, item, paper)
    own = get(entry, "swl_kg")
    return paper.swl if own is None else own


def evidence(case):
    for today in case.days():
        for item in case.items:
            governing = case.papers(item, today).governing
            if governing is None or governing.copy_here:
                continue
            if item.get("owner") != "own":
                case.say("evidence-missing", item["tag"])
            elif item.get("between_own_sites") is True:
                case.say("evidence-own-sites", item["tag"])


# --- data -----------------------------------------------------------------------

def proved(thing):
    """Compared with its source page by a second person since it last changed."""
    at, by = get(thing, "changed", "at"), get(thing, "changed", "by")
    if at is None or by is None:
        return False
    return any(c.get("by") not in (None, by) and c.get("at") is not None and c["at"] >= at
               for c in each(thing, "compared"))


def data(case):
    to_prove = [i["model"] for i in case.items if i.get("model") is not None]
    to_prove += [p for p in case.pipes() if p is not None]
    for today in case.days():
        for item in case.items:
            to_prove += [r.body for r in case.papers(item, today).used_reports(case)]
    others = [(i, i["tag"]) for i in case.items]
    if case.lift:
        to_prove += [c for c in [get(case.q, "chart")] if c is not None]
        others += [(o, o.get("id")) for o in (get(case.q, "plan"), get(case.q, "place"))
                   if o is not None]
        others += [(p, p["id"]) for _, p in case.people()]
    for thing in to_prove:
        if not proved(thing):
            case.say("data-unproved", thing.get("id"))
    for thing, about in others + [(t, t.get("id")) for t in to_prove]:
        if each(thing, "disputed"):
            case.say("fact-disputed", about)


# --- check ----------------------------------------------------------------------

def check(case):
    for item in case.items:
        check_answers(case, item)
        if item["role"] != "headplate":
            check_sheet(case, item)


def check_sheet(case, item):
    """"No complete sheet this shift"; "an item of the sheet is older than a change that
    touches it"."""
    sheet = each(item, "sheet")
    if not sheet:
        case.say("check-none", item["tag"])
    answers = case.of_this_shift([a for a in each(case.q, "answers")
                                  if a.get("unit") == item["tag"]
                                  and a.get("answer") is not None])
    for line in sheet:
        last = newest([a for a in answers if a.get("item") == line["id"]])
        if not last:
            case.say("check-none", item["tag"])
        elif any(is_stale(case, item, line, a) for a in last):
            case.say("check-stale", item["tag"])


def is_stale(case, item, line, answer):
    operator, machine = get(case.person("operator"), "id"), get(case.machine, "tag")
    if None in (operator, machine):
        return True
    if answer.get("by") != operator or answer.get("machine") != machine:
        return True
    touched = each(line, "staled_by")
    changes = [e.get("at") for e in events_touching(case, item)]
    if "coupling" in touched:
        coupled = get(case.q, "coupled_at")
        if coupled is not None or not case.no_hitch:
            changes.append(coupled)
    if "setting" in touched:
        changes += [r.get("at") for r in each(case.q, "setting_records")
                    if r.get("kind") == "changed"]
    return any(at is None or answer["at"] < at for at in changes)


def events_touching(case, item):
    """"An event of the unit, a touch excepted"; an attachment's sheet covers its
    headplate."""
    units = [item]
    if item["role"] == "attachment":
        units += [i for i in case.items if i["role"] == "headplate"]
    return [e for u in units for e in events_of(case, u)
            if gravity(e, u) not in ("none", "touch")]


def check_answers(case, item):
    """Whose defect nobody entitled (and not the one who answered) has cleared; a later
    *right* does not clear it."""
    for answer in each(case.q, "answers"):
        if answer.get("unit") != item["tag"] or answer_cleared(answer):
            continue
        if answer.get("answer") == "stop":
            case.say("check-stopped", item["tag"])
        elif answer.get("answer") == "report":
            case.say("check-report", item["tag"])


def answer_cleared(answer):
    by = answer.get("by")
    return by is not None and any(c.get("entitled") is True and c.get("by") not in (None, by)
                                  for c in each(answer, "cleared"))


# --- setting --------------------------------------------------------------------

class Setting:
    """What the setting records mean: what stands, whether it is disputed, who changed it.

    A setter is a record that fixes what stands: a change, or a look that ended a dispute.
    """

    def __init__(self, case):
        records = each(case.q, "setting_records")
        self.by_id = {r["id"]: r for r in records}
        self.reached = {i: self.reach(i) for i in self.by_id}
        self.changes = [r for r in records if r.get("kind") == "changed"]
        self.looks = [r for r in records if r.get("kind") == "seen" and r.get("state") is not None]
        self.setters = [r["id"] for r in self.changes]
        self.open = [{a["id"], b["id"]} for n, a in enumerate(self.changes)
                     for b in self.changes[n + 1:] if self.concurrent(a["id"], b["id"])
                     and a.get("state") != b.get("state")]
        self.ended = {}  # the look that ended a dispute: all records of that dispute
        for look in sorted(self.looks, key=lambda r: (len(self.reached[r["id"]]), r["id"])):
            self.take_look(look)
        self.disputed = bool(self.open)
        tops = self.tops(self.setters)
        self.stands = None
        if tops and not self.disputed:
            self.stands = self.by_id[tops[0]].get("state")
        self.last_changes = [self.by_id[i] for i in self.tops([r["id"] for r in self.changes])]

    def reach(self, record_id):
        """All records that this one's `after` reaches."""
        reached, todo = set(), list(each(self.by_id[record_id], "after"))
        while todo:
            other = todo.pop()
            if other in self.by_id and other not in reached:
                reached.add(other)
                todo += each(self.by_id[other], "after")
        return reached

    def concurrent(self, a, b):
        return a != b and a not in self.reached[b] and b not in self.reached[a]

    def tops(self, ids):
        return [i for i in ids if not any(i in self.reached[j] for j in ids if j != i)]

    def disputes(self):
        """The open conflicts, those with a record in common joined to one dispute."""
        groups = []
        for pair in self.open:
            joined = set(pair)
            for group in [g for g in groups if g & joined]:
                groups.remove(group)
                joined |= group
            groups.append(joined)
        return groups

    def ended_unknown_to(self, me):
        """Disputes that other looks have ended, of which this one knows none."""
        return [group for group in self.ended.values()
                if not any(g == group and look in self.reached[me]
                           for look, g in self.ended.items())]

    def take_look(self, look):
        """Until one later look at the unit whose `after` reaches every change and look in
        the dispute; what it saw then stands."""
        me = look["id"]
        ended = [g for g in self.disputes() + self.ended_unknown_to(me) if g <= self.reached[me]]
        if ended and look.get("at_unit") is True:
            self.ended[me] = set().union(*ended)
            self.open = [p for p in self.open if not any(p <= g for g in ended)]
            others = [s for s in self.setters if self.concurrent(s, me)]
            self.setters.append(me)
        else:
            known = [s for s in self.setters if s in self.reached[me]]
            later = [s for s in self.setters if me in self.reached[s]]
            overtaken = {s for s in self.setters if any(s in self.reached[k] for k in known)}
            others = [s for s in self.setters if s not in later and s not in overtaken]
        self.open += [{me, s} for s in others if self.by_id[s].get("state") != look["state"]]

    def changers(self):
        """All who made one of the changes count as changers."""
        makers = list(self.last_changes)
        for look, dispute in self.ended.items():
            if not any(look in self.reached[r["id"]] for r in self.changes):
                makers += [self.by_id[i] for i in dispute
                           if self.by_id[i].get("kind") == "changed"]
        return [r.get("by") for r in makers]

    def looks_since(self):
        """Looks at what stands since the last change."""
        starts = [r.get("at") for r in self.last_changes]
        if None in starts:
            return []
        return [l for l in self.looks if l["state"] == self.stands
                and l.get("at") is not None and all(l["at"] >= at for at in starts)
                and not any(l["id"] in self.reached[r["id"]] for r in self.last_changes)]


def setting(case):
    """In this order, the first that holds silences the rest."""
    if case.attachment is None or get(case.attachment, "model", "adjusts") is False:
        return
    barrels = [get(p, "barrel_mm") for p in case.pipes()]
    if not barrels:
        return
    code = setting_code(case, [b for b in barrels if b is not None])
    if code:
        case.say(code, case.attachment["tag"])


def setting_code(case, barrels):
    setting, states = case.setting, each(case.attachment, "model", "states")
    if get(case.attachment, "model", "adjusts") is None or not setting.changes:
        return "setting-unknown"
    known_state = setting.stands is not None and setting.stands in [s.get("name") for s in states]
    if not setting.disputed and not known_state:
        return "setting-unknown"
    looks = setting.looks if setting.disputed else setting.looks_since()
    if not [l for l in case.of_this_shift(looks) if l.get("by_eye") is True]:
        return "setting-unknown"
    if setting.disputed:
        return "setting-disputed"
    serving = [[s.get("name") for s in states if serves(s, b)] for b in barrels]
    if any(not names for names in serving):
        return "setting-none"
    if barrels and not any(setting.stands in names for names in serving):
        return "setting-wrong"  # at the gate only if it serves no size
    if not any(is_second_look(setting, l) for l in setting.looks_since()):
        return "setting-unseen"
    return None


def serves(state, barrel):
    least, greatest = state.get("least_mm"), state.get("greatest_mm")
    return None not in (least, greatest) and least <= barrel <= greatest


def is_second_look(setting, look):
    """By a second person authorised for this model (not the one who changed it), at the
    unit, with own PIN."""
    changers = setting.changers()
    return (look.get("by") is not None and None not in changers and look["by"] not in changers
            and look.get("authorised") is True and look.get("at_unit") is True
            and look.get("own_pin") is True)


# --- pipe -----------------------------------------------------------------------

def cylinder_mm3(outside, inside, length):
    return PI / 4 * (outside ** 2 - inside ** 2) * length


def computed_mass(pipe):
    """Before allowance. "Hollow cylinder of *overall* length plus socket ring (its length
    unknown: overall less effective length; socket not wider than barrel: none); density
    2,500 kg/m3 for concrete only"."""
    bore, barrel, socket = (get(pipe, k) for k in ("bore_mm", "barrel_mm", "socket_mm"))
    overall, density = get(pipe, "overall_mm"), get(pipe, "density_kg_m3")
    if density is None and get(pipe, "material") == "concrete":
        density = 2500
    if None in (bore, barrel, socket, overall, density) or bore >= barrel:
        return None
    volume = cylinder_mm3(barrel, bore, overall)
    if socket > barrel:
        ring, effective = pipe.get("socket_length_mm"), pipe.get("effective_mm")
        if ring is None and effective is not None:
            ring = overall - effective
        if ring is None or ring < 0:
            return None
        volume += cylinder_mm3(socket, barrel, ring)
    return volume * density / 10 ** 9


def pipe_mass(pipe):
    """The greater of stated and computed governs; computed must be known."""
    computed = computed_mass(pipe)
    if computed is None:
        return None
    computed = computed * (100 + (pipe.get("allowance_percent") or 0)) / 100
    return max(computed, pipe.get("stated_kg") or 0)


def within(figure, limits):
    if figure is None or limits is None:
        return False
    if limits == "any":
        return True
    least, greatest = limits.get("least"), limits.get("greatest")
    return None not in (least, greatest) and least <= figure <= greatest


def pipe(case):
    model = get(case.attachment, "model")
    for p in case.pipes():
        for code in pipe_codes(p, model):
            case.say(code, get(p, "id"))


def pipe_codes(p, model):
    """Each also when the pipe's or the model's figure is unknown."""
    barrel = get(p, "barrel_mm")
    # With an adjustment its states say what barrel is served; whether there is one
    # being unknown is setting-unknown.
    barrel_fits = barrel is not None and (
        get(model, "adjusts") is not False or within(barrel, get(model, "barrel_mm")))
    if not (barrel_fits and within(get(p, "bore_mm"), get(model, "bore_mm"))
            and within(get(p, "socket_mm"), get(model, "socket_mm"))):
        yield "pipe-size"
    if not within(get(p, "overall_mm"), get(model, "length_mm")):
        yield "pipe-length"
    shape = get(p, "shape")
    if shape is None or (shape != "straight" and shape not in each(model, "shapes")):
        yield "pipe-shape"
    mass, greatest = pipe_mass(p), get(model, "greatest_pipe_kg")
    if mass is None or greatest is None or over(mass, greatest):
        yield "pipe-mass"
    material = get(p, "material")
    if material is None or material not in each(model, "materials"):
        yield "pipe-material"
    stated, computed = get(p, "stated_kg"), computed_mass(p)
    if None not in (stated, computed) and 100 * stated < 85 * computed:
        yield "pipe-mass-differs"


# --- load -----------------------------------------------------------------------

def total(masses):
    masses = list(masses)
    return None if None in masses else sum(masses)


def load_under(case, item, p):
    """Pipe with stated water and mud, and the own masses of all items below; the item's
    own mass is not counted."""
    below = case.items[case.items.index(item) + 1:]
    return total(hanging(case, p) + [i.get("mass_kg") for i in below])


def hanging(case, p):
    """"Water, mud and what is not on the wagon count nothing"."""
    masses = [pipe_mass(p)]
    if case.lift:
        masses += [get(case.q, "move", k) for k in ("water_kg", "mud_kg")]
    return masses


def load_on_machine(case, p, hitch_counts):
    """On the machine also hitch (unless in the chart), shackles, any bucket left on."""
    masses = hanging(case, p)
    if case.lift:
        masses += [get(case.q, "move", k) for k in ("shackles_kg", "bucket_kg")]
    return total(masses + [i.get("mass_kg") for i in case.items if i["role"] != "machine"
                           and (hitch_counts or i["role"] != "hitch")])


def chart_load(case, p):
    return load_on_machine(case, p, get(case.q, "chart", "includes_hitch") is not True)


def load(case):
    if case.lift:
        if case.machine is None or case.attachment is None:
            case.say("load-unknown", "")
        if case.one("sling") is None and get(case.q, "no_sling") is not True:
            case.say("sling-unrated", "")
    for p in case.pipes():
        if case.machine is not None and chart_load(case, p) is None:
            case.say("load-unknown", case.machine["tag"])
        for today in case.days():
            for item in case.items:
                if item["role"] != "machine":
                    load_item(case, item, p, case.papers(item, today).governing)


def load_item(case, item, p, governing):
    role, tag = item["role"], item["tag"]
    weight = load_under(case, item, p)
    if weight is None:
        case.say("load-unknown", tag)
    swl = swl_today(case, item, governing) if governing else None
    if role == "sling" and sling_band(item.get("sling")) is None:
        case.say("sling-angle", tag)  # "silences that sling's rating"
        return
    limit = sling_rating(item, swl) if role == "sling" else rating(item, swl)
    if limit is None:
        case.say(role + "-unrated", tag)
    elif weight is not None:
        if role == "sling":
            limit = halved(item["sling"], limit, weight)
        if over(weight, limit):
            case.say(role + "-over-rating", tag)
        elif near(weight, limit):
            case.say(role + "-near-rating", tag)


def rating(item, swl):
    """"Neither plate nor model gives a rating"; "lowest known of plate, governing report's
    SWL for this configuration, model"."""
    plate, model = item.get("plate_kg"), get(item, "model", "rating_kg")
    if plate is None and model is None:
        return None
    return lowest((plate, swl, model))


# --- slings ---------------------------------------------------------------------

def band_of_spread(sling):
    """0 to 45 degrees, 1 to 60, 2 beyond, None unknown. Half the lug distance (or the
    diagonal of the lug rectangle) over the leg length is the sine; squared it is exact."""
    spread, leg = each(sling, "spread_mm"), sling.get("leg_length_mm")
    if leg is None or {2: 1, 4: 2}.get(sling.get("legs")) != len(spread):
        return None
    square = sum(side ** 2 for side in spread)
    return 2 if square > 3 * leg ** 2 else 1 if square > 2 * leg ** 2 else 0


def band_of_angle(angle):
    return None if angle is None else 2 if angle > 60000 else 1 if angle > 45000 else 0


def sling_band(sling):
    """"A measured angle beside it: the greater." None: unknown, refused or one leg off
    vertical."""
    angle = get(sling, "angle_mdeg")
    if get(sling, "legs") == 1:
        return 0 if angle == 0 else None
    bands = [b for b in (band_of_angle(angle), band_of_spread(sling) if sling else None)
             if b is not None]
    return max(bands) if bands and max(bands) < 2 else None


def sling_rating(item, swl):
    """None: unrated. "Lowest of tag, report's SWL, model and, for chain of grade 8, the
    EN 818-4 table (chain size or tag unknown, or legs not 1 to 4: `sling-unrated`)"."""
    sling = item["sling"]
    band, legs = sling_band(sling), sling.get("legs")
    tag = sling.get("tag_45_60_kg" if band else "tag_0_45_kg")
    if legs not in (1, 2, 3, 4) or tag is None:
        return None
    limits = [tag, swl, get(item, "model", "rating_kg")]
    kind, grade = sling.get("kind"), sling.get("grade")
    if kind is None or (kind == "chain" and grade is None):
        return None  # whether the table applies is not known
    if kind == "chain" and grade == 8:
        row = EN_818_4.get(sling.get("chain_mm"))
        if row is None:
            return None
        limits.append(row[{1: 0, 2: 1, 3: 3, 4: 3}[legs] + band])
    return lowest(limits)


def halved(sling, limit, weight):
    """Load at 80 % or more of that lowest limit with symmetry unconfirmed: half of it (any
    sling of two legs or more)."""
    if sling["legs"] >= 2 and sling.get("symmetric") is not True and 5 * weight >= 4 * limit:
        return Fraction(limit, 2)
    return limit


# --- reach ----------------------------------------------------------------------

def reach(case):
    tag = get(case.machine, "tag")
    chart, set_up = get(case.q, "chart"), get(case.q, "set_up")
    if chart is None:
        case.say("chart-none", tag)
    else:
        if any(get(chart, k) is None or get(chart, k) != get(set_up, k)
               for k in ("arm", "blade", "counterweight")):
            case.say("chart-other", tag)
        reach_chart(case, tag, chart)
        if chart_needs_devices(chart) and not devices_proved(case, set_up):
            case.say("machine-device", tag)
    mounting(case, tag, set_up)


def move_radius(case):
    """The greater of slew axis to arm-nose pin and to the combined centre of gravity."""
    radii = [get(case.q, "move", k) for k in ("nose_radius_mm", "centre_radius_mm")]
    return None if None in radii else max(radii)


def reach_chart(case, tag, chart):
    rated = lowest_corner(case, chart)
    if rated is None:
        case.say("reach-off-chart", tag)
        return
    weight = chart_load(case, get(case.q, "pipe"))
    if weight is None:
        return
    if over(weight, rated):
        case.say("reach-over-rating", tag)
    elif near(weight, rated):
        case.say("reach-near-rating", tag)


def lowest_corner(case, chart):
    """The lowest corner of all points of the move, None if one is off the chart."""
    radius = move_radius(case)
    heights = [get(case.q, "move", k) for k in ("pick_height_mm", "slew_height_mm",
                                                "lay_height_mm")]
    sector = get(case.q, "move", "sector")
    corners = []
    for side in [sector] if sector in ("front", "side") else ["front", "side"]:
        cells = [c for c in each(chart, "cells") if c.get("over") == side]
        grid = {(c.get("height_mm"), c.get("radius_mm")): c.get("rated_kg") for c in cells}
        radii = beside(radius, {r for _, r in grid})
        for height in heights:
            lines = beside(height, {h for h, _ in grid})
            found = [grid.get((h, r)) for h in lines for r in radii]
            if not found or None in found:
                return None
            corners += found
    return min(corners)


def beside(value, lines):
    """"On a grid line only that line's corners"; nothing outside: "never extrapolate"."""
    lines = {line for line in lines if line is not None}
    if value is None or not lines or not min(lines) <= value <= max(lines):
        return set()
    return {max(l for l in lines if l <= value), min(l for l in lines if l >= value)}


def chart_needs_devices(chart):
    """Rates over 1,000 kg at the least radius that it rates, or over 40,000 N m
    (kg x 9.81 x m) anywhere."""
    rated = [(c["radius_mm"], c["rated_kg"]) for c in each(chart, "cells")
             if None not in (c.get("radius_mm"), c.get("rated_kg"))]
    least = min((r for r, _ in rated), default=None)
    return any((r == least and kg > 1000) or newton_metres(kg, r) > 40000 for r, kg in rated)


def newton_metres(kg, mm):
    return Fraction(G_HUNDREDTHS, 100) * kg * mm / 1000


def devices_proved(case, set_up):
    return all(case.this_shift(get(set_up, k))
               for k in ("valves_proved_at", "overload_warning_proved_at"))


def mounting(case, tag, set_up):
    """"Rigid (or unknown) mounting without the maker's allowable mass and moment, or moment
    unknown"; "load as on the machine, the hitch always counted"."""
    if get(set_up, "mounting") == "free":
        return
    kg, nm = get(set_up, "mount_kg"), get(set_up, "mount_nm")
    distance = get(case.q, "move", "pin_to_centre_mm")
    weight = load_on_machine(case, get(case.q, "pipe"), True)
    if None in (kg, nm, distance, weight):
        case.say("mount-unrated", tag)
    elif over(weight, kg) or over(newton_metres(weight, distance), nm):
        case.say("mount-over-rating", tag)


# --- hitch ----------------------------------------------------------------------

def hitch(case):
    if case.no_hitch:
        return
    if case.hitch is None:
        case.say("hitch-unseen", "")
        return
    pattern = case.hitch.get("pattern")
    if pattern is None or pattern != get(case.one("headplate"), "pattern"):
        case.say("hitch-headplate", case.hitch["tag"])
    coupled = get(case.q, "coupled_at")
    looks = [] if coupled is None else case.of_this_shift(each(case.hitch, "lock_seen"), coupled)
    # "Is not one with own eyes that says locked."
    if not newest_serves(looks, lambda l: l.get("own_eyes") is True and l.get("locked") is True):
        case.say("hitch-unseen", case.hitch["tag"])


# --- plan, people ---------------------------------------------------------------

def plan(case):
    the_plan = case.plan()
    if the_plan is None:
        case.say("plan-none", "")
        return
    first, last = as_day(the_plan.get("first_day")), as_day(the_plan.get("last_day"))
    if first is None or last is None or not first <= case.today() <= last:
        case.say("plan-out-of-date", the_plan.get("id"))
    if is_outside(case, the_plan):
        case.say("plan-outside", the_plan.get("id"))
    issue = the_plan.get("issue")
    signed = {b.get("person") for b in each(the_plan, "briefed")
              if issue is not None and b.get("issue") == issue}
    for _, person in case.people():
        if person["id"] not in signed:
            case.say("briefing-none", person["id"])


def is_outside(case, the_plan):
    """"A limit that the plan does not state is outside (a radius or load unknown on our side
    is row reach's and load's matter)"."""
    def names(key, value):
        return value is not None and value in each(the_plan, key)

    attachment = case.attachment
    if not (names("machines", get(case.machine, "tag"))
            and (names("attachments", get(attachment, "tag"))
                 or names("models", get(attachment, "model", "id")))
            and names("pipes", get(case.q, "pipe", "id"))
            and names("places", get(case.q, "place", "id"))):
        return True
    for value, limit in ((chart_load(case, get(case.q, "pipe")), the_plan.get("greatest_kg")),
                         (move_radius(case), the_plan.get("greatest_radius_mm"))):
        if limit is None or (value is not None and over(value, limit)):
            return True
    return False


def people(case):
    roles = {"operator", "supervisor", "signaller"} | set(get(case.plan(), "roles") or {})
    for role in roles:
        if case.role_needed(role) and case.person(role) is None:
            case.say("person-none", role)
    operator, signaller = case.person("operator"), case.person("signaller")
    if operator and signaller and operator["id"] == signaller["id"]:
        case.say("person-none", "signaller")
    for role, person in case.people():
        if not authorised(case, role, person):
            case.say("person-not-authorised", person["id"])
        card(case, person)


def authorised(case, role, person):
    """Operator for machine, hitch and attachment; others for their role."""
    needed = [role]
    if role == "operator":
        items = [case.machine, case.attachment] + ([] if case.no_hitch else [case.hitch])
        needed = [get(i, "model", "id") for i in items]
    return all(n is not None and n in each(person, "authorised") for n in needed)


def card(case, person):
    last = as_day(person.get("card_last_day"))
    if last is None or last < case.today():
        stops = get(case.site(), "expired_card_stops") is not False  # the default
        case.say("card-expired" if stops else "card-expired-allowed", person["id"])
    elif (last - case.today()).days <= case.warning_days():
        case.say("card-due", person["id"])


# --- place, trench --------------------------------------------------------------

def place(case):
    """"Today's supervisor (the operator where the plan needs none) has not confirmed this
    standing place this shift, or answered no to one of"."""
    where = get(case.q, "place")
    role = "supervisor" if case.role_needed("supervisor") else "operator"
    who = get(case.person(role), "id")
    answers = case.of_this_shift([c for c in each(where, "confirmed")
                                  if who is not None and c.get("by") == who])

    def all_yes(answer):
        return all(answer.get(k) is True
                   for k in ("level", "ground_and_edge", "services", "zone_closed"))
    if not newest_serves(answers, all_yes):
        case.say("place-unconfirmed", get(where, "id"))


def trench(case):
    the_trench = get(case.q, "trench")
    if get(the_trench, "none") is True or get(the_trench, "someone_enters") is False:
        return
    disturbed = each(the_trench, "disturbed_at")
    looks = [] if None in disturbed else case.of_this_shift(
        each(the_trench, "inspections"), max(disturbed, default=None))
    # "Is not one by a competent person that says safe."
    if not newest_serves(looks, lambda l: l.get("by_competent") is True and l.get("safe") is True):
        case.say("trench-unchecked", get(case.q, "place", "id"))


# --- unit -----------------------------------------------------------------------

def unit(case):
    for item in case.items:
        if any(s.get("lifted_by_entitled") is not True for s in each(item, "stops")):
            case.say("unit-quarantined", item["tag"])
        if item.get("at_site") is None or item["at_site"] != get(case.site(), "id"):
            case.say("unit-elsewhere", item["tag"])
        if item.get("off_hire") is True:
            case.say("unit-off-hire", item["tag"])
        if item.get("scrapped") is True:
            case.say("unit-scrapped", item["tag"])


# --- thread ---------------------------------------------------------------------

def envelope(case):
    """L the greater of pipe and attachment, D the greatest outside diameter plus the
    attachment's height above crown and below invert."""
    p, model = get(case.q, "pipe"), get(case.attachment, "model")
    lengths = [get(p, "overall_mm"), get(model, "envelope_length_mm")]
    outsides = [get(p, "barrel_mm"), get(p, "socket_mm")]
    heights = [get(model, "above_crown_mm"), get(model, "below_invert_mm")]
    if None in lengths + outsides + heights:
        return None
    return max(lengths), max(outsides) + sum(heights)


def thread(case):
    there = get(case.q, "thread")
    if get(there, "strutted") is False:
        return
    about = get(case.q, "place", "id")
    known = [get(there, k) for k in ("gap_mm", "clearance_mm", "strut_depth_mm", "room_mm")]
    limit, size = get(case.attachment, "model", "tilt_limit_mdeg"), envelope(case)
    if None in known or limit is None or size is None:
        case.say("thread-unknown", about)
    elif thread_way(*size, *known, limit) is None:
        case.say("thread-tight", about)


def thread_way(length, depth, gap, clearance, strut, room, limit_mdeg):
    """The way through the struts and its tilt in radians, None if there is none."""
    limit = math.radians(limit_mdeg / 1000)
    if length <= gap - 2 * clearance and depth <= room - 2 * clearance:
        return "level", 0.0

    def room_enough(tilt):
        return length * math.sin(tilt) + depth * math.cos(tilt) <= room - 2 * clearance
    ways = [(tilt, way) for way, tilt in (
        ("tilted", tilted_at(length, depth, gap - 2 * clearance)),
        ("threaded", threaded_at(depth + 2 * clearance, strut, gap)))
        if tilt is not None and tilt <= limit and room_enough(tilt)]
    if not ways:
        return None
    tilt, way = min(ways, key=lambda w: (w[0], w[1] != "tilted"))
    return way, tilt


def tilted_at(length, depth, free):
    """Least tilt with L cos + D sin <= free. The sum is R cos(tilt - atan(D/L)): it rises
    to atan(D/L) first."""
    if length <= free:
        return 0.0
    if depth > free:
        return None  # not even upright
    return math.atan2(depth, length) + math.acos(free / math.hypot(length, depth))


def threaded_at(across, strut, gap):
    """Least tilt with across/sin + strut/tan <= gap, that is across + strut cos <=
    gap sin, or R sin(tilt - atan(strut/gap)) >= across."""
    if across > gap:
        return None
    return math.atan2(strut, gap) + math.asin(across / math.hypot(strut, gap))


# --- dispatch, clock, book ------------------------------------------------------

def dispatch(case):
    if case.attachment is not None and any(
            get(case.attachment, "loose_parts", part) not in ("listed", "not_applicable")
            for part in ("headplate", "pin", "keeper")):
        case.say("loose-parts", case.attachment["tag"])
    order = get(case.q, "order")
    end = as_day(get(order, "end_day"))
    for item in case.items:
        papers = [case.papers(item, today) for today in case.days()]
        if end is not None and all(p.in_date() for p in papers) and papers[-1].latest() < end:
            case.say("hire-due", item["tag"])
    pipes = each(order, "pipes")
    if (not pipes or any(p.get("barrel_mm") is None for p in pipes)
            or get(order, "hitch") is None or end is None):
        case.say("order-open", get(order, "id"))


def clock(case):
    """Not yet confirmed by a supervisor, or by two people from a phone; never to a time
    before the newest record."""
    floor = get(case.q, "clock", "newest_record_at")
    for notice in each(case.q, "clock", "notices"):
        valid = [c for c in each(notice, "confirmed") if c.get("by") is not None
                 and None not in (floor, c.get("to")) and c["to"] >= floor]
        by_phone = {c["by"] for c in valid if c.get("how") == "phone"}
        if not any(c.get("supervisor") is True for c in valid) and len(by_phone) < 2:
            case.say("clock-jump" if notice.get("kind") == "jump" else "clock-back", "")


def book(case):
    if get(case.q, "book", "opening_check_done") is not True:
        case.say("book-unchecked", "")
    for flag in ("damaged", "forked"):
        if get(case.q, "book", flag) is True:
            case.say("book-" + flag, "")


# --- the decision ---------------------------------------------------------------

LIFT = (exam, evidence, data, check, setting, pipe, load, reach, hitch, plan, people, place,
        trench, unit, thread, clock, book)
FOR_USE = (exam, evidence, data, setting, pipe, load, unit, dispatch, clock, book)
NOT_GATED = ("repair", "examination", "return", "scrap")


def decide(question):
    """Every finding as (code, weight, about), in the page's order."""
    if get(question, "purpose") in NOT_GATED:
        return []
    case = Case(question)
    for row in LIFT if case.lift else FOR_USE:
        row(case)

    def order(finding):
        weight, row, place_in_row = RANK[finding[0]]
        return weight, row, text_order(finding[1]), place_in_row
    return [(code, WEIGHTS[RANK[code][0]], about)
            for code, about in sorted(case.found, key=order)]


def outcome(findings):
    """`may_lift` is: no stop."""
    stopped = any(weight == "stop" for _, weight, _ in findings)
    return "do_not_lift" if stopped else "may_lift"
