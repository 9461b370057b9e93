#!/usr/bin/env python3
"""Compares a program's decisions with the oracle's on many made questions.

agree.py JUDGE [--count N] [--seed S] [--expect-disagreement]
agree.py --dump FILE [--count N] [--seed S]

JUDGE is run as `JUDGE judge FILE` and prints one decision a line. Exit 0: all agree, and
every code and outcome occurred often enough for that to mean something; 1: not so;
2: the program did not answer every question.
"""

import argparse
import collections
import json
import multiprocessing
import os
import subprocess
import sys
import tempfile

import oracle
import questions

PROCESSES = 2
BATCH = 2000
SHOWN = 10
LEAST_PER_CODE = 300  # in 100,000 questions
LEAST_MAY_LIFT = 5000


def write_questions(path, some_questions):
    with open(path, "w", encoding="ascii") as file:
        for question in some_questions:
            file.write(json.dumps(question) + "\n")


def run_judge(judge, some_questions):
    """One parsed decision a question; an error text where the program failed."""
    handle, path = tempfile.mkstemp(suffix=".jsonl")
    os.close(handle)
    try:
        write_questions(path, some_questions)
        # Its exit status also says that a lift may not be made; what counts is the answers.
        run = subprocess.run([judge, "judge", path], capture_output=True, text=True, check=False)
    finally:
        os.remove(path)
    lines = run.stdout.splitlines()
    if len(lines) != len(some_questions):
        return [], "%d answers to %d questions, exit %d: %s" % (
            len(lines), len(some_questions), run.returncode, run.stderr.strip()[:300])
    return [json.loads(line) for line in lines], ""


def difference(question, decision, findings):
    """What differs, in one short text; empty if nothing does."""
    theirs = [(f.get("code"), f.get("weight"), f.get("about")) for f in decision["findings"]]
    outcome = oracle.outcome(findings)
    if (decision.get("id"), decision.get("outcome")) == (question["id"], outcome) \
            and theirs == findings:
        return ""
    text = [question["id"]]
    if decision.get("id") != question["id"]:
        text.append("answered as %r" % decision.get("id"))
    if decision.get("outcome") != outcome:
        text.append("outcome %s, oracle %s" % (decision.get("outcome"), outcome))
    for who, some, others in (("judge", theirs, findings), ("oracle", findings, theirs)):
        only = [f for f in some if f not in others]
        if only:
            text.append("only %s: %s" % (who, ", ".join(
                "%s (%s, %s)" % (code, weight, about or "-") for code, weight, about in only)))
    if sorted(map(repr, theirs)) == sorted(map(repr, findings)) and theirs != findings:
        text.append("other order")
    elif len(theirs) != len(set(theirs)):
        text.append("a finding twice")
    return "; ".join(text)


def compare_batch(job):
    judge, seed, first, last = job
    asked = [questions.question(seed, number) for number in range(first, last)]
    decisions, error = run_judge(judge, asked)
    counts, differences, differing = collections.Counter(), [], collections.Counter()
    if error:
        return counts, [], differing, "questions %d to %d: %s" % (first, last - 1, error)
    for question, decision in zip(asked, decisions):
        findings = oracle.decide(question)
        counts[oracle.outcome(findings)] += 1
        counts.update({code for code, _, _ in findings})
        text = difference(question, decision, findings)
        if text:
            differences.append(text)
            theirs = {(f.get("code"), f.get("about")) for f in decision["findings"]}
            ours = {(code, about) for code, _, about in findings}
            differing.update({code for code, _ in theirs ^ ours})
    return counts, differences, differing, ""


def report(counts, differences, differing, count):
    """Prints what was found; True if every code occurred often enough."""
    for text in differences[:SHOWN]:
        print(text)
    print("%d of %d questions differ" % (len(differences), count))
    for code, number in differing.most_common():
        print("  %s differs in %d" % (code, number))
    enough = True
    for code in ("may_lift",) + oracle.CODES:
        least = (LEAST_MAY_LIFT if code == "may_lift" else LEAST_PER_CODE) * count / 100000
        rare = counts[code] < least
        enough = enough and not rare
        print("%7d %s%s" % (counts[code], code, "   TOO FEW" if rare else ""))
    return enough


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("judge", nargs="?")
    parser.add_argument("--count", type=int, default=100000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--expect-disagreement", action="store_true")
    parser.add_argument("--dump", metavar="FILE", help="write the questions only")
    options = parser.parse_args()
    if options.dump:
        write_questions(options.dump, questions.questions(options.count, options.seed))
        return 0
    if not options.judge:
        parser.error("JUDGE or --dump is needed")
    jobs = [(options.judge, options.seed, first, min(first + BATCH, options.count))
            for first in range(0, options.count, BATCH)]
    counts, differences, differing = collections.Counter(), [], collections.Counter()
    with multiprocessing.Pool(PROCESSES) as pool:
        for batch in pool.imap(compare_batch, jobs):
            some_counts, some_differences, some_differing, error = batch
            if error:  # a program that does not answer neither agrees nor disagrees
                print(error)
                return 2
            counts += some_counts
            differences += some_differences
            differing += some_differing
            if options.expect_disagreement and differences:
                print(differences[0])
                return 0
    if options.expect_disagreement:
        print("no question differs")
        return 1
    enough = report(counts, differences, differing, options.count)
    return 0 if enough and not differences else 1


if __name__ == "__main__":
    sys.exit(main())
