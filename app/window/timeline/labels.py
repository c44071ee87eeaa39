"""What is written over a piece of work on the strip."""

from __future__ import annotations

from app.window import reasons, words
from app.window.message_translation import edit_name
from app.window.strip_content import Piece


def mark_lines(piece: Piece) -> list[str]:
    """Return how a piece of work met films outside their windows, in sentences."""
    form = words.tr("⚠ Done all the same: {how}.")
    return [form.format(how=edit_name(mark)) for mark in piece.marks]


def label_of(piece: Piece) -> str:
    """Return what is written over a piece of work."""
    name = reasons.piece_name(piece)
    if piece.marks:
        name = words.tr("{name} ⚠").format(name=name)
    if piece.pinned:
        return words.tr("{name} · pinned").format(name=name)
    return words.tr("{name} · wished").format(name=name) if piece.wishes else name
