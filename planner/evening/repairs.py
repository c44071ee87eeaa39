"""Repairs: a short list of steps with their waits, put in behind what was done.

What they are made of is common practice, no source, unless it says otherwise;
the waits beyond those that the coats ask for anyway stand with their figure.
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import replace
from enum import StrEnum

from planner.evening.log_entries import alone, model_of, step_of
from planner.evening.split_steps import must_follow, places_of
from planner.evening.step_insertion import (
    Done,
    by_hand,
    copy_of,
    done_on,
    later,
    masked,
    once,
    put_in,
)
from planner.evening.stripping import stripped
from planner.layers.findings import find
from planner.layers.mend_coatings import GLOSS_CLEAR, provide
from planner.layers.named_mends import fresh_id
from planner.layers.operation_kinds import OIL_BORNE, WASH_STAGES
from planner.layers.overcoat_table import LayerVerdict
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, State
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.message import message, titled, within
from planner.values.plan import PassKey
from planner.values.refusal import Refused, demand
from planner.values.step import CLEAR_STAGES, Application, Minutes, Role, Stage, Step, Tool

COLOUR_STAGES = frozenset(
    {Stage.PRIME, Stage.BASE, Stage.CAMO, Stage.HIGHLIGHT, Stage.DETAIL, Stage.DRY_BRUSH}
)
AGAIN_STAGES = COLOUR_STAGES | {Stage.VARNISH, Stage.MATTE, Stage.CHIP, Stage.PIGMENT}
SPOT_SHARE = 0.1  # of a place, touched up: assumed
JUDGED_AFTER = 60  # a clear coat that was frosted is judged after an hour: common practice [min]
DECALS_SETTLE = 1440  # softened decals dry a day before they are sealed: common practice [min]
WASH_RESEAL = 1440  # a lifted wash is sealed after 24 to 48 h: common practice [min]


class Repair(StrEnum):
    """What can be done about a film that is not as it should be."""

    AGAIN = "again"
    TOUCH_UP = "touch-up"
    SAND = "sand"
    STRIP = "strip"
    FROSTING = "frosting"
    SILVERING = "silvering"
    TIDE_MARK = "tide-mark"

    @property
    def told(self) -> str:
        """What it is called."""
        return TOLD[self]


TOLD = {
    Repair.AGAIN: message("lay it once more"),
    Repair.TOUCH_UP: message("touch up"),
    Repair.SAND: message("sand and respray"),
    Repair.STRIP: message("strip and start over"),
    Repair.FROSTING: message("fix frosting"),
    Repair.SILVERING: message("fix silvering"),
    Repair.TIDE_MARK: message("lift a tide mark"),
}


def repaired(book: Book, key: PassKey, kind: Repair, places: Collection[str] = ()) -> Book:
    """Return the book with the steps of a repair put in behind what was done.

    Parameters
    ----------
    key
        The pass that laid what is to be mended, or a step of the same places.
    places
        "part/place" names or parts; absent, all that the step touches.

    Raises
    ------
    Refused
        If nothing was done there, or this repair does not fit what lies there.
    """
    named = _named(book, key, places)
    done = done_on(book, key, named)
    if kind is not Repair.STRIP:
        covered = masked(done)
        bare = tuple(place for place in done.places if place not in covered)
        demand(
            bool(bare), "places", message("all of it lies under a mask; take the mask off first")
        )
        done = done_on(book, key, bare)
    return _MAKERS[kind](done)


def repairs_for(book: Book, key: PassKey, places: Collection[str] = ()) -> tuple[Repair, ...]:
    """Return the repairs that fit what lies there and leave the order of coats sound."""
    book = alone(book, key)
    before = {finding.key for finding in find(book)}
    found = []
    for kind in Repair:
        try:
            after = repaired(book, key, kind, places)
        except Refused:
            continue
        fresh = [finding for finding in find(after) if finding.key not in before]
        if not any(finding.verdict.rank > LayerVerdict.ADVICE.rank for finding in fresh):
            found.append(kind)
    return tuple(found)


def outline(
    book: Book, key: PassKey, kind: Repair, places: Collection[str] = ()
) -> tuple[Step, ...]:
    """Return the steps that a repair would put in, in working order; see `repaired`."""
    known = {step.id for step in model_of(book, key).steps}
    done = done_on(book, key, _named(book, key, places))
    known |= {step.id for step in done.model.steps}
    steps = model_of(repaired(book, key, kind, places), key).steps
    return tuple(step for step in steps if step.id not in known)


def _named(book: Book, key: PassKey, places: Collection[str]) -> tuple[str, ...]:
    """Return the "part/place" names of a repair."""
    model, step = model_of(book, key), step_of(book, key)
    if not places:
        return places_of(model, step)
    found: dict[str, None] = {}
    for index, reference in enumerate(places):
        try:
            found.update(dict.fromkeys(model.places(reference)))
        except KeyError:
            raise Refused(
                f"places[{index}]",
                message('no place is called "{reference}"', reference=reference),
            ) from None
    return tuple(found)


def _coating(done: Done, name: str) -> Coating:
    return done.book.coating(name)


def _top(done: Done, stages: Collection[Stage]) -> Step | None:
    """Return the last step of such a stage that laid something there."""
    mine = [step for step in done.steps if step.applications and step.stage in stages]
    return next((step for step in reversed(mine) if done.on(step)), None)


def _clear_over(done: Done, step: Step) -> dict[str, Step]:
    """Return the last clear coat over a step once more, by its id; else the mend would lie open."""
    at = [step.id for step in done.steps].index(step.id)
    clears = [
        step
        for step in done.steps[at + 1 :]
        if step.stage in CLEAR_STAGES and step.applications and done.on(step)
    ]
    made = copy_of(done, clears[-1], done.places) if clears else None
    return {clears[-1].id: made} if made else {}


def _again(done: Done) -> Book:
    step = next((step for step in done.steps if step.id == done.key.step), None)
    if step is None or step.stage not in AGAIN_STAGES or not step.applications:
        raise Refused("repair", message("only a coat can be laid once more; choose another repair"))
    made = copy_of(done, step, done.places)
    if made is None:
        raise Refused("places", message('"{step}" lays nothing there', step=step.id))
    return _put_in_anew(done, [], {step.id: made, **_clear_over(done, step)})


def _put_in_anew(done: Done, first: list[Step], anew: dict[str, Step]) -> Book:
    """Put in steps, then those that lay anew what earlier ones laid."""
    again = {earlier: step.id for earlier, step in anew.items()}
    return put_in(done, [*first, *anew.values()], again)


def _touch_up(done: Done) -> Book:
    colour = _top(done, COLOUR_STAGES)
    if colour is None:
        raise Refused("repair", message("no colour lies there that could be touched up"))
    made = copy_of(done, colour, done.places)
    assert made is not None
    spots = tuple(
        Application(places=application.places, coating=application.coating, share=SPOT_SHARE)
        for application in made.applications
    )
    brushed = Step(
        id=fresh_id(done.model, f"touch-up-{colour.id}"[:50].rstrip("-")),
        stage=Stage.DETAIL,
        title=within(200, titled("touch up by brush: {colour}", colour=colour.title or colour.id)),
        applications=spots,
        tool=Tool.BRUSH,
        minutes=Minutes(fixed=3, per_part=2),
        dries_in=colour.dries_in,
    )
    clear = _clear_over(done, colour)
    again = {earlier: step.id for earlier, step in clear.items()}
    return put_in(done, [brushed, *clear.values()], again, unmasked=True)


def _sand(done: Done) -> Book:
    colour = _top(done, COLOUR_STAGES)
    if colour is None:
        raise Refused(
            "repair", message("no colour lies there that could be sanded and sprayed anew")
        )
    over = copy_of(done, colour, done.places)
    assert over is not None
    sanded = by_hand(
        done,
        f"sand-{colour.id}"[:50].rstrip("-"),
        titled(
            "sand the fault smooth, wet and fine; rinse, let dry, prime bare spots with a brush"
        ),
        done.places,
        Minutes(fixed=5, per_part=5),
        gates=tuple(once(step, State.DRY_THROUGH) for step in done.tops()),
    )
    return _put_in_anew(done, [sanded], {colour.id: over, **_clear_over(done, colour)})


def _frosting(done: Done) -> Book:
    """Gloss in dry air the same day, then the coat that was frosted anew."""
    frosted = _top(done, CLEAR_STAGES)
    tops = {step.id for step in done.tops()}
    if frosted is None or frosted.id not in tops:
        raise Refused("repair", message("no clear coat lies on top that could be frosted"))
    name = next(iter(dict.fromkeys(application.coating for application in frosted.applications)))
    own = _coating(done, name)
    book = done.book
    gloss = name
    if own.finish is not Finish.GLOSS:
        book, gloss = _gloss_of(book, own)
        done = done_on(book, done.key, done.places)
    here = done.on(frosted)
    wet = Step(
        id=fresh_id(done.model, f"gloss-over-{frosted.id}"[:50].rstrip("-")),
        stage=Stage.VARNISH,
        title=titled(
            "a wet coat of gloss over the frosting, in dry air; no more matte on it before"
        ),
        applications=(Application(places=here, coating=gloss),),
        tool=frosted.tool,
        minutes=frosted.minutes,
        role=Role.SEAL,
        dries_in=frosted.dries_in,
        look_in=JUDGED_AFTER,
    )
    if own.finish is Finish.GLOSS:
        return put_in(done, [wet], {frosted.id: wet.id})
    anew = copy_of(done, frosted, here)
    assert anew is not None
    return put_in(done, [wet, anew], {frosted.id: anew.id})


def _gloss_of(book: Book, own: Coating) -> tuple[Book, str]:
    """Return a gloss clear of the same family if there is one, else the usual one."""
    for coating in book.coatings:
        alike = coating.family is own.family and coating.finish is Finish.GLOSS
        if alike and named_so(coating, CLEAR_WORDS):
            return book, coating.name
    return provide(book, GLOSS_CLEAR)


def _silvering(done: Done) -> Book:
    decals = [
        step
        for step in done.steps
        if done.on(step)
        and any(_coating(done, name).family is Family.DECAL for name in _names(step))
    ]
    if not decals:
        raise Refused("repair", message("no decals lie there that could shine silvery"))
    here = done.on(decals[-1])
    sealed = _clear_over(done, decals[-1])
    pricked = by_hand(
        done,
        f"soften-{decals[-1].id}"[:50].rstrip("-"),
        titled(
            "prick the silvery spots, let setting fluid creep under, press down; repeat when dry"
        ),
        here,
        Minutes(fixed=3, per_part=5),
        stage=Stage.CLEAN if sealed else Stage.PRESS,
        look_in=DECALS_SETTLE,
    )
    if not sealed:
        return put_in(done, [pricked], {}, wait=DECALS_SETTLE)
    dried = (later(pricked.id, DECALS_SETTLE),)
    anew = {earlier: replace(step, gates=dried) for earlier, step in sealed.items()}
    return _put_in_anew(done, [pricked], anew)


def _names(step: Step) -> tuple[str, ...]:
    return tuple(application.coating for application in step.applications)


def _tide_mark(done: Done) -> Book:
    washes = [
        step
        for step in done.tops()
        if step.stage in WASH_STAGES
        and any(_coating(done, name).family in OIL_BORNE for name in _names(step))
    ]
    if not washes:
        raise Refused(
            "repair", message("no wash of oil or enamel lies on top; touch it up instead")
        )
    here = tuple(dict.fromkeys(place for step in washes for place in done.on(step)))
    logged = {step.id for step in done.steps}
    coming = [step for step in done.model.steps if step.id not in logged]
    soon = [other.id for other in coming for step in washes if must_follow(done.model, other, step)]
    demand(
        not soon,
        "repair",
        message('do "{next}" first; it is time for that', next=next(iter(soon), "")),
    )
    lifted = by_hand(
        done,
        f"lift-{washes[-1].id}"[:50].rstrip("-"),
        titled(
            "lift the tide mark with a brush just damp with the wash's own thinner, towards an edge"
        ),
        here,
        Minutes(fixed=3, per_part=3),
        tool=Tool.BRUSH,
    )
    return put_in(done, [lifted], {}, wait=WASH_RESEAL)


_MAKERS: dict[Repair, Callable[[Done], Book]] = {
    Repair.AGAIN: _again,
    Repair.TOUCH_UP: _touch_up,
    Repair.SAND: _sand,
    Repair.STRIP: stripped,
    Repair.FROSTING: _frosting,
    Repair.SILVERING: _silvering,
    Repair.TIDE_MARK: _tide_mark,
}
