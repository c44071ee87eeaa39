"""How the chosen row of a list, tree or table looks: a bar at its edge, its picture untinted.

The ground of what is chosen differs little from the others', so that text on it can be read;
the bar is what everybody sees.
"""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize
from PySide6.QtGui import QPainter, QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QTreeView,
)

from app.window.target_size import TARGET, roomy_head, roomy_rows

BAR = 3  # pixels


class ChosenRows(QStyledItemDelegate):
    """Paints items; over a chosen row it lays the bar, and under its picture the usual ground."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint an item."""
        super().paint(painter, option, index)
        if option.state & QStyle.StateFlag.State_Selected:
            self._mark(painter, option, index)

    def _mark(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        palette, rect = option.palette, QRect(option.rect)
        inside = QStyleOptionViewItem(option)
        self.initStyleOption(inside, index)
        if not inside.icon.isNull():
            spot = self._picture(inside)
            painter.fillRect(
                spot.adjusted(-1, rect.top() - spot.top(), 1, rect.bottom() - spot.bottom()),
                palette.brush(QPalette.ColorRole.Base),
            )
            inside.icon.paint(painter, spot)
        view = option.widget
        if index.column() == first_column(view):
            left = 0 if isinstance(view, QTreeView) else rect.left()
            painter.fillRect(left, rect.top(), BAR, rect.height(), palette.accent())

    def _picture(self, option: QStyleOptionViewItem) -> QRect:
        style = option.widget.style()
        part = QStyle.SubElement.SE_ItemViewItemDecoration
        return style.subElementRect(part, option, option.widget)


class TargetRows(ChosenRows):
    """Lines of a list or a tree, none lower than a target; a table sets its rows itself."""

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the usual size, and a target's at the least."""
        return super().sizeHint(option, index).expandedTo(QSize(TARGET, TARGET))


def first_column(view: object) -> int:
    """Return the column that is shown at the left of a view."""
    if isinstance(view, QTreeView):
        return view.header().logicalIndex(0)
    header = getattr(view, "horizontalHeader", None)
    return 0 if header is None else header().logicalIndex(0)


def mark_chosen_rows(view: QAbstractItemView) -> None:
    """Let a view show what is chosen by a bar, in rows that are easily hit."""
    if isinstance(view, QTableView):
        roomy_rows(view)
        view.setItemDelegate(ChosenRows(view))
        return
    if isinstance(view, QTreeView):
        roomy_head(view.header())
    view.setItemDelegate(TargetRows(view))
