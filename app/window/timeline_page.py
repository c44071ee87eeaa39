"""The Timeline view: the strip, and below it the same as a list, with the chosen piece."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from PySide6.QtCore import QModelIndex, QPoint, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QApplication,
    QButtonGroup,
    QHBoxLayout,
    QMenu,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.service.model_faces import face_of
from app.window import words
from app.window.details import Details
from app.window.labels import ColouredLabel, MessageLabel, text
from app.window.missed_words import missed_of
from app.window.moved_words import moved_lines
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanChange, PlanSnapshot
from app.window.session import Session
from app.window.strip_content import StripColumn
from app.window.timeline.day_menu import DayActions, session_of
from app.window.timeline.filter_bar import FilterBar
from app.window.timeline.outline import stretch_by_stretch
from app.window.timeline.overview import PlanOverview
from app.window.timeline.overview_layout import ModelAt
from app.window.timeline.plan_list import PlanList
from app.window.timeline.print_pages import save_strip
from app.window.timeline.strip_filter import sift
from app.window.timeline.summary_words import summary_words
from app.window.timeline.view import TimelineView
from app.window.wishes.actions import WishActions
from app.window.wishes.conflict_sentence import floor_of
from planner.schedule.missed_dates import ends_of_models
from planner.values.plan import PassKey

GHOSTS_MS = 8000  # how long it is shown where things stood before an edit


class TimelinePage(QWidget):
    """Strip, list and details, kept in step with each other; the details lie in the inspector.

    Signals
    -------
    chosen(PassKey | None)
        Another piece of work was chosen.
    opened()
        More is to be known of the chosen piece.
    picked()
        One was chosen by a hand, which has rested since.
    left()
        Nothing is to be known of it any more.
    """

    chosen = Signal(object)
    opened = Signal()
    picked = Signal()
    left = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._picture: PlanSnapshot | None = None
        self._colours = LIGHT
        self._before: dict[PassKey, int] = {}
        self._last: PassKey | None = None
        self._wished = False
        self.strip = TimelineView()
        self.overview = PlanOverview()
        self.days = DayActions(session, self)
        self._ghosts = QTimer(self)
        self._ghosts.setSingleShot(True)
        self._ghosts.setInterval(GHOSTS_MS)
        self._ghosts.timeout.connect(self.forget_moves)
        self.tree = PlanList()
        self.model = self.tree.outline
        self.details = Details()
        self.filter = FilterBar()
        self.message = MessageLabel()
        self.wishes = WishActions(session, self)
        self._summary = text("", wrap=True)
        self._sure = text("", bold=True)
        self._sure.hide()
        self._title = ColouredLabel()
        self._title.setFont(text("", size=1.9, bold=True).font())
        self._title.setText(self.tr("Plan"))
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(self.strip)
        self.splitter.addWidget(self.tree)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setSizes([460, 190])
        self.splitter.setCollapsible(0, False)
        self.levels = QStackedWidget()
        self.levels.addWidget(self._scrolled(self.overview))
        self.levels.addWidget(self.splitter)
        self._lay_out()
        self._details_later = self._soon(self._show_details)
        self._list_later = self._soon(self._begin_list)
        self._call = self._soon(self.picked.emit)
        # What comes beside the plan moves it: not below the second press of a double one.
        self._call.setInterval(QApplication.doubleClickInterval())
        self._connect()
        if session.last_change is not None:  # before this page was made
            self._changed(session.last_change)

    def _soon(self, act: Callable[[], None]) -> QTimer:
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(0)
        timer.timeout.connect(act)
        return timer

    def _scrolled(self, drawing: PlanOverview) -> QScrollArea:
        area = QScrollArea()
        area.setWidget(drawing)
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        return area

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(self._head())
        lines = QVBoxLayout()
        lines.setContentsMargins(24, 0, 18, 0)
        lines.setSpacing(4)
        lines.addWidget(self.filter)
        lines.addWidget(self.message)
        column.addLayout(lines)
        column.addWidget(self.levels, 1)
        self._show_level(0)

    def _show_level(self, level: int) -> None:
        """Show the overview (0) or the work, larger (1); the button follows."""
        self._levels_at[level].setChecked(True)  # the group itself is never asked for one
        self.levels.setCurrentIndex(level)
        self.filter.setVisible(level == 1)
        for button in self._zooms:
            button.setEnabled(level == 1)
        self.setFocusProxy(self.strip if level else self.overview)

    def _connect(self) -> None:
        self.strip.chosen.connect(self._chosen_on_strip)
        self.strip.opened.connect(lambda _key: self.opened.emit())
        self.tree.activated.connect(lambda _index: self.opened.emit())
        self.strip.dropped.connect(self.wishes.drop_on)
        self.strip.asked.connect(self._ask)
        self.strip.day_asked.connect(self._ask_day)
        self.overview.asked.connect(self._ask)
        self.overview.day_asked.connect(self._ask_day)
        self.overview.chosen.connect(self.strip.choose)
        self.overview.chosen.connect(lambda _key: self._call.start())
        self.strip.picked.connect(self._call.start)
        self.overview.opened.connect(self._open)
        self.days.said.connect(self.message.say)
        self.strip.floor_of = self._floor_of
        self.tree.selectionModel().currentChanged.connect(self._chosen_in_list)
        self.tree.customContextMenuRequested.connect(
            lambda spot: self._ask(self.tree.viewport().mapToGlobal(spot))
        )
        self.wishes.said.connect(self.message.say)
        self.wishes.trial.kept.connect(self._follow)
        self.filter.changed.connect(self._sift)
        self.filter.compared.toggled.connect(self._compare)
        self._session.pictured.connect(self._changed)
        self._session.opened.connect(self._begin_anew)

    def _head(self) -> QVBoxLayout:
        head = QVBoxLayout()
        head.setContentsMargins(24, 0, 18, 0)
        head.setSpacing(2)
        line = QHBoxLayout()
        line.addWidget(self._title, 1)
        for button in self._level_buttons():
            line.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
        line.addWidget(self._menu_button(), 0, Qt.AlignmentFlag.AlignBottom)
        self._zooms: list[QToolButton] = []
        for sign, name, act in (
            ("−", self.tr("Smaller (−)"), self.strip.zoom_out),
            ("+", self.tr("Larger (+)"), self.strip.zoom_in),
            ("↔", self.tr("Fit the whole plan (0)"), self.strip.zoom_to_fit),
            (self.tr("now"), self.tr("Go to now"), self.strip.show_now),
            (self.tr("PDF…"), self.tr("Save the strip as pages to print"), self._save),
        ):
            button = QToolButton()
            button.setText(sign)
            button.setToolTip(name)
            button.setAccessibleName(name)
            button.setMinimumSize(32, 28)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.clicked.connect(act)
            if act != self._save:
                self._zooms.append(button)
            line.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
        head.addLayout(line)
        head.addWidget(self._sure)
        head.addWidget(self._summary)
        return head

    def _level_buttons(self) -> Iterator[QToolButton]:
        self.level_buttons = QButtonGroup(self)
        self._levels_at: list[QToolButton] = []
        for level, (name, tip) in enumerate(
            (
                (self.tr("Overview"), self.tr("The whole plan, one lane a model")),
                (self.tr("Work"), self.tr("Every part and every name, with the list below")),
            )
        ):
            button = QToolButton()
            button.setText(name)
            button.setToolTip(tip)
            button.setCheckable(True)
            button.setMinimumHeight(28)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.level_buttons.addButton(button, level)
            self._levels_at.append(button)
            yield button
        self.level_buttons.idClicked.connect(self._show_level)

    def _open(self, key: PassKey) -> None:
        """Show a piece of work at the level of work."""
        self._show_level(1)
        self.strip.choose(key)
        self.strip.setFocus()

    def _menu_button(self) -> QToolButton:
        button = QToolButton()
        button.setText(self.tr("Wish"))
        button.setToolTip(self.tr("What can be wished of the chosen piece of work"))
        button.setMinimumHeight(28)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        menu = QMenu(button)
        self.wishes.fill(menu)
        button.setMenu(menu)
        return button

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.strip.set_colours(colours)
        self.overview.set_colours(colours)
        if self._picture is not None:
            self._say_answer(self._picture)
        self.details.set_colours(colours)

    def show_sure(self, told: str, bands: Mapping[ModelAt, tuple[int, int, int]]) -> None:
        """Tell how sure the dates are, in a line and as bands; nothing while that is not known."""
        self._sure.setText(told)
        self._sure.setVisible(bool(told))
        self.overview.show_sure(bands)

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show another plan; choice, zoom and open lines stay where they can."""
        first = self._picture is None
        self._picture = picture
        self.filter.show_strip(picture.strip)
        self.strip.show_strip(sift(picture.strip, self.filter.sieve))
        self._show_overview(picture)
        self._compare()
        if first:
            ahead = [p for p in picture.strip.pieces if p.interval.start >= picture.now]
            soonest = min(ahead, key=lambda piece: piece.interval.start, default=None)
            self.strip.choose(soonest.key if soonest else None)
            self.strip.show_now()
            self.strip.verticalScrollBar().setValue(0)
        elif self._wished:
            self.strip.choose(self.strip.chosen_key)  # it stands elsewhere now
        self._wished = False
        self._details_later.start()
        self._say_answer(picture)
        self._summary.setText(summary_words(picture))
        self._list_later.start()

    def _show_overview(self, picture: PlanSnapshot) -> None:
        late = missed_of(picture)
        models = {(one.project, one.model) for one in late if one.model}
        projects = {one.project for one in late if not one.model}
        ends = {
            at: (end, at in models or at[0] in projects)
            for at, end in ends_of_models(picture.book, picture.plan).items()
        }
        lanes = {(lane.project, lane.model) for lane in picture.strip.lanes}
        faces = {at: face_of(picture.book, *at) for at in sorted(lanes)}
        self.overview.show_strip(picture.strip, faces, ends)

    def forget_moves(self) -> None:
        """Show no longer where things stood before the last edit."""
        self._ghosts.stop()
        self.message.say("")
        self._compare()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Escape end the look back at what moved, then what is told of the chosen piece."""
        if event.key() == Qt.Key.Key_Escape:
            if self._ghosts.isActive():
                self.forget_moves()
            else:
                self._call.stop()
                self.left.emit()
            return
        super().keyPressEvent(event)

    def _begin_anew(self) -> None:
        self._before, self._last = {}, None
        self._ghosts.stop()
        self.filter.clear()

    def _changed(self, change: PlanChange) -> None:
        """Remember where everything stood before the last change that a person made."""
        if change.cause:
            self._before = {
                move.key: move.before for move in change.moves if move.before is not None
            }
            told = moved_lines(change)
            if told and self._before:
                self.message.say(" ".join(told))
                self._ghosts.start()
                self.overview.compare(self._before, slide=True)
            if self.filter.compared.isChecked() or self._ghosts.isActive():
                self._compare()

    def _follow(self, _name: str) -> None:
        """Go where the chosen piece stands now, as soon as that is shown."""
        self._wished = True
        if self._picture is self._session.picture:
            self.strip.choose(self.strip.chosen_key)

    def _compare(self) -> None:
        shown = self._before if self.filter.compared.isChecked() or self._ghosts.isActive() else {}
        self.strip.compare(shown)
        self.overview.compare(shown, slide=self.overview.sliding)
        if self._picture is not None:
            self._list_later.start()

    def _sift(self) -> None:
        if self._picture is None:
            return
        self.strip.show_strip(sift(self._picture.strip, self.filter.sieve))
        if self.strip.chosen_key is None and self._last is not None:
            self.strip.choose(self._last)  # it may have come back into sight
        self._list_later.start()

    def _show_details(self) -> None:
        """Read what is chosen off the plan, once the strip was painted."""
        if self._picture is not None:
            self.details.show_picture(self._picture)

    def _begin_list(self) -> None:
        """Begin to show the plan as a list; the strip was painted first: it is looked at first."""
        picture = self._picture
        if picture is not None:
            before = self._before if self.filter.compared.isChecked() else {}
            self.tree.begin(stretch_by_stretch(sift(picture.strip, self.filter.sieve), before))

    def set_now(self, now: int) -> None:
        """Let the shade reach ``now``."""
        self.strip.set_now(now)
        self.overview.set_now(now)

    def _say_answer(self, picture: PlanSnapshot) -> None:
        """Let the title be the answer: when all is done, in the colour of what is late if it is."""
        end = max((minute for _, minute in picture.plan.finishes), default=None)
        told = (
            self.tr("Plan")
            if end is None
            else self.tr("Done {day}").format(day=words.day_of(end, picture.zone))
        )
        late = picture.plan.unplaced or missed_of(picture)
        self._title.say(told, self._colours.closing_word if late else self._colours.ink)

    def _chosen_on_strip(self, key: PassKey | None) -> None:
        self.details.show_key(key)
        self.overview.choose(key)
        self.wishes.choose(key)
        self.tree.select(key)
        if key is not None:
            self._last = key
        self.chosen.emit(key)

    def _chosen_in_list(self, index: QModelIndex) -> None:
        key = self.model.key_at(index)
        if key is not None and key != self.strip.chosen_key:
            self.strip.choose(key)
            if self.tree.hasFocus():
                self._call.start()

    def _floor_of(self, key: PassKey) -> int | None:
        return floor_of(self._picture, key) if self._picture else None

    def _ask(self, spot: QPoint) -> None:
        """Offer what can be wished of the chosen piece."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.wishes.fill(menu)
        column = session_of(self._picture.strip, self.strip.chosen_key) if self._picture else None
        if column is not None:
            menu.addSeparator()
            self.days.fill(menu, column)
        menu.popup(spot)

    def _ask_day(self, column: StripColumn, spot: QPoint) -> None:
        """Offer what can be done with a session."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.days.fill(menu, column)
        menu.popup(spot)

    def _save(self) -> None:
        if self._picture is not None:
            self.message.say(save_strip(self, self._picture, self.filter.sieve))
