"""How the air of a location moves, and how much retarder is in a coating."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"


def upgrade() -> None:
    """Take all air as that of a room, and every coating as having no retarder in it."""
    movement = sa.Column("movement", sa.Text(), nullable=False, server_default="room")
    op.add_column("location", movement)
    retarder = sa.Column("retarder", sa.Float(), nullable=False, server_default="0")
    op.add_column("coating", retarder)
