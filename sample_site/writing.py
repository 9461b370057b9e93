"""Lines of a book, and their way into it through the program."""

import json
import subprocess

import days


class Refused(Exception):
    pass


class Lines:
    """Collects what is written, in the order of time, each by the person who writes it."""

    def __init__(self):
        self.lines = []

    def add(self, moment, by, kind, about, body, who=None, ref=None):
        line = {"kind": kind, "about": about, "at": days.instant(moment), "body": body}
        if who:
            line["who"] = who
        self.lines.append((moment, by, line, ref))

    def runs(self):
        """Neighbours by one person go in together; what names an older record waits until that one has its hash."""
        run, writer, refs = [], None, set()
        for moment, by, line, ref in sorted(self.lines, key=lambda each: each[0]):
            if run and (by != writer or names(line["body"]) & refs):
                yield writer, run
                run, refs = [], set()
            writer = by
            run.append((line, ref))
            if ref:
                refs.add(ref)
        yield writer, run


def names(body):
    return {value for value in body.values() if isinstance(value, str) and value.startswith("@")}


def resolved(line, hashes):
    body = {key: hashes.get(value, value) if isinstance(value, str) else value for key, value in line["body"].items()}
    return {**line, "body": body}


def record(program, store, by, run, hashes):
    text = "".join(json.dumps(resolved(line, hashes)) + "\n" for line, _ in run)
    done = subprocess.run([program, "record", "any", "--store", store, "--as", by, "--json"],
                          input=text, capture_output=True, text=True)
    if done.returncode != 0:
        raise Refused(done.stderr.strip() or f"{program} record ended with {done.returncode}")
    written = [json.loads(each) for each in done.stdout.splitlines()]
    hashes.update({ref: each["hash"] for (_, ref), each in zip(run, written) if ref})


def write(program, store, lines):
    hashes = {}
    for by, run in lines.runs():
        record(program, store, by, run, hashes)
