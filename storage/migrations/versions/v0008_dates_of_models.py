"""A date and a priority for each model."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"


def upgrade() -> None:
    """Add columns; a model of an old book has the date and the weight of its project alone."""
    op.add_column("model", sa.Column("target", sa.Text(), nullable=True))
    op.add_column("model", sa.Column("weight", sa.Integer(), nullable=False, server_default="1"))
    op.add_column("model", sa.Column("early", sa.Boolean(), nullable=False, server_default="0"))
