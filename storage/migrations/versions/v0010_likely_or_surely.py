"""What is planned as soon as a film is likely ready, and not only once it surely is."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"

USUAL = ("another coat", "a wash", "decals", "a clear coat")


def upgrade() -> None:
    """Add a table with what is usual; no old book says otherwise."""
    op.create_table(
        "preference_likely",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"],
            ["preferences.id"],
            name=op.f("fk_preference_likely_parent"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_preference_likely")),
    )
    op.create_index(op.f("ix_preference_likely_parent"), "preference_likely", ["parent"])
    for position, value in enumerate(USUAL):
        op.execute(
            sa.text(
                "INSERT INTO preference_likely (parent, position, value) "
                "SELECT id, :position, :value FROM preferences"
            ).bindparams(position=position, value=value)
        )
