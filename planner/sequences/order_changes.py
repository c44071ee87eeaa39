"""Named changes of an order that has no option for them: what belongs together goes in and out.

Each takes the steps of a sequence without options and returns another, or
refuses with a line that says why it does not fit.  Places are references
of a sequence, so that the same change serves every model.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from types import MappingProxyType

from planner.sequences.built_in.writing import (
    BRUSHED,
    DECALS,
    GLOSS,
    HULL,
    MATTE,
    SPRAYED,
    colour,
    decals,
)
from planner.sequences.chipping_layers import chipping_layers, no_chipping
from planner.sequences.order_steps import (
    COLOURS,
    Steps,
    bare_colours,
    free_id,
    laid_by,
    less,
    steps_of,
    with_steps,
)
from planner.values.message import message, titled
from planner.values.model import NamedChange
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import CLEAR_STAGES, Application, Minutes, Role, Stage, Step, Tool

WASHES = frozenset({Stage.WASH, Stage.OIL_WASH, Stage.WIPE})
FURTHER = "further colour"
FURTHER_USUAL = (
    "waterborne acrylic, olive green",
    "waterborne acrylic, red brown",
    "waterborne acrylic, stone grey",
    "waterborne acrylic, earth brown",
)


def decals_in(order: Sequence) -> Sequence:
    """Lay decals over gloss, press them, and guard them where no last clear coat follows."""
    steps = steps_of(order)
    if any(step.stage is Stage.DECAL for step in steps):
        raise Refused("", message("it has decals already"))
    at = next((at for at, step in enumerate(steps) if _ends(step)), len(steps))
    guards = [step for step in steps[at:] if step.stage in CLEAR_STAGES]
    guarded = bool(guards)
    over = tuple(dict.fromkeys(name for step in guards for name in laid_by(step)))
    places = over if over and not any(name.startswith("*") for name in over) else (HULL,)
    bed = _clear(
        steps, "decal-bed", titled("Gloss clear where decals will lie"), Role.DECAL_BED, places
    )
    seal = _clear(steps, "decal-seal", titled("Matte clear over the decals"), Role.FINAL, places)
    laid = tuple(one.step for one in decals(*places))
    new = (*steps[:at], bed, *laid, *(() if guarded else (seal,)), *steps[at:])
    return with_steps(order, new, GLOSS, DECALS, *(() if guarded else (MATTE,)))


def no_decals(order: Sequence) -> Sequence:
    """Take out decals with their bed and seal; a clear coat that serves something else stays."""
    steps = steps_of(order)
    gone = {step.id for step in steps if step.stage in (Stage.DECAL, Stage.PRESS)}
    if not gone:
        raise Refused("", message("it has no decals"))
    return less(order, gone, {Role.DECAL_BED, Role.SEAL})


def no_wash(order: Sequence) -> Sequence:
    """Take out washes and their wiping, and the clear coats that only they needed."""
    gone = {step.id for step in steps_of(order) if step.stage in WASHES}
    if not gone:
        raise Refused("", message("nothing of it is washed"))
    return less(order, gone, {Role.BARRIER})


def colour_more(order: Sequence) -> Sequence:
    """Lay one colour more over the last of them, freehand; without a base, as one more detail."""
    steps = steps_of(order)
    if FURTHER in {one.name for one in order.colours}:
        raise Refused("", message("it has the further colour already"))
    painted = steps[: bare_colours(steps)]
    found = [step for step in painted if step.stage in COLOURS]
    details = [step for step in painted if step.stage is Stage.DETAIL]
    if not found and not details:
        raise Refused("", message("it lays no colour that another could follow"))
    after, like = (found[-1], found[-1]) if found else (details[-1], details[0])
    places = HULL if found and laid_by(like) == ("*",) else laid_by(like)
    sprayed = like.tool is Tool.AIRBRUSH
    step = Step(
        id=free_id(steps, "further-colour"),
        stage=Stage.CAMO if found else Stage.DETAIL,
        title=titled("One colour more"),
        applications=(
            Application(
                places=(places,) if isinstance(places, str) else places,
                coating=FURTHER,
                share=None if found else 0.1,
            ),
        ),
        tool=Tool.AIRBRUSH if sprayed else Tool.BRUSH,
        minutes=SPRAYED if sprayed else BRUSHED,
        split_least=None if sprayed else 10,
    )
    used = {one.usual for one in order.colours}
    usual = next((name for name in FURTHER_USUAL if name not in used), FURTHER_USUAL[0])
    at = steps.index(after) + 1
    return with_steps(order, (*steps[:at], step, *steps[at:]), colour(FURTHER, usual))


def by_brush(order: Sequence) -> Sequence:
    """Brush what is sprayed: a coat more of each colour, and longer."""
    return _by_tool(order, Tool.AIRBRUSH, _brushed, message("nothing of it is sprayed"))


def by_airbrush(order: Sequence) -> Sequence:
    """Spray what lies all over and is brushed: a coat less of each colour."""
    mend = message("nothing of it that is brushed could be sprayed")
    return _by_tool(order, Tool.BRUSH, _sprayed, mend)


def no_can(_order: Sequence) -> Sequence:
    """Refuse: which coatings of an order come in a can, it must say itself."""
    raise Refused("", message("it names no coatings from a can"))


CHANGES: Mapping[NamedChange, Callable[[Sequence], Sequence]] = MappingProxyType(
    {
        NamedChange.COLOUR: colour_more,
        NamedChange.CHIPPING: chipping_layers,
        NamedChange.NO_CHIPPING: no_chipping,
        NamedChange.DECALS: decals_in,
        NamedChange.NO_DECALS: no_decals,
        NamedChange.NO_WASH: no_wash,
        NamedChange.BRUSH: by_brush,
        NamedChange.CAN: no_can,
        NamedChange.AIRBRUSH: by_airbrush,
    }
)


def _ends(step: Step) -> bool:
    return step.stage in (Stage.MATTE, Stage.PIGMENT) or step.role is Role.FINAL


def _clear(steps: Steps, base: str, title: str, role: Role, places: tuple[str, ...]) -> Step:
    last = role is Role.FINAL
    clear = MATTE if last else GLOSS
    return Step(
        id=free_id(steps, base),
        stage=Stage.MATTE if last else Stage.VARNISH,
        title=title,
        applications=(Application(places=places, coating=clear.name, share=0.1),),
        minutes=Minutes(fixed=2, per_part=3),
        role=role,
    )


def _by_tool(order: Sequence, tool: Tool, change: Callable[[Step], Step], mend: str) -> Sequence:
    steps = steps_of(order)
    changed = tuple(change(step) if step.tool is tool else step for step in steps)
    if changed == steps:
        raise Refused("", mend)
    return with_steps(order, tuple(_unbroken(changed, at) for at in range(len(changed))))


def _unbroken(steps: Steps, at: int) -> Step:
    """Return a step that is not split where chips are rubbed through it soon."""
    step = steps[at]
    rubbed = any(later.stage is Stage.CHIP_RUB for later in steps[at + 1 : at + 4])
    return replace(step, split_least=None) if rubbed and step.stage in COLOURS else step


def _brushed(step: Step) -> Step:
    more = 0 if step.stage in CLEAR_STAGES or step.stage is Stage.PRIME else 1
    applications = tuple(
        replace(application, coats=min(application.coats + more, 20))
        for application in step.applications
    )
    split = None if any(window.closes for gate in step.gates for window in gate.windows) else 10
    return replace(
        step, tool=Tool.BRUSH, applications=applications, minutes=BRUSHED, split_least=split
    )


def _sprayed(step: Step) -> Step:
    all_over = step.stage in COLOURS | CLEAR_STAGES | {Stage.PRIME}
    colours = {application.coating for application in step.applications}
    shared = all(application.share is None for application in step.applications)
    if not all_over or len(colours) != 1 or not shared:
        return step
    applications = tuple(
        replace(application, coats=max(application.coats - 1, 1))
        for application in step.applications
    )
    return replace(
        step, tool=Tool.AIRBRUSH, applications=applications, minutes=SPRAYED, split_least=None
    )
