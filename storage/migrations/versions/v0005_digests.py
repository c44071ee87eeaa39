"""Digests in the journal: of each line, and of all that the book held after it."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"


def upgrade() -> None:
    """Add the columns; lines from before say nothing of what the book held."""
    for name in ("content", "digest"):
        op.add_column("journal", sa.Column(name, sa.Text(), nullable=False, server_default=""))
