"""Help on a page, the keys, the words of the trade, and About."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QGridLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.service.program_version import program_version
from app.window import words
from app.window.glossary import our_words, role_meaning, stage_meaning, state_meaning
from app.window.labels import text
from app.window.page_help import PAGES_WITH_KEYS, about_page, general_keys, page_keys
from planner.values.coating import State
from planner.values.step import Role, Stage

HIGH, WIDE, PAGE_WIDE = 560, 420, 620  # pixels: fits the least window; the rest scrolls
FIRST_PAGE = "tonight"  # which has keys of bench mode and of the first questions
Lines = list[tuple[str, str]]


def key_lines() -> Lines:
    """Return every key with what it does, each once."""
    every = [*general_keys(), *(line for name in PAGES_WITH_KEYS for line in page_keys(name))]
    return list(dict.fromkeys(every))


def keys(parent: QWidget) -> QDialog:
    """Show the keys."""
    return _table(parent, words.tr("Keys"), key_lines())


def page(parent: QWidget, name: str, title: str) -> QDialog:
    """Say what a page is for, and its own keys.

    Parameters
    ----------
    name, title
        What the settings call the page, and what stands above it.
    """
    body: list[QWidget] = [text(about_page(name))]
    lines = page_keys(name)
    if name != FIRST_PAGE:  # the list of all keys says the page before the colon
        lines = [(key, what.partition(": ")[2] or what) for key, what in lines]
    if lines:
        body.append(_rows(lines, wrap=True))
    body.append(text(words.tr("Shift+F1 shows every key."), size=0.95))
    return _show(parent, title, body, PAGE_WIDE if lines else WIDE)


def bench_mode(parent: QWidget, lines: Lines) -> QDialog:
    """Say what the bench mode is for, and its keys."""
    told = words.tr(
        "One piece of work at a time. A tile is a place: its number ticks it; Space notes the "
        "whole job."
    )
    area = _table(parent, words.tr("Bench mode"), lines)
    area.layout().insertWidget(1, text(told))  # type: ignore[union-attr]
    return area


def trade_words(parent: QWidget) -> QDialog:
    """Say what stages, drying states and varnishes mean, and words of our own."""
    lines: Lines = [(words.stage_word(stage), stage_meaning(stage)) for stage in Stage]
    lines += [(words.state_word(state.value), state_meaning(state)) for state in State]
    lines += [(QCoreApplication.translate("role", role.value), role_meaning(role)) for role in Role]
    return _table(parent, words.tr("Words"), [*lines, *our_words()])


def about(parent: QWidget) -> QDialog:
    """Say what this is."""
    tr = words.tr
    version = program_version() or tr("not installed")
    lines = [
        tr("Version {version}, MIT licence.").format(version=version),
        tr(
            "Plans the finishing of scale models: sound coats, short evenings, one date. "
            "Waiting times are computed from the air of your room and from labels or family "
            "defaults; they are estimates, and a test piece knows better."
        ),
        tr("The label, the safety data sheet and local rules have the last word."),
        tr("Colours after Okabe and Ito, “Color Universal Design” (2008)."),
    ]
    return _show(parent, tr("About Tackfree"), [text(line) for line in lines])


def _rows(lines: Lines, *, wrap: bool = False) -> QWidget:
    body = QWidget()
    rows = QGridLayout(body)
    rows.setContentsMargins(0, 0, 12, 0)
    rows.setHorizontalSpacing(24)
    rows.setColumnStretch(1, 1)
    for at, (key, what) in enumerate(lines):
        rows.addWidget(text(key, bold=True, wrap=False), at, 0, Qt.AlignmentFlag.AlignTop)
        rows.addWidget(text(what, wrap=wrap), at, 1)
    return body


def _table(parent: QWidget, title: str, lines: Lines) -> QDialog:
    body = _rows(lines)
    area = QScrollArea()
    area.setWidget(body)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setAccessibleName(title)
    area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the arrow keys move it
    dialog = _show(parent, title, [area])
    bar = area.verticalScrollBar().sizeHint().width()
    dialog.resize(body.sizeHint().width() + 44 + bar + 4, HIGH)
    area.setFocus()
    return dialog


def _show(parent: QWidget, title: str, body: list[QWidget], wide: int = WIDE) -> QDialog:
    dialog = QDialog(parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setWindowTitle(title)
    dialog.setMinimumWidth(WIDE)
    column = QVBoxLayout(dialog)
    column.setContentsMargins(22, 18, 22, 16)
    column.setSpacing(12)
    column.addWidget(text(title, size=1.5, bold=True))
    for widget in body:
        column.addWidget(widget, 1 if isinstance(widget, QScrollArea) else 0)
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
    buttons.rejected.connect(dialog.reject)
    column.addWidget(buttons)
    wide = max(wide, column.minimumSize().width())
    dialog.resize(wide, column.heightForWidth(wide))
    dialog.show()
    return dialog
