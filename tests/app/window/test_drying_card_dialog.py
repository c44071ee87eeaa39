"""The dialog of a drying card, through its widgets: coat, answer, use, throw away."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QLabel
from small_book import NOW, small_book

from app.service import drying_cards
from app.window.session import Session
from app.window.stock.drying_card_dialog import DryingCardDialog
from app.window.stock.view import StockView
from app.window.tonight_view import TonightView
from planner.values.drying_card import CardTrial
from storage.bench_book import BenchBook

PRIMER = "grey primer"
CLOCK = [NOW]


@pytest.fixture
def dialog(qtbot, tmp_path) -> Iterator[tuple[DryingCardDialog, Session]]:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    CLOCK[0] = NOW
    session = Session(lambda: CLOCK[0])
    assert session.open(path)
    view = StockView(session)
    qtbot.addWidget(view)
    view.show_book()
    made = DryingCardDialog(session, PRIMER, view)
    yield made, session
    session.close()


def test_from_the_card_to_the_bottle(dialog):
    made, session = dialog
    assert made.table.isHidden()
    assert made.held.isHidden()
    assert not made.use.isEnabled()
    made.coat.click()
    (card,) = session.book.drying_cards
    assert (card.coating, card.location) == (PRIMER, session.book.room.locations[0].name)
    assert not made.table.isHidden()
    assert [made.rows.row_at(made.rows.index(at, 0)).times.trial for at in range(4)] == list(
        CardTrial
    )
    CLOCK[0] = NOW + 150
    made.refresh()
    made.table.setCurrentIndex(made.rows.index(1, 0))
    made.not_yet.click()
    (one,) = session.book.drying_cards[0].tried
    assert (one.trial, one.held) == (CardTrial.THUMB, False)
    assert made.learned.text()
    assert made.use.isEnabled()
    made.use.click()
    assert session.book.coating(PRIMER).slowness > 1
    assert not made.use.isEnabled()
    session.undo()
    made.refresh()
    assert session.book.coating(PRIMER).slowness == 1
    made.drop.click()
    assert session.book.drying_cards == ()
    assert made.table.isHidden()


def test_an_answer_that_cannot_be_is_refused_in_the_dialog(dialog):
    made, session = dialog
    made.coat.click()
    made.table.setCurrentIndex(made.rows.index(0, 0))
    made.held.click()  # in the very minute in which it was coated
    assert not made.message.isHidden()
    assert "after the card was coated" in made.message.text()
    assert session.book.drying_cards[0].tried == ()


def test_tonight_says_what_a_card_asks(make_window):
    book = drying_cards.coat_card(small_book(), PRIMER, NOW + 5).book
    picture = make_window(book, NOW + 6).session.picture
    view = TonightView()
    view.show_picture(picture)
    told = [label.text() for label in view.findChildren(QLabel)]
    assert [each for each in told if "drying card" in each and f"{PRIMER}, thumb" in each]
    view.close()
    without = make_window(small_book(), NOW + 6).session.picture
    assert without.card_asks == ()
