"""Coatings as bottles on a shelf: keys, what is chosen, colours that stay true, what to buy."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication
from view_steps import shown

from app.service import demos
from app.service.edits import Edit
from app.window.colour_names import plain_colour, short_name
from app.window.palette import DARK, LIGHT, contrast
from app.window.plan_snapshot import picture_of
from app.window.session import Session
from app.window.stock.coatings import CoatingsPage
from app.window.stock.shelf import ShelfModel
from app.window.stock.tiles import notes_of
from app.window.stock.view import StockView
from planner.values.coating import Coating, Family

Key = Qt.Key
DEMO = demos.read("club_day_batch").book
NOW = demos.first_evening(DEMO)
SHORT = "waterborne acrylic, winter blue"


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[tuple[StockView, Session]]:
    with shown(StockView, DEMO, NOW, tmp_path) as both:
        both[0].resize(1000, 900)
        QApplication.processEvents()
        yield both


def image_of(page: CoatingsPage) -> QImage:
    return page.shelf.viewport().grab().toImage()


def test_every_bottle_stands_once_below_its_family(opened: tuple[StockView, Session]) -> None:
    shelf = opened[0].coatings.shelf.shelf
    QAbstractItemModelTester(shelf, QAbstractItemModelTester.FailureReportingMode.Fatal)
    rows = [shelf.data(shelf.index(at), Qt.ItemDataRole.UserRole) for at in range(shelf.rowCount())]
    bottles = [row for row in rows if not isinstance(row, str)]
    assert sorted(row.coating.name for row in bottles) == sorted(
        coating.name for coating in DEMO.coatings
    )
    heads = [row for row in rows if isinstance(row, str)]
    assert len(heads) == len({coating.family for coating in DEMO.coatings})
    assert sum(int(head.rpartition("(")[2].rstrip(")")) for head in heads) == len(bottles)


def test_arrow_keys_reach_every_bottle_and_pass_the_headings(
    opened: tuple[StockView, Session],
) -> None:
    page = opened[0].coatings
    page.shelf.setFocus()
    page.shelf.setCurrentIndex(page.shelf.shelf.index(1))
    seen = [page.chosen().name]
    for _ in range(page.shelf.shelf.rowCount()):
        QTest.keyClick(page.shelf, Key.Key_Right)
        seen.append(page.chosen().name)
    assert set(seen) == {coating.name for coating in DEMO.coatings}
    assert page.title.text().casefold() == page.chosen().name.casefold()
    for _ in range(page.shelf.shelf.rowCount()):
        QTest.keyClick(page.shelf, Key.Key_Up)
    at = page.shelf.visualRect(page.shelf.currentIndex()).center()
    assert page.shelf.shelf.bottle(page.shelf.currentIndex()) is not None
    QTest.keyClick(page.shelf, Key.Key_Down)
    below = page.shelf.visualRect(page.shelf.currentIndex()).center()
    assert below.y() > at.y()
    assert abs(below.x() - at.x()) < page.shelf.visualRect(page.shelf.currentIndex()).width()


def test_shelf_and_list_choose_the_same_and_the_filter_holds_for_both(
    opened: tuple[StockView, Session],
) -> None:
    page = opened[0].coatings
    page.shelf.setCurrentIndex(page.shelf.shelf.index_of(SHORT))
    page.as_list.setChecked(True)
    assert page.tree.isVisible()
    assert not page.shelf.isVisible()
    assert page.chosen().name == SHORT
    page.look.setText("brick")
    assert page.chosen().name == "waterborne acrylic, brick red"
    assert page.shelf.shelf.rowCount() == 2  # a family and its bottle
    page.look.clear()
    assert page.shelf.shelf.bottle(page.shelf.currentIndex()).coating.name == page.chosen().name


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_a_chosen_bottle_keeps_its_colour_and_pale_ones_are_ringed(
    opened: tuple[StockView, Session], colours
) -> None:
    """The swatch has the coating's own colour to the bit; its ring is seen: at least 3 : 1
    against the tile (WCAG 2.2, 1.4.11), where the colour itself is not.
    """
    opened[0].set_colours(colours)
    page = opened[0].coatings
    for name in (SHORT, "matte clear, waterborne"):
        page.shelf.setCurrentIndex(page.shelf.shelf.index_of(name))
        QApplication.processEvents()
        tile = page.shelf.visualRect(page.shelf.currentIndex())
        image, ratio = image_of(page), page.devicePixelRatio()
        coating = next(each for each in DEMO.coatings if each.name == name)
        y = int((tile.top() + 40) * ratio)
        line = [
            image.pixelColor(x, y).name()
            for x in range(int((tile.left() + 60) * ratio), int((tile.right() - 11) * ratio))
        ]
        assert line.count(QColor(coating.swatch).name()) > 60
        if contrast(coating.swatch, colours.sheet) < 3:
            assert max(contrast(each, colours.sheet) for each in line) >= 3


def test_what_is_to_buy_stands_beside_with_its_day_and_is_bought_there(
    opened: tuple[StockView, Session],
) -> None:
    view, session = opened
    book = replace(
        DEMO,
        coatings=tuple(
            replace(each, in_stock_ml=3.0) if each.name == SHORT else each for each in DEMO.coatings
        ),
    )
    assert session.attempt(lambda _book: Edit("a bottle counted", book)) is None
    picture = picture_of(book, NOW, quick=True)
    view._show(session.book, picture)
    (line,) = [line for line in picture.shopping.lines if line.coating.name == SHORT]
    row = view.coatings.shelf.shelf.bottle(view.coatings.shelf.shelf.index_of(SHORT))
    assert row.short
    first, second = notes_of(row, session.zone)
    assert first.startswith("3.0 ml, plan ")
    assert second.startswith("short ")
    assert " · " in second
    (button,) = view.buy.buttons
    assert SHORT in button.accessibleName()
    button.click()
    bought = next(each for each in session.book.coatings if each.name == SHORT)
    assert bought.in_stock_ml == pytest.approx(3.0 + line.bottles * bought.bottle_ml)


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("waterborne acrylic, brick red", "Brick red"),
        ("gloss clear, waterborne", "Gloss clear, waterborne"),
        ("waterborne acrylic", "Waterborne acrylic"),
    ],
)
def test_a_tile_does_not_say_its_family_twice(name: str, told: str) -> None:
    assert (
        short_name(Coating(name=name, family=Family.WATERBORNE_ACRYLIC, swatch="#888888")) == told
    )


def test_only_what_most_colours_are_goes_without_its_family() -> None:
    assert plain_colour("waterborne acrylic, brick red") == "Brick red"
    assert plain_colour("alkyd enamel, brick red") == "Alkyd enamel, brick red"


def test_an_empty_shelf_is_sound() -> None:
    model = ShelfModel()
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    model.show_rows(())
    assert model.rowCount() == 0
