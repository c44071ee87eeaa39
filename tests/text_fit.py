"""Words that do not fit their widget, widgets that overlap, widgets outside their parent.

What a widget needs is measured from its letters and from the room that the
style leaves them, not from what the widget itself asks for.
"""

from __future__ import annotations

import re
from itertools import combinations, product

from PySide6.QtCore import QModelIndex, QPoint, QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics, QIcon, QTextDocument
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QDockWidget,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QListView,
    QPushButton,
    QRadioButton,
    QScrollArea,
    QScrollBar,
    QSizeGrip,
    QStackedWidget,
    QStyle,
    QStyleOptionButton,
    QStyleOptionComboBox,
    QStyleOptionSpinBox,
    QTabBar,
    QTableView,
    QToolButton,
    QTreeView,
    QWidget,
)

from app.window.inspector import Inspector

SLACK = 1  # pixels: a width is rounded once by the font and once by the style
INSIDE = (QAbstractSpinBox, QComboBox, QAbstractItemView, QScrollBar, QDockWidget, QTabBar)
"""Widgets whose own children Qt lays out."""


def faults(whole: QWidget) -> list[str]:
    """Return a line for everything visible in ``whole`` that is cut or in another's place."""
    found = []
    for one in (whole, *whole.findChildren(QWidget)):
        if one.isVisible() and not one.visibleRegion().isEmpty():
            found += [f"{named(one)}: {line}" for line in cut(one)]
            if not isinstance(one, INSIDE):
                found += [f"{named(one)}: {line}" for line in misplaced(one)]
    return found


def named(widget: QWidget) -> str:
    """Return what a widget is, by its words and by what it stands in."""
    kinds = []
    one: QWidget | None = widget
    while one is not None and not one.isWindow():
        kinds.append(type(one).__name__)
        one = one.parentWidget()
    words = getattr(widget, "text", str)() or widget.accessibleName()
    return f"{' < '.join(kinds[:4])} {words[:60]!r}"


def cut(widget: QWidget) -> list[str]:
    """Return what of a widget's own words does not fit into it."""
    if isinstance(widget, QLabel):
        return _label(widget)
    if isinstance(widget, QAbstractButton):
        return _button(widget)
    if isinstance(widget, QComboBox):
        return _combo(widget)
    if isinstance(widget, QAbstractSpinBox):
        return _spin_box(widget)
    if isinstance(widget, QHeaderView):
        return _header(widget)
    if isinstance(widget, QTabBar):
        return _tabs(widget)
    if isinstance(widget, QGroupBox):
        return _wide(widget, widget.title(), widget.fontMetrics(), widget.width() - 16)
    if isinstance(widget, QLineEdit) and not isinstance(
        widget.parent(), (QAbstractSpinBox, QComboBox)
    ):
        return _wide(widget, widget.placeholderText(), widget.fontMetrics(), widget.width() - 8)
    if isinstance(widget, QAbstractItemView):
        return _items(widget)
    if isinstance(widget, QScrollArea):
        return _unreachable(widget)
    return []


def misplaced(parent: QWidget) -> list[str]:
    """Return which children of a widget overlap or reach out of it."""
    children = [
        child
        for child in parent.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
        if child.isVisible() and not child.isWindow() and not isinstance(child, QSizeGrip)
    ]
    over = next((child for child in children if isinstance(child, Inspector)), None)
    found = []
    scrolled = isinstance(parent.parent(), QAbstractScrollArea)
    if not scrolled:
        found += [
            f"{named(child)} {_at(child)} reaches out of {parent.size().toTuple()}"
            for child in children
            if not parent.rect().contains(child.geometry())
        ]
    if over is not None and over is not children[-1]:
        found.append(f"{named(over)} lies below the page")  # in a narrow window it lies over it
    if not isinstance(parent, (QAbstractScrollArea, QStackedWidget)):
        found += [
            f"{named(a)} {_at(a)} overlaps {named(b)} {_at(b)}"
            for a, b in combinations(children, 2)
            if a.geometry().intersects(b.geometry()) and over not in (a, b)
        ]
    return found


def _at(widget: QWidget) -> tuple[int, ...]:
    return widget.geometry().getRect()  # type: ignore[no-any-return]


