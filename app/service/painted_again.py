"""Another model painted as one in the logbook was: its real steps become an order."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.service.sequences import GIVES, give_sequence
from planner.sequences.apply_to_book import every_sequence
from planner.sequences.painted_so import painted_so
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.keys import ModelKey
from planner.values.lookup import model_named, project_of
from planner.values.message import Translate, called
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused

AS_PAINTED = "as {model} was painted"


def another_like(
    book: Book, at: ModelKey, names: Iterable[str], translate: Translate = str, note: str = ""
) -> Edit:
    """Put models beside one that was painted, with what was really done on it as their order.

    That is saved as a sequence; ``translate`` gives its name.  Parts, areas
    and kind are alike, nothing of the new ones is done or pinned.

    Raises
    ------
    Refused
        If nothing of it is done, no name is given, or one is taken.
    """
    home = project_of(book, at.project)
    model = model_named(home, at.model)
    wanted = tuple(names)
    if not wanted:
        raise Refused("models", "name at least one model")
    taken = [sequence.name for sequence in every_sequence(book)]
    name = fresh_name(translate(AS_PAINTED).format(model=at.model)[:110], taken)
    sequence = painted_so(home, model, name, note)
    book = replace(book, sequences=(*book.sequences, sequence))

    def bare(other: str) -> Model:
        return replace(model, name=other, steps=(), made=None, target=None, early=False)

    def change(old: Project) -> Project:
        return replace(old, models=(*old.models, *map(bare, wanted)))

    book = with_project(book, at.project, change)
    made = give_sequence(book, at.project, wanted, name, translate=translate)
    told = called("{names}, painted as {model} was", names=", ".join(wanted), model=at.model)
    return Edit(told, made.book, verb=GIVES)
