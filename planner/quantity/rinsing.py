"""Thinner that no mix asks for: rinsing the airbrush, and wiping a wash back."""

from __future__ import annotations

from collections.abc import Iterator

from planner.quantity.loads import served
from planner.quantity.work_ahead import Ahead, Draw
from planner.values.book import Book
from planner.values.coating import THINNED_BY, Family
from planner.values.lookup import project_of
from planner.values.plan import PassKey, Plan
from planner.values.step import Stage, Step

RINSE_ML = 5.0  # a change or cleaning of a cup: assumed [ml]
WIPE_ML = 3.0  # on cloth and swabs, each vehicle: assumed [ml]
WIPED_WITH_SPIRIT = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL, Family.WHITE_SPIRIT})


def rinses(book: Book, plan: Plan | None, passes: tuple[Ahead, ...]) -> tuple[Draw, ...]:
    """Return what rinsing and wiping draw from the bottles of thinner that the book has.

    Water comes from the tap, and what is not in the book cannot be drawn.
    Cleaning is known from a plan alone.
    """
    return tuple(
        sorted(
            [*_cups(book, plan), *_wipes(book, passes)],
            key=lambda draw: (draw.at is None, draw.at or 0),
        )
    )


def _cups(book: Book, plan: Plan | None) -> Iterator[Draw]:
    if plan is None:
        return
    for work, sprayed in served(plan).items():
        thinner = THINNED_BY.get(book.coating(work.coating).family)
        if sprayed and thinner is not None:
            last = sprayed[-1]
            yield from _drawn(book, last.key, last.end, thinner, RINSE_ML)


def _wipes(book: Book, passes: tuple[Ahead, ...]) -> Iterator[Draw]:
    for each in passes:
        if each.pass_.step.stage is Stage.WIPE and each.begun is None:
            family = _wiped(book, each.pass_.key, each.pass_.step, each.pass_.places)
            if family in WIPED_WITH_SPIRIT:
                yield from _drawn(book, each.pass_.key, each.at, Family.WHITE_SPIRIT, WIPE_ML)


def _wiped(book: Book, key: PassKey, step: Step, places: tuple[str, ...]) -> Family | None:
    """Return the family of the last film before a step on one of its places."""
    model = project_of(book, key.project).model(key.model)
    for earlier in reversed(model.steps[: model.steps.index(step)]):
        for application in earlier.applications:
            laid = {place for other in application.places for place in model.places(other)}
            if laid & set(places):
                return book.coating(application.coating).family
    return None


def _drawn(
    book: Book, key: PassKey, at: int | None, thinner: Family, amount: float
) -> Iterator[Draw]:
    if thinner is Family.WATER_THINNER:
        return
    bottle = next((coating for coating in book.coatings if coating.family is thinner), None)
    if bottle is not None:
        yield Draw(at, key, bottle.name, bottle.name, amount, complete=True)
