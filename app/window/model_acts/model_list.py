"""The models of a book to be ticked."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt

from app.window.sequences.check_list import Checks
from planner.values.book import Book
from planner.values.keys import ModelKey

LINES = 7


def model_checks(book: Book | None, chosen: Iterable[ModelKey] = ()) -> Checks:
    """Return the models of active projects with boxes, some of them ticked."""
    projects = [project for project in book.projects if project.active] if book else []
    entries = [
        (
            model.name if len(projects) == 1 else f"{model.name} — {project.name}",
            ModelKey(project.name, model.name),
        )
        for project in projects
        for model in project.models
    ]
    return Checks(entries, list(chosen), LINES)


def chosen_keys(models: Checks) -> tuple[ModelKey, ...]:
    """Return the models that are ticked."""
    return tuple(key for key in models.chosen() if isinstance(key, ModelKey))


def every_key(models: Checks) -> tuple[ModelKey, ...]:
    """Return all models of a list, ticked or not."""
    values = (models.item(row).data(Qt.ItemDataRole.UserRole) for row in range(models.count()))
    return tuple(key for key in values if isinstance(key, ModelKey))
