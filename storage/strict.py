"""Reading JSON strictly: every fault is refused by the path to its place.

Bytes become values in three steps: `read_json` (text, no duplicate keys),
a walk along the types of the wanted value (`build`), which refuses in words
of our own what has the wrong shape, and another that constructs the value;
the value's own demands come back with their path.
"""

from __future__ import annotations

import json
import math
import re
from collections.abc import Hashable
from dataclasses import dataclass
from datetime import date, datetime
from enum import Enum
from functools import cache
from typing import Any, Final, TypeVar, cast

import msgspec
from msgspec import inspect as types

from planner.values.field import fields_of
from planner.values.message import message, row
from planner.values.refusal import Refused, demand, unknown

MOST_BYTES: Final = 20_000_000
MOST_ENTRIES: Final = 5_000  # of one list
MOST_CHARACTERS: Final = 20_000  # of one text
MOST_NUMBER: Final = 1e12
MOST_MEND: Final = 400  # characters of a message

_Value = TypeVar("_Value")

_BROKEN: Final = re.compile("[\ud800-\udfff\0]")
_DATE: Final = message("a date such as 2031-05-31")
_TIME: Final = message("a time with its zone, such as 2031-05-31T19:30:00+02:00")


@dataclass(frozen=True)
class _Twice:
    """Stands where an object gave one key twice."""

    key: str


def read_json(data: bytes) -> object:
    """Return the JSON value in ``data``, with faults inside it left for `build`.

    Raises
    ------
    Refused
        If ``data`` is too long, not UTF-8, not JSON or nested too deeply.
    """
    demand(
        len(data) <= MOST_BYTES,
        "",
        message(
            "is larger than {most} MB; split it into several projects",
            most=MOST_BYTES // 1000000,
        ),
    )
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as problem:
        raise Refused(
            "", message("is not UTF-8 text (byte {start}); save it as UTF-8", start=problem.start)
        ) from None
    demand(bool(text.strip()), "", "is empty; it must hold a JSON object")
    try:
        return json.loads(text, object_pairs_hook=_object, parse_int=_integer)
    except json.JSONDecodeError as problem:
        where = f"line {problem.lineno}, column {problem.colno}"
        raise Refused(where, message("is not JSON ({msg})", msg=problem.msg)) from None
    except RecursionError:
        raise Refused("", "is nested too deeply; it must be flatter") from None


def build(raw: object, wanted: type[_Value], place: str = "") -> _Value:
    """Return ``raw`` as a value of the dataclass ``wanted``.

    Raises
    ------
    Refused
        With the path, from ``place`` on, of the first fault found.
    """
    kind = _kind(cast(Hashable, wanted))
    _check(raw, kind, place)
    return cast(_Value, _made(raw, kind, place))


def shown(text: str, most: int = 60) -> str:
    """Return foreign text cut and cleaned, fit for a message of one line."""
    cut = text if len(text) <= most else text[: most - 3] + "..."
    return "".join(sign if sign.isprintable() else "\N{REPLACEMENT CHARACTER}" for sign in cut)


def beneath(place: str, key: str) -> str:
    """Return the path of the field ``key`` of the object at ``place``."""
    return f"{place}.{key}" if place else key


@cache
def _kind(wanted: Hashable) -> types.Type:
    return types.type_info(wanted)


def _object(pairs: list[tuple[str, object]]) -> object:
    whole = dict(pairs)
    if len(whole) == len(pairs):
        return whole
    seen: set[str] = set()
    for key, _ in pairs:
        if key in seen:
            return _Twice(key)
        seen.add(key)
    raise AssertionError(pairs)


def _integer(digits: str) -> int | float:
    """Read a whole number; one too long to be meant becomes infinite, and `_check` refuses it."""
    return int(digits) if len(digits) < 20 else math.inf


def _check(raw: object, kind: types.Type, place: str, unit: str = "") -> None:
    """Refuse what msgspec would let pass, or refuse in words that are not ours."""
    if isinstance(kind, types.UnionType):
        if raw is None:
            return
        kind = next(one for one in kind.types if not isinstance(one, types.NoneType))
    if isinstance(raw, _Twice):
        raise Refused(beneath(place, shown(raw.key)), "is given twice; remove one")
    if isinstance(raw, int | float) and not isinstance(raw, bool):
        demand(
            math.isfinite(raw) and abs(raw) <= MOST_NUMBER,
            place,
            "is not a finite number of sensible size",
        )
    if not _fits(raw, kind):
        raise Refused(
            place,
            message(
                "is {found}, but must be {wanted}", found=_found(raw), wanted=_wanted(kind, unit)
            ),
        )
    if isinstance(raw, str):
        _check_text(raw, kind, place)
    elif isinstance(kind, types.DataclassType) and isinstance(raw, dict):
        _check_object(raw, kind, place)
    elif isinstance(kind, types.VarTupleType) and isinstance(raw, list):
        demand(
            len(raw) <= MOST_ENTRIES,
            place,
            message("has more than {most} entries", most=MOST_ENTRIES),
        )
        for index, entry in enumerate(raw):
            _check(entry, kind.item_type, f"{place}[{index}]")


