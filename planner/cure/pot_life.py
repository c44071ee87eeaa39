"""How long a two-pack can be used once mixed, by the warmth in which it stands."""

from __future__ import annotations

from math import floor

from planner.cure.kinetics import REACTION, arrhenius
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.room import Room

MOST_IN_THE_COLD = 2.0
"""No published pot life is longer than twice that of 21 °C (UFGS-09971, at 11 °C)."""


def pot_life(minutes: int, warmest_c: float) -> int:
    """Return the life of a two-pack in warmth, from that of its label at 23 °C [min].

    References
    ----------
    UFGS-09971 par. 3.7.1.3: 2 h at 21 °C are 1 h at 31 °C and 4 h at 11 °C;
    the slope is that of the reaction, and that a label speaks of 23 °C is assumed.

    Examples
    --------
    >>> pot_life(240, 23.0), pot_life(240, 33.0), pot_life(240, 0.0)
    (240, 123, 480)
    """
    faster = arrhenius(warmest_c, REACTION.activation_kj_mol)
    return max(1, floor(min(minutes * MOST_IN_THE_COLD, minutes / faster)))


def warmest_c(room: Room) -> float:
    """Return the warmest that it usually gets where coats are mixed and laid [°C]."""
    places = {room.locations[0], room.spraying or room.locations[0]}
    return max(
        point.temperature_c for place in places for point in (*place.workdays, *place.weekends)
    )


def life_in_room(book: Book, name: str) -> int | None:
    """Return how long a coating or mix can be used in this room [min]; None is for ever.

    What a mix says of itself stands; a two-pack in it, or the two-pack alone,
    lasts by the warmest air in which it is laid (definition 16).
    """
    mix = book.mix(name)
    names = [portion.coating for portion in mix.portions] if mix else [name]
    lives = [mix.life_minutes] if mix else []
    for each in map(book.coating, names):
        life = each.pot_life_minutes
        if life is not None:
            two_pack = each.family is Family.TWO_PACK
            lives.append(pot_life(life, warmest_c(book.room)) if two_pack else life)
    return min(lives, default=None)
