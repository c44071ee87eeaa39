"""What an edit does, apart from its words; and the words as a template with what was put in."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"


def upgrade() -> None:
    """Add two columns; older lines say their whole text in ``name`` and have no arguments."""
    op.add_column("journal", sa.Column("verb", sa.Text(), nullable=False, server_default=""))
    op.add_column("journal", sa.Column("arguments", sa.Text(), nullable=True))
