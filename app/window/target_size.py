"""How large whatever takes a click has to be: 24 × 24 pixels at the least.

WCAG 2.2, 2.5.8 "Target size (minimum)"; a link inside a sentence is free of it.
Tick boxes and number fields get theirs by the rules in `palette`.
"""

from __future__ import annotations

from PySide6.QtWidgets import QHeaderView, QTableView, QWidget

TARGET = 24  # pixels


def roomy(widget: QWidget) -> None:
    """Let a control be no smaller than a target, whatever is written on it."""
    widget.setMinimumSize(TARGET, TARGET)


def roomy_rows(table: QTableView, row: int = TARGET) -> None:
    """Let the rows of a table, and its head where that sorts, be no lower than a target."""
    rows, head = table.verticalHeader(), table.horizontalHeader()
    least = TARGET + (1 if table.showGrid() else 0)  # the line of the grid is no part of a cell
    rows.setMinimumSectionSize(least)
    rows.setDefaultSectionSize(max(row, least))
    roomy_head(head)


def roomy_head(head: QHeaderView) -> None:
    """Let a head whose columns sort be no lower than a target."""
    head.setMinimumHeight(TARGET)
