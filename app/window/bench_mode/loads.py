"""What goes into a cup, and what else takes its colour.  No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from app.window.picture import Picture
from planner.passes import Pass, expand_all
from planner.quantity import NOT_BY_VOLUME, Measure, amount_ml, measured, mixed_solids, transfer
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.coating import Mix, Portion
from planner.values.plan import PassKey


@dataclass(frozen=True)
class Recipe:
    """How much of a coating or mix some passes take.

    ``measures`` has one entry for each portion; ``ml`` is the whole [ml];
    ``least`` is true where places without an area get it as well, so that
    it takes more; ``filled`` where the airbrush asks for more than that.
    """

    measures: tuple[Measure, ...]
    ml: float
    least: bool
    filled: bool


@dataclass(frozen=True)
class Taker:
    """A pass that takes a colour: when it is planned; None for no place yet."""

    key: PassKey
    parts: tuple[str, ...]
    start: int | None


def recipe(book: Book, coating: str, passes: tuple[Pass, ...], airbrush: str = "") -> Recipe | None:
    """Return what some passes take of a coating; None where nobody measures it by volume."""
    if book.coating(coating).family in NOT_BY_VOLUME:
        return None
    mix = book.mix(coating) or Mix(name=coating, portions=(Portion(coating=coating, parts=1),))
    ml, least = 0.0, False
    for one in passes:
        model = book.project(one.key.project).model(one.key.model)
        for place, name in one.films:
            area = model.place(place).area_cm2
            if name == coating and area == 0:
                least = True
            elif name == coating:
                ml += amount_ml(
                    area,
                    book.coating(coating).dry_film_um,
                    mixed_solids(book, mix),
                    transfer(one.step).fraction,
                )
    brush = next((one for one in book.gear.airbrushes if one.name == airbrush), None)
    needs = ml + brush.lost_ml if brush else ml
    whole = max(needs, brush.least_fill_ml) if brush else needs
    if whole <= 0:
        return None
    return Recipe(measured(book, mix, whole), whole, least, whole > needs)


def served(picture: Picture, airbrush: str, coating: str, since: int) -> tuple[PassKey, ...]:
    """Return the passes of this stretch that a load filled at ``since`` is for, in order."""
    keys = []
    for row in sorted(picture.sheet.rows, key=lambda row: row.start):
        if row.airbrush != airbrush or row.start < since:
            continue
        if isinstance(row, WorkRow):
            if not row.logged:
                keys.append(row.key)
        elif row.coating != coating:
            break
    return tuple(dict.fromkeys(keys))


def others(picture: Picture, coating: str, without: tuple[PassKey, ...]) -> tuple[Taker, ...]:
    """Return every pass not done and not in ``without`` that takes a colour, the next first.

    All active projects are looked at, for one forgotten wheel costs a load
    of its own.
    """
    done = {
        (project.name, entry.model, entry.step, entry.coat)
        for project in picture.book.projects
        for entry in project.log
    }
    starts = {placed.key: placed.start for placed in picture.plan.placements}
    found = [
        Taker(one.key, one.parts, starts.get(one.key))
        for one in expand_all(picture.book)
        if coating in {name for _, name in one.films}
        and one.key not in without
        and tuple(one.key) not in done
    ]
    return tuple(sorted(found, key=lambda one: (one.start is None, one.start or 0, one.key)))
