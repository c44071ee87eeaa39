"""The Shopping view: its lines worked out by hand, and what was bought goes into stock."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtTest import QAbstractItemModelTester
from small_book import NOW, ZONE, at, key, small_book
from view_steps import dialog_of, shown

from app.service import stock
from app.service.shopping_edits import Bought
from app.window.session import Session
from app.window.shopping.shopping_rows import current, rows_of
from app.window.shopping.view import ShoppingView, runs_out_line
from app.window.stock.supply_dialogs import AmountDialog
from planner.quantity import ConsumableLine, RunsOut, Shopping, ShoppingLine
from planner.values.book import Book
from planner.values.mix import Portion
from planner.values.step import Stage
from planner.values.supplies import Consumable, Leftover, Supplies

Opened = tuple[ShoppingView, Session]
BARE = Shopping((), (), (), (), (), ())


def out(minute: int | None) -> RunsOut:
    return RunsOut(minute, key("prime"), 2, 3)


def line(
    name: str, needed: float, stock: float, when: RunsOut | None, old: str = ""
) -> ShoppingLine:
    coating = replace(small_book().coatings[0], name=name)
    return ShoppingLine(coating, needed, stock, 0, when, complete=True, replace=False, old=old)


def test_what_runs_out_first_comes_first_and_enough_comes_last() -> None:
    found = replace(
        BARE,
        lines=(
            line("never short", 1, 10, None),
            line("without a place", 20, 10, out(None)),
            line("late", 20, 10, out(NOW + 5000)),
            line("old but enough", 1, 10, None, old="opened 7 years ago: stir it"),
        ),
        consumables=(ConsumableLine("tape", "m", 3.0, 1.0, 0, out(NOW + 10)),),
    )
    rows = rows_of(found, all_of_it=False)
    assert [row.name for row in rows] == ["tape", "late", "without a place", "old but enough"]
    assert [row.buy() for row in rows] == [
        "2 m",
        "1 bottle of 17 ml",
        "1 bottle of 17 ml",
        "enough",
    ]
    assert rows[3].bought is None
    every = rows_of(found, all_of_it=True)
    assert [row.name for row in every][-2:] == ["never short", "old but enough"]


def test_an_unknown_area_makes_enough_uncertain() -> None:
    unsure = replace(line("sand", 1, 10, None), complete=False)
    (row,) = rows_of(replace(BARE, lines=(unsure,)), all_of_it=False)
    assert row.buy() == "perhaps enough"
    assert row.takes() == "over 1.0 ml"
    assert "no area" in row.notes()


def test_running_out_is_told_with_model_and_step() -> None:
    assert runs_out_line(out(NOW), "Thu 19:30") == (
        "runs out Thu 19:30, at prime · cart: model 2 of 3 that take it"
    )
    alone = RunsOut(NOW, key("prime"), 1, 1)
    assert runs_out_line(alone, "19:30") == "runs out 19:30, at prime · cart"


def short_book() -> Book:
    """Return a book in which primer and swabs are short, and a leftover is kept."""
    book = small_book()
    coatings = tuple(
        replace(coating, in_stock_ml=0.1 if coating.name == "grey primer" else 50)
        for coating in book.coatings
    )
    swabs = Consumable(name="swabs", unit="pieces", in_stock=1, per_pass=4, stages=(Stage.WIPE,))
    jar = Leftover(
        name="jar",
        ml=4,
        made=datetime(2031, 3, 1, 12, tzinfo=ZONE),
        keeps_days=60,
        portions=(Portion(coating="sand", parts=2), Portion(coating="water thinner", parts=3)),
    )
    supplies = Supplies(margin_pct=0, consumables=(swabs,), leftovers=(jar,))
    return replace(book, coatings=coatings, supplies=supplies)


@pytest.fixture
def opened(qtbot, tmp_path: Path) -> Iterator[Opened]:
    with shown(ShoppingView, short_book(), NOW, tmp_path) as (view, session):
        qtbot.waitUntil(lambda: session.picture is not None, timeout=15_000)
        session.pictured.connect(lambda change: view.show_picture(change.new))
        view.show_picture(session.picture)
        yield view, session


def test_the_list_holds_what_is_short_and_when(opened: Opened) -> None:
    view, session = opened
    QAbstractItemModelTester(view.list.model)
    assert [row.name for row in view.list.model.rows][:1] == ["grey primer"]
    (swabs,) = [row for row in view.list.model.rows if row.name == "swabs"]
    assert swabs.bought == Bought("swabs", 3, consumable=True)  # four are needed, one is there
    assert "2 things to buy" in view.summary.text()
    # The plan primes first, right after loading, on the evening that begins now.
    placed = session.picture.plan.placement(key("prime"))
    assert at("2031-03-06 19:30") <= placed.start < at("2031-03-06 21:30")
    assert view.list.model.index(0, 2).data() == f"today 19:{placed.start - NOW + 30:02d}"
    assert "runs out" in view.list.detail.text()
    assert view.touch_ups.model.rows[0].colour == "thin sand"
    assert "cart" in view.touch_ups.detail.text()


def test_bought_puts_it_into_stock_and_off_the_list(qtbot, opened: Opened) -> None:
    view, session = opened
    view.list.choose(0)
    with qtbot.waitSignal(session.pictured, timeout=15_000):
        view.list.buttons[1].click()
        assert [row.name for row in view.list.model.rows if row.bought] == ["swabs"]  # at once
    assert session.book.coating("grey primer").in_stock_ml == 0.1 + 17
    assert [row.name for row in view.list.model.rows if row.bought] == ["swabs"]
    with qtbot.waitSignal(session.pictured, timeout=15_000):
        view.bought_all.click()
    assert session.book.supplies.consumables[0].in_stock == 4
    assert not view.bought_all.isEnabled()
    assert "enough" in view.summary.text()
    session.undo()
    session.undo()
    assert session.book == short_book()


def test_where_the_plan_no_longer_fits_its_own_list_stands(opened: Opened) -> None:
    _, session = opened
    book, picture = session.book, session.picture
    renamed = stock.put_coating(book, "grey primer", replace(book.coatings[0], name="pale")).book
    assert current(picture, renamed) is picture.shopping
    assert current(picture, book) is picture.shopping
    bought = stock.buy_bottles(book, "grey primer", 1).book
    primer = next(line for line in current(picture, bought).lines if line.coating.name != "sand")
    assert primer.stock_ml == pytest.approx(17.1)


def test_another_amount_is_bought(opened: Opened) -> None:
    view, session = opened
    view.list.choose(0)
    view.list.buttons[2].click()
    form = dialog_of(view, AmountDialog)
    form.forms[0].fields["amount"].setValue(3)
    form.buttons.accepted.emit()
    assert session.book.coating("grey primer").in_stock_ml == pytest.approx(0.1 + 3 * 17)


def test_the_margin_is_an_edit(qtbot, opened: Opened) -> None:
    view, session = opened
    view.margin.setValue(600)
    qtbot.waitUntil(lambda: view.message.text() != "")
    assert "outside 0 to 500" in view.message.text()
    view.margin.setValue(25)
    qtbot.waitUntil(lambda: session.book.supplies.margin_pct == 25)
    assert view.message.text() == ""
    view.everything.setChecked(True)
    assert {row.name for row in view.list.model.rows} >= {"sand", "gloss clear", "dark oil"}


def test_without_a_plan_nothing_is_listed(tmp_path: Path) -> None:
    with shown(ShoppingView, replace(small_book(), projects=()), NOW, tmp_path) as (view, _):
        view._found = None
        view._fill()
        assert view.list.model.rowCount() == 0
        assert not view.bought_all.isEnabled()
        assert view.list.empty.isVisible()
