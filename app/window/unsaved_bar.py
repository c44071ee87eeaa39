"""What stands above every page while the book cannot be written: why, and the ways on."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import (
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QMessageBox,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.window.files import BOOKS
from app.window.labels import MessageLabel
from app.window.session import Session


class UnsavedBar(QFrame):
    """Says how many edits are not saved and why; offers to try again and to save elsewhere."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setAccessibleName(self.tr("Not saved"))
        self.why = MessageLabel()
        self.why.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.again = QPushButton(self.tr("&Try again"))
        self.elsewhere = QPushButton(self.tr("&Save elsewhere…"))
        self.there = QPushButton(self.tr("&Go on with it there"))
        line = QHBoxLayout(self)
        line.setContentsMargins(12, 8, 12, 8)
        line.addWidget(self.why, 1)
        for button in (self.again, self.there, self.elsewhere):
            line.addWidget(button)
        self.again.clicked.connect(session.saving.try_again)
        self.elsewhere.clicked.connect(self.save_elsewhere)
        self.there.clicked.connect(session.go_on_there)
        session.saving.changed.connect(self.show_state)
        session.closed.connect(self.show_state)
        self.hide()

    def show_state(self) -> None:
        """Show what is not saved, or nothing."""
        saving = self._session.saving
        count = len(saving.unsaved)
        if not count and not saving.lost:
            self.hide()
            return
        path = self._session.path
        name = path.name if path else ""
        if not count:
            told = self.tr("{book} {why}.").format(book=name, why=saving.why)
        elif count == 1:
            told = self.tr("{book} {why}. One edit is not saved; it is kept here.").format(
                book=name, why=saving.why
            )
        else:
            told = self.tr("{book} {why}. {n} edits are not saved; they are kept here.").format(
                book=name, why=saving.why, n=count
            )
        self.why.say(told)
        self.there.setVisible(self._session.moved_to() is not None)
        self.show()

    def may_close(self) -> bool:
        """Ask what to do with what is not saved; tell whether the window may close."""
        if not self._session.saving.unsaved:
            return True
        box = QMessageBox(self.window())
        box.setIcon(QMessageBox.Icon.Warning)
        box.setText(self.tr("Some edits are not saved: the book cannot be written."))
        box.setInformativeText(
            self.tr("Closed now, they are kept in a file of their own, which can be imported.")
        )
        elsewhere = box.addButton(self.elsewhere.text(), QMessageBox.ButtonRole.AcceptRole)
        close = box.addButton(
            self.tr("&Close and keep them"), QMessageBox.ButtonRole.DestructiveRole
        )
        box.addButton(QMessageBox.StandardButton.Cancel)
        box.exec()
        if box.clickedButton() is elsewhere:
            return self.save_elsewhere()
        return box.clickedButton() is close

    def save_elsewhere(self) -> bool:
        """Ask where to, and save the book there; tell whether it went well."""
        path = self._session.path
        name, _ = QFileDialog.getSaveFileName(
            self.window(),
            self.tr("Save the bench book elsewhere"),
            str(_free(path)) if path else "",
            self.tr("Bench books ({pattern})").format(pattern=BOOKS),
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        return bool(name) and self._session.save_elsewhere(Path(name))


def above(bar: UnsavedBar, page: QWidget) -> QWidget:
    """Return a widget with the bar above a page."""
    whole = QWidget()
    column = QVBoxLayout(whole)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    column.addWidget(bar)
    column.addWidget(page, 1)
    return whole


def _free(path: Path) -> Path:
    """Return a name beside a path that nothing has."""
    number = 2
    while (free := path.with_name(f"{path.stem} {number}{path.suffix}")).exists():
        number += 1
    return free
