"""What the bare material asks: washing, what clear plastic cannot bear, heat, the right glue.

The tables here are common practice, no source, where nothing else is said.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.layers.coat_stack import Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.named_mends import Insert, Leave
from planner.layers.overcoat_rules import primer_before, swap_families
from planner.layers.overcoat_table import COMMON_PRACTICE, LayerVerdict
from planner.values.coating import Family
from planner.values.message import message, titled, within
from planner.values.model import Material, Part
from planner.values.step import LAYS_NO_FILM, Minutes, Stage

WASHED: dict[Material, tuple[LayerVerdict, str]] = {
    Material.RESIN: (
        LayerVerdict.PREPARE,
        message("resin bears release agent from the mould, and paint lets go; wash it first"),
    ),
    Material.CAST: (
        LayerVerdict.PREPARE,
        message("cast metal leaves the mould with release agent on it; wash it first"),
    ),
    Material.VINYL: (
        LayerVerdict.PREPARE,
        message("soft vinyl is oily from the mould, and paint lets go; wash it first"),
    ),
    Material.ETCHED: (
        LayerVerdict.ADVICE,
        message("photo-etched metal is greasy from handling; degrease it first"),
    ),
    Material.METAL: (
        LayerVerdict.ADVICE,
        message("bare metal is greasy from handling; degrease it first"),
    ),
}
"""What is washed before anything is laid on it, and how grave it is if nobody does."""


@dataclass(frozen=True)
class Heat:
    """From when a material may warp, and from when it surely does [°C]."""

    warps_c: float
    softens_c: float
    source: str


_STYRENE_HEAT = message(
    "assumed: styrene softens below 100 °C, and thin or strained parts bend from about 60 °C"
)
HEAT: dict[Material, Heat] = {
    Material.STYRENE: Heat(45, 60, _STYRENE_HEAT),
    Material.CLEAR: Heat(45, 60, _STYRENE_HEAT),
    Material.RESIN: Heat(45, 60, message("assumed: cast polyurethane bends in hot water")),
    Material.PRINT: Heat(45, 60, message("assumed: as cast resin")),
    Material.SOFT: Heat(35, 50, COMMON_PRACTICE),
    Material.VINYL: Heat(35, 50, COMMON_PRACTICE),
}

WELDED = frozenset({Material.STYRENE, Material.CLEAR})
"""What solvent cement welds."""


def substrates(scene: Scene) -> Iterator[Finding]:
    """Yield coats on what was not washed, on glazing, in too much heat, and wrong glue."""
    washed: set[str] = set()
    coated: set[str] = set()
    hot: set[tuple[str, str]] = set()
    for moment in scene.moments:
        if moment.step.stage is Stage.CLEAN:
            washed.update(moment.first.parts)
        elif moment.step.stage is Stage.JOIN:
            yield from _glue(scene, moment)
        elif moment.step.stage not in LAYS_NO_FILM:
            yield from _grain(scene, moment, [p for p in _coated(moment) if p not in coated])
            fresh = [part for part in _coated(moment) if part not in coated]
            yield from _unwashed(scene, moment, [part for part in fresh if part not in washed])
            coated.update(fresh)
        yield from _heat(scene, moment, hot)
    yield from _glazing(scene)


def _coated(moment: Moment) -> list[str]:
    return list(dict.fromkeys(place.partition("/")[0] for place in moment.laid))


def _unwashed(scene: Scene, moment: Moment, parts: list[str]) -> Iterator[Finding]:
    kinds: dict[Material, list[str]] = {}
    for part in parts:
        material = scene.model.part(part).material
        if material in WASHED:
            kinds.setdefault(material, []).append(part)
    for material, some in kinds.items():
        verdict, why = WASHED[material]
        insert = Insert(
            scene.spot,
            moment.step.id,
            before=True,
            name=f"wash-before-{moment.step.id}"[:50].rstrip("-"),
            stage=Stage.CLEAN,
            places=tuple(some),
            title=within(
                200, titled("wash before {step}", step=moment.step.title or moment.step.id)
            ),
            minutes=Minutes(fixed=5, per_part=3),
        )
        places = [place for place in moment.laid if place.partition("/")[0] in some]
        yield scene.found(
            message("{material} not washed", material=material),
            verdict,
            moment,
            places,
            why,
            Mend(message("wash it before"), (insert,)),
        )


def _grain(scene: Scene, moment: Moment, parts: list[str]) -> Iterator[Finding]:
    """Yield colour straight on wood: it drinks it, and its grain stands up."""
    wooden = [part for part in parts if scene.model.part(part).material is Material.WOOD]
    if wooden and moment.step.stage not in (Stage.PRIME, Stage.VARNISH):
        places = tuple(place for place in moment.laid if place.partition("/")[0] in wooden)
        yield scene.found(
            message("colour on bare wood"),
            LayerVerdict.ADVICE,
            moment,
            places,
            message("bare wood drinks the colour and its grain stands up; seal and sand it first"),
            primer_before(scene, moment, places),
        )


def _glazing(scene: Scene) -> Iterator[Finding]:
    """Yield primer and opaque colour that leave no place of a clear part clear."""
    for part in scene.model.parts:
        if part.material is not Material.CLEAR:
            continue
        hidden: set[str] = set()
        first: Moment | None = None
        for moment in scene.moments:
            opaque = moment.step.stage in (Stage.PRIME, Stage.BASE, Stage.CAMO)
            ours = [
                place
                for place in moment.laid
                if place.partition("/")[0] == part.name and not _under_fluid(moment, place)
            ]
            if opaque and ours:
                hidden.update(ours)
                first = first or moment
        every = {f"{part.name}/{place.name}" for place in part.places}
        if first is not None and hidden == every:
            yield _no_glass(scene, first, part)


def _under_fluid(moment: Moment, place: str) -> bool:
    """Tell whether masking fluid keeps glass clear until it is drawn off with what lies on it."""
    return any(film.family is Family.MASKING_FLUID for film in moment.stack(place))


def _no_glass(scene: Scene, moment: Moment, part: Part) -> Finding:
    places = tuple(place for place in moment.laid if place.partition("/")[0] == part.name)
    primer = moment.step.stage is Stage.PRIME
    return scene.found(
        message("clear plastic painted over"),
        LayerVerdict.NEVER if primer else LayerVerdict.ADVICE,
        moment,
        places,
        message(
            "primer and colour on all of a part of clear plastic leave nothing to look through; "
            "mask the glass, or leave it out"
        ),
        Mend(
            message("leave the clear part out of it"), (Leave(scene.spot, moment.step.id, places),)
        ),
    )


def _heat(scene: Scene, moment: Moment, told: set[tuple[str, str]]) -> Iterator[Finding]:
    """Yield where it is too warm for what lies there, each part and place once."""
    if not moment.laid:
        return
    room = scene.book.room
    names = dict.fromkeys((moment.step.dries_in, *moment.step.or_in))
    for name in names:
        location = room.location(name)
        warmest = max(point.temperature_c for point in (*location.workdays, *location.weekends))
        parts = {part: scene.model.part(part).material for part in _coated(moment)}
        bent = [p for p, kind in parts.items() if kind in HEAT and warmest >= HEAT[kind].warps_c]
        bent = [part for part in bent if (name, part) not in told]
        told.update((name, part) for part in bent)
        if not bent:
            continue
        soft = any(warmest >= HEAT[parts[part]].softens_c for part in bent)
        kind = parts[bent[0]]
        yield scene.found(
            message("too warm for {material}", material=kind),
            LayerVerdict.NEVER if soft else LayerVerdict.ADVICE,
            moment,
            [place for place in moment.laid if place.partition("/")[0] in bent],
            message(
                "{location} grows {warmest:g} °C warm, and {material} warps from {limit:g} °C",
                location=location.name,
                warmest=warmest,
                material=kind,
                limit=HEAT[kind].warps_c,
            ),
            None,
            HEAT[kind].source,
        )


def _glue(scene: Scene, moment: Moment) -> Iterator[Finding]:
    """Yield glue that fogs clear plastic, and cement on what it cannot weld."""
    materials = {scene.model.part(part).material for part in moment.first.parts}
    by_family: dict[Family, list[str]] = {}
    for place, name in moment.laid.items():
        by_family.setdefault(scene.book.coating(name).family, []).append(place)
    fumes = by_family.get(Family.CYANOACRYLATE, [])
    if fumes and Material.CLEAR in materials:
        yield scene.found(
            message("cyanoacrylate at clear plastic"),
            LayerVerdict.NEVER,
            moment,
            fumes,
            message("the vapour of cyanoacrylate fogs clear plastic; take white glue"),
            swap_families(scene, moment, tuple(fumes), Family.WHITE_GLUE),
        )
    cement = by_family.get(Family.SOLVENT_CEMENT, [])
    others = materials - WELDED
    if cement and others:
        yield scene.found(
            message("solvent cement at what it cannot weld"),
            LayerVerdict.NEVER,
            moment,
            cement,
            message(
                "solvent cement welds styrene and no {material}; take cyanoacrylate",
                material=sorted(others)[0],
            ),
            swap_families(scene, moment, tuple(cement), Family.CYANOACRYLATE),
        )
