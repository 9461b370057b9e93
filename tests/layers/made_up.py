"""Made-up dependencies with one wrong header each, to show that the check refuses it."""

import collections

SOURCE = "/made-up/cotter"
BUILD = "/made-up/build"
STANDARD = {"/usr/include/c++/12/vector", "/usr/include/stdint.h"}

# Source, headers that its layer may see, one that it may not.
Case = collections.namedtuple("Case", "source right wrong")


def ours(*names):
    return [f"{SOURCE}/{name}" for name in names]


def theirs(*names):
    return [f"/usr/include/{name}" for name in names]


EVERYWHERE = sorted(STANDARD) + ours("src/rules/day.hpp") + theirs("date/date.h")

CASES = [
    Case("src/rules/decide.cpp", EVERYWHERE, "/usr/include/sqlite3.h"),
    Case("src/rules/day.cpp", EVERYWHERE, "/usr/include/date/tz.h"),
    Case("src/rules/sling.cpp", EVERYWHERE, "/usr/include/nlohmann/json.hpp"),
    Case("src/rules/mass.cpp", EVERYWHERE, f"{SOURCE}/src/records/form.hpp"),
    Case("src/rules/zone.cpp", EVERYWHERE, f"{SOURCE}/src/rules/../rules/day.hpp"),
    Case("src/rules/load.cpp", EVERYWHERE, "/usr/include/unistd.h"),
    Case("src/records/fold.cpp", EVERYWHERE + theirs("nlohmann/json.hpp", "sodium.h", "sodium/core.h"),
         "/usr/include/SQLiteCpp/Database.h"),
    Case("src/records/record.cpp", EVERYWHERE, f"{SOURCE}/src/desk/work.hpp"),
    Case("src/words/says.cpp", EVERYWHERE + theirs("fmt/format.h"), "/usr/include/nlohmann/json.hpp"),
    Case("src/words/amounts.cpp", EVERYWHERE, f"{SOURCE}/src/records/record.hpp"),
    Case("src/figures/figure.cpp", EVERYWHERE, "/usr/include/imgui/imgui.h"),
    Case("src/figures/figure.cpp", EVERYWHERE, f"{SOURCE}/src/words/amounts.hpp"),
    Case("src/desk/local_time.cpp", EVERYWHERE + theirs("date/tz.h", "nlohmann/json.hpp"), "/usr/include/imgui/imgui.h"),
    Case("src/desk/work.cpp", EVERYWHERE + ours("src/records/book.hpp"), f"{SOURCE}/db/store.hpp"),
    Case("src/desk/work.cpp", EVERYWHERE, f"{SOURCE}/src/words/amounts.hpp"),
    Case("db/store.cpp", EVERYWHERE + ours("src/records/book.hpp") + theirs("SQLiteCpp/Database.h", "sqlite3.h"),
         f"{SOURCE}/src/desk/register.hpp"),
    Case("db/store.cpp", EVERYWHERE, "/usr/include/unistd.h"),
    Case("db/key_file.cpp", EVERYWHERE + theirs("unistd.h"), "/usr/include/sodium.h"),
    Case("ui/theme.cpp", EVERYWHERE + theirs("imgui/imgui.h", "GLFW/glfw3.h", "GL/gl.h") + ours("src/figures/figure.hpp"),
         "/usr/include/SQLiteCpp/Database.h"),
    Case("ui/theme.cpp", EVERYWHERE, f"{SOURCE}/db/store.hpp"),
    Case("src/paper/document.cpp", EVERYWHERE + theirs("cairo/cairo.h", "pango-1.0/pango/pango.h", "qrencode.h")
         + ours("src/desk/register.hpp", "src/words/amounts.hpp"), f"{SOURCE}/db/store.hpp"),
    Case("src/paper/table.cpp", EVERYWHERE, f"{SOURCE}/ui/theme.hpp"),
    Case("ui/app.cpp", EVERYWHERE, f"{SOURCE}/src/paper/document.hpp"),
    Case("src/cli/command_day.cpp", EVERYWHERE + ours("src/paper/pages.hpp"), "/usr/include/cairo/cairo.h"),
    Case("src/cli/run.cpp", EVERYWHERE + ours("db/store.hpp", "ui/theme.hpp") + theirs("sqlite3.h"),
         "/usr/include/sodium.h"),
    Case("src/cli/arguments.cpp", EVERYWHERE + theirs("CLI/CLI.hpp"), "/usr/include/doctest/doctest.h"),
    Case("src/cli/run.cpp", EVERYWHERE, "/usr/include/CLI/CLI.hpp"),
]

OF_UNKNOWN_LAYER = f"CMakeFiles/cellar.dir/src/cellar/wine.cpp.o: {SOURCE}/src/cellar/wine.cpp /usr/include/stdint.h\n"

TEXT = """#include "day.hpp"
  #include "../db/store.hpp"
#include <unistd.h>
# include <sys/stat.h>
#include <vector> // not ../vector
#include <date/date.h>
"""
WRONG_LINES = 3


def target(case):
    return f"CMakeFiles/made.dir/{case.source}.o"


def as_ninja(case, headers):
    paths = [f"{SOURCE}/{case.source}", *headers]
    return "\n".join([f"{target(case)}: #deps {len(paths)}, deps mtime 1 (VALID)", *("    " + path for path in paths), ""])


def as_make(case, headers):
    return f"{target(case)}: {SOURCE}/{case.source} \\\n " + " \\\n ".join(headers) + "\n"
