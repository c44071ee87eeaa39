"""Coatings that a mend needs: from the stock where it has one, else a new entry."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.step import Stage, Step


@dataclass(frozen=True)
class Wanted:
    """A kind of coating: what it is called if new, and how to know it in the stock.

    A coating of the same family and finish serves if its name holds one of
    ``words`` or if the book uses it at one of ``stages``.
    """

    name: str
    family: Family
    finish: Finish
    swatch: str
    words: tuple[str, ...]
    stages: frozenset[Stage] = frozenset()


ANY = ("",)
PRIMER_WORDS = ("primer", "grundier")
_CLEAR = frozenset({Stage.VARNISH, Stage.MATTE})
GLOSS_CLEAR = Wanted(
    "waterborne acrylic, gloss clear",
    Family.WATERBORNE_ACRYLIC,
    Finish.GLOSS,
    "#f2f2ee",
    CLEAR_WORDS,
    _CLEAR,
)
MATTE_CLEAR = Wanted(
    "waterborne acrylic, matte clear",
    Family.WATERBORNE_ACRYLIC,
    Finish.MATTE,
    "#dfe2e2",
    CLEAR_WORDS,
    _CLEAR,
)
PRIMER = Wanted(
    "waterborne acrylic, grey primer",
    Family.WATERBORNE_ACRYLIC,
    Finish.MATTE,
    "#8c8c8a",
    PRIMER_WORDS,
    frozenset({Stage.PRIME}),
)
CHIPPING_FLUID = Wanted(
    "chipping fluid", Family.CHIPPING_FLUID, Finish.SATIN, "#eeeeea", ANY, frozenset()
)


def counterpart(coating: Coating, family: Family) -> Wanted:
    """Return a coating of another family with the same colour and finish."""
    name = f"{family}, {coating.finish} {coating.swatch}"
    return Wanted(name, family, coating.finish, coating.swatch, (name,))


def thinner(family: Family) -> Wanted:
    """Return a thinner of one of the thinner families."""
    return Wanted(str(family), family, Finish.MATTE, "#f2f2ee", ANY)


def provide(book: Book, wanted: Wanted) -> tuple[Book, str]:
    """Return the name of a coating that serves, and the book that holds it."""
    used = {
        application.coating
        for step in _steps(book)
        if step.stage in wanted.stages
        for application in step.applications
    }
    for coating in book.coatings:
        if coating.family is not wanted.family:
            continue
        if coating.finish is not wanted.finish and wanted.stages:
            continue
        if named_so(coating, wanted.words) or coating.name in used:
            return book, coating.name
    taken = {coating.name for coating in book.coatings} | {mix.name for mix in book.mixes}
    name, number = wanted.name, 1
    while name in taken:
        number += 1
        name = f"{wanted.name} ({number})"
    fresh = Coating(name=name, family=wanted.family, finish=wanted.finish, swatch=wanted.swatch)
    return replace(book, coatings=(*book.coatings, fresh)), name


def _steps(book: Book) -> Iterator[Step]:
    for project in book.projects:
        for model in project.models:
            yield from model.steps
