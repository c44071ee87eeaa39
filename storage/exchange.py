"""The exchange file: one strict, versioned JSON document for a book or a project.

``{"tackfree": 1, "note": "...", ...fields of planner.values.book.Book}``.
Fields that hold their default are left out.  Whatever is refused is refused
by the path to its place; whatever is read is written back without loss.
"""

from __future__ import annotations

import hashlib
import inspect
import json
import math
import sys
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

import msgspec

from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.field import Described, fields_of, values_within
from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused, demand
from storage.plan_file import dump_plan, load_plan
from storage.strict import build, read_json
from storage.to_json import chosen, plain, pretty

__all__ = ["VERSION", "Exchange", "digest", "dump", "dump_plan", "load", "load_plan", "schema"]

VERSION: Final = 1


@dataclass(frozen=True)
class Exchange:
    """What an exchange file holds: a book, and a note to whoever opens it."""

    book: Book
    note: str = ""


@dataclass(frozen=True, kw_only=True)
class _Header:
    tackfree: int
    note: str = ""


def load(data: bytes) -> Exchange:
    """Read an exchange file.

    Raises
    ------
    Refused
        For any bytes that are not a sound exchange file, with the path to
        the first fault and its mend.
    """
    raw = read_json(data)
    if not isinstance(raw, dict):
        raise Refused("", 'must be an object {"tackfree": 1, ...}; this is no exchange file')
    header, body = _split(raw)
    book = build(body, Book)
    check_acyclic(book)
    return Exchange(book, header.note)


def dump(exchange: Exchange) -> bytes:
    """Write an exchange file: UTF-8, stable order, defaults left out."""
    document = {"tackfree": VERSION, "note": exchange.note, **plain(exchange.book)}
    return (pretty(document) + "\n").encode()


def digest(book: Book) -> str:
    """Return a short stable name of everything in ``book``."""
    return hashlib.sha256(_named(book).encode()).hexdigest()[:32]


def _named(value: object) -> str:
    """Return a value as JSON text in which every name has its one place.

    An edit leaves most models as they were: their text is kept.
    """
    if isinstance(value, Book | Project):
        rows = [f"{json.dumps(name)}:{_named(own)}" for name, own in sorted(chosen(value).items())]
        return f"{{{','.join(rows)}}}"
    if isinstance(value, tuple):
        return f"[{','.join(map(_named, value))}]"
    return _kept(Same(value)) if isinstance(value, Coating | Model) else _text(value)


def _text(value: object) -> str:
    return json.dumps(plain(value), sort_keys=True, separators=(",", ":"))


@lru_cache(maxsize=1024)
def _kept(value: Same[Coating | Model]) -> str:
    return _text(value.value)


def schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of the exchange file."""
    (whole,), parts = msgspec.json.schema_components([Book], ref_template="#/$defs/{name}")
    told = {kind.__name__: kind for kind in values_within(Book)}
    parts = {
        name: _closed(_described(_told_evenly(part), told.get(name)))
        for name, part in parts.items()
    }
    book = parts.pop(whole["$ref"].rpartition("/")[2])
    header = {
        "tackfree": {"const": VERSION, "description": "Version of this format."},
        "note": {"type": "string", "description": "To whoever opens the file."},
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Tackfree exchange file",
        "description": book["description"],
        "type": "object",
        "properties": {**header, **book["properties"]},
        "required": ["tackfree", *book["required"]],
        "additionalProperties": False,
        "$defs": parts,
    }


def schema_text() -> str:
    """Return the schema as it stands in ``exchange.schema.json``."""
    return json.dumps(schema(), indent=2, ensure_ascii=False) + "\n"


def _told_evenly(part: dict[str, Any]) -> dict[str, Any]:
    """Take the indentation from a docstring: Python 3.13 and some releases of msgspec keep none."""
    if "description" not in part:
        return part
    return {**part, "description": inspect.cleandoc(part["description"])}


def _described(part: dict[str, Any], kind: type | None) -> dict[str, Any]:
    """Return a part with what its fields are called, and the ranges that they take."""
    if kind is None:
        return part
    every = fields_of(kind)
    properties = {
        name: property_ | _keywords(every[name]) for name, property_ in part["properties"].items()
    }
    return {**part, "properties": properties}


def _keywords(described: Described) -> dict[str, Any]:
    field = described.field
    text = described.kind is str
    title = field.title.replace("&", "")
    found = {
        "title": f"{title} [{field.unit}]" if title and field.unit else title,
        "description": field.help,
        "minimum": None if math.isinf(field.least) else field.least,
        "maxLength" if text else "maximum": None if math.isinf(field.most) else field.most,
    }
    return {keyword: told for keyword, told in found.items() if told not in (None, "")}


def _closed(part: dict[str, Any]) -> dict[str, Any]:
    return {**part, "additionalProperties": False} if part.get("type") == "object" else part


def _split(raw: dict[str, object]) -> tuple[_Header, dict[str, object]]:
    demand(
        "tackfree" in raw,
        "tackfree",
        message(
            'is missing; an exchange file begins with {{"tackfree": {newest}}}', newest=VERSION
        ),
    )
    names = ("tackfree", "note")
    header = build({name: raw[name] for name in names if name in raw}, _Header)
    demand(
        header.tackfree <= VERSION,
        "tackfree",
        message(
            "is version {tackfree}, made by a newer Tackfree; this one reads up "
            "to version {newest}, so update it first",
            tackfree=header.tackfree,
            newest=VERSION,
        ),
    )
    demand(
        header.tackfree == VERSION,
        "tackfree",
        message("is no version there has been; use {newest}", newest=VERSION),
    )
    return header, {key: value for key, value in raw.items() if key not in names}


if __name__ == "__main__":  # python -m storage.exchange > storage/exchange.schema.json
    sys.stdout.write(schema_text())
