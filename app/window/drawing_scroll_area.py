"""A scroll area around a drawing that is larger than the area and takes the keys itself."""

from __future__ import annotations

from PySide6.QtWidgets import QScrollArea


class StillArea(QScrollArea):
    """Stays where it is when Tab comes and goes.

    Qt would bring the middle of the whole drawing on screen, whatever is looked at there.
    """

    def focusNextPrevChild(self, onwards: bool) -> bool:
        """Let the keys go on, and scroll nothing."""
        bars = (self.horizontalScrollBar(), self.verticalScrollBar())
        at = [bar.value() for bar in bars]
        gone = super().focusNextPrevChild(onwards)
        for bar, value in zip(bars, at, strict=True):
            bar.setValue(value)
        return gone
