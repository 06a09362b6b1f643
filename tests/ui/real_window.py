#!/usr/bin/env python3
"""The window on a real display (Xvfb), not only offscreen. usage: real_window.py BUILD

Prints 'ok NAME' or 'short NAME: why' for each check.
"""
import os
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path


def start_display():
    """An X server on a number that it chooses itself; gives (process, ':N')."""
    read_end, write_end = os.pipe()
    server = subprocess.Popen(["Xvfb", "-displayfd", str(write_end), "-screen", "0", "1600x1000x24", "-nolisten", "tcp"],
                              pass_fds=[write_end], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(write_end)
    with os.fdopen(read_end) as said:
        number = said.readline().strip()
    return server, ":" + number


def say(name, why):
    print(f"short {name}: {why}" if why else f"ok {name}")
    return bool(why)


def tasks_on_a_display(build, environment):
    done = subprocess.run([str(build / "ui_tests"), "--gtest_filter=Tasks.*:PlanView.*", "--gtest_brief=1"],
                          env=environment, timeout=600, check=False, capture_output=True, text=True)
    return "" if done.returncode == 0 else done.stdout[-1500:] + done.stderr[-500:]


def jobs_in(folder):
    book = next(Path(folder).rglob("book.sqlite"), None)
    if book is None:
        return None
    with sqlite3.connect(f"file:{book}?mode=ro", uri=True) as database:
        return [row[0] for row in database.execute("SELECT name FROM jobs")]


def program_opens_and_keeps_the_demo_job(build, environment, folder):
    program = subprocess.Popen([str(build / "groundcourse")], env=environment, stdout=subprocess.PIPE,
                               stderr=subprocess.PIPE, text=True)
    try:
        for _ in range(100):
            time.sleep(0.1)
            if program.poll() is not None:
                return f"ended with {program.returncode}: {program.stderr.read()}"
            try:
                names = jobs_in(folder)
            except sqlite3.Error:
                names = None
            if names:
                break
        else:
            return "no job in the book after ten seconds"
        time.sleep(1.0)
        if program.poll() is not None:
            return f"ended with {program.returncode}"
        return "" if len(names) == 1 else f"jobs: {names}"
    finally:
        program.send_signal(signal.SIGKILL)
        program.wait()


def without_a_display(build, environment):
    bare = {key: value for key, value in environment.items() if key not in ("DISPLAY", "QT_QPA_PLATFORM")}
    done = subprocess.run([str(build / "groundcourse")], env=bare, timeout=30, check=False, capture_output=True, text=True)
    lines = done.stderr.strip().splitlines()
    return "" if done.returncode == 1 and len(lines) == 1 and "display" in lines[0] else f"{done.returncode}: {done.stderr}"


def main():
    build = Path(sys.argv[1]).resolve()
    if not (build / "ui_tests").exists():  # the build that is watched by sanitizers has no window
        print("ok no window in this build")
        return 0
    server, display = start_display()
    bad = False
    try:
        with tempfile.TemporaryDirectory() as folder:
            environment = dict(os.environ, DISPLAY=display, QT_QPA_PLATFORM="xcb", XDG_DATA_HOME=folder,
                               XDG_CONFIG_HOME=folder, XDG_CACHE_HOME=folder, XDG_STATE_HOME=folder)
            bad |= say("tasks on a real display", tasks_on_a_display(build, environment))
            bad |= say("the program opens and keeps the demo job",
                       program_opens_and_keeps_the_demo_job(build, environment, folder))
            bad |= say("without a display one sentence", without_a_display(build, environment))
    finally:
        server.terminate()
        server.wait()
    return 1 if bad else 0


sys.exit(main())
