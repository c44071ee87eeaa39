"""The run sheet: what to do in one stretch of bench time, in order of the clock.

It is read off a plan; nothing is decided here.
"""

from planner.tonight.evening_answer import EveningAnswer, evening_answer
from planner.tonight.in_sight import as_they_stood, name_of
from planner.tonight.load_cards import LoadCard, PlacesBlock, cards_of, loose_set_up
from planner.tonight.run_sheet_rows import (
    BenchRow,
    Closing,
    DryingFilm,
    Row,
    RunSheet,
    SheetCoat,
    WorkRow,
)
from planner.tonight.sheets import run_sheet, run_sheets
from planner.tonight.work_rows import swatch_of

__all__ = [
    "BenchRow",
    "Closing",
    "DryingFilm",
    "EveningAnswer",
    "LoadCard",
    "PlacesBlock",
    "Row",
    "RunSheet",
    "SheetCoat",
    "WorkRow",
    "as_they_stood",
    "cards_of",
    "evening_answer",
    "loose_set_up",
    "name_of",
    "run_sheet",
    "run_sheets",
    "swatch_of",
]
