"""Varnish, decals and the last coat: what must be sealed, and what must be last."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import GLOSS_CLEAR
from planner.layers.named_mends import Insert, Leave, Move
from planner.layers.operation_kinds import WASH_STAGES
from planner.layers.overcoat_table import LayerVerdict
from planner.values.coating import GLUES, Coating, Family, Finish
from planner.values.message import message, titled, within
from planner.values.step import CLEAR_STAGES, Role, Stage, Step

MATTE_LAST = message(
    "the matte coat scatters light and hides decal film; what follows spoils its look"
)
OVER_MATTE = frozenset({Family.GRAPHITE, Family.PIGMENT, Family.FIXER, *GLUES})
TOUCHES = frozenset({Stage.VARNISH, Stage.DETAIL})
"""Stages at which clear gloss is put on lenses and wet spots after the matte coat."""
LOOSE_ENDS = frozenset({Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB, Stage.MASK, Stage.UNMASK})


def is_last_coat(step: Step, coating: Coating) -> bool:
    """Tell whether a film is the coat that ends the finish: matte, or varnish in that role."""
    if coating.finish is Finish.GLOSS:
        return False
    return step.stage is Stage.MATTE or step.role is Role.FINAL


def may_follow_matte(step: Step, coating: Coating) -> bool:
    """Tell whether practice allows a film over the matte coat.

    Graphite and metal edges, pigments left unsealed, clear gloss on lenses
    and wet spots.
    """
    if coating.family in OVER_MATTE or step.stage in (Stage.PIGMENT, Stage.DRY_BRUSH):
        return True
    touch = step.stage in TOUCHES and step.role in (None, Role.FINAL)
    return touch and coating.finish is Finish.GLOSS


def matte_last(scene: Scene) -> Iterator[Finding]:
    """Yield matte coats that are not the last, and gloss washes laid over the last one."""
    last: dict[str, Moment] = {}
    for moment in scene.moments:
        for place, name in moment.laid.items():
            if is_last_coat(moment.step, scene.book.coating(name)):
                last[place] = moment
    for matte in dict.fromkeys(last.values()):
        places = {place for place, moment in last.items() if moment is matte}
        late = [m for m in scene.moments[matte.at + 1 :] if _spoils(scene, m, places)]
        if not late:
            continue
        mend = _move_last(scene, matte)
        washes = [m for m in late if m.step.stage in WASH_STAGES and _gloss(scene, m, places)]
        for moment in washes:
            yield scene.found(
                message("gloss wash over the matte coat"),
                LayerVerdict.ORDER,
                moment,
                [place for place in moment.first.places if place in places],
                message(
                    "a gloss wash leaves shiny patches on the matte coat; {why}",
                    why=MATTE_LAST,
                ),
                mend,
            )
        others = [moment for moment in late if moment not in washes]
        if others:
            names = ", ".join(moment.step.title or moment.step.id for moment in others)
            yield scene.found(
                message("matte coat not last"),
                LayerVerdict.ORDER,
                matte,
                sorted(places & {place for moment in others for place in moment.first.places}),
                message("{names} would go over it; {why}", names=names, why=MATTE_LAST),
                mend,
            )


def _spoils(scene: Scene, moment: Moment, places: set[str]) -> bool:
    return any(
        place in places
        and moment.step.stage is not Stage.JOIN
        and not may_follow_matte(moment.step, scene.book.coating(name))
        for place, name in moment.laid.items()
    )


def _gloss(scene: Scene, moment: Moment, places: set[str]) -> bool:
    return any(
        scene.book.coating(name).finish is Finish.GLOSS
        for place, name in moment.laid.items()
        if place in places
    )


def _move_last(scene: Scene, matte: Moment) -> Mend | None:
    """Return the mend that moves the coat behind what spoils it and what belongs to that."""
    if scene.logged(matte.step.id):
        return None
    places = set(matte.first.places)
    anchor = matte
    for moment in scene.moments[matte.at + 1 :]:
        touches = any(place in places for place in moment.first.places)
        if _spoils(scene, moment, places) or (touches and moment.step.stage in LOOSE_ENDS):
            anchor = moment
    move = Move(scene.spot, matte.step.id, anchor.step.id, before=False, anywhere=True)
    return Mend(
        message("move the matte coat behind {step}", step=anchor.step.title or anchor.step.id),
        (move,),
    )


def decals_sealed(scene: Scene) -> Iterator[Finding]:
    """Yield decals that no clear coat follows."""
    for moment in scene.moments:
        decals = [
            place
            for place, name in moment.laid.items()
            if scene.book.coating(name).family is Family.DECAL
        ]
        bare = [place for place in decals if not _sealed_later(scene, moment, place)]
        if not bare:
            continue
        anchor = moment
        for later in scene.moments[moment.at + 1 :]:
            ours = any(place in bare for place in later.first.places)
            if ours and later.step.stage in (Stage.PRESS, Stage.DECAL):
                anchor = later
        insert = Insert(
            scene.spot,
            anchor.step.id,
            before=False,
            name=f"seal-{moment.step.id}"[:50].rstrip("-"),
            stage=Stage.VARNISH,
            places=tuple(bare),
            title=within(
                200,
                titled("gloss clear (seal) over {step}", step=moment.step.title or moment.step.id),
            ),
            wanted=GLOSS_CLEAR,
            role=Role.SEAL,
        )
        yield scene.found(
            message("decals not sealed"),
            LayerVerdict.BARRIER,
            moment,
            bare,
            message("nothing seals the decals; handling and any later wash would lift their edges"),
            Mend(message("seal the decals with a gloss clear"), (insert,)),
        )


def _sealed_later(scene: Scene, moment: Moment, place: str) -> bool:
    return any(
        later.step.stage in CLEAR_STAGES and place in later.laid
        for later in scene.moments[moment.at + 1 :]
    )


def pressed(scene: Scene) -> Iterator[Finding]:
    """Yield pressing where no decal lies on top, and wiping where no wash does."""
    for moment in scene.moments:
        if moment.step.stage is Stage.PRESS:
            idle = [place for place in moment.first.places if not _decal_on_top(moment, place)]
            rule, lacks = (
                message("pressing without decals"),
                message("no decal lies on top that could be pressed"),
            )
        elif moment.step.stage is Stage.WIPE:
            idle = [place for place in moment.first.places if not _wash_on_top(moment, place)]
            rule, lacks = (
                message("wipe back without a wash"),
                message("no wash lies on top that could be wiped back"),
            )
        else:
            continue
        if idle:
            wanted = moment.step.stage
            mend = _behind_its_film(scene, moment, idle, wanted)
            yield scene.found(rule, LayerVerdict.ORDER, moment, idle, lacks, mend)


def _decal_on_top(moment: Moment, place: str) -> bool:
    stack = moment.stack(place)
    return bool(stack) and stack[-1].family is Family.DECAL


def _wash_on_top(moment: Moment, place: str) -> bool:
    stack = moment.stack(place)
    washes = WASH_STAGES | {Stage.CHIP, Stage.DETAIL, Stage.PIGMENT}
    oil = Family.ARTISTS_OIL
    return bool(stack) and (stack[-1].step.stage in washes or stack[-1].family is oil)


def _behind_its_film(scene: Scene, moment: Moment, idle: list[str], stage: Stage) -> Mend:
    """Return the mend that moves the step to its decals or wash, or leaves the places out."""
    makers = {Stage.DECAL} if stage is Stage.PRESS else WASH_STAGES
    if set(idle) == set(moment.first.places):
        makes = [
            other
            for other in scene.moments
            if other.step.stage in makers and set(idle) <= set(other.laid)
        ]
        before = [other for other in makes if other.at < moment.at]
        if makes and not before:
            move = Move(scene.spot, moment.step.id, makes[0].step.id, before=False)
            return Mend(
                message("move it behind {step}", step=makes[0].step.title or makes[0].step.id),
                (move,),
            )
        if before:
            covers = [
                other
                for other in scene.moments[before[-1].at + 1 : moment.at]
                if set(idle) & set(other.laid)
            ]
            if covers:  # where nothing does, the step before lays no such film after all
                cover = covers[0].step
                move = Move(scene.spot, moment.step.id, cover.id, before=True)
                return Mend(
                    message("move it ahead of {step}", step=cover.title or cover.id), (move,)
                )
    leave = Leave(scene.spot, moment.step.id, tuple(idle))
    return Mend(message("leave these places out of it"), (leave,))
