"""What a model's steps expand to: passes, the places they touch, the units they handle.

A pass is one coat (definition 2).  Which places a pass touches, what lies
below it and which parts are already joined follow from the order of the
steps (definition 3), and from what the logbook says was done before its turn
(definition 22), never from the schedule.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from planner.logged_order import Coat, WrittenCoat, order_as_done
from planner.values.book import Book
from planner.values.identity_key import Same
from planner.values.model import Model, Side
from planner.values.moment import Interval
from planner.values.plan import PassKey
from planner.values.project import Logged, Project
from planner.values.step import Stage, Step, Tool

WHOLE_UNIT = frozenset({Stage.TURN, Stage.JOIN})


@dataclass(frozen=True)
class Unit:
    """What is held as one piece: a part, or an assembly after its joins.

    ``holder`` tells whether any of its parts has one; ``stands`` is the
    number of drying places it takes (definition 18).
    """

    model: str
    parts: tuple[str, ...]
    holder: bool
    stands: int


@dataclass(frozen=True)
class Pass:
    """One coat of one step.

    Attributes
    ----------
    rank
        Position in the model's working order.
    reordered
        The order is not as written: something was done before its turn.
    films
        ("part/place", coating or mix) for each film that it lays.
    places
        Every "part/place" that it touches, films included; the whole unit
        for a turn or a join.
    parts
        Parts that it works on; they make its minutes.
    units
        Units that it handles, as they are *before* it; a join has several.
    unit_after
        The assembly that a join leaves, else None.
    side
        Which side of its units must be up; None for turn and join, and for
        work on no particular side.
    minutes
        From its start to its end, where it is done in one go.
    hands, alone
        Those of its minutes that need hands, all but where it goes on
        alone; and those at its end in which it does (definition 13).
    load
        Coating or mix that the airbrush must hold, or "".
    """

    key: PassKey
    step: Step
    rank: int
    reordered: bool
    films: tuple[tuple[str, str], ...]
    places: tuple[str, ...]
    parts: tuple[str, ...]
    units: tuple[Unit, ...]
    unit_after: Unit | None
    side: Side | None
    minutes: int
    hands: int
    alone: int
    load: str

    def attended(self, piece: Interval) -> Interval:
        """Return the part of a piece, as planned or logged, that needs hands."""
        if not self.alone:
            return piece
        return Interval(piece.start, min(piece.end, piece.start + self.hands))


def units_of(model: Model) -> dict[str, Unit]:
    """Return the unit of every part before any join."""
    return {
        part.name: Unit(model.name, (part.name,), bool(part.holder), part.stands)
        for part in model.parts
    }


def expand(project: Project, model: Model) -> tuple[Pass, ...]:
    """Return the model's passes in working order, as what is noted has left it."""
    return _expanded(project.name, Same(model), order_left(project, model))


def expand_model(project: str, model: Model) -> tuple[Pass, ...]:
    """Return the passes of a model of the project called ``project``, as they are written."""
    return _expanded(project, Same(model), None)


def order_left(project: Project, model: Model) -> tuple[int, ...] | None:
    """Return the numbers of the written passes in the order that the logbook leaves, if another."""
    noted = _noted(Same(project.log)).get(model.name) if project.log else None
    return _order_left(project.name, Same(model), noted) if noted else None


def work_of(passes: Sequence[Pass]) -> tuple[WrittenCoat, ...]:
    """Return of each pass what its place in the order depends on."""
    return tuple(
        WrittenCoat(
            pass_.step,
            pass_.key.coat,
            frozenset(place for place, _ in pass_.films),
            frozenset(pass_.places),
            frozenset(pass_.parts),
        )
        for pass_ in passes
    )


def noted_of(project: Project, model: Model) -> frozenset[Coat]:
    """Return the coats of a model that the logbook knows."""
    return _noted(Same(project.log)).get(model.name, frozenset())


