"""What the last change moved, and the new finish."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date
from itertools import islice
from zoneinfo import ZoneInfo

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QListWidget, QPushButton, QVBoxLayout, QWidget

from app.service.plan_changes import PlanMove
from app.window import reasons, words
from app.window.chosen_rows import mark_chosen_rows
from app.window.labels import text
from app.window.message_translation import edit_name, translated
from app.window.moved_words import moved_lines
from app.window.plan_snapshot import PlanChange, PlanSnapshot
from planner.values.plan import PassKey

_KEPT_DATE = re.compile(  # as the journal keeps dates, some with the day of the week before them
    r"\b(?:(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) )?(\d{4}-[01]\d-[0-3]\d)\b"
)
AT_ONCE = 24  # so many lines are put into words at a time: a few milliseconds


class MovedPanel(QWidget):
    """Three lines, and a list of the work on another evening now for whoever asks."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.summary = text(self.tr("Change the air or the evenings, and see what it does."))
        self.list = QListWidget()
        mark_chosen_rows(self.list)
        self.list.setFrameShape(QListWidget.Shape.NoFrame)
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        # Hundreds of lines are laid out a few at a time, between other things.
        self.list.setLayoutMode(QListWidget.LayoutMode.Batched)
        self.list.setBatchSize(AT_ONCE)
        self.list.setAccessibleName(self.tr("What moved"))
        self.list.setFixedHeight(190)
        self.list.hide()
        self.all = QPushButton(self.tr("Show &all that moved"))
        self.all.setCheckable(True)
        self.all.setFlat(True)
        self.all.toggled.connect(self._show_all)
        self.all.hide()
        self._moves: list[PlanMove] = []
        self.list.viewport().setAutoFillBackground(False)
        self._lines: Iterator[str] = iter(())
        self._rest: list[str] = []
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(0)
        self._later.timeout.connect(self._go_on)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text(self.tr("What moved"), bold=True))
        column.addWidget(self.summary)
        column.addWidget(self.all)
        column.addWidget(self.list)

    def show_change(self, change: PlanChange) -> None:
        """Show what a change moved; a first plan moved nothing."""
        if change.old is None or not change.cause:
            return
        zone, now, calendar = change.new.zone, change.new.plan.now, change.new.calendar
        self._moves = [move for move in change.moves if move.to_other_stretch(calendar)]
        self.summary.setText(self._sentences(change))
        self.list.clear()
        self.all.setVisible(bool(self._moves))
        self._show_all()
        self._lines = (_line(move, change.new, zone, now) for move in self._moves)
        self._rest = []
        self.list.addItems(list(islice(self._lines, AT_ONCE)))
        self._later.start()

    def _show_all(self) -> None:
        self.list.setVisible(bool(self._moves) and self.all.isChecked())

    def _go_on(self) -> None:
        """Put more lines into words; they come into the list all at once."""
        more = list(islice(self._lines, AT_ONCE))
        self._rest += more
        if more:
            self._later.start()
        elif self._rest:
            self.list.addItems(self._rest)
            self._rest = []

    def _sentences(self, change: PlanChange) -> str:
        cause = self.tr("{cause}:").format(cause=cause_words(change.cause))
        lines = moved_lines(change)
        if not self._moves:
            lines.insert(0, self.tr("nothing moved to another evening."))
        return "\n".join([f"{cause} {lines[0]}", *lines[1:]])


def cause_words(cause: str) -> str:
    """Return what was done as a sentence, with a pass told by its title rather than by its key."""
    return words.capital(deed_words(cause))


def deed_words(cause: str) -> str:
    """Return what was done, to be put into a sentence."""
    told = _KEPT_DATE.sub(lambda on: words.day(date.fromisoformat(on[1])), edit_name(cause))
    found = re.fullmatch(r"(.*): ([^/]+)/([^/]+)/([^/]+)#(\d+)", told)
    if found is None:
        return told
    what, project, model, step, coat = found.groups()
    name = words.tr("{what}: {work}").format(
        what=what, work=reasons.key_name(PassKey(project, model, step))
    )
    if coat == "1":
        return name
    return words.tr("{work}, coat {n}").format(work=name, n=coat)


def _line(move: PlanMove, picture: PlanSnapshot, zone: ZoneInfo, now: int) -> str:
    """Return from where to where a pass moved, and what holds it there."""
    name = words.capital(reasons.key_name(move.key))
    none = words.tr("no place")
    before = none if move.before is None else words.when(move.before, zone, now)
    after = none if move.after is None else words.when(move.after, zone, now)
    return words.tr("{work}: {before} → {after}. {why}").format(
        work=name, before=before, after=after, why=_why(move, picture, zone, now)
    )


def _why(move: PlanMove, picture: PlanSnapshot, zone: ZoneInfo, now: int) -> str:
    placed = picture.placed.get(move.key)
    if placed is not None:
        return reasons.reason_sentence(placed.reason, zone, now)
    found = next(
        (unplaced.why for unplaced in picture.plan.unplaced if unplaced.key == move.key), ""
    )
    return words.capital(translated(found))
