"""Stripping: every film comes off some parts, and what was done there is done again.

The logbook keeps what was done; the films that it laid there are gone, so
the steps keep those places as touched, and lay nothing on them any more.
"""

from __future__ import annotations

from dataclasses import replace

from planner.evening.split_steps import SOON, fresh, places_of
from planner.evening.step_insertion import (
    Done,
    by_hand,
    copy_of,
    done_on,
    later,
    masked,
    retied,
    without_gates,
)
from planner.layers.named_mends import kept
from planner.passes import WHOLE_UNIT, expand
from planner.values.book import Book
from planner.values.book_changes import instead_of_its_like, with_project
from planner.values.lookup import project_of
from planner.values.message import message, titled, within
from planner.values.model import Model, Side
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.refusal import demand
from planner.values.step import Minutes, Stage, Step, Tool

SOAK = 120  # "two hours to a few": common practice, no source [min]
DRY = 720  # dry overnight before primer: common practice, no source [min]
LONGEST_TITLE = 200


def stripped(done: Done) -> Book:
    """Return the book with the parts of a repair stripped and everything on them begun anew.

    Whole parts are stripped, and what they are glued to.

    Raises
    ------
    Refused
        If nothing was laid there yet.
    """
    done = done_on(done.book, done.key, _whole_units(done))
    laying = [step for step in done.steps if step.applications and step.stage is not Stage.JOIN]
    demand(bool(laying), "repair", message("nothing was laid there that could be stripped"))
    copies = _copies(done)
    off = _off(done)
    first = _first_wait(done, copies, off[-1])
    at = [step.id for step in done.model.steps].index(done.steps[-1].id)
    old: list[Step] = []
    moved: dict[tuple[str, int], str] = {}
    gone = set()
    for step in done.model.steps[: at + 1]:
        if step not in done.steps or step.stage is Stage.JOIN:
            old.append(step)
            continue
        if not step.applications:
            old.append(_service_of_nothing(done, step))
            continue
        bare = _bared(done, step, moved)
        old += bare
        if not bare[0].applications:
            gone.add(step.id)
    old = [_free_of(step, gone) for step in old]
    behind = [_behind(done, step, copies, gone) for step in done.model.steps[at + 1 :]]
    steps = (*old, *off, *first, *behind)
    return _with(done, replace(done.model, steps=steps), moved)


def _whole_units(done: Done) -> tuple[str, ...]:
    """Return every place of the units, as they are joined by now, that the places are of."""
    parts = {place.partition("/")[0] for place in done.places}
    logged = {step.id for step in done.steps}
    project = project_of(done.book, done.key.project)
    begun = {(fact.model, fact.step) for fact in project.log} | {
        (done.key.model, name) for name in logged
    }
    for pass_ in expand(project, done.model):
        joined = set(pass_.unit_after.parts) if pass_.unit_after else set()
        if (done.key.model, pass_.step.id) in begun and joined & parts:
            parts |= joined
    return tuple(
        f"{part.name}/{place.name}"
        for part in done.model.parts
        if part.name in parts
        for place in part.places
    )


def _copies(done: Done) -> dict[str, Step]:
    """Return what is done again, by the id of the step that did it before."""
    copies: dict[str, Step] = {}
    for step in done.steps:
        if step.stage in WHOLE_UNIT and step.stage is Stage.JOIN:
            continue
        made = copy_of(done, step, done.places, coats=None)
        if made is not None:
            copies[step.id] = made
    for name, made in copies.items():
        source = next(step for step in done.steps if step.id == name)
        gates = tuple(
            replace(gate, after=copies[gate.after].id)
            for gate in source.gates
            if gate.after in copies
        )
        after = tuple(copies[name].id for name in source.after if name in copies)
        copies[name] = replace(made, gates=gates, after=after)
    return copies


def _in_reach(done: Done, turned: bool) -> tuple[str, ...]:
    """Return the places by which the parts are held and brushed, as they lie."""
    up = Side.UNDER if turned else Side.TOP
    held = _units(done)
    own = [place for place in done.places if held[place.partition("/")[0]]]
    facing = [place for place in done.places if done.model.place(place).side is up]
    return tuple(place for place in done.places if place in own or place in facing)


def _units(done: Done) -> dict[str, bool]:
    """Return for each part whether it, or what it is glued to, has a holder."""
    held = {part.name: bool(part.holder) for part in done.model.parts}
    logged = {step.id for step in done.steps}
    for pass_ in expand(project_of(done.book, done.key.project), done.model):
        if pass_.unit_after and pass_.step.id in logged:
            held.update(dict.fromkeys(pass_.unit_after.parts, pass_.unit_after.holder))
    return held


