"""What a person is told when something unforeseen happened: calmly, and once."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QUrl, Signal
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QMessageBox

from app.service import program_log

if TYPE_CHECKING:
    from app.window.main_window import MainWindow


class Unforeseen(QObject):
    """Logs faults of the program and tells of them, from whatever thread they come."""

    _came = Signal(str)

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.box: QMessageBox | None = None
        self._came.connect(self._tell)
        program_log.catch_all(lambda _problem, path: self._came.emit(str(path or "")))

    def _tell(self, report: str) -> None:
        """Say what is kept and where the report lies, and go on."""
        box = QMessageBox(self._window)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setIcon(QMessageBox.Icon.Information)
        box.setWindowTitle(self.tr("Unexpected error"))
        box.setText(self.tr("Something went wrong."))
        kept = self.tr("Your book is saved up to the last edit. You can go on.")
        if report:
            kept += "\n\n" + self.tr(
                "A report is in {path}. It names no model, person or file; "
                "read it before you share it."
            ).format(path=report)
            look = box.addButton(self.tr("&Show the report"), QMessageBox.ButtonRole.ActionRole)
            look.clicked.connect(lambda: QDesktopServices.openUrl(_url(report)))
        # Beside a second button Qt would not know what Escape and closing the box mean.
        box.setEscapeButton(box.addButton(QMessageBox.StandardButton.Ok))
        box.setInformativeText(kept)
        self.box = box
        box.open()


def _url(path: str) -> QUrl:
    return QUrl.fromLocalFile(str(Path(path)))
