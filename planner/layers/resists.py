"""What is laid only to be taken off again with all that lies over it: masking fluid, salt.

Dabbed on, they are masks of a part of a place: the colour goes over them, and
where they come off the coat below shows.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import RESISTS, TAKES_OFF, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.named_mends import Insert
from planner.layers.overcoat_table import LayerVerdict
from planner.values.message import message, titled, within
from planner.values.step import Minutes, Stage


def resists(scene: Scene) -> Iterator[Finding]:
    """Yield masking fluid and salt that no step takes off, or that nothing is laid over."""
    for moment in scene.moments:
        places = [
            place
            for place, name in moment.laid.items()
            if scene.book.coating(name).family in RESISTS
        ]
        left = [place for place in places if _off(scene, moment, place) is None]
        if left:
            yield scene.found(
                message("masking fluid never taken off"),
                LayerVerdict.ORDER,
                moment,
                left,
                message("no step takes the masking fluid or salt off; it grows into the film"),
                _take_off(scene, moment, tuple(left)),
            )
        idle = [place for place in places if _idle(scene, moment, place)]
        if idle and not left:
            yield scene.found(
                message("masking fluid that masks nothing"),
                LayerVerdict.ADVICE,
                moment,
                idle,
                message("nothing is laid over the masking fluid or salt before it comes off"),
                None,
            )


def _off(scene: Scene, moment: Moment, place: str) -> Moment | None:
    """Return the step that takes the resist off a place, or None."""
    for later in scene.moments[moment.at + 1 :]:
        if later.step.stage in TAKES_OFF and place in later.first.places:
            return later
    return None


def _idle(scene: Scene, moment: Moment, place: str) -> bool:
    off = _off(scene, moment, place)
    return off is not None and not any(
        place in between.laid for between in scene.moments[moment.at + 1 : off.at]
    )


def _take_off(scene: Scene, moment: Moment, places: tuple[str, ...]) -> Mend:
    """Return the mend that takes it off behind the first colour that goes over it."""
    anchor = next((m for m in scene.moments[moment.at + 1 :] if set(places) & set(m.laid)), moment)
    insert = Insert(
        scene.spot,
        anchor.step.id,
        before=False,
        name=f"take-off-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.UNMASK,
        places=places,
        title=within(200, titled("take off {step}", step=moment.step.title or moment.step.id)),
        minutes=Minutes(per_part=4),
    )
    return Mend(
        message("take it off behind {step}", step=anchor.step.title or anchor.step.id), (insert,)
    )
