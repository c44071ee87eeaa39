"""Masks: on, a coat beside them, off; nothing is laid on what they cover."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import RESISTS, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.named_mends import Insert, Leave, Move
from planner.layers.overcoat_table import LayerVerdict
from planner.values.message import message, titled, within
from planner.values.step import Minutes, Stage


def masking(scene: Scene) -> Iterator[Finding]:
    """Yield masks never taken off, unmasking of nothing, and films on covered places."""
    for moment in scene.moments:
        if moment.step.stage is Stage.MASK:
            yield from _never_off(scene, moment)
            yield from _for_nothing(scene, moment)
        elif moment.step.stage is Stage.UNMASK:
            yield from _nothing_on(scene, moment)
        else:
            yield from _on_mask(scene, moment)


def _uncovered(scene: Scene, mask: Moment, place: str) -> Moment | None:
    """Return the step that takes the mask off a place, or None."""
    for later in scene.moments[mask.at + 1 :]:
        if later.step.stage is Stage.UNMASK and place in later.first.places:
            return later
    return None


def _never_off(scene: Scene, moment: Moment) -> Iterator[Finding]:
    left = [place for place in moment.first.places if _uncovered(scene, moment, place) is None]
    if not left:
        return
    insert = Insert(
        scene.spot,
        _last_beside(scene, moment, set(left)).step.id,
        before=False,
        name=f"unmask-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.UNMASK,
        places=tuple(left),
        title=within(200, titled("take off {step}", step=moment.step.title or moment.step.id)),
        minutes=Minutes(per_part=4),
    )
    yield scene.found(
        message("mask never taken off"),
        LayerVerdict.ORDER,
        moment,
        left,
        message("no step takes the mask off; tape creeps, and its glue hardens on the film"),
        Mend(message("take the mask off behind the coats beside it"), (insert,)),
    )


def _last_beside(scene: Scene, mask: Moment, covered: set[str]) -> Moment:
    """Return the last step that the mask can be there for; the mask itself if none is."""
    parts = {place.partition("/")[0] for place in covered}
    last = mask
    for later in scene.moments[mask.at + 1 :]:
        if set(later.first.places) & covered:
            break
        if later.first.films and parts & set(later.first.parts):
            last = later
    return last


def _for_nothing(scene: Scene, mask: Moment) -> Iterator[Finding]:
    """Yield a mask that comes off before anything is done beside it on its parts."""
    off = next(
        (
            later
            for later in scene.moments[mask.at + 1 :]
            if later.step.stage is not Stage.MASK  # tape is put on in several goes
        ),
        None,
    )
    if off is None or off.step.stage is not Stage.UNMASK:
        return
    covered = tuple(place for place in mask.first.places if place in off.first.places)
    beside_it = {
        f"{name}/{place.name}"
        for name in mask.first.parts
        for place in scene.model.part(name).places
    }
    if len(covered) < len(mask.first.places) or beside_it <= set(covered):
        return
    beside = _first_beside(scene, off, set(covered))
    mend = None
    if beside is not None:
        move = Move(scene.spot, off.step.id, beside.step.id, before=False)
        mend = Mend(message("take it off behind {step}", step=beside.step.id), (move,))
    yield scene.found(
        message("mask for nothing"),
        LayerVerdict.ORDER,
        mask,
        covered,
        message("it comes off before any coat is laid beside it"),
        mend,
    )


def _first_beside(scene: Scene, off: Moment, covered: set[str]) -> Moment | None:
    """Return the first coat behind an unmasking that lies on the parts and not where it was."""
    parts = {place.partition("/")[0] for place in covered}
    for later in scene.moments[off.at + 1 :]:
        if later.step.stage is Stage.MASK or set(later.first.places) & covered:
            return None
        if later.first.films and parts & set(later.first.parts):
            return later
    return None


def _nothing_on(scene: Scene, moment: Moment) -> Iterator[Finding]:
    idle = tuple(
        place
        for place in moment.first.places
        if place not in moment.masks
        and not any(film.family in RESISTS for film in moment.stack(place))
    )
    if idle:
        yield scene.found(
            message("unmask without a mask"),
            LayerVerdict.ORDER,
            moment,
            idle,
            message("no mask lies there; either a mask step is missing ahead of it, or it is idle"),
            Mend(
                message("leave these places out of it"), (Leave(scene.spot, moment.step.id, idle),)
            ),
        )


def _on_mask(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield films on places under a mask that comes off later."""
    covered = tuple(place for place, _ in moment.first.films if place in moment.masks)
    if covered:
        yield scene.found(
            message("coat on a masked place"),
            LayerVerdict.ORDER,
            moment,
            covered,
            message("a mask covers it, so no coat reaches it"),
            Mend(
                message("leave the masked places out of it"),
                (Leave(scene.spot, moment.step.id, covered),),
            ),
        )
