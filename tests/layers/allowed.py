"""What each layer may see. DEVELOPERS.md has the picture; the order is ui, paper, cli over desk over records over rules."""

# Folder of the sources: layer.
FOLDERS = {
    "src/rules": "rules",
    "src/records": "records",
    "src/words": "words",
    "src/figures": "figures",
    "src/desk": "desk",
    "src/paper": "paper",
    "db": "db",
    "ui": "ui",
    "src/cli": "cli",
}

# A header of another layer brings its own headers along, so each list holds what its layers' headers need.
# "zone" is date's tz.h: which day it is depends on the zone, and rules are given the day.
LAYERS = {
    "rules": {"rules", "date"},
    "records": {"records", "rules", "date", "nlohmann", "sodium"},
    "words": {"words", "rules", "date", "fmt"},
    "figures": {"figures", "rules", "date"},
    "desk": {"desk", "records", "rules", "date", "zone", "nlohmann"},
    "db": {"db", "records", "rules", "date", "nlohmann", "SQLiteCpp", "sqlite3"},
    "ui": {"ui", "desk", "words", "figures", "records", "rules", "date", "nlohmann", "imgui", "GLFW", "GL", "qrencode",
           "turbojpeg", "cairo", "fmt"},
    "paper": {"paper", "desk", "words", "figures", "records", "rules", "date", "nlohmann", "cairo", "pango", "qrencode", "fmt"},
    "cli": {"cli", "ui", "db", "paper", "desk", "words", "figures", "records", "rules", "date", "zone", "nlohmann", "fmt",
            "SQLiteCpp", "sqlite3", "imgui", "GLFW", "GL"},
}

# Single files that may see more; "system" is what POSIX or Linux has.
OWN_FILES = {
    "db/key_file.cpp": {"system"},
    "db/private_copy.cpp": {"system"},
    "src/cli/arguments.cpp": {"CLI11"},
    "src/cli/boot_clock.cpp": {"system"},
    "src/paper/canvas.cpp": {"system"}, # pango's headers bring dirent.h along
    "src/cli/terminal.cpp": {"system"},
    "src/desk/csv_in.cpp": {"csv"},
    "src/words/language.cpp": {"system"}, # gettext is the C library's own
}

# Packages by where their headers stand. The first that fits counts.
PACKAGES = {
    "date": r"/date/date\.h$",
    "zone": r"/date/",
    "nlohmann": r"/nlohmann/",
    "qrencode": r"/qrencode\.h$",
    "turbojpeg": r"/turbojpeg\.h$",
    "cairo": r"/cairo(-pdf)?\.h$|/cairo/",
    "pango": r"/(pango|pango-1\.0|glib-2\.0|harfbuzz)/", # pango's own headers bring these along
    "csv": r"/csv\.h$",
    "sodium": r"/sodium(\.h$|/)",
    "fmt": r"/fmt/",
    "SQLiteCpp": r"/SQLiteCpp/",
    "sqlite3": r"/sqlite3(ext)?\.h$",
    "imgui": r"/(imgui/|im(gui|config)[^/]*\.h$)",
    "GLFW": r"/GLFW/",
    "GL": r"/(GL|GLES\d?|KHR)/",
    "CLI11": r"/CLI/",
}

STANDARD_HEADERS = """
algorithm any array atomic barrier bit bitset charconv chrono codecvt compare complex concepts condition_variable
coroutine deque exception execution filesystem format forward_list fstream functional future initializer_list iomanip
ios iosfwd iostream istream iterator latch limits list locale map memory memory_resource mutex new numbers numeric
optional ostream queue random ranges ratio regex scoped_allocator semaphore set shared_mutex source_location span
sstream stack stdexcept stop_token streambuf string string_view strstream syncstream system_error thread tuple
type_traits typeindex typeinfo unordered_map unordered_set utility valarray variant vector version
cassert cctype cerrno cfenv cfloat cinttypes climits clocale cmath csetjmp csignal cstdarg cstddef cstdint cstdio
cstdlib cstring ctime cuchar cwchar cwctype
assert.h ctype.h errno.h fenv.h float.h inttypes.h limits.h locale.h math.h setjmp.h signal.h stdarg.h stddef.h
stdint.h stdio.h stdlib.h string.h time.h uchar.h wchar.h wctype.h iso646.h stdalign.h stdbool.h
""".split()
