"""What decides a date: which passes hold the end, and whose luck moves it."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

import numpy as np

from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Floats, Minutes
from planner.pace.minutes import PASS_SD, STAGE_SD, Work
from planner.values.moment import FOREVER
from planner.values.plan import PassKey

LEAST = 0.01  # what explains less of the spread is not told: assumed
LEAST_DAYS = 0.1  # nor what moves the date by less: assumed
MOST = 6  # so many are told
MINUTES_OF_DAY = 1440


class DriverKind(StrEnum):
    """What kind of luck moves a date."""

    PACE = "pace"
    STAGE = "stage"
    ROOM = "room"
    COATING = "coating"
    SESSIONS = "sessions"
    REDONE = "redone"


class Driver(NamedTuple):
    """Something whose luck moves the date.

    Attributes
    ----------
    name
        The stage, coating or weekday (0 is Monday) that it is about, or "".
    share
        How much of the spread of the date goes with it [0 to 1].
    days
        By how many days the worst fifth of its draws ends later, on average,
        than the best fifth.
    """

    kind: DriverKind
    name: str
    share: float
    days: float


class StepShare(NamedTuple):
    """A pass, and in what share of runs it is among those that hold the end."""

    key: PassKey
    share: float
    by_film: float
    """Share of runs in which its film, not hands, is what the next one waits for."""


def step_shares(runs: BenchRuns, ends: dict[tuple[str, str], Minutes]) -> tuple[StepShare, ...]:
    """Return how often each pass holds the end, followed back from the model that ends last."""
    script, count = runs.script, len(runs.script.activities)
    if not count or not ends:
        return ()
    every = np.arange(runs.draws.runs)
    done = np.where(runs.end < 0, FOREVER, runs.end).copy()
    spots = list(ends)
    last_model = np.argmax(np.stack([ends[spot] for spot in spots]), axis=0)
    own = np.array(
        [spots.index((one.pass_.key.project, one.pass_.key.model)) for one in script.activities]
    )
    done = np.where(own[:, None] == last_model[None, :], done, -1)
    at = np.argmax(done, axis=0)
    holds = np.zeros((count, runs.draws.runs), dtype=bool)
    films = np.zeros((count, runs.draws.runs), dtype=bool)
    alive = every
    for _ in range(count):
        new = ~holds[at[alive], alive]
        alive = alive[new]
        if not alive.size:
            break
        here = at[alive]
        holds[here, alive] = True
        before, film = runs.cause[here, alive], runs.by_film[here, alive]
        goes_on = before >= 0
        alive, before, film = alive[goes_on], before[goes_on], film[goes_on]
        films[before[film], alive[film]] = True
        at[alive] = before
    shares = holds.mean(axis=1)
    by_film = films.mean(axis=1)
    found = [
        StepShare(one.pass_.key, float(shares[one.index]), float(by_film[one.index]))
        for one in script.activities
        if shares[one.index] > 0 and one.index not in script.facts
    ]
    return tuple(sorted(found, key=lambda one: (-one.share, one.key)))


def drivers_of(runs: BenchRuns, end: Minutes) -> tuple[Driver, ...]:
    """Return whose luck the date goes with most, by rank correlation; most days first.

    References
    ----------
    Saltelli et al., Sensitivity Analysis in Practice (2004), chapter 1:
    squared rank correlations as shares of a spread, for draws that do not
    hang together.
    """
    finished = end < FOREVER
    if finished.sum() < 50 or np.ptp(end[finished]) == 0:
        return ()
    end = end[finished]
    ranked = _ranks(end.astype(float))
    found = []
    for kind, name, values in _candidates(runs):
        drawn = values[finished]
        if np.ptp(drawn) == 0:
            continue
        share = float(np.corrcoef(_ranks(drawn), ranked)[0, 1])
        days = _days(drawn, end)
        if share > 0 and share * share >= LEAST and days >= LEAST_DAYS:
            found.append(Driver(kind, name, share * share, days))
    found.sort(key=lambda one: -one.share)
    return tuple(sorted(found[:MOST], key=lambda one: -one.days))


def _days(drawn: Floats, end: Minutes) -> float:
    low, high = np.quantile(drawn, [0.2, 0.8])
    worst, best = end[drawn >= max(high, low + 1e-12)], end[drawn <= low]
    if not worst.size or not best.size:
        return 0.0
    return float(worst.mean() - best.mean()) / MINUTES_OF_DAY


def _candidates(runs: BenchRuns) -> list[tuple[DriverKind, str, Floats]]:
    script, draws = runs.script, runs.draws
    ahead = [one for one in script.activities if one.index not in script.facts]
    found: list[tuple[DriverKind, str, Floats]] = [
        (DriverKind.PACE, "", draws.normal("person")),
        (DriverKind.ROOM, "", draws.normal("room")),
    ]
    stages: dict[str, Floats] = {}
    redone: dict[str, Floats] = {}
    coatings: dict[str, Floats] = {}
    for one in ahead:
        step, key = one.pass_.step, one.pass_.key
        drawn = draws.normal("stage", *Work(step.stage, step.tool)) * STAGE_SD
        drawn = drawn + draws.normal("pass", *key) * PASS_SD
        minutes = one.pass_.minutes * drawn
        stages[step.stage.value] = stages.get(step.stage.value, 0.0) + minutes
        again = runs.redone[one.index].astype(float)
        redone[step.stage.value] = redone.get(step.stage.value, 0.0) + again
        films = (script.table.films[one.index, place] for place, _ in one.pass_.films)
        for name in {film.coating.name for film in films}:
            coatings.setdefault(name, draws.normal("bottle", name))
    found += [(DriverKind.STAGE, name, values) for name, values in stages.items()]
    found += [(DriverKind.REDONE, name, values) for name, values in redone.items()]
    found += [(DriverKind.COATING, name, values) for name, values in coatings.items()]
    found += _weekdays(runs)
    return found


def _weekdays(runs: BenchRuns) -> list[tuple[DriverKind, str, Floats]]:
    """Return how many sessions of each weekday are lost, of those that the plan needs."""
    script = runs.script
    last = max((item.session for item in script.items), default=-1)
    days: dict[str, Floats] = {}
    for number in range(last + 1):
        day = str(script.sessions[number].on.weekday())
        days[day] = days.get(day, 0.0) + runs.sessions_lost[number].astype(float)
    return [(DriverKind.SESSIONS, day, values) for day, values in days.items()]


def _ranks(values: Floats) -> Floats:
    """Return ranks, the mean one for equal values."""
    _, inverse, counts = np.unique(values, return_inverse=True, return_counts=True)
    upper = counts.cumsum()
    ranks: Floats = (upper - (counts - 1) / 2)[inverse]
    return ranks
