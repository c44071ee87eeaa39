"""What an edit does to a plan that was searched for: does it stay, and what moves for what.

    python tests/benchmarks/stays.py [BOOKS [EDITS]] [--against CHECKOUT] [--rolls N] [--out FILE]

From the plan after some rounds of search each book gets EDITS edits, half of
which can only help; each begins from that same plan.  BOOKS are names of
demos, ``demos`` for all, or vehicles and seed of a drawn batch ("12/3"), with
commas between.  ``--against`` runs the program of another checkout beside this
one, from the same start.  Work is counted in rounds, so that the start is the
same on every machine; rounds of 12 vehicles take some seconds each.

Told are, of the edits that can only help: after how many the plan is worse
(passes unplaced, lateness, finish), how many passes moved to another stretch
in all where nothing was gained, and how many of them at each gain in the
middle; of the others: how many passes moved, and how many stretches later all
ends.  Milliseconds are the processor's: until something sound is on screen,
and of a first plan by all rules, which has no plan before it.
"""

from __future__ import annotations

import argparse
import json
import os
import re
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from random import Random
from typing import Any

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
CHILD = "--child"
DRAWN = [f"{vehicles}/{seed}" for vehicles in (4, 12) for seed in range(5)]


# -- one program, in a process of its own: only what every version has ------------------------


def child(folder: Path) -> None:
    """Plan each book of a folder near to the plan there, and print what came of it."""
    from app.service.planning import plan
    from storage.exchange import dump_plan, load_plan

    last = load_plan((folder / "start.json").read_bytes())
    for path in sorted(folder.glob("edit-*.json")):
        book = read_book(path)
        now = last.now
        began = time.process_time()
        plan(book, now, last=last, quick=True)
        first = time.process_time() - began
        made = plan(book, now, last=last).plan
        began = time.process_time()
        plan(book, now)
        instant = time.process_time() - began
        document = dump_plan(made, book)
        times = {"name": path.name, "first": first * 1000, "instant": instant * 1000}
        print(json.dumps({**times, "plan": document}), flush=True)


def read_book(path: Path) -> Any:
    """Read an exchange file; what an older program does not know is left away."""
    from planner.values.refusal import Refused
    from storage.exchange import load

    raw = json.loads(path.read_bytes())
    for _ in range(20):
        try:
            return load(json.dumps(raw).encode()).book
        except Refused as problem:
            unknown = re.match(r'no field is called "(\w+)"', problem.mend)
            if unknown is None:
                raise
            _forget(raw, unknown[1])
    raise SystemExit(f"{path.name} holds too much that this program does not know")


def _forget(raw: Any, field: str) -> None:
    if isinstance(raw, dict):
        raw.pop(field, None)
    for entry in raw.values() if isinstance(raw, dict) else raw if isinstance(raw, list) else ():
        _forget(entry, field)


# -- this program -----------------------------------------------------------------------------


@dataclass(frozen=True)
class Line:
    """What edits did to one book by one program."""

    name: str
    program: str
    worse: int
    for_nothing: int
    gains: int
    at_gain: float
    moved: float
    later: float
    first_ms: float
    instant_ms: float


def books(asked: str) -> Iterator[tuple[str, Any, int]]:
    """Yield the books that were asked for, each with its name and the minute to begin."""
    from families import NOW, batch

    from app.service import demos

    for name in asked.split(","):
        if name == "drawn":
            yield from books(",".join(DRAWN))
        elif "/" in name:
            vehicles, seed = (int(number) for number in name.split("/"))
            yield name, batch(vehicles, seed), NOW
        else:
            for one in demos.names() if name == "demos" else [name]:
                book = demos.read(one).book
                yield one, book, demos.first_evening(book)


def searched(book: Any, now: int, rolls: int) -> Any:
    """Return the best plan after some rounds of search."""
    from app.service.planning import plan
    from planner.schedule.optimise.search import Effort, improve

    made = plan(book, now)
    cure, calendar = made.cure, made.calendar
    effort = Effort(rolls=rolls, proofs=0)
    *_, last = improve(book, made.plan, cure=cure, calendar=calendar, effort=effort)
    return last.plan


