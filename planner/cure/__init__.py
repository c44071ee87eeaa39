"""A film through its drying states in changing air."""

from planner.cure.family_times import StateFigure, Status
from planner.cure.film import Cure, Film
from planner.cure.kinetics import Band
from planner.cure.reference import reference_minutes

__all__ = ["Band", "Cure", "Film", "StateFigure", "Status", "reference_minutes"]
