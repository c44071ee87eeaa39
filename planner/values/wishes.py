"""What a person prefers, and the pace that the logbook taught."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Annotated

from planner.values.field import Field, Value
from planner.values.message import message, row
from planner.values.refusal import all_different, demand
from planner.values.step import Stage, Tool


class Level(StrEnum):
    """One level of the cost after the passes unplaced (definition 27)."""

    LATE = "late"
    FINISH = "finish"
    STRETCHES = "stretches"
    SETUP = "setup_minutes"
    MOVED = "moved"


class Staying(StrEnum):
    """What a plan may move (definition 27a)."""

    CLOSE = "keep close"
    EARLIEST = "earliest finish"


class Care(StrEnum):
    """What goes over a film, by what it costs if that was not ready (definition 6)."""

    COAT = "another coat"
    WASH = "a wash"
    DECAL = "decals"
    CLEAR = "a clear coat"
    TAPE = "tape"
    LAST = "the last coat"
    HARD = "a hard or strong coat"


USUAL_LIKELY = (Care.COAT, Care.WASH, Care.DECAL, Care.CLEAR)
"""What can be done over again: it need not wait for the slowest film that might be."""

USUAL_ORDER = (Level.LATE, Level.FINISH, Level.STRETCHES, Level.SETUP, Level.MOVED)


@dataclass(frozen=True, kw_only=True)
class Preferences(Value):
    """What a person weighs, and how.

    Attributes
    ----------
    order
        In which order the levels of the cost count, each once.
    staying
        What a plan may move.
    likely
        What is planned as soon as the film below is likely ready; all else
        once it surely is (definition 6).
    """

    order: tuple[Level, ...] = USUAL_ORDER
    staying: Staying = Staying.CLOSE
    likely: Annotated[tuple[Care, ...], Field(unique="")] = USUAL_LIKELY

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            sorted(self.order) == sorted(USUAL_ORDER),
            "order",
            message("must hold each of {levels} once", levels=row(USUAL_ORDER)),
        )


@dataclass(frozen=True, kw_only=True)
class Learned(Value):
    """A factor on the minutes of a stage and tool, agreed to at ``since``.

    It has been applied to the steps in the book; new steps from a sequence
    take it too, and entries of the log from ``since`` on teach the next.
    """

    stage: Stage
    tool: Tool
    factor: Annotated[float, Field(least=0.1, most=10, decimals=2)]
    since: datetime


@dataclass(frozen=True, kw_only=True)
class Pace:
    """What was learned and agreed to, each stage and tool once."""

    learned: tuple[Learned, ...] = ()

    def __post_init__(self) -> None:
        all_different([f"{one.stage} by {one.tool}" for one in self.learned], "learned", "stage")
