"""Passes and the gates between them as a directed graph; its cycles explained.

Whatever follows from the working order points forwards.  Only what a person
wrote on a step, ``after`` or a gate, can point back and close a cycle.
"""

from __future__ import annotations

from collections import defaultdict
from itertools import groupby
from typing import TYPE_CHECKING

from planner.graph.gates import gates_of
from planner.passes import expand, expand_model
from planner.values.book import Book
from planner.values.message import message, row
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.step import Stage

if TYPE_CHECKING:
    import networkx as nx

MOST_SAID = 8  # steps of a cycle that are named


def network(book: Book, project: Project, model: Model) -> nx.DiGraph[PassKey]:
    """Return the graph of a model's passes.

    Each node carries its `Pass` as ``one``, each edge the list of its
    `PassGate` as ``gates``.
    """
    import networkx as nx  # noqa: PLC0415 - a good part of a start, and rarely needed then

    graph: nx.DiGraph[PassKey] = nx.DiGraph()
    for pass_ in expand(project, model):
        graph.add_node(pass_.key, work=pass_)
    for gate in gates_of(book, project, model):
        if not graph.has_edge(gate.before, gate.after):
            graph.add_edge(gate.before, gate.after, gates=[])
        graph.edges[gate.before, gate.after]["gates"].append(gate)
    return graph


def order_of(project: Project, model: Model) -> nx.DiGraph[PassKey]:
    """Return a graph in which pass leads to pass as in `network`, had nothing been noted.

    A gate on a film leads from a pass that touched a place to a later one, so
    the passes that touch a place in turn are enough; it takes no longer than
    the model is long.
    """
    import networkx as nx  # noqa: PLC0415

    graph: nx.DiGraph[PassKey] = nx.DiGraph()
    last: dict[str, PassKey] = {}  # place -> who touched it last
    masks: dict[str, PassKey] = {}  # covered place -> who covered it
    below: defaultdict[PassKey, list[PassKey]] = defaultdict(list)  # mask -> coats meanwhile
    passes = expand_model(project.name, model)
    first_of: dict[str, PassKey] = {}
    last_of: dict[str, PassKey] = {}
    for pass_ in passes:
        first_of.setdefault(pass_.step.id, pass_.key)
        last_of[pass_.step.id] = pass_.key
    for pass_ in passes:
        graph.add_node(pass_.key)
        if first_of[pass_.step.id] == pass_.key:
            named = (*pass_.step.after, *(gate.after for gate in pass_.step.gates))
            graph.add_edges_from((last_of[name], pass_.key) for name in named)
        graph.add_edges_from((last[place], pass_.key) for place in pass_.places if place in last)
        over = {mask for place, mask in masks.items() if place.partition("/")[0] in pass_.parts}
        if pass_.films:
            graph.add_edges_from((mask, pass_.key) for mask in over)
        if pass_.step.stage is Stage.UNMASK:
            mine = {masks[place] for place in pass_.places if place in masks}
            graph.add_edges_from((mask, pass_.key) for mask in mine)
            graph.add_edges_from((coat, pass_.key) for mask in mine for coat in below[mask])
        for mask in over if pass_.films else ():
            below[mask].append(pass_.key)
        for place in pass_.places:
            last[place] = pass_.key
            if pass_.step.stage is Stage.MASK:
                masks[place] = pass_.key
            elif pass_.step.stage is Stage.UNMASK:
                masks.pop(place, None)
    return graph


def check_acyclic(book: Book) -> None:
    """Demand that no step waits for itself, directly or through others.

    Raises
    ------
    Refused
        Naming the steps of the cycle and the place that closes it.
    """
    for number, project in enumerate(book.projects):
        for position, model in enumerate(project.models):
            backwards = _pointing_back(model)
            if not backwards:
                continue
            import networkx as nx  # noqa: PLC0415

            try:
                cycle = nx.find_cycle(order_of(project, model))
            except nx.NetworkXNoCycle:
                continue
            raise Refused(
                f"projects[{number}].models[{position}].{_closing(cycle, backwards)}",
                message("{cycle}; remove this or reorder the steps", cycle=_sentence(cycle)),
            )


def _pointing_back(model: Model) -> dict[tuple[str, str], str]:
    """Return the place of each reference to a step that is not earlier, by (from, to)."""
    order = {step.id: index for index, step in enumerate(model.steps)}
    places: dict[tuple[str, str], str] = {}
    for index, step in enumerate(model.steps):
        named = [(f"after[{at}]", name) for at, name in enumerate(step.after)]
        named += [(f"gates[{at}].after", gate.after) for at, gate in enumerate(step.gates)]
        for place, name in named:
            if order[name] >= index:
                places.setdefault((name, step.id), f"steps[{index}].{place}")
    return places


def _closing(cycle: list[tuple[PassKey, PassKey]], backwards: dict[tuple[str, str], str]) -> str:
    """Return the place of the reference that closes a cycle."""
    return next(
        place
        for before, after in cycle
        if (place := backwards.get((before.step, after.step))) is not None
    )


def _sentence(cycle: list[tuple[PassKey, PassKey]]) -> str:
    """Say a cycle as "base waits for camo, camo waits for base"."""
    steps = [step for step, _ in groupby(key.step for key, _ in cycle)]
    if len(steps) > 1 and steps[0] == steps[-1]:
        steps.pop()
    if len(steps) == 1:
        return message("{step} waits for itself", step=steps[0])
    waiting = list(reversed(steps))
    said = [
        message("{step} waits for {other}", step=step, other=other)
        for step, other in zip(waiting, [*waiting[1:], waiting[0]], strict=True)
    ]
    if len(said) > MOST_SAID:
        left = len(said) - MOST_SAID
        said[MOST_SAID - 1 : -1] = [message("… ({count} more)", count=left)]
    return row(said)
