"""Rows to JSON trees and back, along explicit shapes.

A tree is what `storage.to_json.plain` makes of a value with its defaults kept.
Everything between it and the tables is in `RowShape`: which table holds the
rows, which fields are child tables, which are values inside the value.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any, TypeAlias

from sqlalchemy import Connection, Table, insert, select

from storage import tables as t

Tree: TypeAlias = dict[str, Any]
Row: TypeAlias = dict[str, Any]


@dataclass(frozen=True)
class RowShape:
    """How one kind of tree lies in the tables.

    Attributes
    ----------
    children
        Field to the shape of its entries.
    inner
        Fields that hold a tree of their own (or null), kept in columns
        named ``<field>_<field of it>``.
    renamed
        Field to column, where the two differ.
    single
        Field to the shape of the one entry that it holds, or null.
    bare
        The entries are plain texts in a column ``value``.
    """

    table: Table
    children: Mapping[str, RowShape] = field(default_factory=dict)
    inner: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    renamed: Mapping[str, str] = field(default_factory=dict)
    single: Mapping[str, RowShape] = field(default_factory=dict)
    bare: bool = False

    def every_table(self) -> Iterable[Table]:
        """Yield its table and those below."""
        yield self.table
        for child in (*self.children.values(), *self.single.values()):
            yield from child.every_table()


def _texts(table: Table) -> RowShape:
    return RowShape(table, bare=True)


_MARK = ("state", "minutes", "clock")
_MARKS = {"opens": _MARK, "best": _MARK, "closes": _MARK}

COATING = RowShape(
    t.COATING,
    {"times": RowShape(t.COATING_TIME), "recoat": RowShape(t.COATING_RECOAT, inner=_MARKS)},
)
MIX = RowShape(t.MIX, {"portions": RowShape(t.MIX_PORTION)})
ROOM = RowShape(
    t.ROOM,
    {
        "locations": RowShape(
            t.LOCATION,
            {"workdays": RowShape(t.LOCATION_WORKDAY), "weekends": RowShape(t.LOCATION_WEEKEND)},
        ),
        "readings": RowShape(t.READING),
    },
)
BENCH_TIME = RowShape(
    t.BENCH_TIME,
    {
        "stretches": RowShape(t.BENCH_STRETCH),
        "skipped": _texts(t.BENCH_SKIPPED),
        "extra": RowShape(t.BENCH_EXTRA),
        "quiet": RowShape(t.BENCH_QUIET),
        "daylight": RowShape(t.BENCH_DAYLIGHT),
    },
)
GEAR = RowShape(t.GEAR, {"airbrushes": RowShape(t.AIRBRUSH)})
CLEANED = RowShape(t.CLEANED)
DRYING_CARD = RowShape(t.DRYING_CARD, {"tried": RowShape(t.CARD_TRIED)})


def _steps(tables: t.StepTables) -> RowShape:
    application = RowShape(tables.application, {"places": _texts(tables.application_place)})
    gate = RowShape(tables.gate, {"windows": RowShape(tables.gate_window, inner=_MARKS)})
    return RowShape(
        tables.step,
        {
            "applications": application,
            "touches": _texts(tables.touches),
            "gates": gate,
            "after": _texts(tables.after),
            "or_in": _texts(tables.or_in),
            "traits": _texts(tables.trait),
        },
        inner={"minutes": ("fixed", "per_part", "per_change")},
        renamed={"id": "step_id"},
    )


_MADE = RowShape(
    t.MODEL_MADE,
    {
        "options": _texts(t.MADE_OPTION),
        "colours": RowShape(t.MADE_COLOUR),
        "changes": _texts(t.MADE_CHANGE),
    },
)
_PLACES = RowShape(t.PLACE, {"measures": RowShape(t.MEASURE)})
MODEL = RowShape(
    t.MODEL,
    {"parts": RowShape(t.PART, {"places": _PLACES}), "steps": _steps(t.STEP_TABLES)},
    inner={"real_size": ("length_m", "width_m", "height_m")},
    single={"made": _MADE},
)
LOG = RowShape(
    t.PROJECT_LOG,
    {"used": RowShape(t.LOG_USED), "ticked": _texts(t.LOG_TICKED), "photos": _texts(t.LOG_PHOTO)},
)
PIN = RowShape(t.PROJECT_PIN)
OBSERVED = RowShape(t.PROJECT_OBSERVED)
DIARY = RowShape(t.PROJECT_DIARY)
PROJECT = RowShape(
    t.PROJECT,
    {"models": MODEL, "pins": PIN, "log": LOG, "observed": OBSERVED, "diary": DIARY},
)
SEQUENCE = RowShape(
    t.SEQUENCE,
    {
        "colours": RowShape(t.SEQUENCE_COLOUR),
        "options": RowShape(t.SEQUENCE_OPTION),
        "steps": RowShape(
            t.SEQUENCE_ENTRY,
            {"needs": _texts(t.ENTRY_NEEDS), "unless": _texts(t.ENTRY_UNLESS)},
            single={"step": _steps(t.SEQUENCE_STEP_TABLES)},
        ),
    },
)
SUPPLIES = RowShape(
    t.SUPPLIES,
    {
        "consumables": RowShape(t.CONSUMABLE, {"stages": _texts(t.CONSUMABLE_STAGE)}),
        "leftovers": RowShape(t.LEFTOVER, {"portions": RowShape(t.LEFTOVER_PORTION)}),
        "cards": RowShape(t.CARD, {"drops": RowShape(t.CARD_DROPS)}),
    },
)
PREFERENCES = RowShape(
    t.PREFERENCES, {"order": _texts(t.PREFERENCE), "likely": _texts(t.PREFERENCE_LIKELY)}
)
PACE = RowShape(t.PACE, {"learned": RowShape(t.PACE_LEARNED)})


class Writer:
    """Collects the rows of trees and inserts them table by table, parents first."""

    def __init__(self, next_id: Callable[[], int]) -> None:
        self._next_id = next_id
        self._rows: dict[Table, list[Row]] = defaultdict(list)

    def add(self, shape: RowShape, entry: Any, position: int, parent: int | None = None) -> int:
        """Collect the row of ``entry`` and of all below; return its id."""
        own = self._next_id()
        row: Row = {"id": own, "position": position}
        if parent is not None:
            row["parent"] = parent
        row.update({"value": entry} if shape.bare else columns_of(shape, entry))
        self._rows[shape.table].append(row)
        for name, child in shape.children.items():
            if name in entry:
                self.add_all(child, entry[name], own)
        for name, child in shape.single.items():
            if entry.get(name) is not None:
                self.add(child, entry[name], 0, own)
        return own

    def add_all(self, shape: RowShape, entries: Iterable[Any], parent: int | None = None) -> None:
        """Collect the rows of ``entries`` in their order."""
        for position, entry in enumerate(entries):
            self.add(shape, entry, position, parent)

    def write(self, connection: Connection) -> None:
        """Insert everything collected."""
        for table in t.METADATA.sorted_tables:
            if rows := self._rows.pop(table, None):
                connection.execute(insert(table), rows)


def columns_of(shape: RowShape, entry: Tree) -> Row:
    """Return the columns of one tree, children left out."""
    row: Row = {}
    for name, value in entry.items():
        if name in shape.children or name in shape.single:
            continue
        if name in shape.inner:
            inside = value or {}
            row.update({f"{name}_{key}": inside.get(key) for key in shape.inner[name]})
        else:
            row[shape.renamed.get(name, name)] = value
    return row


def fetch(connection: Connection, shape: RowShape) -> list[Tree]:
    """Return every tree of the shape that the database holds, in order."""
    return [entry for _, entry in sorted(_fetch(connection, shape).get(None, ()), key=_position)]


def _position(numbered: tuple[int, Any]) -> int:
    return numbered[0]


def _fetch(connection: Connection, shape: RowShape) -> dict[int | None, list[tuple[int, Any]]]:
    """Return (position, tree) by parent id."""
    below = {name: _fetch(connection, child) for name, child in shape.children.items()}
    inside = {name: _fetch(connection, child) for name, child in shape.single.items()}
    found: dict[int | None, list[tuple[int, Any]]] = defaultdict(list)
    names = [str(column.name) for column in shape.table.columns]  # SQLAlchemy's own texts else
    for values in connection.execute(select(shape.table).order_by(shape.table.c.position)):
        row = dict(zip(names, values, strict=True))
        own, position, parent = row.pop("id"), row.pop("position"), row.pop("parent", None)
        entry = row["value"] if shape.bare else _tree(shape, row)
        for name, entries in below.items():
            entry[name] = [one for _, one in entries.get(own, ())]
        for name, entries in inside.items():
            entry[name] = next((one for _, one in entries.get(own, ())), None)
        found[parent].append((position, entry))
    return found


def _tree(shape: RowShape, row: Row) -> Tree:
    """Undo `columns_of`."""
    entry: Tree = {}
    for name, keys in shape.inner.items():
        inside = {key: row.pop(f"{name}_{key}") for key in keys}
        empty = all(value is None for value in inside.values())
        entry[name] = None if empty else inside
    for name, column in shape.renamed.items():
        entry[name] = row.pop(column)
    entry.update(row)
    return entry
