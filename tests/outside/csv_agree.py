"""Compares the reader and the writer of tables with Python's own csv module, on tables made at random.

csv_agree.py DRIVER [--count N]

DRIVER is csv_driver. What the module writes, in each of its ways, the driver reads the same; what the driver writes,
the module reads the same, but for the apostrophe in front of what a spreadsheet takes for a formula; and of lines that
are damaged at random the driver refuses those that the module refuses.
"""

import csv
import io
import json
import random
import subprocess
import sys

PIECES = ["a", "B", "7", " ", ",", ";", "\t", '"', '""', "\n", "\r\n", "'", "=", "+", "-", "@", "Ø", "€", "𝄞", "\u00a0"]
FORMULA = ("=", "+", "-", "@", "\t", "\r")


def text(rng):
    return "".join(rng.choice(PIECES) for _ in range(rng.randrange(6)))


def rows(rng):
    """A heading of plain words, then rows that are not empty."""
    width = rng.randrange(2, 6)
    made = [["h%d" % i for i in range(width)]]
    for _ in range(rng.randrange(1, 8)):
        made.append([rng.choice("xyz") + text(rng)] + [text(rng) for _ in range(width - 1)])
    return made


def run(driver, how, data):
    return subprocess.run([driver, how], input=data, capture_output=True)


def written_by_python(rng, table):
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=rng.choice(",;\t"), lineterminator=rng.choice(["\r\n", "\n"]),
                        quoting=rng.choice([csv.QUOTE_MINIMAL, csv.QUOTE_ALL, csv.QUOTE_NONNUMERIC]))
    writer.writerows(table)
    return rng.choice(["", "\ufeff"]) + out.getvalue()


def check_reader(driver, rng):
    table = rows(rng)
    data = written_by_python(rng, table)
    done = run(driver, "read", data.encode())
    assert done.returncode == 0, (data, done.stderr)
    assert json.loads(done.stdout) == table, (data, done.stdout)


def guarded(cell):
    return "'" + cell if cell.lstrip("'").startswith(FORMULA) else cell


def check_writer(driver, rng):
    table = rows(rng)
    done = run(driver, "write", json.dumps(table).encode())
    assert done.returncode == 0, done.stderr
    data = done.stdout.decode()
    read = list(csv.reader(io.StringIO(data, newline=""), strict=True))
    assert read == [[guarded(cell) for cell in row] for row in table], (data, read)


def python_reads(data):
    try:
        return [row for row in csv.reader(io.StringIO(data, newline=""), strict=True) if any(row)]
    except csv.Error:
        return None


def check_damaged(driver, rng):
    """A quotation mark more or less. Where both read it they read the same; what only one refuses is counted."""
    out = io.StringIO(newline="")
    csv.writer(out).writerows(rows(rng))
    data = list(out.getvalue())
    place = rng.randrange(data.index("\n") + 1, len(data))
    data[place:place + rng.randrange(2)] = ['"']
    data = "".join(data)
    theirs = python_reads(data)
    done = run(driver, "read", data.encode())
    if theirs is None:
        assert done.returncode == 1, ("the module refuses it", data, done.stdout)
        return True
    if done.returncode == 0:
        assert json.loads(done.stdout) == theirs, (data, done.stdout)
    return False


def main(driver, count):
    rng = random.Random(4180)
    refused = 0
    for _ in range(count):
        check_reader(driver, rng)
        check_writer(driver, rng)
        refused += check_damaged(driver, rng)
    assert refused > count / 10, "too few damaged tables were refused: %d of %d" % (refused, count)
    print("%d tables read, written and damaged alike; %d refused by both" % (count, refused))


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[3]) if sys.argv[2:3] == ["--count"] else 500)
