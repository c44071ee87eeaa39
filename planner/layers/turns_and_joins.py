"""What is up, and what is glued: turns, sides and faces of joins."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.named_mends import Insert, SplitSides
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.step_edits import Scrape
from planner.passes import WHOLE_UNIT, Unit
from planner.values.coating import Family
from planner.values.message import message, titled
from planner.values.model import Side
from planner.values.step import Minutes, Stage

UP = {0: "topside", 1: "underside"}


def sides(scene: Scene) -> Iterator[Finding]:
    """Yield steps that work on the side that lies on the bench (definition 20)."""
    for moment in scene.moments:
        if moment.step.stage in WHOLE_UNIT:
            continue
        for unit in moment.first.units:
            if not unit.holder:
                yield from _unit(scene, moment, unit)


def _unit(scene: Scene, moment: Moment, unit: Unit) -> Iterator[Finding]:
    ours = [p for p in moment.first.places if p.partition("/")[0] in unit.parts]
    facing = {scene.model.place(place).side for place in ours}
    turned = {part: moment.turns[part] % 2 for part in unit.parts}
    if len(set(turned.values())) > 1:
        yield _unlike(scene, moment, unit, turned, ours)
        return
    on_back = any(turned.values())
    if len(facing) > 1 or facing != {moment.first.side}:
        yield scene.found(
            message("both sides in one step"),
            LayerVerdict.ORDER,
            moment,
            ours,
            message(
                "without a holder it cannot lie on both sides at once; "
                "wet paint would touch the bench"
            ),
            Mend(
                message("split it by side, with a turn between"),
                (SplitSides(scene.spot, moment.step.id, unit.parts, on_back),),
            ),
        )
    elif on_back is not (facing == {Side.UNDER}):
        yield scene.found(
            (
                message("topside reached without a turn"),
                message("underside reached without a turn"),
            )[int(not on_back)],
            LayerVerdict.ORDER,
            moment,
            ours,
            (
                message("it has no holder and lies with the topside up; turn it first"),
                message("it has no holder and lies with the underside up; turn it first"),
            )[int(on_back)],
            Mend(message("turn it over before and back behind"), _turns(scene, moment, unit)),
        )


def _turns(scene: Scene, moment: Moment, unit: Unit) -> tuple[Insert, Insert]:
    """Return a turn before the step, and one behind the last of its run on that side."""
    last = moment
    for later in scene.moments[moment.at + 1 :]:
        ours = [p for p in later.first.places if p.partition("/")[0] in unit.parts]
        if not ours:
            continue
        alike = later.first.side is moment.first.side and set(later.first.parts) <= set(unit.parts)
        if later.step.stage in WHOLE_UNIT or not alike or _mixed(scene, ours):
            break
        last = later
    return (
        _turn(scene, moment, unit.parts, before=True, title=titled("turn it over")),
        _turn(scene, last, unit.parts, before=False, title=titled("turn it back")),
    )


def _mixed(scene: Scene, places: list[str]) -> bool:
    return len({scene.model.place(place).side for place in places}) > 1


def _turn(
    scene: Scene, moment: Moment, parts: tuple[str, ...], *, before: bool, title: str
) -> Insert:
    where = "before" if before else "behind"
    return Insert(
        scene.spot,
        moment.step.id,
        before=before,
        name=f"turn-{where}-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.TURN,
        places=parts,
        title=title,
        minutes=Minutes(fixed=1),
    )


def _unlike(
    scene: Scene, moment: Moment, unit: Unit, turned: dict[str, int], places: list[str]
) -> Finding:
    """Return the finding on an assembly whose parts were joined lying differently."""
    over = tuple(part for part, odd in turned.items() if odd)
    joins = [
        other
        for other in scene.moments[: moment.at]
        if other.step.stage is Stage.JOIN and set(over) & set(other.first.parts)
    ]
    mend = None
    if joins:
        turn = _turn(scene, joins[-1], over, before=True, title=titled("turn it back"))
        mend = Mend(message("turn {over} back before the join", over=", ".join(over)), (turn,))
    return scene.found(
        message("joined while lying on different sides"),
        LayerVerdict.ORDER,
        moment,
        places,
        message(
            "{over} was joined with the underside up, the rest with the topside up",
            over=", ".join(over),
        ),
        mend,
    )


def faces(scene: Scene) -> Iterator[Finding]:
    """Yield joins whose faces to glue bear paint that is not scraped off (definition 19)."""
    for moment in scene.moments:
        if moment.step.stage is not Stage.JOIN or moment.step.scraped:
            continue
        painted = {
            place: scene.book.coating(name).family
            for place, name in moment.laid.items()
            if moment.stack(place)
        }
        if not painted:
            continue
        cement = Family.SOLVENT_CEMENT in painted.values()
        why = (
            message("solvent cement welds bare plastic only")
            if cement
            else message("glue holds on paint no better than the paint holds on the part")
        )
        yield scene.found(
            message("painted faces glued"),
            LayerVerdict.PREPARE,
            moment,
            painted,
            message("{why}; scrape the faces, or mask them before painting", why=why),
            Mend(
                message("scrape the faces as part of the join"),
                (Scrape(scene.spot, moment.step.id),),
            ),
        )
