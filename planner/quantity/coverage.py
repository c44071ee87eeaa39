"""Which share of a place a coat reaches: a wash its recesses, chips its edges.

What a step gives itself holds.  The usual shares are assumed: they decide
how much to mix, not how a model looks.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.model import Model
from planner.values.step import Stage, Step

_USUAL = {
    Stage.HIGHLIGHT: (0.4, message("a highlight sits on what faces the light")),
    Stage.DRY_BRUSH: (0.15, message("dry-brushing catches raised edges")),
    Stage.WASH: (0.3, message("a wash sits in the recesses")),
    Stage.OIL_WASH: (0.3, message("a wash sits in the recesses")),
    Stage.CHIP: (0.05, message("chips sit on edges")),
    Stage.WEATHER: (0.3, message("weathering is laid here and there")),
}
"""Usual share by stage, and why; all assumed."""


@dataclass(frozen=True)
class Share:
    """Fraction of a place that gets the coat; ``given`` by the step, else assumed."""

    fraction: float
    given: bool
    why: str


def share_of(model: Model, step: Step, place: str) -> Share:
    """Return the share of a "part/place" that a step of the model coats.

    Colours of a camouflage and the coat below them share a place alike,
    unless the step says otherwise.
    """
    for application in step.applications:
        if application.share is not None and any(
            place in model.places(reference) for reference in application.places
        ):
            return Share(application.share, True, message("given by the step"))
    if step.stage is Stage.CAMO:
        colours = 1 + _camouflage(Same(model)).get(place, 0)
        return Share(
            1 / colours, False, message("one of {n} colours that share the place", n=colours)
        )
    fraction, why = _USUAL.get(step.stage, (1.0, message("all of the place")))
    return Share(fraction, False, why)


@lru_cache(maxsize=1024)
def _camouflage(model: Same[Model]) -> Mapping[str, int]:
    """Return how many colours each place gets in camouflage steps."""
    colours: dict[str, set[str]] = {}
    for step in model.value.steps:
        if step.stage is Stage.CAMO:
            for application in step.applications:
                for reference in application.places:
                    for place in model.value.places(reference):
                        colours.setdefault(place, set()).add(application.coating)
    return {place: len(names) for place, names in colours.items()}
