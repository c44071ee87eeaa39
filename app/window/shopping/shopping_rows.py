"""What is told of each thing on the list, in the order in which it runs out."""

from __future__ import annotations

from dataclasses import dataclass

from app.service.shopping_edits import Bought, lines_of, wanted
from app.window import words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.stock.tree import ml, needed_words
from planner.quantity import ConsumableLine, RunsOut, Shopping, ShoppingLine, shopping
from planner.values.book import Book

FOREVER = 1 << 60


@dataclass(frozen=True)
class ShopRow:
    """One coating or consumable that the plan takes; ``bought`` is None if there is enough."""

    line: ShoppingLine | ConsumableLine
    bought: Bought | None

    @property
    def name(self) -> str:
        """What it is."""
        line = self.line
        return line.coating.name if isinstance(line, ShoppingLine) else line.name

    @property
    def swatch(self) -> str:
        """Its colour, "" for what has none."""
        return self.line.coating.swatch if isinstance(self.line, ShoppingLine) else ""

    @property
    def runs_out(self) -> RunsOut | None:
        """The first work that the stock does not cover."""
        return self.line.runs_out

    def buy(self) -> str:
        """Return what to buy, "2 bottles of 17 ml"."""
        if self.bought is None:
            if self.complete:
                return words.tr("enough")
            there = isinstance(self.line, ConsumableLine) or self.line.stock_ml > 0
            return words.tr("perhaps enough") if there else words.tr("some, amount not known")
        if isinstance(self.line, ShoppingLine):
            number = round(self.bought.amount)
            told = (
                words.tr("1 bottle of {size:g} ml")
                if number == 1
                else words.tr("{n} bottles of {size:g} ml")
            )
            return words.fill(told, n=number, size=self.line.coating.bottle_ml)
        return measure(self.bought.amount, self.line.unit)

    def takes(self) -> str:
        """Return how much the plan takes."""
        if isinstance(self.line, ConsumableLine):
            return measure(self.line.needed, self.line.unit)
        return needed_words(self.line)

    def there(self) -> str:
        """Return how much there is."""
        if isinstance(self.line, ConsumableLine):
            return measure(self.line.stock, self.line.unit)
        return ml(self.line.stock_ml)

    @property
    def complete(self) -> bool:
        """Tell whether every area that takes it is known."""
        return isinstance(self.line, ConsumableLine) or self.line.complete

    def notes(self) -> str:
        """Return what else to mind."""
        if isinstance(self.line, ConsumableLine):
            return ""
        told = []
        if self.line.replace:
            told.append(words.tr("under half a bottle left"))
        if self.line.old:
            told.append(translated(self.line.old))
        if not self.complete:
            told.append(words.tr("some places have no area"))
        return "; ".join(told)


def current(picture: PlanSnapshot, book: Book) -> Shopping:
    """Return the list for the book as it is now, before it is planned anew.

    What was bought leaves the list at once.  Where more than the stock has
    changed, the plan no longer fits the book, and its own list stands.
    """
    planned = picture.book
    if book is planned or not _only_stock_differs(planned, book):
        return picture.shopping
    return shopping(book, picture.plan, picture.now)


def _only_stock_differs(book: Book, other: Book) -> bool:
    kept = ("projects", "mixes", "gear")
    names = [[coating.name for coating in book.coatings] for book in (book, other)]
    return names[0] == names[1] and all(
        getattr(book, field) == getattr(other, field) for field in kept
    )


def rows_of(found: Shopping, *, all_of_it: bool) -> tuple[ShopRow, ...]:
    """Return what is to be bought, what runs out first coming first; or all that is taken."""
    every = [ShopRow(line, wanted(line)) for line in lines_of(found)]
    kept = [row for row in every if all_of_it or row.bought or row.notes()]
    return tuple(sorted(kept, key=_urgency))


def _urgency(row: ShopRow) -> tuple[bool, int, str]:
    out = row.runs_out
    at = FOREVER if out is None or out.at is None else out.at
    return row.bought is None, at, row.name.casefold()


def measure(amount: float, unit: str) -> str:
    """Return an amount of a consumable, "12 pieces"."""
    return words.tr("{amount} {unit}").format(
        amount=words.decimal(f"{round(amount, 2):g}"), unit=unit
    )
