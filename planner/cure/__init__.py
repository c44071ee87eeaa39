"""A film through its drying states in changing air."""

from planner.cure.drying_path import PathPoint, StateTimes, film_path, state_times
from planner.cure.family_times import StateFigure, Status
from planner.cure.film import Cure, Film, Wait
from planner.cure.kinetics import Band
from planner.cure.observed import observed_film
from planner.cure.reference import reference_minutes
from planner.cure.rounding import shown_minutes

__all__ = [
    "Band",
    "Cure",
    "Film",
    "PathPoint",
    "StateFigure",
    "StateTimes",
    "Status",
    "Wait",
    "film_path",
    "observed_film",
    "reference_minutes",
    "shown_minutes",
    "state_times",
]
