"""What is told of each coating: what it is for, what is left, what the plan needs of it."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from app.window.message_translation import translated
from planner.cure.family_times import Evidence
from planner.cure.reference import reference_minutes
from planner.quantity import Shopping, ShoppingLine, Stock, old_bottle, stock_now
from planner.values.book import Book
from planner.values.coating import GLUES, THINNERS, Coating, Family, State

MOST_ROLES = 3


@dataclass(frozen=True)
class StockRow:
    """One coating; ``roles`` are stages and roles of the steps that take it.

    ``line`` is what the plan needs of it, None if nothing; ``old`` is a word
    about a bottle opened long ago.
    """

    stock: Stock
    roles: tuple[str, ...]
    line: ShoppingLine | None
    old: str

    @property
    def coating(self) -> Coating:
        """The coating."""
        return self.stock.coating

    @property
    def short(self) -> bool:
        """Tell whether the plan needs more than is left."""
        return self.line is not None and self.line.needed_ml > self.stock.left_ml + 1e-9


@dataclass(frozen=True)
class FamilyRows:
    """The coatings of a family, by name."""

    family: Family
    rows: tuple[StockRow, ...]


@dataclass(frozen=True)
class CureLine:
    """Minutes to one state at 23 °C and 50 % RH, as stated and as learned, and whence."""

    state: State
    minutes: float
    learned: float | None
    status: Evidence
    source: str


def families(book: Book, found: Shopping | None, today: date) -> tuple[FamilyRows, ...]:
    """Return every coating of a book, by family in the order of chemistry."""
    lines = {line.coating.name: line for line in found.lines} if found else {}
    roles = _roles(book)
    rows: dict[Family, list[StockRow]] = defaultdict(list)
    for stock in stock_now(book):
        coating = stock.coating
        rows[coating.family].append(
            StockRow(
                stock,
                roles.get(coating.name, ()),
                lines.get(coating.name),
                old_bottle(coating, today),
            )
        )
    return tuple(
        FamilyRows(family, tuple(sorted(rows[family], key=lambda row: row.coating.name.casefold())))
        for family in Family
        if family in rows
    )


def cure_lines(coating: Coating) -> tuple[CureLine, ...]:
    """Return when a coat reaches each state; nothing for what lays no film."""
    if coating.family in THINNERS:
        return ()
    found = []
    for state in State:
        figure = reference_minutes(coating, state)
        learned = None if coating.slowness == 1 else figure.minutes * coating.slowness
        found.append(
            CureLine(state, figure.minutes, learned, figure.status, translated(figure.source))
        )
    return tuple(found)


def _roles(book: Book) -> Mapping[str, tuple[str, ...]]:
    """Return what each coating is used for in the active projects, mixes taken apart."""
    found: dict[str, dict[str, None]] = defaultdict(dict)
    mixes = {mix.name: mix for mix in book.mixes}
    for project in book.projects:
        for model in project.models if project.active else ():
            for step in model.steps:
                role = step.role.value if step.role else step.stage.value
                for application in step.applications:
                    mix = mixes.get(application.coating)
                    if mix is None:
                        found[application.coating][role] = None
                        continue
                    for portion in mix.portions:
                        thins = book.coating(portion.coating).family in THINNERS
                        found[portion.coating]["thinner" if thins else role] = None
    for coating in book.coatings:
        if coating.family in THINNERS:
            found[coating.name]["thinner"] = None
        elif coating.family in GLUES:
            found[coating.name]["glue"] = None
    return {name: tuple(roles) for name, roles in found.items()}


def told_place(book: Book, path: str) -> str:
    """Return what a path of a refusal points to by its names; the path if it has none."""
    at = [int(number) for number in re.findall(r"\[(\d+)\]", path)]
    if match := re.match(r"projects\[\d+\]\.models\[\d+\]\.steps\[\d+\]", path):
        model = book.projects[at[0]].models[at[1]]
        return f"{model.name}, {model.steps[at[2]].id}" if match else path
    if path.startswith("mixes["):
        return book.mixes[at[0]].name
    if path.startswith("supplies.leftovers["):
        return book.supplies.leftovers[at[0]].name
    if path.startswith("supplies.cards["):
        return book.supplies.cards[at[0]].name
    if path.startswith("sequences["):
        return book.sequences[at[0]].name
    if path.startswith("projects["):
        return book.projects[at[0]].name
    return path
