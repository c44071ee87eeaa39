"""The tables of a bench book.

Each dataclass of the values is a row; each tuple in it is a child table with
``parent`` and ``position``.  A value inside a value (a mark in a window, the
minutes of a step) takes columns with its field's name in front.  Times are
ISO 8601 text with their offset, so that nothing is lost; ids are drawn from
one sequence for all tables.
"""

from __future__ import annotations

from typing import Any, NamedTuple

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
        for end in ("opens", "best", "closes")
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
    _text("counted", optional=True),
    _number("bottle_ml"),
    _number("drops_per_ml", optional=True),
    _text("opened", optional=True),
    _number("slowness"),
    _text("effect"),
    _text("hiding", optional=True),
    _number("doubt", optional=True),
    _number("steeper_kj_mol"),
    _number("retarder"),
)
COATING_TIME = _child("coating_time", COATING, _text("state"), _whole("minutes"), _text("source"))
COATING_RECOAT = _child("coating_recoat", COATING, *_window())

MIX = _top("mix", _text("name"), _whole("life_minutes"), _text("swatch", optional=True))
MIX_PORTION = _child("mix_portion", MIX, _text("coating"), _number("parts"))

ROOM = _top("room", _number("volume_m3"))
LOCATION = _child(
    "location",
    ROOM,
    _text("name"),
    _whole("drying_places"),
    _flag("outdoors"),
    _flag("spraying"),
    _text("movement"),
)
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
    _number("least_fill_ml"),
    _number("most_fill_ml", optional=True),
    _number("lost_ml"),
    _number("transfer", optional=True),
)
CLEANED = _top("cleaned", _text("airbrush"), _text("at"))
DRYING_CARD = _top(
    "drying_card",
    _text("coating"),
    _text("laid"),
    _text("location"),
    _number("dry_film_um", optional=True),
)
CARD_TRIED = _child("card_tried", DRYING_CARD, _text("trial"), _text("at"), _flag("held"))

PROJECT = _top(
    "project",
    _text("name"),
    _text("target", optional=True),
    _whole("weight"),
    _flag("active"),
    _text("note"),
    _text("pilot"),
    _text("begins", optional=True),
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
    _text("not_before", optional=True),
    _text("beside", optional=True),
)
PROJECT_LOG = _child(
    "project_log",
    PROJECT,
    _text("model"),
    _text("step"),
    _whole("coat"),
    _text("start"),
    _text("end", optional=True),
    _whole("minutes", optional=True),
    _whole("planned", optional=True),
    _number("temperature_c", optional=True),
    _number("humidity_pct", optional=True),
    _text("note"),
    _text("airbrush"),
)
LOG_USED = _child("log_used", PROJECT_LOG, _text("coating"), _number("ml"))
LOG_TICKED = _child("log_ticked", PROJECT_LOG, _text("value"))
LOG_PHOTO = _child("log_photo", PROJECT_LOG, _text("value"))
PROJECT_OBSERVED = _child(
    "project_observed",
    PROJECT,
    _text("model"),
    _text("step"),
    _whole("coat"),
    _text("at"),
    _text("state"),
    _flag("reached"),
)
PROJECT_DIARY = _child(
    "project_diary",
    PROJECT,
    _text("at"),
    _text("event"),
    _text("model"),
    _text("step"),
    _text("text"),
)

MODEL = _child(
    "model",
    PROJECT,
    _text("name"),
    _text("scale"),
    _number("real_size_length_m", optional=True),
    _number("real_size_width_m", optional=True),
    _number("real_size_height_m", optional=True),
    _text("target", optional=True),
    _whole("weight"),
    _flag("early"),
    _text("kind"),
)
MODEL_MADE = _child("model_made", MODEL, _text("sequence"))
MADE_OPTION = _child("made_option", MODEL_MADE, _text("value"))
MADE_COLOUR = _child("made_colour", MODEL_MADE, _text("colour"), _text("coating"))
MADE_CHANGE = _child("made_change", MODEL_MADE, _text("value"))
PART = _child(
    "part",
    MODEL,
    _text("name"),
    _text("holder"),
    _whole("stands"),
    _text("material"),
    _flag("stressed"),
)
PLACE = _child(
    "place",
    PART,
    _text("name"),
    _text("side"),
    _number("area_cm2"),
    _number("detail"),
    _number("share"),
)
MEASURE = _child(
    "measure",
    PLACE,
    _text("shape"),
    _number("length_mm"),
    _number("width_mm"),
    _number("height_mm"),
    _whole("count"),
)


class StepTables(NamedTuple):
    """The tables of steps, which hang on models, and of those of sequences."""

    step: Table
    touches: Table
    after: Table
    or_in: Table
    trait: Table
    application: Table
    application_place: Table
    gate: Table
    gate_window: Table


