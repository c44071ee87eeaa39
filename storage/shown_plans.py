"""Plans as they were shown, by the digest of the book that they answer; evenings promised.

They are no part of the book: a plan can be computed anew, and is judged anew
whenever it is read.  Keeping one makes no revision and no line of the journal.
"""

from __future__ import annotations

import zlib
from collections.abc import Callable, Iterable
from pathlib import Path

import msgspec
from sqlalchemy import Connection, Engine, delete, insert, select

from planner.values.moment import Interval
from planner.values.plan import Plan
from storage.database import transaction
from storage.errors import read_as_sound
from storage.tables import PROMISE, SHOWN_PLAN

MOST = 50  # plans that are kept


class ShownPlans:
    """What one bench book keeps of what it told; `BookTrouble` where it cannot be written."""

    def __init__(
        self, engine: Engine, path: Path, demand_ours: Callable[[Connection], None]
    ) -> None:
        self._engine = engine
        self._path = path
        self._demand_ours = demand_ours  # nothing is written into another book

    def keep(self, plan: Plan) -> None:
        """Keep a plan as the newest, in place of any other of the same digest."""
        table = SHOWN_PLAN
        packed = zlib.compress(msgspec.json.encode(plan, enc_hook=_plain))
        newest = select(table.c.id).order_by(table.c.id.desc()).limit(MOST)
        with transaction(self._engine, self._path, writes=True) as connection:
            self._demand_ours(connection)
            connection.execute(delete(table).where(table.c.digest == plan.digest))
            connection.execute(insert(table).values(digest=plan.digest, plan=packed))
            connection.execute(delete(table).where(table.c.id.not_in(newest)))

    def all(self) -> tuple[Plan, ...]:
        """Return the plans that are kept, the newest last; what cannot be read is left out."""
        wanted = select(SHOWN_PLAN.c.plan).order_by(SHOWN_PLAN.c.id)
        with (
            read_as_sound(self._path),
            transaction(self._engine, self._path) as connection,
        ):
            found = [packed for (packed,) in connection.execute(wanted)]
        plans = []
        for packed in found:
            try:
                plans.append(msgspec.json.decode(zlib.decompress(packed), type=Plan))
            except (zlib.error, msgspec.MsgspecError, ValueError):
                continue  # of another version of the program: it is computed anew
        return tuple(plans)

    def promise(self, told_by: str, times: Iterable[Interval], now: int) -> None:
        """Note evenings that a "sheet" or a "calendar" tells somebody of.

        A calendar tells of all evenings ahead; so what an earlier one
        promised counts no more.
        """
        table = PROMISE
        rows = [{"told_by": told_by, "start": one.start, "end": one.end} for one in times]
        gone = table.c.end <= now
        if told_by == "calendar":
            gone |= table.c.told_by == told_by
        with transaction(self._engine, self._path, writes=True) as connection:
            self._demand_ours(connection)
            connection.execute(delete(table).where(gone))
            for row in rows:
                same = [table.c[name] == value for name, value in row.items()]
                connection.execute(delete(table).where(*same))
            if rows:
                connection.execute(insert(table), rows)

    def promised(self) -> tuple[Interval, ...]:
        """Return the evenings that somebody was told of, in order."""
        wanted = select(PROMISE.c.start, PROMISE.c.end)
        with (
            read_as_sound(self._path),
            transaction(self._engine, self._path) as connection,
        ):
            return tuple(sorted({Interval(*row) for row in connection.execute(wanted)}))


def _plain(text: object) -> str:
    """Return a sentence of the planner as plain text; other things are in no plan."""
    if isinstance(text, str):
        return str.__str__(text)
    raise NotImplementedError(type(text))
