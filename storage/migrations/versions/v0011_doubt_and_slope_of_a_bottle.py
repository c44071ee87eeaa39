"""Each bottle's own doubt and slope of its drying times."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"


def upgrade() -> None:
    """Add columns; a bottle of an old book has those of its label or family."""
    op.add_column("coating", sa.Column("doubt", sa.Float(), nullable=True))
    steeper = sa.Column("steeper_kj_mol", sa.Float(), nullable=False, server_default="0")
    op.add_column("coating", steeper)
