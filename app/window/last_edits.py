"""The last edits with their times, and going back to any of them."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.labels import MessageLabel, text
from app.window.message_translation import edit_name
from app.window.session import Session

if TYPE_CHECKING:
    from storage.bench_book import Entry

EDIT = Qt.ItemDataRole.UserRole
MOST = 500  # edits that are listed; undo itself reaches further back


class LastEdits(QDialog):
    """A list, the newest edit first; what was undone stands above the point that one is at."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._here = 0
        self.setWindowTitle(self.tr("Last edits"))
        self.list = QListWidget()
        mark_chosen_rows(self.list)
        self.list.setAccessibleName(self.tr("Edits, the newest first"))
        self.list.setWordWrap(True)
        self.list.itemActivated.connect(lambda _item: self.go())
        self.list.currentItemChanged.connect(lambda *_: self._mark())
        self.message = MessageLabel()
        self.go_there = QPushButton(self.tr("&Go to this point"))
        self.go_there.setDefault(True)
        self.go_there.clicked.connect(self.go)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.addButton(self.go_there, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        explained = self.tr(
            "Going to a point undoes, or redoes, the edits after it. The logbook stays."
        )
        column.addWidget(text(explained))
        column.addWidget(self.list, 1)
        column.addWidget(self.message)
        column.addWidget(buttons)
        self.resize(520, 460)
        session.edited.connect(self.show_edits)
        session.troubled.connect(self.message.say)
        self.show_edits()
        self.list.setFocus()

    def show_edits(self) -> None:
        """List the edits as they stand now, the one that was done last chosen."""
        stacks = self._session.stacks()
        self.message.say("")
        self.list.clear()
        if stacks is None:
            self._mark()
            return
        for entry in stacks.redo[-MOST:]:
            self._add(entry, undone=True)
        here = self.list.count()
        for entry in reversed(stacks.undo[-MOST:]):
            self._add(entry)
        if len(stacks.undo) <= MOST:
            first = QListWidgetItem(self.tr("Before all of these edits"))
            first.setData(EDIT, 0)
            self.list.addItem(first)
        item = self.list.item(here)
        item.setText(self.tr("{edit}  (here)").format(edit=item.text()))
        font = item.font()
        font.setBold(True)
        item.setFont(font)
        self.list.setCurrentRow(here)
        self._here = here
        self._mark()

    def go(self) -> None:
        """Go to the chosen point."""
        item = self.list.currentItem()
        if item is not None and self.list.currentRow() != self._here:
            self._session.turn_to(int(item.data(EDIT)), self.tr("another point of the edits"))

    def _add(self, entry: Entry, *, undone: bool = False) -> None:
        sentence = self.tr("{time}  {edit}  (undone)") if undone else self.tr("{time}  {edit}")
        item = QListWidgetItem(
            sentence.format(time=_time(entry.at, self._session.zone), edit=edit_name(entry.name))
        )
        item.setData(EDIT, entry.id)
        self.list.addItem(item)

    def _mark(self) -> None:
        self.go_there.setEnabled(self.list.currentRow() not in (-1, self._here))


def _time(at: datetime, zone: ZoneInfo) -> str:
    local = at.astimezone(zone)
    return words.tr("{day} {time}").format(day=words.day(local), time=f"{local:%H:%M}")


def show_edits(session: Session, parent: QWidget) -> LastEdits:
    """Open the list beside the window, so that one sees what going back does."""
    dialog = LastEdits(session, parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog
