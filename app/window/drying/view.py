"""The Drying now view: what opens and what closes, the next one first."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QHeaderView,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.service import bench_events
from app.window import words
from app.window.drying.event_wording import film_words, state_words
from app.window.drying.notifier import Notifier
from app.window.drying.table import COURSE, WHAT, CourseDelegate, MomentsModel
from app.window.film_events import FilmEvent, FilmEventKind
from app.window.flow_layout import FlowLayout
from app.window.forms.tables import lines_table
from app.window.labels import text
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.tonight import swatch_of
from planner.values.coating import State

TICK_MS = 5_000


class DryingView(QWidget):
    """A table of moments, what was seen of a film, and how one wants to be told.

    Signals
    -------
    looked(PassKey, State, bool)
        A film was looked at; it had reached a state, or not.
    """

    looked = Signal(object, object, bool)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._picture: PlanSnapshot | None = None
        self.notifier: Notifier | None = None
        self.model = MomentsModel(self)
        self.course = CourseDelegate(self.model, self)
        self.table = self._make_table()
        self.summary = text("")
        self.tacky = QPushButton(self.tr("Still &wet"))
        self.dry = QPushButton(self.tr("&Dry already"))
        self.seen = QPushButton(self.tr("&Looked at it"))
        self.seen.setToolTip(self.tr("Note in the logbook that you had a look"))
        self.about = text("", wrap=True)
        self.desktop = QCheckBox(self.tr("Tell me on the desk&top, too"))
        self.sound = QCheckBox(self.tr("With a quiet &sound, at the bench only"))
        self.setFocusProxy(self.table)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 18, 14)
        column.setSpacing(8)
        column.addWidget(text(self.tr("Drying now"), size=1.9, bold=True))
        column.addWidget(self.summary)
        column.addWidget(self.table, 1)
        column.addWidget(self.about)
        line = FlowLayout(across=10, down=6)
        for each in (self.tacky, self.dry, self.seen, self.desktop, self.sound):
            line.addWidget(each)
        column.addLayout(line)
        self.tacky.clicked.connect(lambda: self._look(reached=False))
        self.dry.clicked.connect(lambda: self._look(reached=True))
        self.seen.clicked.connect(self._seen)
        self.table.selectionModel().currentRowChanged.connect(self._chosen)
        self._clock = QTimer(self)
        self._clock.setInterval(TICK_MS)
        self._clock.timeout.connect(self.clock_moved)
        self._clock.start()
        self._chosen()

    def _make_table(self) -> QTableView:
        table = lines_table(self.tr("What opens and what closes"), self.model)
        table.setItemDelegateForColumn(COURSE, self.course)
        table.verticalHeader().setDefaultSectionSize(2 * table.fontMetrics().height() + 10)
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(WHAT, QHeaderView.ResizeMode.Stretch)
        return table

    def tell_by(self, notifier: Notifier) -> None:
        """Let the boxes below set how moments are made known."""
        self.notifier = notifier
        for box, name in ((self.desktop, "desktop"), (self.sound, "sound")):
            box.setChecked(getattr(notifier, name))
            box.toggled.connect(lambda on, name=name: setattr(notifier, name, on))

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.course.colours = colours
        self.table.viewport().update()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show what dries by another plan."""
        self._picture = picture
        chosen = self._moment()
        rows = picture.moments
        names = {row.coating for row in rows if row.coating}
        swatches = {name: swatch_of(picture.book, name) for name in names}
        self.model.show_moments(rows, swatches, picture.zone, self._session.now)
        if rows:
            self.table.selectRow(self.model.line_of(chosen.name if chosen else ""))
        self._say()
        self._chosen()

    def clock_moved(self) -> None:
        """Follow the clock."""
        if self.isVisible() and self._picture is not None:
            self.model.set_now(self._session.now)
            self._say()
            self._chosen()

    def _moment(self) -> FilmEvent | None:
        return self.model.moment_at(self.table.currentIndex())

    def _say(self) -> None:
        rows = [
            self.model.moment_at(self.model.index(at, 0)) for at in range(self.model.rowCount())
        ]
        now = self._session.now
        wet = sum(
            1
            for row in rows
            if row and row.kind is FilmEventKind.OPENS and (row.at is None or row.at > now)
        )
        open_ = sum(
            1
            for row in rows
            if row and row.kind is FilmEventKind.OPENS and row.at and row.at <= now
        )
        closing = sum(1 for row in rows if row and row.kind is FilmEventKind.CLOSES)
        looks = sum(1 for row in rows if row and row.kind is FilmEventKind.LOOK)
        if not rows:
            self.summary.setText(
                self.tr("Nothing is drying. A coat appears here once it is marked done.")
            )
            return
        counts = (
            (wet, self.tr("{n} coat drying"), self.tr("{n} coats drying")),
            (open_, self.tr("{n} ready"), self.tr("{n} ready")),
            (looks, self.tr("{n} look due"), self.tr("{n} looks due")),
            (closing, self.tr("{n} window closing"), self.tr("{n} windows closing")),
        )
        self.summary.setText(", ".join(words.count(*each) for each in counts if each[0]) + ".")

    def _chosen(self) -> None:
        row = self._moment()
        film = row is not None and row.kind is FilmEventKind.OPENS
        self.tacky.setEnabled(film)
        self.dry.setEnabled(film)
        due = (
            row is not None
            and row.kind is FilmEventKind.LOOK
            and (row.at or 0) <= self._session.now
        )
        self.seen.setEnabled(due)
        if row is None:
            self.about.setText("")
            return
        told = self.tr("{model}: {film}, {state}. {why}").format(
            model=row.film.model,
            film=film_words(row),
            state=state_words(row),
            why=words.capital(row.why),
        )
        self.about.setText(told)

    def _look(self, *, reached: bool) -> None:
        row = self._moment()
        if row is not None:
            state = row.state or State.DRY_TO_RECOAT
            self.looked.emit(row.film, state, reached)

    def _seen(self) -> None:
        """Note that the look was taken."""
        row = self._moment()
        if row is not None and row.kind is FilmEventKind.LOOK:
            now = self._session.now
            refused = self._session.attempt(lambda book: bench_events.seen(book, row.film, now))
            if refused is not None:
                self._session.troubled.emit(translated(str(refused)))
