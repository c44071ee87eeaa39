"""Whether the program stays up under real keys, on a virtual display.

Each walk starts the whole program on a demonstration under Xvfb and presses keys, chosen by a
seed, as a person would who knows no pointer: pages, Tab, arrows, Space, Return, Escape, undo,
redo, bench mode, other sizes of the window.  At the end it is told to close as at a logout, and
has to do so.  A row tells how it ended, how often something was raised within Qt or said on
standard error, and the memory and files held after a third of the walk and at its end.
Needs Xvfb and xdotool.  Run it as
``python tests/benchmarks/walk_by_keys.py [--seeds 1-4] [--acts 500]``.
"""

from __future__ import annotations

import argparse
import os
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from app.service import demos
from storage.bench_book import BenchBook

DEMO = "harbour_tenders"
ROOT = Path(__file__).parent.parent.parent
PAUSE = 0.1  # between two acts [s], as a quick person's
FOCUS_EVERY = 15  # acts: without a window manager nobody else hands the keys to a new window
FAULTS = ("already deleted", "Error calling Python override", "Traceback", "QObject", "Fatal")
KEYS = (
    *("tab", "tab", "back", "back", "back"),
    *("Down", "Down", "Down", "Up", "Left", "Right", "End"),
    *("space", "Return", "Escape", "Escape", "ctrl+z", "ctrl+shift+z", "F11", "F4", "size"),
)
NAMES = {"tab": "Tab", "back": "shift+Tab"}


def display() -> tuple[subprocess.Popen[str], str]:
    """Return a virtual display and its name."""
    reading, writing = os.pipe()
    command = ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1800x1100x24"]
    server = subprocess.Popen(command, pass_fds=(writing,), stderr=subprocess.DEVNULL, text=True)
    os.close(writing)
    with os.fdopen(reading) as told:
        return server, f":{told.readline().strip()}"


def asked(env: dict[str, str], *words: str) -> str:
    """Return what xdotool says."""
    return subprocess.run(
        ["xdotool", *words], env=env, capture_output=True, text=True, check=False
    ).stdout.strip()


def windows(env: dict[str, str]) -> list[str]:
    """Return the program's windows on screen, the last one made at the end."""
    return asked(env, "search", "--onlyvisible", "--class", "tackfree|python|__main__").split()


def held(pid: int) -> tuple[int, int]:
    """Return the memory [MB] and the number of files that a process holds."""
    try:
        lines = Path(f"/proc/{pid}/status").read_text(encoding="ascii").splitlines()
        kilo = next(int(line.split()[1]) for line in lines if line.startswith("VmRSS"))
        return kilo // 1024, len(os.listdir(f"/proc/{pid}/fd"))
    except (OSError, StopIteration):
        return 0, 0


class Walk:
    """One start of the program, and keys."""

    def __init__(self, seed: int, acts: int, env: dict[str, str], home: Path) -> None:
        self._drawn = random.Random(seed)
        self._acts, self._env = acts, {**env, "HOME": str(home)}
        self._said = home / "said"
        book = home / "bench.tackfree"
        run = [sys.executable, "-X", "faulthandler", "-m", "app", "--book", str(book)]
        BenchBook.create(book, demos.read(DEMO).book).close()
        with self._said.open("w") as said:
            self._program = subprocess.Popen(run, cwd=home, env=self._env, stdout=said, stderr=said)
        self._keys = subprocess.Popen(
            ["xdotool", "-"], stdin=subprocess.PIPE, env=self._env, text=True,
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip

    def run(self) -> str:
        """Walk, and return the rest of the row."""
        until = time.monotonic() + 60
        while not windows(self._env) and time.monotonic() < until:
            time.sleep(0.2)
        if not windows(self._env):
            self._program.kill()
            return "no window came"
        time.sleep(3)
        first = (0, 0)
        done = 0
        for done in range(1, self._acts + 1):
            if self._program.poll() is not None:
                break
            if done % FOCUS_EVERY == 1:
                self._focus()
            self._act()
            time.sleep(PAUSE)
            if done == self._acts // 3:
                first = held(self._program.pid)
        last = held(self._program.pid)
        ended = self._close()
        said = self._said.read_text(errors="replace").splitlines()
        faults = [line for line in said if any(word in line for word in FAULTS)]
        line = f"{done:>6}{ended:>12}{len(faults):>8}{first[0]:>7} →{last[0]:>4}"
        line += f"{first[1]:>7} →{last[1]:>3}"
        return "\n      ".join([line, *(said[:20] if faults else ())])

    def _focus(self) -> None:
        shown = windows(self._env)
        if shown:
            asked(self._env, "windowfocus", shown[-1])

    def _act(self) -> None:
        if self._drawn.random() < 0.4:
            what = f"key ctrl+{self._drawn.randrange(10)}"
        else:
            key = self._drawn.choice(KEYS)
            what = f"key {NAMES.get(key, key)}"
            if key == "size":
                first = (windows(self._env) or ["0"])[0]
                wide, tall = self._drawn.randrange(700, 1700), self._drawn.randrange(500, 1000)
                what = f"windowsize {first} {wide} {tall}"
        stream = self._keys.stdin
        assert stream is not None
        try:
            stream.write(what + "\n")
            stream.flush()
        except BrokenPipeError:
            return

    def _close(self) -> str:
        """Tell the program to close; return how it did."""
        assert self._keys.stdin is not None
        self._keys.stdin.close()
        self._keys.wait(10)
        if self._program.poll() is not None:
            return f"died {self._program.returncode}"
        self._program.send_signal(signal.SIGTERM)
        try:
            return f"closed {self._program.wait(20)}"
        except subprocess.TimeoutExpired:
            self._program.kill()
            return "hung"


def main() -> None:
    """Print the table; exit with 1 if any walk met a fault."""
    reading = argparse.ArgumentParser()
    reading.add_argument("--seeds", default="1-4", help="one, or the first and the last")
    reading.add_argument("--acts", type=int, default=500)
    given = reading.parse_args()
    for tool in ("Xvfb", "xdotool"):
        if shutil.which(tool) is None:
            sys.exit(f"{tool} is needed")
    server, name = display()
    env = {**os.environ, "DISPLAY": name, "QT_QPA_PLATFORM": "xcb", "PYTHONPATH": str(ROOT)}
    first, _, last = given.seeds.partition("-")
    faults = 0
    try:
        print(f"{'seed':>5}{'acts':>6}{'ended':>12}{'faults':>8}{'MB':>12}{'files':>11}")
        for seed in range(int(first), int(last or first) + 1):
            with tempfile.TemporaryDirectory() as home:
                told = Walk(seed, given.acts, env, Path(home)).run()
            print(f"{seed:>5}{told}", flush=True)
            words = told.split()
            faults += words[1:4] != ["closed", "0", "0"]
    finally:
        server.terminate()
    print(f"{faults} walks with a fault")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
