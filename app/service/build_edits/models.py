"""Projects and models: adding, duplicating, taking away, and what is said of them."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import replace
from datetime import date

from app.service.build_edits.locate import logged, model_of, with_model, without_pins
from app.service.edits import Edit
from planner.quantity.usual_models import usual_parts
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.message import Translate, called, message
from planner.values.model import Model, ModelKind, Place, RealSize
from planner.values.project import Project
from planner.values.refusal import Refused


def bare_model(
    name: str,
    scale: str = "",
    translate: Translate = str,
    kind: ModelKind = ModelKind.OTHER,
    *,
    holder: str = "",
) -> Model:
    """Return a model without steps, of the parts that its kind usually has.

    ``translate`` names them; they are held by ``holder``.
    """
    parts = usual_parts(kind, translate, holder=holder)
    return Model(name=name, parts=parts, scale=scale, kind=kind)


def add_project(book: Book, name: str, models: Iterable[Model]) -> Edit:
    """Begin a project with some models."""
    project = Project(name=name, models=tuple(models))
    return Edit(
        called("begin {name}", name=name), replace(book, projects=(*book.projects, project))
    )


def add_model(book: Book, project: str, model: Model) -> Edit:
    """Put another model on the table."""

    def change(old: Project) -> Project:
        return replace(old, models=(*old.models, model))

    return Edit(
        called("{project}: add {model}", project=project, model=model.name),
        with_project(book, project, change),
    )


def same_again(book: Book, at: ModelKey, names: Iterable[str]) -> Edit:
    """Put models like this one beside it under new names; nothing of them is done or pinned.

    Parts, places and steps are alike, so that only the markings need another look.
    """
    model = model_of(book, at)
    new = tuple(replace(model, name=name) for name in names)

    def change(old: Project) -> Project:
        models: list[Model] = []
        for other in old.models:
            models += [other, *new] if other is model else [other]
        return replace(old, models=tuple(models))

    names_ = ", ".join(model.name for model in new)
    return Edit(
        called("{model} again as {names}", model=at.model, names=names_),
        with_project(book, at.project, change),
    )


def remove_models(book: Book, project: str, names: Collection[str]) -> Edit:
    """Take models off the table.

    Raises
    ------
    Refused
        If something of one is in the logbook, or none would be left.
    """
    old = project_of(book, project)
    for name in names:
        model_of(book, ModelKey(project, name))
        if logged(old, name):
            raise Refused(
                "",
                message("{name} is already logged; it stays, or the project goes too", name=name),
            )
    left = tuple(model for model in old.models if model.name not in names)
    if not left:
        raise Refused(
            "",
            message(
                "{project} would have no model left; remove the project instead", project=project
            ),
        )

    def change(project: Project) -> Project:
        for name in names:
            project = without_pins(project, name)
        pilot = "" if project.pilot in names else project.pilot
        return replace(project, models=left, pilot=pilot)

    return Edit(
        called("{project}: remove {names}", project=project, names=", ".join(names)),
        with_project(book, project, change),
    )


def set_scale(book: Book, at: ModelKey, scale: str) -> Edit:
    """Set what scale a model is of."""
    changed = with_model(book, at, lambda model: replace(model, scale=scale))
    return Edit(called("{model}: scale {scale}", model=at.model, scale=scale), changed)


def set_kind(book: Book, at: ModelKey, kind: ModelKind, translate: Translate = str) -> Edit:
    """Set what kind of thing a model shows; one that says nothing of itself gets its parts.

    ``translate`` names them.
    """

    def change(model: Model) -> Model:
        if not _untold(model):
            return replace(model, kind=kind)
        parts = usual_parts(kind, translate, holder=model.parts[0].holder)
        return replace(model, kind=kind, parts=parts)

    changed = with_model(book, at, change)
    return Edit(called("{model}: kind", model=at.model), changed)


def _untold(model: Model) -> bool:
    """Tell whether a model has no steps and no more than one place that nobody measured."""
    places = [place for part in model.parts for place in part.places]
    bare = places == [Place(name=places[0].name)]
    return not model.steps and bare and model.real_size is None


def set_real_size(book: Book, at: ModelKey, size: RealSize | None) -> Edit:
    """Set the size of the full-sized thing, from which areas follow."""
    changed = with_model(book, at, lambda model: replace(model, real_size=size))
    return Edit(called("{model}: real size", model=at.model), changed)


def set_model_target(book: Book, at: ModelKey, target: date | None) -> Edit:
    """Set or remove the date of a model's own."""
    name = (
        called("{model}: finish by {target}", model=at.model, target=target)
        if target
        else called("{model}: no date of its own", model=at.model)
    )
    changed = with_model(book, at, lambda model: replace(model, target=target))
    return Edit(name, changed, f"target/{at.project}/{at.model}")


def set_model_weight(book: Book, at: ModelKey, weight: int) -> Edit:
    """Set how much a model's lateness weighs."""
    changed = with_model(book, at, lambda model: replace(model, weight=weight))
    name = called("{model}: weight {weight}", model=at.model, weight=weight)
    return Edit(name, changed, f"weight/{at.project}/{at.model}")


def set_early(book: Book, at: ModelKey, early: bool) -> Edit:
    """Have a model finished as early as it can be, while others fill the gaps, or not."""
    name = (
        called("{model}: as early as it can be", model=at.model)
        if early
        else called("{model}: when its turn comes", model=at.model)
    )
    return Edit(name, with_model(book, at, lambda model: replace(model, early=early)))


def set_note(book: Book, project: str, note: str) -> Edit:
    """Write a note on a project."""
    return Edit(
        called("{project}: note", project=project),
        with_project(book, project, lambda old: replace(old, note=note)),
    )


def set_begins(book: Book, project: str, begins: date | None) -> Edit:
    """Let nothing of a project be done before a date."""
    if begins:
        name = called("{project}: not before {begins}", project=project, begins=begins)
    else:
        name = called("{project}: begins at once", project=project)
    changed = with_project(book, project, lambda old: replace(old, begins=begins))
    return Edit(name, changed)
