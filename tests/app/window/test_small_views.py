"""Views for what one owns at the size that a window of 1000 by 650 leaves them: nothing is cut."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QTabBar,
    QWidget,
)
from small_book import NOW, small_book
from view_steps import shown

from app.window.bench_time.view import BenchTimeView
from app.window.forms.form import FormDialog
from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.gear.location_dialog import LocationDialog
from app.window.gear.view import GearView
from app.window.palette import LIGHT
from app.window.session import Session
from app.window.shopping.view import ShoppingView
from app.window.stock.coating_dialog import CoatingDialog
from app.window.stock.supply_dialogs import (
    CardDialog,
    ConsumableDialog,
    LeftoverDialog,
    MixDialog,
)
from app.window.stock.view import StockView

ROOM = (510, 560)
BOOKS = {"full": small_book(), "empty": replace(small_book(), projects=(), coatings=(), mixes=())}


def cut(whole: QWidget) -> list[str]:
    """Return the words that do not fit where they stand."""
    kinds = (QLabel, QAbstractButton, QAbstractSpinBox, QComboBox)
    found = []
    for one in whole.findChildren(QWidget):
        if (
            not isinstance(one, kinds)
            or not one.isVisible()
            or isinstance(one.parent(), QTabBar | QAbstractSpinBox)
        ):
            continue
        wraps = isinstance(one, QLabel) and one.wordWrap()
        wanted = one.minimumSizeHint() if isinstance(one, QComboBox) else one.sizeHint()
        tall = one.heightForWidth(one.width()) if wraps else wanted.height()
        if (not wraps and wanted.width() > one.width()) or tall > one.height():
            words = one.text() if hasattr(one, "text") else one.accessibleName()
            found.append(f"{type(one).__name__} {words!r}: {one.size()} wants {wanted}")
    return found


@pytest.mark.parametrize("book", list(BOOKS))
@pytest.mark.parametrize("make", [StockView, ShoppingView, BenchTimeView, GearView])
def test_nothing_is_cut_on_any_page(make: type, book: str, tmp_path: Path) -> None:
    with shown(make, BOOKS[book], NOW, tmp_path) as (view, _session):
        assert view.minimumSizeHint().width() <= ROOM[0]
        assert view.minimumSizeHint().height() <= ROOM[1]
        view.resize(*ROOM)
        tabs = getattr(view, "tabs", None)
        for page in range(tabs.count() if tabs else 1):
            if tabs:
                tabs.setCurrentIndex(page)
            QApplication.processEvents()
            assert cut(view) == [], page


def dialogs(session: Session, view: QWidget) -> list[FormDialog]:
    book = session.book
    assert book is not None
    return [
        CoatingDialog(session, book.coatings[0], view),
        MixDialog(session, book.mixes[0], view),
        ConsumableDialog(session, None, view),
        LeftoverDialog(session, None, view),
        CardDialog(session, None, view),
        AirbrushDialog(session, None, view),
        LocationDialog(session, book.room.locations[0], LIGHT, view),
    ]


def test_nothing_is_cut_in_any_form(tmp_path: Path) -> None:
    with shown(StockView, BOOKS["full"], NOW, tmp_path) as (view, session):
        for dialog in dialogs(session, view):
            dialog.open()
            for page in range(dialog.tabs.count()):
                dialog.tabs.setCurrentIndex(page)
                QApplication.processEvents()
                assert cut(dialog) == [], (type(dialog).__name__, page)
            dialog.reject()
