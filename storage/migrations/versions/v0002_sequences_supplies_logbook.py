"""Sequences, supplies, wishes and pace; a fuller logbook; areas by measures."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"


def text(name: str, default: str | None = None) -> sa.Column[Any]:
    """Return a column of text; without a default it may be null.

    A default stands for what the old book meant.
    """
    return sa.Column(name, sa.Text(), nullable=default is None, server_default=default)


def whole(name: str, default: str | None = None) -> sa.Column[Any]:
    """Return a column of integers; without a default it may be null."""
    return sa.Column(name, sa.Integer(), nullable=default is None, server_default=default)


def number(name: str, default: str | None = None) -> sa.Column[Any]:
    """Return a column of floats; without a default it may be null."""
    return sa.Column(name, sa.Float(), nullable=default is None, server_default=default)


def must(name: str, kind: Any) -> sa.Column[Any]:
    """Return a column of a new table that is never null."""
    return sa.Column(name, kind(), nullable=False)


def upgrade() -> None:
    """Add columns to what is there, then the new tables."""
    _add("coating", text("counted"), number("bottle_ml", "17"), number("drops_per_ml"))
    _add("coating", text("opened"), number("slowness", "1"))
    _add("airbrush", number("least_fill_ml", "1"), number("lost_ml", "0.5"), number("transfer"))
    _add("project", text("pilot", ""), text("begins"))
    _add("project_pin", text("not_before"), text("beside"))
    _add("project_log", whole("minutes"), whole("planned"), text("note", ""))
    _add("project_log", number("temperature_c"), number("humidity_pct"))
    sizes = ("real_size_length_m", "real_size_width_m", "real_size_height_m")
    _add("model", *(number(size) for size in sizes))
    _add("place", number("detail", "1"))
    _add("step", whole("minutes_per_change", "0"), whole("look_in"))
    _add("application", number("share"))
    _hang_on_the_old()
    _sequences()
    _supplies()
    _wishes()


def _hang_on_the_old() -> None:
    _child("log_used", "project_log", must("coating", sa.Text), must("ml", sa.Float))
    _texts("log_ticked", "project_log")
    _texts("log_photo", "project_log")
    names = [must(name, sa.Text) for name in ("model", "step")]
    _child(
        "project_observed",
        "project",
        *names,
        must("coat", sa.Integer),
        must("at", sa.Text),
        must("state", sa.Text),
        must("reached", sa.Boolean),
    )
    words = ("at", "event", "model", "step", "text")
    _child("project_diary", "project", *(must(word, sa.Text) for word in words))
    _child("model_made", "model", must("sequence", sa.Text))
    _texts("made_option", "model_made")
    _child("made_colour", "model_made", must("colour", sa.Text), must("coating", sa.Text))
    sides = ("length_mm", "width_mm", "height_mm")
    numbers = [must(side, sa.Float) for side in sides]
    _child("measure", "place", must("shape", sa.Text), *numbers, must("count", sa.Integer))
    _texts("step_or_in", "step")
    _texts("step_trait", "step")


def _sequences() -> None:
    _top("sequence", must("name", sa.Text), must("note", sa.Text), must("made_for_cm2", sa.Float))
    words = ("name", "usual", "note")
    _child("sequence_colour", "sequence", *(must(word, sa.Text) for word in words))
    _child(
        "sequence_option",
        "sequence",
        must("name", sa.Text),
        must("usual", sa.Boolean),
        must("choice", sa.Text),
        must("note", sa.Text),
    )
    _child("sequence_entry", "sequence")
    _texts("entry_needs", "sequence_entry")
    _texts("entry_unless", "sequence_entry")
    _child(
        "sequence_step",
        "sequence_entry",
        *(must(name, sa.Text) for name in ("step_id", "stage", "title", "tool")),
        *(must(f"minutes_{name}", sa.Integer) for name in ("fixed", "per_part", "per_change")),
        text("role"),
        whole("split_least"),
        must("helper", sa.Boolean),
        must("dries_in", sa.Text),
        must("scraped", sa.Boolean),
        whole("stands"),
        whole("look_in"),
    )
    for name in ("touches", "after", "or_in", "trait"):
        _texts(f"sequence_step_{name}", "sequence_step")
    coats = (must("coating", sa.Text), must("coats", sa.Integer), number("share"))
    _child("sequence_application", "sequence_step", *coats)
    _texts("sequence_application_place", "sequence_application")
    _child("sequence_gate", "sequence_step", must("after", sa.Text), must("closing", sa.Text))
    _child(
        "sequence_gate_window",
        "sequence_gate",
        *(
            column
            for end in ("opens", "closes")
            for column in (text(f"{end}_state"), whole(f"{end}_minutes"), text(f"{end}_clock"))
        ),
        must("preparation", sa.Text),
        must("preparation_minutes", sa.Integer),
        must("merges", sa.Boolean),
    )


def _supplies() -> None:
    _top("supplies", must("margin_pct", sa.Float))
    _child(
        "consumable",
        "supplies",
        must("name", sa.Text),
        must("unit", sa.Text),
        must("in_stock", sa.Float),
        must("per_pass", sa.Float),
        text("counted"),
    )
    _texts("consumable_stage", "consumable")
    _child(
        "leftover",
        "supplies",
        must("name", sa.Text),
        must("ml", sa.Float),
        must("made", sa.Text),
        must("keeps_days", sa.Integer),
    )
    _child("leftover_portion", "leftover", must("coating", sa.Text), must("parts", sa.Float))
    words = ("name", "on", "note", "photo")
    _child("card", "supplies", *(must(word, sa.Text) for word in words))
    _child("card_drops", "card", must("coating", sa.Text), must("drops", sa.Integer))


def _wishes() -> None:
    _top("preferences")
    _texts("preference", "preferences")
    _top("pace")
    _child(
        "pace_learned",
        "pace",
        must("stage", sa.Text),
        must("tool", sa.Text),
        must("factor", sa.Float),
        must("since", sa.Text),
    )


def _add(table: str, *columns: sa.Column[Any]) -> None:
    for column in columns:
        op.add_column(table, column)


def _top(name: str, *columns: sa.Column[Any]) -> None:
    op.create_table(
        name,
        must("id", sa.Integer),
        must("position", sa.Integer),
        *columns,
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{name}")),
    )


def _child(name: str, parent: str, *columns: sa.Column[Any]) -> None:
    op.create_table(
        name,
        must("id", sa.Integer),
        must("parent", sa.Integer),
        must("position", sa.Integer),
        *columns,
        sa.ForeignKeyConstraint(
            ["parent"], [f"{parent}.id"], name=op.f(f"fk_{name}_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{name}")),
    )
    op.create_index(op.f(f"ix_{name}_parent"), name, ["parent"])


def _texts(name: str, parent: str) -> None:
    _child(name, parent, must("value", sa.Text))
