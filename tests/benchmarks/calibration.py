"""Whether dates hold that are said to: the odds against truths of other laws than theirs.

    .venv/bin/python tests/benchmarks/calibration.py [--projects 2000] [--seed 1]
    .venv/bin/python tests/benchmarks/calibration.py --replay 20

The first plans invented projects (models of the demonstrations, drawn
evenings), asks for the dates that are kept in half, four fifths and 95 % of
all runs, and lets one truth happen to each project:

``assumed``  the law that the odds assume;
``foreign``  as wide, but of other families: minutes with Student's t of three
             degrees of freedom, drying with a Gumbel's long tail, sessions
             lost in bad months (none in seven of ten projects, a quarter in
             the others);
``slow``     the foreign law for a person who takes 1.35 times as long as
             planned and loses one session in five: before anything is
             logged, and after three projects in the logbook.

The second lets the program itself go on from pass to pass, each logged as it
went and the rest repaired, with the very minutes and lost sessions of runs:
how far apart simulation and program end.
"""

from __future__ import annotations

import argparse
import math
import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path
from random import Random

sys.path.insert(0, str(Path(__file__).parents[2]))

import numpy as np
from replayed import Luck, OnlyHands, replayed

from app.service import demos, planning
from planner.bench import calendar_of
from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Draws, Floats
from planner.chance.odds import SHARES, odds_of
from planner.chance.script import script_of
from planner.chance.spreads import Spreads, spreads_of
from planner.pace.minutes import PASS_SD, PERSON_SD, STAGE_SD, Work
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.plan import PassKey, Plan
from planner.values.project import Logged, Project

RUNS = 400
DAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
SLOW, LOST = 1.35, 0.2


@dataclass(frozen=True)
class Foreign(Spreads):
    """A law of other families than the one assumed; ``level`` is the person's own pace [ln].

    ``spread`` is what the person's pace still scatters by [ln], ``gone`` the
    share of sessions lost, None for bad and good months.
    """

    level: float = 0.0
    spread: float = PERSON_SD
    gone: float | None = None

    def minutes_factor(self, draws: Draws, work: Work, key: PassKey) -> Floats:
        person = self.spread * draws.normal("person")
        stage = STAGE_SD * _student(draws, "stage", *work)
        one = PASS_SD * _student(draws, "pass", *key)
        return np.exp(np.clip(self.level + person + stage + one, -2.3, 2.3))

    def setup_factor(self, draws: Draws, *name: object) -> Floats:
        return np.exp(self.level + self.spread * draws.normal("person"))

    def drying(self, draws: Draws, coating: str, key: PassKey) -> Floats:
        room = _gumbel(draws, "room")
        own = _gumbel(draws, "film", coating, *key)
        return math.sqrt(0.6) * room + math.sqrt(0.4) * own

    def lost_share(self, draws: Draws) -> Floats:
        if self.gone is not None:
            return np.full(draws.runs, self.gone)
        return np.where(draws.uniform("month") < 0.7, 0.0, 0.25)


def _student(draws: Draws, *name: object) -> Floats:
    """Return Student's t of three degrees of freedom, scaled to a standard deviation of 1."""
    return draws.stream("t", *name).standard_t(3, draws.runs) / math.sqrt(3)


def _gumbel(draws: Draws, *name: object) -> Floats:
    """Return a Gumbel with mean 0 and standard deviation 1."""
    drawn = draws.stream("gumbel", *name).gumbel(size=draws.runs)
    return (drawn - 0.5772156649) * math.sqrt(6) / math.pi


def book_of(number: int, seed: int) -> tuple[Book, int]:
    """Return an invented project: some models of a demonstration on drawn evenings."""
    random = Random(f"{seed}/{number}")
    name = random.choice([name for name in demos.names() if name != "club_day_batch"])
    book = demos.read(name).book
    now = demos.first_evening(book)
    days = sorted(random.sample(range(7), random.choice((2, 3, 3, 4))))
    hour, length = random.choice((18, 19, 20)), random.choice((90, 120, 150, 180))
    since = moment_of(now, calendar_of(book.bench_time).zone).date()
    end = (hour * 60 + length) % 1440
    evenings = Recurring(
        rule="FREQ=WEEKLY;BYDAY=" + ",".join(DAYS[day] for day in days),
        since=since - timedelta(days=400),
        start=f"{hour}:00",
        end=f"{end // 60:02}:{end % 60:02}",
    )
    project = random.choice(book.projects)
    count = random.randint(1, min(2, len(project.models)))
    own = replace(
        project,
        models=tuple(random.sample(project.models, count)),
        pins=(),
        log=(),
        observed=(),
        diary=(),
        pilot="",
        target=None,
        begins=None,
    )
    hours = replace(book.bench_time, stretches=(evenings,), extra=(), skipped=())
    return replace(book, bench_time=hours, projects=(own,)), now


