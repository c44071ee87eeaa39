"""Air: moisture, its course through the days of a location, and what it allows."""

from planner.air.advice import Advisory, Fitness, fitness, laying_advice
from planner.air.course import AirCourse, DayShape, air_course, readings_of
from planner.air.laying import QUARTER, FitAir, fit_air, laid_in, on_any_terms, step_advice
from planner.air.moisture import (
    ZERO_C_K,
    Air,
    Samples,
    dew_point_c,
    saturation_pressure_pa,
    surface_margin_k,
    wet_bulb_drop_k,
)
from planner.air.wet_film import (
    GAS_J_MOL_K,
    VAPOUR_PA,
    solvent_drop_k,
    vapour_activation_kj_mol,
)

__all__ = [
    "GAS_J_MOL_K",
    "QUARTER",
    "VAPOUR_PA",
    "ZERO_C_K",
    "Advisory",
    "Air",
    "AirCourse",
    "DayShape",
    "FitAir",
    "Fitness",
    "Samples",
    "air_course",
    "dew_point_c",
    "fit_air",
    "fitness",
    "laid_in",
    "laying_advice",
    "on_any_terms",
    "readings_of",
    "saturation_pressure_pa",
    "solvent_drop_k",
    "step_advice",
    "surface_margin_k",
    "vapour_activation_kj_mol",
    "wet_bulb_drop_k",
]
