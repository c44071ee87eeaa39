"""The head of Tonight: the answer in one line, what it leaves, and the way to the bench."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.service.logbook import cups_now
from app.window import words
from app.window.emptying import empty
from app.window.labels import text
from app.window.missed_words import missed_line, missed_of
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.tonight_cards.evening_strip import EveningStrip
from planner.tonight import EveningAnswer

MISSED_TOLD = 2  # missed dates that are named
DAY = 24 * 60  # minutes
MAIN = 40  # height of the main act [pixels]


class Headline(QWidget):
    """What the evening comes to.

    Signals
    -------
    bench_wanted()
        The bench mode is asked for.
    """

    bench_wanted = Signal()

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self._colours = colours
        self.answer = text("", size=1.7, bold=True)
        self.when = text("", colour=colours.soft)
        self.sure = text("", bold=True)
        self.sure.hide()
        self._lines = QVBoxLayout()
        self._lines.setSpacing(2)
        self.strip = EveningStrip(colours)
        self.button = QPushButton(self.tr("Start at the bench (B)"))
        self.button.setToolTip(self.tr("One piece of work at a time, in large letters (F11)"))
        self.button.setMinimumHeight(MAIN)
        self.button.setStyleSheet(
            f"QPushButton {{ background: {colours.focus}; color: {colours.paper}; border: none; "
            "border-radius: 4px; padding: 4px 16px; font-weight: 600; }"
        )
        self.button.clicked.connect(self.bench_wanted)
        line = QHBoxLayout()
        column = QVBoxLayout()
        column.setSpacing(2)
        column.addWidget(self.answer)
        column.addWidget(self.when)
        column.addWidget(self.sure)
        column.addLayout(self._lines)
        line.addLayout(column, 1)
        line.addWidget(self.button, 0, Qt.AlignmentFlag.AlignTop)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 4)
        whole.setSpacing(8)
        whole.addLayout(line)
        whole.addWidget(self.strip)

    def show_sure(self, told: str) -> None:
        """Tell how sure the date is; "" while that is not known."""
        self.sure.setText(told)
        self.sure.setVisible(bool(told))

    def show_answer(self, picture: PlanSnapshot, answer: EveningAnswer) -> None:
        """Show what an evening comes to now."""
        late = bool(missed_of(picture))
        self.answer.setText(answer_words(picture, answer))
        palette = self.answer.palette()
        colour = self._colours.closing_word if late else self._colours.ink
        palette.setColor(self.answer.foregroundRole(), colour)
        self.answer.setPalette(palette)
        self.when.setText(" · ".join([*when_words(picture), *rest_words(picture, answer)]))
        empty(self._lines)
        self._tell_missed(picture)
        self._tell_cups(picture, picture.zone)
        self.strip.show_evening(picture)

    def _tell_missed(self, picture: PlanSnapshot) -> None:
        """Say which dates are missed, the worst ones by name."""
        colours, missed = self._colours, missed_of(picture)
        told = [
            words.tr("⚠ {missed}").format(missed=missed_line(one, picture))
            for one in missed[:MISSED_TOLD]
        ]
        if len(missed) > MISSED_TOLD:
            more = words.tr("⚠ {n} more dates are missed")
            told.append(more.format(n=len(missed) - MISSED_TOLD))
        for each in told:
            self._lines.addWidget(text(each, colour=colours.closing_word, bold=True))

    def _tell_cups(self, picture: PlanSnapshot, zone: ZoneInfo) -> None:
        for name, held in cups_now(picture.book, picture.sheet.now).items():
            told = words.tr("{airbrush} holds {coating} since {time}").format(
                airbrush=words.capital(name),
                coating=held.coating,
                time=words.clock(held.since, zone),
            )
            self._lines.addWidget(text(told, colour=self._colours.soft))


def answer_words(picture: PlanSnapshot, answer: EveningAnswer) -> str:
    """Return "25 jobs in 2 h 50 min. Done Wed 18 Mar.", and whether that is late."""
    if answer.jobs:
        jobs = words.count(answer.jobs, words.tr("{n} job"), words.tr("{n} jobs"))
        first = words.tr("{jobs} in {length}").format(jobs=jobs, length=words.span(answer.minutes))
    elif answer.done:
        first = words.tr("All done for tonight")
    else:
        first = words.tr("Nothing to do tonight")
    ends = dict(picture.plan.finishes)
    if not ends or picture.plan.unplaced:
        return words.tr("{first}.").format(first=first)
    end = max(ends.values())
    done = words.day_of(end, picture.zone)
    margin = _margin(picture)
    if margin is None:
        return words.tr("{first}. Done {day}.").format(first=first, day=done)
    told = (
        words.tr("{first}. Done {day}, {length} late.")
        if margin < 0
        else words.tr("{first}. Done {day}, {length} in hand.")
    )
    return told.format(first=first, day=done, length=_days(abs(margin)))


def _margin(picture: PlanSnapshot) -> int | None:
    """Return the least time in hand before a project's date, below 0 if one is late [min]."""
    found = []
    for name, end in picture.plan.finishes:
        target = picture.book.project(name).target
        if target is not None:
            found.append(picture.calendar.day_end(target) - end)
    return min(found, default=None)


def _days(minutes: int) -> str:
    days = minutes // DAY
    if days < 1:
        return words.span(minutes)
    return words.count(days, words.tr("{n} day"), words.tr("{n} days"))


def when_words(picture: PlanSnapshot) -> list[str]:
    """Return which evening it is, and how long it still goes on or how soon it begins."""
    sheet, zone = picture.sheet, picture.zone
    interval, now = sheet.interval, sheet.now
    hours = words.tr("{start}–{end}").format(
        start=words.clock(interval.start, zone), end=words.clock(interval.end, zone)
    )
    told = [words.day(sheet.on, long=True), hours]
    if interval.start <= now:
        told.append(words.tr("{length} left").format(length=words.span(interval.end - now)))
    else:
        told.append(words.tr("in {length}").format(length=words.span(interval.start - now)))
    return told


def rest_words(picture: PlanSnapshot, answer: EveningAnswer) -> list[str]:
    """Return fills, coats that stay wet, and what is done."""
    told = []
    if answer.fills:
        told.append(words.count(answer.fills, words.tr("{n} fill"), words.tr("{n} fills")))
    if answer.wet:
        told.append(
            words.count(
                answer.wet,
                words.tr("{n} coat stays wet overnight"),
                words.tr("{n} coats stay wet overnight"),
            )
        )
    if answer.done:
        told.append(words.tr("{n} done").format(n=answer.done))
    stuck = len(picture.plan.unplaced)
    if stuck:
        told.append(
            words.count(
                stuck,
                words.tr("{n} piece of work has no place yet"),
                words.tr("{n} pieces of work have no place yet"),
            )
        )
    return told
