"""Names for controls that have their words beside them only: for those who listen."""

from __future__ import annotations

from PySide6.QtWidgets import QAbstractSpinBox, QComboBox, QLabel, QTabWidget, QWidget

NAMED = (QComboBox, QAbstractSpinBox)


def name_controls(view: QWidget, title: str) -> None:
    """Give lists and numbers the words of their label, and sets of leaves that of the page.

    What has a name already keeps it.
    """
    for label in view.findChildren(QLabel):
        buddy = label.buddy()
        if isinstance(buddy, NAMED) and not buddy.accessibleName():
            buddy.setAccessibleName(label.text().replace("&", ""))
    for tabs in view.findChildren(QTabWidget):
        for named in (tabs, tabs.tabBar()):
            if not named.accessibleName():
                named.setAccessibleName(title)
