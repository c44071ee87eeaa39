"""Minutes as this person works them, by stage and tool, against those that were planned.

The logarithm of real over planned minutes is taken as normal with known
variances on three levels: this person against the estimate, a stage and tool
against the person, one pass against its stage.  With little data the answer
stays near the estimate.

References
----------
Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.5 (normal mean,
known variance) and section 5.4 (pooled mean of groups).  Clipping far values
at a fixed distance from the median is Huber's (1964) idea.  The three
standard deviations are assumed.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from statistics import fmean, median
from typing import NamedTuple

from planner.cure import life_in_room
from planner.evening.split_steps import places_of
from planner.values.book import Book
from planner.values.book_changes import with_models, with_projects, with_steps
from planner.values.model import Model
from planner.values.project import Logged, Project
from planner.values.step import Minutes, Stage, Step, Tool
from planner.values.wishes import Learned

PERSON_SD = 0.3  # a person against the estimates: assumed [ln]
STAGE_SD = 0.15  # a stage and tool against the person: assumed [ln]
PASS_SD = 0.25  # one pass against its stage: assumed [ln]
CLIP = 1.5  # of PASS_SD from the median, beyond which a value pulls no harder: Huber
SURE = 1.96  # standard deviations of a two-sided interval of 95 %
NEGLIGIBLE = 0.05  # a twentieth more or less is no lesson: assumed


class Work(NamedTuple):
    """What minutes are learned for."""

    stage: Stage
    tool: Tool


@dataclass(frozen=True)
class Estimate:
    """A mean and a variance of the logarithm of a factor."""

    mean: float
    variance: float

    @property
    def factor(self) -> float:
        """The factor itself."""
        return math.exp(self.mean)

    @property
    def low(self) -> float:
        """The lower end of the interval of 95 %."""
        return math.exp(self.mean - SURE * math.sqrt(self.variance))

    @property
    def high(self) -> float:
        """The upper end of the interval of 95 %."""
        return math.exp(self.mean + SURE * math.sqrt(self.variance))

    @property
    def sure(self) -> bool:
        """Tell whether the interval leaves out the estimate, and what hardly differs from it."""
        return self.low > 1 + NEGLIGIBLE or self.high < 1 - NEGLIGIBLE


@dataclass(frozen=True)
class PaceLine:
    """What the logbook says of one stage and tool.

    Attributes
    ----------
    passes
        Number of passes that it is learned from.
    planned, worked
        Their minutes, as planned and as they were [min].
    estimate
        Factor on the minutes as they stand in the book now.
    agreed
        Factor that was agreed to before and is in those minutes; 1 for none.
    """

    work: Work
    passes: int
    planned: int
    worked: int
    estimate: Estimate
    agreed: float


def posterior(prior: Estimate, values: Iterable[float], sd: float) -> Estimate:
    """Return what normal values of a known deviation make of a normal prior.

    The precisions add; the mean is weighted by them.

    References
    ----------
    Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.5, eq. 2.11 and 2.12.
    """
    seen = list(values)
    if not seen:
        return prior
    precision = 1 / prior.variance + len(seen) / sd**2
    weighted = prior.mean / prior.variance + sum(seen) / sd**2
    return Estimate(weighted / precision, 1 / precision)


def clipped(values: Iterable[float]) -> list[float]:
    """Return values with those far from the median drawn in, so that one slip teaches little."""
    seen = list(values)
    if not seen:
        return seen
    middle, most = median(seen), CLIP * PASS_SD
    return [min(middle + most, max(middle - most, value)) for value in seen]


def person(values: Mapping[Work, list[float]]) -> Estimate:
    """Return how this person's minutes stand to the estimates over all stages.

    Each stage counts by the precision of its own mean.
    """
    precision, weighted = 1 / PERSON_SD**2, 0.0
    for seen in values.values():
        variance = STAGE_SD**2 + PASS_SD**2 / len(seen)
        precision += 1 / variance
        weighted += fmean(seen) / variance
    return Estimate(weighted / precision, 1 / precision)


def stage_pace(person_: Estimate, values: list[float]) -> Estimate:
    """Return the pace of one stage and tool, drawn towards the person's own."""
    prior = Estimate(person_.mean, STAGE_SD**2)
    own = posterior(prior, values, PASS_SD)
    pull = own.variance / STAGE_SD**2  # how much of the person's pace is in it
    return Estimate(own.mean, own.variance + pull**2 * person_.variance)


