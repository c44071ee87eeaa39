"""Making a sequence of the steps that a model has."""

from __future__ import annotations

from dataclasses import replace

from planner.passes import WHOLE_UNIT
from planner.quantity import areas_of
from planner.sequences.references import covered, generalised
from planner.sequences.step_minutes import factor_of, paced
from planner.values.message import message
from planner.values.model import Model
from planner.values.refusal import Refused
from planner.values.sequence import Colour, Sequence, SequenceStep
from planner.values.step import Step
from planner.values.wishes import Pace

MADE_FOR_CM2 = 100.0  # where a model's areas are not known [cm²]


def painted_cm2(model: Model) -> float:
    """Return the area of all places of a model together [cm²]; 0 where none is known."""
    return sum(area.cm2 for area in areas_of(model).values())


def sequence_from(
    model: Model,
    name: str,
    *,
    note: str = "",
    pace: Pace = Pace(),  # noqa: B008 - frozen
) -> Sequence:
    """Return a sequence of a model's steps.

    Its coatings become colours whose usual coating they are, its places
    references; minutes are put back to the usual pace.  Given to the same
    model, it makes the same steps; where a pace was learned, the minutes
    come back within what was rounded.

    Raises
    ------
    Refused
        If the model has no steps, or one waits for a later one.
    """
    if not model.steps:
        raise Refused(
            "steps", message('"{model}" has no steps yet that could be saved', model=model.name)
        )
    laid = dict.fromkeys(
        application.coating for step in model.steps for application in step.applications
    )
    return Sequence(
        name=name,
        note=note,
        colours=tuple(Colour(name=coating, usual=coating) for coating in laid),
        steps=tuple(SequenceStep(step=_general(model, step, pace)) for step in model.steps),
        made_for_cm2=painted_cm2(model) or MADE_FOR_CM2,
    )


def _general(model: Model, step: Step, pace: Pace) -> Step:
    whole = step.stage in WHOLE_UNIT
    return replace(
        step,
        applications=tuple(
            replace(application, places=generalised(model, covered(model, application.places)))
            for application in step.applications
        ),
        touches=generalised(model, covered(model, step.touches), whole=whole),
        minutes=paced(step, 1 / factor_of(pace, step)),
    )
