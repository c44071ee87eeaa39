"""Windows of clear plastic in an order: under tape while paint flies, and never coated.

A mask may stay for seven days (definition 21), so that a long order lays it
twice: for primer and colour, and for the matte clear, which would dull it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from planner.sequences.built_in.writing import work
from planner.values.sequence import EVERY, SequenceStep
from planner.values.step import Minutes, Stage, Step, Tool

GLAZING = "*/glazing"
_BUT = " but "


def masked(*steps: SequenceStep, again: str = "") -> tuple[SequenceStep, ...]:
    """Write steps between the masking of the glazing and the pulling of that mask.

    ``again`` tells a second mask from the first.
    """
    return (
        work(
            f"mask-glazing{again}",
            Stage.MASK,
            "Mask the glazing",
            GLAZING,
            minutes=Minutes(fixed=12),
            tool=Tool.HAND,
        ),
        *steps,
        work(
            f"unmask-glazing{again}",
            Stage.UNMASK,
            "Pull the tape off the glazing",
            GLAZING,
            minutes=Minutes(fixed=3),
            tool=Tool.HAND,
        ),
    )


def off_glazing(steps: Iterable[SequenceStep]) -> tuple[SequenceStep, ...]:
    """Return steps that leave the glazing alone wherever they mean every part.

    What washes all parts, glues them, or masks is left as it is.
    """
    return tuple(
        one if one.step.stage in _EVERYWHERE or one.step.id == "wash-parts" else _off(one)
        for one in steps
    )


_EVERYWHERE = frozenset({Stage.JOIN, Stage.MASK, Stage.UNMASK, Stage.TURN})


def _off(entry: SequenceStep) -> SequenceStep:
    step: Step = entry.step
    applications = tuple(
        replace(one, places=tuple(_without(place) for place in one.places))
        for one in step.applications
    )
    touches = tuple(_without(place) for place in step.touches)
    return replace(entry, step=replace(step, applications=applications, touches=touches))


def _without(place: str) -> str:
    if place == EVERY:
        return f"{EVERY}{_BUT}{GLAZING}"
    if place.startswith(f"{EVERY}{_BUT}") and GLAZING not in place:
        return f"{place}; {GLAZING}"
    return place