def edits_of(book: Any, plan: Any, count: int, seed: int) -> list[tuple[bool, Any]]:
    """Return edited books, and whether each edit can only help."""
    from relaxing_edits import RELAXING

    from planner.values.refusal import Refused

    random = Random(seed)
    found: list[tuple[bool, Any]] = []
    for helps, kinds in ((True, RELAXING), (False, TAKING)):
        some: list[tuple[bool, Any]] = []
        for number in range(20 * count):
            if len(some) == count // 2:
                break
            edit: Callable[..., Any] = kinds[number % len(kinds)]
            try:
                after = edit(book, random) if helps else edit(book, plan, random)
            except Refused:
                continue
            if after != book:
                some.append((helps, after))
        found += some
    return found


def less_time(book: Any, plan: Any, random: Random) -> Any:
    """Take one evening away in which something is planned."""
    from planner.bench import calendar_of

    starts = [one.start for one in plan.placements]
    stretch = calendar_of(book.bench_time).stretch_at(random.choice(starts))
    bench = book.bench_time
    return replace(book, bench_time=replace(bench, skipped=(*bench.skipped, stretch.on)))


def colder(book: Any, _plan: Any, random: Random) -> Any:
    """Let the room be some degrees colder."""
    by = random.choice((1, 2, 3))
    room = book.room
    locations = tuple(
        replace(
            one,
            workdays=tuple(replace(p, temperature_c=p.temperature_c - by) for p in one.workdays),
        )
        for one in room.locations
    )
    return replace(book, room=replace(room, locations=locations))


def slower(book: Any, _plan: Any, random: Random) -> Any:
    """Let one step of a model take ten minutes more."""
    at = random.randrange(len(book.projects))
    project = book.projects[at]
    model = random.choice(project.models)
    number = random.randrange(len(model.steps))
    steps = tuple(
        replace(step, minutes=replace(step.minutes, fixed=step.minutes.fixed + 10))
        if place == number
        else step
        for place, step in enumerate(model.steps)
    )
    models = tuple(replace(m, steps=steps) if m is model else m for m in project.models)
    projects = tuple(replace(project, models=models) if p is project else p for p in book.projects)
    return replace(book, projects=projects)


def pinned(book: Any, plan: Any, random: Random) -> Any:
    """Wish a piece of work for a stretch after the one that it is in."""
    from app.service import pins
    from planner.bench import calendar_of

    calendar = calendar_of(book.bench_time)
    placed = random.choice(plan.placements)
    here = calendar.stretch_at(placed.start)
    later = calendar.next_stretch(here.interval.end)
    return pins.pin_to(book, placed.key, later).book


def late_start(book: Any, _plan: Any, random: Random) -> Any:
    """Let nothing of a model be done for some days: a wish for its first step."""
    from app.service import pins
    from planner.values.plan import PassKey

    project = random.choice(book.projects)
    model = random.choice(project.models)
    key = PassKey(project.name, model.name, model.steps[0].id)
    return pins.not_before(book, key, _plan.now + random.choice((3, 7)) * 1440).book


TAKING = (less_time, colder, slower, pinned, late_start)


def measured(program: str, checkout: Path, folder: Path) -> list[dict[str, Any]]:
    """Run one program on what lies in a folder."""
    path = os.pathsep.join([str(checkout), str(HERE)])
    command = [sys.executable, str(Path(__file__).resolve()), CHILD, str(folder)]
    environment = {**os.environ, "PYTHONPATH": path, "PYTHONSAFEPATH": "1"}
    run = subprocess.run(
        command, env=environment, capture_output=True, text=True, check=False, cwd=folder
    )
    if run.returncode:
        raise SystemExit(f"{program}: {run.stderr[-2000:]}")
    return [json.loads(line) for line in run.stdout.splitlines()]


