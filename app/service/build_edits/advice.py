"""Gentle words on what stands on the table: large batches, dry-fitting, smell and noise.

They are common practice, no source, and hold nobody back.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from app.service.build_edits.locate import model_of, with_model
from app.service.build_edits.names import step_id
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.message import called, titled
from planner.values.model import Model
from planner.values.project import Project
from planner.values.step import Minutes, Stage, Step, Tool

MOST_AT_ONCE = 5  # models in one batch before it gets dull: common practice, no source
DRY_FIT = "dry-fit"  # ids of steps that try parts together begin so
TRYING = Minutes(per_part=2)  # assumed


class AdviceKind(StrEnum):
    """What a word is about."""

    BATCH = "batch"
    DRY_FIT = "dry-fit"


@dataclass(frozen=True)
class Advice:
    """A word to the person: about a project's batch, or about parts of one model."""

    kind: AdviceKind
    project: str
    model: str = ""
    parts: tuple[str, ...] = ()


def advice(book: Book) -> tuple[Advice, ...]:
    """Return every word on the active projects."""
    return tuple(word for project in book.projects if project.active for word in advice_on(project))


def advice_on(project: Project) -> Iterator[Advice]:
    """Yield the words on one project."""
    if len(project.models) > MOST_AT_ONCE and not project.pilot:
        yield Advice(AdviceKind.BATCH, project.name)
    for model in project.models:
        parts = late_joined(model)
        if parts:
            yield Advice(AdviceKind.DRY_FIT, project.name, model.name, parts)


def late_joined(model: Model) -> tuple[str, ...]:
    """Return the parts that are painted apart, joined later, and not tried together before."""
    painted: set[str] = set()
    tried: set[str] = set()
    found: dict[str, None] = {}
    for step in model.steps:
        parts = [name.partition("/")[0] for name in step.references()]
        if step.stage is Stage.JOIN:
            late = painted.intersection(parts) - tried
            found.update(dict.fromkeys(part for part in parts if late and part not in tried))
        elif step.id.startswith(DRY_FIT) and not painted.intersection(parts):
            tried.update(parts)
        elif step.applications:
            painted.update(parts)
    return tuple(found)


def add_dry_fit(book: Book, at: ModelKey) -> Edit:
    """Let the parts that are joined late be tried together first of all."""
    model = model_of(book, at)
    step = Step(
        id=step_id(DRY_FIT, {step.id for step in model.steps}),
        stage=Stage.CLEAN,
        title=titled("Try the parts together, dry"),
        touches=late_joined(model),
        tool=Tool.HAND,
        minutes=TRYING,
    )
    changed = with_model(book, at, lambda model: replace(model, steps=(step, *model.steps)))
    return Edit(called("{model}: try the parts together first", model=at.model), changed)
