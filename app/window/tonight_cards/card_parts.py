"""What stands on a card of Tonight beside its table: its stroke of colour, and what is told."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from app.window import mark_drawing
from app.window.mark_widgets import MarkWidget
from app.window.palette import Colours
from planner.values.step import Stage, Tool

STROKE = 56  # pixels


@dataclass(frozen=True)
class CardNotes:
    """What is told on a card beside its work.

    ``marks`` are sentences of what its steps ask for, ``more`` of its filling, ``pauses`` of
    the minutes within it in which nothing is ready; ``later`` are the sessions to which it can
    be put off, each with its first minute.
    """

    marks: tuple[str, ...] = ()
    more: tuple[str, ...] = ()
    pauses: tuple[str, ...] = ()
    later: tuple[tuple[str, int], ...] = ()


class CardStroke(MarkWidget):
    """A stroke of the card's colour, with the end that its tool leaves."""

    def __init__(
        self, colours: Colours, *, swatch: str, tool: Tool, stage: Stage, name: str
    ) -> None:
        super().__init__(colours, STROKE)
        self._swatch, self._tool, self._stage, self._name = swatch, tool, stage, name
        self.setMinimumHeight(34)

    def draw(self, painter: QPainter) -> None:
        """Paint the stroke."""
        mark_drawing.paint_work(
            painter,
            QRectF(1, 3, 52, 26),
            self.colours,
            swatch=self._swatch,
            tool=self._tool,
            stage=self._stage,
            name=self._name,
        )
