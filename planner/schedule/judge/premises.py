"""What the judge knows before it rules: the book expanded, and where things stand."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.graph.gates import PassGate, gates_of
from planner.passes import Pass, expand
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.mix import film_of_mix
from planner.values.moment import Interval, minute_of, moment_of, zone_named
from planner.values.plan import BenchKind, BenchWork, PassKey, Placement, Plan
from planner.values.plausible_dates import PLAN_REACH
from planner.values.project import Logged, Observed

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

LEAST_LEFT = 5  # minutes that work under way still takes at least (definition 23)
FIRST_MINUTE, LAST_MINUTE = 365 * 1440, 230 * 366 * 1440  # 1971 to about 2200


class Premises:
    """What follows from the book alone; may be shared between judgements.

    Parameters
    ----------
    book
        What is planned.
    cure, calendar
        Tables to reuse; by default the judge makes its own.
    """

    def __init__(
        self, book: Book, cure: Cure | None = None, calendar: BenchCalendar | None = None
    ) -> None:
        self.book = book
        self.zone: ZoneInfo = zone_named(book.bench_time.zone)
        self.cure = cure or Cure(book.room, self.zone)
        self.calendar = calendar or BenchCalendar(book.bench_time)
        self.coatings: dict[str, Coating] = {coating.name: coating for coating in book.coatings}
        for mix in book.mixes:
            self.coatings[mix.name] = film_of_mix(mix, self.coatings)
        self.passes: dict[PassKey, Pass] = {}
        self.gates: list[PassGate] = []
        self.facts: dict[PassKey, Logged] = {}
        self.observed: dict[PassKey, list[Observed]] = defaultdict(list)
        for project in book.projects:
            if not project.active:
                continue
            for model in project.models:
                self.passes.update((pass_.key, pass_) for pass_ in expand(project, model))
                self.gates.extend(gates_of(book, project, model))
            for entry in project.log:
                self.facts[PassKey(project.name, entry.model, entry.step, entry.coat)] = entry
            for look in project.observed:
                key = PassKey(project.name, look.model, look.step, look.coat)
                self.observed[key].append(look)

    @cached_property
    def models(self) -> dict[tuple[str, str], list[Pass]]:
        """The passes of each (project, model), in working order."""
        found: dict[tuple[str, str], list[Pass]] = defaultdict(list)
        for pass_ in self.passes.values():
            found[pass_.key.project, pass_.key.model].append(pass_)
        return found

    @cached_property
    def coats_of(self) -> dict[tuple[str, str, str], list[Pass]]:
        """The passes of each (project, model, step), in working order."""
        found: dict[tuple[str, str, str], list[Pass]] = defaultdict(list)
        for pass_ in self.passes.values():
            found[pass_.key.project, pass_.key.model, pass_.key.step].append(pass_)
        return found

    @cached_property
    def touchers(self) -> dict[tuple[str, str, str], list[Pass]]:
        """The passes that touch each (project, model, "part/place"), in working order."""
        found: dict[tuple[str, str, str], list[Pass]] = defaultdict(list)
        for pass_ in self.passes.values():
            for place in pass_.places:
                found[pass_.key.project, pass_.key.model, place].append(pass_)
        return found

    @cached_property
    def gates_between(self) -> dict[tuple[PassKey, PassKey], list[PassGate]]:
        """The gates of each (before, after)."""
        found: dict[tuple[PassKey, PassKey], list[PassGate]] = defaultdict(list)
        for gate in self.gates:
            found[gate.before, gate.after].append(gate)
        return found


@dataclass(frozen=True)
class PassSpan:
    """Where a pass stands: as logged if it is a fact, else as planned."""

    pieces: tuple[Interval, ...]
    airbrush: str
    fact: bool
    under_way: bool = False

    @cached_property
    def start(self) -> int:
        """First minute."""
        return self.pieces[0].start

    @cached_property
    def end(self) -> int:
        """Minute after the last."""
        return self.pieces[-1].end


class Case:
    """One plan before the judge.

    Facts come from the logbook, never from the plan.  A placement that is
    no placement at all (no piece, pieces that run backwards, minutes out of
    all bounds) is set aside; definitions 1 and 2 speak of it.
    """

    def __init__(self, premises: Premises, plan: Plan, expected_digest: str | None) -> None:
        self.premises = premises
        self.plan = plan
        self.expected_digest = expected_digest
        self.book = premises.book
        self.sound_now = _whole(plan.now)
        self.spans: dict[PassKey, PassSpan] = {}
        for key, entry in premises.facts.items():
            if key in premises.passes:
                self.spans[key] = self._fact(key, entry)
        for placed in plan.placements:
            if placed.key in premises.passes and placed.key not in self.spans and self.sane(placed):
                self.spans[placed.key] = PassSpan(placed.pieces, placed.airbrush, fact=False)
        self.bench = [work for work in plan.bench if self.in_bounds(work.interval)]
        self.preparations: dict[PassKey, list[Interval]] = defaultdict(list)
        for work in self.bench:
            if work.kind is BenchKind.PREPARE and work.serves is not None:
                self.preparations[work.serves].append(work.interval)

    def _fact(self, key: PassKey, entry: Logged) -> PassSpan:
        start = minute_of(entry.start)
        if entry.end is not None:
            return PassSpan((Interval(start, minute_of(entry.end)),), entry.airbrush, fact=True)
        now = max(self.plan.now, start) if self.sound_now else start
        end = now + max(self.premises.passes[key].minutes - (now - start), LEAST_LEFT)
        return PassSpan((Interval(start, end),), entry.airbrush, fact=True, under_way=True)

    def in_bounds(self, interval: Interval) -> bool:
        """Tell whether an interval is whole minutes within reach of ``now``."""
        return self.sound_now and all(
            _whole(end) and abs(end - self.plan.now) <= PLAN_REACH
            for end in (interval.start, interval.end)
        )

    def sane(self, placed: Placement) -> bool:
        """Tell whether a placement has pieces that can be judged; facts may be as old as they are.

        How long ago a model was begun is nobody's business; definition 22
        compares what the plan says of it.
        """
        ends = [end for piece in placed.pieces for end in (piece.start, piece.end)]
        if placed.key in self.premises.facts:
            return self.sound_now and bool(ends) and all(map(_whole, ends))
        return bool(ends) and all(self.in_bounds(piece) for piece in placed.pieces)

    def begin(self, key: PassKey) -> int:
        """First minute of a placed pass, its preparations included."""
        start = self.spans[key].start
        return min([start, *(preparation.start for preparation in self.preparations.get(key, ()))])

    def planned(self) -> Iterator[tuple[Pass, PassSpan]]:
        """Yield the passes that are placed and no facts."""
        for key, span in self.spans.items():
            if not span.fact:
                yield self.premises.passes[key], span

    def attended(self, pass_: Pass, span: PassSpan) -> tuple[Interval, ...]:
        """Return when hands are at a pass: all of its pieces, or where it goes on alone the first.

        Of work that goes on alone no more than its first minutes count.
        """
        if not pass_.step.goes_alone:
            return span.pieces
        minutes = pass_.step.attended(pass_.minutes)
        return tuple(
            Interval(piece.start, min(piece.end, piece.start + minutes)) for piece in span.pieces
        )

    @cached_property
    def hands(self) -> tuple[tuple[Interval, str], ...]:
        """Every planned interval of attended work and what it is."""
        at_work = [
            (interval, str(placed.key))
            for placed, span in self.planned()
            for interval in self.attended(placed, span)
        ]
        return (*at_work, *((work.interval, named(work)) for work in self.bench))

    def at(self, minute: int) -> str:
        """Return a minute in local words."""
        if not _whole(minute):
            return f"minute {minute}"
        return moment_of(minute, self.premises.zone).strftime("%a %Y-%m-%d %H:%M")


def _whole(minute: object) -> bool:
    """Tell whether a minute is whole and in the years that the values allow."""
    return type(minute) is int and FIRST_MINUTE <= minute <= LAST_MINUTE


def named(work: BenchWork) -> str:
    """Return what a bench work is called in a message."""
    if work.kind is BenchKind.PREPARE:
        return f"preparation for {work.serves}"
    return f"{work.kind} of {work.airbrush or 'no airbrush'}"
