"""Definitions 1, 2, 3 and 17: minutes, passes, their order and their pieces."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import pairwise

from planner.passes import Pass
from planner.schedule.judge.premises import named
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.plan import BenchKind, PassKey


def minutes(ruling: Ruling) -> Iterator[Violation]:
    """Definition 1: whole minutes, half-open pieces in order, as long as the work takes."""
    case = ruling.case
    if not case.sound_now:
        yield Violation(1, "now", f"is {case.plan.now}, no whole minute of the years 1971 to 2199")
    for placed in case.plan.placements:
        if placed.key in ruling.premises.passes and placed.pieces and not case.sane(placed):
            yield Violation(
                1, str(placed.key), "has a start or end that is no whole minute near now"
            )
    for work in case.plan.bench:
        if not case.in_bounds(work.interval):
            yield Violation(1, named(work), "has a start or end that is no whole minute near now")
    for pass_, span in case.planned():
        for first, second in pairwise(span.pieces):
            if second.start < first.end:
                text = f"starts a piece at {case.at(second.start)}, before the one ahead has ended"
                yield Violation(1, str(pass_.key), text)
        given = sum(piece.minutes for piece in span.pieces)
        if given != pass_.minutes:
            text = f"is given {given} min from {case.at(span.start)} on, but takes {pass_.minutes}"
            yield Violation(1, str(pass_.key), text)


def once(ruling: Ruling) -> Iterator[Violation]:
    """Definition 2: each pass stands exactly once, or is named as unplaced."""
    known = ruling.premises.passes
    placed = Counter(placement.key for placement in ruling.case.plan.placements)
    without = Counter(unplaced.key for unplaced in ruling.case.plan.unplaced)
    for placement in ruling.case.plan.placements:
        if not placement.pieces:
            yield Violation(2, str(placement.key), "is placed without any minute of work")
    for key in dict.fromkeys([*placed, *without]):
        if key not in known:
            yield Violation(2, str(key), "is no pass of an active project")
        elif placed[key] + without[key] > 1:
            text = f"is placed {placed[key]} times and unplaced {without[key]} times"
            yield Violation(2, str(key), text)
    for key in known:
        if not placed[key] and not without[key] and key not in ruling.premises.facts:
            yield Violation(2, str(key), "is neither placed nor named as unplaced")


def order(ruling: Ruling) -> Iterator[Violation]:
    """Definition 3: what touches a place keeps the working order; so does "after"."""
    spans = ruling.case.spans
    for before, after in _ordered(ruling):
        if after not in spans or spans[after].fact:
            continue
        if before not in spans:
            text = f"stands at {ruling.case.at(spans[after].start)}, but {before} is not placed"
            yield Violation(3, str(after), text)
        elif ruling.case.begin(after) < spans[before].end:
            if _interrupts(ruling, after, before):
                continue  # definition 17 says so
            yield Violation(
                3,
                str(after),
                f"starts {ruling.case.at(ruling.case.begin(after))}, before {before} "
                f"has ended at {ruling.case.at(spans[before].end)}",
            )


def _ordered(ruling: Ruling) -> dict[tuple[PassKey, PassKey], None]:
    """Return the (before, after) that the project orders and that may be broken.

    Of all that comes earlier on a place, what ends last and what is missing.
    """
    spans = ruling.case.spans
    pairs: dict[tuple[PassKey, PassKey], None] = {}
    for touchers in ruling.premises.touchers.values():
        earlier: dict[str, PassKey] = {}
        for toucher in touchers:
            pairs.update(dict.fromkeys((before, toucher.key) for before in earlier.values()))
            if toucher.key not in spans:
                earlier["missing"] = toucher.key
            elif "last" not in earlier or spans[earlier["last"]].end < spans[toucher.key].end:
                earlier["last"] = toucher.key
    for coats in ruling.premises.coats_of.values():
        first = min(coats, key=lambda coat: coat.key.coat)
        for name in (*first.step.after, *(gate.after for gate in first.step.gates)):
            others = ruling.premises.coats_of.get((first.key.project, first.key.model, name))
            if others and not (first.reordered and others[-1].rank > first.rank):
                pairs.setdefault((others[-1].key, first.key))
    return pairs


def _interrupts(ruling: Ruling, key: PassKey, split: PassKey) -> bool:
    """Tell whether ``key`` lies between the pieces of ``split``."""
    other, span = ruling.case.spans[key], ruling.case.spans[split]
    return len(span.pieces) > 1 and span.start <= other.start < span.end


def pieces(ruling: Ruling) -> Iterator[Violation]:
    """Definition 17: only marked steps are split, into pieces that are long enough."""
    closing = {
        key: gate
        for gate in ruling.premises.gates
        if gate.closes
        for key in (gate.before, gate.after)
    }
    for pass_, span in ruling.case.planned():
        if len(span.pieces) == 1:
            continue
        about = str(pass_.key)
        least = pass_.step.least_piece
        if least is None:
            yield Violation(
                17, about, f"is split into {len(span.pieces)} pieces, but is not marked"
            )
            continue
        if pass_.key in closing:
            why = closing[pass_.key].why
            yield Violation(17, about, f"is split, but a closing gate touches it ({why})")
        short = min(span.pieces, key=lambda piece: piece.minutes)
        if short.minutes < least:
            text = f"has a piece of {short.minutes} min at {ruling.case.at(short.start)}"
            yield Violation(17, about, f"{text}, but the least is {least}")
        yield from _between(ruling, pass_)


def _between(ruling: Ruling, pass_: Pass) -> Iterator[Violation]:
    project, model = pass_.key.project, pass_.key.model
    seen: set[PassKey] = set()
    for place in pass_.places:
        for other in ruling.premises.touchers[project, model, place]:
            if other.key == pass_.key or other.key in seen:
                continue
            span = ruling.case.spans.get(other.key)
            if span and not span.fact and _interrupts(ruling, other.key, pass_.key):
                seen.add(other.key)
                at = ruling.case.at(ruling.case.spans[other.key].start)
                yield Violation(
                    17, str(pass_.key), f"{other.key} works on {place} at {at}, between its pieces"
                )


def preparations(ruling: Ruling) -> Iterator[Violation]:
    """Definition 8: a preparation serves a pass that is placed."""
    for work in ruling.case.bench:
        if work.kind is BenchKind.PREPARE and work.serves not in ruling.case.spans:
            at = ruling.case.at(work.interval.start)
            yield Violation(8, named(work), f"at {at} serves no pass of the plan")