def _check_object(raw: dict[str, object], kind: types.DataclassType, place: str) -> None:
    fields = {field.encode_name: field for field in kind.fields}
    described = fields_of(kind.cls)
    for key, value in raw.items():
        if key not in fields:
            raise Refused(place, unknown("field", shown(key), fields))
        _check(value, fields[key].type, beneath(place, key), described[key].field.unit)
    for name, field in fields.items():
        if field.required and name not in raw:
            wanted = _wanted(field.type, described[name].field.unit)
            missing = message("is missing; it must be {wanted}", wanted=wanted)
            raise Refused(beneath(place, name), missing)


def _check_text(raw: str, kind: types.Type, place: str) -> None:
    demand(
        len(raw) <= MOST_CHARACTERS,
        place,
        message("is longer than {most} characters", most=MOST_CHARACTERS),
    )
    demand(not _BROKEN.search(raw), place, "holds half a character or a zero byte; remove it")
    if isinstance(kind, types.EnumType):
        if raw not in kind.cls._value2member_map_:
            raise Refused(place, _no_such_word(kind.cls, raw))
    elif isinstance(kind, types.DateType):
        _demand_converts(raw, date, place, _DATE)
    elif isinstance(kind, types.DateTimeType):
        _demand_converts(raw, datetime, place, _TIME)


def _demand_converts(raw: str, wanted: type, place: str, words: str) -> None:
    try:
        msgspec.convert(raw, wanted)
    except msgspec.ValidationError:
        raise Refused(
            place, message('"{raw}" is not {words}', raw=shown(raw), words=words)
        ) from None


def _no_such_word(words_of: type[Enum], raw: str) -> str:
    words = [str(member.value) for member in words_of]
    kind = re.sub("(?<=[a-z])(?=[A-Z])", " ", words_of.__name__).lower()
    sentence = unknown(kind, shown(raw), words)
    if "did you mean" in sentence:
        return sentence
    return message("{sentence}; use one of: {words}", sentence=sentence, words=row(words))


def _fits(raw: object, kind: types.Type) -> bool:
    """Tell whether the JSON type is right."""
    accepted: tuple[type, ...] = (str,)
    if isinstance(kind, types.BoolType):
        accepted = (bool,)
    elif isinstance(kind, types.IntType):
        accepted = (int,)
    elif isinstance(kind, types.FloatType):
        accepted = (int, float)
    elif isinstance(kind, types.DataclassType):
        accepted = (dict,)
    elif isinstance(kind, types.VarTupleType):
        accepted = (list,)
    if isinstance(raw, bool):
        return bool in accepted
    return isinstance(raw, accepted)


def _found(raw: object) -> str:
    if raw is None:
        return "null"
    if isinstance(raw, bool):
        return str(raw).lower()
    if isinstance(raw, str):
        return message("text")
    if isinstance(raw, int | float):
        return message("the number {number}", number=str(raw))
    return message("a list") if isinstance(raw, list) else message("an object")


def _wanted(kind: types.Type, unit: str = "") -> str:
    """Say what belongs there, with its unit."""
    if isinstance(kind, types.UnionType):
        kind = next(one for one in kind.types if not isinstance(one, types.NoneType))
    whole, any_ = message("a whole number"), message("a number")
    if unit:
        unit = "minutes" if unit == "min" else unit
        whole, any_ = (
            message("a whole number of {unit}", unit=unit),
            message("a number of {unit}", unit=unit),
        )
    named: dict[type[Any], str] = {
        types.IntType: whole,
        types.FloatType: any_,
        types.BoolType: message("true or false"),
        types.DateType: _DATE,
        types.DateTimeType: _TIME,
        types.DataclassType: message("an object {...}"),
        types.VarTupleType: message("a list [...]"),
    }
    return named.get(type(kind), message("text"))


def _made(raw: Any, kind: types.Type, place: str) -> Any:
    """Return a value of what `_check` has found to be sound.

    msgspec would construct it as well, but tells where only in its own words.
    """
    if isinstance(kind, types.UnionType):
        if raw is None:
            return None
        kind = next(one for one in kind.types if not isinstance(one, types.NoneType))
    if isinstance(kind, types.DataclassType):
        fields = {field.encode_name: field for field in kind.fields}
        given = {
            fields[key].name: _made(value, fields[key].type, beneath(place, key))
            for key, value in raw.items()
        }
        try:
            return kind.cls(**given)
        except Refused as problem:  # the value's own demand
            mend = shown(problem.mend, MOST_MEND)  # it may quote what the file holds
            told = problem if mend == problem.mend else Refused(problem.place, mend)
            raise (told.under(place) if place else told) from None
    if isinstance(kind, types.VarTupleType):
        entries = enumerate(raw)
        return tuple(_made(entry, kind.item_type, f"{place}[{at}]") for at, entry in entries)
    if isinstance(kind, types.EnumType):
        return kind.cls(raw)
    if isinstance(kind, types.FloatType):
        return float(raw)
    if isinstance(kind, types.DateType | types.DateTimeType):
        return msgspec.convert(raw, date if isinstance(kind, types.DateType) else datetime)
    return raw
