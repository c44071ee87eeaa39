"""Writing values as JSON: plain data, stable order, short lines."""

from __future__ import annotations

import json
from dataclasses import MISSING, Field, fields, is_dataclass
from datetime import date
from enum import Enum
from typing import Any, Final

WIDTH: Final = 100


def plain(value: Any, *, defaults: bool = False) -> Any:
    """Return a value as JSON data, in the order of its fields.

    Without ``defaults``, a field that holds its default is left out, so that
    a file says only what somebody chose; reading puts the default back.
    """
    if is_dataclass(value) and not isinstance(value, type):
        own = chosen(value, defaults=defaults)
        return {name: plain(entry, defaults=defaults) for name, entry in own.items()}
    if isinstance(value, tuple | list):
        return [plain(entry, defaults=defaults) for entry in value]
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):  # a datetime is one too
        return value.isoformat()
    if isinstance(value, float) and value.is_integer():
        return int(value)  # 21 and 21.0 are one number and are written alike
    return value


def chosen(value: Any, *, defaults: bool = False) -> dict[str, Any]:
    """Return the fields of a dataclass that hold another value than their default, or all."""
    return {
        field.name: own
        for field in fields(value)
        for own in (getattr(value, field.name),)
        if defaults or not _is_default(field, own)
    }


def pretty(data: Any, indent: int = 0) -> str:
    """Return JSON text in which whatever fits stands on one line."""
    short = json.dumps(data, ensure_ascii=False, allow_nan=False)
    if len(short) + indent <= WIDTH or not data or not isinstance(data, dict | list):
        return short
    pad = " " * (indent + 2)
    if isinstance(data, dict):
        rows = [
            f"{pad}{json.dumps(key, ensure_ascii=False)}: {pretty(entry, indent + 2)}"
            for key, entry in data.items()
        ]
        opening, closing = "{", "}"
    else:
        rows = [pad + pretty(entry, indent + 2) for entry in data]
        opening, closing = "[", "]"
    return opening + "\n" + ",\n".join(rows) + "\n" + " " * indent + closing


def _is_default(field: Field[Any], value: object) -> bool:
    if field.default is not MISSING:
        return bool(value == field.default)
    if field.default_factory is not MISSING:
        return bool(value == field.default_factory())
    return False
