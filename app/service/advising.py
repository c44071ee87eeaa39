"""What would help a date, tried: each measure planned, judged and met with the same luck."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any
from zoneinfo import ZoneInfo

import numpy as np

from app.service import few_runs, wording
from app.service.measures import DateMeasure, measures
from app.service.planning import Planned, plan
from app.service.planning_errors import Stopped, Unsound
from planner.bench import Stretch
from planner.chance.assumptions import assumed
from planner.chance.draws import Draws
from planner.chance.film_runs import Gains
from planner.chance.odds import SEED, FinishOdds, Odds, odds_of
from planner.chance.spreads import Spreads, spreads_of
from planner.layers.findings import find
from planner.schedule.judge import Premises
from planner.schedule.staying.policy import moved_passes
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.message import Message, message
from planner.values.moment import FOREVER, moment_of
from planner.values.project import Pin, Project
from planner.values.refusal import Refused

SURE = 0.8  # the certainty by which measures are ranked: four in five
LEAST_DAYS = 0.25  # what buys less, and no chance, is not told
LEAST_CHANCE = 0.02
DAY = 1440

Stop = Callable[[], bool]


def never() -> bool:
    """Go on to the end."""
    return False


@dataclass(frozen=True)
class ProjectGain:
    """What a measure does to one project: chance of its date before and after; None without one."""

    project: str
    days: float
    before: float | None
    after: float | None


@dataclass(frozen=True)
class DateAdvice:
    """A measure that helps, and what it buys.

    Attributes
    ----------
    days
        By how many days all projects together end earlier on average.
    chance
        By how much the least sure date becomes surer [0 to 1]; None without
        a date.
    projects
        The same for each project by itself: one may pay for another.
    moved
        How many passes go to another session.
    """

    measure: DateMeasure
    planned: Planned
    book: Book
    days: float
    chance: float | None
    projects: tuple[ProjectGain, ...]
    moved: int


class Adviser:
    """Tries measures on one plan of a book, all with the same luck.

    Parameters
    ----------
    runs
        How many runs each is tried with.
    scale
        Factor on the spread that forecasts have taught.
    """

    def __init__(
        self,
        book: Book,
        planned: Planned,
        *,
        runs: int | None = None,
        seed: int = SEED,
        scale: float = 1.0,
        stop: Stop = never,
    ) -> None:
        self.book, self.planned, self.stop = book, planned, stop
        self.draws = Draws(runs or int(assumed("runs")), seed)
        self.spreads: Spreads = spreads_of(book, planned.plan.now, scale)
        self.gains: Gains = {}
        self.few = {count: Draws(count, seed) for count in few_runs.stages(self.draws.runs)}
        self.unsound = len(find(book))
        self.odds = self.simulated(book, planned)

    def simulated(self, book: Book, planned: Planned, draws: Draws | None = None) -> Odds:
        """Return the odds of a plan, by the same luck as all others, or by less of it."""
        premises = Premises(book, planned.cure, planned.calendar)
        found = odds_of(
            book,
            planned.plan,
            premises=premises,
            spreads=self.spreads,
            draws=draws or self.draws,
            gains=self.gains,
            stop=self.stop,
        )
        if found is None:
            raise Stopped
        return found

    def all(
        self, tell: Callable[[int, int, str], None] = lambda *_: None
    ) -> tuple[DateAdvice, ...]:
        """Return the measures that help, the one that buys most first.

        ``tell`` hears before each which one of how many it is, and its name.

        Raises
        ------
        Stopped
            As soon as ``stop`` says so.
        """
        every = list(measures(self.book, self.planned, self.odds))
        found = []
        for number, measure in enumerate(every):
            tell(number + 1, len(every), measure.scenario.name)
            advice = self.tried(measure)
            if advice is not None and helps(advice):
                found.append(advice)
        found.sort(key=lambda one: (-(one.chance or 0), -one.days, one.measure.scenario.name))
        return tuple(found)

    def tried(self, measure: DateMeasure) -> DateAdvice | None:
        """Return what a measure buys; None where it cannot be, or leaves more undone or unsound."""
        try:
            book = measure.scenario.apply(self.book).book
            if len(find(book)) > self.unsound:
                return None
            last = self.planned.plan
            made = plan(book, last.now, last=_known_to(book, last), stop=self.stop)
        except (Refused, Unsound):
            return None
        if made.plan.cost.unplaced > last.cost.unplaced:
            return None
        odds = self.simulated(book, made)
        days, chance = gained(self.odds, odds)
        return DateAdvice(
            measure,
            made,
            book,
            days,
            chance,
            _projects(self.odds, odds),
            moved_passes(made.calendar, last, made.plan),
        )

    def may_buy(self, planned: Planned, wanted: Callable[[few_runs.Most], bool]) -> bool:
        """Tell whether another plan of the book may still buy what is wanted, once all runs go."""
        return all(
            wanted(few_runs.most(self.odds, self.simulated(self.book, planned, draws)))
            for draws in self.few.values()
        )

    # -- the latest start -------------------------------------------------------------------------

    def latest_start(self, project: str, model: str = "", sure: float = SURE) -> Stretch | None:
        """Return the last session on which a project, or a model of it, can still be begun.

        Whatever of it is not begun waits until then; all else goes on as it
        is planned; the date of the project is kept with this certainty.
        None where it is not even if begun at once; who begins later is no surer.

        Raises
        ------
        Refused
            If the project has no date.
        """
        target = self.odds.of(project).target
        if target is None:
            raise Refused(project, message("has no date; give it one"))
        sessions = self.planned.calendar.stretches(self.planned.plan.now, target)
        if not sessions or not self._may_wait(project, model, sessions[0], sure):
            return None
        low, high = 0, len(sessions)
        while high - low > 1:
            middle = (low + high) // 2
            if self._may_wait(project, model, sessions[middle], sure):
                low = middle
            else:
                high = middle
        return sessions[low]

    def _may_wait(self, project: str, model: str, session: Stretch, sure: float) -> bool:
        """Tell whether a project, begun so late or one model of it, keeps its date so surely."""
        start = moment_of(session.interval.start, self.planned.calendar.zone)

        def late(old: Project) -> Project:
            begun = {(entry.model, entry.step) for entry in old.log}
            waits = [
                Pin(model=one.name, step=step.id, not_before=start)
                for one in old.models
                if model in ("", one.name)
                for step in one.steps
                if (one.name, step.id) not in begun and not step.after
            ]
            return replace(old, pins=(*old.pins, *waits))

        book = with_project(self.book, project, late)
        made = plan(book, self.planned.plan.now, last=self.planned.plan, stop=self.stop)
        if made.plan.cost.unplaced > self.planned.plan.cost.unplaced:
            return False
        for count, draws in self.few.items():
            share = self.simulated(book, made, draws).of(project).in_time or 0.0
            if few_runs.decided(share, count, sure):
                return share >= sure
        return (self.simulated(book, made).of(project).in_time or 0.0) >= sure


def _known_to(book: Book, last: Any) -> Any:
    """Return a plan without the work of models that the book has no more."""
    models = {
        (project.name, model.name)
        for project in book.projects
        if project.active
        for model in project.models
    }
    kept = tuple(one for one in last.placements if one.key[:2] in models)
    return last if len(kept) == len(last.placements) else replace(last, placements=kept)


def helps(advice: DateAdvice) -> bool:
    """Tell whether a measure buys enough of anything to be told."""
    gained = [advice.days >= LEAST_DAYS, (advice.chance or 0) >= LEAST_CHANCE]
    gained += [
        (one.after or 0) - (one.before or 0) >= LEAST_CHANCE
        for one in advice.projects
        if one.before is not None
    ]
    return any(gained)


def gained(before: Odds, after: Odds) -> tuple[float, float | None]:
    """Return days gained on average, and chance of the least sure date; None without a date."""
    return _days(before.together, after.together), _chance(before, after)


def _days(before: FinishOdds, after: FinishOdds) -> float:
    """Return by how many days runs end earlier on average; what never ends counts as the last."""
    both = np.concatenate((before.minutes, after.minutes))
    ended = both[both < FOREVER]
    last = ended.max() if ended.size else 0
    was, is_ = (np.minimum(one.minutes, last).mean() for one in (before, after))
    return float(was - is_) / DAY


def _chance(before: Odds, after: Odds) -> float | None:
    was, is_ = (
        min((one.in_time for one in odds.projects if one.in_time is not None), default=None)
        for odds in (before, after)
    )
    return None if was is None or is_ is None else is_ - was


def _projects(before: Odds, after: Odds) -> tuple[ProjectGain, ...]:
    found = []
    known = {one.project: one for one in after.projects}
    for was in before.projects:
        is_ = known.get(was.project)
        if is_ is not None:
            found.append(ProjectGain(was.project, _days(was, is_), was.in_time, is_.in_time))
    return tuple(found)


def advice_line(advice: DateAdvice) -> Message:
    """Return a measure with what it buys and costs."""
    buys = bought(advice)
    return message(
        "{measure}: {buys}; costs {cost}",
        measure=advice.measure.scenario.name,
        buys=buys,
        cost=advice.measure.cost,
    )


def bought(advice: DateAdvice) -> Message:
    """Return what a measure buys, in days and in chance."""
    if advice.chance is None:
        return message("{days:.1f} days on average", days=advice.days)
    return message(
        "{days:.1f} days on average, {percent:+d} % chance of the date",
        days=advice.days,
        percent=round(100 * advice.chance),
    )


def trade_lines(advice: DateAdvice) -> Iterator[Message]:
    """Yield what a measure does to each of several projects with a date."""
    dated = [one for one in advice.projects if one.before is not None and one.after is not None]
    for one in dated if len(dated) > 1 else ():
        yield message(
            "  {project}: {before} % before, {after} % after",
            project=one.project,
            before=round(100 * (one.before or 0)),
            after=round(100 * (one.after or 0)),
        )


def start_line(project: str, model: str, session: Stretch | None, zone: ZoneInfo) -> Message:
    """Return until when one may wait with a project or a model."""
    name = model or project
    if session is None:
        return message("{name}: too late to keep the date in four runs of five", name=name)
    return message(
        "{name}: begin on {day} at the latest to keep the date in four runs of five",
        name=name,
        day=wording.day(session.interval.start, zone),
    )


def advice_json(advice: DateAdvice) -> dict[str, Any]:
    """Return advice as JSON data; shares from 0 to 1."""
    return {
        "measure": str(advice.measure.scenario.name),
        "kind": advice.measure.kind.value,
        "cost": str(advice.measure.cost),
        "days": round(advice.days, 3),
        "chance": advice.chance,
        "moved": advice.moved,
        "projects": [
            {
                "project": one.project,
                "days": round(one.days, 3),
                "before": one.before,
                "after": one.after,
            }
            for one in advice.projects
        ],
    }
