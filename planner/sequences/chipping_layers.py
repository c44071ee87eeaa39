"""Chipping layers: fluid below the colours and what is rubbed through them, put in or taken out."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from planner.sequences.built_in.writing import BRUSHED, CHIPPING, GLOSS, SPRAYED, colour
from planner.sequences.order_steps import (
    Steps,
    bare_colours,
    free_id,
    laid_by,
    less,
    same_places,
    steps_of,
    with_steps,
)
from planner.values.message import message, titled
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import CLEAR_STAGES, Application, Minutes, Role, Stage, Step, Tool

CAN_COLOUR = " (spray can)"  # what colours of a can end with in the built-in sequences
UNDERCOAT = colour("undercoat", "waterborne acrylic, light rust", "shows where the base is chipped")


def chipping_layers(order: Sequence) -> Sequence:
    """Lay chipping fluid below the camouflage, or below the base where there is none, and rub.

    What shows through is the base under a camouflage, else an undercoat of
    its own.  Coats over the fluid are laid in one go and not from a can.
    """
    steps = steps_of(order)
    painted = steps[: bare_colours(steps)]
    if any(step.stage is Stage.CHIP_FLUID for step in painted):
        raise Refused("", message("chipping fluid lies below its colours already"))
    camo = [step for step in painted if step.stage is Stage.CAMO]
    over = camo or [step for step in painted if step.stage is Stage.BASE]
    if not over:
        raise Refused("", message("it lays no base colour through which one could rub"))
    start, end = steps.index(over[0]), steps.index(over[-1])
    if any(step.stage in (Stage.MASK, Stage.UNMASK) for step in steps[start:end]):
        raise Refused("", message("tape lies among the colours over it, and would lift them"))
    known = {one.name for one in order.colours}
    new = list(steps)
    for group in _groups(over):
        places = tuple(dict.fromkeys(name for step in group for name in laid_by(step)))
        below = () if camo else (_undercoat(tuple(new), group[0], places),)
        fluid, rub = _fluid(tuple(new), places), _rub(tuple(new), places)
        for step in group:
            new[new.index(step)] = _in_one_go(step, known, 1 if camo else 2)
        ids = [step.id for step in new]
        new.insert(ids.index(group[-1].id) + 1, rub)
        at = ids.index(group[0].id)
        new[at:at] = [*below, fluid]
        if _taped(new[ids.index(group[-1].id) + 1 :], places):
            seal = _seal(tuple(new), places)
            new.insert([step.id for step in new].index(rub.id) + 1, seal)
    clears = (GLOSS,) if any(step.role is Role.SEAL for step in set(new) - set(steps)) else ()
    return with_steps(order, tuple(new), CHIPPING, *clears, *(() if camo else (UNDERCOAT,)))


def _taped(later: list[Step], places: tuple[str, ...]) -> bool:
    """Tell whether tape goes on some places before a clear coat holds the chips down."""
    for step in later:
        if step.stage in CLEAR_STAGES:
            return False
        if step.stage is Stage.MASK and same_places(places, step.touches):
            return True
    return False


def _seal(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=free_id(steps, "chip-seal"),
        stage=Stage.VARNISH,
        title=titled("Gloss clear that holds the chips down under tape"),
        applications=(Application(places=places, coating=GLOSS.name),),
        minutes=Minutes(fixed=2, per_part=3),
        role=Role.SEAL,
    )


def _groups(over: list[Step]) -> list[list[Step]]:
    """Return coats by the places that they share; each group has fluid and rubbing of its own."""
    found: list[list[Step]] = []
    for step in over:
        mine = [group for group in found if any(_meets(one, step) for one in group)]
        rest = [group for group in found if group not in mine]
        found = [*rest, [*(one for group in mine for one in group), step]]
    return sorted(found, key=lambda group: over.index(group[0]))


def _meets(one: Step, other: Step) -> bool:
    """Tell whether two steps may lay on the same place."""
    return same_places(laid_by(one), laid_by(other))


def _fluid(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=free_id(steps, "chip-fluid"),
        stage=Stage.CHIP_FLUID,
        title=titled("Chipping fluid, thin"),
        applications=(Application(places=places, coating=CHIPPING.name),),
        minutes=Minutes(fixed=2, per_part=4),
    )


def _rub(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=free_id(steps, "chip-rub"),
        stage=Stage.CHIP_RUB,
        title=titled("Wet the colour, rub chips through it, rinse off leftover fluid"),
        touches=places,
        minutes=Minutes(fixed=2, per_part=5),
        tool=Tool.BRUSH,
    )


def no_chipping(order: Sequence) -> Sequence:
    """Take out fluid, rubbing, sponge chips, and the undercoat that lies below the fluid."""
    steps = steps_of(order)
    chips = (Stage.CHIP, Stage.CHIP_FLUID, Stage.CHIP_RUB)
    gone = {step.id for step in steps if step.stage in chips}
    if not gone:
        raise Refused("", message("nothing of it is chipped"))
    for step, later in pairwise(steps):
        under = step.stage is Stage.BASE and later.stage is Stage.CHIP_FLUID
        if under and any(other.stage is Stage.BASE for other in steps[steps.index(later) :]):
            gone.add(step.id)
    return less(order, gone)


def _undercoat(steps: Steps, like: Step, places: tuple[str, ...]) -> Step:
    sprayed = like.tool is Tool.AIRBRUSH
    return Step(
        id=free_id(steps, "chip-undercoat"),
        stage=Stage.BASE,
        title=titled("Undercoat that chips will show"),
        applications=(Application(places=places, coating=UNDERCOAT.name),),
        tool=Tool.AIRBRUSH if sprayed else Tool.BRUSH,
        minutes=SPRAYED if sprayed else BRUSHED,
        split_least=None if sprayed else 10,
    )


def _in_one_go(step: Step, known: set[str], least_coats: int) -> Step:
    """Return a coat over chipping fluid: unbroken, and water must get through it."""
    applications = tuple(
        replace(
            application,
            coating=_bottled(application.coating, known)
            if step.tool is Tool.CAN
            else application.coating,
            coats=max(application.coats, least_coats),
        )
        for application in step.applications
    )
    whole = replace(step, applications=applications, split_least=None)
    if step.tool is not Tool.CAN:
        return whole
    return replace(whole, tool=Tool.BRUSH, minutes=BRUSHED, traits=())


def _bottled(name: str, known: set[str]) -> str:
    bottle = name.removesuffix(CAN_COLOUR)
    return bottle if bottle in known else name
