"""Where practitioners disagree: choices with a reason for each side, never findings."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from planner.layers.coat_stack import Layer, Moment
from planner.layers.finding import Scene, scenes
from planner.layers.operation_kinds import WASH_STAGES
from planner.values.book import Book
from planner.values.coating import Family, Finish
from planner.values.message import message
from planner.values.step import CLEAR_STAGES, Stage

WASHES = frozenset({Stage.WASH, Stage.OIL_WASH})
GRIME = frozenset({Stage.FILTER, Stage.OIL_WASH, Stage.WASH})


@dataclass(frozen=True)
class Choice:
    """One edge of the working order on which practice is divided.

    ``chosen`` is what the steps say now; ``sides`` gives each way with its
    reason, the chosen one first.
    """

    question: str
    chosen: str
    sides: tuple[tuple[str, str], ...]
    path: str
    project: str
    model: str
    steps: tuple[str, ...]
    source: str = message("common practice, no source; practitioners disagree")


@dataclass(frozen=True)
class _Dispute:
    """A question, both answers, and what tells which one a model gives."""

    question: str
    first: tuple[str, str]
    second: tuple[str, str]
    answer: Callable[[Scene], tuple[bool, Moment, Moment] | None]


def choices(book: Book) -> tuple[Choice, ...]:
    """Return every disputed edge that the active projects decide one way or the other."""
    return tuple(choice for scene in scenes(book) for choice in _choices(scene))


def _choices(scene: Scene) -> Iterator[Choice]:
    for dispute in DISPUTES:
        answer = dispute.answer(scene)
        if answer is None:
            continue
        is_first, one, other = answer
        sides = (dispute.first, dispute.second)
        chosen = sides if is_first else sides[::-1]
        steps = tuple(m.step.id for m in sorted({one, other}, key=lambda m: m.at))
        yield Choice(
            question=dispute.question,
            chosen=chosen[0][0],
            sides=chosen,
            path=f"{scene.path}.steps[{max(one.at, other.at)}]",
            project=scene.project.name,
            model=scene.model.name,
            steps=steps,
        )


def _first(scene: Scene, stages: frozenset[Stage]) -> Moment | None:
    return next((m for m in scene.moments if m.step.stage in stages and m.first.films), None)


def _wash_and_decals(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Compare the first wash and the first decals that share a place."""
    for one, other in _pairs(scene, WASHES, frozenset({Stage.DECAL})):
        return one.at > other.at, one, other
    return None


