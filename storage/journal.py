"""The journal: every edit and every logged fact, appended and never changed.

Which edit comes next to undo follows from the rows alone, so that it
survives a restart: an undo or redo names its target.  An edit that names one
goes on with it, as one types a number digit by digit: it takes its place and
holds what both changed together.  Facts are no edits and are not undone with
them; a fact that names another takes it back.  A new book or an upgrade begins afresh.
"""

from __future__ import annotations

import json
import zlib
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any, NamedTuple

from sqlalchemy import Connection, func, insert, select

from planner.values.message import Message
from storage.aggregates import value_of
from storage.messages import arguments_data, message_of
from storage.tables import JOURNAL
from storage.to_json import plain


class Kind(StrEnum):
    """What an entry is."""

    CREATED = "created"
    EDIT = "edit"
    FACT = "fact"
    UNDO = "undo"
    REDO = "redo"
    UPGRADE = "upgrade"


@dataclass(frozen=True)
class Entry:
    """One line of the journal.

    ``target`` is the edit that an undo or redo is of, or that an edit goes
    on with, or the fact that a fact takes back.  ``name`` is a `Message` where
    its template was kept; older lines are bare text.  ``verb`` tells what an
    edit does to whoever must know it, "" for most.
    """

    id: int
    at: datetime
    name: str
    kind: Kind
    target: int | None
    verb: str = ""


class Change(NamedTuple):
    """A piece before and after; None where there was or is none."""

    before: Any
    after: Any


def append(
    connection: Connection,
    name: str,
    kind: Kind,
    changed: Mapping[str, tuple[Any, Any]],
    target: int | None = None,
    verb: str = "",
) -> int:
    """Add an entry and return its id."""
    trees = {key: [plain(one, defaults=True) for one in pair] for key, pair in changed.items()}
    row = insert(JOURNAL).values(
        at=datetime.now(UTC).isoformat(timespec="seconds"),
        **_words(name),
        kind=kind.value,
        target=target,
        verb=verb,
        changes=zlib.compress(json.dumps(trees, ensure_ascii=False).encode()),
    )
    own: int = connection.execute(row.returning(JOURNAL.c.id)).scalar_one()
    return own


def entries(connection: Connection) -> tuple[Entry, ...]:
    """Return every entry, the oldest first."""
    columns = ("id", "at", "name", "arguments", "kind", "target", "verb")
    found = connection.execute(select(*(JOURNAL.c[name] for name in columns)).order_by("id"))
    return tuple(
        Entry(own, datetime.fromisoformat(at), _name(name, arguments), Kind(kind), target, verb)
        for own, at, name, arguments, kind, target, verb in found
    )


def _words(name: str) -> dict[str, str | None]:
    """Return the columns of a name: the template and what was put in, or bare text."""
    if not isinstance(name, Message):
        return {"name": name, "arguments": None}
    arguments = json.dumps(arguments_data(name), ensure_ascii=False)
    return {"name": name.template, "arguments": arguments}


def _name(name: str, arguments: str | None) -> str:
    return name if arguments is None else message_of(name, json.loads(arguments))


def changes_of(connection: Connection, own: int) -> dict[str, Change]:
    """Return what an entry changed, as values."""
    wanted = select(JOURNAL.c.changes).where(JOURNAL.c.id == own)
    trees = json.loads(zlib.decompress(connection.execute(wanted).scalar_one()))
    return {
        key: Change(*(None if tree is None else value_of(key, tree) for tree in pair))
        for key, pair in trees.items()
    }


def last_id(connection: Connection) -> int:
    """Return the id of the newest entry: the revision of the book."""
    return int(connection.execute(select(func.max(JOURNAL.c.id))).scalar() or 0)


def together(first: Mapping[str, Change], second: Mapping[str, Change]) -> dict[str, Change]:
    """Return what two edits change, one after the other; nothing where the second undoes."""
    joined = dict(first)
    for key, change in second.items():
        before = first[key].before if key in first else change.before
        joined[key] = Change(before, change.after)
    return {key: change for key, change in joined.items() if change.before != change.after}


@dataclass(frozen=True)
class Stacks:
    """Edits that can be undone and redone, the next one last."""

    undo: tuple[Entry, ...]
    redo: tuple[Entry, ...]


def stacks(history: tuple[Entry, ...]) -> Stacks:
    """Return what the journal leaves to undo and redo."""
    undo: list[Entry] = []
    redo: list[Entry] = []
    for entry in history:
        if entry.kind is Kind.EDIT:
            if entry.target is not None:
                undo.pop()
            undo.append(entry)
            redo.clear()
        elif entry.kind is Kind.UNDO:
            redo.append(undo.pop())
        elif entry.kind is Kind.REDO:
            undo.append(redo.pop())
        elif entry.kind is not Kind.FACT:
            undo.clear()
            redo.clear()
    return Stacks(tuple(undo), tuple(redo))


def done(history: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Return the edits and facts that stand, the newest last; what was made again counts anew."""
    standing: dict[int, Entry] = {}
    undone: dict[int, Entry] = {}
    for entry in history:
        if entry.kind in (Kind.EDIT, Kind.FACT):
            if entry.target is not None:
                standing.pop(entry.target, None)
            if entry.kind is Kind.EDIT or entry.target is None:
                standing[entry.id] = entry
        elif entry.kind is Kind.UNDO:
            assert entry.target is not None
            undone[entry.target] = standing.pop(entry.target)
        elif entry.kind is Kind.REDO:
            assert entry.target is not None
            standing[entry.target] = undone.pop(entry.target)
        else:
            standing.clear()
            undone.clear()
    return tuple(standing.values())
