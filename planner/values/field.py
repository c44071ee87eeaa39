"""What is to be known of each field of a value, said once.

Checks, the strict reader, the exchange schema, forms and the comparison of
two books all go by it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import KW_ONLY, dataclass, fields, is_dataclass, replace
from datetime import date, datetime
from functools import cache
from types import UnionType
from typing import Annotated, Any, Union, cast, get_args, get_origin, get_type_hints

from planner.values.message import message
from planner.values.moment import aware, in_years
from planner.values.refusal import Refused, all_different, number_in, plain_name

Check = Callable[[Any, str], object]
"""Refuses a value that cannot be; told the value and the name of its field."""


@dataclass(frozen=True)
class Field:
    """Metadata of a field, as ``Annotated[float, Field(unit="ml", least=0, most=100)]``.

    Attributes
    ----------
    title
        What a form calls it, "&" before its key; "" for what no form shows as it is.
    least, most
        Range of a number [unit]; of a text, ``most`` characters.
    decimals
        Digits after the point that a form shows.
    percent
        A fraction that people write in hundredths.
    help
        A sentence more about it.
    check
        A further demand, made before that of the range.
    unique
        Of a list: the field by which its entries differ, "" for themselves.
    """

    title: str = ""
    _: KW_ONLY
    unit: str = ""
    least: float = -math.inf
    most: float = math.inf
    decimals: int = 0
    percent: bool = False
    help: str = ""
    check: Check | None = None
    unique: str | None = None


NAME = Field("&Name", check=plain_name)


@dataclass(frozen=True)
class Described:
    """A field of a value: its type, whether that may be None, and its metadata."""

    kind: Any
    optional: bool
    field: Field

    def checks(self) -> tuple[Check, ...]:
        """Return what a value of it must pass."""
        field, found = self.field, []
        if field.check is not None:
            found.append(field.check)
        if self.kind in (int, float) and (field.least, field.most) != (-math.inf, math.inf):
            found.append(_in_range(field))
        elif self.kind is str and field.most < math.inf:
            found.append(_no_longer(int(field.most)))
        elif self.kind is datetime:
            found.append(aware)
        elif self.kind is date:
            found.append(in_years)
        elif field.unique is not None:
            found.append(_unique(field.unique))
        return tuple(found)


class Value:
    """A frozen value that refuses what its fields, as they are described, do not take."""

    def __post_init__(self) -> None:
        for name, check in _checks(cast(Any, type(self))):
            given = getattr(self, name)
            if given is not None:
                check(given, name)


def fields_of(kind: type) -> Mapping[str, Described]:
    """Return the fields of a dataclass in their order, as they are described."""
    return _fields(kind)


@cache
def _fields(kind: type) -> Mapping[str, Described]:
    hints = get_type_hints(kind, include_extras=True)
    return {field.name: _described(hints[field.name]) for field in fields(kind)}


def values_within(kind: type) -> tuple[type, ...]:
    """Return a dataclass and all those that its fields hold, each once."""
    found = {kind: None}
    waiting = [kind]
    while waiting:
        for described in fields_of(waiting.pop()).values():
            for inner in (described.kind, *get_args(described.kind)):
                if is_dataclass(inner) and isinstance(inner, type) and inner not in found:
                    found[inner] = None
                    waiting.append(inner)
    return tuple(found)


def _described(hint: Any) -> Described:
    """Return what a type says; None may stand within its metadata or beside it."""
    if get_origin(hint) is Annotated:
        inner, *metadata = get_args(hint)
        told = next((each for each in metadata if isinstance(each, Field)), Field())
        return replace(_described(inner), field=told)
    if get_origin(hint) in (Union, UnionType):
        (hint,) = (each for each in get_args(hint) if each is not type(None))
        return replace(_described(hint), optional=True)
    return Described(hint, False, Field())


@cache
def _checks(kind: type) -> tuple[tuple[str, Check], ...]:
    every = fields_of(kind).items()
    return tuple((name, check) for name, described in every for check in described.checks())


def _in_range(field: Field) -> Check:
    def check(value: float, place: str) -> None:
        number_in(value, field.least, field.most, place, field.unit)

    return check


def _no_longer(most: int) -> Check:
    def check(value: str, place: str) -> None:
        if len(value) > most:
            raise Refused(place, message("is longer than {most} characters; shorten it", most=most))

    return check


def _unique(by: str) -> Check:
    def check(value: Sequence[Any], place: str) -> None:
        all_different([getattr(entry, by) if by else entry for entry in value], place, by)

    return check
