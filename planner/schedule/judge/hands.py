"""Definitions 12 to 14: bench time, hands and the calendars of the tools."""

from __future__ import annotations

from collections.abc import Iterator

from planner.bench import AIRED
from planner.schedule.judge.premises import named
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.moment import Interval
from planner.values.plan import BenchKind
from planner.values.step import Tool, Trait

AIRBRUSH_WORK = (BenchKind.LOAD, BenchKind.CHANGE, BenchKind.CLEAN)


def bench_time(ruling: Ruling) -> Iterator[Violation]:
    """Definition 12: every hands interval lies within one stretch of bench time."""
    for interval, about in ruling.case.hands:
        stretch = ruling.premises.calendar.stretch_at(interval.start)
        if stretch is None:
            text = f"starts {ruling.case.at(interval.start)}, when nobody is at the bench"
            yield Violation(12, about, text)
        elif not interval.within(stretch.interval):
            text = (
                f"ends {ruling.case.at(interval.end)}, but bench time ends "
                f"{ruling.case.at(stretch.interval.end)}"
            )
            yield Violation(12, about, text)


def hands(ruling: Ruling) -> Iterator[Violation]:
    """Definition 13: one pair of hands, two for helper steps, and airbrushes of one's own.

    Against work under way definition 23 speaks, since that comes first.
    """
    at = ruling.case.at
    busy = sorted(ruling.case.hands)
    latest: tuple[Interval, str] | None = None
    for interval, about in busy:
        if latest and interval.start < latest[0].end:
            text = f"starts {at(interval.start)}, while {latest[1]} lasts to {at(latest[0].end)}"
            yield Violation(13, about, text)
        if latest is None or interval.end > latest[0].end:
            latest = (interval, about)
    for key, span in ruling.case.spans.items():
        if span.fact and not span.under_way:
            (at_it,) = ruling.case.attended(ruling.premises.passes[key], span)
            for interval, about in busy:
                if interval.overlaps(at_it):
                    text = f"starts {at(interval.start)}, while {key} was done, as logged"
                    yield Violation(13, about, text)
    yield from _helpers(ruling)
    yield from _airbrushes(ruling)
    yield from _left_alone(ruling)


def _left_alone(ruling: Ruling) -> Iterator[Violation]:
    """Let hands be at no unit on which another pass goes on alone."""
    spans, passes = ruling.case.spans, ruling.premises.passes
    for key, span in spans.items():
        pass_ = passes[key]
        if not pass_.step.goes_alone:
            continue
        (first,) = [*ruling.case.attended(pass_, span)][:1]
        parts = {part for unit in pass_.units for part in unit.parts}
        for other in ruling.premises.models[key.project, key.model]:
            theirs = spans.get(other.key)
            if other.key == key or theirs is None or theirs.fact:
                continue
            if parts.isdisjoint(part for unit in other.units for part in unit.parts):
                continue
            taken = [
                *ruling.case.attended(other, theirs),
                *ruling.case.preparations.get(other.key, ()),
            ]
            for interval in sorted(taken):
                if interval.start < span.end and first.end < interval.end:
                    text = f"takes up at {ruling.case.at(interval.start)} what {key} is left alone"
                    yield Violation(
                        13, str(other.key), f"{text} with until {ruling.case.at(span.end)}"
                    )
                    break


def _helpers(ruling: Ruling) -> Iterator[Violation]:
    for pass_, span in ruling.case.planned():
        for piece in span.pieces if pass_.step.helper else ():
            stretch = ruling.premises.calendar.stretch_at(piece.start)
            if stretch and stretch.people < 2:
                text = f"needs a helper, but {ruling.case.at(piece.start)} nobody else is there"
                yield Violation(13, str(pass_.key), text)


def _airbrushes(ruling: Ruling) -> Iterator[Violation]:
    known = [airbrush.name for airbrush in ruling.case.book.gear.airbrushes]
    for pass_, span in ruling.case.planned():
        sprayed = pass_.step.tool is Tool.AIRBRUSH
        if sprayed and span.airbrush not in known:
            text = f'is sprayed with "{span.airbrush}", which is no airbrush of the gear'
            yield Violation(13, str(pass_.key), text)
        elif span.airbrush and not sprayed:
            text = f'takes the airbrush "{span.airbrush}", but is done with a {pass_.step.tool}'
            yield Violation(13, str(pass_.key), text)
    for work in ruling.case.bench:
        if work.kind in AIRBRUSH_WORK and work.airbrush not in known:
            text = f'"{work.airbrush}" is no airbrush of the gear'
            yield Violation(13, named(work), text)


def tool_hours(ruling: Ruling) -> Iterator[Violation]:
    """Definition 14: no noise nor smell in quiet hours, no can nor fine work in the dark."""
    for pass_, span in ruling.case.planned():
        for piece in span.pieces:
            if pass_.step.tool is Tool.AIRBRUSH or Trait.NOISY in pass_.step.traits:
                yield from _quiet(ruling, piece, str(pass_.key))
            if Trait.SMELLS in pass_.step.traits:
                yield from _unaired(ruling, piece, str(pass_.key))
        for interval in ruling.case.attended(pass_, span):
            if pass_.step.tool is Tool.CAN or Trait.DAYLIGHT in pass_.step.traits:
                yield from _dark(ruling, interval, str(pass_.key))
    for work in ruling.case.bench:
        if work.kind in AIRBRUSH_WORK:
            yield from _quiet(ruling, work.interval, named(work))


def _quiet(ruling: Ruling, interval: Interval, about: str) -> Iterator[Violation]:
    for quiet in ruling.premises.calendar.quiet(interval.start, interval.end):
        if quiet.overlaps(interval):
            at = ruling.case.at
            text = f"{at(interval.start)} to {at(interval.end)} runs into the quiet hours"
            yield Violation(14, about, f"{text} of {at(quiet.start)} to {at(quiet.end)}")
            return


def _unaired(ruling: Ruling, interval: Interval, about: str) -> Iterator[Violation]:
    """Let a smell be gone when others sleep: aired before each quiet time, and none in it."""
    at = ruling.case.at
    for quiet in ruling.premises.calendar.quiet(interval.start, interval.end + AIRED):
        if interval.start < quiet.end and quiet.start - interval.end < AIRED:
            text = f"smells until {at(interval.end)}, but quiet hours begin {at(quiet.start)}"
            yield Violation(14, about, f"{text}, and the room is aired for {AIRED} min before")
            return


def _dark(ruling: Ruling, interval: Interval, about: str) -> Iterator[Violation]:
    light = ruling.premises.calendar.daylight(interval.start, interval.end)
    if light is None:
        return
    reached = interval.start
    for hours in sorted(light):
        if hours.start <= reached:
            reached = max(reached, hours.end)
    if reached < interval.end:
        text = f"needs daylight at {ruling.case.at(interval.start)}, and it is dark"
        yield Violation(14, about, f"{text} from {ruling.case.at(reached)}")
