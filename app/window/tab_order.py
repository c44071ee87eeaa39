"""Tab through fields in the order in which they are laid out.

Qt goes by the order in which they were made, which lines added later upset.
"""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLayout, QScrollArea, QWidget

MARGIN = 48  # pixels kept above and below what has the keys


def stops(holder: QWidget) -> Iterator[QWidget]:
    """Yield every field at which Tab stops, as they are laid out."""
    layout = holder.layout()
    if layout is not None:
        yield from _in(layout)


def move_focus(holder: QWidget, *, onwards: bool) -> bool:
    """Give the keys to the next field of ``holder``; False where there is none beyond."""
    here = QApplication.focusWidget()
    every = list(stops(holder))
    at = next((n for n, one in enumerate(every) if one is here or _owns(one, here)), None)
    if at is None:
        return False
    to = at + (1 if onwards else -1)
    if not 0 <= to < len(every):
        return False
    reason = Qt.FocusReason.TabFocusReason if onwards else Qt.FocusReason.BacktabFocusReason
    every[to].setFocus(reason)
    bring_into_sight(every[to])
    return True


def bring_into_sight(field: QWidget) -> None:
    """Scroll so that a field can be seen, with a little of what is around it."""
    above = field.parentWidget()
    while above is not None and not isinstance(above, QScrollArea):
        above = above.parentWidget()
    if above is not None:
        above.ensureWidgetVisible(field, 0, MARGIN)


def _in(layout: QLayout) -> Iterator[QWidget]:
    for number in range(layout.count()):
        item = layout.itemAt(number)
        if item is None:
            continue
        widget, inner = item.widget(), item.layout()
        if widget is not None:
            yield from _of(widget)
        elif inner is not None:
            yield from _in(inner)


def _of(widget: QWidget) -> Iterator[QWidget]:
    if widget.isHidden() or not widget.isEnabled():
        return
    tab = Qt.FocusPolicy.TabFocus.value
    if widget.focusPolicy().value & tab:
        yield widget
    else:
        yield from stops(widget)


def _owns(field: QWidget, focused: QWidget | None) -> bool:
    return focused is not None and field.isAncestorOf(focused)
