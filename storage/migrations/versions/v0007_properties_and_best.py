"""What coatings, places and cups are beside what was known, and the best moment of a window."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"

WINDOWS = ("coating_recoat", "gate_window", "sequence_gate_window")


def upgrade() -> None:
    """Add columns that mean what a book meant before: plain, indoors, no best moment."""
    effect = sa.Column("effect", sa.Text(), nullable=False, server_default="plain")
    op.add_column("coating", effect)
    op.add_column("coating", sa.Column("hiding", sa.Text(), nullable=True))
    op.add_column(
        "location",
        sa.Column("outdoors", sa.Boolean(), nullable=False, server_default=sa.text("0")),
    )
    op.add_column("airbrush", sa.Column("most_fill_ml", sa.Float(), nullable=True))
    for table in WINDOWS:
        op.add_column(table, sa.Column("best_state", sa.Text(), nullable=True))
        op.add_column(table, sa.Column("best_minutes", sa.Integer(), nullable=True))
        op.add_column(table, sa.Column("best_clock", sa.Text(), nullable=True))
