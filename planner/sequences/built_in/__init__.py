"""Sequences that come with the program: our own, of common practice, for any model.

All minutes in them are assumed; the logbook teaches a person's own.  Parts
are known by their names ("wheels", "tracks", "tools", "side panels",
"base"): where a model has such, they get work of their own and are joined
late.  A place called "glue faces" stays bare for the join.
"""

from planner.sequences.built_in.figure import FIGURE
from planner.sequences.built_in.scenery import SCENERY
from planner.sequences.built_in.single_colour import SINGLE_COLOUR
from planner.sequences.built_in.table_top import TABLE_TOP
from planner.sequences.built_in.weathered import WEATHERED
from planner.sequences.built_in.whitewash import WHITEWASH

__all__ = ["ALL"]

ALL = (TABLE_TOP, WEATHERED, SINGLE_COLOUR, WHITEWASH, FIGURE, SCENERY)
