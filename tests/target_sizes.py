"""Which targets of the pointer are smaller than WCAG 2.2 asks for.

WCAG 2.2, 2.5.8 "Target size (minimum)": 24 × 24 CSS pixels, but for what it exempts.  A
target is measured by what takes the click, not by what is painted.  Left out, and why:

- links inside a sentence (exception "inline");
- the two arrows of a number field: the field beside them takes the same number typed
  (exception "equivalent"); the field with its arrows is measured as one;
- scroll bars, splitters and the edges of columns, which are dragged: the wheel and the keys do
  the same (exception "equivalent");
- the sign that opens a branch of a tree: a double click on its row, or the arrow keys, open it
  too (exception "equivalent").
"""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QModelIndex, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSlider,
    QAbstractSpinBox,
    QCalendarWidget,
    QComboBox,
    QHeaderView,
    QLineEdit,
    QMenu,
    QMenuBar,
    QPlainTextEdit,
    QScrollBar,
    QTabBar,
    QTableView,
    QWidget,
)
from text_fit import named

TARGET = 24  # pixels; WCAG 2.2, 2.5.8


def small_targets(whole: QWidget) -> list[str]:
    """Return a line for everything in a widget that takes a click and is too small."""
    return [
        f"{named(widget)}: {what} is {size.width()} x {size.height()}"
        for widget, what, size in targets(whole)
        if size.width() < TARGET or size.height() < TARGET
    ]


def smallest(whole: QWidget) -> QSize:
    """Return the least width and height of all targets of a widget."""
    sizes = [size for _, _, size in targets(whole)]
    return QSize(min(size.width() for size in sizes), min(size.height() for size in sizes))


def targets(whole: QWidget) -> Iterator[tuple[QWidget, str, QSize]]:
    """Tell all that takes a click now: in which widget, what it is, and how large."""
    for widget in (whole, *whole.findChildren(QWidget)):
        shown = widget.isVisible() and not widget.visibleRegion().isEmpty()
        if shown and widget.isEnabled():
            for what, size in of_widget(widget):
                yield widget, what, size


def of_widget(widget: QWidget) -> Iterator[tuple[str, QSize]]:
    """Tell the targets of one widget, without those of its children."""
    painted = getattr(widget, "targets", None)
    if painted is not None:
        for what, rect in painted():
            yield what, QRect(rect).size()
    elif isinstance(widget, QTabBar):
        for at in range(widget.count()):
            size = widget.tabRect(at).size()  # one beyond the edge scrolls into sight
            size.setHeight(min(size.height(), widget.height()))
            yield f"tab {widget.tabText(at)!r}", size
    elif isinstance(widget, QHeaderView):
        if widget.sectionsClickable() and widget.isSortIndicatorShown():
            yield from _head(widget)
    elif isinstance(widget, QAbstractItemView):
        if not isinstance(widget.window(), QCalendarWidget):
            yield from _items(widget)
    elif isinstance(widget, (QMenuBar, QMenu)):
        for action in widget.actions():
            if action.isVisible() and not action.isSeparator():
                yield f"entry {action.text()!r}", widget.actionGeometry(action).size()
    elif isinstance(widget, QScrollBar):
        return
    elif isinstance(widget, QLineEdit):
        if not isinstance(widget.parent(), (QAbstractSpinBox, QComboBox)):
            yield "field", widget.size()
    elif isinstance(
        widget, (QAbstractButton, QComboBox, QAbstractSpinBox, QPlainTextEdit, QAbstractSlider)
    ):
        yield "control", widget.size()


def _head(header: QHeaderView) -> Iterator[tuple[str, QSize]]:
    across = header.orientation() is Qt.Orientation.Horizontal
    for at in range(header.count()):
        if not header.isSectionHidden(at) and header.model() is not None:
            part = header.sectionSize(at)
            size = QSize(part, header.height()) if across else QSize(header.width(), part)
            name = header.model().headerData(at, header.orientation())
            yield f"head {name!r}", size


def _items(view: QAbstractItemView) -> Iterator[tuple[str, QSize]]:
    """Tell the items on screen; of a row that is chosen whole, its height counts."""
    by_row = view.selectionBehavior() is QAbstractItemView.SelectionBehavior.SelectRows
    rows = by_row or not isinstance(view, QTableView)
    seen: set[tuple[int, int, int]] = set()
    area = view.viewport().rect()
    for x in range(4, area.width(), 40):
        for y in range(2, area.height(), 10):
            index = view.indexAt(QPoint(x, y))
            place = (index.row(), index.column(), index.internalId())
            if place in seen or not index.isValid() or not index.flags() & ENABLED:
                continue
            seen.add(place)
            size = view.visualRect(index).size()
            if rows and index.data(Qt.ItemDataRole.CheckStateRole) is None:
                size.setWidth(max(size.width(), area.width()))
            yield f"item {_said(index)!r}", size


ENABLED = Qt.ItemFlag.ItemIsEnabled


def _said(index: QModelIndex) -> str:
    return str(index.data() or index.data(Qt.ItemDataRole.AccessibleTextRole) or "")[:40]
