"""With which airbrush a pass was sprayed, and when an airbrush was cleaned."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Add a column that is empty where nobody said, and a table that is empty at first."""
    airbrush = sa.Column("airbrush", sa.Text(), nullable=False, server_default="")
    op.add_column("project_log", airbrush)
    op.create_table(
        "cleaned",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("airbrush", sa.Text(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_cleaned")),
    )
