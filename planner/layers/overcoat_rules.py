"""Judge each step against every film that it reaches, by the table."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from planner.layers.coat_stack import Layer, Moment, reached
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import GLOSS_CLEAR, PRIMER, counterpart
from planner.layers.named_mends import Insert
from planner.layers.operation_kinds import below_kind, next_of
from planner.layers.overcoat_table import Below, LayerVerdict, Next, Row, row, verdict_over
from planner.layers.solvent_strength import ETHER, strength_of
from planner.layers.step_edits import Prepare, Swap
from planner.values.coating import Family, Finish, Preparation
from planner.values.message import message, titled, within
from planner.values.model import Material
from planner.values.step import Role, Stage, Step

_Groups = dict[tuple[LayerVerdict, Row], list[tuple[str, Layer | None]]]

AGED_MINUTES = 14 * 1440  # enamel counts as fresh for two weeks: common practice, no source

STRONG = frozenset({Next.LACQUER, Next.TWO_PACK})
DEEP = STRONG | {Next.WASH, Next.TAPE}  # the others are felt by the top film alone
METAL = frozenset({Material.METAL, Material.CAST, Material.ETCHED})
TOUGH = frozenset(
    {Material.METAL, Material.CAST, Material.ETCHED, Material.RESIN, Material.PRINT, Material.WOOD}
)


def below_of(layer: Layer, next_: Next, step: Step) -> Below | None:
    """Return how a film counts in the table below ``step``; None if the table is silent."""
    kind = below_kind(layer.coating, layer.step, next_)
    if kind is Below.YOUNG_ENAMEL and _waits_for_age(step, layer):
        return Below.AGED_ENAMEL
    return kind


def _waits_for_age(step: Step, layer: Layer) -> bool:
    """Tell whether the person wrote a gate of two weeks or more from the film's step."""
    return any(
        gate.after == layer.step.id
        and all(
            window.opens is not None and (window.opens.minutes or 0) >= AGED_MINUTES
            for window in gate.windows
        )
        for gate in step.gates
    )


def over(scene: Scene) -> Iterator[Finding]:
    """Yield what the table finds wrong, one finding for each kind of film below a step."""
    for moment in scene.moments:
        laid = moment.laid
        groups: _Groups = defaultdict(list)
        for place in moment.first.places:
            if place in moment.masks:
                continue
            worst: dict[Below, tuple[LayerVerdict, Row, Layer | None]] = {}
            for verdict, line, layer in _judged(scene, moment, place, laid.get(place)):
                if line.below not in worst or verdict.rank > worst[line.below][0].rank:
                    worst[line.below] = (verdict, line, layer)
            for verdict, line, layer in worst.values():
                groups[verdict, line].append((place, layer))
        everywhere = _spread(groups)
        for (verdict, line), where in groups.items():
            yield scene.found(
                message("{next} over {below}", next=line.next, below=line.below),
                verdict,
                moment,
                [place for place, _ in where],
                _sentence(line, _all_metal(scene, [place for place, _ in where])),
                _mend(scene, moment, line, verdict, where, everywhere[_remedy(line, verdict)]),
                line.source,
            )


def _all_metal(scene: Scene, places: list[str]) -> bool:
    parts = {place.partition("/")[0] for place in places}
    return all(scene.model.part(name).material in METAL for name in parts)


def _sentence(line: Row, metal: bool) -> str:
    if metal and line.below is Below.BARE:
        return message(
            "{next} would go over bare metal; paint grips bare metal badly and rubs off; "
            "prime first",
            next=line.next,
        )
    return message(
        "{next} would go over {below}; {reason}",
        next=line.next,
        below=line.below,
        reason=line.reason,
    )


def _judged(
    scene: Scene, moment: Moment, place: str, named: str | None
) -> Iterator[tuple[LayerVerdict, Row, Layer | None]]:
    """Yield what one place has against the step."""
    step = moment.step
    if step.stage in (Stage.JOIN, Stage.TURN):
        return
    coating = scene.book.coating(named) if named else None
    kinds = next_of(step.stage, step.role, coating.family if coating else None)
    if named and kinds and Next.TWO_PACK not in kinds and strength_of(scene.book, named) >= ETHER:
        kinds = tuple(dict.fromkeys((*kinds, Next.LACQUER)))  # a mix with strong thinner
    stack = moment.stack(place)
    for kind in kinds:
        if not stack:
            yield from _bare(scene, moment, place, row(kind, Below.BARE))
            continue
        for layer in _felt(stack, kind):
            below = below_of(layer, kind, step)
            if below is None or (step.stage is Stage.FILTER and below is Below.WATERBORNE):
                continue  # a filter is brushed on thin and not wiped: a matte colour holds it
            line = row(kind, below)
            verdict = verdict_over(line, layer.finish is not Finish.MATTE)
            if verdict is LayerVerdict.PREPARE and _prepared(step, layer):
                continue
            if verdict.rank > LayerVerdict.WAIT.rank and not _left_to_others(kind, below):
                yield verdict, line, layer


