"""What is written over a piece of work on the strip."""

from __future__ import annotations

from app.window import reasons, words
from app.window.strip_content import Piece


def label_of(piece: Piece) -> str:
    """Return what is written over a piece of work."""
    name = reasons.piece_name(piece)
    if piece.pinned:
        return words.tr("{name} · pinned").format(name=name)
    return words.tr("{name} · wished").format(name=name) if piece.wishes else name
