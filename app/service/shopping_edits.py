"""What was bought goes beside what is left: one thing, or all that the list says."""

from __future__ import annotations

import math
from dataclasses import dataclass

from app.service.edits import Edit
from app.service.stock import buy_bottles, buy_consumable
from planner.quantity import ConsumableLine, Shopping, ShoppingLine
from planner.values.book import Book
from planner.values.message import called
from planner.values.refusal import demand

CRUMB = 1e-6  # amounts below are nothing


@dataclass(frozen=True)
class Bought:
    """So many bottles of a coating, or so much of a consumable in its unit."""

    name: str
    amount: float
    consumable: bool = False


def wanted(line: ShoppingLine | ConsumableLine) -> Bought | None:
    """Return what to buy of a line; None if there is enough.

    What is counted in whole pieces is bought in whole pieces.
    """
    if isinstance(line, ShoppingLine):
        return Bought(line.coating.name, line.bottles) if line.bottles else None
    if line.buy <= CRUMB:
        return None
    whole = line.needed.is_integer() and line.stock.is_integer()
    amount = math.ceil(line.buy - CRUMB) if whole else math.ceil(line.buy * 10 - CRUMB) / 10
    return Bought(line.name, amount, consumable=True)


def lines_of(found: Shopping) -> tuple[ShoppingLine | ConsumableLine, ...]:
    """Return every line of the list, coatings first."""
    return (*found.lines, *found.consumables)


def all_wanted(found: Shopping) -> tuple[Bought, ...]:
    """Return everything that is to be bought, coatings first."""
    every = [wanted(line) for line in lines_of(found)]
    return tuple(bought for bought in every if bought is not None)


def buy(book: Book, bought: tuple[Bought, ...]) -> Edit:
    """Put all that was bought into stock, as one edit.

    Raises
    ------
    Refused
        If nothing was bought, or something is not in the book any more.
    """
    demand(bool(bought), "", "nothing was bought")
    edit = Edit("", book)
    for other in bought:
        if other.consumable:
            edit = buy_consumable(edit.book, other.name, other.amount)
        else:
            edit = buy_bottles(edit.book, other.name, round(other.amount))
    name = edit.name if len(bought) == 1 else called("buy {n} things on the list", n=len(bought))
    return Edit(name, edit.book)
