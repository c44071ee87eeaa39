"""The menu of what is done to models, each by one command with its key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QDialog, QMenu, QWidget

from app.window.pages import lately
from app.window.session import Session
from planner.values.keys import ModelKey


class ModelActs(QObject):
    """Opens the dialogs on the open book; what they are made of is imported with the first."""

    def __init__(
        self, session: Session, window: QWidget, chosen: Callable[[], tuple[ModelKey, ...]]
    ) -> None:
        super().__init__(window)
        self._session, self._window, self._chosen = session, window, chosen
        tr = self.tr
        self.more = self._act(
            tr("&More vehicles…"), "Ctrl+Shift+N", "model_acts.vehicles_dialog:VehiclesDialog"
        )
        self.another = self._act(
            tr("&Paint another like this…"),
            "Ctrl+Shift+A",
            "model_acts.another_dialog:AnotherDialog",
        )
        self.order = self._act(
            tr("Change the &order…"),
            "Ctrl+Shift+R",
            "model_acts.order_dialog:OrderDialog",
            of_chosen=True,
        )
        self.reached = self._act(
            tr("How &far they are…"), "Ctrl+Shift+F", "model_acts.reached_dialog:ReachedDialog"
        )
        self.dates = self._act(
            tr("&Dates and priorities…"), "Ctrl+Shift+P", "model_acts.dates_dialog:DatesDialog"
        )
        self.mend = self._act(
            tr("Me&nd what is unsound"), "F8", "model_acts.mend_prompt:MendPrompt"
        )
        self.actions = (
            self.more,
            self.another,
            self.order,
            self.reached,
            self.dates,
            self.mend,
        )
        self.shown: QDialog | None = None
        self._opened = 0

    def fill(self, menu: QMenu) -> None:
        """Put the actions into a menu."""
        menu.addActions(list(self.actions))

    def _act(self, name: str, keys: str, where: str, *, of_chosen: bool = False) -> QAction:
        action = QAction(name, self)
        action.setShortcut(QKeySequence(keys))
        make = lately(where)
        action.triggered.connect(lambda _on=False: self._open(make, of_chosen=of_chosen))
        return action

    def _open(self, make: Callable[..., Any], *, of_chosen: bool) -> None:
        if self._session.book is None or self._session.path is None:
            return
        more = (self._chosen(),) if of_chosen else ()
        self.shown = make(self._session, self._window, *more)
        self._opened += 1
        self.shown.destroyed.connect(partial(self._gone, self._opened))
        if self.shown.isModal():
            self.shown.open()
        else:
            self.shown.show()

    def _gone(self, which: int, _dialog: object = None) -> None:
        if which == self._opened:  # not where another has been opened since
            self.shown = None
