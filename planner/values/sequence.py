"""Sequences: finishing orders that any number of models can be given."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.values.field import NAME, Field, Value
from planner.values.message import message
from planner.values.refusal import Refused, all_different, demand, demand_known
from planner.values.step import Step

EVERY = "*"
"""Place reference that stands for every part of the model."""


@dataclass(frozen=True, kw_only=True)
class Colour(Value):
    """A colour that the sequence asks for; each model takes a coating or mix for it.

    ``usual`` is offered first: the name of a coating or mix, or "".
    """

    name: Annotated[str, NAME]
    usual: Annotated[
        str,
        Field("&Usually", help="Offered first; each model may take another coating or mix"),
    ] = ""
    note: Annotated[str, Field("N&ote")] = ""


@dataclass(frozen=True, kw_only=True)
class Option(Value):
    """Something that can be left out or taken in; those of one ``choice`` exclude each other."""

    name: Annotated[str, NAME]
    usual: Annotated[bool, Field("&Usual")] = False
    choice: Annotated[
        str,
        Field(
            "&Choice",
            help="Options of the same choice exclude each other; one of them is always taken",
        ),
    ] = ""
    note: Annotated[str, Field("N&ote")] = ""


@dataclass(frozen=True, kw_only=True)
class SequenceStep:
    """A step as written for any model.

    Its applications name colours of the sequence; its places are `EVERY`, or
    parts ("wheels", "hull/deck") that are left out where a model has none
    such.  It is there if all of ``needs`` are chosen and none of ``unless``.
    """

    step: Step
    needs: tuple[str, ...] = ()
    unless: tuple[str, ...] = ()


def _some_area(made_for_cm2: float, place: str) -> None:
    demand(made_for_cm2 > 0, place, "must be more than 0 cm²")


@dataclass(frozen=True, kw_only=True)
class Sequence(Value):
    """A reusable order of steps with gates, options and colours.

    ``made_for_cm2`` is the painted area that its minutes are written for;
    they grow and shrink with the model's.
    """

    name: Annotated[str, NAME]
    note: Annotated[str, Field("N&ote")] = ""
    colours: Annotated[tuple[Colour, ...], Field(unique="name")] = ()
    options: Annotated[tuple[Option, ...], Field(unique="name")] = ()
    steps: tuple[SequenceStep, ...]
    made_for_cm2: Annotated[
        float,
        Field(
            "&Minutes are written for",
            unit="cm²",
            least=0,
            check=_some_area,
            help="Painted area; on a larger model each part takes longer, on a smaller less",
        ),
    ] = 100.0

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.steps) >= 1, "steps", "is empty; give at least one")
        all_different([step.step.id for step in self.steps], "steps", "id")
        colours = [colour.name for colour in self.colours]
        options = [option.name for option in self.options]
        ids = [step.step.id for step in self.steps]
        for at, step in enumerate(self.steps):
            here = f"steps[{at}]"
            for number, application in enumerate(step.step.applications):
                spot = f"{here}.step.applications[{number}].coating"
                demand_known(application.coating, colours, "colour", spot)
            for field in ("needs", "unless"):
                for name in getattr(step, field):
                    demand_known(name, options, "option", f"{here}.{field}")
            for name in (*step.step.after, *(gate.after for gate in step.step.gates)):
                if name not in ids[:at]:
                    raise Refused(
                        f"{here}.step",
                        message('"{name}" is no earlier step of the sequence', name=name),
                    )
