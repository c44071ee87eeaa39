"""Plans as they were shown, evenings that were promised, and what a plan may move."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"


def upgrade() -> None:
    """Add two tables that are empty at first; a plan of an old book keeps close, too."""
    op.add_column(
        "preferences",
        sa.Column("staying", sa.Text(), nullable=False, server_default="keep close"),
    )
    op.create_table(
        "shown_plan",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("digest", sa.Text(), nullable=False),
        sa.Column("plan", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_shown_plan")),
    )
    op.create_table(
        "promise",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("told_by", sa.Text(), nullable=False),
        sa.Column("start", sa.Integer(), nullable=False),
        sa.Column("end", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_promise")),
    )
