"""What was changed by name in the order of each model."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0016"
down_revision = "0015"


def upgrade() -> None:
    """Add a table; nothing was changed by name in an old book."""
    op.create_table(
        "made_change",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"],
            ["model_made.id"],
            name=op.f("fk_made_change_parent"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_made_change")),
    )
    op.create_index(op.f("ix_made_change_parent"), "made_change", ["parent"])