def line_of(
    name: str, program: str, start: Any, tried: list[tuple[bool, Any]], came: list[dict[str, Any]]
) -> Line:
    """Return what came of all edits of a book."""
    from planner.bench import calendar_of
    from planner.schedule.judge import judge
    from planner.schedule.staying.policy import moved_passes, worth
    from storage.exchange import load_plan

    worse = for_nothing = 0
    at_gain: list[int] = []
    moved: list[int] = []
    later: list[int] = []
    for (helps, book), answer in zip(tried, came, strict=True):
        made = load_plan(json.dumps(answer["plan"]).encode())
        verdict = judge(book, made, rules=frozenset(range(1, 25)))
        assert verdict.accepted, (name, program, verdict.violations[:2])
        made = replace(made, cost=verdict.cost)
        calendar = calendar_of(book.bench_time)
        count = moved_passes(calendar, start, made)
        was, is_ = worth(book, calendar, start), worth(book, calendar, made)
        if not helps:
            moved.append(count)
            later.append(is_[2] - was[2])
            continue
        first = [(p.cost.unplaced, p.cost.late, p.cost.finish) for p in (start, made)]
        worse += first[1] > first[0]
        if is_ < was:
            at_gain.append(count)
        else:
            for_nothing += count
    return Line(
        name,
        program,
        worse,
        for_nothing,
        len(at_gain),
        statistics.median(at_gain) if at_gain else 0,
        statistics.median(moved) if moved else 0,
        statistics.mean(later) if later else 0,
        statistics.median(one["first"] for one in came),
        statistics.median(one["instant"] for one in came),
    )


HEAD = (
    "book",
    "program",
    "worse",
    "moved for nothing",
    "gains",
    "moved at one",
    "moved where it must",
    "stretches later",
    "first on screen [ms]",
    "first plan [ms]",
)


def row_of(line: Line) -> str:
    """Return a line of the table."""
    cells = (
        line.name,
        line.program,
        str(line.worse),
        str(line.for_nothing),
        str(line.gains),
        f"{line.at_gain:g}",
        f"{line.moved:g}",
        f"{line.later:.1f}",
        f"{line.first_ms:.0f}",
        f"{line.instant_ms:.0f}",
    )
    return f"| {' | '.join(cells)} |"


def main() -> None:
    """Print the table, line by line as it is known."""
    if len(sys.argv) == 3 and sys.argv[1] == CHILD:
        child(Path(sys.argv[2]))
        return
    sys.path[:0] = [str(ROOT), str(HERE), str(ROOT / "tests")]
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("books", nargs="?", default="demos,drawn")
    parser.add_argument("edits", nargs="?", type=int, default=40)
    parser.add_argument("--against", type=Path)
    parser.add_argument("--rolls", type=int, default=3)
    parser.add_argument("--out", type=Path)
    args = parser.parse_args()
    from storage.exchange import Exchange, dump, dump_plan

    programs = [("this", ROOT), *([("against", args.against)] if args.against else [])]
    rows = [f"| {' | '.join(HEAD)} |", "|" + "---|" * len(HEAD)]
    print("\n".join(rows), flush=True)
    for name, book, now in books(args.books):
        start = searched(book, now, args.rolls)
        tried = edits_of(book, start, args.edits, len(name))
        with tempfile.TemporaryDirectory() as place:
            folder = Path(place)
            plain = dump_plan(start, book)
            plain.pop("models", None)  # a word that not every version knows
            (folder / "start.json").write_text(json.dumps(plain), encoding="utf-8")
            for number, (_, after) in enumerate(tried):
                (folder / f"edit-{number:03}.json").write_bytes(dump(Exchange(after)))
            for program, checkout in programs:
                line = line_of(name, program, start, tried, measured(program, checkout, folder))
                rows.append(row_of(line))
                print(rows[-1], flush=True)
        if args.out:
            args.out.write_text("\n".join(rows) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
