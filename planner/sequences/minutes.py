"""Minutes of a sequence's steps on a model of another size, and by a person's own pace."""

from __future__ import annotations

from planner.values.step import Minutes, Step
from planner.values.wishes import Pace

EXPONENT = 0.5
"""How work on each part grows with the painted area; assumed.

Between 0 (a model is a model: it is picked up, turned and put down alike)
and 1 (paint is spread square centimetre by square centimetre).  The pace
that the logbook teaches corrects what comes of it.
"""

LEAST, MOST = 0.25, 4.0  # assumed: beyond these the law is not to be trusted
MOST_MINUTES = 1440  # what a step may take at all [min]


def growth(area_cm2: float | None, made_for_cm2: float) -> float:
    """Return the factor on the minutes for each part; 1 where the area is not known [cm²]."""
    if not area_cm2 or area_cm2 <= 0:
        return 1.0
    factor = (area_cm2 / made_for_cm2) ** EXPONENT
    return float(min(max(factor, LEAST), MOST))


def factor_of(pace: Pace, step: Step) -> float:
    """Return the learned factor on a step's minutes, by its stage and tool."""
    return next(
        (one.factor for one in pace.learned if (one.stage, one.tool) == (step.stage, step.tool)),
        1.0,
    )


def scaled(minutes: Minutes, grown: float = 1.0, pace: float = 1.0) -> Minutes:
    """Return minutes with those for each part grown, and all at a pace.

    Setting out, for each pass, stays as long on a large model as on a small
    one; so does a change of colour.  What was some minutes stays at least one.
    """
    return Minutes(
        fixed=_whole(minutes.fixed * pace, minutes.fixed),
        per_part=_whole(minutes.per_part * grown * pace, minutes.per_part),
        per_change=_whole(minutes.per_change * pace, minutes.per_change),
    )


def _whole(value: float, before: int) -> int:
    return min(max(1, round(value)), MOST_MINUTES) if before else 0
