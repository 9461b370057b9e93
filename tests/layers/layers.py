#!/usr/bin/env python3
"""Refuses any header that a layer may not see, by the compiler's own dependency files.

layers.py check --source DIR --build DIR --compiler CXX [--ninja PROGRAM]
layers.py refuse      shows that a wrong header is refused, once for each layer and way

Exit 0: nothing to refuse; 1: a refusal, one line each: source, header and what is accepted.
"""

import argparse
import collections
import os
import re
import subprocess
import sys

import made_up
from allowed import FOLDERS, LAYERS, OWN_FILES, PACKAGES, STANDARD_HEADERS

Entry = collections.namedtuple("Entry", "target source headers")  # of one object file
SOURCE_ENDINGS = (".cpp", ".hpp", ".h")
INCLUDE = re.compile(r'^\s*#\s*include\s*(["<])([^">]+)')


# Reading -----------------------------------------------------------------------------------------

def entry_of(target, paths):
    return Entry(target, paths[0], paths[1:])


def parse_ninja(text):
    """`ninja -t deps`: the object's line ends in (VALID) or (STALE), its files follow indented."""
    entries = []
    target, paths = None, []
    for line in text.splitlines() + [""]:
        if line.startswith(" "):
            paths.append(line.strip())
            continue
        if target and paths:
            entries.append(entry_of(target, paths))
        target, paths = line.split(": #deps")[0] or None, []
    return entries


def parse_make(text):
    """A .d file: `object: source header ...`, lines joined by a backslash."""
    words = re.findall(r"(?:\\ |\S)+", text.replace("\\\n", " "))
    if not words or not words[0].endswith(":"):
        return []
    paths = [word.replace("\\ ", " ") for word in words[1:]]
    return [entry_of(words[0][:-1], paths)] if paths else []


def read_dependencies(build, ninja):
    if ninja and os.path.exists(os.path.join(build, "build.ninja")):
        run = subprocess.run([ninja, "-C", build, "-t", "deps"], capture_output=True, text=True, check=True)
        return parse_ninja(run.stdout)
    entries = []
    for folder, _, names in os.walk(build):
        for name in names:
            if name.endswith(".d"):
                with open(os.path.join(folder, name), encoding="utf-8") as file:
                    entries += parse_make(file.read())
    return entries


def standard_library(compiler):
    """What the compiler reads for every standard header together, optimised (which reads more) or not."""
    code = "".join(f"#if __has_include(<{name}>)\n#include <{name}>\n#endif\n" for name in STANDARD_HEADERS)
    found = set()
    for flags in (["-O0"], ["-O2", "-U_FORTIFY_SOURCE", "-D_FORTIFY_SOURCE=2"]):
        run = subprocess.run([compiler, "-std=c++20", *flags, "-M", "-w", "-x", "c++", "-"], input=code,
                             capture_output=True, text=True, check=True)
        found |= {os.path.normpath(path) for path in run.stdout.replace("\\\n", " ").split()[1:]}
    return found


# Judging -----------------------------------------------------------------------------------------

class Tree:
    """Where the sources and the build stand, and what the standard library is made of."""

    def __init__(self, source, build, standard):
        self.source, self.build, self.standard = os.path.normpath(source), os.path.normpath(build), standard

    def full(self, path):
        return os.path.normpath(os.path.join(self.build, path))

    def inside(self, path):
        """The path from the top of the sources; None outside them or in the build."""
        full = self.full(path)
        if full.startswith(self.build + os.sep) or not full.startswith(self.source + os.sep):
            return None
        return os.path.relpath(full, self.source)

    def layer_of(self, entry):
        """The layer whose object this is; None: a test, or nobody's."""
        inside = self.inside(entry.source)
        if inside:
            return layer_at(inside)
        made = re.search(r"CMakeFiles/(\w+)\.dir/", entry.target)  # a source that the build made
        return made.group(1) if made and made.group(1) in LAYERS else None


def layer_at(inside):
    for folder, layer in FOLDERS.items():
        if inside.startswith(folder + "/"):
            return layer
    unknown = re.match(r"src/([^/]+)/", inside)
    return unknown.group(1) if unknown else None


def package_of(path):
    for name, pattern in PACKAGES.items():
        if re.search(pattern, path):
            return name
    return None


def is_accepted(tree, layer, inside_source, header):
    inside = tree.inside(header)
    if inside:
        return layer_at(inside) in LAYERS[layer]
    full = tree.full(header)
    package = package_of(full)
    if package:
        return package in LAYERS[layer] or package in OWN_FILES.get(inside_source, ())
    return full in tree.standard or inside_source in OWN_FILES and "system" in OWN_FILES[inside_source]


def goes_above(tree, path):
    """`../` in a path of ours; the compiler's own folders are full of them."""
    return ".." in path.split("/") and tree.inside(path) is not None and os.path.isabs(path)


