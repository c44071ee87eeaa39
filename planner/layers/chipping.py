"""Chipping fluid: laid, overcoated with a colour, rubbed, and only then taped or sealed."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import RESISTS, Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import CHIPPING_FLUID
from planner.layers.named_mends import BookChange, Insert, Leave, Move
from planner.layers.overcoat_rules import clear_before
from planner.layers.overcoat_table import Below, LayerVerdict, Next, row
from planner.values.coating import Family
from planner.values.message import message, titled, within
from planner.values.step import Minutes, Role, Stage

COLOUR_STAGES = frozenset(
    {Stage.PRIME, Stage.BASE, Stage.CAMO, Stage.HIGHLIGHT, Stage.DETAIL, Stage.WEATHER}
)
OVERCOAT_STAGES = COLOUR_STAGES - {Stage.PRIME}


def chipping(scene: Scene) -> Iterator[Finding]:
    """Yield rubs that no fluid or a clear coat meets, fluid left open, tape over fluid."""
    for moment in scene.moments:
        if moment.step.stage is Stage.CHIP_RUB:
            yield from _rub(scene, moment)
        elif moment.step.stage is Stage.MASK:
            yield from _tape(scene, moment)
        elif _fluid_places(scene, moment):
            yield from _left_open(scene, moment)


def _fluid_places(scene: Scene, moment: Moment) -> list[str]:
    return [
        place
        for place, name in moment.laid.items()
        if scene.book.coating(name).family is Family.CHIPPING_FLUID
    ]


def _rub(scene: Scene, moment: Moment) -> Iterator[Finding]:
    places = [place for place in moment.first.places if not _can_chip(moment.stack(place))]
    if places:
        yield scene.found(
            message("chip rub without chipping fluid"),
            LayerVerdict.ORDER,
            moment,
            places,
            message("no chipping fluid lies under the coat, so wet rubbing would not lift it"),
            _fluid_below(scene, moment, tuple(places)),
        )
    clears = {place: clear for place in moment.first.places if (clear := _shut(moment, place))}
    if clears:
        first = min(clears.values(), key=lambda film: film.at)
        yield scene.found(
            message("chip rub through a clear coat"),
            LayerVerdict.ORDER,
            moment,
            list(clears),
            message("a clear coat lies over the fluid, so no water reaches it and nothing chips"),
            Mend(
                message("move it ahead of {step}", step=first.step.title or first.step.id),
                (Move(scene.spot, moment.step.id, first.step.id, before=True),),
            ),
        )


def _can_chip(stack: tuple[Layer, ...]) -> bool:
    """Tell whether something lies in a stack at which the coats over it come off."""
    return _fluid_at(stack) is not None or any(film.family in RESISTS for film in stack)


def _shut(moment: Moment, place: str) -> Layer | None:
    """Return the first clear coat over the topmost chipping fluid of a place, or None."""
    stack = moment.stack(place)
    at = _fluid_at(stack)
    if at is None:
        return None
    return next((film for film in stack[at + 1 :] if film.seals), None)


def _fluid_at(stack: tuple[Layer, ...]) -> int | None:
    """Return the index of the topmost chipping fluid in a stack, or None."""
    found = [at for at, film in enumerate(stack) if film.family is Family.CHIPPING_FLUID]
    return found[-1] if found else None


def _fluid_below(scene: Scene, moment: Moment, places: tuple[str, ...]) -> Mend:
    """Return the mend that lays fluid below the last colour, or leaves the places out."""
    for earlier in reversed(scene.moments[: moment.at]):
        films = earlier.laid
        ready = all(place in films and earlier.stack(place) for place in places)
        if earlier.step.stage in OVERCOAT_STAGES and ready:
            insert = Insert(
                scene.spot,
                earlier.step.id,
                before=True,
                name=f"fluid-for-{moment.step.id}"[:50].rstrip("-"),
                stage=Stage.CHIP_FLUID,
                places=places,
                title=within(
                    200,
                    titled(
                        "chipping fluid below {step}", step=earlier.step.title or earlier.step.id
                    ),
                ),
                wanted=CHIPPING_FLUID,
            )
            name = earlier.step.title or earlier.step.id
            return Mend(message("lay chipping fluid before {name}", name=name), (insert,))
    return Mend(
        message("leave these places out of it"), (Leave(scene.spot, moment.step.id, places),)
    )


def _left_open(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield fluid that no colour covers before it is rubbed, or at all."""
    bare = [place for place in _fluid_places(scene, moment) if not _covered(scene, moment, place)]
    if bare:
        yield scene.found(
            message("chipping fluid never overcoated"),
            LayerVerdict.ORDER,
            moment,
            bare,
            message(
                "no colour goes over the fluid, so there is nothing to chip and water takes it off"
            ),
            _below_a_colour(scene, moment, tuple(bare)),
        )


