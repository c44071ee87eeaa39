"""Putting changed projects, models and steps in their place in a book.

What a change leaves alone stays the very same object, so that nothing that
is remembered of it by identity is worked out again.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TypeVar

from planner.values.book import Book
from planner.values.keys import ModelKey, StepKey
from planner.values.lookup import model_named, project_of
from planner.values.model import Model
from planner.values.project import Logged, Project
from planner.values.step import Step

T = TypeVar("T")


def changed(old: tuple[T, ...], new: Sequence[T]) -> tuple[T, ...]:
    """Return what is new; the very same tuple if every entry is the old one."""
    same = len(old) == len(new) and all(a is b for a, b in zip(old, new, strict=True))
    return old if same else tuple(new)


def with_projects(book: Book, change: Callable[[Project], Project]) -> Book:
    """Return the book with every project changed; the very same one if nothing was."""
    projects = tuple(change(project) for project in book.projects)
    return book if projects == book.projects else replace(book, projects=projects)


def with_project(book: Book, name: str, change: Callable[[Project], Project]) -> Book:
    """Return the book with one project changed; the very same one if nothing was.

    Raises
    ------
    Refused
        If there is no project of this name.
    """
    project_of(book, name)
    return with_projects(book, lambda project: change(project) if project.name == name else project)


def with_models(project: Project, change: Callable[[Model], Model]) -> Project:
    """Return the project with every model changed."""
    models = changed(project.models, [change(model) for model in project.models])
    return project if models is project.models else replace(project, models=models)


def with_steps(model: Model, change: Callable[[Step], Step]) -> Model:
    """Return the model with every step changed."""
    steps = changed(model.steps, [change(step) for step in model.steps])
    return model if steps is model.steps else replace(model, steps=steps)


def with_log(project: Project, change: Callable[[Logged], Logged]) -> Project:
    """Return the project with every fact of its logbook changed."""
    log = changed(project.log, [change(fact) for fact in project.log])
    return project if log is project.log else replace(project, log=log)


def with_every_model(book: Book, change: Callable[[ModelKey, Model], Model]) -> Book:
    """Return the book with every model of every project changed."""

    def models(project: Project) -> Project:
        return with_models(project, lambda model: change(ModelKey(project.name, model.name), model))

    return with_projects(book, models)


def with_every_step(book: Book, change: Callable[[StepKey, Step], Step]) -> Book:
    """Return the book with every step of every model changed."""

    def steps(key: ModelKey, model: Model) -> Model:
        return with_steps(model, lambda step: change(StepKey(*key, step.id), step))

    return with_every_model(book, steps)


def with_model(book: Book, key: ModelKey, change: Callable[[Model], Model]) -> Book:
    """Return the book with one model changed; the very same one if nothing was.

    Raises
    ------
    Refused
        If there is no such project or model.
    """
    model_named(project_of(book, key.project), key.model)

    def one(model: Model) -> Model:
        return change(model) if model.name == key.model else model

    return with_project(book, key.project, lambda project: with_models(project, one))


def instead_of_its_like(project: Project, model: Model) -> Project:
    """Return the project with a model in the place of that of its name."""
    return with_models(project, lambda other: model if other.name == model.name else other)


def model_at(book: Book, key: ModelKey) -> Model | None:
    """Return a model, or None if it is not there."""
    for project in book.projects:
        if project.name == key.project:
            return next((model for model in project.models if model.name == key.model), None)
    return None


def with_model_steps(book: Book, key: ModelKey, steps: tuple[Step, ...]) -> Book:
    """Return the book with other steps in a model; wishes about those that are gone go too."""
    ids = {step.id for step in steps}

    def one(project: Project) -> Project:
        if project.name != key.project:
            return project
        pins = tuple(pin for pin in project.pins if pin.model != key.model or pin.step in ids)
        models = tuple(
            replace(model, steps=steps) if model.name == key.model else model
            for model in project.models
        )
        return replace(project, models=models, pins=pins)

    return with_projects(book, one)


def with_step(book: Book, key: ModelKey, step_id: str, change: Callable[[Step], Step]) -> Book:
    """Return the book with one step of a model changed; as it was if it is not there."""
    model = model_at(book, key)
    if model is None:
        return book
    steps = tuple(change(step) if step.id == step_id else step for step in model.steps)
    return book if steps == model.steps else with_model_steps(book, key, steps)
