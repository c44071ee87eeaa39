"""A short list to choose from by number keys, or a line to type; no aim is needed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from app.window.bench_mode.job_panel import Look
from app.window.bench_mode.large_text import LARGE, PLAIN, SMALL, PlaceLine, font_of

LINES = 9
ROOMY = 5  # more lines than this are written smaller


@dataclass(frozen=True)
class Line:
    """One line to choose: its words, smaller words below, and what choosing it does."""

    told: str
    below: str
    take: Callable[[], None]
    on: bool | None = None  # a tick box where it is not None


@dataclass(frozen=True)
class Asked:
    """A question in place of the job.

    ``typed`` takes a line that is typed, if one may be; ``letter`` is the key
    that begins typing, "" where typing begins at once.
    """

    title: str
    lines: tuple[Line, ...] = ()
    about: tuple[str, ...] = ()
    typed: Callable[[str], None] | None = None
    hint: str = ""
    space: Callable[[], None] | None = None
    space_word: str = ""
    stays: bool = field(default=False)  # it is asked again after each choice


def asked_face(asked: Asked, look: Look) -> tuple[QWidget, QLineEdit | None]:
    """Return the question as a widget, and the line to type into, if there is one."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(2 if len(asked.lines) > ROOMY else 6))
    for told in asked.about:
        column.addWidget(look.label(told, PLAIN))
    for number, line in enumerate(asked.lines[:LINES], start=1):
        if line.on is not None:
            column.addWidget(
                PlaceLine(
                    look.colours, look.scale, str(number), line.told, on=line.on, part=line.below
                )
            )
            continue
        column.addWidget(_line(number, line, look, crowded=len(asked.lines) > ROOMY))
    field_: QLineEdit | None = None
    if asked.typed is not None:
        field_ = QLineEdit()
        field_.setFont(font_of(field_.font(), LARGE * look.scale))
        field_.setPlaceholderText(asked.hint)
        field_.setAccessibleName(asked.hint or asked.title)
        column.addWidget(field_)
    column.addStretch(1)
    return holder, field_


def _line(number: int, line: Line, look: Look, *, crowded: bool) -> QWidget:
    holder = QWidget()
    row = QHBoxLayout(holder)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(look.pixels(16))
    key = look.label(str(number), LARGE, colour="soft", bold=True)
    key.setFixedWidth(look.pixels(34))
    row.addWidget(key)
    words_ = QVBoxLayout()
    words_.setSpacing(0)
    words_.addWidget(look.label(line.told, PLAIN if crowded else LARGE))
    if line.below:
        words_.addWidget(look.label(line.below, SMALL, colour="soft"))
    row.addLayout(words_, 1)
    return holder
