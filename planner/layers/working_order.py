"""Work that is missing, idle, or called what it is not: what a painter sees reading the list."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.chipping import OVERCOAT_STAGES, rub_behind
from planner.layers.coat_stack import RESISTS, Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.finishing import is_last_coat
from planner.layers.named_mends import Leave, Move
from planner.layers.operation_kinds import OIL_BORNE
from planner.layers.overcoat_table import COMMON_PRACTICE, LayerVerdict
from planner.layers.step_edits import Restage
from planner.values.coating import GLUES, THINNERS, Coating, Family, Finish
from planner.values.message import message, told
from planner.values.step import CLEAR_STAGES, Role, Stage, Tool

ONLY: dict[Stage, frozenset[Family]] = {
    Stage.DECAL: frozenset({Family.DECAL}),
    Stage.CHIP_FLUID: frozenset({Family.CHIPPING_FLUID, *RESISTS}),
    Stage.PIGMENT: frozenset({Family.PIGMENT, Family.FIXER, Family.GRAPHITE, *THINNERS}),
    Stage.OIL_WASH: frozenset({*OIL_BORNE, Family.WHITE_SPIRIT}),
    Stage.JOIN: GLUES,
}
"""Stages at which only some families make sense."""

HOME: dict[Family, Stage] = {
    Family.DECAL: Stage.DECAL,
    Family.CHIPPING_FLUID: Stage.CHIP_FLUID,
    Family.PIGMENT: Stage.PIGMENT,
    Family.FIXER: Stage.PIGMENT,
}
"""Families that belong to one stage: by it the program knows what is meant."""


_SPRAY = frozenset({Tool.AIRBRUSH, Tool.CAN})
NOT_BY: dict[Stage, frozenset[Tool]] = {
    Stage.DRY_BRUSH: _SPRAY,
    Stage.DECAL: _SPRAY | {Tool.SPONGE},
    Stage.JOIN: _SPRAY | {Tool.SPONGE},
}
"""Tools that cannot do the work of a stage."""


def working_order(scene: Scene) -> Iterator[Finding]:
    """Yield fluid never rubbed, camouflage over chips, idle clears and parts, unfit stages."""
    yield from _idle_parts(scene)
    for moment in scene.moments:
        yield from _unfit(scene, moment)
        yield from _gloss_as_matte(scene, moment)
        yield from _wrong_tool(scene, moment)
        yield from _never_rubbed(scene, moment)
        yield from _over_chips(scene, moment)
        yield from _clears(scene, moment)


def _idle_parts(scene: Scene) -> Iterator[Finding]:
    """Yield parts that no step works on, where others are worked on."""
    busy = {part for moment in scene.moments for part in moment.first.parts}
    for at, part in enumerate(scene.model.parts):
        if not busy or part.name in busy:
            continue
        yield Finding(
            rule=told(message("part without work")),
            verdict=LayerVerdict.ADVICE,
            path=f"{scene.path}.parts[{at}]",
            project=scene.project.name,
            model=scene.model.name,
            step="",
            places=tuple(f"{part.name}/{place.name}" for place in part.places),
            message=message("no step does anything to {part}; add it to a coat", part=part.name),
            source=COMMON_PRACTICE,
            mend=None,
        )


def _unfit(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield coatings at a stage that is not theirs; other rules would look past them."""
    stage = moment.step.stage
    for name in dict.fromkeys(name for _, name in moment.first.films):
        family = scene.book.coating(name).family
        home = HOME.get(family)
        allowed = ONLY.get(stage)
        if (allowed is None or family in allowed) and home in (None, stage):
            continue
        if stage is Stage.WEATHER and family in (Family.PIGMENT, Family.FIXER):
            continue  # powder is weathering, too
        only = len({one for _, one in moment.first.films}) == 1
        fits = home or (Stage.BASE if stage is not Stage.JOIN and family not in GLUES else None)
        mend = None
        if only and fits is not None:
            edit = Restage(scene.spot, moment.step.id, fits)
            mend = Mend(message("make it a step of {stage}", stage=fits), (edit,))
        yield scene.found(
            message("stage that does not fit its coating"),
            LayerVerdict.ORDER,
            moment,
            [place for place, one in moment.first.films if one == name],
            message(
                "{coating} ({family}) does not belong to a step of {stage}, so it would be judged "
                "as what it is not",
                coating=name,
                family=family,
                stage=stage,
            ),
            mend,
        )


