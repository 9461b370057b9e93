#!/usr/bin/env python3
"""catalogues.py SOURCE: each catalogue has every key that src/words/languages/collect finds and no other, filled in, with
the same places {} and three plural forms; msgfmt takes it."""
import json
import pathlib
import re
import subprocess
import sys
import tempfile

SOURCE = pathlib.Path(sys.argv[1])
LANGUAGES = SOURCE / "src/words/languages"


def entries(path):
    found = {}
    for block in re.split(r"\n\s*\n", path.read_text(encoding="utf-8")):
        key = re.search(r'^msgid (".*")$', block, re.M)
        if key and json.loads(key.group(1)):
            found[json.loads(key.group(1))] = [
                json.loads(each) for each in re.findall(r'^msgstr(?:\[\d\])? (".*")$', block, re.M)]
    return found


def places(text):
    return sorted(re.findall(r"\{[^}]*\}", text))


def problems(wanted, there):
    for key in wanted.keys() - there.keys():
        yield f"is not translated: {key}"
    for key in there.keys() - wanted.keys():
        yield f"is a key of nothing: {key}"
    for key in wanted.keys() & there.keys():
        if len(wanted[key]) == 2 and len(there[key]) != 3:
            yield f"wants three plural forms: {key}"
        for text in there[key]:
            if not text:
                yield f"is empty: {key}"
            elif places(text) != places(key):
                yield f"has other places: {key} | {text}"


def main():
    with tempfile.TemporaryDirectory() as folder:
        template = pathlib.Path(folder) / "cotter.pot"
        subprocess.run([LANGUAGES / "collect", template], check=True)
        wanted = entries(template)
    bad = 0
    for catalogue in sorted(LANGUAGES.glob("*.po")):
        subprocess.run(["msgfmt", "-c", "-o", "/dev/null", catalogue], check=True)
        for each in problems(wanted, entries(catalogue)):
            print(f"{catalogue.name}: {each}")
            bad += 1
    print(f"{len(wanted)} keys, {bad} to mend")
    sys.exit(1 if bad or len(wanted) < 1000 else 0)


main()
