"""One box for each kind of work: whether it is planned once a film is likely ready."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QCoreApplication, QSignalBlocker
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from app.service import wishes
from app.window.session import Session
from planner.values.wishes import Care


class CareBoxes(QWidget):
    """Shows and sets what waits for the likely film only; all else waits for the slowest."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        self.boxes: dict[Care, QCheckBox] = {}
        for care in Care:
            box = QCheckBox(QCoreApplication.translate("care", care.value))
            box.toggled.connect(partial(self._set, care))
            self.boxes[care] = box
            column.addWidget(box)

    def show_likely(self, likely: tuple[Care, ...]) -> None:
        """Tick what is planned at likely."""
        for care, box in self.boxes.items():
            with QSignalBlocker(box):
                box.setChecked(care in likely)

    def _set(self, care: Care, likely: bool) -> None:
        self._session.attempt(lambda book: wishes.set_likely(book, care, likely=likely))
