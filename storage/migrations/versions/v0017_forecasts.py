"""Dates that were said of projects, to be held against what came."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0017"
down_revision = "0016"


def upgrade() -> None:
    """Add a table that is empty at first: nothing was said of an old book's projects."""
    op.create_table(
        "forecast",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("project", sa.Text(), nullable=False),
        sa.Column("made", sa.Integer(), nullable=False),
        sa.Column("half", sa.Integer(), nullable=False),
        sa.Column("most", sa.Integer(), nullable=False),
        sa.Column("nearly", sa.Integer(), nullable=False),
        sa.Column("scale", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_forecast")),
    )
