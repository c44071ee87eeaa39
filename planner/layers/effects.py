"""Metallic, mirror and fluorescent finishes: what they want below, and what takes their shine.

What each effect asks stands in `WANTS` and `SPOILS`; all of it is common
practice, no source.  Graphite counts as a shine, too.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.layers.coat_stack import Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.hiding_coats import OPAQUE, lightness, shade_of
from planner.layers.mend_coatings import Wanted
from planner.layers.named_mends import Insert, Move
from planner.layers.overcoat_rules import clear_before
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.solvent_strength import ALCOHOL, strength_of
from planner.values.coating import Coating, Effect, Family, Finish
from planner.values.coating_names import effect_of
from planner.values.message import message, titled, within
from planner.values.step import CLEAR_STAGES, Role, Stage

WHITE = 85.0  # CIE L* from which an undercoat counts as white: assumed
GLOSS_BLACK = Wanted(
    "solvent lacquer, gloss black",
    Family.SOLVENT_LACQUER,
    Finish.GLOSS,
    "#0c0c0c",
    ("gloss black",),
)
WHITE_UNDERCOAT = Wanted(
    "waterborne acrylic, white", Family.WATERBORNE_ACRYLIC, Finish.MATTE, "#f8f8f6", ("white",)
)


@dataclass(frozen=True)
class Want:
    """What a finish with an effect wants right below it, at which stages that is asked."""

    white: bool
    smooth: bool
    stages: frozenset[Stage]
    why: str
    wanted: Wanted
    mend: str


_COLOUR = frozenset({Stage.BASE, Stage.CAMO})
WANTS: dict[Effect, Want] = {
    Effect.FLUORESCENT: Want(
        white=True,
        smooth=False,
        stages=_COLOUR | {Stage.DETAIL},
        why=message("fluorescent colour is thin and glows only over white; lay white below it"),
        wanted=WHITE_UNDERCOAT,
        mend=message("lay white below it"),
    ),
    Effect.MIRROR: Want(
        white=False,
        smooth=True,
        stages=_COLOUR | {Stage.DETAIL},
        why=message("a mirror finish shows every grain; it wants a gloss base, mostly black"),
        wanted=GLOSS_BLACK,
        mend=message("lay gloss black below it"),
    ),
    Effect.METALLIC: Want(
        white=False,
        smooth=True,
        stages=frozenset({Stage.BASE}),
        why=message("a shining metallic looks grainy over a matte coat; it wants a smooth base"),
        wanted=GLOSS_BLACK,
        mend=message("lay gloss black below it"),
    ),
}

# What takes the shine of a film: its effect, the sheens of clear coats that do, how grave it is.
SPOILS: dict[Effect, tuple[frozenset[Finish], LayerVerdict, str]] = {
    Effect.METALLIC: (
        frozenset({Finish.MATTE}),
        LayerVerdict.ADVICE,
        message("a matte clear takes the shine of the metallic below it"),
    ),
    Effect.MIRROR: (
        frozenset(Finish),
        LayerVerdict.ADVICE,
        message("any clear coat takes the shine of a mirror finish; leave it as it is"),
    ),
}
GRAPHITE_SPOILT = message("a matte clear takes the shine of graphite; rub it on after that")
LIFTS: dict[Effect, tuple[LayerVerdict, str]] = {
    Effect.MIRROR: (
        LayerVerdict.NEVER,
        message("tape lifts and dulls a mirror finish; lay it last, beside what is masked"),
    ),
    Effect.METALLIC: (
        LayerVerdict.ADVICE,
        message("tape lifts flakes of a metallic; try tape made less sticky on a hidden place"),
    ),
}


def _told_effect(coating: Coating) -> Effect:
    """Return the effect that rules go by; that of a metallic must be told, not only named.

    Metal details below a matte clear are common, and nobody asks for their shine.
    """
    effect = effect_of(coating)
    return coating.effect if effect is Effect.METALLIC else effect


def effects(scene: Scene) -> Iterator[Finding]:
    """Yield finishes on a base that they do not want, under what spoils them, under tape."""
    for moment in scene.moments:
        yield from _base(scene, moment)
        yield from _spoilt(scene, moment)
        yield from _polish(scene, moment)
        if moment.step.stage is Stage.MASK:
            yield from _taped(scene, moment)


def _base(scene: Scene, moment: Moment) -> Iterator[Finding]:
    for effect, want in WANTS.items():
        if moment.step.stage not in want.stages:
            continue
        wrong = [
            place
            for place, name in moment.laid.items()
            if _told_effect(scene.book.coating(name)) is effect
            and (want.white or scene.book.coating(name).finish is Finish.GLOSS)
            and not _suits(scene, moment, place, want)
        ]
        if wrong:
            insert = Insert(
                scene.spot,
                moment.step.id,
                before=True,
                name=f"base-for-{moment.step.id}"[:50].rstrip("-"),
                stage=Stage.BASE,
                places=tuple(wrong),
                title=within(
                    200, titled("base below {step}", step=moment.step.title or moment.step.id)
                ),
                wanted=want.wanted,
            )
            rule = message("{effect} on the wrong base", effect=effect)
            mend = Mend(want.mend, (insert,))
            yield scene.found(rule, LayerVerdict.ADVICE, moment, wrong, want.why, mend)


def _suits(scene: Scene, moment: Moment, place: str, want: Want) -> bool:
    opaque = [film for film in moment.stack(place) if film.step.stage in OPAQUE]
    if not opaque:
        return not want.white  # what bare plastic asks is said by others
    if want.white:
        glows = _told_effect(opaque[-1].coating) is Effect.FLUORESCENT
        return glows or lightness(shade_of(scene.book, opaque[-1])) >= WHITE
    return moment.stack(place)[-1].finish is not Finish.MATTE


def _spoilt(scene: Scene, moment: Moment) -> Iterator[Finding]:
    if moment.step.stage not in CLEAR_STAGES:
        return
    found: dict[tuple[LayerVerdict, str], list[tuple[str, Layer]]] = {}
    for place, name in moment.laid.items():
        film = _shining(moment.stack(place))
        if film is None:
            continue
        loss = _loss(film, scene.book.coating(name))
        if loss is not None:
            found.setdefault(loss, []).append((place, film))
    for (verdict, why), spots in found.items():
        last = max((film for _, film in spots), key=lambda film: film.at)
        yield scene.found(
            message("clear over a shine"),
            verdict,
            moment,
            [place for place, _ in spots],
            why,
            _clear_first(scene, moment, last) if verdict is LayerVerdict.ORDER else None,
        )


def _loss(film: Layer, clear: Coating) -> tuple[LayerVerdict, str] | None:
    if film.family is Family.GRAPHITE:
        matte = clear.finish is Finish.MATTE
        return (LayerVerdict.ORDER, GRAPHITE_SPOILT) if matte else None
    sheens, verdict, why = SPOILS[_told_effect(film.coating)]
    return (verdict, why) if clear.finish in sheens else None


def _shining(stack: tuple[Layer, ...]) -> Layer | None:
    """Return the film whose shine a clear coat would meet, or None."""
    for film in reversed(stack):
        if film.family is Family.GRAPHITE or _told_effect(film.coating) in SPOILS:
            return film
        matte_clear = film.step.stage in CLEAR_STAGES and film.finish is Finish.MATTE
        if film.step.stage in OPAQUE or matte_clear:
            return None  # it is covered, or its shine is gone already
    return None


def _clear_first(scene: Scene, moment: Moment, film: Layer) -> Mend:
    name = moment.step.title or moment.step.id
    move = Move(scene.spot, film.step.id, moment.step.id, before=False, anywhere=True)
    return Mend(message("move it behind {name}", name=name), (move,))


def _taped(scene: Scene, moment: Moment) -> Iterator[Finding]:
    for effect, (verdict, why) in LIFTS.items():
        places = [
            place
            for place in moment.first.places
            if (stack := moment.stack(place)) and _told_effect(stack[-1].coating) is effect
        ]
        if places:
            rule = message("tape on a {effect} finish", effect=effect)
            yield scene.found(rule, verdict, moment, places, why, None)


def _polish(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield alcohol and stronger solvents on a gloss of the kind of floor polish."""
    places = tuple(
        place
        for place, name in moment.laid.items()
        if (stack := moment.stack(place))
        and stack[-1].coating.effect is Effect.POLISH
        and strength_of(scene.book, name) >= ALCOHOL
    )
    if places:
        yield scene.found(
            message("strong solvent on polish gloss"),
            LayerVerdict.BARRIER,
            moment,
            places,
            message("alcohol and lacquer thinner dissolve a gloss of the kind of floor polish"),
            clear_before(scene, moment, places, Role.BARRIER),
        )