def learned_minutes(book: Book) -> tuple[PaceLine, ...]:
    """Return what the logbook teaches, for each stage and tool that it tells minutes of."""
    agreed = {Work(learned.stage, learned.tool): learned for learned in book.pace.learned}
    entries = _entries(book, agreed)
    values = {
        work: clipped(math.log(worked / planned) for planned, worked in seen)
        for work, seen in entries.items()
    }
    own = person(values)
    return tuple(
        PaceLine(
            work,
            len(seen),
            sum(planned for planned, _ in seen),
            sum(worked for _, worked in seen),
            stage_pace(own, values[work]),
            agreed[work].factor if work in agreed else 1.0,
        )
        for work, seen in sorted(entries.items())
    )


def pace_levels(book: Book) -> tuple[Estimate, dict[Work, Estimate]]:
    """Return this person's pace, and that of each stage and tool with the person's held fast.

    So both can be drawn one below the other: whoever is slow is so at everything.
    """
    agreed = {Work(learned.stage, learned.tool): learned for learned in book.pace.learned}
    values = {
        work: clipped(math.log(worked / planned) for planned, worked in seen)
        for work, seen in _entries(book, agreed).items()
    }
    own = person(values)
    prior = Estimate(own.mean, STAGE_SD**2)
    return own, {work: posterior(prior, seen, PASS_SD) for work, seen in values.items()}


def _entries(book: Book, agreed: Mapping[Work, Learned]) -> dict[Work, list[tuple[int, int]]]:
    """Return (planned, worked) of every entry that teaches, by stage and tool."""
    found: dict[Work, list[tuple[int, int]]] = defaultdict(list)
    for project in book.projects:
        steps = {(m.name, step.id): step for m in project.models for step in m.steps}
        for entry in project.log:
            step = steps[entry.model, entry.step]
            work = Work(step.stage, step.tool)
            if _teaches(entry) and (work not in agreed or entry.start >= agreed[work].since):
                assert entry.planned is not None
                assert entry.minutes is not None
                found[work].append((entry.planned, entry.minutes))
    return found


def _teaches(entry: Logged) -> bool:
    return entry.end is not None and entry.planned is not None and entry.minutes is not None


def rescaled(book: Book, work: Work, factor: float) -> Book:
    """Return the book with the minutes of a stage and tool rescaled in steps not begun.

    A step that would outlast the mix that it uses stays as it is.
    """

    def changed(project: Project) -> Project:
        begun = {(entry.model, entry.step) for entry in project.log}

        def step_of(model: Model, step: Step) -> Step:
            if (model.name, step.id) in begun or Work(step.stage, step.tool) != work:
                return step
            return _rescaled(book, model, step, factor)

        return with_models(
            project, lambda model: with_steps(model, lambda step: step_of(model, step))
        )

    return with_projects(book, changed)


def _rescaled(book: Book, model: Model, step: Step, factor: float) -> Step:
    parts = len({place.partition("/")[0] for place in places_of(model, step)})
    colours = len({application.coating for application in step.applications})
    minutes = scaled(step.minutes, factor, parts, colours)
    takes = step.least_piece or step.attended(minutes.of(parts, colours))
    lives = [life_in_room(book, application.coating) for application in step.applications]
    if any(life is not None and takes > life for life in lives):
        return step
    return replace(step, minutes=minutes)


def scaled(minutes: Minutes, factor: float, parts: int, colours: int) -> Minutes:
    """Return minutes times ``factor``; what rounding takes from a part, the fixed share gives."""
    per_part = min(1440, round(minutes.per_part * factor))
    per_change = min(1440, round(minutes.per_change * factor))
    rest = minutes.of(parts, colours) * factor
    rest -= per_part * parts + per_change * max(0, colours - 1)
    fixed = min(1440, max(0, round(rest)))
    if fixed + per_part == 0:
        fixed = 1
    return Minutes(fixed=fixed, per_part=per_part, per_change=per_change)
