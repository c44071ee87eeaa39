"""The simulation against what can be worked out: PERT examples, one step, and the plan itself."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from statistics import NormalDist

import numpy as np
import pytest

from app.service import demos, planning
from planner.chance.assumptions import assumed
from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Draws, Floats
from planner.chance.odds import odds_of
from planner.chance.script import script_of
from planner.chance.spreads import Rate, Spreads, spreads_of
from planner.pace.minutes import PASS_SD, PERSON_SD, STAGE_SD, Work
from planner.values.bench_time import BenchTime, Extra
from planner.values.book import Book
from planner.values.model import Model, Part, Place
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Event, Happened, Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Minutes, Stage, Step, Tool, Trait

RUNS = 20_000
DAY = 90  # minutes of work that stand for a day of the printed example
MONDAY = datetime(2031, 3, 3, tzinfo=UTC)
NOW = minute_of(MONDAY)


class Sure(Spreads):
    """A law without any spread: nothing goes astray."""

    def minutes_factor(self, draws: Draws, work: Work, key: PassKey) -> Floats:
        return np.ones(draws.runs)

    def setup_factor(self, draws: Draws, *name: object) -> Floats:
        return np.ones(draws.runs)

    def drying(self, draws: Draws, coating: str, key: PassKey) -> Floats:
        return np.zeros(draws.runs)

    def lost_share(self, draws: Draws) -> Floats:
        return np.zeros(draws.runs)

    def redone_share(self, stage: Stage) -> float:
        return 0.0


@dataclass(frozen=True)
class Pert(Sure):
    """Durations of PERT: normal, (o + 4m + p)/6 and (p - o)/6 by the name of the step."""

    steps: Mapping[str, tuple[float, float, float]] = field(default_factory=dict)

    def minutes_factor(self, draws: Draws, work: Work, key: PassKey) -> Floats:
        o, m, p = self.steps[key.step]
        return 1 + draws.normal("pass", *key) * (p - o) / (o + 4 * m + p)


def network(steps: Mapping[str, tuple[float, float, float]], before: Mapping[str, str]) -> Book:
    """Return a book of steps that go on alone, each on a part of its own, always at the bench."""
    own = tuple(
        Step(
            id=name,
            stage=Stage.CLEAN,
            tool=Tool.HAND,
            touches=(name,),
            minutes=Minutes(fixed=round((o + 4 * m + p) / 6 * DAY)),
            traits=(Trait.HANDS_FREE,),
            after=tuple(before.get(name, "")),
        )
        for name, (o, m, p) in steps.items()
    )
    parts = tuple(Part(name=name, places=(Place(name="all", area_cm2=1),)) for name in steps)
    return bench(own, parts, (Extra(start=MONDAY, end=MONDAY + timedelta(days=6)),))


def bench(steps: tuple[Step, ...], parts: tuple[Part, ...], extra: tuple[Extra, ...]) -> Book:
    air = (AirPoint(at="00:00", temperature_c=23, humidity_pct=50),)
    return Book(
        room=Room(locations=(Location(name="bench", drying_places=20, workdays=air),)),
        bench_time=BenchTime(zone="UTC", extra=extra),
        projects=(Project(name="net", models=(Model(name="one", parts=parts, steps=steps),)),),
    )


def finishes(book: Book, law: Spreads, runs: int = RUNS) -> np.ndarray:
    made = planning.plan(book, NOW).plan
    found = odds_of(book, made, spreads=law, draws=Draws(runs, 5))
    assert found is not None
    return found.together.minutes


def test_the_critical_chain_of_the_pert_example() -> None:
    """CRAN critpath 0.2.2, vignette "CPM and PERT", data set pertexample1.

    Critical A-B-E-H-I: mean 31, standard deviation 1.490712, P(T <= 30) =
    0.25117 as published.  Four standard errors of 20 000 runs are allowed.
    """
    steps = {"a": (3, 5, 7), "b": (5, 7, 9), "e": (6, 8, 10), "h": (3, 5, 7), "i": (4, 6, 8)}
    book = network(steps, {"b": "a", "e": "b", "h": "e", "i": "h"})
    days = (finishes(book, Pert(steps=steps)) - NOW) / DAY
    error = 1.490712 / math.sqrt(RUNS)
    assert days.mean() == pytest.approx(31, abs=4 * error + 0.5 / DAY)
    assert days.std() == pytest.approx(1.490712, abs=4 * error / math.sqrt(2) + 0.5 / DAY)
    share = 4 * math.sqrt(0.25117 * 0.74883 / RUNS)
    assert (days <= 30).mean() == pytest.approx(0.25117, abs=share + 0.0015)  # half a minute


def test_three_paths_side_by_side_are_less_sure_than_the_longest() -> None:
    """A textbook's three parallel paths: P(<= 24) 0.9991, 0.9686 and nearly 1, all 0.9677.

    Means 20.5, 21.5 and 19.5, variances 1.250, 1.806 and 0.528; the joint
    probability is their product.  The other paths begin five and ten minutes
    of hands later, a tenth of a day at most, which moves nothing here.
    """
    steps = {
        **{"d": (9, 12, 15), "f": (5, 6, 7), "g": (2, 3, 7)},
        **{"a": (5, 6, 7), "c": (6, 8, 11), "e": (5, 6, 9)},
        **{"b": (8, 8, 11), "h": (4, 4, 5), "i": (5, 7, 8)},
    }
    book = network(steps, {"f": "d", "g": "f", "c": "a", "e": "c", "h": "b", "i": "h"})
    days = (finishes(book, Pert(steps=steps)) - NOW) / DAY
    joint = 1.0
    for mean, variance in ((20.5, 1.250), (21.5, 1.806), (19.5, 0.528)):
        joint *= NormalDist(mean, math.sqrt(variance)).cdf(24)
    assert joint == pytest.approx(0.9677, abs=0.0003)
    allowed = 4 * math.sqrt(0.9677 * 0.0323 / RUNS)
    assert (days <= 24).mean() == pytest.approx(0.9677, abs=allowed)


def test_one_step_has_its_exact_distribution() -> None:
    """One step of an hour, sessions of six hours a day apart, each lost by a Beta(1, 11) share.

    The hour is log-normal by the three levels of the pace, whose variances
    add; the first k sessions are all lost with the k-th moment of the Beta,
    1/12, then 1·2/(12·13).
    """
    step = Step(
        id="sand", stage=Stage.CLEAN, tool=Tool.HAND, touches=("tub",), minutes=Minutes(fixed=60)
    )
    begins = [MONDAY + timedelta(hours=18 + 24 * day) for day in range(9)]
    extra = tuple(Extra(start=at, end=at + timedelta(hours=6)) for at in begins)
    parts = (Part(name="tub", places=(Place(name="all", area_cm2=1),)),)
    ends = finishes(bench((step,), parts, extra), Spreads(lost=Rate(1, 11)))
    spread = NormalDist(0, math.sqrt(PERSON_SD**2 + STAGE_SD**2 + PASS_SD**2))
    first, second = 11 / 12, 1 / 12 - 2 / (12 * 13)
    for minutes in (30, 60, 90):
        share = first * spread.cdf(math.log((minutes + 0.5) / 60))
        allowed = 4 * math.sqrt(share * (1 - share) / RUNS)
        assert (ends <= minute_of(begins[0]) + minutes).mean() == pytest.approx(share, abs=allowed)
    by_then = first + second * spread.cdf(math.log(60.5 / 60))
    allowed = 4 * math.sqrt(by_then * (1 - by_then) / RUNS)
    late = minute_of(begins[1]) + 60
    assert (ends <= late).mean() == pytest.approx(by_then, abs=allowed)


@pytest.mark.parametrize("name", demos.names())
def test_without_any_spread_every_run_is_the_plan(name: str) -> None:
    """Plan, judge and simulation reckon alike: to the minute, but for what hands could do sooner.

    A run begins work as soon as hands, film and hours allow within its
    session, which a plan may leave for later.
    """
    book = demos.read(name).book
    made = planning.plan(book, demos.first_evening(book), quick=True)
    runs = BenchRuns(script_of(book, made.plan), Draws(1), Sure())
    assert runs.run()
    sooner = 0
    for placed in made.plan.placements:
        index = runs.script.problem.index[placed.key]
        begun = int(runs.start[index, 0])
        assert begun <= placed.start
        assert made.calendar.stretch_at(begun) == made.calendar.stretch_at(placed.start)
        sooner += begun < placed.start
    assert sooner <= 1 + len(made.plan.placements) // 50


def test_what_is_drawn_for_a_thing_does_not_depend_on_what_else_there_is() -> None:
    """Common random numbers by identity: what both books hold meets the same luck in both."""
    one, other = Draws(50, 3), Draws(50, 3)
    other.normal("something else")
    assert np.array_equal(one.normal("film", "sand"), other.normal("film", "sand"))
    assert not np.array_equal(one.normal("film", "sand"), one.normal("film", "grey"))
    assert not np.array_equal(one.normal("film", "sand"), Draws(50, 4).normal("film", "sand"))


def test_the_same_state_gives_the_same_answer() -> None:
    book = demos.read("lone_lamplighter").book
    made = planning.plan(book, demos.first_evening(book), quick=True).plan
    first, second = (odds_of(book, made, draws=Draws(300, 1)) for _ in range(2))
    assert first == second
    assert first is not None
    assert second is not None
    assert np.array_equal(first.together.minutes, second.together.minutes)


def test_what_is_asked_to_stop_says_nothing() -> None:
    book = demos.read("lone_lamplighter").book
    made = planning.plan(book, demos.first_evening(book), quick=True).plan
    assert odds_of(book, made, draws=Draws(10), stop=lambda: True) is None


def test_a_pass_left_out_is_never_finished() -> None:
    book = demos.read("lone_lamplighter").book
    fewer = replace(
        book, bench_time=replace(book.bench_time, stretches=book.bench_time.stretches[:0])
    )
    made = planning.plan(fewer, demos.first_evening(book), quick=True).plan
    found = odds_of(fewer, made, draws=Draws(20))
    assert found is not None
    assert found.together.by(0.5) is None
    assert found.together.planned is None


def test_the_logbook_takes_the_place_of_what_is_assumed() -> None:
    """With no fact the law is the assumed one; the diary moves a rate by its own weight.

    A share of 0.03 that is worth 30 passes is 0.9 of 30; one mishap more,
    in no pass that was finished, makes it 1.9 of 31.
    """
    book = demos.read("lone_lamplighter").book
    law = spreads_of(book, NOW)
    assert law.lost.mean == pytest.approx(assumed("session lost"))
    assert law.person.variance == pytest.approx(PERSON_SD**2)
    assert law.redone_share(Stage.BASE) == pytest.approx(0.03)
    project = book.projects[0]
    model = project.models[0]
    step = next(step for step in model.steps if step.stage is Stage.BASE)
    event = Happened(at=MONDAY, event=Event.DISLIKED, model=model.name, step=step.id)
    told = replace(book, projects=(replace(project, diary=(event,)),))
    assert spreads_of(told, NOW).redone_share(Stage.BASE) == pytest.approx(1.9 / 31)
