"""What one pass takes of each coating or mix."""

from __future__ import annotations

from dataclasses import dataclass

from planner.passes import Pass
from planner.quantity.areas import areas_of
from planner.quantity.coverage import share_of
from planner.quantity.film_volume import amount_ml
from planner.quantity.mix_ratios import mix_of, mixed_solids
from planner.quantity.transfer import transfer_efficiency
from planner.values.book import Book
from planner.values.coating import GLUES, Family
from planner.values.gear import Airbrush

NOT_BY_VOLUME = GLUES | {Family.DECAL, Family.PIGMENT, Family.GRAPHITE, Family.SALT}
"""Families that nobody measures out in millilitres per area."""


@dataclass(frozen=True)
class Take:
    """What a pass takes of one coating or mix [ml].

    What misses the model is counted, what stays in the cup is not.
    ``complete`` is false where a place that gets it has no area, so that it
    takes more.
    """

    colour: str
    ml: float
    complete: bool


def coating_needed(book: Book, pass_: Pass, airbrush: str = "") -> tuple[Take, ...]:
    """Return what a pass takes of every colour that is measured by volume, in its own order.

    ``airbrush`` names the one it is sprayed with, where that is known; the
    only one that there is need not be named.
    """
    model = book.project(pass_.key.project).model(pass_.key.model)
    areas = areas_of(model)
    owned = book.gear.airbrushes
    brush = owned[0] if not airbrush and len(owned) == 1 else brush_of(book, airbrush)
    fraction = transfer_efficiency(pass_.step, brush).fraction
    found = []
    for colour in dict.fromkeys(name for _, name in pass_.films):
        coating = book.coating(colour)
        if coating.family in NOT_BY_VOLUME:
            continue
        places = [place for place, name in pass_.films if name == colour]
        covered = sum(
            areas[place].cm2 * share_of(model, pass_.step, place).fraction for place in places
        )
        solids = mixed_solids(book, mix_of(book, colour))
        ml = amount_ml(covered, coating.dry_film_um, solids, fraction)
        found.append(Take(colour, ml, all(areas[place].cm2 > 0 for place in places)))
    return tuple(found)


def brush_of(book: Book, name: str) -> Airbrush | None:
    """Return the airbrush called ``name``, or None."""
    return next((airbrush for airbrush in book.gear.airbrushes if airbrush.name == name), None)