@lru_cache(maxsize=64)
def _noted(log: Same[tuple[Logged, ...]]) -> dict[str, frozenset[Coat]]:
    found: dict[str, set[Coat]] = defaultdict(set)
    for entry in log.value:
        found[entry.model].add((entry.step, entry.coat))
    return {model: frozenset(coats) for model, coats in found.items()}


@lru_cache(maxsize=1024)
def _order_left(project: str, model: Same[Model], noted: frozenset[Coat]) -> tuple[int, ...] | None:
    """Find the order; what is turned or joined there may be more than in the written one."""
    written = _expanded(project, model, None)
    found = order_as_done(work_of(written), noted)
    for _ in range(len(model.value.parts)):
        if found is None:
            return None
        now = {pass_.key: pass_ for pass_ in _expanded(project, model, found)}
        before, found = found, order_as_done(work_of([now.get(p.key, p) for p in written]), noted)
        if found == before:
            break
    return found


@lru_cache(maxsize=1024)
def _expanded(project: str, model: Same[Model], order: tuple[int, ...] | None) -> tuple[Pass, ...]:
    return tuple(_expand(project, model.value, order))


def expand_all(book: Book) -> tuple[Pass, ...]:
    """Return the passes of every model of every active project."""
    return tuple(
        pass_
        for project in book.projects
        if project.active
        for model in project.models
        for pass_ in expand(project, model)
    )


def _expand(project: str, model: Model, order: tuple[int, ...] | None) -> Iterator[Pass]:
    units = units_of(model)
    coats = [(step, coat) for step in model.steps for coat in range(1, step.coats + 1)]
    if order is not None:
        coats = [coats[at] for at in order]
    last = {step.id: at for at, (step, _) in enumerate(coats)}
    for rank, (step, coat) in enumerate(coats):
        named = [name for ref in step.references() for name in model.places(ref)]
        parts = tuple(dict.fromkeys(name.partition("/")[0] for name in named))
        joined = _joined(model, step, tuple(dict.fromkeys(units[part] for part in parts)))
        films, places = _coat(model, step, coat)
        worked = tuple(dict.fromkeys(name.partition("/")[0] for name in places))
        minutes = step.minutes.of(len(worked), len({coating for _, coating in films}))
        hands = step.attended(minutes)
        handled = tuple(dict.fromkeys(units[part] for part in worked))
        if step.stage in WHOLE_UNIT:
            places = tuple(
                f"{part}/{place.name}"
                for unit in handled
                for part in unit.parts
                for place in model.part(part).places
            )
        yield Pass(
            key=PassKey(project, model.name, step.id, coat),
            step=step,
            rank=rank,
            reordered=order is not None,
            films=films,
            places=places,
            parts=worked,
            units=handled,
            unit_after=joined,
            side=_side(model, step, places),
            minutes=minutes,
            hands=hands,
            alone=minutes - hands,
            load=films[0][1] if step.tool is Tool.AIRBRUSH else "",
        )
        if joined and last[step.id] == rank:
            units.update(dict.fromkeys(joined.parts, joined))


def _coat(
    model: Model, step: Step, coat: int
) -> tuple[tuple[tuple[str, str], ...], tuple[str, ...]]:
    films = tuple(
        (name, application.coating)
        for application in step.applications
        if application.coats >= coat
        for ref in application.places
        for name in model.places(ref)
    )
    touched = [name for ref in step.touches for name in model.places(ref)]
    return films, tuple(dict.fromkeys([*(name for name, _ in films), *touched]))


def _joined(model: Model, step: Step, held: tuple[Unit, ...]) -> Unit | None:
    if step.stage is not Stage.JOIN:
        return None
    return Unit(
        model.name,
        tuple(part for unit in held for part in unit.parts),
        any(unit.holder for unit in held),
        step.stands or max(unit.stands for unit in held),
    )


def _side(model: Model, step: Step, places: tuple[str, ...]) -> Side | None:
    if step.stage in WHOLE_UNIT:
        return None
    sides = {model.place(name).side for name in places}
    return Side.UNDER if sides == {Side.UNDER} else Side.TOP
