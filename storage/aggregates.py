"""A book in pieces: what is written, journalled and undone as one.

An edit touches few of them, and only those are written.  The log of a
project is a piece of its own, so that undoing an edit leaves it alone.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass, fields
from datetime import date
from hashlib import sha256
from typing import Any, Final, TypeAlias

import msgspec

from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.drying_card import DryingCard
from planner.values.gear import Cleaned, Gear
from planner.values.mix import Mix
from planner.values.model import Model
from planner.values.project import Happened, Logged, Observed, Pin, Project
from planner.values.room import Room
from planner.values.sequence import Sequence
from planner.values.supplies import Supplies
from planner.values.wishes import Pace, Preferences
from storage.to_json import plain


@dataclass(frozen=True, kw_only=True)
class Head:
    """A project without its log, its models by name."""

    name: str
    target: date | None
    weight: int
    active: bool
    pins: tuple[Pin, ...]
    note: str
    pilot: str = ""
    observed: tuple[Observed, ...] = ()
    diary: tuple[Happened, ...] = ()
    begins: date | None = None
    models: tuple[str, ...]


Pieces: TypeAlias = dict[str, Any]
"""Key to value: "room", "project/<name>", "model/<project>/<name>", "log/<project>"."""

KINDS: Final[Mapping[str, Any]] = {
    "coatings": tuple[Coating, ...],
    "mixes": tuple[Mix, ...],
    "room": Room,
    "bench_time": BenchTime,
    "gear": Gear,
    "sequences": tuple[Sequence, ...],
    "supplies": Supplies,
    "preferences": Preferences,
    "pace": Pace,
    "cleaned": tuple[Cleaned, ...],
    "drying_cards": tuple[DryingCard, ...],
    "projects": tuple[str, ...],
    "project": Head,
    "model": Model,
    "log": tuple[Logged, ...],
}


FACTS: Final = ("log", "cleaned")
"""Kinds of pieces that hold facts."""

WHOLES: Final = tuple(field.name for field in fields(Book) if field.name != "projects")
"""Fields of a book that are a piece each."""


def holds_facts(key: str) -> bool:
    """Tell whether a piece holds what happened, which undoing an edit must leave alone."""
    return key.partition("/")[0] in FACTS


class Digests:
    """Digests of books; of a piece that is still the same object none is computed again."""

    def __init__(self) -> None:
        self._known: dict[str, tuple[Any, str]] = {}

    def of(self, pieces: Pieces) -> str:
        """Return the digest of a book in pieces."""
        fresh: dict[str, tuple[Any, str]] = {}
        for key, piece in pieces.items():
            known = self._known.get(key)
            if known is None or known[0] is not piece:
                text = json.dumps(plain(piece, defaults=True), sort_keys=True)
                known = piece, sha256(text.encode()).hexdigest()
            fresh[key] = known
        self._known = fresh
        told = json.dumps(sorted((key, digest) for key, (_, digest) in fresh.items()))
        return sha256(told.encode()).hexdigest()


def split(book: Book) -> Pieces:
    """Return the pieces of a book."""
    pieces: Pieces = {
        **{name: getattr(book, name) for name in WHOLES},
        "projects": tuple(project.name for project in book.projects),
    }
    for project in book.projects:
        pieces[f"project/{project.name}"] = _head(project)
        pieces[f"log/{project.name}"] = project.log
        for model in project.models:
            pieces[f"model/{project.name}/{model.name}"] = model
    return pieces


def join(pieces: Pieces) -> Book:
    """Return the book of the pieces.

    Raises
    ------
    Refused
        If they do not fit together.
    """
    return Book(
        **{name: pieces[name] for name in WHOLES},
        projects=tuple(_project(pieces, name) for name in pieces["projects"]),
    )


def changes(before: Pieces, after: Pieces) -> dict[str, tuple[Any, Any]]:
    """Return (value before, value after) of every piece that differs; None where there is none."""
    keys = dict.fromkeys([*before, *after])
    return {
        key: (before.get(key), after.get(key))
        for key in keys
        if before.get(key) is not after.get(key) and before.get(key) != after.get(key)
    }


def value_of(key: str, tree: Any) -> Any:
    """Return the piece that a JSON tree stands for."""
    return msgspec.convert(tree, KINDS[key.partition("/")[0]], strict=True)


def _head(project: Project) -> Head:
    own = {field.name: getattr(project, field.name) for field in fields(Head)}
    return Head(**{**own, "models": tuple(model.name for model in project.models)})


def _project(pieces: Pieces, name: str) -> Project:
    head: Head = pieces[f"project/{name}"]
    own = {field.name: getattr(head, field.name) for field in fields(Head)}
    models = tuple(pieces[f"model/{name}/{model}"] for model in head.models)
    return Project(**{**own, "models": models}, log=pieces[f"log/{name}"])
