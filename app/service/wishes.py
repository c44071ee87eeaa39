"""Wishes about the whole: which model comes first, and what counts most."""

from __future__ import annotations

from dataclasses import replace

from app.service.edits import Edit
from planner.values.book import Book
from planner.values.book_changes import with_models, with_project
from planner.values.message import called, told
from planner.values.project import Project
from planner.values.wishes import USUAL_ORDER, Care, Level, Preferences, Staying


def set_pilot(book: Book, project: str, model: str) -> Edit:
    """Finish one model before any other of its project is begun; "" for none.

    Raises
    ------
    Refused
        If there is no such project or model.
    """
    name = (
        called("{project}: {model} first", project=project, model=model)
        if model
        else called("{project}: all models together", project=project)
    )
    changed = with_project(book, project, lambda old: replace(old, pilot=model))
    return Edit(name, changed, f"pilot/{project}")


def set_first(book: Book, project: str, early: str, pilot: str) -> Edit:
    """Have one model of a project finished as early as it can be, or waited for, or none.

    Parameters
    ----------
    early
        The model that others fill the gaps of; "" for none.
    pilot
        The model that is waited for before any other is begun; it need not
        be early as well.

    Raises
    ------
    Refused
        If there is no such project or model.
    """
    waited = set_pilot(book, project, pilot)
    chosen = "" if pilot else early

    def changed(old: Project) -> Project:
        return with_models(
            old,
            lambda model: (
                model
                if model.early == (model.name == chosen)
                else replace(model, early=model.name == chosen)
            ),
        )

    name = called("{model}: as early as it can be", model=chosen) if chosen else waited.name
    return Edit(name, with_project(waited.book, project, changed), f"pilot/{project}")


def stay(book: Book, staying: Staying) -> Edit:
    """Say what a plan may move (definition 27a)."""
    name = (
        called("plans keep close")
        if staying is Staying.CLOSE
        else called("plans finish as early as can be, whatever moves")
    )
    preferences: Preferences = replace(book.preferences, staying=staying)
    return Edit(name, replace(book, preferences=preferences))


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


def set_likely(book: Book, care: Care, *, likely: bool) -> Edit:
    """Plan a kind of work once the film below is likely ready, or once it surely is."""
    kept = tuple(each for each in Care if each in book.preferences.likely and each is not care)
    chosen = tuple(each for each in Care if each in (*kept, care)) if likely else kept
    name = (
        called("{work}: once likely ready", work=told(care.value))
        if likely
        else called("{work}: once surely ready", work=told(care.value))
    )
    return Edit(name, replace(book, preferences=replace(book.preferences, likely=chosen)))


def _ordered(book: Book, order: tuple[Level, ...]) -> Edit:
    preferences: Preferences = replace(book.preferences, order=order)
    return Edit(
        called("what counts: {word} first", word=told(order[0].value)),
        replace(book, preferences=preferences),
        "what counts",
    )
