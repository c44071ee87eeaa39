"""Dates that were said of projects, to be held against what comes.

Like the plans that were shown they are no part of the book: keeping one
makes no revision and no line of the journal.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

from sqlalchemy import Connection, Engine, delete, insert, select

from planner.values.forecast import Forecast
from storage.database import transaction
from storage.errors import read_as_sound
from storage.tables import FORECAST

MOST = 200  # forecasts that are kept
APART_MINUTES = 1440  # of one project, one a day is kept


class Forecasts:
    """What one bench book keeps of dates; `BookTrouble` where it cannot be written."""

    def __init__(
        self, engine: Engine, path: Path, demand_ours: Callable[[Connection], None]
    ) -> None:
        self._engine = engine
        self._path = path
        self._demand_ours = demand_ours  # nothing is written into another book

    def keep(self, forecasts: Iterable[Forecast]) -> None:
        """Keep forecasts, but for projects of which one was kept within the day before."""
        known = self.all()
        fresh = [
            one
            for one in forecasts
            if not any(
                old.project == one.project and abs(one.made - old.made) < APART_MINUTES
                for old in known
            )
        ]
        if not fresh:
            return
        table = FORECAST
        with transaction(self._engine, self._path, writes=True) as connection:
            self._demand_ours(connection)
            connection.execute(
                insert(table),
                [
                    {
                        "project": one.project,
                        "made": one.made,
                        "half": one.half,
                        "most": one.most,
                        "nearly": one.nearly,
                        "scale": one.scale,
                    }
                    for one in fresh
                ],
            )
            newest = select(table.c.id).order_by(table.c.id.desc()).limit(MOST)
            connection.execute(delete(table).where(table.c.id.not_in(newest)))

    def all(self) -> tuple[Forecast, ...]:
        """Return what is kept, the oldest first."""
        table = FORECAST
        columns = (table.c.project, table.c.made, table.c.half, table.c.most, table.c.nearly)
        wanted = select(*columns, table.c.scale).order_by(table.c.id)
        with (
            read_as_sound(self._path),
            transaction(self._engine, self._path) as connection,
        ):
            return tuple(Forecast(*row) for row in connection.execute(wanted))
