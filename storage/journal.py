"""The journal: every edit and every logged fact, appended and never changed.

Each line carries a digest of itself and of the line before, and one of all
that the book held then: whatever is changed behind the program's back shows.

Which edit comes next to undo follows from the rows alone, so that it
survives a restart: an undo or redo names its target.  An edit that names one
goes on with it, as one types a number digit by digit: it takes its place and
holds what both changed together.  Facts are no edits and are not undone with
them; a fact that names another takes it back.  A new book or an upgrade begins afresh.
"""

from __future__ import annotations

import json
import zlib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from hashlib import sha256
from typing import Any, Final, NamedTuple

from sqlalchemy import Connection, insert, select, update

from planner.values.message import Message
from storage.aggregates import value_of
from storage.messages import arguments_data, message_of
from storage.tables import JOURNAL
from storage.to_json import plain

_COLUMNS: Final = ("id", "at", "name", "arguments", "kind", "target", "verb")
MOST_CHANGES: Final = 50_000_000  # that one line holds, unpacked [bytes]


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


class Stand(NamedTuple):
    """Where the journal stands: its newest line, that line's digest and that of the book."""

    id: int
    digest: str
    content: str


class Change(NamedTuple):
    """A piece before and after; None where there was or is none."""

    before: Any
    after: Any


class JournalLine(NamedTuple):
    """What an entry says; ``content`` is the digest of the book after it."""

    name: str
    kind: Kind
    changed: Mapping[str, tuple[Any, Any]]
    content: str
    target: int | None = None
    verb: str = ""


def append(connection: Connection, line: JournalLine) -> int:
    """Add an entry and return its id."""
    trees = {key: [plain(one, defaults=True) for one in pair] for key, pair in line.changed.items()}
    last = stand(connection)
    row = {
        "id": last.id + 1,
        "at": datetime.now(UTC).isoformat(timespec="seconds"),
        **_words(line.name),
        "kind": line.kind.value,
        "target": line.target,
        "verb": line.verb,
        "changes": zlib.compress(json.dumps(trees, ensure_ascii=False).encode()),
        "content": line.content,
    }
    connection.execute(insert(JOURNAL).values(**row, digest=_sealed(last.digest, row)))
    return last.id + 1


def stand(connection: Connection) -> Stand:
    """Return where the journal stands; zero and nothing while it is empty."""
    columns = (JOURNAL.c.id, JOURNAL.c.digest, JOURNAL.c.content)
    last = connection.execute(select(*columns).order_by(JOURNAL.c.id.desc()).limit(1)).first()
    return Stand(int(last[0]), str(last[1]), str(last[2])) if last else Stand(0, "", "")


def digest_at(connection: Connection, own: int) -> str | None:
    """Return the digest of one line, None where there is no such line."""
    found = connection.execute(select(JOURNAL.c.digest).where(JOURNAL.c.id == own)).scalar()
    return None if found is None else str(found)


def read(connection: Connection, after: Stand) -> tuple[Entry, ...]:
    """Return the entries behind a line, each held against its digest.

    Raises
    ------
    ValueError
        If a line is not as it was written, or one is missing.
    """
    before, found = after, []
    lines = select(JOURNAL).where(JOURNAL.c.id > after.id).order_by(JOURNAL.c.id)
    for line in connection.execute(lines).mappings():
        row = {str(name): value for name, value in line.items()}
        digest = row.pop("digest")
        if row["id"] != before.id + 1 or digest != _sealed(before.digest, row):
            raise ValueError(f"line {row['id']} of the journal is not as it was written")
        before = Stand(row["id"], digest, row["content"])
        found.append(_entry(*(row[name] for name in _COLUMNS)))
    return tuple(found)


def seal(connection: Connection) -> None:
    """Give every line its digest anew, after an upgrade that has changed what lines hold."""
    before = ""
    for line in connection.execute(select(JOURNAL).order_by(JOURNAL.c.id)).mappings().all():
        row = {str(name): value for name, value in line.items() if name != "digest"}
        before = _sealed(before, row)
        own = update(JOURNAL).where(JOURNAL.c.id == row["id"])
        connection.execute(own.values(digest=before))


def _sealed(before: str, row: Mapping[str, Any]) -> str:
    """Return the digest of a line behind a line with the digest ``before``."""
    told = {name: one.hex() if isinstance(one, bytes) else one for name, one in row.items()}
    return sha256((before + json.dumps(told, sort_keys=True)).encode()).hexdigest()


def entries(connection: Connection) -> tuple[Entry, ...]:
    """Return every entry, the oldest first."""
    wanted = select(*(JOURNAL.c[name] for name in _COLUMNS)).order_by("id")
    return tuple(_entry(*row) for row in connection.execute(wanted))


def _entry(
    own: int, at: str, name: str, arguments: str | None, kind: str, target: int | None, verb: str
) -> Entry:
    when, words = datetime.fromisoformat(at), _name(name, arguments)
    return Entry(own, when, words, Kind(kind), target, verb)


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
    packed = connection.execute(wanted).scalar_one()
    text = zlib.decompressobj().decompress(packed, MOST_CHANGES + 1)
    if len(text) > MOST_CHANGES:
        raise ValueError(f"line {own} of the journal holds more than any edit does")
    trees = json.loads(text)
    return {
        key: Change(*(None if tree is None else value_of(key, tree) for tree in pair))
        for key, pair in trees.items()
    }


def after_edits(
    connection: Connection,
    history: tuple[Entry, ...],
    verb: str,
    kind: str,
    bare: Callable[[str, str], bool],
) -> dict[str, Any]:
    """Return pieces as they were after edits of a history; see `BenchBook.after_edits`."""
    found: dict[str, Any] = {}
    for entry in done(history):
        old = not isinstance(entry.name, Message)
        if entry.kind is not Kind.EDIT or not (old or entry.verb == verb):
            continue
        found |= {
            key: change.after
            for key, change in changes_of(connection, entry.id).items()
            if key.startswith(kind) and (entry.verb == verb or bare(entry.name, key))
        }
    return found


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