def _gloss_as_matte(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield steps of matte clear that lay a gloss."""
    places = [
        place
        for place, name in moment.laid.items()
        if moment.step.stage is Stage.MATTE and scene.book.coating(name).finish is Finish.GLOSS
    ]
    if places:
        edit = Restage(scene.spot, moment.step.id, Stage.VARNISH)
        yield scene.found(
            message("gloss laid as the matte coat"),
            LayerVerdict.ORDER,
            moment,
            places,
            message("a gloss coating does not make a matte coat; call it a varnish, or swap it"),
            Mend(message("make it a step of {stage}", stage=Stage.VARNISH), (edit,)),
        )


def _wrong_tool(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield work that its tool cannot do."""
    if moment.step.tool in NOT_BY.get(moment.step.stage, frozenset()):
        yield scene.found(
            message("tool that cannot do it"),
            LayerVerdict.ADVICE,
            moment,
            moment.first.places,
            message(
                "{stage} is not done with {tool}; choose another tool or another stage",
                stage=moment.step.stage,
                tool=moment.step.tool,
            ),
            None,
        )


def _never_rubbed(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield chipping fluid that a colour covers and nobody rubs."""
    left = []
    for place, name in moment.laid.items():
        if scene.book.coating(name).family is not Family.CHIPPING_FLUID:
            continue
        later = scene.moments[moment.at + 1 :]
        covered = any(place in m.laid and m.step.stage in OVERCOAT_STAGES for m in later)
        rubbed = any(m.step.stage is Stage.CHIP_RUB and place in m.first.places for m in later)
        if covered and not rubbed:
            left.append(place)
    if not left:
        return
    over = [m for m in scene.moments[moment.at + 1 :] if _colours(m, left)]
    yield scene.found(
        message("chipping fluid never rubbed"),
        LayerVerdict.ORDER,
        moment,
        left,
        message("no step rubs the colour over the fluid, so nothing chips and it stays soluble"),
        Mend(
            message("rub it behind {step}", step=_name(over[0])),
            (rub_behind(scene, moment, over[0], tuple(left)),),
        ),
    )


def _name(moment: Moment) -> str:
    return moment.step.title or moment.step.id


def _colours(moment: Moment, places: list[str]) -> bool:
    return moment.step.stage in OVERCOAT_STAGES and bool(set(places) & set(moment.laid))


def _over_chips(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield base and camouflage sprayed over chips that are finished."""
    if moment.step.stage not in (Stage.BASE, Stage.CAMO):
        return
    rubs = {place: rub for place in moment.laid if (rub := _finished(scene, moment, place))}
    if not rubs:
        return
    every = _rubs(scene, moment, set(rubs))
    moves = tuple(Move(scene.spot, one.step.id, moment.step.id, before=False) for one in every)
    name = _name(every[0])
    yield scene.found(
        message("colour over finished chips"),
        LayerVerdict.ORDER,
        moment,
        list(rubs),
        message(
            "it would cover the chips that {name} has just made; lay every colour first", name=name
        ),
        Mend(message("move {name} behind it", name=name), moves),
    )


def _rubs(scene: Scene, moment: Moment, places: set[str]) -> list[Moment]:
    """Return the rubs right before a colour that it would cover, the last one first."""
    found = []
    for earlier in reversed(scene.moments[: moment.at]):
        if places & set(earlier.laid):
            break
        if earlier.step.stage is Stage.CHIP_RUB and places & set(earlier.first.places):
            found.append(earlier)
    return found


def _finished(scene: Scene, moment: Moment, place: str) -> Moment | None:
    """Return the rub whose chips lie open on a place, or None; without fluid there are none."""
    if not any(film.family is Family.CHIPPING_FLUID for film in moment.stack(place)):
        return None
    for earlier in reversed(scene.moments[: moment.at]):
        if earlier.step.stage is Stage.CHIP_RUB and place in earlier.first.places:
            return earlier
        if place in earlier.laid:
            return None  # something lies over the chips already: a seal, fresh fluid
    return None


def _clears(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield a clear coat right over another, where one of them would do."""
    if moment.step.stage not in CLEAR_STAGES or moment.step.role is Role.BARRIER:
        return
    idle: list[tuple[str, Layer]] = []
    for place, name in moment.laid.items():
        stack = moment.stack(place)
        if not stack or stack[-1].step.stage not in CLEAR_STAGES:
            continue
        below, coating = stack[-1], scene.book.coating(name)
        if below.step.role is Role.BARRIER or _worked_between(scene, moment, below):
            continue
        if not _purpose(moment, coating, below) and below.family is coating.family:
            idle.append((place, below))
    if idle:
        lower = idle[0][1].step
        places = tuple(place for place, _ in idle)
        yield scene.found(
            message("two clear coats in a row"),
            LayerVerdict.ADVICE,
            moment,
            places,
            message(
                "two clear coats lie right over each other, after {lower}; one of them is enough",
                lower=lower.title or lower.id,
            ),
            Mend(message("leave it out there"), (Leave(scene.spot, moment.step.id, places),)),
        )


def _worked_between(scene: Scene, moment: Moment, below: Layer) -> bool:
    """Tell whether anything but clear coats stands between two of them in the working order.

    Where decals lie on one side only, one clear coat all over serves both.
    """
    return any(
        between.step.stage not in CLEAR_STAGES
        for between in scene.moments[below.at + 1 : moment.at]
    )


def _purpose(moment: Moment, coating: Coating, below: Layer) -> bool:
    """Tell whether the upper of two clear coats gives a sheen for which there is a reason.

    Matte gives tooth and ends the finish, gloss on matte makes a smooth bed
    or a wet spot; over a last coat another rule speaks.
    """
    coats_of_one = moment.step.role is below.step.role and coating == below.coating
    apart = coating.finish is not below.finish
    matte = Finish.MATTE in (coating.finish, below.finish)
    ends = apart and (matte or is_last_coat(moment.step, coating))
    return coats_of_one or ends or is_last_coat(below.step, below.coating)
