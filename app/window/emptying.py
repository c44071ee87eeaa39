"""Taking widgets out of a layout, without touching the items that hold them.

Qt deletes its items without a word to Python, so they are never asked for (see `tab_order`).
"""

from __future__ import annotations

from collections.abc import Container

from PySide6.QtWidgets import QLayout, QWidget


def empty(layout: QLayout, keep: Container[QWidget] = ()) -> None:
    """Take every widget out of a layout; all but those to ``keep`` go once nobody uses them."""
    holder = layout.parentWidget()
    for widget in holder.children() if holder is not None else ():
        if isinstance(widget, QWidget) and layout.indexOf(widget) >= 0:
            layout.removeWidget(widget)
            if widget not in keep:
                widget.hide()
                widget.deleteLater()
