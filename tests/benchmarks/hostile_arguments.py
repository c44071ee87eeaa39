"""Every command with every kind of argument, sensible and odd.

``python tests/benchmarks/hostile_arguments.py [--count N] [--seed S] [--minutes M]``

Commands and options are read off the parser itself; a value is a file of some kind, a name, a
time or a number that may suit, or something that suits nothing.  A command must end with status
0, 1 or 2, and with 2 must say one line; none may raise, speak of an internal error or take over
twenty seconds.
"""

from __future__ import annotations

import argparse
import io
import os
import random
import shutil
import signal
import sys
import tempfile
import time
from collections import Counter
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from app.command_line.run import COMMANDS, main, parser
from app.service import demos
from storage.bench_book import BenchBook

SLOW_SECONDS = 20
BOOK = demos.read("harbour_tenders").book
FIRST = BOOK.projects[0]
MODEL = FIRST.models[0]
NAMES = (
    *(
        FIRST.name,
        MODEL.name,
        MODEL.parts[0].name,
        BOOK.coatings[0].name,
        BOOK.room.locations[0].name,
    ),
    *(MODEL.steps[0].id, f"{FIRST.name}/{MODEL.name}/{MODEL.steps[0].id}"),
    *(
        f"{MODEL.name}/{MODEL.steps[0].id}",
        f"{MODEL.name}/{MODEL.steps[3].id}/1",
        BOOK.bench_time.zone,
    ),
)
TIMES = ("2026-03-03T19:30", "2026-03-03T19:30+01:00", "2026-03-29T02:30", "2026-03-07", "19:30")
NUMBERS = ("0", "1", "2", "30", "-1", "0.5", "12,5", "100")
ODD = (
    *("", " ", "-", "--", "x", "\x00", "\n", "a\nb", "é塗", "\udcff", "'", "%s", "{}", "x" * 5000),
    *("../..", "/", ".", "nan", "inf", "1e999", "-1e9", "9" * 30, "٣", "0x10", "1_000", "None"),
    *("0001-01-01T00:00", "9999-12-31T23:59", "2026-02-30T10:00", "2026-03-03T25:00", "24:00"),
    *("/dev/null", "/dev/zero", "/proc/self/mem", "nowhere/x.json", "file:///etc/passwd", "~"),
    *("true", "//", "a/b/c/d/e", "CON"),
)  # fmt: skip


class TookTooLong(BaseException):
    """Twenty seconds have gone by."""


def _alarm(*_: object) -> None:
    raise TookTooLong


def laid_out(folder: Path) -> tuple[str, ...]:
    """Make files of every kind; return their names."""
    BenchBook.create(folder / "bench.tackfree", BOOK).close()
    (folder / "tenders.json").write_bytes(demos.data("harbour_tenders"))
    (folder / "garage.json").write_bytes(demos.data("winter_garage"))
    (folder / "half.json").write_bytes(demos.data("winter_garage")[:5000])
    (folder / "paints.csv").write_text("kind;colour\nacrylic;sand\n", "utf-8")
    (folder / "air.csv").write_text(
        "time,temperature,humidity\n2026-03-01 10:00,20,50\n2026-03-01 11:00,21,51\n", "utf-8"
    )
    (folder / "empty").write_bytes(b"")
    (folder / "folder").mkdir()
    with redirect_stdout(io.StringIO()) as told, redirect_stderr(io.StringIO()):
        main(["plan", str(folder / "tenders.json"), "--json", "--now", TIMES[0]])
    (folder / "plan.json").write_text(told.getvalue(), "utf-8")
    return tuple(sorted(one.name for one in folder.iterdir()))


def options_of(command: str) -> tuple[list[argparse.Action], list[argparse.Action]]:
    """Return what stands without a name, and what with one."""
    whole = parser([command])
    inner = next(one for one in whole._actions if isinstance(one, argparse._SubParsersAction))
    actions = [
        one for one in inner.choices[command]._actions if not isinstance(one, argparse._HelpAction)
    ]
    bare = [one for one in actions if not one.option_strings]
    return bare, [one for one in actions if one.option_strings]


