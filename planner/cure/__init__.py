"""A film through its drying states in changing air."""

from planner.cure.drying_path import PathPoint, StateTimes, film_path, state_times
from planner.cure.family_times import Evidence, Spread, StateFigure
from planner.cure.film import Cure, Film, Wait, cure_of
from planner.cure.kinetics import Band
from planner.cure.observed import STILL_TO_GO, observed_film
from planner.cure.pot_life import life_in_room, pot_life, warmest_c
from planner.cure.reference import DEEP, reference_minutes
from planner.cure.rounding import shown_minutes
from planner.cure.touches import film_um

__all__ = [
    "DEEP",
    "STILL_TO_GO",
    "Band",
    "Cure",
    "Evidence",
    "Film",
    "PathPoint",
    "Spread",
    "StateFigure",
    "StateTimes",
    "Wait",
    "cure_of",
    "film_path",
    "film_um",
    "life_in_room",
    "observed_film",
    "pot_life",
    "reference_minutes",
    "shown_minutes",
    "state_times",
    "warmest_c",
]
