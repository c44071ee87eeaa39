"""The engine on families of batches and on the demos, beside two baselines and a library.

    python tests/benchmarks/engine.py [SIZES [SEEDS [SECONDS]]]
    python tests/benchmarks/engine.py 4,12,hard12 0-4 60 --out FILE --only engine,edited
    python tests/benchmarks/engine.py --table FILE...

Sizes are numbers of vehicles, those of the harder family with ``hard`` before,
or ``demos``.  With ``--out`` each run is
written as soon as it is done, and those that the file holds are not run
again, so a long measurement may be cut anywhere and go on.

Evenings are counted from 0; the gap is how many evenings after the bound that
the engine has proven a plan ends.  "Of plain" is the share of the plain rule's
minutes, seed by seed.  Every schedule is checked against the bare problem
(``plain_check``), the engine's as well, which shows that the others are given
nothing harder.  Theirs is easier: drying places and the airbrush's idle limit
are left out, and `library` says what else the library cannot state.
``instant`` is the first plan, as a person gets it: compiled, by all rules, what
can come forward drawn forward, judged.  Its milliseconds are those of a book
that was never seen (cold) and of one that was (warm); a re-plan is the repair
after a logged event.  ``edited`` is the search that goes on from the plan on
screen: five seconds of it, three edits (work logged late, an evening lost, an
hour more), each repaired, and then the search again.

For the harder family only what is the engine's is run.

Milliseconds are the processor's, seconds the clock's: leave the machine idle,
or the engine, whose process makes way for others, is at a disadvantage.  With
``--lowest`` all make way alike, which is fair, and slow, on a busy machine.
"""

from __future__ import annotations

import argparse
import csv
import gc
import os
import statistics
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parents[1]), str(HERE)]

import contenders
from contenders import MARKS, Outcome
from families import NOW, SIZES, batch
from hard_families import hard_batch
from library import LEAVES_OUT, MISSING, installed
from medians import FIELDS, Line, read, table
from plain_check import broken

from app.entry import GARBAGE_THINGS
from app.service import demos
from app.service.planning import plan
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import Plan
from planner.values.project import Logged

CONTENDERS = ("plain", "engine", "edited", "direct", "library")
TIMED = ("engine", "edited", "direct")
SECONDS = {1: 5.0, 4: 60.0, 12: 60.0, 30: 60.0}
DEMO_SECONDS = 20.0
REPEATS = 5


def lines_of(
    name: str, seed: str, book: Book, now: int, seconds: float, wanted: list[str]
) -> Iterator[Line]:
    """Run the wanted contenders on one book, and yield a line for each."""
    steps = sum(len(model.steps) for project in book.projects for model in project.models)
    head = {"batch": name, "steps": str(steps), "seed": seed, "seconds": f"{seconds:g}"}
    began = time.process_time()
    first = plan(book, now).plan
    cold_ms = 1000 * (time.process_time() - began)
    last = contenders.last_evening(book, first, now)
    batches = contenders.bare(book, now, last) if seed and not name.startswith("hard") else None
    if "engine" in wanted:
        first_ms, replan_ms = _milliseconds(book, now, first)
        yield _line(head, contenders.instant(book, now, first), first_ms, replan_ms, cold_ms)
        found, best = contenders.engine(book, now, seconds, first)
        if batches is not None:
            for made in (first, best):
                wrong = broken(batches[0], contenders.starts_of(book, made))
                assert not wrong, f"not a schedule of the bare problem: {wrong[0]}"
        yield _line(head, found, first_ms, replan_ms)
    if "edited" in wanted:
        yield _line(head, contenders.edited(book, first, now, seconds, _after_an_event))
    if batches is None:
        return
    others: dict[str, Callable[[], Outcome]] = {
        "plain": lambda: contenders.plain(batches[0], now),
        "direct": lambda: contenders.direct(batches[1], now, seconds),
        "library": lambda: contenders.library(batches[1], now, seconds),
    }
    for contender, run in others.items():
        if contender in wanted:
            yield _line(head, run())


def _line(
    head: Line,
    found: Outcome,
    first_ms: float | None = None,
    replan_ms: float | None = None,
    cold_ms: float | None = None,
) -> Line:
    finish = min((one[2] for one in found.course), default=None)
    timed = found.course and found.contender != "library"  # of which only the end is known
    marks = {
        f"at_{mark}": found.at(mark)
        for mark in MARKS
        if mark <= float(head["seconds"]) and found.contender in TIMED
    }
    values = {
        "contender": found.contender,
        "cold_ms": cold_ms,
        "first_ms": first_ms,
        "replan_ms": replan_ms,
        "last": found.at(float("inf")),
        "bound": found.bound,
        "finish_days": None if finish is None else finish / 1440,
        "late_days": found.late / 1440 if found.course else None,
        "evenings": found.evenings if found.course else None,
        "setup": found.setup if found.course else None,
        "refills": found.refills,
        "first_s": found.course[0][0] if timed else None,
        "close_s": found.close if timed else None,
        "proof_s": found.proof,
        "optimal_s": found.optimal,
        "note": found.note,
        **marks,
    }
    told = {
        key: f"{value:.3f}" if isinstance(value, float) else str(value)
        for key, value in values.items()
        if value is not None
    }
    return {**dict.fromkeys(FIELDS, ""), **head, **told}


