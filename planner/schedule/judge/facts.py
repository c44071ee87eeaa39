"""Definitions 22 to 24: what was logged, what is now, and what was pinned."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from planner.cure import Band
from planner.passes import Pass
from planner.schedule.judge.films import gate_band
from planner.schedule.judge.premises import PassSpan
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.moment import Interval, minute_of
from planner.values.plan import PassKey, Placement
from planner.values.present import last_told, present
from planner.values.project import Pin, Project
from planner.values.step import Trait


def logged(ruling: Ruling) -> Iterator[Violation]:
    """Definition 22: facts stand in the plan as logged, and nothing else claims to be one."""
    case, at = ruling.case, ruling.case.at
    for key, span in case.spans.items():
        if not span.fact:
            continue
        placed = case.plan.placement(key)
        if placed is None or not placed.pieces:
            yield Violation(22, str(key), f"was logged at {at(span.start)}, but is not in the plan")
        elif not placed.logged:
            yield Violation(22, str(key), "was logged, but the plan does not say so")
        elif _altered(placed, span):
            text = f"was logged {at(span.start)} to {at(span.end)}"
            if span.under_way:
                text = f"was begun {at(span.start)}, as logged"
            yield Violation(22, str(key), f"{text}, but the plan says otherwise")
    for placed in case.plan.placements:
        if placed.logged and placed.key not in ruling.premises.facts:
            yield Violation(22, str(placed.key), "is called a fact, but was never logged")


def _altered(placed: Placement, span: PassSpan) -> bool:
    if placed.airbrush != span.airbrush:
        return True
    if span.under_way:
        return placed.start != span.start
    return placed.pieces != span.pieces


def from_now_on(ruling: Ruling) -> Iterator[Violation]:
    """Definition 23: nothing unlogged before now; what is under way comes first."""
    case, at = ruling.case, ruling.case.at
    hands = case.hands
    told = last_told(case.book)
    if told is not None and present(case.book, case.plan.now) > case.plan.now:
        text = f"is {at(case.plan.now)}, but {told.what} was logged at {at(told.minute)}"
        yield Violation(23, "now", text)
    for interval, about in hands:
        if interval.start < case.plan.now:
            text = f"starts {at(interval.start)}, before now ({at(case.plan.now)})"
            yield Violation(23, about, f"{text}, and was not logged")
    for key, span in case.spans.items():
        if not span.under_way:
            continue
        placed = case.plan.placement(key)
        if placed and placed.pieces and placed.start == span.start and placed.pieces != span.pieces:
            text = f"is under way and lasts to {at(span.end)}, but the plan says otherwise"
            yield Violation(23, str(key), text)
        (busy,) = case.attended(ruling.premises.passes[key], span)
        for interval, about in hands:
            if interval.overlaps(busy) and interval.start >= case.plan.now:
                text = f"starts {at(interval.start)}, but {key} is under way to {at(busy.end)}"
                yield Violation(23, about, f"{text} and comes first")


def pins(ruling: Ruling) -> Iterator[Violation]:
    """Definition 24: a pin holds, unless events have made it impossible."""
    for project in ruling.case.book.projects:
        for pin in project.pins if project.active else ():
            for pass_ in ruling.premises.coats_of.get((project.name, pin.model, pin.step), ()):
                span = ruling.case.spans.get(pass_.key)
                if span is None or span.fact or (pin.coat or pass_.key.coat) != pass_.key.coat:
                    continue
                if pin.beside is None:
                    yield from _pinned(ruling, pin, pass_, span)
        if project.active:
            yield from _together(ruling, project)
            yield from _pilot(ruling, project)
            yield from _begins(ruling, project)


def _together(ruling: Ruling, project: Project) -> Iterator[Violation]:
    """Hold what is wished in one stretch against where it begins."""
    for pin in project.pins:
        if pin.beside is not None:
            model, _, step = pin.beside.partition("/")
            mine = PassKey(project.name, pin.model, pin.step, pin.coat or 1)
            yield from _same_stretch(ruling, mine, PassKey(project.name, model, step, 1))
    for (name, _, _), passes in ruling.premises.coats_of.items():
        if name == project.name and Trait.ONE_STRETCH in passes[0].step.traits:
            for pass_ in passes[1:]:
                yield from _same_stretch(ruling, pass_.key, passes[0].key)


def _same_stretch(ruling: Ruling, key: PassKey, other: PassKey) -> Iterator[Violation]:
    spans, calendar = ruling.case.spans, ruling.premises.calendar
    if key not in spans or other not in spans:
        return
    stretch, others = (calendar.stretch_at(spans[other].start) for other in (key, other))
    if stretch == others:
        return
    if spans[key].fact or spans[other].fact:
        ruling.flag(f"preference: {key} and {other} were wished together, which events undid")
        return
    at = ruling.case.at
    text = f"begins {at(spans[key].start)}, in another stretch than {other}"
    yield Violation(24, str(key), f"{text}, beside which it is wished")


def _pilot(ruling: Ruling, project: Project) -> Iterator[Violation]:
    """Hold every model against the one that goes first."""
    if not project.pilot:
        return
    own = ruling.premises.models[project.name, project.pilot]
    spans = ruling.case.spans
    left = [pass_.key for pass_ in own if pass_.key not in spans]
    ended = max((spans[pass_.key].end for pass_ in own if pass_.key in spans), default=0)
    for pass_, span in ruling.case.planned():
        if pass_.key.project != project.name or pass_.key.model == project.pilot:
            continue
        if left or span.start < ended:
            what = f"{left[0]} has no place" if left else f"it ends {ruling.case.at(ended)}"
            text = f"starts {ruling.case.at(span.start)}, but {project.pilot} goes first"
            yield Violation(24, str(pass_.key), f"{text}, and {what}")


def _begins(ruling: Ruling, project: Project) -> Iterator[Violation]:
    """Hold the work of a project against the day on which it may begin."""
    if project.begins is None:
        return
    first = ruling.premises.calendar.day_end(project.begins - timedelta(days=1))
    for pass_, span in ruling.case.planned():
        if pass_.key.project == project.name and span.start < first:
            text = f"starts {ruling.case.at(span.start)}, before {project.begins}"
            yield Violation(24, str(pass_.key), text)


def _pinned(ruling: Ruling, pin: Pin, pass_: Pass, span: PassSpan) -> Iterator[Violation]:
    at = ruling.case.at
    if pin.not_before is not None:
        first = minute_of(pin.not_before)
        astray = [piece for piece in span.pieces if piece.start < first]
        wish = f"no earlier than {at(first)}"
    elif pin.interval:
        hands = ruling.case.attended(pass_, span)
        astray = [piece for piece in hands if not piece.within(pin.interval)]
        wish = f"{at(pin.interval.start)} to {at(pin.interval.end)}"
    else:
        astray = [piece for piece in span.pieces if not _begins_on(ruling, pin, piece)]
        wish = f"the bench time of {pin.on}"
    if not astray:
        return
    if _overtaken(ruling, pin, pass_):
        ruling.flag(f"preference: {pass_.key} was pinned to {wish}, which events made impossible")
        return
    text = f"is pinned to {wish}, but stands at {at(astray[0].start)} to {at(astray[0].end)}"
    yield Violation(24, str(pass_.key), text)


def _begins_on(ruling: Ruling, pin: Pin, piece: Interval) -> bool:
    stretch = ruling.premises.calendar.stretch_at(piece.start)
    return stretch is not None and stretch.on == pin.on


def _overtaken(ruling: Ruling, pin: Pin, pass_: Pass) -> bool:
    """Tell whether now, or a fact that a gate counts from, rules the pin out.

    What can be placed after facts through other unlogged passes is not
    looked at: then the pin is hard, and a plan that cannot keep it leaves
    the pass unplaced.
    """
    if pin.not_before is not None:
        return False
    first, last = _pinned_minutes(ruling, pin)
    earliest = max([ruling.case.plan.now, first, *_after_facts(ruling, pass_.key)])
    shut = [minute for minute in _closed_by_facts(ruling, pass_.key) if minute <= first]
    hands = pass_.step.attended(pass_.minutes)
    least = min(pass_.step.least_piece or hands, hands)
    return earliest + least > last or bool(shut)


def _pinned_minutes(ruling: Ruling, pin: Pin) -> tuple[int, int]:
    if pin.interval:
        return pin.interval.start, pin.interval.end
    assert pin.on is not None
    calendar = ruling.premises.calendar
    midnight = calendar.day_end(pin.on - timedelta(days=1))
    found = [
        stretch.interval
        for stretch in calendar.stretches(midnight, calendar.day_end(pin.on))
        if stretch.on == pin.on
    ]
    if not found:
        return midnight, calendar.day_end(pin.on)
    return found[0].start, max(interval.end for interval in found)


def _after_facts(ruling: Ruling, key: PassKey) -> Iterator[int]:
    """Yield the openings, from facts alone, of the gates on a pass."""
    for gate in ruling.premises.gates:
        before = ruling.case.spans.get(gate.before)
        if gate.after == key and before and before.fact:
            opens = ruling.films.opens(
                ruling.films.laid(gate), gate.windows[0].opens, gate_band(gate)
            )
            yield before.end if opens is None else opens


def _closed_by_facts(ruling: Ruling, key: PassKey) -> Iterator[int]:
    """Yield when the gates on a pass close for good, counted from facts alone."""
    for gate in ruling.premises.gates:
        before = ruling.case.spans.get(gate.before)
        if gate.after == key and before and before.fact:
            mark = gate.windows[-1].closes
            closes = ruling.films.closes(ruling.films.laid(gate), mark, Band.EARLY)
            if closes is not None:
                yield closes
