"""The Logbook view: lines, the entry chosen, its photos, and what it all teaches."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.service import logbook, pace
from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.forms.tables import lines_table
from app.window.labels import NarrowCombo, field_label, text
from app.window.logbook.form import EntryForm
from app.window.logbook.lines import LogbookLine, Sort, lines
from app.window.logbook.pace_panel import PacePanel
from app.window.logbook.photos_strip import PhotoStrip
from app.window.logbook.table import LinesModel, what
from app.window.message_translation import edit_name
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.values.plan import PassKey
from planner.values.project import Logged
from planner.values.refusal import Refused
from storage import photos

SUFFIXES = "*.jpg *.jpeg *.png *.gif *.webp *.tif *.tiff *.bmp"
LEAST_WIDTH = 286  # of the lines, beside the entry [pixels]
MOST_NAME = 188  # of the list of projects, whose tooltip has the whole name [pixels]


class LogbookView(QWidget):
    """A table of lines to filter; beside it the entry to correct."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._all: tuple[LogbookLine, ...] = ()
        self.model = LinesModel(self)
        self.table = self._make_table()
        self.summary = text("")
        self.search = QLineEdit()
        self.search.setClearButtonEnabled(True)
        self.search.setPlaceholderText(self.tr("model, step, coating, note"))
        self.project = NarrowCombo()
        self.kind = NarrowCombo()
        for told, sort in (
            (self.tr("everything"), None),
            (self.tr("work"), Sort.WORK),
            (self.tr("what happened"), Sort.EVENT),
            (self.tr("looks at films"), Sort.LOOK),
            (self.tr("cleaned airbrushes"), Sort.CLEANED),
        ):
            self.kind.addItem(told, sort)
        self.form = EntryForm()
        self.photos = PhotoStrip()
        self.add = QPushButton(self.tr("A&dd photo…"))
        self.told = text("", size=1.05)
        self.back = QPushButton(self.tr("Ta&ke back"))
        self.back.setToolTip(self.tr("It never happened: its cup holds what was sprayed last"))
        self.pace = PacePanel()
        self.setFocusProxy(self.table)
        self._lay_out()
        self._connect()

    def _make_table(self) -> QTableView:
        table = lines_table(self.tr("Lines of the logbook"), self.model)
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        return table

    def _lay_out(self) -> None:
        find = QHBoxLayout()
        find.addWidget(field_label(self.tr("F&ind"), self.search))
        find.addWidget(self.search, 1)
        self.project.setMaximumWidth(MOST_NAME)
        head = FlowLayout(across=12, down=6)
        head.addWidget(_named(self.tr("Pro&ject"), self.project))
        head.addWidget(_named(self.tr("Sho&w"), self.kind))
        left = QWidget()
        left.setMinimumWidth(LEAST_WIDTH)
        column = QVBoxLayout(left)
        column.setContentsMargins(24, 14, 8, 14)
        column.addWidget(text(self.tr("Logbook"), size=1.9, bold=True))
        column.addWidget(self.summary)
        column.addLayout(find)
        column.addLayout(head)
        column.addWidget(self.table, 1)
        inner = QWidget()
        side = QVBoxLayout(inner)
        side.setContentsMargins(10, 20, 18, 14)
        side.setSpacing(8)
        side.addWidget(self.told)
        side.addWidget(self.back, 0, Qt.AlignmentFlag.AlignLeft)
        side.addWidget(self.form)
        side.addWidget(self.photos)
        side.addWidget(self.add)
        side.addSpacing(12)
        side.addWidget(self.pace)
        side.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidget(inner)
        area.setAccessibleName(self.tr("The entry chosen, and the pace"))
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._side, self._inner = area, inner
        self.splitter = QSplitter()
        self.splitter.addWidget(left)
        self.splitter.addWidget(area)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.setSizes([640, 400])
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.splitter)

    def _connect(self) -> None:
        self.search.textChanged.connect(self._filter)
        self.project.currentIndexChanged.connect(self._filter)
        self.kind.currentIndexChanged.connect(self._filter)
        self.table.selectionModel().currentRowChanged.connect(self._choose)
        self.form.corrected.connect(self._correct)
        self.form.taken_back.connect(self._take_back)
        self.back.clicked.connect(self._not_cleaned)
        self.add.clicked.connect(self._ask_photo)
        self.pace.minutes_wanted.connect(
            lambda stage, tool: self._attempt(
                lambda book: pace.apply_minutes(book, stage, tool, self._session.now)
            )
        )
        self.pace.drying_wanted.connect(
            lambda name: self._attempt(
                lambda book: pace.apply_drying(book, name, self._session.now)
            )
        )
        self.pace.all_wanted.connect(
            lambda: self._attempt(lambda book: pace.apply_all(book, self._session.now))
        )

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.pace.set_colours(colours)

    def show_picture(self, _picture: PlanSnapshot) -> None:
        """Show the book; a plan changes nothing in the logbook."""
        self.show_book()

    def show_book(self) -> None:
        """Show the lines of the open book."""
        book = self._session.book
        if book is None:
            return
        self._all = lines(book)
        names = ["", *(project.name for project in book.projects)]
        if names != [self.project.itemData(at) for at in range(self.project.count())]:
            self.project.blockSignals(True)
            self.project.clear()
            for name in names:
                self.project.addItem(name or self.tr("all projects"), name)
            self.project.blockSignals(False)
        self.pace.show_lesson(pace.learned(book, self._session.now))
        self._filter()

    def chosen(self) -> LogbookLine | None:
        """Return the line that is chosen."""
        return self.model.row_at(self.table.currentIndex())

    def _filter(self) -> None:
        wanted, sort = self.search.text().strip(), self.kind.currentData()
        project = self.project.currentData() or ""
        rows = tuple(
            line
            for line in self._all
            if (not wanted or line.says(wanted))
            and (sort is None or line.sort == sort)
            and (not project or line.project == project)
        )
        known = self.chosen()
        if rows != self.model.rows:
            self.model.show_lines(rows, self._session.zone)
        places = [_place(line) for line in rows]
        at = places.index(_place(known)) if known and _place(known) in places else 0
        if rows and self.table.currentIndex().row() != at:
            self.table.selectRow(at)
        minutes = sum(line.minutes or 0 for line in rows)
        self.summary.setText(
            self.tr("{lines}, {length} of work").format(
                lines=words.count(len(rows), self.tr("{n} line"), self.tr("{n} lines")),
                length=words.span(minutes),
            )
            if self._all
            else self.tr("Nothing is noted yet; what is done at the bench comes here.")
        )
        self._choose()

    def _choose(self) -> None:
        line, book = self.chosen(), self._session.book
        work = line is not None and line.fact is not None
        for part in (self.form, self.add):
            part.setVisible(work)
        self.back.setVisible(line is not None and line.cleaned is not None)
        path = self._session.path
        if line is None or book is None or path is None:
            self.told.setText("")
            self.photos.hide()
            return
        if line.fact is not None:
            self.told.hide()
            self.form.show_entry(line, book, self._session.zone)
            self._fit()
            self.photos.show_photos(path, line.fact.photos)
            return
        self.photos.hide()
        note = edit_name(line.event.text) if line.event else ""
        self.told.setText(f"{what(line)}\n{note}".strip())
        self.told.show()

    def _fit(self) -> None:
        """Make the side as wide as what is in it, its scroll bar included."""
        self._side.setMinimumWidth(self._inner.minimumSizeHint().width() + 16)

    def _attempt(self, make: object) -> Refused | None:
        refused = self._session.attempt(make)  # type: ignore[arg-type]
        if refused is not None:
            self.form.refuse(refused)
        return refused

    def _correct(self, key: PassKey, fact: Logged) -> None:
        self._attempt(lambda book: logbook.correct(book, key, fact, self._session.now))

    def _take_back(self, key: PassKey) -> None:
        self._attempt(lambda book: logbook.take_back(book, key))

    def _not_cleaned(self) -> None:
        line = self.chosen()
        fact = line.cleaned if line else None
        if fact is not None:
            self._attempt(lambda book: logbook.not_cleaned(book, fact))

    def _ask_photo(self) -> None:
        names, _ = QFileDialog.getOpenFileNames(
            self,
            self.tr("Add photos"),
            "",
            self.tr("Pictures ({suffixes})").format(suffixes=SUFFIXES),
        )
        for name in names:
            self.add_photo(Path(name))

    def add_photo(self, source: Path) -> None:
        """Keep a copy of a photo with the book and add it to the entry chosen."""
        line, path = self.chosen(), self._session.path
        if line is None or line.key is None or path is None:
            return
        key = line.key
        try:
            name = photos.keep(path, source)
        except Refused as problem:
            self.form.say(str(problem))
            return
        self._attempt(lambda book: logbook.annotate(book, key, photo=name))


def _place(line: LogbookLine) -> tuple[object, ...]:
    """Return what stays the same of a line when it is corrected."""
    if line.key is not None:
        return (line.sort, line.key)
    return (line.sort, line.at, line.project, line.model, line.step_id, line.cleaned)


def _named(name: str, field: QWidget) -> QWidget:
    """Return a field and its label as one thing."""
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 0, 0, 0)
    line.addWidget(field_label(name, field))
    line.addWidget(field)
    return holder
