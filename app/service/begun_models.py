"""Models that were begun before they came into the book, told at any time."""

from __future__ import annotations

from collections.abc import Iterable

from app.service.edits import Edit
from planner.evening.laid_before import laid_before
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.message import Translate, called, message
from planner.values.project import StageReached
from planner.values.refusal import Refused

BEFORE = "done before it came into the book"
LONG_AGO = 7 * 1440  # where nobody says when: a week [min], assumed


def begun_before(
    book: Book,
    keys: Iterable[ModelKey],
    reached: StageReached,
    when: int | None,
    now: int,
    translate: Translate = str,
) -> Edit:
    """Note how far some models are; what was logged of them stays.

    Parameters
    ----------
    when
        Minute by which the last of it was done; absent, a week before ``now``.
    translate
        Gives the entries their note.

    Raises
    ------
    Refused
        If a model has no such stage, or that minute lies ahead of ``now``.
    """
    chosen = tuple(keys)
    if not chosen:
        raise Refused("models", message("choose at least one model"))
    moment = now - LONG_AGO if when is None else when
    if moment > now:
        raise Refused("when", message("lies ahead of now; what is to come is planned, not noted"))
    new = book
    for key in chosen:
        new = laid_before(new, key.project, key.model, reached, moment, translate(BEFORE))
    if new == book:
        raise Refused("reached", message("all of it is in the logbook already"))
    whom = chosen[0].model if len(chosen) == 1 else called("{n} models", n=len(chosen))
    return Edit(called("{whom}: {reached}", whom=whom, reached=reached), new)
