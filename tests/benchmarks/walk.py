"""Whether the window stays up, and how much it holds, on long seeded walks by a tireless person.

Each walk is a process of its own: the program's own window, offscreen, on a demonstration;
``tests/walking.py`` says what is done in it.  A row tells of a seed: how the process ended,
how many exceptions and messages came from within Qt, how much hung on a stranger in the
binding's books, and what was held once the warm-up was over and at the end.  Memory
is told in the middle, too: growth and a late first look at a page can so be told apart.  Run it as
``python tests/benchmarks/walk.py [--seeds 1-10] [--acts 1000] [--warm 500] [--collect]``;
``--collect`` searches for garbage after each act.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import time
from collections import Counter
from pathlib import Path
from typing import Any

WALKING = Path(__file__).parent.parent / "walking.py"
HELD = ("memory", "wrapped", "widgets", "timers", "handles", "threads")
EVERY = 100  # acts between two looks at what is held


def walk(seed: int, acts: int, *, collect: bool) -> tuple[int, dict[str, Any], str]:
    """Return how a walk ended, what it told and what it wrote beside that."""
    command = [sys.executable, "-X", "faulthandler", str(WALKING)]
    command += ["--seed", str(seed), "--acts", str(acts), "--every", str(EVERY)]
    ended = subprocess.run(
        command + ["--collect"] * collect, capture_output=True, text=True, check=False
    )
    told = ended.stdout.strip().splitlines()
    whole = bool(told) and told[-1].startswith("{")
    return ended.returncode, json.loads(told[-1]) if whole else {}, ended.stderr


def row(seed: int, status: int, told: dict[str, Any], begin: int, seconds: float) -> str:
    """Return one line of the table; memory in MB, at the end of the warm-up and of the walk."""
    line = f"{seed:>5}{status:>6}"
    if not told:
        return line + "  died"
    line += f"{len(told['told']):>8}{len(told['strange']):>9}"
    first, last = told["rests"][begin], told["rests"][-1]
    for name in HELD:
        a, b = first[name], last[name]
        if name == "memory":
            middle = told["rests"][(begin + len(told["rests"]) - 1) // 2][name]
            line += f"{a / 1024:>6.0f} →{middle / 1024:>4.0f} →{b / 1024:>4.0f}"
            line += f" ({(b - a) / max(a, 1):+.1%}, {(b - middle) / max(middle, 1):+.1%})"
        else:
            line += f"{a:>7} →{b:>5}"
    return line + f"{seconds:>7.0f} s"


def main() -> None:
    """Print the table; exit with 1 if any walk met a fault."""
    reading = argparse.ArgumentParser()
    reading.add_argument("--seeds", default="1-10", help="one, or the first and the last")
    reading.add_argument("--acts", type=int, default=1000)
    reading.add_argument("--warm", type=int, default=500, help="acts before the first look")
    reading.add_argument("--collect", action="store_true")
    asked = reading.parse_args()
    first, _, last = asked.seeds.partition("-")
    print(
        " seed  ends  raised  strange"
        + f"{HELD[0]:>33}"
        + "".join(f"{name:>14}" for name in HELD[1:]),
        flush=True,
    )
    faults, met = 0, Counter[str]()
    for seed in range(int(first), int(last or first) + 1):
        begun = time.monotonic()
        status, told, beside = walk(seed, asked.acts, collect=asked.collect)
        begin = min(asked.warm // EVERY, len(told.get("rests", ())) - 1)
        print(row(seed, status, told, begin, time.monotonic() - begun), flush=True)
        met.update(told.get("told", ()))
        met.update(told.get("strange", ()))
        short = bool(told) and sum(told["done"].values()) < asked.acts  # ended from outside
        if short:
            met["a walk that was cut short"] += 1
        if status or not told or short or told["told"] or told["strange"]:
            faults += 1
        if not told:
            print(beside[-2000:], flush=True)
    print(f"{faults} walks with a fault")
    for what, times in met.most_common(12):
        print(f"{times:>6} × {what}")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
