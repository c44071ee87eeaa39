"""Air: moisture, its course through the days of a location, and what it allows."""

from planner.air.advice import Advisory, Fitness, fitness, laying_advice
from planner.air.course import AirCourse, DayShape, air_course, readings_of
from planner.air.moisture import (
    ZERO_C_K,
    Air,
    Samples,
    dew_point_c,
    saturation_pressure_pa,
    surface_margin_k,
)

__all__ = [
    "ZERO_C_K",
    "Advisory",
    "Air",
    "AirCourse",
    "DayShape",
    "Fitness",
    "Samples",
    "air_course",
    "dew_point_c",
    "fitness",
    "laying_advice",
    "readings_of",
    "saturation_pressure_pa",
    "surface_margin_k",
]
