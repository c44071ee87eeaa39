"""The graph of a model's steps laid out in layers: what waits for what, from left to right.

No Qt.  A step stands in the layer behind the last step that it waits for;
within a layer, near the steps that it is linked with.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from planner.graph.network import network
from planner.values.book import Book
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused

if TYPE_CHECKING:
    import networkx as nx

SWEEPS = 4  # times the layers are put in order, forwards and back


@dataclass(frozen=True)
class Layout:
    """Where each step stands, and the links that say something new.

    ``spots`` holds (layer, line) by step id; ``links`` pairs of ids, those
    left out that follow from others.
    """

    spots: dict[str, tuple[int, int]]
    links: tuple[tuple[str, str], ...]
    layers: int
    lines: int

    def before(self, step: str) -> tuple[str, ...]:
        """Return the steps that a step waits for."""
        return tuple(link for link, then in self.links if then == step)

    def behind(self, step: str) -> tuple[str, ...]:
        """Return the steps that wait for a step."""
        return tuple(then for link, then in self.links if link == step)


def layout_of(book: Book, project: Project, model: Model) -> Layout:
    """Return the layers of a model's steps.

    Raises
    ------
    Refused
        If steps wait for each other in a circle.
    """
    import networkx as nx  # noqa: PLC0415 - a good part of a start, and not needed then

    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(step.id for step in model.steps)
    for before, after in network(book, project, model).edges:
        if before.step != after.step:
            graph.add_edge(before.step, after.step)
    if not nx.is_directed_acyclic_graph(graph):
        raise Refused("steps", "some steps wait for each other in a circle")
    thin = nx.transitive_reduction(graph)
    order = {step.id: number for number, step in enumerate(model.steps)}
    layers = [sorted(layer, key=order.__getitem__) for layer in nx.topological_generations(thin)]
    lines = _lined_up(layers, thin)
    spots = {name: (at, lines[name]) for at, layer in enumerate(layers) for name in layer}
    links = tuple(sorted(thin.edges, key=lambda pair: (order[pair[0]], order[pair[1]])))
    return Layout(spots, links, len(layers), max(lines.values(), default=-1) + 1)


def _lined_up(layers: list[list[str]], graph: nx.DiGraph[str]) -> dict[str, int]:
    """Return a line for each step, so that links cross little (barycentre, some sweeps)."""
    line = {name: number for layer in layers for number, name in enumerate(layer)}
    for sweep in range(SWEEPS):
        forwards = sweep % 2 == 0
        for layer in layers if forwards else reversed(layers):

            def middle(name: str, forwards: bool = forwards) -> float:
                near = list(graph.predecessors(name) if forwards else graph.successors(name))
                return sum(line[other] for other in near) / len(near) if near else line[name]

            layer.sort(key=middle)
            line.update({name: number for number, name in enumerate(layer)})
    return line


class Layouts:
    """Layouts of models, kept until a model or the coatings are others."""

    def __init__(self) -> None:
        self._kept: dict[tuple[str, str], tuple[tuple[object, ...], Layout]] = {}

    def of(self, book: Book, project: Project, model: Model) -> Layout:
        """Return the layout of a model."""
        spot, made_of = (project.name, model.name), (book.coatings, book.mixes, model)
        kept = self._kept.get(spot)
        if kept is None or any(a is not b for a, b in zip(kept[0], made_of, strict=True)):
            kept = self._kept[spot] = (made_of, layout_of(book, project, model))
        return kept[1]
