"""What can be wished of the chosen piece of work, as commands with keys of their own."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from app.service import pins, wishes
from app.window import reasons, words
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.wishes.choice_list import Choose
from app.window.wishes.conflict_sentence import stretch_name
from app.window.wishes.trial import AskedWish, WishTrial
from planner.bench import Stretch
from planner.evening import log_entries
from planner.values.moment import Interval
from planner.values.plan import PassKey

STRETCHES_OFFERED = 30


class WishActions(QObject):
    """Actions on the chosen piece; each wish is tried before it is written.

    Signals
    -------
    said(str)
        Something about a wish that cannot be made, "" for nothing.
    """

    said = Signal(str)

    def __init__(self, session: Session, home: QWidget) -> None:
        super().__init__(home)
        self._session, self._home = session, home
        self._key: PassKey | None = None
        self.trial = WishTrial(session, self)
        self.trial.began.connect(lambda: self.said.emit(self.tr("Trying it…")))
        self.trial.kept.connect(lambda _name: self.said.emit(""))
        self.trial.refused.connect(self.said)
        self.pin = self._action(self.tr("&Pin it where it stands"), self._pin, "P")
        self.pin_to = self._action(self.tr("Pin it to a &session…"), self._pin_to, "S")
        self.sooner = self._action(self.tr("A session s&ooner"), partial(self._by, -1), "[")
        self.later = self._action(self.tr("A session &later"), partial(self._by, 1), "]")
        self.not_before = self._action(self.tr("&Not before…"), self._not_before, "N")
        self.beside = self._action(self.tr("&Together with…"), self._beside, "T")
        self.unpin = self._action(self.tr("Take its &wishes back"), self._unpin, "Shift+P")
        self.early = self._action(self.tr("This vehicle as &early as it can be"), self._early, "F")
        self.first = self._action(
            self.tr("Begin no other &before this vehicle is finished"), self._first, "Shift+F"
        )
        self.early.setCheckable(True)
        self.first.setCheckable(True)
        session.edited.connect(self._refresh)
        self.choose(None)

    def _action(self, name: str, act: Callable[[], object], keys: str) -> QAction:
        action = QAction(name, self)
        action.setShortcut(QKeySequence(keys))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(lambda _on=False: act())
        self._home.addAction(action)
        return action

    def all(self) -> list[QAction]:
        """Return every action, in the order of the menu."""
        return [
            self.pin,
            self.pin_to,
            self.sooner,
            self.later,
            self.not_before,
            self.beside,
            self.unpin,
            self.early,
            self.first,
        ]

    def fill(self, menu: QMenu) -> None:
        """Put the actions into a menu."""
        *wishes_, first = self.all()
        menu.addActions(wishes_)
        menu.addSeparator()
        menu.addAction(first)

    def choose(self, key: PassKey | None) -> None:
        """Speak of another piece of work from now on."""
        if key != self._key:
            self.said.emit("")
        self._key = key
        self._refresh()

    def drop_on(self, key: PassKey, interval: Interval) -> None:
        """Pin a pass to the stretch that it was carried to."""
        stretch = self._stretch_at(interval.start)
        if stretch is not None:
            self._wish_in(key, stretch)

    def _refresh(self) -> None:
        key, book = self._key, self._session.book
        known = key is not None and book is not None and log_entries.knows(book, key)
        for action in self.all():
            action.setEnabled(known)
        if known and key is not None and book is not None:
            self.unpin.setEnabled(bool(pins.wishes_of(book, key)))
            project = book.project(key.project)
            self.early.setChecked(project.model(key.model).early)
            self.first.setChecked(project.pilot == key.model)

    def _stretch_at(self, minute: int) -> Stretch | None:
        picture = self._session.picture
        return picture.calendar.stretch_at(minute) if picture else None

    def _standing(self) -> tuple[PlanSnapshot, PassKey, Stretch] | None:
        """Return the plan, the chosen pass and the stretch that it stands in."""
        picture, key = self._session.picture, self._key
        placed = picture.plan.placement(key) if picture and key else None
        if picture is None or key is None or placed is None:
            self.said.emit(self.tr("This piece of work has no place in the plan."))
            return None
        stretch = picture.calendar.stretch_at(placed.start)
        if stretch is None:
            self.said.emit(self.tr("It was done outside bench time and moves no more."))
            return None
        return picture, key, stretch

    def _wish_in(self, key: PassKey, stretch: Stretch) -> None:
        make = partial(pins.pin_to, key=key, stretch=stretch)
        self.trial.ask(AskedWish(make, key, stretch.interval))

    def _pin(self) -> None:
        standing = self._standing()
        if standing is not None:
            self._wish_in(standing[1], standing[2])

    def _by(self, way: int) -> None:
        standing = self._standing()
        if standing is None:
            return
        picture, key, stretch = standing
        start, now = stretch.interval.start, self._session.now
        other = pins.next_stretch(picture.calendar, start, way, now)
        if other is None:
            self.said.emit(self.tr("There is no session before this one."))
        else:
            self._wish_in(key, other)

    def _pin_to(self) -> None:
        stretch = self._ask_stretch(self.tr("Pin it to a session"), self.tr("In which session?"))
        if stretch is not None and self._key is not None:
            self._wish_in(self._key, stretch)

    def _not_before(self) -> None:
        key = self._key
        stretch = self._ask_stretch(self.tr("Not before"), self.tr("Not before which session?"))
        if stretch is not None and key is not None:
            start = stretch.interval.start
            self.trial.ask(AskedWish(lambda book: pins.not_before(book, key, start), key))

    def _beside(self) -> None:
        key, picture = self._key, self._session.picture
        if key is None or picture is None:
            return
        other = self._ask(
            self.tr("Together with"),
            self.tr("In one session with which piece of work?"),
            _companions(picture, key),
        )
        if other is not None:
            self.trial.ask(AskedWish(lambda book: pins.beside(book, key, other), key))

    def _unpin(self) -> None:
        key = self._key
        if key is not None:
            self.said.emit("")
            self._session.attempt(lambda book: pins.unpin(book, key))

    def _early(self) -> None:
        key, book = self._key, self._session.book
        if key is None or book is None:
            return
        early = "" if book.project(key.project).model(key.model).early else key.model
        self.trial.ask(AskedWish(lambda old: wishes.set_first(old, key.project, early, "")))
        self._refresh()

    def _first(self) -> None:
        key, book = self._key, self._session.book
        if key is None or book is None:
            return
        pilot = "" if book.project(key.project).pilot == key.model else key.model
        self.trial.ask(AskedWish(lambda old: wishes.set_pilot(old, key.project, pilot)))
        self._refresh()

    def _ask_stretch(self, title: str, question: str) -> Stretch | None:
        picture = self._session.picture
        if picture is None:
            return None
        options: list[tuple[str, Stretch]] = []
        at: Stretch | None = picture.calendar.next_stretch(self._session.now)
        while at is not None and len(options) < STRETCHES_OFFERED:
            options.append((stretch_name(picture, at.interval), at))
            at = picture.calendar.next_stretch(at.interval.end)
        found = self._ask(title, question, options)
        return found if isinstance(found, Stretch) else None

    def _ask(self, title: str, question: str, options: list[tuple[str, Any]]) -> Any:
        dialog = Choose(title, question, options, self._home)
        chosen = dialog.value() if dialog.exec() else None
        dialog.deleteLater()
        return chosen


def _companions(picture: PlanSnapshot, key: PassKey) -> list[tuple[str, PassKey]]:
    """Return the steps of the project that it could share a stretch with, most alike first."""
    mine = next((piece for piece in picture.strip.pieces if piece.key == key), None)
    found = {
        piece.key: piece
        for piece in picture.strip.pieces
        if piece.key.project == key.project
        and piece.key.coat == 1
        and piece.key[1:3] != key[1:3]
        and not piece.logged
    }

    def unlike(piece: Any) -> tuple[bool, bool, str]:
        coating = mine.coating if mine else ""
        stage = mine.stage if mine else None
        return piece.coating != coating, piece.stage is not stage, reasons.key_name(piece.key)

    return [
        (words.capital(reasons.key_name(piece.key)), piece.key)
        for piece in sorted(found.values(), key=unlike)
    ]
