"""Finding a project, a model or a part by a name that a person may have mistyped."""

from __future__ import annotations

from planner.values.book import Book
from planner.values.model import Model, Part
from planner.values.project import Project
from planner.values.refusal import Refused, unknown


def project_of(book: Book, name: str) -> Project:
    """Return the project called ``name``; raise `Refused` if there is none."""
    try:
        return book.project(name)
    except KeyError:
        known = [project.name for project in book.projects]
        raise Refused("projects", unknown("project", name, known)) from None


def model_named(project: Project, name: str) -> Model:
    """Return the model called ``name`` of a project; raise `Refused` if there is none."""
    try:
        return project.model(name)
    except KeyError:
        known = [model.name for model in project.models]
        raise Refused("models", unknown("model", name, known)) from None


def part_of(model: Model, name: str) -> Part:
    """Return the part called ``name`` of a model; raise `Refused` if there is none."""
    try:
        return model.part(name)
    except KeyError:
        known = [part.name for part in model.parts]
        raise Refused("parts", unknown("part", name, known)) from None
