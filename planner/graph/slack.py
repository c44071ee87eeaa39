"""Earliest times of a project's passes and their slack, on the elapsed clock.

Films dry around the clock, so about how long a project needs, however much
bench time there is, follows from its passes, its gates and the air.  Bench
time, hands, airbrushes, drying places and fingers are left out: the schedule
sees to those.  Every pass stands as early as it can; where that makes a later
one miss a window, a schedule that waits may do better, so this guides and
proves nothing.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from planner.cure import Band, Cure, Film, film_um
from planner.graph.critical import CriticalPath, Lag, critical_path
from planner.graph.gates import PassGate
from planner.graph.network import network
from planner.passes import Pass
from planner.values.book import Book
from planner.values.coating import Mark, State, Window
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Logged, Project
from planner.values.step import Bound

if TYPE_CHECKING:
    import networkx as nx

NOW, DRY = "now", "all dry"  # nodes beside the passes
LEAST_LEFT = 5  # of work under way (definition 23) [min]


def _empty() -> nx.DiGraph[PassKey | str]:
    import networkx as nx  # noqa: PLC0415 - a good part of a start, and rarely needed then

    return nx.DiGraph()


def _sorted(graph: nx.DiGraph[PassKey]) -> Iterator[PassKey]:
    import networkx as nx  # noqa: PLC0415

    yield from nx.topological_sort(graph)


@dataclass(frozen=True)
class Slack:
    """How early a project can be done, and what can wait for how long.

    Attributes
    ----------
    path
        Times of every pass not yet logged [min]; ``finish`` is the end of
        the work or of the last film's drying to handle (definition 26).
    never
        Passes that a film holds up for ever in this air, and what follows them.
    wet
        Passes whose films never become dry to handle in this air; the finish
        takes no account of them.
    missed
        Gates whose last window closes before the pass can be reached.
    """

    path: CriticalPath[PassKey]
    never: tuple[PassKey, ...]
    wet: tuple[PassKey, ...]
    missed: tuple[PassGate, ...]


def slack(book: Book, project: Project, now: int, cure: Cure) -> Slack:
    """Return the earliest times and the slack of a project from ``now`` on."""
    walk = _Walk(book, project, now, cure)
    for model in project.models:
        graph = network(book, project, model)
        for key in _sorted(graph):
            gates = [
                gate for _, _, data in graph.in_edges(key, data=True) for gate in data["gates"]
            ]
            walk.do(graph.nodes[key]["work"], gates)
        graph.clear()  # a graph holds itself, and would keep all of this until a clearing up
    found = critical_path(walk.lags(), release=dict.fromkeys(walk.graph, now))
    times = {key: of for key, of in found.times.items() if isinstance(key, PassKey)}
    walk.graph.clear()
    path = CriticalPath(times, found.finish)
    return Slack(path, tuple(walk.never), tuple(walk.wet), tuple(walk.missed))


@dataclass(frozen=True)
class _Opening:
    """One window of a gate: the pass may start at ``opens``, and not after ``latest``."""

    opens: int
    latest: int | None


@dataclass
class _Walk:
    """Every pass as early as its gates allow, in an order that the gates allow.

    Passes done or under way stand where the logbook has them.
    """

    book: Book
    project: Project
    now: int
    cure: Cure
    graph: nx.DiGraph[PassKey | str] = field(default_factory=_empty)
    spans: dict[PassKey, tuple[int, int]] = field(default_factory=dict)
    films: dict[tuple[PassKey, str], Film] = field(default_factory=dict)
    top: dict[tuple[str, str], PassKey] = field(default_factory=dict)
    melted: dict[tuple[PassKey, str], tuple[PassKey, str]] = field(default_factory=dict)
    dry: int = 0
    never: list[PassKey] = field(default_factory=list)
    wet: list[PassKey] = field(default_factory=list)
    missed: list[PassGate] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.log = {(entry.model, entry.step, entry.coat): entry for entry in self.project.log}
        self.graph.add_node(NOW, minutes=0)
        self.graph.add_node(DRY, minutes=0)

    def do(self, pass_: Pass, gates: list[PassGate]) -> None:
        """Take the next pass; all passes before it were taken."""
        entry = self.log.get((pass_.key.model, pass_.key.step, pass_.key.coat))
        if entry is not None:
            self._lay(pass_, *self._logged(pass_, entry))
            return
        held = any(gate.before not in self.spans for gate in gates)
        windows = {} if held else {gate: self._windows(pass_, gate) for gate in gates}
        if held or not all(windows.values()):
            self.never.append(pass_.key)
            return
        start, chosen = self._earliest(pass_, windows)
        self.graph.add_node(pass_.key, minutes=pass_.minutes)
        self.graph.add_edge(NOW, pass_.key, lags=[Lag()])
        for gate, opening in chosen.items():
            self._link(gate, opening)
        self._lay(pass_, start, start + pass_.minutes)

    def lags(self) -> nx.DiGraph[PassKey | str]:
        """Return the graph, with the end held where the walk found it."""
        end = max([self.now, self.dry, *(end for _, end in self.spans.values())])
        self.graph.add_edge(NOW, DRY, lags=[Lag(end - self.now)])
        return self.graph

    def _logged(self, pass_: Pass, entry: Logged) -> tuple[int, int]:
        start = minute_of(entry.start)
        if entry.end is not None:
            return start, minute_of(entry.end)
        return start, self.now + max(pass_.minutes - (self.now - start), LEAST_LEFT)

    def _windows(self, pass_: Pass, gate: PassGate) -> list[_Opening]:
        """Return the windows of a gate that open at all, as bounds on the start."""
        start, end = self.spans[gate.before]
        film = self._film(gate.before, gate.place) if gate.place else None
        if film is not None and gate.pooled != 1.0:
            film = replace(film, thickness_um=film.thickness_um * gate.pooled)
        tail = pass_.minutes if gate.closing is Bound.END else 1  # half-open: start < closing
        found = []
        for window in gate.windows:
            opens, closes = self._bounds(window, film, start, end, likely=gate.likely)
            if opens is not None and (closes is None or opens < closes):
                ready = max(opens, end) + window.preparation_minutes
                found.append(_Opening(ready, None if closes is None else closes - tail))
        return found

    def _bounds(
        self, window: Window, film: Film | None, start: int, end: int, *, likely: bool = False
    ) -> tuple[int | None, int | None]:
        opens = self._opens(window.opens, film, end, Band.NOMINAL if likely else Band.LATE)
        closes = self._closes(window.closes, film, start, Band.EARLY)
        if opens is not None and closes is not None and opens >= closes:
            # Empty between the bands: judged at nominal values (definition 9).
            opens = self._opens(window.opens, film, end, Band.NOMINAL)
            closes = self._closes(window.closes, film, start, Band.NOMINAL)
        return opens, closes

    def _opens(self, mark: Mark | None, film: Film | None, end: int, band: Band) -> int | None:
        if mark is None:
            return end
        return self.cure.opens_at(film, mark, band) if film else end + (mark.minutes or 0)

    def _closes(self, mark: Mark | None, film: Film | None, start: int, band: Band) -> int | None:
        if mark is None:
            return None
        return self.cure.closes_at(film, mark, start, band) if film else start + (mark.minutes or 0)

    def _earliest(
        self, pass_: Pass, windows: dict[PassGate, list[_Opening]]
    ) -> tuple[int, dict[PassGate, _Opening]]:
        """Return the first start at which every gate has an open window, and those windows."""
        start, settled = self.now, False
        chosen: dict[PassGate, _Opening] = {}
        while not settled:
            settled = True
            for gate, openings in windows.items():
                fits = (o for o in openings if o.latest is None or max(start, o.opens) <= o.latest)
                opening = next(fits, None)
                if opening is None:  # closed for good: it can only come late
                    opening = _Opening(openings[-1].opens, None)
                    if gate not in self.missed:
                        self.missed.append(gate)
                chosen[gate] = opening
                if opening.opens > start:
                    start, settled = opening.opens, False
        return start, chosen

    def _link(self, gate: PassGate, opening: _Opening) -> None:
        """Enter a gate as a lag; from what is done already it counts from now."""
        done = gate.before not in self.graph
        before, end = (NOW, self.now) if done else (gate.before, self.spans[gate.before][1])
        most = None if opening.latest is None else opening.latest - end
        if not self.graph.has_edge(before, gate.after):
            self.graph.add_edge(before, gate.after, lags=[])
        self.graph.edges[before, gate.after]["lags"].append(Lag(opening.opens - end, most))

    def _film(self, key: PassKey, place: str) -> Film:
        spot = (key, place)
        while spot in self.melted:
            spot = self.melted[spot]
        return self.films[spot]

    def _lay(self, pass_: Pass, start: int, end: int) -> None:
        self.spans[pass_.key] = (start, end)
        ready = [end]
        for place, name in pass_.films:
            coating = self.book.coating(name)
            film = Film(coating, film_um(pass_.step, coating), pass_.step.dries_in, end)
            film = self._over(film, pass_, place, start)
            self.films[pass_.key, place] = film
            self.top[pass_.key.model, place] = pass_.key
            handle = self.cure.ready_at(film, State.DRY_TO_HANDLE)
            if handle is not None:
                ready.append(handle)
            elif pass_.key not in self.wet:
                self.wet.append(pass_.key)
        self.dry = max(self.dry, *ready)
        if pass_.key in self.graph:
            self.graph.add_edge(pass_.key, DRY, lags=[Lag(max(ready) - end)])

    def _over(self, film: Film, pass_: Pass, place: str, start: int) -> Film:
        """Return a film, begun at ``start``, as what lies below makes it (definition 11)."""
        below = self.top.get((pass_.key.model, place))
        if below is None:
            return film
        lower = self._film(below, place)
        for window in lower.coating.recoat:
            if window.merges:
                opens, closes = self._bounds(window, lower, *self.spans[below])
                if opens is not None and opens <= start and (closes is None or start < closes):
                    self.melted[below, place] = (pass_.key, place)
                    thick = film.thickness_um + lower.thickness_um
                    return replace(film, thickness_um=thick, wet_um=lower.wet_um, lower=lower.lower)
        self.films[below, place] = replace(lower, buried=film.laid)
        return self.cure.over(film, lower)
