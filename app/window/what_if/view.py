"""The What if view: the scenarios side by side, and a form to try another."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from app.service.what_if import Scenario
from app.window.chosen_rows import mark_chosen_rows
from app.window.forms.column_stretch import Breadth
from app.window.labels import MessageLabel, NarrowCombo, field_label, text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.what_if.change_form import ChangeForm
from app.window.what_if.change_forms import FORMS
from app.window.what_if.model import ScenarioModel
from app.window.what_if.runner import Runner
from planner.values.refusal import Refused


class WhatIfView(QScrollArea):
    """Try, compare, keep or drop; nothing is written before something is kept."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.runner = Runner(session, self)
        self.model = ScenarioModel(self)
        self.table = self._make_table()
        self.keep = self._button(self.tr("&Keep it"), self._keep, "Ctrl+Return")
        self.drop = self._button(self.tr("&Drop it"), self._drop, "Ctrl+Del")
        self.remark = MessageLabel()
        self.kind = NarrowCombo(20)
        self.stack = QStackedWidget()
        self.forms: list[ChangeForm] = [form() for form in FORMS]
        for form in self.forms:
            self.kind.addItem(form.title)
            self.stack.addWidget(form)
        self.kind.setAccessibleName(self.tr("What to try"))
        self.kind.currentIndexChanged.connect(self._show_form)
        self.try_it = self._button(self.tr("&Try it"), self._try, "Ctrl+T")
        self.with_it = self._button(
            self.tr("Try it to&gether with the chosen one"), self._try_with, "Ctrl+Shift+T"
        )
        self.message = MessageLabel()
        self._lay_out()
        self.runner.changed.connect(self._show)
        self._show_form(0)
        self._show()

    def _make_table(self) -> QTreeView:
        table = QTreeView()
        table.setModel(self.model)
        mark_chosen_rows(table)
        table.setRootIsDecorated(False)
        table.setAlternatingRowColors(True)
        table.setAccessibleName(self.tr("The present plan, and what was tried"))
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setMinimumHeight(190)
        self.breadth = Breadth(table)
        table.selectionModel().currentChanged.connect(lambda *_: self._mark())
        delete = QAction(self.tr("Drop it"), table)
        delete.setShortcut(QKeySequence(QKeySequence.StandardKey.Delete))
        delete.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        delete.triggered.connect(lambda _on=False: self._drop())
        table.addAction(delete)
        return table

    def _button(self, name: str, act: Callable[[], None], keys: str) -> QPushButton:
        button = QPushButton(name)
        button.clicked.connect(lambda _on=False: act())
        action = QAction(name, self)
        action.setShortcut(QKeySequence(keys))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(partial(button.click))
        self.addAction(action)
        button.setToolTip(QKeySequence(keys).toString(QKeySequence.SequenceFormat.NativeText))
        return button

    def _lay_out(self) -> None:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(24, 14, 24, 20)
        column.setSpacing(8)
        column.addWidget(text(self.tr("What if"), size=1.9, bold=True))
        explained = self.tr(
            "Try changes beside the plan and compare them. Nothing changes until you keep "
            "one, and that can be undone."
        )
        column.addWidget(text(explained))
        column.addWidget(self.table, 1)
        column.addWidget(self.remark)
        column.addLayout(_line(self.keep, self.drop))
        column.addWidget(text(self.tr("Try a change"), size=1.25, bold=True))
        kind = QHBoxLayout()
        kind.addWidget(field_label(self.tr("&What to try"), self.kind))
        kind.addWidget(self.kind)
        kind.addStretch(1)
        column.addLayout(kind)
        form = QHBoxLayout()
        form.addWidget(self.stack)
        form.addStretch(1)
        column.addLayout(form)
        column.addWidget(self.message)
        column.addLayout(_line(self.try_it, self.with_it))
        self.setWidget(holder)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setAccessibleName(self.tr("What if"))
        self.setFocusProxy(self.kind)

    def set_colours(self, _colours: Colours) -> None:
        """Follow the palette, which Qt sets on its own controls."""

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Offer what the book of the newest plan holds."""
        book = self._session.book or picture.book
        for form in self.forms:
            form.show_book(book, self._session.now)
        self.runner.begin()
        self._show()

    def _show_form(self, number: int) -> None:
        self.stack.setCurrentIndex(number)
        for at, form in enumerate(self.forms):  # as high as the one in front, not the highest
            across = form.sizePolicy().horizontalPolicy()
            kept = QSizePolicy.Policy.Preferred if at == number else QSizePolicy.Policy.Ignored
            form.setSizePolicy(across, kept)
        self.stack.adjustSize()
        self.message.say("")

    def _show(self) -> None:
        row = self.table.currentIndex().row()
        known = self.model.rowCount()
        self.model.show_tried(
            self.runner.present, tuple(self.runner.tried), self._session.zone, self._session.now
        )
        rows = self.model.rowCount()
        if rows != known or row < 0:
            at = rows - 1 if rows > known else min(max(row, 0), rows - 1)
            self.table.setCurrentIndex(self.model.index(at, 0))
        self.breadth.share()
        self._mark()

    def _chosen(self) -> Scenario | None:
        tried = self.model.row_at(self.table.currentIndex())
        return tried.scenario if tried else None

    def _mark(self) -> None:
        tried = self.model.row_at(self.table.currentIndex())
        self.keep.setEnabled(tried is not None and not tried.why)
        self.drop.setEnabled(tried is not None)
        self.with_it.setEnabled(tried is not None)
        self.remark.say(self.model.remark(tried))

    def _try(self) -> None:
        self._add(())

    def _try_with(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self._add((chosen,))

    def _add(self, onto: tuple[Scenario, ...]) -> None:
        form = self.forms[self.kind.currentIndex()]
        try:
            changes = tuple(change for scenario in onto for change in scenario.changes)
            name = self.tr(" and ").join([*(scenario.name for scenario in onto), form.name()])
            self.runner.add(Scenario(name, (*changes, form.change())))
        except Refused as problem:
            self.message.say(problem.mend)
        else:
            self.message.say("")

    def _keep(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            refused = self.runner.keep(chosen)
            if refused is not None:
                self.remark.say(str(refused))

    def _drop(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.runner.drop(chosen)


def _line(*widgets: QWidget) -> QHBoxLayout:
    line = QHBoxLayout()
    for widget in widgets:
        line.addWidget(widget)
    line.addStretch(1)
    return line
