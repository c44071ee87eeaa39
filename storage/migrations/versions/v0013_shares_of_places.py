"""Which share of the full-sized thing each place is."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"


def upgrade() -> None:
    """Add a column; a place of an old book has no share of its own."""
    op.add_column("place", sa.Column("share", sa.Float(), nullable=False, server_default="0"))
