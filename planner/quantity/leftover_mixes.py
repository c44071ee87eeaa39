"""Leftover mixes in jars: until when they can be used, and where for."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.values.book import Book
from planner.values.mix import Portion
from planner.values.moment import minute_of
from planner.values.supplies import Leftover

DAY = 1440


@dataclass(frozen=True)
class Kept:
    """A leftover: the first minute at which it no longer keeps, and what it can touch up.

    ``colour`` is the coating or mix of the same contents, "" if there is
    none; ``models`` are the "project/model" names that take that colour.
    """

    leftover: Leftover
    until: int
    usable: bool
    colour: str
    models: tuple[str, ...]


def kept(book: Book, now: int) -> tuple[Kept, ...]:
    """Return every leftover of the book, those that can be used the longest last."""
    colours = {_contents(mix.portions): mix.name for mix in book.mixes}
    found = []
    for leftover in book.supplies.leftovers:
        until = minute_of(leftover.made) + leftover.keeps_days * DAY
        colour = colours.get(_contents(leftover.portions), "")
        if not colour and len(leftover.portions) == 1:
            named = leftover.portions[0].coating
            colour = named if named in {coating.name for coating in book.coatings} else ""
        usable = now < until and leftover.ml > 0
        found.append(Kept(leftover, until, usable, colour, _takers(book, colour)))
    return tuple(sorted(found, key=lambda kept: kept.until))


def _contents(portions: Iterable[Portion]) -> frozenset[tuple[str, float]]:
    """Return what a mix is made of, as fractions, in no order."""
    every = tuple(portions)
    whole = sum(portion.parts for portion in every)
    return frozenset((portion.coating, round(portion.parts / whole, 3)) for portion in every)


def _takers(book: Book, colour: str) -> tuple[str, ...]:
    return tuple(
        f"{project.name}/{model.name}"
        for project in book.projects
        if project.active
        for model in project.models
        if any(
            application.coating == colour
            for step in model.steps
            for application in step.applications
        )
    )
