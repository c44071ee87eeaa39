"""Sequences: finishing orders that any number of models can be given."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.message import message
from planner.values.refusal import Refused, all_different, demand, demand_known, plain_name
from planner.values.step import Step

EVERY = "*"
"""Place reference that stands for every part of the model."""


@dataclass(frozen=True, kw_only=True)
class Colour:
    """A colour that the sequence asks for; each model takes a coating or mix for it.

    ``usual`` is offered first: the name of a coating or mix, or "".
    """

    name: str
    usual: str = ""
    note: str = ""

    def __post_init__(self) -> None:
        plain_name(self.name, "name")


@dataclass(frozen=True, kw_only=True)
class Option:
    """Something that can be left out or taken in; those of one ``choice`` exclude each other."""

    name: str
    usual: bool = False
    choice: str = ""
    note: str = ""

    def __post_init__(self) -> None:
        plain_name(self.name, "name")


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


@dataclass(frozen=True, kw_only=True)
class Sequence:
    """A reusable order of steps with gates, options and colours.

    ``made_for_cm2`` is the painted area that its minutes are written for;
    they grow and shrink with the model's.
    """

    name: str
    note: str = ""
    colours: tuple[Colour, ...] = ()
    options: tuple[Option, ...] = ()
    steps: tuple[SequenceStep, ...]
    made_for_cm2: float = 100.0

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        demand(len(self.steps) >= 1, "steps", "is empty; give at least one")
        demand(self.made_for_cm2 > 0, "made_for_cm2", "must be more than 0 cm²")
        all_different([colour.name for colour in self.colours], "colours")
        all_different([option.name for option in self.options], "options")
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
