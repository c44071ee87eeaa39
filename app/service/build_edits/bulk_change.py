"""Changing many steps at once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from app.service.build_edits.locate import model_of, step_of, with_model
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.keys import ModelKey, StepKey
from planner.values.message import called
from planner.values.model import Model
from planner.values.refusal import Refused
from planner.values.step import Step, Tool, Trait


@dataclass(frozen=True, kw_only=True)
class StepChange:
    """What shall be other in every step chosen; None leaves it as it is.

    Attributes
    ----------
    fixed, per_part, per_change
        Minutes of a pass [min].
    coating, instead_of
        Coating to lay, in place of that one alone or, where it is empty, of
        every one.  Steps that lay nothing stay as they are.
    coats
        Coats of every application.
    dries_in
        Location; "" is the usual one.
    split_least, look_in
        As in `Step` [min]; 0 takes them away.
    gain, lose
        Traits to add and to take away.
    """

    fixed: int | None = None
    per_part: int | None = None
    per_change: int | None = None
    coating: str | None = None
    instead_of: str = ""
    coats: int | None = None
    tool: Tool | None = None
    dries_in: str | None = None
    split_least: int | None = None
    look_in: int | None = None
    helper: bool | None = None
    gain: frozenset[Trait] = frozenset()
    lose: frozenset[Trait] = frozenset()

    def of(self, step: Step) -> Step:
        """Return the step with the change made.

        Raises
        ------
        Refused
            If the step cannot be so.
        """
        minutes = {
            field: getattr(self, field)
            for field in ("fixed", "per_part", "per_change")
            if getattr(self, field) is not None
        }
        plain: dict[str, object] = {"minutes": replace(step.minutes, **minutes)}
        for field in ("tool", "helper"):
            if getattr(self, field) is not None:
                plain[field] = getattr(self, field)
        for field in ("split_least", "look_in"):
            if getattr(self, field) is not None:
                plain[field] = getattr(self, field) or None
        if self.dries_in is not None:
            plain["dries_in"] = self.dries_in
            plain["or_in"] = tuple(name for name in step.or_in if name != self.dries_in)
        left = [trait for trait in step.traits if trait not in self.lose]
        plain["traits"] = (*left, *(trait for trait in Trait if trait in self.gain - set(left)))
        applications = tuple(
            replace(
                application,
                coats=self.coats or application.coats,
                coating=self.coating
                if self.coating and self.instead_of in ("", application.coating)
                else application.coating,
            )
            for application in step.applications
        )
        return replace(step, applications=applications, **plain)  # type: ignore[arg-type]


def change_steps(book: Book, spots: Iterable[StepKey], change: StepChange) -> Edit:
    """Change many steps of any models in one edit, or none of them.

    Raises
    ------
    Refused
        Naming the first step that cannot be so.
    """
    chosen: dict[ModelKey, set[str]] = {}
    for spot in spots:
        step_of(model_of(book, spot.home), spot.step)
        chosen.setdefault(spot.home, set()).add(spot.step)
    for at, ids in chosen.items():
        book = with_model(book, at, lambda model, ids=ids: _changed(model, ids, change))  # type: ignore[misc]
    count = sum(len(ids) for ids in chosen.values())
    return Edit(
        called("change 1 step") if count == 1 else called("change {count} steps", count=count), book
    )


def _changed(model: Model, ids: set[str], change: StepChange) -> Model:
    steps = []
    for step in model.steps:
        try:
            new = change.of(step) if step.id in ids else step
        except Refused as refused:
            raise refused.under(f"{model.name}, {step.id}") from refused
        steps.append(step if new == step else new)
    return replace(model, steps=tuple(steps))