def _plain(words: str) -> str:
    """Return words without the mark of their key."""
    return re.sub(r"&(.)", r"\1", words)


def _wide(
    widget: QWidget, words: str, metrics: QFontMetrics, room: int, *, tip: str = ""
) -> list[str]:
    need = max((metrics.horizontalAdvance(_plain(line)) for line in words.split("\n")), default=0)
    if need <= room + SLACK or words.strip(" …") in (tip or widget.toolTip()):
        return []
    return [f"{words!r} needs {need} px and has {room}"]


def _label(label: QLabel) -> list[str]:
    words = label.text()
    room = label.contentsRect().adjusted(
        label.margin(), label.margin(), -label.margin(), -label.margin()
    )
    if not words or not label.pixmap().isNull():
        return []
    if label.textFormat() is Qt.TextFormat.RichText or (
        label.textFormat() is Qt.TextFormat.AutoText and "</" in words
    ):
        page = QTextDocument()
        page.setDefaultFont(label.font())
        page.setDocumentMargin(0)
        page.setHtml(words)
        page.setTextWidth(room.width() if label.wordWrap() else -1)
        size = page.size().toSize()
        wide, tall = size.width(), size.height()
    else:
        metrics = label.fontMetrics()
        flags = Qt.TextFlag.TextWordWrap if label.wordWrap() else Qt.TextFlag.TextExpandTabs
        shown = _plain(words) if label.buddy() else words
        box = metrics.boundingRect(QRect(0, 0, room.width(), 10_000), flags, shown)
        wide, tall = box.width(), box.height()
        wide = max(
            metrics.horizontalAdvance(part)
            for part in (shown.split() if label.wordWrap() else shown.split("\n"))
        )
    if wide > room.width() + SLACK and words.strip(" …") not in label.toolTip():
        return [f"needs {wide} px of width and has {room.width()}"]
    if tall > room.height() + SLACK:
        return [f"needs {tall} px of height and has {room.height()}"]
    return []


def _button(button: QAbstractButton) -> list[str]:
    style = button.style()
    if isinstance(button, QToolButton):
        if button.toolButtonStyle() is Qt.ToolButtonStyle.ToolButtonIconOnly and (
            not button.icon().isNull() or button.arrowType() is not Qt.ArrowType.NoArrow
        ):
            return []
        return _wide(button, button.text(), button.fontMetrics(), button.width() - 6)
    room = button.rect().adjusted(4, 0, -4, 0)
    if isinstance(button, (QCheckBox, QRadioButton, QPushButton)):
        option = QStyleOptionButton()
        button.initStyleOption(option)
        part = {
            QCheckBox: QStyle.SubElement.SE_CheckBoxContents,
            QRadioButton: QStyle.SubElement.SE_RadioButtonContents,
            QPushButton: QStyle.SubElement.SE_PushButtonContents,
        }
        kind = next(kind for kind in part if isinstance(button, kind))
        room = style.subElementRect(part[kind], option, button)
    icon = button.iconSize().width() + 4 if not button.icon().isNull() else 0
    found = _wide(button, button.text(), button.fontMetrics(), room.width() - icon)
    letters = button.fontMetrics().height()
    if button.text() and button.height() < letters:
        found.append(f"needs {letters} px of height and has {button.height()}")
    return found


def _combo(combo: QComboBox) -> list[str]:
    option = QStyleOptionComboBox()
    combo.initStyleOption(option)
    room = combo.style().subControlRect(
        QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, combo
    )
    icon = combo.iconSize().width() + 4 if not combo.itemIcon(combo.currentIndex()).isNull() else 0
    metrics = combo.fontMetrics()
    found = _wide(combo, combo.currentText(), metrics, room.width() - icon)
    if room.height() + SLACK < metrics.height():
        found.append(f"needs {metrics.height()} px of height and has {room.height()}")
    return found


