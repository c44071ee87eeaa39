"""The tables of a bench book.

Each dataclass of the values is a row; each tuple in it is a child table with
``parent`` and ``position``.  A value inside a value (a mark in a window, the
minutes of a step) takes columns with its field's name in front.  Times are
ISO 8601 text with their offset, so that nothing is lost; ids are drawn from
one sequence for all tables.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    Boolean,
    Column,
    Float,
    ForeignKey,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    Text,
)

METADATA = MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "ix": "ix_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_name)s",
    }
)


def _text(name: str, *, optional: bool = False) -> Column[str]:
    return Column(name, Text, nullable=optional)


def _whole(name: str, *, optional: bool = False) -> Column[int]:
    return Column(name, Integer, nullable=optional)


def _number(name: str, *, optional: bool = False) -> Column[float]:
    return Column(name, Float, nullable=optional)


def _flag(name: str) -> Column[bool]:
    return Column(name, Boolean, nullable=False)


def _top(name: str, *columns: Column[Any]) -> Table:
    """Return a table of rows that belong to the book itself."""
    return Table(
        name, METADATA, Column("id", Integer, primary_key=True), _whole("position"), *columns
    )


def _child(name: str, parent: Table, *columns: Column[Any]) -> Table:
    """Return a table of rows that go when their parent goes."""
    key = ForeignKey(parent.c.id, ondelete="CASCADE")
    return Table(
        name,
        METADATA,
        Column("id", Integer, primary_key=True),
        Column("parent", Integer, key, nullable=False, index=True),
        _whole("position"),
        *columns,
    )


def _hours() -> tuple[Column[Any], ...]:
    return (_text("rule"), _text("since"), _text("start"), _text("end"), _whole("people"))


def _window() -> tuple[Column[Any], ...]:
    marks = [
        column
        for end in ("opens", "closes")
        for column in (
            _text(f"{end}_state", optional=True),
            _whole(f"{end}_minutes", optional=True),
            _text(f"{end}_clock", optional=True),
        )
    ]
    return (*marks, _text("preparation"), _whole("preparation_minutes"), _flag("merges"))


def _air() -> tuple[Column[Any], ...]:
    return (_text("at"), _number("temperature_c"), _number("humidity_pct"))


COATING = _top(
    "coating",
    _text("name"),
    _text("family"),
    _text("finish"),
    _text("swatch"),
    _number("solids"),
    _number("dry_film_um"),
    _whole("pot_life_minutes", optional=True),
    _number("least_c", optional=True),
    _number("most_c", optional=True),
    _number("most_humidity_pct", optional=True),
    _number("in_stock_ml"),
)
COATING_TIME = _child("coating_time", COATING, _text("state"), _whole("minutes"), _text("source"))
COATING_RECOAT = _child("coating_recoat", COATING, *_window())

MIX = _top("mix", _text("name"), _whole("life_minutes"), _text("swatch", optional=True))
MIX_PORTION = _child("mix_portion", MIX, _text("coating"), _number("parts"))

ROOM = _top("room", _number("volume_m3"))
LOCATION = _child("location", ROOM, _text("name"), _whole("drying_places"))
LOCATION_WORKDAY = _child("location_workday", LOCATION, *_air())
LOCATION_WEEKEND = _child("location_weekend", LOCATION, *_air())
READING = _child("reading", ROOM, *_air(), _text("location"))

BENCH_TIME = _top("bench_time", _text("zone"))
BENCH_STRETCH = _child("bench_stretch", BENCH_TIME, *_hours())
BENCH_SKIPPED = _child("bench_skipped", BENCH_TIME, _text("value"))
BENCH_EXTRA = _child("bench_extra", BENCH_TIME, _text("start"), _text("end"), _whole("people"))
BENCH_QUIET = _child("bench_quiet", BENCH_TIME, *_hours())
BENCH_DAYLIGHT = _child("bench_daylight", BENCH_TIME, *_hours())

GEAR = _top("gear")
AIRBRUSH = _child(
    "airbrush",
    GEAR,
    _text("name"),
    _whole("load_minutes"),
    _whole("change_same_family"),
    _whole("change_other_family"),
    _whole("clean_minutes"),
    _whole("idle_limit_minutes"),
)

PROJECT = _top(
    "project",
    _text("name"),
    _text("target", optional=True),
    _whole("weight"),
    _flag("active"),
    _text("note"),
)
PROJECT_PIN = _child(
    "project_pin",
    PROJECT,
    _text("model"),
    _text("step"),
    _whole("coat", optional=True),
    _text("on", optional=True),
    _text("start", optional=True),
    _text("end", optional=True),
)
PROJECT_LOG = _child(
    "project_log",
    PROJECT,
    _text("model"),
    _text("step"),
    _whole("coat"),
    _text("start"),
    _text("end", optional=True),
)

MODEL = _child("model", PROJECT, _text("name"), _text("scale"))
PART = _child(
    "part",
    MODEL,
    _text("name"),
    _text("holder"),
    _whole("stands"),
    _text("material"),
    _flag("stressed"),
)
PLACE = _child("place", PART, _text("name"), _text("side"), _number("area_cm2"))
STEP = _child(
    "step",
    MODEL,
    _text("step_id"),
    _text("stage"),
    _text("title"),
    _text("tool"),
    _whole("minutes_fixed"),
    _whole("minutes_per_part"),
    _text("role", optional=True),
    _whole("split_least", optional=True),
    _flag("helper"),
    _text("dries_in"),
    _flag("scraped"),
    _whole("stands", optional=True),
)
STEP_TOUCHES = _child("step_touches", STEP, _text("value"))
STEP_AFTER = _child("step_after", STEP, _text("value"))
APPLICATION = _child("application", STEP, _text("coating"), _whole("coats"))
APPLICATION_PLACE = _child("application_place", APPLICATION, _text("value"))
GATE = _child("gate", STEP, _text("after"), _text("closing"))
GATE_WINDOW = _child("gate_window", GATE, *_window())

JOURNAL = Table(
    "journal",
    METADATA,
    Column("id", Integer, primary_key=True),
    _text("at"),
    _text("name"),
    _text("kind"),
    Column("target", Integer, ForeignKey("journal.id"), nullable=True),
    Column("changes", LargeBinary, nullable=False),
)
META = Table("meta", METADATA, Column("name", Text, primary_key=True), _text("value"))