def _step_tables(prefix: str, parent: Table) -> StepTables:
    step = _child(
        f"{prefix}step",
        parent,
        _text("step_id"),
        _text("stage"),
        _text("title"),
        _text("tool"),
        _whole("minutes_fixed"),
        _whole("minutes_per_part"),
        _whole("minutes_per_change"),
        _text("role", optional=True),
        _whole("split_least", optional=True),
        _flag("helper"),
        _text("dries_in"),
        _flag("scraped"),
        _whole("stands", optional=True),
        _whole("look_in", optional=True),
    )
    application = _child(
        f"{prefix}application",
        step,
        _text("coating"),
        _whole("coats"),
        _number("share", optional=True),
    )
    gate = _child(f"{prefix}gate", step, _text("after"), _text("closing"))
    return StepTables(
        step=step,
        touches=_child(f"{prefix}step_touches", step, _text("value")),
        after=_child(f"{prefix}step_after", step, _text("value")),
        or_in=_child(f"{prefix}step_or_in", step, _text("value")),
        trait=_child(f"{prefix}step_trait", step, _text("value")),
        application=application,
        application_place=_child(f"{prefix}application_place", application, _text("value")),
        gate=gate,
        gate_window=_child(f"{prefix}gate_window", gate, *_window()),
    )


STEP_TABLES = _step_tables("", MODEL)

SEQUENCE = _top("sequence", _text("name"), _text("note"), _number("made_for_cm2"))
SEQUENCE_COLOUR = _child("sequence_colour", SEQUENCE, _text("name"), _text("usual"), _text("note"))
SEQUENCE_OPTION = _child(
    "sequence_option", SEQUENCE, _text("name"), _flag("usual"), _text("choice"), _text("note")
)
SEQUENCE_ENTRY = _child("sequence_entry", SEQUENCE)
ENTRY_NEEDS = _child("entry_needs", SEQUENCE_ENTRY, _text("value"))
ENTRY_UNLESS = _child("entry_unless", SEQUENCE_ENTRY, _text("value"))
SEQUENCE_STEP_TABLES = _step_tables("sequence_", SEQUENCE_ENTRY)

SUPPLIES = _top("supplies", _number("margin_pct"))
CONSUMABLE = _child(
    "consumable",
    SUPPLIES,
    _text("name"),
    _text("unit"),
    _number("in_stock"),
    _number("per_pass"),
    _text("counted", optional=True),
)
CONSUMABLE_STAGE = _child("consumable_stage", CONSUMABLE, _text("value"))
LEFTOVER = _child(
    "leftover", SUPPLIES, _text("name"), _number("ml"), _text("made"), _whole("keeps_days")
)
LEFTOVER_PORTION = _child("leftover_portion", LEFTOVER, _text("coating"), _number("parts"))
CARD = _child("card", SUPPLIES, _text("name"), _text("on"), _text("note"), _text("photo"))
CARD_DROPS = _child("card_drops", CARD, _text("coating"), _whole("drops"))

PREFERENCES = _top("preferences", _text("staying"))
PREFERENCE = _child("preference", PREFERENCES, _text("value"))
PREFERENCE_LIKELY = _child("preference_likely", PREFERENCES, _text("value"))
PACE = _top("pace")
PACE_LEARNED = _child(
    "pace_learned", PACE, _text("stage"), _text("tool"), _number("factor"), _text("since")
)

JOURNAL = Table(
    "journal",
    METADATA,
    Column("id", Integer, primary_key=True),
    _text("at"),
    _text("name"),
    _text("kind"),
    Column("target", Integer, ForeignKey("journal.id"), nullable=True),
    Column("changes", LargeBinary, nullable=False),
    Column("verb", Text, nullable=False, server_default=""),
    Column("arguments", Text, nullable=True),  # JSON; without, ``name`` is the whole text
    Column("content", Text, nullable=False, server_default=""),
    Column("digest", Text, nullable=False, server_default=""),
)
# What the program computed or told, apart from the book itself.
SHOWN_PLAN = Table(
    "shown_plan",
    METADATA,
    Column("id", Integer, primary_key=True),
    _text("digest"),
    Column("plan", LargeBinary, nullable=False),
)
PROMISE = Table(
    "promise",
    METADATA,
    Column("id", Integer, primary_key=True),
    _text("told_by"),
    _whole("start"),
    _whole("end"),
)
FORECAST = Table(
    "forecast",
    METADATA,
    Column("id", Integer, primary_key=True),
    _text("project"),
    _whole("made"),
    _whole("half"),
    _whole("most"),
    _whole("nearly"),
    Column("scale", Float, nullable=False),
)
META = Table("meta", METADATA, Column("name", Text, primary_key=True), _text("value"))
