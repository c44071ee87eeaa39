"""The working order as the logbook has left it (definitions 3 and 22).

What is noted stands as it was done.  A coat that is not noted, though later
work on its places is, has been overtaken and follows behind; so does what was
to follow it.  Judge and heuristic read a model in this order.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from typing import NamedTuple

from planner.values.step import UNDONE_BY, Stage, Step

Coat = tuple[str, int]
"""Id of a step, and which coat of it."""


ENDS = {end: stage for stage, end in UNDONE_BY.items()}


class WrittenCoat(NamedTuple):
    """One coat of a model in the written order: what it lays, touches and works on."""

    step: Step
    coat: int
    laid: frozenset[str]
    places: frozenset[str]
    parts: frozenset[str]

    @property
    def key(self) -> Coat:
        """Its step and coat."""
        return self.step.id, self.coat


def order_as_done(
    written: Sequence[WrittenCoat], noted: Collection[Coat]
) -> tuple[int, ...] | None:
    """Return the numbers of all work that counts, as done and left; None for the written order."""
    gone = passed_over(written, noted)
    behind = overtaken(written, noted)
    if not gone and not behind:
        return None
    return tuple(_Walk(written, noted, behind).order(gone))


def overtaken(written: Sequence[WrittenCoat], noted: Collection[Coat]) -> dict[int, int]:
    """Return what later work on its places has overtaken, and the last work that did."""
    last: dict[str, int] = {}
    found: dict[int, int] = {}
    for at in range(len(written) - 1, -1, -1):
        work = written[at]
        if work.key in noted:
            for place in work.places:
                last.setdefault(place, at)
        elif by := max((last[place] for place in work.places if place in last), default=0):
            found[at] = by
    return found


def passed_over(written: Sequence[WrittenCoat], noted: Collection[Coat]) -> dict[int, int]:
    """Return what is not noted although what takes it off is, and that work.

    Nothing is unmasked that was not masked, nothing wiped back that was no wash.
    """
    found: dict[int, int] = {}
    for at, work in enumerate(written):
        ends = UNDONE_BY.get(work.step.stage)
        if ends is None or work.key in noted:
            continue
        left = set(work.places)
        for later in range(at + 1, len(written)):
            other = written[later]
            if other.step.stage is ends and other.key in noted and left & other.places:
                found[at] = later
                break
            if other.step.stage is work.step.stage and other.step is not work.step:
                left -= other.places  # what ends that one is no word on this
    return found


class _Walk:
    """The written order walked through once, with what is held back for what was done."""

    def __init__(
        self, written: Sequence[WrittenCoat], noted: Collection[Coat], behind: dict[int, int]
    ) -> None:
        self.written = written
        self.noted = noted
        self.behind = behind
        self.held: list[int] = []
        self.open: dict[tuple[str, Stage], int] = {}  # what lies on a place and is to come off

    def order(self, gone: Collection[int]) -> Iterator[int]:
        """Yield the numbers of what counts."""
        for at in range(len(self.written)):
            if at in gone:
                continue
            if self.written[at].key not in self.noted and self._waits(at, self.held, at - 1):
                self.held.append(at)
                continue
            yield self._done(at)
            yield from self._released(at)
        yield from self.held  # under a mask that nothing takes off

    def _released(self, at: int) -> Iterator[int]:
        """Yield what was held back and need not be any more, once ``at`` is passed."""
        again = True
        while again:
            again = False
            for number, one in enumerate(self.held):
                if not self._waits(one, self.held[:number], at) and not self._kept_out(one):
                    self.held.pop(number)
                    yield self._done(one)
                    again = True
                    break

    def _done(self, at: int) -> int:
        work = self.written[at]
        stage = work.step.stage
        for place in work.places:
            if stage is Stage.MASK or (stage in UNDONE_BY and self._end_of(place, at) is not None):
                self.open[place, stage] = at
            elif stage in ENDS:
                self.open.pop((place, ENDS[stage]), None)
        return at

    def _waits(self, at: int, held: Sequence[int], passed: int) -> bool:
        """Tell whether work comes behind what is noted further on, or what is held back."""
        if self.behind.get(at, -1) > passed:
            return True
        if self._meanwhile(at):
            out = self._all_kept_out()
            held = [one for one in held if one not in out]
        return any(self._binds(one, at) for one in held)

    def _kept_out(self, at: int) -> bool:
        """Tell whether something was put over a coat's places before its turn."""
        laid = self.written[at].laid
        return any(place in laid and over > at for (place, _), over in self.open.items())

    def _all_kept_out(self) -> set[int]:
        """Return what is kept out until something comes off, and all that waits for it."""
        out: set[int] = set()
        for one in self.held:
            if self._kept_out(one) or any(self._binds(other, one) for other in out):
                out.add(one)
        return out

    def _meanwhile(self, at: int) -> bool:
        """Tell whether work takes something off, or is what that was put on for."""
        work = self.written[at]
        if ENDS.get(work.step.stage) is not None:
            return any((place, ENDS[work.step.stage]) in self.open for place in work.places)
        return bool(work.laid) and any(
            (place.partition("/")[0] in work.parts if stage is Stage.MASK else place in work.laid)
            and over < at < (self._end_of(place, over) or len(self.written))
            for (place, stage), over in self.open.items()
        )

    def _end_of(self, place: str, over: int) -> int | None:
        """Return the number of what takes something off a place, if it is written."""
        ends = UNDONE_BY[self.written[over].step.stage]
        for at in range(over + 1, len(self.written)):
            if self.written[at].step.stage is ends and place in self.written[at].places:
                return at
        return None

    def _binds(self, first: int, then: int) -> bool:
        """Tell whether work that is written later must not come before other work."""
        one, two = self.written[first], self.written[then]
        named = (*two.step.after, *(gate.after for gate in two.step.gates))
        if one.step is two.step or one.step.id in named or one.places & two.places:
            return True
        if one.step.stage is Stage.MASK and two.laid and one.parts & two.parts:
            return True
        over = two.step.stage is Stage.UNMASK and bool(one.laid) and bool(one.parts & two.parts)
        return over and any(
            self.written[at].step.stage is Stage.MASK and self.written[at].places & two.places
            for at in range(first)
        )
