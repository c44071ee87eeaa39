"""Finds every text that planner, storage and service say, by the names of what makes them."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from app.window.translations.extract import UnreadableError

ROOT = Path(__file__).parents[3]
FOLDERS = (ROOT / "planner", ROOT / "storage", ROOT / "app" / "service")
ASIDE = "migrations"  # of the bench book: they are told to nobody

# What makes or takes a text, and which of its arguments that is.
TAKES = {
    "message": 0,
    "called": 0,
    "titled": 0,
    "told": 0,
    "unknown": 0,
    "Refused": 1,
    "BookTrouble": 1,
    "Damaged": 0,
    "demand": 2,
    "demand_known": 2,
    "number_in": 4,
    "Field": 0,
}
SAID_BY_NAME = {"Field": ("unit", "help")}
ALWAYS = ("message", "called", "titled")  # with nothing but a literal


def texts_said() -> list[str]:
    """Return all texts that are said, in the order of the files.

    Raises
    ------
    UnreadableError
        If a text cannot be found beforehand.
    """
    return _once(text for _, text in _all())


def kept_as_text() -> dict[str, list[str]]:
    """Return what a book keeps as bare text: names of edits with their parts, titles of steps."""
    every = list(_all())
    return {
        kind: sorted({text for name, text in every if name == kind})
        for kind in ("called", "titled")
    }


def texts_of(source: str, name: str) -> list[tuple[str, str]]:
    """Return the texts of one file as (what makes it, text), in their order."""
    calls = [
        node
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Call) and _name(node.func) in TAKES
    ]
    calls.sort(key=lambda node: (node.lineno, node.col_offset))
    return [(_name(call.func), text) for call in calls for text in _texts(call, name)]


def _all() -> Iterator[tuple[str, str]]:
    for folder in FOLDERS:
        for path in sorted(folder.rglob("*.py")):
            if ASIDE not in path.parts:
                yield from texts_of(path.read_text(encoding="utf-8"), str(path))


def _name(called: ast.expr) -> str:
    if isinstance(called, ast.Attribute):
        return called.attr
    return called.id if isinstance(called, ast.Name) else ""


def _texts(call: ast.Call, where: str) -> Iterator[str]:
    name = _name(call.func)
    for keyword in call.keywords:
        if keyword.arg in SAID_BY_NAME.get(name, ()) and isinstance(keyword.value, ast.Constant):
            yield str(keyword.value.value)
    if len(call.args) > TAKES[name]:
        text = call.args[TAKES[name]]
        if isinstance(text, ast.Constant) and isinstance(text.value, str):
            yield text.value
        elif isinstance(text, ast.IfExp):
            sides = (text.body, text.orelse)
            yield from (
                side.value
                for side in sides
                if isinstance(side, ast.Constant) and isinstance(side.value, str)
            )
        elif name in ALWAYS:
            raise UnreadableError(f"{where}:{call.lineno}: no text to read")


def _once(texts: Iterator[str]) -> list[str]:
    return list(dict.fromkeys(text for text in texts if text))
