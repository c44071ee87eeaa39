"""Coats for which the air of the room is never fit (definition 10a)."""

from __future__ import annotations

from collections.abc import Iterator

from planner.air import Advisory, Air, Fitness, laid_in, on_any_terms, step_advice
from planner.layers.finding import Finding, Scene
from planner.layers.overcoat_table import LayerVerdict
from planner.values.coating import Coating
from planner.values.message import message
from planner.values.room import Location
from planner.values.step import Step


def unfit_air(scene: Scene) -> Iterator[Finding]:
    """Yield steps that lay what the air of their place forbids at every hour of the week."""
    for moment in scene.moments:
        if on_any_terms(moment.step):
            continue
        location = laid_in(scene.book.room, moment.step.tool)
        against: dict[str, tuple[Advisory, list[str]]] = {}
        for place, name in moment.laid.items():
            reason = _never(moment.step, scene.book.coating(name), location)
            if reason is not None:
                against.setdefault(name, (reason, []))[1].append(place)
        for reason, places in against.values():
            yield scene.found(
                message("air that forbids a coat"),
                LayerVerdict.NEVER,
                moment,
                places,
                message(
                    "the air of {location} is unfit for it at every hour: {reason}; warm "
                    "or dry it, or tick “in any air” on the step",
                    location=location.name,
                    reason=reason.reason,
                ),
                None,
                reason.source,
            )


def _never(step: Step, coating: Coating, location: Location) -> Advisory | None:
    """Return what forbids it at the first point of the day, if something does at every one."""
    first = None
    for point in (*location.workdays, *location.weekends):
        air = Air(point.temperature_c, point.humidity_pct)
        advice = step_advice(step, coating, air)
        worst = next((one for one in advice if one.fitness is Fitness.NO_GO), None)
        if worst is None:
            return None
        first = first or worst
    return first
