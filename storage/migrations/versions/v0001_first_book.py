"""The first bench book."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None


def upgrade() -> None:  # noqa: PLR0915 - a table is a statement
    """Make every table of the first version."""
    op.create_table(
        "bench_time",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("zone", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_time")),
    )
    op.create_table(
        "coating",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("family", sa.Text(), nullable=False),
        sa.Column("finish", sa.Text(), nullable=False),
        sa.Column("swatch", sa.Text(), nullable=False),
        sa.Column("solids", sa.Float(), nullable=False),
        sa.Column("dry_film_um", sa.Float(), nullable=False),
        sa.Column("pot_life_minutes", sa.Integer(), nullable=True),
        sa.Column("least_c", sa.Float(), nullable=True),
        sa.Column("most_c", sa.Float(), nullable=True),
        sa.Column("most_humidity_pct", sa.Float(), nullable=True),
        sa.Column("in_stock_ml", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coating")),
    )
    op.create_table(
        "gear",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_gear")),
    )
    op.create_table(
        "journal",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("target", sa.Integer(), nullable=True),
        sa.Column("changes", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(["target"], ["journal.id"], name=op.f("fk_journal_target")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_journal")),
    )
    op.create_table(
        "meta",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_meta")),
    )
    op.create_table(
        "mix",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("life_minutes", sa.Integer(), nullable=False),
        sa.Column("swatch", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_mix")),
    )
    op.create_table(
        "project",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("target", sa.Text(), nullable=True),
        sa.Column("weight", sa.Integer(), nullable=False),
        sa.Column("active", sa.Boolean(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_project")),
    )
    op.create_table(
        "room",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("volume_m3", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_room")),
    )
    op.create_table(
        "airbrush",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("load_minutes", sa.Integer(), nullable=False),
        sa.Column("change_same_family", sa.Integer(), nullable=False),
        sa.Column("change_other_family", sa.Integer(), nullable=False),
        sa.Column("clean_minutes", sa.Integer(), nullable=False),
        sa.Column("idle_limit_minutes", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["gear.id"], name=op.f("fk_airbrush_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_airbrush")),
    )
    op.create_index(op.f("ix_airbrush_parent"), "airbrush", ["parent"], unique=False)
    op.create_table(
        "bench_daylight",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("rule", sa.Text(), nullable=False),
        sa.Column("since", sa.Text(), nullable=False),
        sa.Column("start", sa.Text(), nullable=False),
        sa.Column("end", sa.Text(), nullable=False),
        sa.Column("people", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["bench_time.id"], name=op.f("fk_bench_daylight_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_daylight")),
    )
    op.create_index(op.f("ix_bench_daylight_parent"), "bench_daylight", ["parent"], unique=False)
    op.create_table(
        "bench_extra",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("start", sa.Text(), nullable=False),
        sa.Column("end", sa.Text(), nullable=False),
        sa.Column("people", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["bench_time.id"], name=op.f("fk_bench_extra_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_extra")),
    )
    op.create_index(op.f("ix_bench_extra_parent"), "bench_extra", ["parent"], unique=False)
    op.create_table(
        "bench_quiet",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("rule", sa.Text(), nullable=False),
        sa.Column("since", sa.Text(), nullable=False),
        sa.Column("start", sa.Text(), nullable=False),
        sa.Column("end", sa.Text(), nullable=False),
        sa.Column("people", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["bench_time.id"], name=op.f("fk_bench_quiet_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_quiet")),
    )
    op.create_index(op.f("ix_bench_quiet_parent"), "bench_quiet", ["parent"], unique=False)
    op.create_table(
        "bench_skipped",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["bench_time.id"], name=op.f("fk_bench_skipped_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_skipped")),
    )
    op.create_index(op.f("ix_bench_skipped_parent"), "bench_skipped", ["parent"], unique=False)
    op.create_table(
        "bench_stretch",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("rule", sa.Text(), nullable=False),
        sa.Column("since", sa.Text(), nullable=False),
        sa.Column("start", sa.Text(), nullable=False),
        sa.Column("end", sa.Text(), nullable=False),
        sa.Column("people", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["bench_time.id"], name=op.f("fk_bench_stretch_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bench_stretch")),
    )
    op.create_index(op.f("ix_bench_stretch_parent"), "bench_stretch", ["parent"], unique=False)
    op.create_table(
        "coating_recoat",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("opens_state", sa.Text(), nullable=True),
        sa.Column("opens_minutes", sa.Integer(), nullable=True),
        sa.Column("opens_clock", sa.Text(), nullable=True),
        sa.Column("closes_state", sa.Text(), nullable=True),
        sa.Column("closes_minutes", sa.Integer(), nullable=True),
        sa.Column("closes_clock", sa.Text(), nullable=True),
        sa.Column("preparation", sa.Text(), nullable=False),
        sa.Column("preparation_minutes", sa.Integer(), nullable=False),
        sa.Column("merges", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["coating.id"], name=op.f("fk_coating_recoat_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coating_recoat")),
    )
    op.create_index(op.f("ix_coating_recoat_parent"), "coating_recoat", ["parent"], unique=False)
    op.create_table(
        "coating_time",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("minutes", sa.Integer(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["coating.id"], name=op.f("fk_coating_time_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coating_time")),
    )
    op.create_index(op.f("ix_coating_time_parent"), "coating_time", ["parent"], unique=False)
    op.create_table(
        "location",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("drying_places", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["room.id"], name=op.f("fk_location_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_location")),
    )
    op.create_index(op.f("ix_location_parent"), "location", ["parent"], unique=False)
    op.create_table(
        "mix_portion",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("coating", sa.Text(), nullable=False),
        sa.Column("parts", sa.Float(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["mix.id"], name=op.f("fk_mix_portion_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_mix_portion")),
    )
    op.create_index(op.f("ix_mix_portion_parent"), "mix_portion", ["parent"], unique=False)
    op.create_table(
        "model",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("scale", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["project.id"], name=op.f("fk_model_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_model")),
    )
    op.create_index(op.f("ix_model_parent"), "model", ["parent"], unique=False)
    op.create_table(
        "project_log",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("model", sa.Text(), nullable=False),
        sa.Column("step", sa.Text(), nullable=False),
        sa.Column("coat", sa.Integer(), nullable=False),
        sa.Column("start", sa.Text(), nullable=False),
        sa.Column("end", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["parent"], ["project.id"], name=op.f("fk_project_log_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_project_log")),
    )
    op.create_index(op.f("ix_project_log_parent"), "project_log", ["parent"], unique=False)
    op.create_table(
        "project_pin",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("model", sa.Text(), nullable=False),
        sa.Column("step", sa.Text(), nullable=False),
        sa.Column("coat", sa.Integer(), nullable=True),
        sa.Column("on", sa.Text(), nullable=True),
        sa.Column("start", sa.Text(), nullable=True),
        sa.Column("end", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["parent"], ["project.id"], name=op.f("fk_project_pin_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_project_pin")),
    )
    op.create_index(op.f("ix_project_pin_parent"), "project_pin", ["parent"], unique=False)
    op.create_table(
        "reading",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("temperature_c", sa.Float(), nullable=False),
        sa.Column("humidity_pct", sa.Float(), nullable=False),
        sa.Column("location", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["room.id"], name=op.f("fk_reading_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_reading")),
    )
    op.create_index(op.f("ix_reading_parent"), "reading", ["parent"], unique=False)
    op.create_table(
        "location_weekend",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("temperature_c", sa.Float(), nullable=False),
        sa.Column("humidity_pct", sa.Float(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["location.id"], name=op.f("fk_location_weekend_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_location_weekend")),
    )
    op.create_index(
        op.f("ix_location_weekend_parent"), "location_weekend", ["parent"], unique=False
    )
    op.create_table(
        "location_workday",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("temperature_c", sa.Float(), nullable=False),
        sa.Column("humidity_pct", sa.Float(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["location.id"], name=op.f("fk_location_workday_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_location_workday")),
    )
    op.create_index(
        op.f("ix_location_workday_parent"), "location_workday", ["parent"], unique=False
    )
    op.create_table(
        "part",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("holder", sa.Text(), nullable=False),
        sa.Column("stands", sa.Integer(), nullable=False),
        sa.Column("material", sa.Text(), nullable=False),
        sa.Column("stressed", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["model.id"], name=op.f("fk_part_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_part")),
    )
    op.create_index(op.f("ix_part_parent"), "part", ["parent"], unique=False)
    op.create_table(
        "step",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("step_id", sa.Text(), nullable=False),
        sa.Column("stage", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=False),
        sa.Column("tool", sa.Text(), nullable=False),
        sa.Column("minutes_fixed", sa.Integer(), nullable=False),
        sa.Column("minutes_per_part", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.Column("split_least", sa.Integer(), nullable=True),
        sa.Column("helper", sa.Boolean(), nullable=False),
        sa.Column("dries_in", sa.Text(), nullable=False),
        sa.Column("scraped", sa.Boolean(), nullable=False),
        sa.Column("stands", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["parent"], ["model.id"], name=op.f("fk_step_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_step")),
    )
    op.create_index(op.f("ix_step_parent"), "step", ["parent"], unique=False)
    op.create_table(
        "application",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("coating", sa.Text(), nullable=False),
        sa.Column("coats", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["step.id"], name=op.f("fk_application_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_application")),
    )
    op.create_index(op.f("ix_application_parent"), "application", ["parent"], unique=False)
    op.create_table(
        "gate",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("after", sa.Text(), nullable=False),
        sa.Column("closing", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["step.id"], name=op.f("fk_gate_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_gate")),
    )
    op.create_index(op.f("ix_gate_parent"), "gate", ["parent"], unique=False)
    op.create_table(
        "place",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("side", sa.Text(), nullable=False),
        sa.Column("area_cm2", sa.Float(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["part.id"], name=op.f("fk_place_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_place")),
    )
    op.create_index(op.f("ix_place_parent"), "place", ["parent"], unique=False)
    op.create_table(
        "step_after",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["step.id"], name=op.f("fk_step_after_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_step_after")),
    )
    op.create_index(op.f("ix_step_after_parent"), "step_after", ["parent"], unique=False)
    op.create_table(
        "step_touches",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["step.id"], name=op.f("fk_step_touches_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_step_touches")),
    )
    op.create_index(op.f("ix_step_touches_parent"), "step_touches", ["parent"], unique=False)
    op.create_table(
        "application_place",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"],
            ["application.id"],
            name=op.f("fk_application_place_parent"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_application_place")),
    )
    op.create_index(
        op.f("ix_application_place_parent"), "application_place", ["parent"], unique=False
    )
    op.create_table(
        "gate_window",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("opens_state", sa.Text(), nullable=True),
        sa.Column("opens_minutes", sa.Integer(), nullable=True),
        sa.Column("opens_clock", sa.Text(), nullable=True),
        sa.Column("closes_state", sa.Text(), nullable=True),
        sa.Column("closes_minutes", sa.Integer(), nullable=True),
        sa.Column("closes_clock", sa.Text(), nullable=True),
        sa.Column("preparation", sa.Text(), nullable=False),
        sa.Column("preparation_minutes", sa.Integer(), nullable=False),
        sa.Column("merges", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"], ["gate.id"], name=op.f("fk_gate_window_parent"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_gate_window")),
    )
    op.create_index(op.f("ix_gate_window_parent"), "gate_window", ["parent"], unique=False)
    op.execute(sa.text("INSERT INTO meta (name, value) VALUES ('last_id', '0')"))