def with_past(book: Book, now: int, law: Foreign, seed: int) -> Book:
    """Return the book after three projects of the same person, logged pass by pass."""
    calendar = calendar_of(book.bench_time)
    gone = Random(f"past/{seed}")
    held = [
        stretch
        for stretch in calendar.stretches(now - 300 * 1440, now - 1440)
        if gone.random() >= (law.gone or 0)
    ]
    past = []
    for number in range(3):
        project = book.projects[0]
        draws = Draws(1, hash((seed, number)) & 0xFFFF)
        own = replace(law, spread=0.0, level=law.level)
        entries = []
        for model in project.models:
            for step in model.steps:
                parts = max(1, len({one.partition("/")[0] for one in step.references()}))
                for coat in range(1, step.coats + 1):
                    key = PassKey(f"past {number}", model.name, step.id, coat)
                    planned = min(14_400, step.minutes.of(parts))
                    factor = float(own.minutes_factor(draws, Work(step.stage, step.tool), key)[0])
                    minutes = max(1, round(planned * factor))
                    at = held[-1 - (len(entries) // 6 + 12 * number) % len(held)]
                    start = moment_of(at.interval.start, calendar.zone)
                    entries.append(
                        Logged(
                            model=model.name,
                            step=step.id,
                            coat=coat,
                            start=start,
                            end=start + timedelta(minutes=minutes),
                            minutes=minutes,
                            planned=planned,
                        )
                    )
        past.append(
            Project(name=f"past {number}", models=project.models, active=False, log=tuple(entries))
        )
    return replace(book, projects=(*book.projects, *past))


def dates(book: Book, plan: Plan, now: int) -> list[int]:
    """Return the dates that are said of a plan by what a book has taught."""
    found = odds_of(book, plan, spreads=spreads_of(book, now), draws=Draws(RUNS, 7))
    assert found is not None
    return [found.together.by(share) or 10**13 for share in SHARES]


def came(book: Book, plan: Plan, truth: Spreads, seed: int) -> int:
    """Return when one truth is finished."""
    happened = odds_of(book, plan, spreads=truth, draws=Draws(1, 10_000 + seed))
    assert happened is not None
    return int(happened.together.minutes[0])


def calibrate(projects: int, seed: int) -> None:
    """Print how often the dates were kept, for each truth."""
    slow = Foreign(level=math.log(SLOW), spread=0.1, gone=LOST)
    kept: dict[str, list[list[bool]]] = {}
    tried = 0
    for number in range(projects):
        plan = None
        while plan is None or plan.unplaced:
            book, now = book_of(tried := tried + 1, seed)
            plan = planning.plan(book, now, quick=True).plan
        said = dates(book, plan, now)
        own = seed * 1_000_000 + number
        ends = {
            "assumed": came(book, plan, spreads_of(book, now), own),
            "foreign": came(book, plan, Foreign(), own),
            "slow, nothing logged": came(book, plan, slow, own),
        }
        for name, end in ends.items():
            kept.setdefault(name, []).append([end <= date for date in said])
        taught = dates(with_past(book, now, slow, number), plan, now)
        end = ends["slow, nothing logged"]
        kept.setdefault("slow, after three projects", []).append([end <= date for date in taught])
        if number % 100 == 99 or number == projects - 1:
            print(f"after {number + 1} projects", flush=True)
            for name, every in kept.items():
                shares = np.mean(every, axis=0)
                error = 100 * np.sqrt(0.16 / len(every))
                told = ", ".join(
                    f"{100 * share:.0f} % date kept in {100 * one:.1f} %"
                    for share, one in zip(SHARES, shares, strict=True)
                )
                print(f"  {name}: {told} (s.e. {error:.1f})", flush=True)


# -- the program itself ---------------------------------------------------------------------------


def told(away: list[float]) -> str:
    """Return how far runs end from the program."""
    return (
        f"{len(away)} runs end {np.mean(away):+.2f} days from the program on average, "
        f"{np.median(away):+.2f} in the middle, s.d. {np.std(away):.2f}; "
        f"{sum(one < -0.5 for one in away)} sooner and {sum(one > 0.5 for one in away)} later "
        "by more than half a day"
    )


def replays(count: int) -> Iterator[tuple[str, list[float]]]:
    """Yield, of demonstrations and invented projects, by how many days runs end later."""
    drawn = (f"invented {number}" for number in range(1, 9))
    for name in ("lone_lamplighter", "winter_garage", "harbour_tenders", *drawn):
        if name.startswith("invented"):
            book, now = book_of(int(name.split()[1]), 77)
        else:
            book = demos.read(name).book
            now = demos.first_evening(book)
        plan = planning.plan(book, now).plan
        if plan.unplaced:
            continue
        draws = Draws(count, 11)
        runs = BenchRuns(script_of(book, plan), draws, OnlyHands())
        runs.run()
        ours = runs.end.max(axis=0)
        away = []
        for run in range(count):
            theirs = replayed(book, now, plan, Luck(draws, run))
            if theirs is not None:
                away.append((int(ours[run]) - theirs) / 1440)
        yield name, away


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--projects", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--replay", type=int, default=0)
    asked = parser.parse_args()
    if asked.replay:
        every: list[float] = []
        for name, away in replays(asked.replay):
            every += away
            print(f"{name}: {told(away)}", flush=True)
        print(f"all: {told(every)}, s.e. {np.std(every) / math.sqrt(len(every)):.2f}")
    else:
        calibrate(asked.projects, asked.seed)
