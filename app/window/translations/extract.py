"""Finds every text of the window that is to be translated, with its context.

Python's own syntax tree is read, because the usual extractor knows neither a
``tr`` that stands for another function nor a class that a nested function is in.
"""

from __future__ import annotations

import ast
from pathlib import Path

WINDOW = Path(__file__).parents[1]
SHARED = "words"  # the context of `words.tr`

Texts = dict[str, list[str]]  # contexts, each with its sources in the order of the files


class UnreadableError(Exception):
    """A text that nobody can find beforehand, and where it stands."""


def texts_of_window(root: Path = WINDOW) -> Texts:
    """Return all texts in the source of the window, by context.

    Raises
    ------
    UnreadableError
        If the context of a text cannot be told.
    """
    found: Texts = {}
    for path in sorted(root.rglob("*.py")):
        for context, source in texts_of(path.read_text(encoding="utf-8"), str(path)):
            sources = found.setdefault(context, [])
            if source not in sources:
                sources.append(source)
    return dict(sorted(found.items()))


def texts_of(source: str, name: str) -> list[tuple[str, str]]:
    """Return the texts of one file as (context, source), in their order."""
    reader = _Reader(name)
    reader.visit(ast.parse(source))
    return reader.found


class _Reader(ast.NodeVisitor):
    """Goes through one file, and knows in which class it is and what ``tr`` means there."""

    def __init__(self, name: str) -> None:
        self._name = name
        self._classes: list[str] = []
        self._meaning: list[str | None] = [None]  # of a plain ``tr``, by function
        self.found: list[tuple[str, str]] = []

    def visit_ImportFrom(self, node: ast.ImportFrom) -> None:
        """Take ``from app.window.words import tr`` for what it is."""
        if any(name.name == "tr" and name.asname is None for name in node.names):
            self._meaning[-1] = (node.module or "").rpartition(".")[2]

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        """Enter a class; its name is the context of ``self.tr``."""
        self._classes.append(node.name)
        self.generic_visit(node)
        self._classes.pop()

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        """Enter a function; one named ``tr`` says what ``tr`` means in its file."""
        if node.name == "tr":
            self._meaning[-1] = _context_given(node)
            return
        self._meaning.append(self._meaning[-1])
        self.generic_visit(node)
        self._meaning.pop()

    def visit_Assign(self, node: ast.Assign) -> None:
        """Take ``tr = self.tr`` for what it is."""
        target = node.targets[0]
        if isinstance(target, ast.Name) and target.id == "tr":
            self._meaning[-1] = self._context(node.value)
        elif isinstance(target, ast.Tuple) and isinstance(node.value, ast.Tuple):
            for elt, value in zip(target.elts, node.value.elts, strict=False):
                if isinstance(elt, ast.Name) and elt.id == "tr":
                    self._meaning[-1] = self._context(value)
        self.generic_visit(node)

    def visit_Call(self, node: ast.Call) -> None:
        """Note the text of a call of ``tr``, whichever it is."""
        named = node.func.attr if isinstance(node.func, ast.Attribute) else ""
        plain = isinstance(node.func, ast.Name) and node.func.id == "tr"
        if (named == "tr" or plain) and node.args:
            text = node.args[0]
            if isinstance(text, ast.Constant) and isinstance(text.value, str):
                context = self._context(node.func)
                if context is None:
                    raise UnreadableError(f"{self._name}:{node.lineno}: whose tr is it?")
                self.found.append((context, text.value))
            elif not isinstance(text, ast.Name) or not text.id.isupper():
                # A constant of another module is listed among the values.
                raise UnreadableError(f"{self._name}:{node.lineno}: no text to read")
        self.generic_visit(node)

    def _context(self, tr: ast.expr) -> str | None:
        """Return the context of a ``tr``: plain, of self, of a field or of a module."""
        if isinstance(tr, ast.Name):
            return self._meaning[-1]
        owner = tr.value if isinstance(tr, ast.Attribute) else None
        if isinstance(owner, ast.Name):
            return self._classes[-1] if owner.id == "self" and self._classes else owner.id
        if isinstance(owner, ast.Attribute):  # self._session.tr
            return owner.attr.strip("_").title()
        return None


def _context_given(node: ast.FunctionDef) -> str | None:
    """Return the context in ``return QCoreApplication.translate("context", text)``."""
    for call in ast.walk(node):
        if isinstance(call, ast.Call) and ast.unparse(call.func).endswith(".translate"):
            first = call.args[0]
            if isinstance(first, ast.Constant):
                return str(first.value)
    return None
