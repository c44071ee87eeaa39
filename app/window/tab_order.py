"""Tab through fields in the order in which they are laid out.

Qt goes by the order in which they were made, which lines added later upset.

Two questions are never put to Qt here, as the answers bring PySide's own books into disorder.
`nextInFocusChain` makes the answer count as a child of the one that was asked, and when that goes,
all that Python knows of what follows in the chain goes with it, though it lives on (a layout then
hands out nothing where Qt expects an item, and the program ends).  `itemAt` gives a name to an
item that Qt deletes without a word, and the next item at that address bears the old name.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLayout,
    QScrollArea,
    QWidget,
)

MARGIN = 48  # pixels kept above and below what has the keys


def stops(holder: QWidget) -> Iterator[QWidget]:
    """Yield every field at which Tab stops, as they are laid out."""
    layout = holder.layout()
    if layout is not None:
        yield from _in(
            layout, [widget for widget in holder.children() if isinstance(widget, QWidget)]
        )


def move_focus(holder: QWidget, *, onwards: bool) -> bool:
    """Give the keys to the next field of ``holder``; False where there is none beyond."""
    here = QApplication.focusWidget()
    every = list(stops(holder))
    at = next((n for n, widget in enumerate(every) if widget is here or _owns(widget, here)), None)
    if at is None:
        return False
    to = at + (1 if onwards else -1)
    if not 0 <= to < len(every):
        return False
    reason = Qt.FocusReason.TabFocusReason if onwards else Qt.FocusReason.BacktabFocusReason
    every[to].setFocus(reason)
    bring_into_sight(every[to])
    return True


def move_between(areas: Sequence[QWidget], *, onwards: bool) -> bool:
    """Give the keys to the next field of a window, area by area as they lie on it.

    Within an area they follow as they are laid out; what lies in none comes last.  False
    where no field of the window has the keys.
    """
    here = QApplication.focusWidget()
    ring = sorted(stops_now(areas[0].window()), key=lambda widget: _area_of(widget, areas))
    holders = [widget for widget in ring if widget is here or _owns(widget, here)]
    if not holders:
        return False
    at = ring.index(here if here in holders else holders[-1])
    reason = Qt.FocusReason.TabFocusReason if onwards else Qt.FocusReason.BacktabFocusReason
    ring[(at + (1 if onwards else -1)) % len(ring)].setFocus(reason)
    return True


def bring_into_sight(field: QWidget) -> None:
    """Scroll so that a field can be seen, with a little of what is around it."""
    above = field.parentWidget()
    while above is not None and not isinstance(above, QScrollArea):
        above = above.parentWidget()
    if above is not None:
        above.ensureWidgetVisible(field, 0, MARGIN)


def _in(layout: QLayout, widgets: Sequence[QWidget]) -> Iterator[QWidget]:
    """Yield the stops of a layout; ``widgets`` are all of its holder's."""
    inner = [layout for layout in layout.children() if isinstance(layout, QLayout)]
    places: list[tuple[int, QWidget | QLayout]] = [
        *((layout.indexOf(widget), widget) for widget in widgets),
        *((layout.indexOf(other), other) for other in inner),
    ]
    for _, place in sorted(
        (place for place in places if place[0] >= 0), key=lambda place: place[0]
    ):
        if isinstance(place, QLayout):
            yield from _in(place, widgets)
        else:
            yield from _of(place)


def _as_laid_out(above: QWidget) -> list[QWidget]:
    """Return the children of a widget in the order of its layout, then those it does not lay."""
    widgets = [widget for widget in above.children() if isinstance(widget, QWidget)]
    layout = above.layout()
    laid = list(_laid(layout, widgets)) if layout is not None else []
    return [*laid, *(widget for widget in widgets if widget not in laid)]


def _laid(layout: QLayout, widgets: Sequence[QWidget]) -> Iterator[QWidget]:
    """Yield the widgets of a layout and of the layouts in it."""
    inner = [layout for layout in layout.children() if isinstance(layout, QLayout)]
    places: list[tuple[int, QWidget | QLayout]] = [
        *((layout.indexOf(widget), widget) for widget in widgets),
        *((layout.indexOf(other), other) for other in inner),
    ]
    for at, place in sorted(places, key=lambda place: place[0]):
        if at < 0:
            continue
        if isinstance(place, QLayout):
            yield from _laid(place, widgets)
        else:
            yield place


def stops_now(above: QWidget) -> Iterator[QWidget]:
    """Yield every field below a widget at which Tab can stop now, as they are laid out."""
    for widget in _as_laid_out(above):
        if widget.isWindow() or not widget.isVisible():
            continue
        if _takes_tab(widget) and widget.isEnabled() and widget.focusProxy() is None:
            yield widget
        if not isinstance(widget, QAbstractSpinBox | QComboBox):  # the line within is theirs
            yield from stops_now(widget)


def _area_of(widget: QWidget, areas: Sequence[QWidget]) -> int:
    return next((n for n, area in enumerate(areas) if area.isAncestorOf(widget)), len(areas))


def _takes_tab(widget: QWidget) -> bool:
    return bool(widget.focusPolicy().value & Qt.FocusPolicy.TabFocus.value)


def _of(widget: QWidget) -> Iterator[QWidget]:
    if widget.isHidden() or not widget.isEnabled():
        return
    if _takes_tab(widget):
        yield widget
    else:
        yield from stops(widget)


def _owns(field: QWidget, focused: QWidget | None) -> bool:
    return focused is not None and field.isAncestorOf(focused)
