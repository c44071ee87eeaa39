"""Drying cards: scraps coated with a bottle, and what touching them told."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0014"
down_revision = "0013"


def upgrade() -> None:
    """Add two tables; an old book has no cards."""
    op.create_table(
        "drying_card",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("coating", sa.Text(), nullable=False),
        sa.Column("laid", sa.Text(), nullable=False),
        sa.Column("location", sa.Text(), nullable=False),
        sa.Column("dry_film_um", sa.Float(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_drying_card")),
    )
    op.create_table(
        "card_tried",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("parent", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("trial", sa.Text(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("held", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["parent"],
            ["drying_card.id"],
            name=op.f("fk_card_tried_parent"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_card_tried")),
    )
    op.create_index(op.f("ix_card_tried_parent"), "card_tried", ["parent"])