def _chips_and_wash(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    for one, other in _pairs(scene, frozenset({Stage.CHIP}), WASHES):
        return one.at < other.at, one, other
    return None


def _pairs(
    scene: Scene, ones: frozenset[Stage], others: frozenset[Stage]
) -> Iterator[tuple[Moment, Moment]]:
    for one in scene.moments:
        for other in scene.moments:
            fits = one.step.stage in ones and other.step.stage in others
            if fits and set(one.first.places) & set(other.first.places):
                yield one, other


def _sheen_below_grime(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Look at the sheen of what the first wash or filter lies on."""
    moment = _first(scene, GRIME)
    if moment is None:
        return None
    tops = [stack[-1] for place in moment.first.places if (stack := moment.stack(place))]
    if not tops:
        return None
    below: Layer = tops[0]
    return below.finish is not Finish.MATTE, moment, scene.moments[below.at]


def _pigments_fixed(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Look whether fixer, or a coat, follows the first pigments."""
    moment = _first(scene, frozenset({Stage.PIGMENT}))
    if moment is None:
        return None
    places = set(moment.first.places)
    for later in scene.moments[moment.at + 1 :]:
        laid = later.laid
        mine = [scene.book.coating(laid[place]).family for place in places if place in laid]
        if any(family not in (Family.PIGMENT, Family.GRAPHITE) for family in mine):
            return True, moment, later
    return False, moment, moment


def _clear_between_oils(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Look whether a clear coat lies between two oil washes on one place."""
    oils = [m for m in scene.moments if m.step.stage in (Stage.OIL_WASH, Stage.FILTER)]
    for one, other in pairwise(oils):
        for place in set(one.first.places) & set(other.first.places):
            between = [film for film in other.stack(place) if film.at > one.at]
            return any(film.seals for film in between), one, other
    return None


def _dry_brush_and_matte(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Compare dry-brushing with the last matte coat that shares a place with it."""
    pairs = list(_pairs(scene, frozenset({Stage.DRY_BRUSH}), frozenset({Stage.MATTE})))
    if not pairs:
        return None
    one, other = max(pairs, key=lambda pair: (pair[1].at, pair[0].at))
    return one.at < other.at, one, other


def _oil_wash_wiped(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Look whether any wiping meets the first oil wash."""
    moment = _first(scene, frozenset({Stage.OIL_WASH}))
    if moment is None:
        return None
    mine = set(moment.first.places)
    for later in scene.moments[moment.at + 1 :]:
        if later.step.stage is Stage.WIPE and mine & set(later.first.places):
            return True, moment, later
    return False, moment, moment


def _ended_by_a_clear(scene: Scene) -> tuple[bool, Moment, Moment] | None:
    """Look whether a clear coat follows the last wash anywhere that it lies."""
    washes = [m for m in scene.moments if m.step.stage in WASH_STAGES and m.first.films]
    if not washes:
        return None
    last = washes[-1]
    for later in reversed(scene.moments[last.at + 1 :]):
        if later.step.stage in CLEAR_STAGES and set(last.laid) & set(later.laid):
            return True, last, later
    return False, last, last


DISPUTES: tuple[_Dispute, ...] = (
    _Dispute(
        message("wash before or after the decals?"),
        (
            message("wash after the decals"),
            message("dirt lies on the markings too, as on the real thing"),
        ),
        (
            message("wash before the decals"),
            message("panel lines are cleaned off bare paint more easily"),
        ),
        _wash_and_decals,
    ),
    _Dispute(
        message("painted chips before or after the wash?"),
        (
            message("chips before the wash"),
            message("the wash then tones the chips down with all the rest"),
        ),
        (message("chips after the wash"), message("they stay crisp and can be corrected")),
        _chips_and_wash,
    ),
    _Dispute(
        message("gloss or flat below the wash?"),
        (
            message("gloss or satin below it"),
            message("the wash runs along edges and wipes off clean"),
        ),
        (
            message("flat below it"),
            message("a wash meant as grime or a filter grips the rough surface"),
        ),
        _sheen_below_grime,
    ),
    _Dispute(
        message("pigments fixed, or left as they are?"),
        (message("pigments fixed or coated"), message("handling does not rub them off")),
        (
            message("pigments left unsealed"),
            message("fixer and sprays stain them and make them fade"),
        ),
        _pigments_fixed,
    ),
    _Dispute(
        message("a clear coat between two oil layers?"),
        (message("a clear coat between"), message("the second wash cannot take up the first")),
        (message("no clear coat between"), message("fewer films, less thickness and dust")),
        _clear_between_oils,
    ),
    _Dispute(
        message("dry-brushing below or over the last coat?"),
        (message("dry-brushing below it"), message("the matte coat holds it and evens its sheen")),
        (
            message("dry-brushing over it"),
            message("metal edges keep their shine, but colour stands out and handling wears it"),
        ),
        _dry_brush_and_matte,
    ),
    _Dispute(
        message("the oil wash wiped back, or left?"),
        (
            message("wiped back"),
            message("it stays in recesses, and faces come clean of tide marks"),
        ),
        (message("left as it is"), message("as a filter or as grime over all, laid thin")),
        _oil_wash_wiped,
    ),
    _Dispute(
        message("a clear coat over the last wash or dust?"),
        (
            message("a clear coat over it"),
            message("sheens are evened, and handling rubs nothing off"),
        ),
        (message("no clear coat over it"), message("what is only looked at needs none")),
        _ended_by_a_clear,
    ),
)
