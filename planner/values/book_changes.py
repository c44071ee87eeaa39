"""Putting changed projects and models in their place in a book."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import model_named, project_of
from planner.values.model import Model
from planner.values.project import Project


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
    return replace(project, models=tuple(change(model) for model in project.models))


def with_model(book: Book, key: ModelKey, change: Callable[[Model], Model]) -> Book:
    """Return the book with one model changed; the very same one if nothing was.

    Raises
    ------
    Refused
        If there is no such project or model.
    """
    model_named(project_of(book, key.project), key.model)

    def changed(model: Model) -> Model:
        return change(model) if model.name == key.model else model

    return with_project(book, key.project, lambda project: with_models(project, changed))
