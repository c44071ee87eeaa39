"""Before a file is taken in: what it brings, and what it says differently."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from app.service.importing import Household, Imported, import_file
from app.service.merging import Item, MergeChoice, differences
from app.window import words
from app.window.labels import MessageLabel, text
from app.window.merge_view import MergeView
from planner.values.book import Book
from planner.values.refusal import Refused
from storage.exchange import Exchange


class ImportDialog(QDialog):
    """What comes in, and which of two voices wins."""

    def __init__(self, book: Book, exchange: Exchange, name: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Import {file}").format(file=name))
        self._book, self._exchange = book, exchange
        found = differences(book, exchange.book)
        self.resize(760, 640 if found else 320)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self._take = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        self._take.setText(self.tr("Import"))
        self.title = text("", size=1.3, bold=True)
        self.notes = text("")
        self.message = MessageLabel()
        self.household = self._household(not book.projects)
        self.merge = MergeView(found, self.look) if found else None
        self._lay_out()
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        self.look()

    def _household(self, checked: bool) -> dict[Household, QCheckBox]:
        boxes = {
            Household.BENCH_TIME: QCheckBox(
                self.tr("Take the file's bench time in place of yours")
            ),
            Household.ROOM: QCheckBox(self.tr("Take the file's room and air in place of yours")),
            Household.GEAR: QCheckBox(self.tr("Take the file's airbrushes in place of yours")),
        }
        for box in boxes.values():
            box.setChecked(checked)
            box.toggled.connect(lambda _on: self.look())
        return boxes

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 14)
        column.setSpacing(10)
        column.addWidget(self.title)
        if self._exchange.note:
            column.addWidget(text(self._exchange.note))
        column.addWidget(self.notes)
        for box in self.household.values():
            column.addWidget(box)
        if self.merge is not None:
            column.addWidget(text(self.tr("These are in your book, and described differently:")))
            column.addWidget(self.merge, 1)
        else:
            column.addStretch(1)
        column.addWidget(self.message)
        column.addWidget(self.buttons)

    def look(self) -> None:
        """Try what is chosen, and say what would come of it or why it cannot be."""
        theirs, choices, names = self.choices()
        try:
            done = import_file(
                self._book, self._exchange, theirs=theirs, choices=choices, names=names
            )
        except Refused as problem:
            said = self.tr("It does not fit this book: {why}")
            self.message.say(said.format(why=problem))
            self._take.setEnabled(False)
            return
        self.message.say("")
        self._take.setEnabled(True)
        came = [name for _, name in (*done.projects, *done.sequences)]
        self.title.setText(
            words.listed(came) or self.tr("Nothing that is not in your book already")
        )
        self.notes.setText("\n".join(self._told(done)))
        self.notes.setVisible(bool(self.notes.text()))

    def _told(self, done: Imported) -> list[str]:
        lines = []
        if done.already:
            line = self.tr("Already in your book, unchanged: {names}.")
            lines.append(line.format(names=words.listed(done.already)))
        if done.added:
            line = self.tr("Comes with it: {names}.")
            lines.append(line.format(names=words.listed(done.added)))
        return lines

    def choices(self) -> tuple[frozenset[Household], dict[Item, MergeChoice], dict[Item, str]]:
        """Return what to take of the household, what to do with what differs, and new names."""
        theirs = frozenset(part for part, box in self.household.items() if box.isChecked())
        if self.merge is None:
            return theirs, {}, {}
        return theirs, dict(self.merge.model.choices), dict(self.merge.model.names)
