"""What practice asks beside the table: none of it harms a film, so it is advice.

Powder wants tooth, and water a way to the chipping fluid.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import MATTE_CLEAR, counterpart
from planner.layers.named_mends import Insert
from planner.layers.operation_kinds import OIL_BORNE, WASH_STAGES
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.step_edits import Swap
from planner.values.coating import Family, Finish
from planner.values.message import message, titled, within
from planner.values.step import Stage

DRY_SHUT = frozenset({Family.SOLVENT_LACQUER, *OIL_BORNE})
POWDERS = frozenset({Family.PIGMENT, Family.FIXER, Family.GRAPHITE})


def tooth(scene: Scene) -> Iterator[Finding]:
    """Yield powder on gloss: matte below gives it tooth."""
    for moment in scene.moments:
        smooth = [
            place
            for place, name in moment.laid.items()
            if scene.book.coating(name).family is Family.PIGMENT and _on_gloss(moment, place)
        ]
        if smooth:
            yield scene.found(
                message("pigment on gloss"),
                LayerVerdict.ADVICE,
                moment,
                smooth,
                message("dry powder finds no hold on a gloss film; a matte coat gives it tooth"),
                None if _taped(scene, moment, smooth) else _matte_before(scene, moment, smooth),
            )


def _on_gloss(moment: Moment, place: str) -> bool:
    """Tell whether gloss lies on top; a wash is too thin to cover its sheen."""
    films = [
        film
        for film in moment.stack(place)
        if film.step.stage not in WASH_STAGES and film.family not in POWDERS
    ]
    return bool(films) and films[-1].finish is Finish.GLOSS and films[-1].family is not Family.DECAL


def water_lifts(scene: Scene) -> Iterator[Finding]:
    """Yield chips to be rubbed with water through paint that keeps water out."""
    for moment in scene.moments:
        if moment.step.stage is not Stage.CHIP_RUB:
            continue
        shut = {place: film for place in moment.first.places if (film := _shut_by(moment, place))}
        if not shut:
            continue
        films = {(film.step.id, film.laid_as): film for film in shut.values()}
        first = next(iter(films.values()))
        swaps = tuple(
            Swap(
                scene.spot,
                film.step.id,
                film.laid_as,
                counterpart(film.coating, Family.WATERBORNE_ACRYLIC),
            )
            for film in films.values()
            if not scene.logged(film.step.id)
        )
        yield scene.found(
            message("chip rub through solvent paint"),
            LayerVerdict.ADVICE,
            moment,
            list(shut),
            message(
                "{family} over the fluid keeps water out: chips come late, in sheets, or not at"
                " all; scratch it open, or take a waterborne colour",
                family=first.family,
            ),
            Mend(message("lay a waterborne colour over the fluid"), swaps) if swaps else None,
        )


def _shut_by(moment: Moment, place: str) -> Layer | None:
    """Return the first solvent paint over the topmost fluid, where no clear coat is the matter."""
    stack = moment.stack(place)
    fluid = [at for at, film in enumerate(stack) if film.family is Family.CHIPPING_FLUID]
    above = stack[fluid[-1] + 1 :] if fluid else ()
    if any(film.seals for film in above):
        return None
    return next((film for film in above if film.family in DRY_SHUT), None)


def _taped(scene: Scene, moment: Moment, places: list[str]) -> bool:
    """Tell whether tape is on any of the places, to come off later or never."""
    on: set[str] = set()
    for earlier in scene.moments[: moment.at]:
        if earlier.step.stage is Stage.MASK:
            on |= set(earlier.first.places)
        elif earlier.step.stage is Stage.UNMASK:
            on -= set(earlier.first.places)
    return bool(on & set(places))


def _matte_before(scene: Scene, moment: Moment, places: list[str]) -> Mend:
    insert = Insert(
        scene.spot,
        moment.step.id,
        before=True,
        name=f"matte-for-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.VARNISH,  # a MATTE would have to be the last of all
        places=tuple(places),
        title=within(
            200, titled("matte clear before {step}", step=moment.step.title or moment.step.id)
        ),
        wanted=MATTE_CLEAR,
    )
    return Mend(message("lay a matte clear before it"), (insert,))
