"""Remembering what follows from a value for as long as the value itself lives on.

An edit replaces what it touches and keeps every other object in place, so
identity tells at once that nothing changed; comparing whole models would
cost as much as the work saved.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, eq=False)
class Same(Generic[T]):
    """A value that equals only itself; a key for `functools.lru_cache`.

    It keeps the value alive, so that an identity is never given out twice.
    """

    value: T

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Same) and self.value is other.value

    def __hash__(self) -> int:
        return id(self.value)
