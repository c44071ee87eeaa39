"""What once ended the window: Qt handed something that was gone, or told to forget what lives."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QPushButton,
    QTableWidget,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import Shiboken
from window_steps import settle

from app.window.emptying import empty
from app.window.flow_layout import FlowLayout
from app.window.palette import DARK, LIGHT, dress
from app.window.tab_order import move_between, stops
from app.window.tree_nodes import EntriesModel, entries_of


class Holder(QWidget):
    """A column of buttons, and a line of more that breaks where it is full."""

    def __init__(self) -> None:
        super().__init__()
        self.column = QVBoxLayout(self)
        self.buttons = [QPushButton(name) for name in "abc"]
        self.line = FlowLayout()
        for button in self.buttons[1:]:
            self.line.addWidget(button)
        self.column.addLayout(self.line)
        self.column.insertWidget(0, self.buttons[0])


def gone(qapp: QApplication, *widgets: QWidget) -> None:
    for widget in widgets:
        widget.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.mark.parametrize("onwards", [True, False])
def test_what_follows_in_the_order_of_tab_outlives_what_goes(
    qtbot, qapp: QApplication, onwards: bool
) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    row = QHBoxLayout(window)
    first, second = Holder(), QWidget()
    table = QTableWidget(3, 2)
    QVBoxLayout(second).addWidget(table)
    row.addWidget(first)
    row.addWidget(second)
    header, bar = table.horizontalHeader(), table.verticalScrollBar()
    window.show()
    window.activateWindow()
    settle(qapp)
    first.buttons[0].setFocus()
    for _ in range(6):
        assert move_between((first, second), onwards=onwards)
    gone(qapp, first)
    assert Shiboken.isValid(header)
    assert Shiboken.isValid(bar)
    assert header.count() == 2
    window.close()


def test_a_line_of_controls_hands_out_only_items_of_those_that_live(
    qtbot, qapp: QApplication
) -> None:
    holder = Holder()
    qtbot.addWidget(holder)
    holder.show()
    high = holder.line.heightForWidth(1)
    gone(qapp, holder.buttons[1])
    assert [one.widget() for one in map(holder.line.itemAt, range(holder.line.count()))] == [
        holder.buttons[2]
    ]
    assert holder.line.itemAt(1) is None
    assert holder.line.takeAt(1) is None
    assert 0 < holder.line.heightForWidth(1) < high
    Shiboken.delete(holder.buttons[2])
    assert holder.line.count() == 0
    holder.close()


def test_the_fields_of_a_layout_are_found_in_its_order_and_its_items_left_alone(qtbot) -> None:
    holder = Holder()
    qtbot.addWidget(holder)
    holder.show()
    before = len(Shiboken.getAllValidWrappers())
    assert list(stops(holder)) == holder.buttons
    assert len(Shiboken.getAllValidWrappers()) <= before + 1  # its own layout at most
    holder.close()


def test_emptying_a_layout_keeps_what_it_is_told_to(qtbot, qapp: QApplication) -> None:
    holder = Holder()
    qtbot.addWidget(holder)
    first, second, third = holder.buttons
    empty(holder.line, keep={second})
    settle(qapp)
    assert holder.line.count() == 0
    assert [Shiboken.isValid(one) for one in (first, second, third)] == [True, True, False]
    holder.close()


def test_a_style_is_set_once_and_never_under_an_open_dialog(
    qtbot, qapp: QApplication, monkeypatch: pytest.MonkeyPatch
) -> None:
    set_: list[str] = []
    dress(qapp, LIGHT)
    monkeypatch.setattr(QApplication, "setStyle", lambda _app, name: set_.append(name))
    dress(qapp, DARK)
    dress(qapp, LIGHT)
    assert set_ == []
    assert qapp.styleSheet()


def test_an_index_that_is_older_than_what_is_shown_has_no_line() -> None:
    class Node:
        below: tuple[Node, ...] = ()

    model = EntriesModel()
    model._put(entries_of([Node(), Node()]))
    old = model.index(1, 0)
    model._put(entries_of([Node()]))
    assert model.rowCount() == 1
    assert model._entry(old) is None
    assert not model.parent(old).isValid()
