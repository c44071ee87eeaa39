"""The list of projects: which are planned, by which date, and when they will be finished."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import lru_cache
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QDate,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QSignalBlocker,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QBrush, QColor, QIcon, QPainter, QPen, QPixmap
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QListView,
    QSpinBox,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from app.service import edits
from app.window import words
from app.window.chosen_rows import ChosenRows
from app.window.forms.moment_fields import DateField
from app.window.labels import MessageLabel, field_label, text
from app.window.missed_words import missed_line, missed_of
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.values.project import Project

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
MARK = 14  # pixels of the ring and the bracket
AROUND = 12  # spacing and margins beside an entry [pixels]
CHECKED = Qt.CheckState.Checked


class ProjectsModel(QAbstractListModel):
    """The projects of a book; their check marks say which are planned.

    Signals
    -------
    switched(str, bool)
        A project was made active, or set aside.
    """

    switched = Signal(str, bool)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._projects: tuple[Project, ...] = ()
        self._lines: dict[str, str] = {}
        self._late: frozenset[str] = frozenset()
        self._kept: frozenset[str] = frozenset()
        self.colours: Colours = LIGHT

    def show_projects(
        self,
        projects: tuple[Project, ...],
        lines: dict[str, str],
        late: frozenset[str] = frozenset(),
        kept: frozenset[str] = frozenset(),
    ) -> None:
        """Show other projects.

        ``lines`` says when each is finished, ``late`` which miss a date, ``kept`` which
        have days in hand: a bracket and a ring say so, too.
        """
        self._late, self._kept = late, kept
        names = [project.name for project in projects]
        if names == [project.name for project in self._projects]:
            self._projects, self._lines = projects, lines
            if names:
                self.dataChanged.emit(self.index(0), self.index(len(names) - 1))
            return
        self.beginResetModel()
        self._projects, self._lines = projects, lines
        self.endResetModel()

    def project_at(self, index: Index) -> Project | None:
        """Return the project of a line."""
        return self._projects[index.row()] if index.isValid() else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of projects."""
        return 0 if parent.isValid() else len(self._projects)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that lines can be chosen and checked."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return (
            Qt.ItemFlag.ItemIsEnabled
            | Qt.ItemFlag.ItemIsSelectable
            | Qt.ItemFlag.ItemIsUserCheckable
            | Qt.ItemFlag.ItemNeverHasChildren
        )

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return name and finish, or the check mark."""
        project = self.project_at(index)
        if project is None:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            line = self._lines.get(project.name, "")
            return f"{project.name}\n{line}" if line else project.name
        if role == Qt.ItemDataRole.ForegroundRole and project.name in self._late:
            return QBrush(QColor(self.colours.closing_word))
        if role == Qt.ItemDataRole.DecorationRole:
            return self._mark(project.name)
        if role == Qt.ItemDataRole.ToolTipRole:
            return "\n".join(filter(None, (self._lines.get(project.name, ""), project.note)))
        if role == Qt.ItemDataRole.CheckStateRole:
            return CHECKED if project.active else Qt.CheckState.Unchecked
        if role == Qt.ItemDataRole.AccessibleTextRole:
            state = self.tr("planned") if project.active else self.tr("set aside")
            return f"{project.name}, {state}, {self._lines.get(project.name, '')}"
        return None

    def _mark(self, name: str) -> QIcon | None:
        if name in self._late:
            return state_icon("late", self.colours)
        return state_icon("kept", self.colours) if name in self._kept else None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Ask for a project to be switched; the model changes when the book has."""
        project = self.project_at(index)
        if project is None or role != Qt.ItemDataRole.CheckStateRole:
            return False
        self.switched.emit(project.name, Qt.CheckState(value) is CHECKED)
        return True


@lru_cache(maxsize=8)
def state_icon(state: str, colours: Colours) -> QIcon:
    """Return a ring for what keeps its date, a bracket for what is late."""
    pixmap = QPixmap(MARK * 2, MARK * 2)
    pixmap.setDevicePixelRatio(2)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if state == "late":
        painter.setPen(QPen(colours.colour("closing_word"), 2.2))
        painter.drawPolyline([QPointF(4, 2), QPointF(9, 2), QPointF(9, 12), QPointF(4, 12)])
    else:
        painter.setPen(QPen(colours.colour("drying_word"), 2.2))
        painter.drawEllipse(QPointF(7, 7), 4.5, 4.5)
    painter.end()
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)  # never tinted
    return icon


