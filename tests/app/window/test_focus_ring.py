"""What has the keys is seen: WCAG 2.2, success criteria 2.4.7 and 1.4.11 (at least 3 : 1)."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QDateEdit,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QRadioButton,
    QScrollArea,
    QSpinBox,
    QTabBar,
    QVBoxLayout,
    QWidget,
)

from app.window import palette
from app.window.focus_ring import FocusRing, Ring
from app.window.palette import DARK, LIGHT, Colours, contrast

KINDS = (
    QCheckBox,
    QComboBox,
    QDateEdit,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QRadioButton,
    QSpinBox,
    QTabBar,
)
SEEN = 3.0  # success criterion 1.4.11


@pytest.fixture
def follower(qapp: QApplication) -> Iterator[FocusRing]:
    one = FocusRing(qapp)
    yield one
    qapp.focusChanged.disconnect(one._follow)
    one.deleteLater()


def holder_of(kind: type[QWidget]) -> tuple[QWidget, QWidget, QWidget]:
    holder = QWidget()
    column = QVBoxLayout(holder)
    first, one = QPushButton("before"), kind()
    if isinstance(one, QTabBar):
        one.addTab("one")
    column.addWidget(first)
    column.addWidget(one)
    holder.show()
    holder.activateWindow()
    first.setFocus()
    QApplication.processEvents()
    return holder, first, one


def seen(widget: QWidget) -> QImage:
    """Return what is on screen where a control lies."""
    holder = widget.parentWidget()
    assert holder is not None
    return holder.grab(widget.geometry()).toImage()


def go(app: QApplication) -> None:
    app.processEvents()
    app.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("kind", KINDS)
def test_the_edge_of_what_has_the_keys_is_seen(
    qtbot, qapp: QApplication, follower: FocusRing, kind: type[QWidget], colours: Colours
) -> None:
    palette.dress(qapp, colours)
    holder, first, one = holder_of(kind)
    qtbot.addWidget(holder)
    before = seen(one)
    QTest.keyClick(first, Qt.Key.Key_Tab)
    go(qapp)
    assert one.hasFocus()
    after = seen(one)
    wide, tall = one.width(), one.height()
    edge = [(x, y) for x in range(wide) for y in (0, tall - 1)]
    edge += [(x, y) for y in range(tall) for x in (0, wide - 1)]
    for x, y in edge:
        ring = after.pixelColor(x, y).name()
        assert contrast(ring, colours.paper) >= SEEN  # against what lies around it
    inner = after.pixelColor(wide // 2, 2).name()  # beside the ring, above the letters
    assert contrast(after.pixelColor(wide // 2, 1).name(), inner) >= SEEN
    first.setFocus()
    go(qapp)
    assert seen(one).pixelColor(wide // 2, 0) == before.pixelColor(wide // 2, 0)
    assert one.findChildren(Ring) == []


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("kind", [QCheckBox, QRadioButton])
def test_the_box_itself_is_seen_while_it_has_the_keys(
    qtbot, qapp: QApplication, kind: type[QWidget], colours: Colours
) -> None:
    palette.dress(qapp, colours)
    holder, first, one = holder_of(kind)
    qtbot.addWidget(holder)
    QTest.keyClick(first, Qt.Key.Key_Tab)
    go(qapp)
    image = seen(one)
    middle = image.height() // 2
    row = [image.pixelColor(x, middle).name() for x in range(10, 22)]  # the right of the frame
    assert max(contrast(colour, colours.paper) for colour in row) >= SEEN


def test_what_is_only_scrolled_has_a_ring_where_keys_led_there(
    qtbot, qapp: QApplication, follower: FocusRing
) -> None:
    holder, first, one = holder_of(QScrollArea)
    qtbot.addWidget(holder)
    one.setFocus()  # as a page begins
    go(qapp)
    assert one.findChildren(Ring) == []
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Tab)
    go(qapp)
    assert one.hasFocus()
    assert len(one.findChildren(Ring)) == 1


def test_the_ring_grows_with_its_control_and_goes_with_it(
    qtbot, qapp: QApplication, follower: FocusRing
) -> None:
    holder, first, one = holder_of(QLineEdit)
    qtbot.addWidget(holder)
    one.setFocus()
    holder.resize(500, 200)
    go(qapp)
    assert [ring.size() for ring in one.findChildren(Ring)] == [one.size()]
    assert qapp.widgetAt(one.mapToGlobal(one.rect().topLeft())) is not one.findChildren(Ring)[0]
    one.deleteLater()
    go(qapp)
    first.setFocus()
    go(qapp)
    assert len(first.findChildren(Ring)) == 1
