"""Films as the plan lays them, merged where they melt together, and their readiness."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from planner.cure import Band, Film, film_um, observed_film
from planner.graph.gates import PassGate
from planner.passes import Pass
from planner.schedule.judge.premises import Case, PassSpan
from planner.values.coating import Clock, Mark, State, Window
from planner.values.moment import Interval
from planner.values.plan import PassKey
from planner.values.step import Bound

THICKEST_UM = 1e5  # no film is thicker, however many coats melt together


class GateStart(NamedTuple):
    """What a gate counts from.

    ``start`` and ``end`` are those of the pass that laid the film, or, for
    a film that melted into the next coat, of that coat (definition 11).
    ``film`` is None where the earlier pass laid none.
    """

    film: Film | None
    start: int
    end: int


class WindowCheck(NamedTuple):
    """One window against one start.

    ``opens`` None: never; ``closes`` None: stays open.  ``uncertain``: empty
    between late opening and early closing, judged at nominal values
    (definition 9).
    """

    window: Window
    opens: int | None
    closes: int | None
    uncertain: bool
    opened: bool
    in_time: bool
    prepared: bool

    @property
    def holds(self) -> bool:
        """Tell whether the pass may stand where it stands."""
        return self.opened and self.in_time and self.prepared


@dataclass(frozen=True)
class JudgedCoat:
    """One film on one place, for the rules that ask what lies where at a minute.

    From ``absorbed`` on it is part of the coat that melted into it.
    ``handled`` is when it is dry to handle, late; None is never.
    """

    key: PassKey
    place: str
    start: int
    absorbed: int | None
    film: Film
    handled: int | None

    def lies(self, minute: int) -> bool:
        """Tell whether it was begun before ``minute`` and is still a film of its own."""
        return self.start < minute and (self.absorbed is None or self.absorbed >= minute)


class Films:
    """Every film of a plan.

    Parameters
    ----------
    case
        The plan before the judge.
    """

    def __init__(self, case: Case) -> None:
        self.case = case
        self.premises = case.premises
        self._film: dict[tuple[str, PassKey], Film] = {}
        self._merges: dict[tuple[PassKey, PassKey, str], bool] = {}
        self._coating_at = {
            (key, place): coating
            for key, pass_ in self.premises.passes.items()
            for place, coating in pass_.films
        }

    # -- marks ------------------------------------------------------------

    def ready(self, film: Film, state: State, band: Band = Band.LATE) -> int | None:
        """First minute at which ``film`` has reached ``state``; None is never."""
        return self.premises.cure.ready_at(film, state, band)

    def opens(self, laid: GateStart, mark: Mark | None, band: Band) -> int | None:
        """First minute of a window (definitions 4 and 6); None is never."""
        if mark is None:
            return laid.end
        if mark.minutes is not None and (laid.film is None or mark.clock is Clock.ELAPSED):
            return laid.end + mark.minutes
        if laid.film is None:
            return None
        return self.premises.cure.opens_at(laid.film, mark, band)

    def closes(self, laid: GateStart, mark: Mark | None, band: Band) -> int | None:
        """First minute after a window (definitions 4 and 7); None is never."""
        if mark is None:
            return None
        if mark.minutes is not None and (laid.film is None or mark.clock is Clock.ELAPSED):
            return laid.start + mark.minutes
        if laid.film is None:
            return None
        return self.premises.cure.closes_at(laid.film, mark, laid.start, band)

    def look(
        self,
        gate: PassGate,
        laid: GateStart,
        window: Window,
        span: PassSpan,
        prepared: list[Interval],
    ) -> WindowCheck:
        """Hold one window against where the later pass stands."""
        bound = gate.closing
        opens = self.opens(laid, window.opens, gate_band(gate))
        closes = self.closes(laid, window.closes, Band.EARLY)
        uncertain = closes is not None and (opens is None or opens >= closes)
        if uncertain:
            opens = self.opens(laid, window.opens, Band.NOMINAL)
            closes = self.closes(laid, window.closes, Band.NOMINAL)
        in_time = (
            closes is None
            or (bound is Bound.START and span.start < closes)
            or (bound is Bound.END and span.end <= closes)
        )
        need = window.preparation_minutes
        return WindowCheck(
            window=window,
            opens=opens,
            closes=closes,
            uncertain=uncertain,
            opened=opens is not None and opens <= span.start,
            in_time=in_time,
            prepared=not need
            or any(
                interval.minutes >= need
                and opens is not None
                and opens <= interval.start
                and interval.end <= span.start
                for interval in prepared
            ),
        )

    def looks(self, gate: PassGate, laid: GateStart) -> list[WindowCheck]:
        """Hold every window of a gate against where its later pass stands."""
        span = self.case.spans[gate.after]
        prepared = self.case.preparations.get(gate.after, [])
        return [self.look(gate, laid, window, span, prepared) for window in gate.windows]

    # -- films ------------------------------------------------------------

    def bare(self, key: PassKey, place: str) -> Film:
        """Return the film of one coat as if it had melted into nothing."""
        coating = self.premises.coatings[self._coating_at[key, place]]
        step = self.premises.passes[key].step
        location = self.case.book.room.location(step.dries_in).name
        return Film(coating, film_um(step, coating), location, self.case.spans[key].end)

    def film(self, key: PassKey, place: str) -> Film:
        """Return the film of a coat, as the one below makes it (definition 11)."""
        found = self._film.get((place, key))
        if found is None:
            found = self.bare(key, place)
            below = self._below.get((key, place))
            if below:
                under = self.film(below, place)
                if self.merges(below, key, place):
                    thick = min(found.thickness_um + under.thickness_um, THICKEST_UM)
                    found = replace(
                        found, thickness_um=thick, wet_um=under.wet_um, lower=under.lower
                    )
                else:
                    found = self.premises.cure.over(found, under)
            if looks := self.premises.observed.get(key):
                found = observed_film(self.premises.cure, found, looks)
            self._film[place, key] = found
        return found

    def merges(self, lower: PassKey, upper: PassKey, place: str) -> bool:
        """Tell whether ``upper`` was laid in a melting window of ``lower`` (definition 11)."""
        asked = (lower, upper, place)
        if asked not in self._merges:
            self._merges[asked] = self._melts(lower, upper, place)
        return self._merges[asked]

    def _melts(self, lower: PassKey, upper: PassKey, place: str) -> bool:
        coating = self._coating_at[lower, place]
        for gate in self.premises.gates_between.get((lower, upper), ()):
            alike = gate.place and self._coating_at.get((lower, gate.place)) == coating
            if not alike or not any(window.merges for window in gate.windows):
                continue
            lower_span, upper_span = self.case.spans[lower], self.case.spans[upper]
            if upper_span.start < lower_span.end:
                continue
            laid = GateStart(self.film(lower, place), lower_span.start, lower_span.end)
            chosen = next((look for look in self.looks(gate, laid) if look.holds), None)
            if chosen:
                return chosen.window.merges
        return False

    @cached_property
    def _above(self) -> dict[tuple[PassKey, str], Pass]:
        """The placed pass whose film lies next above a placed film on a place."""
        return {
            (lower.key, place): upper
            for (_, _, place), stack in self._stacks.items()
            for lower, upper in pairwise(one for one in stack if one.key in self.case.spans)
        }

    @cached_property
    def _below(self) -> dict[tuple[PassKey, str], PassKey]:
        """The placed pass whose film lies next below a placed film on a place."""
        return {(upper.key, place): lower for (lower, place), upper in self._above.items()}

    @cached_property
    def handled(self) -> dict[tuple[PassKey, str], int | None]:
        """When the film of a coat on a place is dry to handle, late; None is never."""
        return {
            (coat.key, coat.place): coat.handled for coats in self.coats.values() for coat in coats
        }

    def stack(self, key: PassKey, place: str) -> list[Pass]:
        """Return the passes that lay a film on a place of ``key``'s model, in working order."""
        return self._stacks[key.project, key.model, place]

    @cached_property
    def _stacks(self) -> dict[tuple[str, str, str], list[Pass]]:
        found: dict[tuple[str, str, str], list[Pass]] = defaultdict(list)
        for pass_ in self.premises.passes.values():
            for place, _ in pass_.films:
                found[pass_.key.project, pass_.key.model, place].append(pass_)
        return found

    def laid(self, gate: PassGate) -> GateStart:
        """Return what a gate counts from, following films that melted into later ones."""
        key, rank = gate.before, self.premises.passes[gate.after].rank
        if not gate.place:
            span = self.case.spans[key]
            return GateStart(None, span.start, span.end)
        covered: int | None = None
        while (upper := self._above.get((key, gate.place))) and upper.rank < rank:
            if not self.merges(key, upper.key, gate.place):
                covered = self.case.spans[upper.key].end
                break
            key = upper.key
        span = self.case.spans[key]
        film = self.film(key, gate.place)
        if covered is not None:
            film = replace(film, buried=covered)
        return GateStart(_pooled(film, gate), span.start, span.end)

    def unmerged(self, gate: PassGate) -> GateStart:
        """Return what a gate would count from if films never melted together."""
        span = self.case.spans[gate.before]
        film = _pooled(self.bare(gate.before, gate.place), gate) if gate.place else None
        return GateStart(film, span.start, span.end)

    @cached_property
    def coats(self) -> dict[tuple[str, str, str], list[JudgedCoat]]:
        """Every film of the plan by (project, model, part), in working order."""
        found: dict[tuple[str, str, str], list[JudgedCoat]] = defaultdict(list)
        for key, pass_ in self.premises.passes.items():
            if key not in self.case.spans:
                continue
            start = self.case.spans[key].start
            for place, _ in pass_.films:
                upper = self._above.get((key, place))
                melted = upper and self.merges(key, upper.key, place)
                absorbed = self.case.spans[upper.key].start if upper and melted else None
                film = self.film(key, place)
                dry = self.ready(film, State.DRY_TO_HANDLE)
                coat = JudgedCoat(key, place, start, absorbed, film, dry)
                found[key.project, key.model, place.partition("/")[0]].append(coat)
        return found


def gate_band(gate: PassGate) -> Band:
    """Return the end of the band at which a gate opens (definition 6)."""
    return Band.NOMINAL if gate.likely else Band.LATE


def _pooled(film: Film, gate: PassGate) -> Film:
    """Return a film as thick as a gate takes it to be (definition 5)."""
    if gate.pooled == 1.0:
        return film
    return replace(film, thickness_um=min(film.thickness_um * gate.pooled, THICKEST_UM))