def value(action: argparse.Action, files: tuple[str, ...], drawn: random.Random) -> str:
    """Return something for one argument."""
    if action.dest == "seconds":  # what it says is how long it takes
        return drawn.choice(("0", "1", "-1", "nan", "x", "1e999"))
    if action.choices and drawn.random() < 0.7:
        return str(drawn.choice(list(action.choices)))
    new = ("new.json", "new.zip", "new.csv", "new.html", "new.ics", "new.tackfree")
    what = f"{action.metavar} {action.dest}"
    if drawn.random() < 0.25:
        kind: tuple[str, ...] = drawn.choice((files, NAMES, TIMES, NUMBERS, ODD, ODD, ODD, new))
    elif action.type is Path or any(one in what for one in ("X.", "FILE", "ZIP", "book", "COPY")):
        kind = drawn.choice((files, files, new))
    elif action.metavar == "T" or "now" in what:
        kind = TIMES
    else:
        kind = drawn.choice((NAMES, NAMES, NUMBERS))
    return drawn.choice(kind)


def arguments(files: tuple[str, ...], drawn: random.Random) -> list[str]:
    """Return a command with arguments."""
    command = drawn.choice([one for one in COMMANDS if one not in ("desktop", "open")])
    bare, named = options_of(command)
    given = [command]
    for action in drawn.sample(named, min(len(named), drawn.choice((0, 1, 1, 2, 3)))):
        given.append(drawn.choice(action.option_strings))
        count = action.nargs if isinstance(action.nargs, int) else 1
        given += [value(action, files, drawn) for _ in range(count)]
    for action in bare:
        if isinstance(action, argparse._SubParsersAction):
            given += [str(drawn.choice([*action.choices, "x"]))]
        elif drawn.random() < 0.8:
            given.append(value(action, files, drawn))
    if drawn.random() < 0.6 and any("--book" in one.option_strings for one in named):
        given += ["--book", "bench.tackfree"]
    if drawn.random() < 0.6 and any("--now" in one.option_strings for one in named):
        given += ["--now", TIMES[0]]
    return given


def tried(given: list[str], met: Counter[str]) -> str:
    """Run one command; return what was wrong, "" for nothing."""
    out, beside = io.StringIO(), io.StringIO()
    signal.setitimer(signal.ITIMER_PROF, SLOW_SECONDS)  # of the processor
    try:
        with redirect_stdout(out), redirect_stderr(beside):
            status = main(given)
    except TookTooLong:
        return "over twenty seconds"
    except Exception as problem:
        return repr(problem)[:300]
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
    met[f"status {status}"] += 1
    met[f"status {status} of {given[0]}"] += 1
    told = beside.getvalue()
    lines = [line for line in told.split("\n") if line]
    if "internal error" in told or "Traceback" in told or "Traceback" in out.getvalue():
        return told[-300:]
    if status not in (0, 1, 2):
        return f"status {status}: {told[:200]}"
    if status == 2 and len([line for line in lines if not line.startswith("planning")]) != 1:
        return f"{len(lines)} lines: {told[:300]!r}"
    return ""


def run(count: int, seed: int, minutes: float) -> Counter[str]:
    """Try so many commands, or as many as the minutes allow."""
    met: Counter[str] = Counter()
    signal.signal(signal.SIGPROF, _alarm)
    end = time.monotonic() + 60 * minutes
    with tempfile.TemporaryDirectory(prefix="tackfree-arguments-") as whole:
        kept = Path(whole) / "kept"
        kept.mkdir()
        files = laid_out(kept)
        for name in ("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME"):
            os.environ[name] = str(Path(whole) / "home")
        for number in range(count):
            if time.monotonic() > end:
                break
            here = Path(whole) / "here"
            shutil.copytree(kept, here)
            os.chdir(here)
            sys.stdin = io.StringIO("")
            given = arguments(files, random.Random(f"{seed} {number}"))
            met["commands"] += 1
            wrong = tried(given, met)
            if wrong:
                met["WRONG"] += 1
                print(f"  {[one[:60] for one in given]}: {wrong}", flush=True)
            os.chdir("/")
            shutil.rmtree(here)
    return met


def _main() -> None:
    reading = argparse.ArgumentParser(description=__doc__)
    reading.add_argument("--count", type=int, default=1_000)
    reading.add_argument("--seed", type=int, default=1)
    reading.add_argument("--minutes", type=float, default=60.0)
    asked = reading.parse_args()
    for what, times in sorted(run(asked.count, asked.seed, asked.minutes).items()):
        print(f"{times:>6} {what}")


if __name__ == "__main__":
    _main()
