"""Where the keys go among the tables of Tonight: to what is next, and from one table to another."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from app.window.tonight_cards.card import CardFrame
from app.window.tonight_cards.places_model import Cell
from app.window.tonight_cards.places_table import PlacesTable


def next_place(cards: Iterable[CardFrame]) -> PlacesTable | None:
    """Return the table with the place that comes next, that place chosen; None where all is done.

    A table in which somebody is at work keeps the place that has the keys.
    """
    for card in cards:
        for table in card.tables:
            if card.over:
                continue
            for row in range(table.places.rowCount()):
                for column in range(table.places.all_column):
                    index = table.places.index(row, column)
                    if table.places.cell(index) is Cell.NEXT:
                        if not table.hasFocus():
                            table.setCurrentIndex(index)
                        return table
    return None


def table_beyond(cards: Sequence[CardFrame], table: PlacesTable, by: int) -> PlacesTable | None:
    """Return the table above (-1) or below (1) one, with the keys on its nearest row."""
    shown = [one for card in cards for one in card.tables if one.isVisible()]
    at = shown.index(table) + by if table in shown else -1
    if not 0 <= at < len(shown):
        return None
    other = shown[at]
    row = 0 if by > 0 else other.places.rowCount() - 1
    column = min(table.currentIndex().column(), other.places.all_column)
    other.setCurrentIndex(other.places.index(row, column))
    return other
