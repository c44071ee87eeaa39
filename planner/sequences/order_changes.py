"""Named changes of an order that has no option for them: what belongs together goes in and out.

Each takes the steps of a sequence without options and returns another, or
refuses with a line that says why it does not fit.  Places are references
of a sequence, so that the same change serves every model.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from itertools import pairwise
from types import MappingProxyType

from planner.sequences.apply_to_model import without_steps
from planner.sequences.built_in.writing import (
    BRUSHED,
    CHIPPING,
    DECALS,
    GLOSS,
    HULL,
    MATTE,
    SPRAYED,
    colour,
    decals,
)
from planner.values.message import message, titled
from planner.values.model import NamedChange
from planner.values.refusal import Refused
from planner.values.sequence import Colour, Sequence, SequenceStep
from planner.values.step import CLEAR_STAGES, Application, Minutes, Role, Stage, Step, Tool

CAN_COLOUR = " (spray can)"  # what colours of a can end with in the built-in sequences
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
WASHES = frozenset({Stage.WASH, Stage.OIL_WASH, Stage.WIPE})
UNDERCOAT = colour("undercoat", "waterborne acrylic, light rust", "shows where the base is chipped")
FURTHER = "further colour"
FURTHER_USUAL = (
    "waterborne acrylic, olive green",
    "waterborne acrylic, red brown",
    "waterborne acrylic, stone grey",
    "waterborne acrylic, earth brown",
)
Steps = tuple[Step, ...]


def chipping_layers(order: Sequence) -> Sequence:
    """Lay chipping fluid below the camouflage, or below the base where there is none, and rub.

    What shows through is the base under a camouflage, else an undercoat of
    its own.  Coats over the fluid are laid in one go and not from a can.
    """
    steps = steps_of(order)
    painted = steps[: _closed(steps)]
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
        places = tuple(dict.fromkeys(name for step in group for name in _laid(step)))
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
    return _with(order, tuple(new), CHIPPING, *clears, *(() if camo else (UNDERCOAT,)))


def _taped(later: list[Step], places: tuple[str, ...]) -> bool:
    """Tell whether tape goes on some places before a clear coat holds the chips down."""
    for step in later:
        if step.stage in CLEAR_STAGES:
            return False
        if step.stage is Stage.MASK and _same_places(places, step.touches):
            return True
    return False


def _seal(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=_free(steps, "chip-seal"),
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
    return _same_places(_laid(one), _laid(other))


def _same_places(some: Iterable[str], others: Iterable[str]) -> bool:
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


def _fluid(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=_free(steps, "chip-fluid"),
        stage=Stage.CHIP_FLUID,
        title=titled("Chipping fluid, thin"),
        applications=(Application(places=places, coating=CHIPPING.name),),
        minutes=Minutes(fixed=2, per_part=4),
    )


def _rub(steps: Steps, places: tuple[str, ...]) -> Step:
    return Step(
        id=_free(steps, "chip-rub"),
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
    return _less(order, gone)


def decals_in(order: Sequence) -> Sequence:
    """Lay decals over gloss, press them, and guard them where no last clear coat follows."""
    steps = steps_of(order)
    if any(step.stage is Stage.DECAL for step in steps):
        raise Refused("", message("it has decals already"))
    at = next((at for at, step in enumerate(steps) if _ends(step)), len(steps))
    guards = [step for step in steps[at:] if step.stage in CLEAR_STAGES]
    guarded = bool(guards)
    over = tuple(dict.fromkeys(name for step in guards for name in _laid(step)))
    places = over if over and not any(name.startswith("*") for name in over) else (HULL,)
    bed = _clear(
        steps, "decal-bed", titled("Gloss clear where decals will lie"), Role.DECAL_BED, places
    )
    seal = _clear(steps, "decal-seal", titled("Matte clear over the decals"), Role.FINAL, places)
    laid = tuple(one.step for one in decals(*places))
    new = (*steps[:at], bed, *laid, *(() if guarded else (seal,)), *steps[at:])
    return _with(order, new, GLOSS, DECALS, *(() if guarded else (MATTE,)))


def no_decals(order: Sequence) -> Sequence:
    """Take out decals with their bed and seal; a clear coat that serves something else stays."""
    steps = steps_of(order)
    gone = {step.id for step in steps if step.stage in (Stage.DECAL, Stage.PRESS)}
    if not gone:
        raise Refused("", message("it has no decals"))
    return _less(order, gone, {Role.DECAL_BED, Role.SEAL})


def no_wash(order: Sequence) -> Sequence:
    """Take out washes and their wiping, and the clear coats that only they needed."""
    gone = {step.id for step in steps_of(order) if step.stage in WASHES}
    if not gone:
        raise Refused("", message("nothing of it is washed"))
    return _less(order, gone, {Role.BARRIER})


def colour_more(order: Sequence) -> Sequence:
    """Lay one colour more over the last of them, freehand; without a base, as one more detail."""
    steps = steps_of(order)
    if FURTHER in {one.name for one in order.colours}:
        raise Refused("", message("it has the further colour already"))
    painted = steps[: _closed(steps)]
    found = [step for step in painted if step.stage in COLOURS]
    details = [step for step in painted if step.stage is Stage.DETAIL]
    if not found and not details:
        raise Refused("", message("it lays no colour that another could follow"))
    after, like = (found[-1], found[-1]) if found else (details[-1], details[0])
    places = HULL if found and _laid(like) == ("*",) else _laid(like)
    sprayed = like.tool is Tool.AIRBRUSH
    step = Step(
        id=_free(steps, "further-colour"),
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
    return _with(order, (*steps[:at], step, *steps[at:]), colour(FURTHER, usual))


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


def steps_of(order: Sequence) -> Steps:
    """Return the bare steps of a sequence without options."""
    return tuple(one.step for one in order.steps)


def _with(order: Sequence, steps: Steps, *more: Colour) -> Sequence:
    """Return the order with other steps, and colours that it may lack."""
    known = {one.name for one in order.colours}
    colours = (*order.colours, *(one for one in more if one.name not in known))
    wrapped = tuple(SequenceStep(step=step) for step in steps)
    return replace(order, steps=wrapped, colours=colours)


def _less(order: Sequence, gone: set[str], roles: Iterable[Role] = ()) -> Sequence:
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
    return _with(order, steps)


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
    return "*" in _laid(one) or set(_laid(other)) <= set(_laid(one))


def _closed(steps: Steps) -> int:
    """Return at which step the bare colours end: a clear coat, decals or a wash comes."""
    return next((at for at, step in enumerate(steps) if step.stage not in BEFORE_CLEAR), len(steps))


def _ends(step: Step) -> bool:
    return step.stage in (Stage.MATTE, Stage.PIGMENT) or step.role is Role.FINAL


def _laid(step: Step) -> tuple[str, ...]:
    return tuple(name for application in step.applications for name in application.places)


def _free(steps: Steps, base: str) -> str:
    taken, name, number = {step.id for step in steps}, base, 1
    while name in taken:
        number += 1
        name = f"{base}-{number}"
    return name


def _undercoat(steps: Steps, like: Step, places: tuple[str, ...]) -> Step:
    sprayed = like.tool is Tool.AIRBRUSH
    return Step(
        id=_free(steps, "chip-undercoat"),
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


def _clear(steps: Steps, base: str, title: str, role: Role, places: tuple[str, ...]) -> Step:
    last = role is Role.FINAL
    clear = MATTE if last else GLOSS
    return Step(
        id=_free(steps, base),
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
    return _with(order, tuple(_unbroken(changed, at) for at in range(len(changed))))


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