def refusals_of(tree, entry):
    layer = tree.layer_of(entry)
    if layer is None:
        return []
    source = tree.inside(entry.source) or entry.source
    if layer not in LAYERS:
        return [f"{source}: the layer {layer} has no list of what it may see; tests/layers/allowed.py is where it goes"]
    accepted = ", ".join(sorted(LAYERS[layer]))
    wrong = [h for h in entry.headers if goes_above(tree, h) or not is_accepted(tree, layer, source, h)]
    return [f"{source}: {header} is not for {layer}; the standard library, {accepted} are" for header in wrong]


def refusals(tree, entries):
    """Of all objects whose source still stands; a file that was taken away leaves its entry behind."""
    found = []
    for entry in entries:
        found += refusals_of(tree, entry)
    return found


# The sources themselves --------------------------------------------------------------------------

def files_of_layers(source):
    for folder in FOLDERS:
        for place, _, names in os.walk(os.path.join(source, folder)):
            for name in sorted(names):
                if name.endswith(SOURCE_ENDINGS):
                    yield os.path.relpath(os.path.join(place, name), source)


def not_read(tree, entries):
    """Sources without a dependency file: the check would be blind to them."""
    seen = {tree.inside(path) for entry in entries for path in (entry.source, *entry.headers)} # several at once too
    return [f"{name}: no dependency file of it was found; build everything first"
            for name in files_of_layers(tree.source) if name.endswith(".cpp") and name not in seen]


def is_plain(name, quote, header):
    """A name alone, of ours, of the standard library or of a package. Else it is the system's."""
    if ".." in header.split("/"):
        return False
    system = quote == "<" and header not in STANDARD_HEADERS and package_of("/" + header) is None
    return not system or "system" in OWN_FILES.get(name, ())


def refusals_in_text(name, text):
    found = (INCLUDE.match(line) for line in text.splitlines())
    return [f"{name}: {match[2]} is not to be included; a name alone, of a layer, the standard library or a package is"
            for match in found if match and not is_plain(name, match[1], match[2])]


def refusals_in_sources(source):
    """What dependencies do not tell: ninja shortens a/../b to b, and the standard library itself reads unistd.h."""
    found = []
    for name in files_of_layers(source):
        with open(os.path.join(source, name), encoding="utf-8") as file:
            found += refusals_in_text(name, file.read())
    return found


# The two tests -----------------------------------------------------------------------------------

def check(options):
    tree = Tree(os.path.realpath(options.source), os.path.realpath(options.build), standard_library(options.compiler))
    entries = [e for e in read_dependencies(tree.build, options.ninja) if os.path.exists(tree.full(e.source))]
    found = refusals(tree, entries) + not_read(tree, entries) + refusals_in_sources(tree.source)
    judged = sum(tree.layer_of(entry) in LAYERS for entry in entries)
    print("\n".join(found) if found else f"{judged} objects see only what their layers may")
    return 1 if found else 0


def fails_for(case, parse, write):
    """What is wrong with the checker, if a made-up object is not judged as it should be; else nothing."""
    tree = Tree(made_up.SOURCE, made_up.BUILD, made_up.STANDARD)
    good = refusals(tree, parse(write(case, case.right)))
    bad = refusals(tree, parse(write(case, case.right + [case.wrong])))
    if good:
        return [f"{case.source}: refused without need: {good}"]
    if len(bad) != 1 or case.wrong not in bad[0]:
        return [f"{case.source}: {case.wrong} was not refused"]
    return []


def refuse(_):
    found = []
    for case in made_up.CASES:
        found += fails_for(case, parse_ninja, made_up.as_ninja) + fails_for(case, parse_make, made_up.as_make)
    missed = set(LAYERS) - {layer_at(case.source) for case in made_up.CASES}
    found += [f"{layer}: no made-up case" for layer in sorted(missed)]
    tree = Tree(made_up.SOURCE, made_up.BUILD, made_up.STANDARD)
    if not refusals(tree, parse_make(made_up.OF_UNKNOWN_LAYER)):
        found.append("a layer without a list was not refused")
    if len(refusals_in_text("src/rules/day.cpp", made_up.TEXT)) != made_up.WRONG_LINES:
        found.append("a line that goes above its folder, or reads what only the system has, was not refused")
    print("\n".join(found) if found else f"{len(made_up.CASES)} wrong headers refused, from ninja and from .d files")
    return 1 if found else 0


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    commands = parser.add_subparsers(required=True)
    checking = commands.add_parser("check")
    for name in ("source", "build", "compiler"):
        checking.add_argument("--" + name, required=True)
    checking.add_argument("--ninja", default="")
    checking.set_defaults(act=check)
    commands.add_parser("refuse").set_defaults(act=refuse)
    options = parser.parse_args()
    sys.exit(options.act(options))


if __name__ == "__main__":
    main()