def _spin_box(box: QAbstractSpinBox) -> list[str]:
    option = QStyleOptionSpinBox()
    box.initStyleOption(option)
    room = box.style().subControlRect(
        QStyle.ComplexControl.CC_SpinBox, option, QStyle.SubControl.SC_SpinBoxEditField, box
    )
    found = _wide(box, box.text(), box.fontMetrics(), room.width() - 4)  # QLineEdit: 2 px a side
    if room.height() + SLACK < box.fontMetrics().height():
        found.append(f"needs {box.fontMetrics().height()} px of height and has {room.height()}")
    return found


def _header(header: QHeaderView) -> list[str]:
    model, across = header.model(), header.orientation()
    if model is None:
        return []
    margin = 2 * header.style().pixelMetric(QStyle.PixelMetric.PM_HeaderMargin, None, header)
    found = []
    for at in range(header.count()):
        if header.isSectionHidden(at):
            continue
        words = str(model.headerData(at, across) or "")
        tip = str(model.headerData(at, across, Qt.ItemDataRole.ToolTipRole) or "")
        wide = header.sectionSize(at) if across is Qt.Orientation.Horizontal else header.width()
        arrow = header.isSortIndicatorShown() and header.sortIndicatorSection() == at
        room = wide - margin - (12 if arrow else 0)
        found += _wide(header, words, header.fontMetrics(), room, tip=tip)
    return found


def _tabs(tabs: QTabBar) -> list[str]:
    if tabs.usesScrollButtons() and tabs.elideMode() is Qt.TextElideMode.ElideNone:
        return []  # none is cut: they scroll
    found = []
    for at in range(tabs.count()):
        room = tabs.tabRect(at).width() - 8
        found += _wide(tabs, tabs.tabText(at), tabs.fontMetrics(), room, tip=tabs.tabToolTip(at))
    return found


def _unreachable(area: QScrollArea) -> list[str]:
    """Return what of a scroll area no scroll bar leads to."""
    inner, room = area.widget(), area.viewport().width()
    off = area.horizontalScrollBarPolicy() is Qt.ScrollBarPolicy.ScrollBarAlwaysOff
    if inner is None or not off or inner.width() <= room:
        return []
    return [f"shows {room} px of {inner.width()} and does not scroll"]


def _items(view: QAbstractItemView) -> list[str]:
    """Return which items on screen are cut and have no tooltip that says the rest."""
    model = view.model()
    if model is None or isinstance(view, QHeaderView):
        return []
    found, seen = [], set()
    area = view.viewport().rect()
    step = max(8, view.fontMetrics().height() // 2)
    for x, y in product(range(4, area.width(), 24), range(4, area.height(), step)):
        index = view.indexAt(QPoint(x, y))
        place = (index.row(), index.column(), index.internalId())
        words = index.data()
        if place in seen or not isinstance(words, str) or not words:
            continue
        seen.add(place)
        found += _item(view, index, words)
    return found


def _item(view: QAbstractItemView, index: QModelIndex, words: str) -> list[str]:
    role, style, rect = Qt.ItemDataRole, view.style(), view.visualRect(index)
    font = index.data(role.FontRole)
    metrics = QFontMetrics(font if isinstance(font, QFont) else view.font())
    margin = style.pixelMetric(QStyle.PixelMetric.PM_FocusFrameHMargin, None, view) + 1
    room, icon = rect.width() - 2 * margin, 0
    if isinstance(index.data(role.DecorationRole), QIcon):
        size = view.iconSize()
        small = style.pixelMetric(QStyle.PixelMetric.PM_SmallIconSize, None, view)
        icon = size.height() if size.isValid() else small
        room -= icon + 2 * margin
    if index.data(role.CheckStateRole) is not None:
        box = style.pixelMetric(QStyle.PixelMetric.PM_IndicatorWidth, None, view)
        room -= box + 2 * margin
    tip = str(index.data(role.ToolTipRole) or "")
    found = [] if _wrapped(view) else _wide(view, words, metrics, room, tip=tip)
    tall = max(metrics.height() * (words.count("\n") + 1), icon)
    if tall > rect.height() + SLACK:
        found.append(f"{words!r} needs {tall} px of height, not {rect.height()}")
    return found


def _wrapped(view: QAbstractItemView) -> bool:
    """Tell whether long words of an item go on in a second line."""
    return isinstance(view, (QListView, QTableView, QTreeView)) and view.wordWrap()
