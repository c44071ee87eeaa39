"""Minutes of a sequence's steps on a model of another size, and by a person's own pace."""

from __future__ import annotations

from dataclasses import replace

from planner.pace.minutes import scaled
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


def grown(minutes: Minutes, factor: float) -> Minutes:
    """Return minutes with those for each part grown; some stay at least one.

    Setting out stays as long on a large model as on a small one; so does a
    change of colour.
    """
    if not minutes.per_part:
        return minutes
    return replace(minutes, per_part=min(max(1, round(minutes.per_part * factor)), MOST_MINUTES))


def factor_of(pace: Pace, step: Step) -> float:
    """Return the learned factor on a step's minutes, by its stage and tool."""
    return next(
        (
            learned.factor
            for learned in pace.learned
            if (learned.stage, learned.tool) == (step.stage, step.tool)
        ),
        1.0,
    )


def paced(step: Step, factor: float) -> Minutes:
    """Return the minutes of a step on its model, times a factor, rounded as learning does."""
    if factor == 1:
        return step.minutes
    parts = {name.partition("/")[0] for name in step.references()}
    colours = {application.coating for application in step.applications}
    return scaled(step.minutes, factor, len(parts), len(colours))
