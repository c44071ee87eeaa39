"""About and Keys."""

from __future__ import annotations

from importlib import metadata

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QGridLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.labels import text

KEYS_HIGH = 560  # pixels: fits the least window; the rest scrolls


def key_lines() -> list[tuple[str, str]]:
    """Return every key with what it does."""
    tr = words.tr
    return [
        ("Ctrl+1, Ctrl+2 …", tr("go to a view")),
        ("F4", tr("show or hide air and evenings")),
        ("F6", tr("take the better plan that was found")),
        (tr("F11, B in Tonight"), tr("bench mode: one piece of work at a time, in large letters")),
        ("Ctrl+H", tr("an hour more at the bench")),
        ("Ctrl+Shift+E, Ctrl+Shift+L", tr("stop for tonight; this evening is lost")),
        (tr("Ctrl+Backspace"), tr("take back the last, also from the logbook")),
        ("Ctrl+Z, Ctrl+Shift+Z", tr("undo, redo")),
        ("Ctrl+I, Ctrl+E", tr("import, export a project file")),
        ("Tab", tr("go to the next control")),
        (tr("Space"), tr("tick off a place; press a button")),
        (tr("← →"), tr("timeline: piece before and after in the lane")),
        (tr("↑ ↓"), tr("timeline: nearest piece in the lane above and below")),
        (tr("Home, End"), tr("timeline: first and last piece")),
        (tr("Enter"), tr("timeline: go to the reason and the gates")),
        ("+, −, 0", tr("timeline: larger, smaller, fit the whole plan")),
        ("P, S", tr("timeline: pin the piece where it stands, or to a stretch")),
        ("[ ]", tr("timeline: pin the piece a stretch sooner, later")),
        ("N, T", tr("timeline: not before a stretch, together with another piece")),
        ("Shift+P", tr("timeline: take the wishes of the piece back")),
        ("F", tr("timeline: finish this vehicle first")),
        (tr("drag a piece"), tr("timeline: pin it to another stretch")),
        ("Alt+↑, Alt+↓", tr("wishes: what is chosen counts more, less")),
        ("Ctrl+T, Ctrl+Shift+T", tr("what if: try a change, alone or with the chosen one")),
        (tr("Ctrl+Enter, Del"), tr("what if: keep, drop what is chosen")),
        ("Ctrl+L", tr("the last edits, and back to any of them")),
        ("Alt+1, Alt+2, Alt+3", tr("first questions: to the table, the days, the room")),
        (tr("Enter, Ctrl+Enter"), tr("first questions: another line, plan it")),
        (tr("Ins, Shift+Ins, Del, F2"), tr("build: add a step, a model; remove, rename")),
        ("Alt+↑, Alt+↓", tr("build: what is chosen up, down, as gates allow")),
        ("Ctrl+C, Ctrl+V", tr("build: copy steps, put them into the models chosen")),
        ("Ctrl+D", tr("build: same again, other markings")),
        (tr("Ctrl + wheel"), tr("timeline: zoom")),
        (tr("Shift + wheel, drag"), tr("timeline: move along")),
        (tr("Enter, Del"), tr("lists of stock, gear, hours: change, remove what is chosen")),
        (tr("Ctrl+F"), tr("stock: show only what has these words")),
        (tr("← → ↑ ↓, Page Up, Page Down"), tr("bench time: to another day, to other weeks")),
    ]


def keys(parent: QWidget) -> QDialog:
    """Show the keys."""
    body = QWidget()
    rows = QGridLayout(body)
    rows.setContentsMargins(0, 0, 12, 0)
    rows.setHorizontalSpacing(24)
    rows.setColumnStretch(1, 1)
    for at, (key, what) in enumerate(key_lines()):
        rows.addWidget(text(key, bold=True, wrap=False), at, 0)
        rows.addWidget(text(what, wrap=False), at, 1)
    area = QScrollArea()
    area.setWidget(body)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setAccessibleName(words.tr("Keys"))
    area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the arrow keys move it
    dialog = _show(parent, words.tr("Keys"), [area])
    bar = area.verticalScrollBar().sizeHint().width()
    dialog.resize(body.sizeHint().width() + 44 + bar + 4, KEYS_HIGH)
    area.setFocus()
    return dialog


def about(parent: QWidget) -> QDialog:
    """Say what this is."""
    tr = words.tr
    try:
        version = metadata.version("tackfree")
    except metadata.PackageNotFoundError:
        version = tr("not installed")
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


def _show(parent: QWidget, title: str, body: list[QWidget]) -> QDialog:
    dialog = QDialog(parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setWindowTitle(title)
    dialog.setMinimumWidth(420)
    column = QVBoxLayout(dialog)
    column.setContentsMargins(22, 18, 22, 16)
    column.setSpacing(12)
    column.addWidget(text(title, size=1.5, bold=True))
    for widget in body:
        column.addWidget(widget, 1 if isinstance(widget, QScrollArea) else 0)
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
    buttons.rejected.connect(dialog.reject)
    column.addWidget(buttons)
    dialog.resize(420, column.heightForWidth(420))
    dialog.show()
    return dialog
