"""Named edits that mend a finding: pure, and harmless when applied twice.

Each is a frozen value with ``apply(book)``.  Where what it names is gone, or
what it brings is there already, the book comes back as it was.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Protocol

from planner.layers.mend_coatings import Wanted, provide
from planner.values.book import Book
from planner.values.book_changes import model_at, with_model_steps, with_step
from planner.values.keys import ModelKey
from planner.values.message import titled
from planner.values.model import Model, Side
from planner.values.project import Project
from planner.values.step import Application, Minutes, Role, Stage, Step, Tool

A_COAT = Minutes(fixed=3, per_part=3)


class BookChange(Protocol):
    """One pure change of a book."""

    def apply(self, book: Book) -> Book:
        """Return the changed book."""


def position(model: Model | None, step_id: str) -> int | None:
    """Return the index of a step in the model, or None."""
    if model is None:
        return None
    return next((at for at, step in enumerate(model.steps) if step.id == step_id), None)


def fresh_id(model: Model, base: str) -> str:
    """Return ``base``, or ``base`` with the first free number."""
    taken = {step.id for step in model.steps}
    name, number = base, 1
    while name in taken:
        number += 1
        name = f"{base}-{number}"
    return name


@dataclass(frozen=True)
class Insert:
    """Put a new step next to ``anchor``.

    With ``wanted`` it lays a coat on ``places``, else it touches them.
    """

    spot: ModelKey
    anchor: str
    before: bool
    name: str
    stage: Stage
    places: tuple[str, ...]
    title: str
    wanted: Wanted | None = None
    role: Role | None = None
    minutes: Minutes = A_COAT

    def apply(self, book: Book) -> Book:
        """Insert the step unless its like stands there already."""
        model = model_at(book, self.spot)
        at = position(model, self.anchor)
        if model is None or at is None:
            return book
        filled, new = self._step(book, model, model.steps[at])
        where = at if self.before else at + 1
        neighbour = where - 1 if self.before else where
        if 0 <= neighbour < len(model.steps):
            there = model.steps[neighbour]
            if replace(there, id=new.id) == new:
                return book
        return with_model_steps(
            filled, self.spot, (*model.steps[:where], new, *model.steps[where:])
        )

    def _step(self, book: Book, model: Model, anchor: Step) -> tuple[Book, Step]:
        name = fresh_id(model, self.name)
        if self.wanted is None:
            return book, Step(
                id=name,
                stage=self.stage,
                title=self.title,
                touches=self.places,
                tool=Tool.HAND,
                minutes=self.minutes,
            )
        filled, coating = provide(book, self.wanted)
        return filled, Step(
            id=name,
            stage=self.stage,
            title=self.title,
            applications=(Application(places=self.places, coating=coating),),
            tool=Tool.AIRBRUSH if book.gear.airbrushes else Tool.BRUSH,
            minutes=self.minutes,
            role=self.role,
            dries_in=anchor.dries_in,
        )


@dataclass(frozen=True)
class Move:
    """Move a step to just before or just behind ``anchor``.

    With ``anywhere`` a step that is on that side of the anchor stays.  What
    tied it to the steps that it passes ("after", gates) is untied.
    """

    spot: ModelKey
    step: str
    anchor: str
    before: bool
    anywhere: bool = False

    def apply(self, book: Book) -> Book:
        """Move the step unless it stands there already."""
        model = model_at(book, self.spot)
        here, there = position(model, self.step), position(model, self.anchor)
        if model is None or here is None or there is None or here == there:
            return book
        right_side = (here < there) is self.before
        if right_side and (self.anywhere or abs(here - there) == 1):
            return book
        if right_side:  # the anchor itself is not passed
            there += -1 if here < there else 1
        moved = model.steps[here]
        passed = model.steps[here + 1 : there + 1] if here < there else model.steps[there:here]
        ids = {step.id for step in passed}
        moved = _untied(moved, ids)
        passed = tuple(_untied(step, {self.step}) for step in passed)
        middle = (*passed, moved) if here < there else (moved, *passed)
        low, high = min(here, there), max(here, there)
        return with_model_steps(
            book, self.spot, (*model.steps[:low], *middle, *model.steps[high + 1 :])
        )


def _untied(step: Step, ids: set[str]) -> Step:
    return replace(
        step,
        after=tuple(name for name in step.after if name not in ids),
        gates=tuple(gate for gate in step.gates if gate.after not in ids),
    )


@dataclass(frozen=True)
class Remove:
    """Take a step out, with what names it; a logged one stays."""

    spot: ModelKey
    step: str

    def apply(self, book: Book) -> Book:
        """Remove the step."""
        model = model_at(book, self.spot)
        if model is None or position(model, self.step) is None:
            return book
        if any(e.model == model.name and e.step == self.step for e in self._project(book).log):
            return book
        rest = (_untied(step, {self.step}) for step in model.steps if step.id != self.step)
        return with_model_steps(book, self.spot, tuple(rest))

    def _project(self, book: Book) -> Project:
        return book.project(self.spot.project)


@dataclass(frozen=True)
class Leave:
    """Leave places out of a step: its coats and what it touches."""

    spot: ModelKey
    step: str
    places: tuple[str, ...]

    def apply(self, book: Book) -> Book:
        """Leave the places out; a step that would keep none is removed."""
        model = model_at(book, self.spot)
        at = position(model, self.step)
        if model is None or at is None:
            return book
        step = kept(model, model.steps[at], lambda place: place not in self.places)
        if step is None:
            return Remove(self.spot, self.step).apply(book)
        return with_step(book, self.spot, self.step, lambda _: step)


def kept(model: Model, step: Step, keep: Callable[[str], bool]) -> Step | None:
    """Return ``step`` on the "part/place" names that ``keep`` accepts, or None if none are.

    References that keep all their places stay as they were written.
    """

    def narrowed(references: tuple[str, ...]) -> tuple[str, ...]:
        left: list[str] = []
        for reference in references:
            places = model.places(reference)
            inside = [place for place in places if keep(place)]
            left += [reference] if len(inside) == len(places) else inside
        return tuple(dict.fromkeys(left))

    applications = tuple(
        replace(one, places=places) for one in step.applications if (places := narrowed(one.places))
    )
    touches = narrowed(step.touches)
    if not applications and (step.applications or not touches):
        return None
    return replace(step, applications=applications, touches=touches)


@dataclass(frozen=True)
class SplitSides:
    """Split a step by the side that its places on ``parts`` face, with turns between.

    ``on_back`` says that the parts lie with the underside up before it.
    """

    spot: ModelKey
    step: str
    parts: tuple[str, ...]
    on_back: bool

    def apply(self, book: Book) -> Book:
        """Split the step unless its places face one way."""
        model = model_at(book, self.spot)
        at = position(model, self.step)
        if model is None or at is None:
            return book
        step = model.steps[at]

        def hidden(place: str) -> bool:
            under = model.place(place).side is Side.UNDER
            return (place.partition("/")[0] in self.parts and under) is not self.on_back

        now = kept(model, step, lambda place: not hidden(place))
        then = kept(model, step, hidden)
        if now is None or then is None:
            return book
        now = replace(now, id=fresh_id(model, f"{step.id}-first-side"))
        turns = [
            Step(
                id=fresh_id(model, f"turn-{word}-{step.id}"),
                stage=Stage.TURN,
                title=title,
                touches=self.parts,
                tool=Tool.HAND,
                minutes=Minutes(fixed=1),
            )
            for word, title in (
                ("within", titled("turn it over")),
                ("behind", titled("turn it back")),
            )
        ]
        new = (now, turns[0], then, turns[1])
        return with_model_steps(book, self.spot, (*model.steps[:at], *new, *model.steps[at + 1 :]))
