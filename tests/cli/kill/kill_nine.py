#!/usr/bin/env python3
"""Kills the program at random moments of a busy shift; nothing that it acknowledged may be missing.

kill_nine.py COTTER [--times N] [--seed S]
Exit 0: after every kill the book opened, and at the end it verifies and holds every acknowledged record; 1: not so.
"""

import argparse
import json
import random
import subprocess
import sys
import tempfile
import time
from pathlib import Path

START = 1795590000  # 2026-11-25T07:00:00Z


def at(second):
    return time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime(START + second))


def line(kind, about, body, second):
    return json.dumps({"kind": kind, "about": about, "at": at(second), "body": body}) + "\n"


def stock():
    return (line("device", "d", {"name": "cab tablet", "sample": True}, 0)
            + line("site", "s", {"name": "S (invented)", "zone": "Europe/London"}, 1)
            + line("person", "farrow", {"name": "I. Farrow (invented)"}, 2)
            + line("unit", "cl-02", {"tag": "CL-02", "owner_firm": "R (invented)", "serial": "1", "role": "attachment",
                                     "class": "accessory"}, 3)
            + line("unit", "ex-21", {"tag": "EX-21", "owner_firm": "R (invented)", "serial": "2", "role": "machine",
                                     "class": "machine"}, 4))


def work(rng, second):
    """One signing of a busy shift."""
    right = {"answers": [{"item": "pads", "answer": rng.choice(("right", "report"))}]}
    return rng.choice((
        line("pre_use_check", rng.choice(("cl-02", "ex-21")), right, second),
        line("setting_seen", "cl-02", {"state": "hole 1", "by_eye": True, "at_unit": True}, second),
        line("stop_called", "cl-02", {"why": "pad loose"}, second),
        "".join(line("setting_seen", "cl-02", {"state": "hole 2"}, second + i) for i in range(8))))


class Shift:
    def __init__(self, cotter, book, rng):
        self.cotter, self.book, self.rng = cotter, book, rng
        self.acknowledged, self.killed = [], 0

    def record(self, text, seconds=None):
        """The hashes that were printed; killed after so many seconds, where it still runs then."""
        running = subprocess.Popen([self.cotter, "record", "any", "--store", self.book, "--as", "farrow", "--json"],
                                   stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        running.stdin.write(text)
        running.stdin.close()
        if seconds is not None:
            time.sleep(seconds)
            running.kill()
        said, wrong = running.stdout.read(), running.stderr.read()
        code = running.wait()
        if code == -9:
            self.killed += 1
        elif code != 0:
            sys.exit(f"record ended with {code}: {wrong.strip()}")
        self.acknowledged += [json.loads(each)["hash"] for each in said.splitlines() if each.endswith("}")]

    def hashes(self):
        listed = subprocess.run([self.cotter, "list", "--store", self.book], capture_output=True, text=True, check=True)
        return {json.loads(each)["hash"] for each in listed.stdout.splitlines()}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("cotter")
    parser.add_argument("--times", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        rng = random.Random(options.seed)
        shift = Shift(options.cotter, str(Path(folder) / "book.db"), rng)
        shift.record(stock())
        began = time.monotonic()
        shift.record(work(rng, 59))
        whole = time.monotonic() - began  # about what one signing takes here
        second = 60
        while shift.killed < options.times:
            shift.record(work(rng, second), rng.uniform(0, 1.3 * whole))
            second += 10
        missing = set(shift.acknowledged) - shift.hashes()
        verified = subprocess.run([options.cotter, "verify", "--store", shift.book], capture_output=True, text=True)
    print(f"{shift.killed} kills, {len(shift.acknowledged)} records acknowledged, {len(missing)} missing, "
          f"verify ended with {verified.returncode}")
    return 1 if missing or verified.returncode else 0


if __name__ == "__main__":
    sys.exit(main())
