#!/usr/bin/env python3
"""House rules that the compiler can't see. usage: rules.py BUILD (not used)

Prints 'ok NAME' or 'short NAME: place' per rule.
"""
import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
LONGEST = {".cpp": 400, ".h": 200}
# Longer on purpose, each with its reason; nothing joins them without one.
LISTED = {
    "core/plan/element.h": 240,             # one small struct for each kind of element, read as one list
    "core/store/columns.h": 250,            # the columns of every table, named once for both ways
    "ui/words/crew_sheet_words.cpp": 600,   # a list of words, a line each
}
ORDER = ["problem", "units", "geometry", "catalogue", "plan", "sketch", "takeoff", "estimate", "results", "sheets", "files", "store"]
# files reads and writes what results makes, and store keeps what files can read: both may use what stands before them.


def sources(*folders):
    listed = subprocess.run(["git", "ls-files", *folders], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    return [ROOT / name for name in listed.split() if name.endswith((".cpp", ".h"))]


def lines_with(pattern, files):
    found = []
    for file in files:
        for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1):
            if re.search(pattern, line):
                found.append(f"{file.relative_to(ROOT)}:{number}")
    return found


def say(name, found):
    if found:
        print(f"short {name}: {', '.join(found[:5])}")
    else:
        print(f"ok {name}")
    return bool(found)


def in_core(file, part):
    return file.is_relative_to(ROOT / "core" / part)


def upward():
    found = []
    for file in sources("core"):
        part = file.relative_to(ROOT / "core").parts[0]
        for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1):
            used = re.match(r'#include "([a-z]+)/', line)
            if used and used[1] in ORDER and ORDER.index(used[1]) > ORDER.index(part):
                found.append(f"{file.relative_to(ROOT)}:{number}")
    return found


def too_long():
    found = []
    for file in sources("app", "core", "ui"):
        count = len(file.read_text(encoding="utf-8").splitlines())
        if count > LISTED.get(str(file.relative_to(ROOT)), LONGEST[file.suffix]):
            found.append(f"{file.relative_to(ROOT)} ({count})")
    return found


def main():
    core = sources("core")
    everything = sources("app", "core", "ui", "tests")
    bad = False
    bad |= say("no include climbs out of its folder", lines_with(r'#include "\.\./', everything))
    bad |= say("Boost.Geometry and GEOS only in core/geometry",
               lines_with(r"#include <(boost/geometry|geos)", [f for f in core if not in_core(f, "geometry")]))
    bad |= say("Boost.Geometry in at most three .cpp files",
               sorted({place.split(":")[0] for place in
                       lines_with(r"#include <boost/geometry", [f for f in core if f.suffix == ".cpp"])})[3:])
    bad |= say("Qt only in core/store", lines_with(r"#include <Q", [f for f in core if not in_core(f, "store")]))
    bad |= say("nothing in core asks the machine's locale",
               lines_with(r"\b(s?n?printf|strto[df]|sto[df]|atof|tolower|toupper|isalpha|isalnum|isspace)\s*\(", core))
    bad |= say("a folder uses only what stands below it", upward())
    bad |= say("no file longer than a room should be", too_long())
    bad |= say("no file globs in CMake",
               [str(f.relative_to(ROOT)) for f in ROOT.glob("**/CMakeLists.txt")
                if "build" not in f.parts and re.search(r"GLOB(?!.*CONFIGURE_DEPENDS)", f.read_text(encoding="utf-8"))])
    bad |= say("no path of one machine", lines_with(r"(^|[\s\"'=])/(work|farm|root|home)/", everything))
    return 1 if bad else 0


sys.exit(main())
