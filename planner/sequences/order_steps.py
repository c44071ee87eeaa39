"""The bare steps of a sequence without options: what changes of an order are made of."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from planner.sequences.apply_to_model import without_steps
from planner.values.message import message
from planner.values.refusal import Refused
from planner.values.sequence import Colour, Sequence, SequenceStep
from planner.values.step import CLEAR_STAGES, Role, Stage, Step

COLOURS = frozenset({Stage.BASE, Stage.CAMO})
BEFORE_CLEAR = COLOURS | {
    Stage.CLEAN,
    Stage.PRIME,
    Stage.DETAIL,
    Stage.MASK,
    Stage.UNMASK,
    Stage.TURN,
    Stage.CHIP_FLUID,
    Stage.CHIP_RUB,
}
WANTS_CLEAR = frozenset(
    {Stage.OIL_WASH, Stage.FILTER, Stage.CHIP_FLUID, Stage.DECAL, Stage.WEATHER}
)
Steps = tuple[Step, ...]


def steps_of(order: Sequence) -> Steps:
    """Return the bare steps of a sequence without options."""
    return tuple(one.step for one in order.steps)


def with_steps(order: Sequence, steps: Steps, *more: Colour) -> Sequence:
    """Return the order with other steps, and colours that it may lack."""
    known = {one.name for one in order.colours}
    colours = (*order.colours, *(one for one in more if one.name not in known))
    wrapped = tuple(SequenceStep(step=step) for step in steps)
    return replace(order, steps=wrapped, colours=colours)


def less(order: Sequence, gone: set[str], roles: Iterable[Role] = ()) -> Sequence:
    """Return the order without steps, and without clear coats of some roles that serve no more.

    Such a coat stays, as a barrier or as the last coat, where what follows
    needs one below it or no other clear coat comes.
    """
    steps = without_steps(steps_of(order), gone)
    if not steps:
        raise Refused("", message("nothing would be left of it"))
    for step in [step for step in steps if step.role in tuple(roles)]:
        at = next(at for at, other in enumerate(steps) if other.id == step.id)
        role = _serves(steps, at)
        if role is None:
            steps = without_steps(steps, {step.id})
        else:
            steps = (*steps[:at], replace(steps[at], role=role), *steps[at + 1 :])
    return with_steps(order, steps)


def _serves(steps: Steps, at: int) -> Role | None:
    """Return what a clear coat is still there for, or None."""
    own = steps[at]
    for earlier in reversed(steps[:at]):
        if earlier.stage in CLEAR_STAGES and _covers(earlier, own):
            return None  # nothing lies between the two any more
        if earlier.applications:
            break
    for later in steps[at + 1 :]:
        if later.stage in CLEAR_STAGES and _covers(later, own):
            return None
        if later.stage in WANTS_CLEAR:
            return Role.BARRIER
    return Role.FINAL


def _covers(one: Step, other: Step) -> bool:
    """Tell whether a step lays on every place of another, as far as references tell."""
    return "*" in laid_by(one) or set(laid_by(other)) <= set(laid_by(one))


def bare_colours(steps: Steps) -> int:
    """Return at which step the bare colours end: a clear coat, decals or a wash comes."""
    return next((at for at, step in enumerate(steps) if step.stage not in BEFORE_CLEAR), len(steps))


def laid_by(step: Step) -> tuple[str, ...]:
    """Return every reference that a step lays on."""
    return tuple(name for application in step.applications for name in application.places)


def free_id(steps: Steps, base: str) -> str:
    """Return ``base``, or ``base`` with the first free number."""
    taken, name, number = {step.id for step in steps}, base, 1
    while name in taken:
        number += 1
        name = f"{base}-{number}"
    return name


def same_places(some: Iterable[str], others: Iterable[str]) -> bool:
    """Tell whether references may mean the same place; those to every part meet all."""
    listed = tuple(others)
    for name in some:
        for second in listed:
            part, _, place = name.partition("/")
            same, _, there = second.partition("/")
            wide = name.startswith("*") or second.startswith("*")
            if wide or (part == same and (not place or not there or place == there)):
                return True
    return False
