"""Compares the counting of months with python3-dateutil, for every day and count.

month_counting.py DRIVER SOURCE...

DRIVER reads lines "YYYY-MM-DD N" and answers the day N months later; in none of the folders
SOURCE may a file leave the counting of months to SQLite. Source of what is right:
dateutil.relativedelta, which gives the corresponding date or the last day of the month, as
Dodds v Walker [1981] UKHL J0618-1 has it.
"""

import os
import re
import sqlite3
import subprocess
import sys
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta

FIRST, LAST = date(1990, 1, 1), date(2036, 12, 31)
COUNTS = range(1, 61)
IN_SQLITE = re.compile(r"'[^'\n]*\bmonths?'")  # a modifier such as '+6 months'
SOURCES = (".cpp", ".hpp", ".sql", ".json", ".cmake")


def days():
    return [FIRST + timedelta(n) for n in range((LAST - FIRST).days + 1)]


def ask_driver(driver, pairs):
    text = "".join("%s %d\n" % pair for pair in pairs)
    run = subprocess.run([driver], input=text, capture_output=True, text=True, check=True)
    return run.stdout.split()


def check_against_dateutil(driver):
    pairs = [(day, count) for count in COUNTS for day in days()]
    steps = {count: relativedelta(months=count) for count in COUNTS}
    answers = ask_driver(driver, pairs)
    assert len(answers) == len(pairs), "%d answers to %d" % (len(answers), len(pairs))
    wrong = [(day, count, answer) for (day, count), answer in zip(pairs, answers)
             if answer != (day + steps[count]).isoformat()]
    assert not wrong, "%d differ, first %s + %d months: %s" % ((len(wrong),) + wrong[0])
    print("%d pairs of day and count agree with dateutil" % len(pairs))


def check_why_not_sqlite(driver):
    """SQLite lets a day that does not exist run over into the next month: an item would serve longer than it may."""
    memory = sqlite3.connect(":memory:")

    def sqlite(day, count):
        return memory.execute("select date(?, ?)", (day, "+%d months" % count)).fetchone()[0]

    assert sqlite("2025-08-31", 6) == "2026-03-03"
    assert ask_driver(driver, [("2025-08-31", 6)]) == ["2026-02-28"]
    pairs = [(day.isoformat(), count) for count in (1, 6, 12) for day in days()]
    ours = ask_driver(driver, pairs)
    later = sum(sqlite(*pair) > mine for pair, mine in zip(pairs, ours))
    earlier = sum(sqlite(*pair) < mine for pair, mine in zip(pairs, ours))
    assert later > 0 and earlier == 0, (later, earlier)
    print("SQLite %s lengthens %d of %d periods" % (sqlite3.sqlite_version, later, len(pairs)))


def files_in(folder):
    for path, _, names in os.walk(folder):
        for name in names:
            if name.endswith(SOURCES):
                yield os.path.join(path, name)


def check_never_used(folders):
    assert IN_SQLITE.search("select date(day, '+6 months')")
    assert IN_SQLITE.search("select date(day, '+' || ? || ' months')")
    looked_at = 0
    for path in (path for folder in folders for path in files_in(folder)):
        with open(path, encoding="utf-8") as file:
            assert not IN_SQLITE.search(file.read()), "%s counts months in SQLite" % path
        looked_at += 1
    assert looked_at > 0, "no sources"
    print("none of %d files counts months in SQLite" % looked_at)


def main():
    driver, folders = sys.argv[1], sys.argv[2:]
    check_against_dateutil(driver)
    check_why_not_sqlite(driver)
    check_never_used(folders)


if __name__ == "__main__":
    main()
