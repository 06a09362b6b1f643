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
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent
MOST_SECONDS = 1800


def run_program(program, folder, environment):
    report = folder / (program.name + ".json")
    done = subprocess.run([str(program), "--gtest_brief=1", f"--gtest_output=json:{report}"], env=environment,
                          timeout=MOST_SECONDS, check=False)
    if not report.exists():
        print(f"short {program.name}: ended with {done.returncode} and no report")
        return 0, 1
    said = json.loads(report.read_text(encoding="utf-8"))
    failed = said["failures"] + said.get("errors", 0)
    if done.returncode != 0 and failed == 0:
        failed = 1
        print(f"short {program.name}: ended with {done.returncode}")
    return said["tests"] - said["failures"] - said["disabled"], failed


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
        programs = sorted(build.glob("*_tests"))
        for program in programs:
            print(f"-- {program.name}", flush=True)
            good, bad = run_program(program, folder, environment)
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
