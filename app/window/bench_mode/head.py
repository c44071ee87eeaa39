"""The head of the bench mode: the session as a strip, what is to do, the time, what is left."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.window import words
from app.window.bench_mode.job_panel import Look
from app.window.bench_mode.large_text import CLOCK, HEADING, PLAIN, SMALL
from app.window.bench_mode.strip import StretchStrip
from app.window.plan_snapshot import PlanSnapshot


def head(look: Look, picture: PlanSnapshot | None, now: int, title: str) -> QWidget:
    """Return the head; nothing is in it until there is a plan."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(8))
    if picture is None:
        return holder
    column.addWidget(StretchStrip(look.colours, look.scale, picture.sheet, now))
    line = QHBoxLayout()
    line.setContentsMargins(look.pixels(28), 0, look.pixels(28), 0)
    line.setSpacing(look.pixels(24))
    line.addWidget(look.label(title, HEADING, bold=True), 1)
    clock = look.label(words.clock(now, picture.zone), CLOCK, bold=True)
    clock.setMinimumWidth(look.pixels(190))
    line.addWidget(clock, 0, Qt.AlignmentFlag.AlignRight)
    line.addLayout(_left(look, picture, now))
    column.addLayout(line)
    return holder


def _left(look: Look, picture: PlanSnapshot, now: int) -> QVBoxLayout:
    """Return the minutes left, and below them the end of the session."""
    whole, zone = picture.sheet.interval, picture.zone
    if whole.start > now:
        first = words.tr("no bench time")
        second = words.tr("next {time}").format(time=words.when(whole.start, zone, now))
    else:
        first = words.tr("{length} left").format(length=words.span(max(0, whole.end - now)))
        second = words.tr("until {time}").format(time=words.clock(whole.end, zone))
    column = QVBoxLayout()
    column.setSpacing(0)
    column.addStretch(1)
    for told, size, colour in ((first, PLAIN, "ink"), (second, SMALL, "soft")):
        label = look.label(told, size, colour=colour)
        label.setMinimumWidth(look.pixels(276))
        column.addWidget(label)
    column.addStretch(1)
    return column
