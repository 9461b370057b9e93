#!/usr/bin/env python3
"""An inspector's bundle, checked with nothing of Cotter's: coreutils, hashlib, libsodium, poppler, Python's csv.

bundle.py COTTER SOURCE

Sources: sha256sum of GNU coreutils; FIPS 180-4 by hashlib; RFC 8032 by libsodium's crypto_sign_verify_detached;
RFC 4180 by Python's csv; pdfinfo and pdftotext of poppler.
"""

import csv
import ctypes
import hashlib
import io
import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

PREFIX = b"cotter-record-1\0"
SODIUM = ctypes.CDLL("libsodium.so.23")
CAUTION = ("Cotter supports, and never replaces, the lift plan, the maker's instructions, local law and competent "
           "people.")


def run(*command, cwd=None):
    done = subprocess.run(command, cwd=cwd, capture_output=True, text=True, check=False)
    assert done.returncode == 0, (command, done.stdout, done.stderr)
    return done.stdout


def verifies(key, message, signature):
    key, message, signature = bytes.fromhex(key), PREFIX + message, bytes.fromhex(signature)
    assert len(key) == 32 and len(signature) == 64
    return SODIUM.crypto_sign_verify_detached(signature, message, ctypes.c_ulonglong(len(message)), key) == 0


def make(cotter, source, folder):
    book = folder / "sample.db"
    env = {**os.environ, "COTTER": cotter}
    subprocess.run([source / "sample_site" / "make", book, "--on", "2026-11-25"], env=env, check=True,
                   stdout=subprocess.DEVNULL)
    run(cotter, "bundle", "--store", book, "--unit", "CL-02", "--from", "2026-10-20", "--to", "2026-11-25", "--into",
        folder / "bundle", "--at", "2026-11-25T08:00:00Z")
    return book, folder / "bundle"


def check_hashes(bundle):
    said = run("sha256sum", "--check", "--strict", "hashes.txt", cwd=bundle)
    listed = {line.split(": ")[0] for line in said.splitlines()}
    there = {str(each.relative_to(bundle)) for each in bundle.rglob("*") if each.is_file()}
    assert listed == there - {"hashes.txt"}, listed ^ there


def records_of(bundle):
    return [json.loads(line) for line in (bundle / "records.jsonl").read_text("utf-8").splitlines()]


def check_records(bundle):
    records = records_of(bundle)
    keys = {}
    for each in records:
        body = json.loads(each["bytes"])
        if body["kind"] == "device" and body["seq"] == 1:
            key = body["body"]["public_key"]
            assert hashlib.sha256(bytes.fromhex(key)).hexdigest() == body["device"]
            keys[body["device"]] = key
    for each in records:
        raw = each["bytes"].encode("utf-8")
        assert hashlib.sha256(PREFIX + raw).hexdigest() == each["hash"]
        key = keys[json.loads(raw)["device"]]
        assert verifies(key, raw, each["sig"])
        assert not verifies(key, raw + b" ", each["sig"])
    return records, keys


def check_list(bundle, keys):
    lines = (bundle / "hashes.txt").read_text("utf-8").splitlines(keepends=True)
    receipt, last = lines[1][2:].split(), lines[-1][2:].split()
    assert receipt[0] == "COTTER-RECEIPT" and last[0] == "COTTER-BUNDLE", (receipt, last)
    device = last[2]
    assert verifies(keys[receipt[2]], " ".join(receipt[:6]).encode(), receipt[6])
    digest = hashlib.sha256("".join(lines[:-1]).encode("utf-8")).hexdigest()
    assert verifies(keys[device], f"COTTER-BUNDLE 1 {device} {digest}".encode(), last[3])


def table(bundle, name):
    text = (bundle / "csv" / name).read_bytes().decode("utf-8")
    assert text.endswith("\r\n") and "\n" not in text.replace("\r\n", "")
    rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    assert all(len(row) == len(rows[0]) for row in rows), name
    return [dict(zip(rows[0], row)) for row in rows[1:]]


def check_tables(bundle, records):
    """Every record but the device's own stands in the table of its kind, once."""
    tables = {each.stem: table(bundle, each.name) for each in (bundle / "csv").iterdir()}
    wanted = {}
    for each in records:
        body = json.loads(each["bytes"])
        if body["kind"] != "device":
            wanted.setdefault(body["kind"], []).append(each["hash"])
    for kind, rows in tables.items():
        if kind not in ("lift_findings", "check_answers"):
            assert sorted(row["hash"] for row in rows) == sorted(wanted.get(kind, [])), kind
    assert len(tables["pre_use_check"]) >= 10 and len(tables["check_answers"]) > len(tables["pre_use_check"])


def check_against_book(book, cotter, records):
    """What the book itself lists about the unit in these days is in the bundle."""
    have = {each["hash"] for each in records}
    for kind in ("pre_use_check", "setting_seen", "setting_changed", "stop_called", "stop_lifted", "headplate_fitted"):
        for line in run(cotter, "list", kind, "--store", book, "--about", "cl-02").splitlines():
            record = json.loads(line)
            if "2026-10-20" <= record["day"] <= "2026-11-25":
                assert record["hash"] in have, record


def check_pdf(bundle):
    info = dict(line.split(":", 1) for line in run("pdfinfo", bundle / "bundle.pdf").splitlines() if ":" in line)
    assert info["Page size"].strip().endswith("(A4)"), info
    assert "2026" in info["CreationDate"] and info["Encrypted"].strip() == "no", info
    pages = run("pdftotext", "-layout", bundle / "bundle.pdf", "-").split("\f")[:-1]
    assert len(pages) == int(info["Pages"])
    for number, page in enumerate(pages, start=1):
        assert CAUTION in page and f"{number} of {len(pages)}" in page and "SAMPLE" in page, number


def main(cotter, source):
    with tempfile.TemporaryDirectory() as name:
        book, bundle = make(cotter, Path(source), Path(name))
        check_hashes(bundle)
        records, keys = check_records(bundle)
        check_list(bundle, keys)
        check_tables(bundle, records)
        check_against_book(book, cotter, records)
        check_pdf(bundle)
        print(f"{len(records)} records, {len(keys)} device: hashes, signatures, tables and pages fit")


if __name__ == "__main__":
    main(*sys.argv[1:])