def _off(done: Done) -> list[Step]:
    """Return the steps that take everything off; tape first, and lying as at the beginning."""
    steps: list[Step] = []
    turns = [step for step in done.steps if step.stage is Stage.TURN]
    here = _in_reach(done, turned=len(turns) % 2 == 1) or done.places
    tape = tuple(place for place in done.places if place in masked(done))
    if tape:
        steps.append(
            by_hand(
                done,
                "tape-off",
                titled("take the tape off before stripping"),
                tape,
                Minutes(fixed=2, per_part=2),
                stage=Stage.UNMASK,
            )
        )
    steps.append(
        by_hand(
            done,
            "soak",
            titled(
                "soak in a stripper that spares the material, closed; try on scrap, label first"
            ),
            here,
            Minutes(fixed=5, per_part=1),
        )
    )
    steps.append(
        by_hand(
            done,
            "brush-off",
            titled("brush the softened paint off, wash, rinse; gloves, goggles, fresh air"),
            here,
            Minutes(fixed=5, per_part=10),
            gates=(later(steps[-1].id, SOAK),),
        )
    )
    if len(turns) % 2:
        parts = tuple(dict.fromkeys(ref.partition("/")[0] for ref in turns[-1].references()))
        steps.append(
            by_hand(
                done,
                "turn-back",
                titled("turn it back"),
                parts,
                Minutes(fixed=1),
                stage=Stage.TURN,
                after=(steps[-1].id,),
            )
        )
    return steps


def _first_wait(done: Done, copies: dict[str, Step], last: Step) -> list[Step]:
    """Return the copies, the first one on each place waiting until all is dry."""
    left = set(done.places)
    waiting = []
    for step in copies.values():
        here = left & set(places_of(done.model, step))
        gates = (*step.gates, later(last.id, DRY)) if here else step.gates
        waiting.append(replace(step, gates=gates))
        left -= here
    return waiting


def _bared(done: Done, step: Step, moved: dict[tuple[str, int], str]) -> list[Step]:
    """Return a step without the films that are gone; each coat that lays none is its own step."""
    gone = set(done.places)
    narrow = kept(done.model, replace(step, touches=()), lambda place: place not in gone)
    applications = narrow.applications if narrow else ()
    coats = max((application.coats for application in applications), default=1)
    touched = tuple(dict.fromkeys((*step.touches, *done.on(step))))
    if applications:
        bare = replace(step, applications=applications, touches=touched)
    else:
        bare = _by_hand(step, touched)
    steps = [bare]
    for coat in range(coats + 1, step.coats + 1):
        here = tuple(place for place in places_of(done.model, step, coat) if place in gone)
        extra = replace(
            _by_hand(step, here),
            id=fresh(done.model, f"{step.id}-coat-{coat}"),
            gates=(),
            after=(step.id,),
        )
        moved[step.id, coat] = extra.id
        steps.append(extra)
    return steps


def _service_of_nothing(done: Done, step: Step) -> Step:
    """Return a step that wiped, pressed or rubbed what is gone, on what is left of its places."""
    if step.stage not in SOON:
        return step
    gone = set(done.places)
    left = kept(done.model, step, lambda place: place not in gone)
    return left or _by_hand(step, step.touches)


def _by_hand(step: Step, touched: tuple[str, ...]) -> Step:
    """Return a step that laid what is gone: there is no coat, decal or wash any more to judge."""
    title = within(LONGEST_TITLE, titled("{step} (stripped since)", step=step.title or step.id))
    return replace(
        step,
        stage=Stage.CLEAN,
        applications=(),
        touches=touched,
        title=title,
        tool=Tool.HAND,
        role=None,
        or_in=(),
    )


def _free_of(step: Step, gone: set[str]) -> Step:
    """Untie a step that was done from films that are no more."""
    return without_gates(step, lambda name: name not in gone)


def _behind(done: Done, step: Step, copies: dict[str, Step], gone: set[str]) -> Step:
    """Tie what is still to come to the films laid anew."""
    here = set(places_of(done.model, step))
    for earlier, made in copies.items():
        if here & set(places_of(done.model, made)) or earlier in gone:
            step = retied(step, earlier, made.id)
    kept_gates = tuple(gate for gate in step.gates if gate.after not in gone)
    return replace(step, gates=kept_gates)


def _with(done: Done, model: Model, moved: dict[tuple[str, int], str]) -> Book:
    """Put the model in the book; what was noted of a coat follows its step."""
    key: PassKey = done.key

    def changed(project: Project) -> Project:
        log = tuple(
            replace(fact, step=moved[fact.step, fact.coat], coat=1)
            if fact.model == key.model and (fact.step, fact.coat) in moved
            else fact
            for fact in project.log
        )
        seen = tuple(
            replace(look, step=moved[look.step, look.coat], coat=1)
            if look.model == key.model and (look.step, look.coat) in moved
            else look
            for look in project.observed
        )
        pins = tuple(
            pin
            for pin in project.pins
            if pin.model != key.model or pin.coat is None or (pin.step, pin.coat) not in moved
        )
        placed = instead_of_its_like(project, model)
        return replace(placed, log=log, observed=seen, pins=pins)

    return with_project(done.book, key.project, changed)
