"""Steps by the names that a person types: "model/step", with "#2" for a coat."""

from __future__ import annotations

import re
from collections.abc import Iterator
from enum import Enum

from planner.evening import log_entries
from planner.values.book import Book
from planner.values.message import message
from planner.values.plan import PassKey
from planner.values.refusal import Refused, demand, unknown


class NamedCoat(Enum):
    """Which coat is meant where none is named."""

    TO_BEGIN = "the first one not begun"
    TO_END = "the one under way, else the first not begun"
    LAST = "the last one begun, else the first"


def step_named(book: Book, text: str, coat: NamedCoat) -> PassKey:
    """Return the pass that a text names.

    Capitals do not matter; the project's name may stand in front
    ("project/model/step") and must where the rest fits several.

    Raises
    ------
    Refused
        If it names none, or several.
    """
    name, _, number = text.partition("#")
    demand(
        not number or re.fullmatch("[1-9][0-9]?", number) is not None,
        "STEP",
        message('"#{number}" is no coat; write model/step#2', number=number[:20]),
    )
    wanted = [word.strip().casefold() for word in name.split("/")]
    demand(
        len(wanted) in (2, 3),
        "STEP",
        message('"{text}" names no step; write it as model/step', text=text[:80]),
    )
    known = list(_steps(book))
    found = [
        key for key in known if [word.casefold() for word in key[:3]][-len(wanted) :] == wanted
    ]
    if not found:
        names = [f"{key.model}/{key.step}" for key in known]
        raise Refused("STEP", unknown("step", name.strip(), dict.fromkeys(names)))
    if len(found) > 1:
        several = " or ".join(f'"{"/".join(key[:3])}"' for key in found[:3])
        raise Refused(
            "STEP", message("several steps are called so; say {several}", several=several)
        )
    key = found[0]
    chosen = key._replace(coat=int(number) if number else _coat(book, key, coat))
    log_entries.step_of(book, chosen)  # refuses a coat that is not there
    return chosen


def _steps(book: Book) -> Iterator[PassKey]:
    for project in book.projects:
        for model in project.models:
            for step in model.steps:
                yield PassKey(project.name, model.name, step.id)


def _coat(book: Book, key: PassKey, meant: NamedCoat) -> int:
    coats = log_entries.step_of(book, key).coats
    begun = log_entries.begun(book.project(key.project), key.model, key.step)
    there = {entry.coat for entry in begun}
    if meant is NamedCoat.LAST:
        return max(there, default=1)
    if meant is NamedCoat.TO_END:
        for entry in begun:
            if entry.end is None:
                return entry.coat
    return next((coat for coat in range(1, coats + 1) if coat not in there), coats)
