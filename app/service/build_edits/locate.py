"""Names of models and steps in a book, and putting changed ones in their place."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.keys import ModelKey
from planner.values.lookup import model_named, project_of
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused, unknown
from planner.values.step import Step


def model_of(book: Book, at: ModelKey) -> Model:
    """Return a model; `Refused` if there is none of this name."""
    return model_named(project_of(book, at.project), at.model)


def step_of(model: Model, name: str) -> Step:
    """Return a step by its id; `Refused` if there is none."""
    for step in model.steps:
        if step.id == name:
            return step
    raise Refused("steps", unknown("step", name, [step.id for step in model.steps]))


def with_model(
    book: Book,
    at: ModelKey,
    change: Callable[[Model], Model],
    facts: Callable[[Project], Project] = lambda project: project,
) -> Book:
    """Return the book with one model changed, and with it what the project says of it."""
    old = model_of(book, at)
    new = change(old)

    def changed(project: Project) -> Project:
        models = tuple(new if model is old else model for model in project.models)
        pilot = new.name if project.pilot == old.name else project.pilot
        return facts(replace(project, models=models, pilot=pilot))

    return with_project(book, at.project, changed)


def logged(project: Project, model: str, step: str | None = None) -> bool:
    """Tell whether anything of a model, or of one step of it, stands in the logbook."""
    named = [(fact.model, fact.step) for fact in project.log]
    named += [(look.model, look.step) for look in project.observed]
    return any(name == model and step in (None, other) for name, other in named)


def references(step: Step, change: Callable[[str], Iterable[str]]) -> Step:
    """Return the step with every reference to places put through ``change``."""

    def mapped(names: tuple[str, ...]) -> tuple[str, ...]:
        return tuple(dict.fromkeys(new for name in names for new in change(name)))

    applications = tuple(
        replace(application, places=mapped(application.places)) for application in step.applications
    )
    changed = replace(step, applications=applications, touches=mapped(step.touches))
    return step if changed == step else changed


def waits(step: Step, change: Callable[[str], Iterable[str]]) -> Step:
    """Return the step with every id that it waits for put through ``change``."""
    after = tuple(dict.fromkeys(new for name in step.after for new in change(name)))
    gates = tuple(replace(gate, after=new) for gate in step.gates for new in change(gate.after))
    changed = replace(step, after=after, gates=gates)
    return step if changed == step else changed


def without_pins(project: Project, model: str, steps: Iterable[str] | None = None) -> Project:
    """Return the project without the pins that name these steps of a model (None: all)."""
    gone = None if steps is None else frozenset(steps)

    def names(name: str, step: str) -> bool:
        return name == model and (gone is None or step in gone)

    kept = tuple(
        pin
        for pin in project.pins
        if not names(pin.model, pin.step) and not (pin.beside and names(*pin.beside.split("/")))
    )
    return project if kept == project.pins else replace(project, pins=kept)
