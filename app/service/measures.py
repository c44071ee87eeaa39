"""What would help a date: changes made from the plan itself, to be tried one by one.

Each is a `what_if.Scenario`, an edit of the book that a person could make,
with a word on what it costs them.  Nothing is judged here; `advising` plans
and simulates what this proposes.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from enum import StrEnum

from app.service import warm_box
from app.service.measure_changes import (
    Aside,
    OnTonight,
    OtherCoating,
    SecondAirbrush,
    TwoPeople,
    WarmBox,
    Warmer,
    Weightier,
)
from app.service.planning import Planned
from app.service.what_if import LeaveOut, Once, Scenario, TriedChange, stages_left
from planner.bench import Stretch
from planner.chance.odds import Odds
from planner.layers.mend_coatings import PRIMER_WORDS
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.message import Message, called, message
from planner.values.moment import moment_of
from planner.values.step import CLEAR_STAGES, Stage, Tool

FREE_DAYS = 3  # so many days without bench time are tried, the first ones
LONGER_SESSIONS = 3  # so many sessions are tried an hour longer
LONGER_MINUTES = 60
WARMER_K = 3.0
SWAPS = 3
LEFT_OUT = 4
MODELS_LESS = 2
SLOW_FILMS = 2
TRIED_DAYS = 21  # a free day is looked for so far ahead
OPTIONAL = (
    Stage.FILTER,
    Stage.DRY_BRUSH,
    Stage.HIGHLIGHT,
    Stage.WEATHER,
    Stage.PIGMENT,
    Stage.CHIP,
    Stage.OIL_WASH,
    Stage.WASH,
)
"""Steps that a model is sound without, the least missed first: common practice, no source."""


class MeasureKind(StrEnum):
    """What kind of thing is done about a date."""

    SESSION = "one more session"
    LONGER = "an hour longer"
    WARMER = "a warmer room"
    BOX = "a warm box"
    COATING = "another coating"
    LEAVE_OUT = "leave out a step"
    MODEL_LESS = "one model less"
    TONIGHT = "a slow film tonight"
    AIRBRUSH = "a second airbrush"
    HELPER = "two people"
    FIRST = "one project first"


@dataclass(frozen=True)
class DateMeasure:
    """One thing that could be done, and what it costs the person."""

    kind: MeasureKind
    scenario: Scenario
    cost: Message


def measures(book: Book, planned: Planned, odds: Odds) -> Iterator[DateMeasure]:
    """Yield what could be done about the dates of a plan, each kind in turn."""
    yield from _sessions(book, planned)
    yield from _longer(book, planned)
    yield from _tonight(book, planned, odds)
    yield from _coatings(book, planned)
    yield from _warmth(book)
    yield from _left_out(book)
    yield from _models_less(book, odds)
    yield from _more_hands(book, planned)
    yield from _one_first(book, odds)


def _measure(kind: MeasureKind, name: Message, cost: Message, *changes: TriedChange) -> DateMeasure:
    return DateMeasure(kind, Scenario(name, changes), cost)


def _sessions(book: Book, planned: Planned) -> Iterator[DateMeasure]:
    """Yield one more session on each of the first days that have none, at usual hours."""
    hours = _usual_hours(book, planned)
    if hours is None:
        return
    calendar, now = planned.calendar, planned.plan.now
    day = moment_of(now, calendar.zone).date()
    last = max((one.end for one in planned.plan.placements), default=now)
    found = 0
    for ahead in range(1, TRIED_DAYS):
        on = day + timedelta(days=ahead)
        start = datetime.combine(on, hours[0], calendar.zone)
        end = start + timedelta(minutes=hours[1])
        if calendar.day_end(on - timedelta(days=1)) > last or found >= FREE_DAYS:
            return
        if any(
            one.on == on
            for one in calendar.stretches(calendar.day_end(on) - 1440, calendar.day_end(on))
        ):
            continue
        found += 1
        yield _measure(
            MeasureKind.SESSION,
            called(
                "one more session, {start:%Y-%m-%d %H:%M}–{end:%H:%M}",
                start=start,
                end=end,
            ),
            message("{minutes} min at the bench", minutes=hours[1]),
            Once(start, end),
        )


def _usual_hours(book: Book, planned: Planned) -> tuple[time, int] | None:
    """Return when sessions usually begin, and how long they last [min]."""
    calendar, now = planned.calendar, planned.plan.now
    counted: Counter[tuple[time, int]] = Counter()
    for stretch in calendar.stretches(now, now + 28 * 1440):
        begins = moment_of(stretch.interval.start, calendar.zone).time()
        counted[begins, stretch.interval.minutes] += 1
    return counted.most_common(1)[0][0] if counted else None


def _longer(book: Book, planned: Planned) -> Iterator[DateMeasure]:
    """Yield an hour more at the end of each of the next sessions in which something is done."""
    calendar = planned.calendar
    used: dict[int, Stretch] = {}
    for placed in sorted(planned.plan.placements, key=lambda one: one.start):
        stretch = None if placed.logged else calendar.stretch_at(placed.start)
        if stretch is not None:
            used.setdefault(stretch.interval.start, stretch)
    for stretch in list(used.values())[:LONGER_SESSIONS]:
        end = moment_of(stretch.interval.end, calendar.zone)
        more = end + timedelta(minutes=LONGER_MINUTES)
        if calendar.stretch_at(stretch.interval.end) is not None:
            continue
        yield _measure(
            MeasureKind.LONGER,
            called(
                "an hour longer, until {end:%Y-%m-%d %H:%M}",
                end=more,
            ),
            message("{minutes} min at the bench", minutes=LONGER_MINUTES),
            Once(end, more),
        )


def _tonight(book: Book, planned: Planned, odds: Odds) -> Iterator[DateMeasure]:
    """Yield films that many wait for, done in the next session instead of a later one."""
    calendar, plan = planned.calendar, planned.plan
    tonight = calendar.next_stretch(plan.now)
    if tonight is None:
        return
    slow = sorted(odds.shares, key=lambda one: -one.by_film)
    found = 0
    for one in slow:
        placed = plan.placement(one.key)
        if one.by_film < 0.2 or placed is None or found >= SLOW_FILMS:
            return
        if placed.start < tonight.interval.end:
            continue
        found += 1
        yield _measure(
            MeasureKind.TONIGHT,
            called("{step} in the next session", step=str(one.key)),
            message("it is done out of its turn"),
            OnTonight(one.key, tonight),
        )


def _coatings(book: Book, planned: Planned) -> Iterator[DateMeasure]:
    """Yield other primers and clears that are on the shelf, where the one used is slow."""
    used: Counter[tuple[Stage, str]] = Counter()
    cans: set[str] = set()
    for project in book.projects:
        done = {(entry.model, entry.step) for entry in project.log}
        for model in project.models if project.active else ():
            for step in model.steps:
                names = [one.coating for one in step.applications]
                if step.tool is Tool.CAN:
                    cans.update(names)  # what comes in a can is no bottle, nor the other way round
                elif (
                    step.stage in CLEAR_STAGES | {Stage.PRIME} and (model.name, step.id) not in done
                ):
                    used.update((step.stage, name) for name in names)
    known = {one.name: one for one in book.coatings}
    found = 0
    for (stage, name), _ in used.most_common():
        for other in book.coatings:
            if cans & {name, other.name}:
                continue
            if name in known and _serves(stage, known[name], other) and found < SWAPS:
                found += 1
                yield _measure(
                    MeasureKind.COATING,
                    called("{coating} instead of {was}", coating=other.name, was=name),
                    message("another bottle, which is on the shelf"),
                    OtherCoating(stage, name, other.name),
                )


def _serves(stage: Stage, was: Coating, other: Coating) -> bool:
    """Tell whether a coating that is in stock does the same as another."""
    if other.name == was.name or not other.in_stock_ml:
        return False
    if stage is Stage.PRIME:
        return named_so(other, PRIMER_WORDS)
    return other.finish is was.finish and named_so(other, CLEAR_WORDS)


def _warmth(book: Book) -> Iterator[DateMeasure]:
    """Yield a warmer room, and a warm box."""
    place = book.room.locations[0]
    if max(point.temperature_c for point in (*place.workdays, *place.weekends)) < 28:
        yield _measure(
            MeasureKind.WARMER,
            called("{place} {kelvin:g} °C warmer", place=place.name, kelvin=WARMER_K),
            message("heating, day and night"),
            Warmer(place.name, WARMER_K),
        )
    yield _measure(
        MeasureKind.BOX,
        called("slow coats dry in a warm box"),
        message("a warm box with room for {places} parts", places=warm_box.WARM_BOX.drying_places),
        WarmBox(),
    )


def _left_out(book: Book) -> Iterator[DateMeasure]:
    """Yield what a model is sound without."""
    found = 0
    for project in book.projects:
        left = stages_left(book, project.name) if project.active else ()
        for stage in OPTIONAL:
            if stage in left and found < LEFT_OUT:
                found += 1
                yield _measure(
                    MeasureKind.LEAVE_OUT,
                    called(
                        "{project} without this stage: {stage}", project=project.name, stage=stage
                    ),
                    message("what it would have looked like"),
                    LeaveOut(project.name, "", stage),
                )


def _models_less(book: Book, odds: Odds) -> Iterator[DateMeasure]:
    """Yield the models that end last and are not begun, each set aside."""
    for project in book.projects:
        begun = {entry.model for entry in project.log}
        own = [one for one in odds.models if one.project == project.name]
        if not project.active or len(own) < 2:
            continue
        own.sort(key=lambda one: -(one.by(0.5) or 10**12))
        for one in [one for one in own if one.model not in begun][:MODELS_LESS]:
            yield _measure(
                MeasureKind.MODEL_LESS,
                called("{model} is set aside", model=one.model),
                message("one model that is not finished"),
                Aside(project.name, one.model),
            )


def _more_hands(book: Book, planned: Planned) -> Iterator[DateMeasure]:
    """Yield a second airbrush, and a second person where a step needs one."""
    steps = [
        step
        for project in book.projects
        if project.active
        for model in project.models
        for step in model.steps
    ]
    if book.gear.airbrushes and any(step.tool is Tool.AIRBRUSH for step in steps):
        yield _measure(
            MeasureKind.AIRBRUSH,
            called("a second airbrush"),
            message("an airbrush, and its cleaning"),
            SecondAirbrush(),
        )
    if any(step.helper for step in steps):
        stretch = planned.calendar.next_stretch(planned.plan.now)
        if stretch is not None and stretch.people < 2:
            start, end = (
                moment_of(minute, planned.calendar.zone)
                for minute in (stretch.interval.start, stretch.interval.end)
            )
            yield _measure(
                MeasureKind.HELPER,
                called("two people at the bench {day:%Y-%m-%d}", day=stretch.on),
                message("somebody's evening"),
                TwoPeople(start, end),
            )


def _one_first(book: Book, odds: Odds) -> Iterator[DateMeasure]:
    """Yield each of several projects with dates before the others."""
    dated = [one for one in odds.projects if one.in_time is not None]
    for one in dated if len(dated) > 1 else ():
        yield _measure(
            MeasureKind.FIRST,
            called("{project} before the others", project=one.project),
            message("the other projects wait"),
            Weightier(one.project),
        )
