"""Writing single pieces of a book to their tables, and reading them all."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection, Executable, Table, delete, insert, select, update
from sqlalchemy.exc import DBAPIError

from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.refusal import demand
from storage import row_trees
from storage import tables as t
from storage.aggregates import Pieces
from storage.row_trees import Tree, Writer
from storage.strict import build
from storage.to_json import plain

_WHOLE = {
    "coatings": row_trees.COATING,
    "mixes": row_trees.MIX,
    "sequences": row_trees.SEQUENCE,
    "cleaned": row_trees.CLEANED,
    "drying_cards": row_trees.DRYING_CARD,
}
_SINGLE = {
    "room": row_trees.ROOM,
    "bench_time": row_trees.BENCH_TIME,
    "gear": row_trees.GEAR,
    "supplies": row_trees.SUPPLIES,
    "preferences": row_trees.PREFERENCES,
    "pace": row_trees.PACE,
}
_TOP = _WHOLE | _SINGLE
_TOP["drying_cards"] = _TOP.pop("drying_cards")  # last: they name bottles and locations


def read_book(connection: Connection) -> Book:
    """Return the book that the tables hold.

    Raises
    ------
    Refused
        If they hold something that is no sound book.
    """
    raw: Tree = {key: row_trees.fetch(connection, shape) for key, shape in _WHOLE.items()}
    for key, shape in _SINGLE.items():
        found = row_trees.fetch(connection, shape)
        demand(len(found) <= 1, key, "is there twice")
        if found:
            raw[key] = found[0]
    raw["projects"] = row_trees.fetch(connection, row_trees.PROJECT)
    book = build(raw, Book)
    check_acyclic(book)
    return book


def read_what_can_be(connection: Connection, starter: Book) -> tuple[Book, tuple[str, ...]]:
    """Return what the tables of a damaged book still hold, and what is lost of it.

    A project is read whole or not at all.  What a book must have and cannot
    be read is that of ``starter``.
    """
    book, lost = starter, []
    for key, shape in _TOP.items():
        try:
            found = row_trees.fetch(connection, shape)
            raw = found if key in _WHOLE else found[0]
            book = build({**plain(book, defaults=True), key: raw}, Book)
        except (DBAPIError, ValueError, LookupError, TypeError):
            lost.append(key)
    try:
        projects = row_trees.fetch(connection, row_trees.PROJECT)
    except (DBAPIError, ValueError, LookupError, TypeError):
        return book, (*lost, "projects")
    for raw in projects:
        try:
            more = [*plain(book, defaults=True)["projects"], raw]
            trial = build({**plain(book, defaults=True), "projects": more}, Book)
            check_acyclic(trial)
        except (ValueError, LookupError, TypeError):
            lost.append(str(raw.get("name", ""))[:60])
        else:
            book = trial
    return book, tuple(lost)


def write_pieces(connection: Connection, keys: Iterable[str], after: Pieces) -> None:
    """Bring the tables to ``after`` for the pieces in ``keys``, and for those alone."""
    _Store(connection, after).write(list(keys))


class _Store:
    def __init__(self, connection: Connection, after: Pieces) -> None:
        self._connection = connection
        self._after = after
        self._last_id = self._stored_id()
        self._writer = Writer(self._next_id)

    def write(self, keys: list[str]) -> None:
        """Remove what goes, then write projects before what hangs on them."""
        for key in keys:
            self._remove(key)
        left = [key.split("/") for key in keys if key in self._after]
        for kind, *names in sorted(left, key=lambda key: key[0] != "project"):
            self._put(kind, *names)
        self._writer.write(self._connection)
        self._number([key[1] for key in left if key[0] == "project"], "projects" in keys)
        self._connection.execute(
            update(t.META).where(t.META.c.name == "last_id").values(value=str(self._last_id))
        )

    def _remove(self, key: str) -> None:
        kind, *names = key.split("/")
        if kind in _TOP:
            self._run(delete(_TOP[kind].table))
        elif kind == "project" and key not in self._after:
            self._run(delete(t.PROJECT).where(t.PROJECT.c.name == names[0]))
        elif kind == "log":
            self._drop(t.PROJECT_LOG, names[0])
        elif kind == "model":
            own = t.MODEL.c.parent == self._project_id(names[0])
            self._run(delete(t.MODEL).where(own, t.MODEL.c.name == names[1]))

    def _put(self, kind: str, *names: str) -> None:
        tree = plain(self._after["/".join((kind, *names))], defaults=True)
        if kind in _WHOLE:
            self._writer.add_all(_WHOLE[kind], tree)
        elif kind in _SINGLE:
            self._writer.add(_SINGLE[kind], tree, 0)
        elif kind == "project":
            self._put_project(tree)
        elif kind == "log":
            self._writer.add_all(row_trees.LOG, tree, self._project_id(names[0]))
        elif kind == "model":
            project, name = names
            place = self._after[f"project/{project}"].models.index(name)
            self._writer.add(row_trees.MODEL, tree, place, self._project_id(project))

    def _put_project(self, tree: Tree) -> None:
        """Insert or update a project's own row; its models and log stay as they are."""
        hung = {"pins": row_trees.PIN, "observed": row_trees.OBSERVED, "diary": row_trees.DIARY}
        row = {key: value for key, value in tree.items() if key not in ("models", *hung)}
        own = self._project_id(tree["name"])
        if own is None:
            own = self._next_id()
            self._run(insert(t.PROJECT).values(id=own, position=0, **row))
        else:
            self._run(update(t.PROJECT).where(t.PROJECT.c.id == own).values(**row))
            for shape in hung.values():
                self._drop(shape.table, tree["name"])
        for field, shape in hung.items():
            self._writer.add_all(shape, tree[field], own)

    def _number(self, projects: list[str], all_projects: bool) -> None:
        """Number the models of ``projects``, and the projects themselves, in their order."""
        for project in projects:
            own = t.MODEL.c.parent == self._project_id(project)
            for position, name in enumerate(self._after[f"project/{project}"].models):
                here = update(t.MODEL).where(own, t.MODEL.c.name == name)
                self._run(here.values(position=position))
        if all_projects:
            for position, name in enumerate(self._after["projects"]):
                here = update(t.PROJECT).where(t.PROJECT.c.name == name)
                self._run(here.values(position=position))

    def _drop(self, table: Table, project: str) -> None:
        self._run(delete(table).where(table.c.parent == self._project_id(project)))

    def _project_id(self, name: str) -> int | None:
        wanted = select(t.PROJECT.c.id).where(t.PROJECT.c.name == name)
        return self._connection.execute(wanted).scalar_one_or_none()

    def _stored_id(self) -> int:
        wanted = select(t.META.c.value).where(t.META.c.name == "last_id")
        return int(self._connection.execute(wanted).scalar_one())

    def _next_id(self) -> int:
        self._last_id += 1
        return self._last_id

    def _run(self, statement: Executable) -> None:
        self._connection.execute(statement)
