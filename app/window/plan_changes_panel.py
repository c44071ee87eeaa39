"""What the last change moved, and the new finish."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice
from zoneinfo import ZoneInfo

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QListWidget, QVBoxLayout, QWidget

from app.service.plan_changes import PlanMove
from app.window import reasons, words
from app.window.labels import text
from app.window.message_translation import edit_name, translated
from app.window.plan_snapshot import PlanChange, PlanSnapshot
from planner.values.plan import PassKey

AT_ONCE = 24  # so many lines are put into words at a time: a few milliseconds


class MovedPanel(QWidget):
    """A sentence, and a list of the pieces of work that stand elsewhere now."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.summary = text(self.tr("Change the air or the evenings, and see what it does."))
        self.list = QListWidget()
        self.list.setFrameShape(QListWidget.Shape.NoFrame)
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        # Hundreds of lines are laid out a few at a time, between other things.
        self.list.setLayoutMode(QListWidget.LayoutMode.Batched)
        self.list.setBatchSize(AT_ONCE)
        self.list.setAccessibleName(self.tr("What moved"))
        self.list.setFixedHeight(190)
        self.list.hide()
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
        column.addWidget(self.list)

    def show_change(self, change: PlanChange) -> None:
        """Show what a change moved; a first plan moved nothing."""
        if change.old is None or not change.cause:
            return
        zone, now = change.new.zone, change.new.plan.now
        self.summary.setText(" ".join(self._sentences(change, zone, now)))
        self.list.clear()
        self.list.setVisible(bool(change.moves))
        self._lines = (_line(move, change.new, zone, now) for move in change.moves)
        self._rest = []
        self.list.addItems(list(islice(self._lines, AT_ONCE)))
        self._later.start()

    def _go_on(self) -> None:
        """Put more lines into words; they come into the list all at once."""
        more = list(islice(self._lines, AT_ONCE))
        self._rest += more
        if more:
            self._later.start()
        elif self._rest:
            self.list.addItems(self._rest)
            self._rest = []

    def _sentences(self, change: PlanChange, zone: ZoneInfo, now: int) -> list[str]:
        told = [
            self.tr("{cause}:").format(cause=cause_words(change.cause)),
            words.count(
                len(change.moves),
                self.tr("{n} piece of work moved."),
                self.tr("{n} pieces of work moved."),
            )
            if change.moves
            else self.tr("nothing moved."),
        ]
        assert change.old is not None
        before = dict(change.old.plan.finishes)
        for name, minute in change.new.plan.finishes:
            told.append(_finish(name, before.get(name), minute, zone, now))
        return told


def cause_words(cause: str) -> str:
    """Return what was done, with a pass told by its title rather than by its key."""
    told = edit_name(cause)
    found = re.fullmatch(r"(.*): ([^/]+)/([^/]+)/([^/]+)#(\d+)", told)
    if found is None:
        return words.capital(told)
    what, project, model, step, coat = found.groups()
    name = words.tr("{what}: {work}").format(
        what=words.capital(what), work=reasons.key_name(PassKey(project, model, step))
    )
    if coat == "1":
        return name
    return words.tr("{work}, coat {n}").format(work=name, n=coat)


def _finish(name: str, before: int | None, after: int, zone: ZoneInfo, now: int) -> str:
    at = words.when(after, zone, now)
    if before is None or before == after:
        return words.tr("{project} is finished {time}.").format(project=name, time=at)
    gap = words.span(abs(after - before))
    sentence = (
        words.tr("{project} is finished {time}, {length} later.")
        if after > before
        else words.tr("{project} is finished {time}, {length} sooner.")
    )
    return sentence.format(project=name, time=at, length=gap)


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