def _covered(scene: Scene, moment: Moment, place: str) -> bool:
    for later in scene.moments[moment.at + 1 :]:
        if place in later.laid and later.step.stage is not Stage.CHIP_FLUID:
            return later.step.stage in OVERCOAT_STAGES
        if later.step.stage is Stage.CHIP_RUB and place in later.first.places:
            return False
    return False


def _below_a_colour(scene: Scene, moment: Moment, bare: tuple[str, ...]) -> Mend:
    """Return the mend that moves the fluid under the last colour, or leaves the places out."""
    fluid = set(_fluid_places(scene, moment))
    colours = [other for other in scene.moments if other.step.stage in OVERCOAT_STAGES]
    for other in reversed([one for one in colours if one.at < moment.at]):
        films = other.laid
        if fluid <= set(films) and all(other.stack(place) for place in fluid):
            move = Move(scene.spot, moment.step.id, other.step.id, before=True)
            edits: list[BookChange] = [move]
            if not _rubbed(scene, other, bare):
                edits.append(rub_behind(scene, moment, other, bare))
            return Mend(
                message("move it below {step}", step=other.step.title or other.step.id),
                tuple(edits),
            )
    return Mend(message("leave these places out of it"), (Leave(scene.spot, moment.step.id, bare),))


def _rubbed(scene: Scene, colour: Moment, places: tuple[str, ...]) -> bool:
    return any(
        later.step.stage is Stage.CHIP_RUB and set(places) <= set(later.first.places)
        for later in scene.moments[colour.at + 1 :]
    )


def rub_behind(scene: Scene, fluid: Moment, colour: Moment, places: tuple[str, ...]) -> Insert:
    """Return the edit that rubs places behind a colour that lies over chipping fluid."""
    name = fluid.step.title or fluid.step.id
    return Insert(
        scene.spot,
        colour.step.id,
        before=False,
        name=f"rub-{fluid.step.id}"[:50].rstrip("-"),
        stage=Stage.CHIP_RUB,
        places=places,
        title=within(200, titled("rub chips over {step}", step=name)),
        minutes=Minutes(fixed=2, per_part=5),
    )


def _tape(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield tape on fluid, or on a coat over fluid that no clear coat holds down."""
    open_places = (place for place in moment.first.places if place not in moment.masks)
    loose = [place for place in open_places if _loose(moment.stack(place))]
    if not loose:
        return
    line = row(Next.TAPE, Below.CHIP_FLUID)
    yield scene.found(
        message("{next} over {below}", next=line.next, below=line.below),
        line.verdict,
        moment,
        loose,
        line.reason,
        _free_of_fluid(scene, moment, tuple(loose)),
        line.source,
    )


def _loose(stack: tuple[Layer, ...]) -> bool:
    at = _fluid_at(stack)
    return at is not None and not any(film.seals for film in stack[at + 1 :])


def _free_of_fluid(scene: Scene, moment: Moment, places: tuple[str, ...]) -> Mend:
    """Return the mend: open fluid goes on after the tape, a chipped coat is sealed first."""
    tops = {moment.stack(place)[-1] for place in places}
    if all(film.family is Family.CHIPPING_FLUID for film in tops):
        later_on = _fluid_later(scene, moment, places)
        if later_on is not None:
            return later_on
    rubs: list[BookChange] = [
        Move(scene.spot, later.step.id, moment.step.id, before=True, anywhere=True)
        for later in scene.moments[moment.at + 1 :]
        if later.step.stage is Stage.CHIP_RUB and set(later.first.places) & set(places)
    ]
    seal = clear_before(scene, moment, places, Role.SEAL)
    return Mend(message("rub the chips and seal them before taping"), (*rubs, *seal.edits))


def _fluid_later(scene: Scene, moment: Moment, places: tuple[str, ...]) -> Mend | None:
    steps = {moment.stack(place)[-1].step.id for place in places}
    for later in scene.moments[moment.at + 1 :]:
        if later.step.stage in OVERCOAT_STAGES and set(later.laid) & set(places):
            edits = tuple(
                Move(scene.spot, step, later.step.id, before=True) for step in sorted(steps)
            )
            return Mend(
                message("lay the fluid only before {step}", step=later.step.title or later.step.id),
                edits,
            )
    return None
