"""Two books that have something of the same name: what differs, and what to take of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import MISSING, dataclass, fields, is_dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Any

from app.service.renaming import renamed_all
from app.service.sanitize_text import tame
from planner.values.book import Book
from planner.values.book_changes import with_every_model
from planner.values.field import fields_of
from planner.values.message import Message, message, row
from planner.values.message import told as said
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import demand
from planner.values.sequence import Sequence

LONGEST_NAME = 120
LONGEST_TEXT = 300  # of a value shown side by side


class ItemKind(StrEnum):
    """What may stand in a book under a name that a file uses, too."""

    PROJECT = "project"
    COATING = "coating"
    MIX = "mix"
    SEQUENCE = "sequence"


class MergeChoice(StrEnum):
    """What to do with one of them."""

    MINE = "mine"
    THEIRS = "theirs"
    BESIDE = "beside"


Item = tuple[ItemKind, str]
Piece = dict[Message, Any]  # one part of a project or sequence, by what its fields are called
SPELT = {"µm": "um", "°C": "c", "% RH": "pct", "%": "pct", "cm²": "cm2", "min": "minutes"}
"""How the name of a field ends on its unit, where that is not the unit itself."""
FIELDS = {
    ItemKind.PROJECT: "projects",
    ItemKind.COATING: "coatings",
    ItemKind.MIX: "mixes",
    ItemKind.SEQUENCE: "sequences",
}
USUAL = {
    ItemKind.PROJECT: MergeChoice.BESIDE,  # so that nothing of either is lost
    ItemKind.COATING: MergeChoice.MINE,
    ItemKind.MIX: MergeChoice.MINE,
    ItemKind.SEQUENCE: MergeChoice.MINE,
}


@dataclass(frozen=True)
class MergeSide:
    """One field of both, as text."""

    field: str
    ours: str
    theirs: str

    @property
    def differs(self) -> bool:
        """Tell whether the two say different things."""
        return self.ours != self.theirs


@dataclass(frozen=True)
class Difference:
    """Something that the book and the file describe differently under one name.

    ``beside`` is a name under which it could be taken in as well.
    """

    kind: ItemKind
    name: str
    sides: tuple[MergeSide, ...]
    beside: str

    @property
    def item(self) -> Item:
        """What it is, for choosing."""
        return self.kind, self.name


def differences(book: Book, other: Book) -> tuple[Difference, ...]:
    """Return all that the two describe differently under one name."""
    return tuple(
        Difference(kind, name, tuple(_sides(kind, mine, its)), free_name(book, other, kind, its))
        for kind in ItemKind
        for name, its in named(other, kind).items()
        if (mine := named(book, kind).get(name)) is not None and mine != its
    )


def named(book: Book, kind: ItemKind) -> dict[str, Any]:
    """Return what a book has of a kind, by name."""
    return {other.name: other for other in getattr(book, FIELDS[kind])}


def beside(
    book: Book, other: Book, choices: Mapping[Item, MergeChoice], names: Mapping[Item, str]
) -> tuple[Book, dict[Item, str]]:
    """Return the other book with new names for what is to be taken beside, and those names.

    A mix of a coating that gets a new name cannot stay the mix that the book
    has under its name, so it gets one as well.

    Raises
    ------
    Refused
        If a new name is taken.
    """
    given: dict[Item, str] = {}
    for kind in (ItemKind.COATING, ItemKind.MIX, ItemKind.SEQUENCE, ItemKind.PROJECT):
        new: dict[str, str] = {}
        for name, its in named(other, kind).items():
            mine = named(book, kind).get(name)
            item = (kind, name)
            followed = kind is ItemKind.MIX and item not in choices
            if mine in (None, its) or not (choices.get(item) is MergeChoice.BESIDE or followed):
                continue
            wanted = names.get(item, "").strip()
            new[name] = wanted or free_name(book, other, kind, its, new.values())
            taken = {*_taken(book, kind), *_taken(other, kind), *list(new.values())[:-1]}
            demand(
                new[name] not in taken or _there(book, kind, its, new[name]),
                f"{kind} {name}",
                message('"{new}" is taken as well; choose another name', new=new[name]),
            )
        if new:
            other = _with_names(other, kind, new)
            given |= {(kind, name): other_name for name, other_name in new.items()}
    return other, given


def free_name(book: Book, other: Book, kind: ItemKind, its: Any, given: Iterable[str] = ()) -> str:
    """Return "name (2)" or the like: free, or that of the very same thing taken in before."""
    taken = {*_taken(book, kind), *_taken(other, kind), *given}
    number = 2
    while True:
        end = f" ({number})"
        name = f"{its.name[: LONGEST_NAME - len(end)].rstrip()}{end}"
        if name not in taken or _there(book, kind, its, name):
            return name
        number += 1


def _taken(book: Book, kind: ItemKind) -> set[str]:
    """Return names that a thing of a kind cannot have; coatings and mixes share theirs."""
    shared = (
        (ItemKind.COATING, ItemKind.MIX) if kind in (ItemKind.COATING, ItemKind.MIX) else (kind,)
    )
    return {name for each in shared for name in named(book, each)}


def _there(book: Book, kind: ItemKind, its: Any, name: str) -> bool:
    """Tell whether the book has the very same thing under another name already."""
    return bool(named(book, kind).get(name) == replace(its, name=name))


def _with_names(other: Book, kind: ItemKind, names: Mapping[str, str]) -> Book:
    ours = tuple(
        replace(other, name=names[other.name]) if other.name in names else other
        for other in getattr(other, FIELDS[kind])
    )
    if kind is ItemKind.COATING:
        return renamed_all(other, names, coatings=ours)
    if kind is ItemKind.MIX:
        return renamed_all(other, names, mixes=ours)
    if kind is ItemKind.PROJECT:
        return replace(other, projects=ours)
    followed = with_every_model(other, lambda _key, model: _made_by(model, names))
    return replace(followed, sequences=ours)


def _made_by(model: Model, names: Mapping[str, str]) -> Model:
    if model.made is None or model.made.sequence not in names:
        return model
    return replace(model, made=replace(model.made, sequence=names[model.made.sequence]))


def _sides(kind: ItemKind, mine: Any, its: Any) -> Iterator[MergeSide]:
    """Yield every field that either has set, what holds many others one by one."""
    apart = (
        {"models"}
        if kind is ItemKind.PROJECT
        else {"steps"}
        if kind is ItemKind.SEQUENCE
        else set()
    )
    for field in fields(mine):
        ours, theirs = getattr(mine, field.name), getattr(its, field.name)
        if field.name == "name" or field.name in apart:
            continue
        if ours != theirs or not _is_default(field, ours):
            yield MergeSide(field_word(type(mine), field.name), told(ours), told(theirs))
    if apart:
        ours, theirs = dict(_pieces(mine)), dict(_pieces(its))
        for name in dict.fromkeys([*ours, *theirs]):
            yield from _apart(name, ours.get(name), theirs.get(name))


def _apart(name: str, ours: Piece | None, theirs: Piece | None) -> Iterator[MergeSide]:
    """Yield where a piece differs, field by field; as a whole where one side has none."""
    if ours is None or theirs is None:
        yield MergeSide(name, told(ours), told(theirs))
        return
    for field in ours:
        if ours[field] != theirs[field]:
            yield MergeSide(row((name, field), ": "), told(ours[field]), told(theirs[field]))


def _pieces(whole: Project | Sequence) -> Iterator[tuple[str, Piece]]:
    """Yield what a project or sequence is made of, by a name for each."""
    if isinstance(whole, Sequence):
        for other in whole.steps:
            yield other.step.id, _fields(other.step) | _fields(other, "step")
        return
    for model in whole.models:
        yield model.name, _fields(model, "name", "parts", "steps")
        for part in model.parts:
            yield f"{model.name}/{part.name}", _fields(part)
        for step in model.steps:
            yield f"{model.name}/{step.id}", _fields(step)


def _fields(value: Any, *but: str) -> Piece:
    return {
        field_word(type(value), field.name): getattr(value, field.name)
        for field in fields(value)
        if field.name not in but
    }


def field_word(kind: type, name: str) -> Message:
    """Return a field's name as people read it: "dry film [µm]"."""
    word, unit = word_and_unit(kind, name)
    return row((word, " [", said(unit), "]"), "") if unit else word


