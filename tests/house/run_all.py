#!/usr/bin/env python3
"""Runs every test program of a build folder and adds up what they say.

usage: run_all.py BUILD

A test program is BUILD/*_tests (GoogleTest; counts from its JSON report). A program that ends without a report counts as one failed test.
Scripts listed in tests/house/scripts run with BUILD as their word; each test function of theirs prints 'ok NAME' or 'short NAME: why'.
Last line: 'N passed, N failed'.
"""
import json
import os
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
MOST_SECONDS = 1800
AT_A_TIME = 2
LONG = ["ui_tests", "store_tests", "sheets_tests", "geometry_tests", "app_tests"]  # begun first


def run_program(program, folder, environment):
    """Gives what it said, how many passed and how many failed. Each has a data folder of its own: two run at a time."""
    report = folder / (program.name + ".json")
    environment = dict(environment, XDG_DATA_HOME=str(folder / (program.name + ".data")))
    done = subprocess.run([str(program), "--gtest_brief=1", f"--gtest_output=json:{report}"], env=environment,
                          timeout=MOST_SECONDS, check=False, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    told = done.stdout.decode("utf-8", "replace")
    if not report.exists():
        return told + f"short {program.name}: ended with {done.returncode} and no report\n", 0, 1
    said = json.loads(report.read_text(encoding="utf-8"))
    failed = said["failures"] + said.get("errors", 0)
    if done.returncode != 0 and failed == 0:
        failed = 1
        told += f"short {program.name}: ended with {done.returncode}\n"
    return told, said["tests"] - said["failures"] - said["disabled"], failed


def longest_first(program):
    return (LONG.index(program.name) if program.name in LONG else len(LONG), program.name)


def run_script(script, build, environment):
    done = subprocess.run([sys.executable, str(script), str(build)], env=environment, timeout=MOST_SECONDS, check=False,
                          capture_output=True, text=True)
    lines = (done.stdout + done.stderr).splitlines()
    passed = sum(line.startswith("ok ") for line in lines)
    failures = [line for line in lines if not line.startswith("ok ")]
    for line in failures:
        print(line)
    failed = sum(line.startswith("short ") for line in lines)
    if done.returncode != 0 and failed == 0:
        failed = 1
    if passed + failed == 0:
        print(f"short {script.name}: said nothing")
        failed = 1
    return passed, failed


def main():
    build = Path(sys.argv[1]).resolve()
    passed = failed = 0
    with tempfile.TemporaryDirectory() as folder:
        folder = Path(folder)
        environment = dict(os.environ, XDG_DATA_HOME=str(folder / "data"), QT_QPA_PLATFORM="offscreen")
        programs = sorted(build.glob("*_tests"), key=longest_first)
        with ThreadPoolExecutor(AT_A_TIME) as pool:
            for program, (told, good, bad) in zip(programs, pool.map(lambda each: run_program(each, folder, environment), programs)):
                print(f"-- {program.name}\n{told}", flush=True)
                passed, failed = passed + good, failed + bad
        for line in (TESTS / "house" / "scripts").read_text(encoding="utf-8").split():
            print(f"-- {line}", flush=True)
            good, bad = run_script(TESTS / line, build, environment)
            passed, failed = passed + good, failed + bad
        if not programs:
            print("short: no test program was built")
            failed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
