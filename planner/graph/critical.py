"""Critical path method with lags, least and greatest.

The graph is a networkx DiGraph.  Each node carries its duration as
``minutes`` (any unit will do, if it is the same throughout), each edge a
tuple of `Lag` as ``lags``.  Every lag becomes one or two arcs between
*starts*, "start of j - start of i >= weight"; a greatest lag is an arc
backwards with a negative weight.  Earliest starts are longest paths, found
by the method of Bellman and Ford; a cycle of positive length means that no
schedule exists (Bartusch, Möhring, Radermacher 1988, Ann. Oper. Res. 16:201).
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise
from typing import TYPE_CHECKING, Generic, TypeVar

if TYPE_CHECKING:
    import networkx as nx

N = TypeVar("N", bound=Hashable)


class Link(StrEnum):
    """Which ends of two pieces of work a lag lies between."""

    FINISH_START = "finish-start"
    START_START = "start-start"
    FINISH_FINISH = "finish-finish"


@dataclass(frozen=True)
class Lag:
    """Least, and if given greatest, time between two pieces of work."""

    least: int = 0
    most: int | None = None
    link: Link = Link.FINISH_START


@dataclass(frozen=True)
class Times:
    """When one piece of work may begin and end.

    ``total_float`` is how much later it may begin without moving the end of
    the whole.
    """

    early_start: int
    total_float: int


@dataclass(frozen=True)
class CriticalPath(Generic[N]):
    """Times of every node, the end of the whole, and what holds that end."""

    times: Mapping[N, Times]
    finish: int

    @property
    def critical(self) -> tuple[N, ...]:
        """Nodes of which any delay delays the whole, by earliest start."""
        nodes = [node for node, times in self.times.items() if times.total_float <= 0]
        return tuple(sorted(nodes, key=lambda node: self.times[node].early_start))


class Infeasible(ValueError):  # noqa: N818 - it is an answer, not a fault of ours
    """No schedule keeps every lag; ``cycle`` names the nodes that contradict each other."""

    def __init__(self, cycle: tuple[Hashable, ...], excess: int) -> None:
        path = ", then ".join(str(node) for node in cycle)
        super().__init__(f"{path} and back asks for {excess} more than there is")
        self.cycle = cycle
        self.excess = excess


def critical_path(
    graph: nx.DiGraph[N], release: Mapping[N, int] | None = None, finish: int | None = None
) -> CriticalPath[N]:
    """Return early and late times and floats of every node.

    Parameters
    ----------
    graph
        Nodes with ``minutes``, edges with ``lags``.
    release
        Earliest start of nodes that may not begin at 0.
    finish
        When the whole must have ended; absent, as soon as it can be.

    Raises
    ------
    Infeasible
        If the lags contradict each other.
    """
    minutes: dict[N, int] = {node: data["minutes"] for node, data in graph.nodes.items()}
    if not minutes:
        return CriticalPath({}, finish or 0)
    arcs = _arcs(graph, minutes)
    released = {node: (release or {}).get(node, 0) for node in graph}
    early = _longest(arcs, released)
    end = max(early[node] + minutes[node] for node in graph)
    finish = end if finish is None else finish
    backwards = {(j, i): weight for (i, j), weight in reversed(arcs.items())}
    to_end = _longest(backwards, minutes)
    times = {node: Times(early[node], finish - to_end[node] - early[node]) for node in graph}
    return CriticalPath(times, end)


def _arcs(graph: nx.DiGraph[N], minutes: Mapping[N, int]) -> dict[tuple[N, N], int]:
    """Return the heaviest start-to-start arc between each two nodes."""
    arcs: dict[tuple[N, N], int] = {}
    for (before, after), data in graph.edges.items():
        for lag in data["lags"]:
            for i, j, weight in _weights(lag, before, after, minutes):
                arcs[i, j] = max(arcs.get((i, j), weight), weight)
    return arcs


def _weights(lag: Lag, before: N, after: N, minutes: Mapping[N, int]) -> Iterator[tuple[N, N, int]]:
    offset = {
        Link.FINISH_START: minutes[before],
        Link.START_START: 0,
        Link.FINISH_FINISH: minutes[before] - minutes[after],
    }[lag.link]
    yield before, after, offset + lag.least
    if lag.most is not None:
        yield after, before, -(offset + lag.most)


def _longest(arcs: Mapping[tuple[N, N], int], begin: Mapping[N, int]) -> dict[N, int]:
    """Return the longest way to each node, which begins with ``begin`` of some node.

    networkx has the method, but its search for the cycle that makes a network
    infeasible gives up on some (``find_negative_cycle``: "detected but not
    found"); the predecessors kept here always lead to it.
    """
    length = dict(begin)
    before: dict[N, N] = {}
    for _ in range(len(length) + 1):
        changed: list[N] = []
        for (i, j), weight in arcs.items():
            if length[i] + weight > length[j]:
                length[j] = length[i] + weight
                before[j] = i
                changed.append(j)
        if not changed:
            return length
    node = changed[0]
    for _ in length:  # after as many steps back as there are nodes, it is on a cycle
        node = before[node]
    cycle = [node]
    while before[cycle[-1]] != node:
        cycle.append(before[cycle[-1]])
    cycle.reverse()
    excess = sum(arcs[pair] for pair in pairwise([*cycle, cycle[0]]))
    raise Infeasible(tuple(cycle), excess)
