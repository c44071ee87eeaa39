"""The Wishes view: every pin, which vehicle comes first, and what counts most."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QHeaderView,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QRadioButton,
    QScrollArea,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from app.service import pins, wishes
from app.window.chosen_rows import mark_chosen_rows
from app.window.emptying import empty
from app.window.labels import MessageLabel, NarrowCombo, text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.wishes.care_boxes import CareBoxes
from app.window.wishes.model import WishModel
from app.window.wishes.trial import AskedWish, WishTrial
from app.window.wishes.wish_wording import level_name
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.wishes import USUAL_ORDER, Level, Staying

LEVEL = Qt.ItemDataRole.UserRole


class WishesView(QScrollArea):
    """Three lists, each changed in place, and what a new plan may move.

    Signals
    -------
    show_wanted(PassKey)
        A piece of work is to be shown on the timeline.
    """

    show_wanted = Signal(object)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._trial = WishTrial(session, self)
        self.model = WishModel(self)
        self.table = self._make_table()
        self.remove = self._button(self.tr("&Take it back"), self._remove)
        self.show_it = self._button(self.tr("&Show it on the timeline"), self._show)
        self.none = text(
            self.tr(
                "No wishes yet. In the plan, choose a piece of work and press P to pin it, "
                "N for “not before”, T for “together with”."
            )
        )
        self.pilots = QGridLayout()
        self.message = MessageLabel()
        self.order = QListWidget()
        mark_chosen_rows(self.order)
        self.care = CareBoxes(session)
        self.up = self._button(self.tr("Counts &more"), partial(self._move, -1), "Alt+Up")
        self.down = self._button(self.tr("Counts &less"), partial(self._move, 1), "Alt+Down")
        self.usual = self._button(self.tr("&Usual order"), self._usual)
        self.near = QRadioButton(self.tr("&Keep close to the plan on screen"))
        self.earliest = QRadioButton(self.tr("E&arliest finish, whatever moves"))
        self.near.clicked.connect(partial(self._stay, Staying.CLOSE))
        self.earliest.clicked.connect(partial(self._stay, Staying.EARLIEST))
        self._lay_out()
        self._trial.refused.connect(self._refused)
        self._trial.kept.connect(lambda _name: self.message.say(""))

    def _make_table(self) -> QTreeView:
        table = QTreeView()
        table.setModel(self.model)
        mark_chosen_rows(table)
        table.setRootIsDecorated(False)
        table.setAlternatingRowColors(True)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setAccessibleName(self.tr("Wishes"))
        table.setMinimumHeight(150)
        table.header().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.header().setStretchLastSection(True)
        table.selectionModel().currentChanged.connect(lambda *_: self._mark())
        table.activated.connect(lambda _index: self._show())
        delete = QAction(self.tr("Take it back"), table)
        delete.setShortcut(QKeySequence(QKeySequence.StandardKey.Delete))
        delete.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        delete.triggered.connect(lambda _on=False: self._remove())
        table.addAction(delete)
        return table

    def _button(self, name: str, act: Callable[[], object], keys: str = "") -> QPushButton:
        button = QPushButton(name)
        button.clicked.connect(lambda _on=False: act())
        if keys:
            action = QAction(name, self)
            action.setShortcut(QKeySequence(keys))
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            action.triggered.connect(lambda _on=False: act())
            self.addAction(action)
            button.setToolTip(keys)
        return button

    def _lay_out(self) -> None:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(24, 14, 24, 20)
        column.setSpacing(8)
        column.addWidget(text(self.tr("Wishes"), size=1.9, bold=True))
        column.addWidget(self.none)
        column.addWidget(self.table)
        column.addLayout(_line(self.remove, self.show_it))
        column.addWidget(text(self.tr("One vehicle first"), size=1.25, bold=True))
        column.addWidget(
            text(
                self.tr(
                    "As early as it can be: the others fill the gaps while its paint "
                    "dries. Waited for: no other of its project begins before it is finished."
                )
            )
        )
        column.addLayout(self.pilots)
        column.addWidget(self.message)
        column.addWidget(text(self.tr("What counts most"), size=1.25, bold=True))
        column.addWidget(
            text(
                self.tr(
                    "Plans are compared in this order, top first. That everything has a "
                    "place comes before all of it."
                )
            )
        )
        self.order.setAccessibleName(self.tr("What counts, the most important first"))
        self.order.currentRowChanged.connect(lambda _row: self._mark())
        column.addWidget(self.order)
        column.addLayout(_line(self.up, self.down, self.usual))
        column.addWidget(text(self.tr("How sure a wait must be"), size=1.25, bold=True))
        column.addWidget(
            text(
                self.tr(
                    "What is ticked follows once the coat below is likely ready, because "
                    "it can be redone. All else waits until it surely is."
                )
            )
        )
        column.addWidget(self.care)
        column.addWidget(text(self.tr("What a new plan may move"), size=1.25, bold=True))
        column.addWidget(
            text(
                self.tr(
                    "Close: work moves to another evening only if that places more, is "
                    "less late or ends a project an evening sooner. Tonight moves only if "
                    "you accept it. Evenings that you printed or put into a calendar stay."
                )
            )
        )
        column.addWidget(self.near)
        column.addWidget(self.earliest)
        column.addStretch(1)
        self.setWidget(holder)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setAccessibleName(self.tr("Wishes"))
        self.setFocusProxy(self.table)

    def set_colours(self, _colours: Colours) -> None:
        """Follow the palette, which Qt sets on its own controls."""

    def show_picture(self, _picture: PlanSnapshot) -> None:
        """Show what the newest plan keeps."""
        self.show_book()

    def show_book(self) -> None:
        """Show what the book wishes."""
        book, picture = self._session.book, self._session.picture
        if book is None:
            return
        row = self.table.currentIndex().row()
        found = pins.wishes(book, picture.plan if picture else None)
        self.model.show_wishes(found, self._session.zone)
        self.none.setVisible(not found)
        self.table.setVisible(bool(found))
        for button in (self.remove, self.show_it):
            button.setVisible(bool(found))
        self.setFocusProxy(self.table if found else self.order)
        if found:
            self.table.setCurrentIndex(self.model.index(min(max(row, 0), len(found) - 1), 0))
        self._show_pilots()
        self._show_order(book.preferences.order)
        self.care.show_likely(book.preferences.likely)
        self._show_staying(book.preferences.staying)
        self._mark()

    def _show_staying(self, staying: Staying) -> None:
        """Tick what is chosen: Tab stops there, and the arrow keys lead to the other.

        Qt sees to that stop only once one of the two has had the focus.
        """
        for button, means in ((self.near, Staying.CLOSE), (self.earliest, Staying.EARLIEST)):
            chosen = staying is means
            button.setChecked(chosen)
            policy = Qt.FocusPolicy.StrongFocus if chosen else Qt.FocusPolicy.ClickFocus
            button.setFocusPolicy(policy)

    def _show_pilots(self) -> None:
        book = self._session.book
        assert book is not None
        focused = self.focusWidget()
        kept = focused.accessibleName() if isinstance(focused, QComboBox) else None
        empty(self.pilots)
        for row, project in enumerate(project for project in book.projects if project.active):
            box = self._first_box(project)
            name = text(project.name)  # it may be long, and has no key of its own
            name.setMaximumWidth(max(160, name.fontMetrics().horizontalAdvance(project.name) + 4))
            self.pilots.addWidget(name, row, 0)
            self.pilots.addWidget(box, row, 1)
            if box.accessibleName() == kept:
                box.setFocus()
        self.pilots.setColumnStretch(0, 3)
        self.pilots.setColumnStretch(1, 2)
        self.pilots.setColumnStretch(2, 2)

    def _first_box(self, project: Project) -> NarrowCombo:
        """Return what chooses a vehicle to be early or waited for, as it is now."""
        box = NarrowCombo(12)
        box.setAccessibleName(self.tr("First of {project}").format(project=project.name))
        box.addItem(self.tr("All together"), ("", ""))
        for model in project.models:
            early = self.tr("{model}, as early as it can be").format(model=model.name)
            box.addItem(early, (model.name, ""))
        for model in project.models:
            waited = self.tr("{model}, waited for").format(model=model.name)
            box.addItem(waited, (model.name, model.name))
        early = next((model.name for model in project.models if model.early), "")
        here = (project.pilot, project.pilot) if project.pilot else (early, "")
        known = [box.itemData(at) for at in range(box.count())]
        box.setCurrentIndex(known.index(here))
        box.activated.connect(partial(self._set_first, project.name, box))
        return box

    def _set_first(self, project: str, box: QComboBox, _row: int) -> None:
        model, pilot = box.currentData()
        self._trial.ask(AskedWish(lambda book: wishes.set_first(book, project, model, pilot)))

    def _refused(self, why: str) -> None:
        self.show_book()  # what was chosen is not so
        self.message.say(why)

    def _show_order(self, order: tuple[Level, ...]) -> None:
        chosen = self.order.currentItem()
        kept = chosen.data(LEVEL) if chosen else order[0]
        with QSignalBlocker(self.order):
            self.order.clear()
            for number, level in enumerate(order, start=1):
                told = self.tr("{number}. {what}").format(number=number, what=level_name(level))
                item = QListWidgetItem(told)
                item.setData(LEVEL, level)
                self.order.addItem(item)
            self.order.setCurrentRow(order.index(kept))
        rows = self.order.sizeHintForRow(0) * self.order.count()
        self.order.setFixedHeight(rows + 2 * self.order.frameWidth() + 4)

    def _mark(self) -> None:
        book = self._session.book
        here = self.model.row_at(self.table.currentIndex())
        self.remove.setEnabled(here is not None)
        self.show_it.setEnabled(here is not None)
        self.up.setEnabled(self.order.currentRow() > 0)
        self.down.setEnabled(0 <= self.order.currentRow() < self.order.count() - 1)
        self.usual.setEnabled(book is not None and book.preferences.order != USUAL_ORDER)

    def _move(self, by: int) -> None:
        item = self.order.currentItem()
        if item is not None:
            level = Level(item.data(LEVEL))
            self._session.attempt(lambda book: wishes.move_level(book, level, by))

    def _stay(self, staying: Staying, _on: bool = False) -> None:
        self._session.attempt(lambda book: wishes.stay(book, staying))

    def _usual(self) -> None:
        self._session.attempt(wishes.usual_order)

    def _remove(self) -> None:
        wish = self.model.row_at(self.table.currentIndex())
        if wish is not None:
            self._session.attempt(lambda book: pins.remove(book, wish.project, wish.pin))

    def _show(self) -> None:
        wish = self.model.row_at(self.table.currentIndex())
        if wish is not None:
            pin = wish.pin
            self.show_wanted.emit(PassKey(wish.project, pin.model, pin.step, pin.coat or 1))


def _line(*widgets: QWidget) -> QHBoxLayout:
    line = QHBoxLayout()
    for widget in widgets:
        line.addWidget(widget)
    line.addStretch(1)
    return line
