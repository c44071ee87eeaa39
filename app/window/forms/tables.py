"""Tables of lines: one line is chosen at a time, and Tab leaves them."""

from __future__ import annotations

from PySide6.QtCore import QAbstractItemModel
from PySide6.QtWidgets import QTableView

from app.window.chosen_rows import mark_chosen_rows


def lines_table(name: str, model: QAbstractItemModel | None = None) -> QTableView:
    """Return a table of whole lines; ``name`` is what a screen reader calls it."""
    table = QTableView()
    if model is not None:
        table.setModel(model)
    table.setAccessibleName(name)
    table.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
    table.setSelectionMode(QTableView.SelectionMode.SingleSelection)
    table.setAlternatingRowColors(True)
    table.setShowGrid(False)
    table.setTabKeyNavigation(False)
    table.setFrameShape(QTableView.Shape.NoFrame)
    table.setWordWrap(False)
    table.verticalHeader().hide()
    mark_chosen_rows(table)
    return table
