"""What was bought goes into stock: bottle for bottle, piece for piece, as one edit."""

from __future__ import annotations

from dataclasses import replace

import pytest
from small_book import small_book

from app.service import shopping_edits
from app.service.shopping_edits import Bought
from planner.quantity import ConsumableLine, Shopping, ShoppingLine
from planner.values.book import Book
from planner.values.refusal import Refused
from planner.values.supplies import Consumable


def line(needed: float, stock: float, margin: float = 0, bottle: float = 17) -> ShoppingLine:
    coating = replace(small_book().coatings[0], bottle_ml=bottle)
    return ShoppingLine(coating, needed, stock, margin, None, complete=True, replace=False, old="")


def tape(needed: float, stock: float) -> ConsumableLine:
    return ConsumableLine("tape", "m", needed, stock, 0, None)


def found(*lines: ShoppingLine | ConsumableLine) -> Shopping:
    return Shopping(
        lines=tuple(line for line in lines if isinstance(line, ShoppingLine)),
        consumables=tuple(line for line in lines if isinstance(line, ConsumableLine)),
        at_hand=(),
        no_area=(),
        colours=(),
        leftovers=(),
    )


@pytest.mark.parametrize(
    ("needed", "stock", "margin", "bottles"),
    # By hand: 20 ml and 10 % are 22; less 4 in stock are 18, which are two bottles of 17.
    [(20, 4, 10, 2), (20, 4, 0, 1), (4, 4, 0, None), (4, 4, 10, 1), (35, 0, 0, 3)],
)
def test_bottles_are_bought_whole(
    needed: float, stock: float, margin: float, bottles: int | None
) -> None:
    wanted = shopping_edits.wanted(line(needed, stock, margin))
    assert (wanted.amount if wanted else None) == bottles


@pytest.mark.parametrize(
    ("needed", "stock", "amount"),
    [(24.0, 2.0, 22), (6.5, 1.0, 5.5), (2.23, 0.5, 1.8), (2.0, 2.0, None)],
)
def test_pieces_are_bought_whole_and_lengths_to_a_tenth(
    needed: float, stock: float, amount: float | None
) -> None:
    wanted = shopping_edits.wanted(tape(needed, stock))
    assert (wanted.amount if wanted else None) == amount


def test_all_that_is_wanted_leaves_out_what_there_is() -> None:
    list_ = found(line(20, 4), tape(3.0, 5.0))
    assert shopping_edits.all_wanted(list_) == (Bought("grey primer", 1),)


def with_tape() -> Book:
    """Return a book with 2 m of tape and 5 ml of primer in bottles of 30 ml."""
    book = small_book()
    primer = replace(book.coatings[0], in_stock_ml=5, bottle_ml=30)
    tape_ = Consumable(name="tape", unit="m", in_stock=2, per_pass=1)
    supplies = replace(book.supplies, consumables=(tape_,))
    return replace(book, coatings=(primer, *book.coatings[1:]), supplies=supplies)


def test_bought_things_stand_beside_what_was_there() -> None:
    bought = (Bought("grey primer", 2), Bought("tape", 5.5, consumable=True))
    edit = shopping_edits.buy(with_tape(), bought)
    assert edit.book.coating("grey primer").in_stock_ml == 5 + 2 * 30
    assert edit.book.supplies.consumables[0].in_stock == 2 + 5.5
    assert edit.name == "buy 2 things on the list"
    assert shopping_edits.buy(with_tape(), bought[:1]).name == "buy 2 bottles of grey primer"


def test_nothing_and_unknown_things_cannot_be_bought() -> None:
    with pytest.raises(Refused):
        shopping_edits.buy(with_tape(), ())
    with pytest.raises(Refused, match="no coating is called"):
        shopping_edits.buy(with_tape(), (Bought("gray primer", 1),))
