"""How sure the dates of a plan are: what many runs of it say, in shares and minutes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from math import ceil

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Draws, Flags, Minutes
from planner.chance.drivers import Driver, StepShare, drivers_of, step_shares
from planner.chance.film_runs import Gains
from planner.chance.script import Script, script_of
from planner.chance.spreads import Spreads, spreads_of
from planner.schedule.judge import Premises
from planner.schedule.missed_dates import ends_of_models
from planner.values.book import Book
from planner.values.moment import FOREVER, Interval
from planner.values.plan import Plan

SHARES = (0.5, 0.8, 0.95)
SEED = 29  # any will do; it stays, so that the same state gives the same answer


@dataclass(frozen=True)
class FinishOdds:
    """How sure the finish of a model, a project (``model`` is "") or of all (both are "") is.

    Attributes
    ----------
    planned
        When the plan has it finished; None if it leaves something out.
    target, in_time
        The end of the day that it is wished for, and the share of runs that
        make it; None without a date.
    minutes
        When each run finishes, in order; `FOREVER` where it never does.
    by_run
        The same run by run: with the same draws, each has its twin in
        another plan.
    made
        Whether each run makes the date; None without one.
    """

    project: str
    model: str
    planned: int | None
    target: int | None
    in_time: float | None
    minutes: Minutes = field(repr=False, compare=False)
    by_run: Minutes | None = field(default=None, repr=False, compare=False)
    made: Flags | None = field(default=None, repr=False, compare=False)

    def by(self, share: float) -> int | None:
        """Return the first minute by which a share of all runs is finished; None if never.

        Examples
        --------
        >>> FinishOdds("", "", None, None, None, np.array([3, 5, 8, 9, 20])).by(0.8)
        9
        """
        at = int(self.minutes[max(0, ceil(share * len(self.minutes) - 1e-9) - 1)])
        return None if at >= FOREVER else at

    def chance_by(self, minute: int) -> float:
        """Return the share of runs that is finished by a minute."""
        return float(np.searchsorted(self.minutes, minute, side="right")) / len(self.minutes)


@dataclass(frozen=True)
class Odds:
    """What many runs of one plan say.

    Attributes
    ----------
    tonight
        The session that runs, or else the next, and the share of runs in
        which all of its sheet is done, if it takes place; None where the
        plan has nothing in it.
    shares
        How often each pass is among those that hold the end, most often first.
    drivers
        What decides the date, most of it first.
    """

    now: int
    runs: int
    together: FinishOdds
    projects: tuple[FinishOdds, ...]
    models: tuple[FinishOdds, ...]
    tonight: tuple[Interval, float] | None
    shares: tuple[StepShare, ...]
    drivers: tuple[Driver, ...]

    def of(self, project: str, model: str = "") -> FinishOdds:
        """Return the odds of a project or a model; `KeyError` if it is none of the plan's."""
        for one in (*self.projects, *self.models):
            if (one.project, one.model) == (project, model):
                return one
        raise KeyError(project, model)


Stop = Callable[[], bool]


def odds_of(
    book: Book,
    plan: Plan,
    *,
    premises: Premises | None = None,
    spreads: Spreads | None = None,
    draws: Draws | None = None,
    gains: Gains | None = None,
    stop: Stop = lambda: False,
) -> Odds | None:
    """Simulate a plan of a book (definition 29); None if ``stop`` says so on the way.

    Parameters
    ----------
    spreads
        The law to draw from; what the book teaches if none is given.
    draws
        The draws; those of the standing seed if none are given.
    gains
        What courses of drying gain, kept for the next simulation in the same room.
    """
    drawn = draws or Draws(int(assumed("runs")), SEED)
    law = spreads or spreads_of(book, plan.now)
    script = script_of(book, plan, premises=premises)
    runs = BenchRuns(script, drawn, law, gains)
    try:
        return read_odds(book, script, runs) if runs.run(stop) else None
    finally:
        runs.let_go()


def read_odds(book: Book, script: Script, runs: BenchRuns) -> Odds:
    """Return what finished runs say."""
    plan, calendar = script.plan, script.problem.calendar
    ends = ends_of_runs(book, runs)
    lost = {(one.key.project, one.key.model) for one in plan.unplaced}
    planned = ends_of_models(book, plan)
    models, projects = [], []
    for project in book.projects:
        if not project.active:
            continue
        own = [(project.name, model.name) for model in project.models]
        day = None if project.target is None else calendar.day_end(project.target)
        rest = [(project.name, model.name) for model in project.models if model.target is None]
        for model, spot in zip(project.models, own, strict=True):
            date = day if model.target is None else calendar.day_end(model.target)
            told = None if spot in lost else planned[spot]
            models.append(_odds(*spot, told, date, ends[spot], ends[spot]))
        whole = np.max([ends[spot] for spot in own], axis=0)
        due = np.max([ends[spot] for spot in rest], axis=0) if rest else whole
        told = None if lost.intersection(own) else max(planned[spot] for spot in own)
        projects.append(_odds(project.name, "", told, day, whole, due))
    every = np.max([ends[spot] for spot in ends], axis=0) if ends else np.full(1, plan.now)
    told = None if lost else max(planned.values(), default=plan.now)
    return Odds(
        now=plan.now,
        runs=runs.draws.runs,
        together=_odds("", "", told, None, every, every),
        projects=tuple(projects),
        models=tuple(models),
        tonight=_tonight(runs),
        shares=step_shares(runs, ends),
        drivers=drivers_of(runs, every),
    )


def ends_of_runs(book: Book, runs: BenchRuns) -> dict[tuple[str, str], Minutes]:
    """Return when each model is finished in every run; `FOREVER` where it never is (26)."""
    found = {
        (project.name, model.name): np.full(runs.draws.runs, runs.script.plan.now, dtype=np.int64)
        for project in book.projects
        if project.active
        for model in project.models
    }
    for activity in runs.script.activities:
        key = activity.pass_.key
        spot, end = (key.project, key.model), runs.end[activity.index]
        found[spot] = np.maximum(found[spot], np.where(end < 0, FOREVER, end))
    for spot, dry in runs.dry.items():
        found[spot] = np.maximum(found[spot], dry)
    return found


def _odds(
    project: str, model: str, planned: int | None, target: int | None, ends: Minutes, due: Minutes
) -> FinishOdds:
    made = None if target is None else due <= target
    in_time = None if made is None else float(np.mean(made))
    return FinishOdds(project, model, planned, target, in_time, np.sort(ends), ends, made)


def _tonight(runs: BenchRuns) -> tuple[Interval, float] | None:
    """Return tonight and the share of runs in which its sheet is done, if it takes place."""
    script = runs.script
    sheet = [item for item in script.items if item.session == 0]
    if not sheet:
        return None
    session = script.sessions[0].interval
    late = session.end + int(assumed("finishes"))
    held = ~runs.sessions_lost[0]
    done = held.copy()
    for item in sheet:
        done &= runs.done_at[item.number] <= late
    return session, float(done.sum() / max(1, held.sum()))
