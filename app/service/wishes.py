"""Wishes about the whole: which model comes first, and what counts most."""

from __future__ import annotations

from dataclasses import replace

from app.service.edits import Edit
from planner.values.book import Book
from planner.values.message import called, told
from planner.values.refusal import Refused, unknown
from planner.values.wishes import USUAL_ORDER, Level, Preferences


def set_pilot(book: Book, project: str, model: str) -> Edit:
    """Finish one model before any other of its project is begun; "" for none.

    Raises
    ------
    Refused
        If there is no such project or model.
    """
    known = [project.name for project in book.projects]
    if project not in known:
        raise Refused("projects", unknown("project", project, known))
    name = (
        called("{project}: {model} first", project=project, model=model)
        if model
        else called("{project}: all models together", project=project)
    )
    projects = tuple(
        replace(other, pilot=model) if other.name == project else other for other in book.projects
    )
    return Edit(name, replace(book, projects=projects), f"pilot/{project}")


def move_level(book: Book, level: Level, by: int) -> Edit:
    """Let a level of the cost count so many places earlier (negative) or later."""
    order = list(book.preferences.order)
    here = order.index(level)
    there = min(len(order) - 1, max(0, here + by))
    order.insert(there, order.pop(here))
    return _ordered(book, tuple(order))


def usual_order(book: Book) -> Edit:
    """Let the levels of the cost count in the usual order again."""
    return _ordered(book, USUAL_ORDER)


def _ordered(book: Book, order: tuple[Level, ...]) -> Edit:
    preferences: Preferences = replace(book.preferences, order=order)
    return Edit(
        called("what counts: {word} first", word=told(order[0].value)),
        replace(book, preferences=preferences),
        "what counts",
    )
