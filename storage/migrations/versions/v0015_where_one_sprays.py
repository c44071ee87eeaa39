"""The place of the room where coats are sprayed."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0015"
down_revision = "0014"


def upgrade() -> None:
    """Add a column; in an old book coats are sprayed at the bench."""
    op.add_column(
        "location",
        sa.Column("spraying", sa.Boolean(), nullable=False, server_default=sa.text("0")),
    )