def _felt(stack: tuple[Layer, ...], kind: Next) -> tuple[Layer, ...]:
    """Return the films that the next operation reaches, the top one first.

    No barrier helps two-pack over lacquer (TB 43-0242): it looks further.
    """
    if kind not in DEEP:
        return stack[-1:]
    films = reached(stack, strong=kind in STRONG)
    if kind is Next.TWO_PACK and films[-1].family is not Family.TWO_PACK:
        deeper = reversed(stack[: len(stack) - len(films)])
        films += tuple(film for film in deeper if film.family is Family.SOLVENT_LACQUER)
    return films


def _left_to_others(kind: Next, below: Below) -> bool:
    """Tell whether the rules of chipping find it and know the better mend."""
    return below is Below.CHIP_FLUID and kind in (Next.TAPE, Next.WASH, Next.DECAL)


def _prepared(step: Step, layer: Layer) -> bool:
    """Tell whether the label's windows or a gate of the step see to the preparation."""
    return bool(layer.coating.recoat) or any(
        gate.after == layer.step.id
        and all(window.preparation is not Preparation.NONE for window in gate.windows)
        for gate in step.gates
    )


def _bare(
    scene: Scene, moment: Moment, place: str, line: Row
) -> Iterator[tuple[LayerVerdict, Row, Layer | None]]:
    """Yield what speaks against work on a bare part; primer and clear gloss may go there."""
    step = moment.step
    part = scene.model.part(place.partition("/")[0])
    if step.stage in (Stage.PRIME, Stage.VARNISH) or part.material is Material.WOOD:
        return
    verdict = verdict_over(line, smooth=True)
    if part.material in TOUGH and verdict is LayerVerdict.NEVER and line.next is Next.WASH:
        return
    if verdict.rank > LayerVerdict.WAIT.rank:
        yield verdict, line, None


def _remedy(line: Row, verdict: LayerVerdict) -> str:
    """Name what would help against a line of the table."""
    if line.below is Below.BARE:
        return "primer"
    if verdict is LayerVerdict.PREPARE:
        return "preparation"
    if line.next is Next.TWO_PACK and line.below in (Below.LACQUER, Below.CHIP_FLUID):
        return "other family"
    return "clear coat"


def _spread(groups: _Groups) -> dict[str, tuple[str, ...]]:
    """Return every place of a step that the same remedy serves: one coat does for all."""
    places: dict[str, dict[str, None]] = defaultdict(dict)
    for (verdict, line), where in groups.items():
        places[_remedy(line, verdict)].update((place, None) for place, _ in where)
    return {remedy: tuple(named) for remedy, named in places.items()}


def _mend(
    scene: Scene,
    moment: Moment,
    line: Row,
    verdict: LayerVerdict,
    where: list[tuple[str, Layer | None]],
    everywhere: tuple[str, ...],
) -> Mend | None:
    places = tuple(place for place, _ in where)
    remedy = _remedy(line, verdict)
    if remedy == "primer":
        return primer_before(scene, moment, everywhere)
    if remedy == "preparation":
        steps = dict.fromkeys(layer.step.id for _, layer in where if layer)
        edits = tuple(Prepare(scene.spot, moment.step.id, name) for name in steps)
        return Mend(message("scuff the film of {steps} before it", steps=", ".join(steps)), edits)
    if remedy == "other family":
        return swap_families(scene, moment, places, Family.WATERBORNE_ACRYLIC)
    role = Role.BARRIER
    if line.next in (Next.DECAL, Next.TAPE):
        role = Role.DECAL_BED if line.next is Next.DECAL else Role.SEAL
    return clear_before(scene, moment, everywhere, role)


def clear_before(scene: Scene, moment: Moment, places: tuple[str, ...], role: Role) -> Mend:
    """Return the mend that lays a gloss clear just before a step."""
    insert = Insert(
        scene.spot,
        moment.step.id,
        before=True,
        name=f"{role.replace(' ', '-')}-for-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.VARNISH,
        places=places,
        title=within(
            200,
            titled(
                "gloss clear ({role}) before {step}",
                role=role,
                step=moment.step.title or moment.step.id,
            ),
        ),
        wanted=GLOSS_CLEAR,
        role=role,
    )
    return Mend(message("lay a gloss clear as {role} before it", role=role), (insert,))


def primer_before(scene: Scene, moment: Moment, places: tuple[str, ...]) -> Mend:
    """Return the mend that primes the places just before a step."""
    insert = Insert(
        scene.spot,
        moment.step.id,
        before=True,
        name=f"prime-for-{moment.step.id}"[:50].rstrip("-"),
        stage=Stage.PRIME,
        places=places,
        title=within(200, titled("prime before {step}", step=moment.step.title or moment.step.id)),
        wanted=PRIMER,
    )
    return Mend(message("prime the bare places before it"), (insert,))


def swap_families(scene: Scene, moment: Moment, places: tuple[str, ...], family: Family) -> Mend:
    """Return the mend that lays the same colours in another family."""
    laid = moment.laid
    names = dict.fromkeys(laid[place] for place in places)
    edits = tuple(
        Swap(scene.spot, moment.step.id, name, counterpart(scene.book.coating(name), family))
        for name in names
    )
    return Mend(
        message("use {family} instead of {names}", family=family, names=", ".join(names)), edits
    )