def word_and_unit(kind: type, name: str) -> tuple[Message, str]:
    """Return a field's name as people read it, and its unit or ""."""
    unit = fields_of(kind)[name].field.unit
    end = SPELT.get(unit, unit.replace("/", "_").lower())
    return _spaced(name.removesuffix(f"_{end}")), unit


def _spaced(name: str) -> Message:
    return Message(name.replace("_", " "))


def told(value: Any) -> str:
    """Return a value as a person reads it, cut where it is very long; "–" for none."""
    whole = _told(value)
    text = tame(whole, lines=False)
    if len(text) > LONGEST_TEXT:
        return text[: LONGEST_TEXT - 1] + "…"
    return whole if text == whole else text


def _told(value: Any) -> str:
    if value is None or value in ((), ""):
        return "–"
    if isinstance(value, bool):
        return message("yes") if value else message("no")
    if isinstance(value, float):
        return message("{number:g}", number=value)
    if isinstance(value, date):
        return message("{day}", day=value)
    if isinstance(value, StrEnum):
        return row((value,))
    if isinstance(value, tuple):
        return _listed(_told(other) for other in value)
    if isinstance(value, dict):
        some = [
            (name, other) for name, other in value.items() if other not in (None, (), "", False)
        ]
        return row(row((name, _told(other)), " ") for name, other in some) if some else "–"
    if is_dataclass(value):
        return row(
            _told(getattr(value, field.name))
            if field.name in ("name", "id", "coating")
            else row((_spaced(field.name), _told(getattr(value, field.name))), " ")
            for field in fields(value)
            if not _is_default(field, getattr(value, field.name))
        )
    return str(value)


def _listed(texts: Iterable[str]) -> Message:
    """Return texts in a row, the last ones left out where it is very long."""
    shown: list[str] = []
    room = LONGEST_TEXT - len("; …")
    for text in texts:
        room -= len(text) + len("; ")
        if shown and room < 0:
            shown.append("…")
            break
        shown.append(text)
    return row(shown, "; ")


def _is_default(field: Any, value: Any) -> bool:
    if field.default is not MISSING:
        return bool(value == field.default)
    return field.default_factory is not MISSING and bool(value == field.default_factory())
