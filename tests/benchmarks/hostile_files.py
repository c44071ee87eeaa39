"""Exchange files that were changed at random, through import, check, plan and export.

``python tests/benchmarks/hostile_files.py [--count N] [--seed S] [--minutes M]``

Each file is a demonstration with some of its JSON, or some of its bytes,
exchanged.  It must be refused in one line, or be taken in, checked, planned
and written out again as it was read; nothing may take over five seconds or
a gigabyte.  What ends otherwise is written to ``--keep FOLDER``.
"""

from __future__ import annotations

import argparse
import json
import random
import resource
import signal
import sys
import time
from dataclasses import dataclass, fields
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from app.service import demos, findings
from app.service.exporting import export
from app.service.importing import import_file
from app.service.planning import plan
from planner.values.refusal import Refused
from storage.exchange import load

SLOW_SECONDS = 5.0
MOST_BYTES = 2**30
ODD: tuple[Any, ...] = (
    *(None, True, False, 0, -1, 1, 2, 0.5, 1e-9, 1e12, 1e13, -1e300, 2**31, 2**63, 10**25),
    *("", " ", "x" * 201, "x" * 20_001, "\x00", "\ud800", "\u202e", "a/b", "../../etc", "é塗"),
    *("0001-01-01", "9999-12-31", "1971-01-01", "2199-12-31", "2031-02-29"),
    *("2031-03-30T02:30:00+01:00", "0001-01-01T00:00:00+00:00", "9999-12-31T23:59:00+00:00"),
    *("2199-12-31T23:59:00-12:00", "24:00", "00:00", "23:59", "02:30"),
    *("FREQ=SECONDLY", "FREQ=DAILY;COUNT=0", "FREQ=YEARLY;BYEASTER=0"),
    *("FREQ=DAILY;INTERVAL=99999999", "FREQ=MONTHLY;BYMONTHDAY=31", "Europe/Nowhere", "UTC"),
    *([], {}, [None], [[]], {"a": 1}),
)


@dataclass
class Count:
    """What came of the files."""

    files: int = 0
    refused: int = 0
    taken: int = 0
    silent: int = 0
    tracebacks: int = 0
    hangs: int = 0


class TookTooLong(BaseException):
    """Five seconds have gone by twice."""


def places(tree: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Return the path of everything in a JSON tree."""
    found = [path]
    pairs = (
        tree.items()
        if isinstance(tree, dict)
        else enumerate(tree)
        if isinstance(tree, list)
        else ()
    )
    for key, pair in pairs:
        found += places(pair, (*path, key))
    return found


def changed(data: bytes, drawn: random.Random) -> bytes:
    """Return an exchange file with something exchanged."""
    if drawn.random() < 0.15:
        raw = bytearray(data)
        for _ in range(drawn.randint(1, 8)):
            at = drawn.randrange(len(raw))
            raw[at : at + drawn.randint(0, 3)] = drawn.randbytes(drawn.randint(0, 3))
        return bytes(raw)
    tree = json.loads(data)
    for _ in range(drawn.choice((1, 1, 1, 2, 3, 6))):
        path = drawn.choice(places(tree)[1:])
        holder: Any = tree
        for key in path[:-1]:
            holder = holder[key]
        _change(holder, path[-1], drawn)
    return json.dumps(tree).encode("utf-8", "surrogatepass")


def _change(holder: Any, key: Any, drawn: random.Random) -> None:
    old = holder[key]
    how = drawn.random()
    if how < 0.15:
        del holder[key]
    elif how < 0.3 and isinstance(old, int | float) and not isinstance(old, bool):
        holder[key] = drawn.choice((old * 1000, -old, old + 0.5, old * 1e-6, round(old * 3), 0))
    elif how < 0.4 and isinstance(holder, list):
        holder.insert(drawn.randrange(len(holder) + 1), old)
    elif how < 0.5 and isinstance(old, list):
        drawn.shuffle(old)
    elif how < 0.55 and isinstance(old, list) and old:
        holder[key] = old * drawn.choice((2, 50))
    elif how < 0.6 and isinstance(holder, dict):
        holder[drawn.choice(("x", "name", "id", "__class__", ""))] = old
    else:
        holder[key] = drawn.choice(ODD)


def walk(data: bytes, mine: Any) -> str:
    """Take a file through everything; return "refused", "taken" or "silent".

    Raises
    ------
    Exception
        Whatever is no refusal: a fault.
    """
    try:
        exchange = load(data)
        book = exchange.book
        now = demos.first_evening(mine)
        again = load(export(book, (), exchange.note))
        if again != exchange:
            return "silent"
        import_file(mine, exchange, now=now)
        findings.find(book)
        plan(book, now, quick=True)
    except Refused as problem:
        if "\n" in str(problem) or len(str(problem)) > 2_000:
            raise AssertionError(str(problem)) from problem
        return "refused"
    return "taken"


def _alarm(*_: object) -> None:
    raise TookTooLong


def run(count: int, seed: int, minutes: float = 60.0, keep: Path | None = None) -> Count:
    """Try so many files, or as many as the minutes allow."""
    drawn = random.Random(seed)
    names = demos.names()
    mine = demos.read("lone_lamplighter").book
    found = Count()
    signal.signal(signal.SIGALRM, _alarm)
    end = time.monotonic() + 60 * minutes
    for number in range(count):
        if time.monotonic() > end:
            break
        weights = [1.0 / len(demos.data(name)) for name in names]
        data = changed(demos.data(drawn.choices(names, weights)[0]), drawn)
        began = time.process_time()
        found.files += 1
        signal.alarm(int(4 * SLOW_SECONDS))
        try:
            came = walk(data, mine)
            setattr(found, came, getattr(found, came) + 1)
        except TookTooLong:
            came = "hang"
        except Exception as problem:
            came = "traceback"
            found.tracebacks += 1
            print(f"  {number}: {problem!r}"[:300], flush=True)
        finally:
            signal.alarm(0)
        if time.process_time() - began > SLOW_SECONDS or came == "hang":
            found.hangs += 1
            print(f"  {number}: {time.process_time() - began:.1f} s", flush=True)
            came = "hang"
        if keep is not None and came not in ("refused", "taken"):
            (keep / f"{came}-{seed}-{number}.json").write_bytes(data)
    return found


def main() -> None:
    """Try the files and print what came of them."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=1_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--minutes", type=float, default=60.0)
    parser.add_argument("--keep", type=Path)
    args = parser.parse_args()
    if args.keep is not None:
        args.keep.mkdir(parents=True, exist_ok=True)
    resource.setrlimit(resource.RLIMIT_AS, (3 * MOST_BYTES, 3 * MOST_BYTES))
    found = run(args.count, args.seed, args.minutes, args.keep)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print("  ".join(f"{field.name} {getattr(found, field.name)}" for field in fields(Count)))
    print(f"largest {peak:.0f} MB")


if __name__ == "__main__":
    main()