def _milliseconds(book: Book, now: int, first: Plan) -> tuple[float, float]:
    """Return the medians until a first plan and until the plan after a logged event, both warm."""
    logged, later = _after_an_event(book, first)

    def anew() -> None:
        plan(book, now)

    def again() -> None:
        plan(logged, later, last=first, quick=True)

    anew()
    again()
    return _median_ms(anew), _median_ms(again)


def _median_ms(act: Callable[[], None]) -> float:
    times = []
    for _ in range(REPEATS):
        began = time.process_time()
        act()
        times.append(time.process_time() - began)
    return 1000 * statistics.median(times)


def _after_an_event(book: Book, shown: Plan) -> tuple[Book, int]:
    """Return the book once its first pass is done, four minutes late, and the minute after."""
    placed = next(placement for placement in shown.placements if not placement.logged)
    start = moment_of(placed.start, zone_named(book.bench_time.zone))
    fact = Logged(
        model=placed.key.model,
        step=placed.key.step,
        coat=placed.key.coat,
        start=start,
        end=start + timedelta(minutes=placed.end - placed.start + 4),
    )
    projects = tuple(
        replace(project, log=(*project.log, fact))
        if project.name == placed.key.project
        else project
        for project in book.projects
    )
    return replace(book, projects=projects), placed.end + 5


# -- what is run ------------------------------------------------------------------------------


def runs(sizes: list[str], seeds: str) -> Iterator[tuple[str, str, Callable[[], Book], int, float]]:
    """Yield (name, seed, book, now, usual seconds) of every book."""
    low, _, high = seeds.partition("-")
    for size in sizes:
        if size == "demos":
            for name in demos.names():
                book = demos.read(name).book
                now = demos.first_evening(book)
                yield name, "", lambda book=book: book, now, DEMO_SECONDS
            continue
        hard = size.startswith("hard")
        count, family = int(size.removeprefix("hard")), hard_batch if hard else batch
        for seed in range(int(low), int(high or low) + 1):
            plural = "s" if count > 1 else ""
            name = f"{'hard, ' if hard else ''}{count} vehicle{plural}"
            make = lambda count=count, seed=seed, family=family: family(count, seed)  # noqa: E731
            yield name, str(seed), make, NOW, SECONDS.get(count, 60.0)


def measure(options: argparse.Namespace) -> list[Line]:
    """Run what is asked and not yet known; write each line at once; return all."""
    wanted = options.only.split(",")
    if "library" in wanted and not installed():
        print(MISSING, file=sys.stderr)
        wanted.remove("library")
    known = read([options.out]) if options.out and Path(options.out).exists() else []
    done = {(line["batch"], line["seed"], line["contender"]) for line in known}
    for name, seed, make, now, usual in runs(options.sizes.split(","), options.seeds):
        left = [
            one
            for one in wanted
            if (name, seed, one) not in done
            and (one in ("engine", "edited") or (seed and not name.startswith("hard")))
        ]
        if not left:
            continue
        for line in lines_of(name, seed, make(), now, options.seconds or usual, left):
            known.append(line)
            told = f"last evening {line['last'] or 'none'}, proven {line['bound'] or '-'}"
            print(f"{name}, seed {seed or '-'}: {line['contender']}: {told}", file=sys.stderr)
            if options.out:
                _write(Path(options.out), line)
    return known


def _write(path: Path, line: Line) -> None:
    fresh = not path.exists()
    with path.open("a", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, FIELDS)
        if fresh:
            writer.writeheader()
        writer.writerow(line)


def main() -> None:
    """Measure and print the table, or print that of files."""
    usual = [*map(str, SIZES), "hard4", "hard12", "demos"]
    parser = argparse.ArgumentParser(description="The engine beside baselines and a library.")
    parser.add_argument("sizes", nargs="?", default=",".join(usual), help="1,4,12,30,demos")
    parser.add_argument("seeds", nargs="?", default="0-9", help="0-9, or one number")
    parser.add_argument("seconds", nargs="?", type=float, help="for each contender and book")
    parser.add_argument("--out", help="file of CSV lines to write and to go on from")
    parser.add_argument("--only", default=",".join(CONTENDERS), help=",".join(CONTENDERS))
    parser.add_argument("--table", nargs="+", metavar="FILE", help="print the table of files")
    parser.add_argument("--lowest", action="store_true", help="run all at the lowest priority")
    options = parser.parse_args()
    if options.lowest:
        os.nice(19)
    gc.set_threshold(GARBAGE_THINGS)  # as the program itself does
    lines = read(options.table) if options.table else measure(options)
    print(table(lines))
    print(f"library: leaves out: {LEAVES_OUT}")


if __name__ == "__main__":
    main()