class Wrapping(ChosenRows):
    """Asks for the height of the lines that are painted: the view forgets what lies around."""

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the size in which every line has its place."""
        narrow = QStyleOptionViewItem(option)
        if option.rect.isValid():
            narrow.rect = option.rect.adjusted(0, 0, -AROUND, 0)
        return super().sizeHint(narrow, index)


class ProjectPanel(QWidget):
    """The list, and below it the date and weight of the chosen project."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.model = ProjectsModel(self)
        self.model.switched.connect(self._switch)
        self.view = QListView()
        self.view.setModel(self.model)
        self.view.setWordWrap(True)
        self.view.setItemDelegate(Wrapping(self.view))
        self.view.setSpacing(2)
        self.view.setIconSize(QSize(MARK, MARK))
        self.view.setFrameShape(QListView.Shape.NoFrame)
        self.view.viewport().setAutoFillBackground(False)
        self.view.setResizeMode(QListView.ResizeMode.Adjust)
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.view.setAccessibleName(self.tr("Projects; the check mark says which are planned"))
        self.view.selectionModel().currentChanged.connect(self._show_chosen)
        self.dated = QCheckBox(self.tr("Finish &by"))
        self.date = DateField(self.tr("Date of the project"))
        self.date.setDate(QDate.currentDate().addDays(28))
        self.weight = QSpinBox()
        self.weight.setRange(1, 1000)
        self.weight.setKeyboardTracking(False)
        self.weight.setToolTip(
            self.tr("How much a day late of this project weighs against a day of another")
        )
        self.message = MessageLabel()
        self.none = text(self.tr("None yet"), size=0.95)
        self.form = QWidget()
        form = QFormLayout(self.form)
        form.setContentsMargins(0, 0, 0, 0)
        form.addRow(self.dated)
        form.addRow(self.date)
        form.addRow(field_label(self.tr("Weight"), self.weight), self.weight)
        form.addRow(self.message)
        self.form.setEnabled(False)
        self.dated.toggled.connect(self._set_date)
        self.date.day_changed.connect(self._set_date)
        self.weight.valueChanged.connect(self._set_weight)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text(self.tr("Projects"), bold=True))
        column.addWidget(self.none)
        column.addWidget(self.view, 1)
        column.addWidget(self.form)

    def set_colours(self, colours: Colours) -> None:
        """Say what is late in another colour."""
        self.model.colours = colours
        self.view.viewport().update()

    def show_book(self, picture: PlanSnapshot | None) -> None:
        """Show the projects of the open book, and when the plan finishes them."""
        book = self._session.book
        projects = book.projects if book else ()
        lines: dict[str, str] = {}
        late: set[str] = set()
        kept: set[str] = set()
        if picture is not None:
            for name, minute in picture.plan.finishes:
                lines[name], state = finish_lines(picture, name, minute)
                (kept if state == "kept" else late if state == "late" else set()).add(name)
            for missed in missed_of(picture):
                told = missed_line(missed, picture)
                if missed.model or missed.project not in late:
                    lines[missed.project] = f"{lines.get(missed.project, '')}\n⚠ {told}".strip()
                late.add(missed.project)
        for project in projects:
            if not project.active:
                lines[project.name] = self.tr("set aside")
        self.model.show_projects(projects, lines, frozenset(late), frozenset(kept - late))
        self.view.scheduleDelayedItemsLayout()  # another line may make an entry higher
        self.none.setVisible(not projects)
        self.form.setVisible(bool(projects))
        if projects and not self.view.currentIndex().isValid():
            self.view.setCurrentIndex(self.model.index(0))
        self._show_chosen()

    def _chosen(self) -> Project | None:
        return self.model.project_at(self.view.currentIndex())

    def _show_chosen(self) -> None:
        project = self._chosen()
        self.form.setEnabled(project is not None)
        self.message.say("")
        if project is None:
            return
        blocked = [QSignalBlocker(box) for box in (self.dated, self.date, self.weight)]
        self.dated.setChecked(project.target is not None)
        self.date.setEnabled(project.target is not None)
        if project.target is not None:
            on = project.target
            self.date.setDate(QDate(on.year, on.month, on.day))
        self.weight.setValue(project.weight)
        del blocked

    def _switch(self, name: str, active: bool) -> None:
        self._edit(lambda book: edits.activate(book, name, active))

    def _set_date(self) -> None:
        project = self._chosen()
        if project is not None:
            read = self.date.date()
            target = date(read.year(), read.month(), read.day()) if self.dated.isChecked() else None
            self._edit(lambda book: edits.set_target(book, project.name, target))

    def _set_weight(self, weight: int) -> None:
        project = self._chosen()
        if project is not None:
            self._edit(lambda book: edits.set_weight(book, project.name, weight))

    def _edit(self, make: Callable[..., edits.Edit]) -> None:
        refused = self._session.attempt(make)
        self.message.say(refused.mend if refused else "")


def finish_lines(picture: PlanSnapshot, name: str, minute: int) -> tuple[str, str]:
    """Return by when a project is wanted and when it is done, and "kept", "late" or ""."""
    zone, now = picture.zone, picture.plan.now
    stuck = sum(unplaced.key.project == name for unplaced in picture.plan.unplaced)
    if stuck:
        return words.tr("not done; without a place: {n}").format(n=stuck), "late"
    done = words.tr("done {time}").format(
        time=words.when(minute, zone, now)
        if words.day_of(minute, zone) == words.day_of(now, zone)
        else words.day_of(minute, zone)
    )
    target = next((one.target for one in picture.book.projects if one.name == name), None)
    if target is None:
        return done, ""
    over = minute - picture.calendar.day_end(target)
    by = words.tr("by {date}").format(date=words.day(target))
    told = words.tr("{length} late") if over > 0 else words.tr("{length} in hand")
    state = "late" if over > 0 else "kept"
    return f"{done}\n{by}\n{told.format(length=days_or_less(abs(over)))}", state


def days_or_less(minutes: int) -> str:
    """Return a length of time, whole days where there is at least one."""
    days = minutes // (24 * 60)
    if days < 1:
        return words.span(minutes)
    return words.count(days, words.tr("{n} day"), words.tr("{n} days"))
