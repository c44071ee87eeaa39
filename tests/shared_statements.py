"""Lets every bench book of a test run share what SQLAlchemy compiles.

An engine compiles each statement once, a few hundred for a bench book, and
throws all away when it goes.  A person opens one book; the tests open
thousands, and spent most of their time there.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy
from sqlalchemy import Engine

from storage import database

_COMPILED: dict[Any, Any] = {}
_FIRST: list[Engine] = []


def share() -> None:
    """Give every engine that storage makes from now on the same dialect and statements.

    The dialect is part of the key under which a statement is kept.
    """
    database.create_engine = _sharing  # type: ignore[assignment]


def _sharing(*given: Any, **named: Any) -> Engine:
    engine = sqlalchemy.create_engine(*given, **named)
    engine.update_execution_options(compiled_cache=_COMPILED)
    if not _FIRST:
        _FIRST.append(engine)
    engine.dialect = _FIRST[0].dialect
    return engine
