"""What kind of thing each model shows."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"


def upgrade() -> None:
    """Add a column; a model of an old book is of no kind that it names."""
    op.add_column("model", sa.Column("kind", sa.Text(), nullable=False, server_default="other"))
