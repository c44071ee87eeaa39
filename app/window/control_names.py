"""Names for sets of leaves, which have no words of their own: for those who listen."""

from __future__ import annotations

from PySide6.QtWidgets import QTabWidget, QWidget


def name_leaves(view: QWidget, title: str) -> None:
    """Give each set of leaves in a page the title of the page; what has a name keeps it."""
    for tabs in view.findChildren(QTabWidget):
        for named in (tabs, tabs.tabBar()):
            if not named.accessibleName():
                named.setAccessibleName(title)
