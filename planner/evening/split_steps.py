"""A step that is done in part: what was done, and what is left, become two steps.

Every place gets the same coats in the same order as before; what holds the
step holds both, and what waits for the step waits for both.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass, replace

from planner.evening.log_entries import begun, model_of, step_of
from planner.layers.named_mends import fresh_id, kept
from planner.passes import WHOLE_UNIT, expand_model
from planner.values.book import Book
from planner.values.book_changes import instead_of_its_like, with_project
from planner.values.lookup import project_of
from planner.values.message import message, titled, within
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Pin, Project
from planner.values.refusal import Refused, demand, unknown
from planner.values.step import Application, Gate, Minutes, Stage, Step

LONGEST_ID = 60
SOON = frozenset({Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB})


@dataclass(frozen=True)
class Parted:
    """The book with the step in two, and the id of the step that holds what is left."""

    book: Book
    rest: str


def fresh(model: Model, base: str) -> str:
    """Return a free step id that begins as ``base`` does."""
    return fresh_id(model, base[: LONGEST_ID - 4].rstrip("-"))


def places_of(model: Model, step: Step, coat: int = 1) -> tuple[str, ...]:
    """Return the "part/place" names that one coat of a step touches."""
    named = [
        ref
        for application in step.applications
        if application.coats >= coat
        for ref in application.places
    ]
    references = dict.fromkeys([*named, *step.touches])
    return tuple(dict.fromkeys(place for ref in references for place in model.places(ref)))


def touched(project: Project, model: Model) -> dict[str, set[str]]:
    """Return the places that each step touches; turning and joining touch the whole unit."""
    found: dict[str, set[str]] = {step.id: set() for step in model.steps}
    for pass_ in expand_model(project.name, model):
        found[pass_.step.id].update(pass_.places)
    return found


def parted(book: Book, key: PassKey, done: Collection[str]) -> Parted:
    """Return the book with one coat done on some places only, as two steps.

    The step itself keeps its name, the coats before this one, and this coat
    on ``done``; the rest becomes a step right behind it.  A step that serves
    it and must come before a closing (wiping back) is parted alike.

    Parameters
    ----------
    done
        "part/place" names, or parts, on which this coat is done.

    Raises
    ------
    Refused
        If nothing of it would be left or done, or it cannot be done in parts.
    """
    model, step = model_of(book, key), step_of(book, key)
    demand(
        step.stage not in WHOLE_UNIT,
        "places",
        message("a {stage} is done in one go, or not at all", stage=step.stage),
    )
    every = places_of(model, step, key.coat)
    finished = _named(model, done, every)
    demand(bool(finished), "places", message("none of it is done; nothing is parted"))
    left = _left(model, step, key.coat, finished)
    demand(left is not None, "places", message("all of it is done; say that it is done"))
    assert left is not None
    ours = _done(model, step, key.coat, finished)
    rest = replace(left, id=fresh(model, f"{step.id}-rest"), title=_titled(step))
    if key.coat == 1:
        share = len(finished) / len(every)
        ours = replace(ours, minutes=share_of(step.minutes, share))
        rest = replace(rest, minutes=share_of(step.minutes, 1 - share))
    whole = _replaced(model, step.id, (ours, rest))
    whole = replace(
        whole, steps=tuple(_waits_for_both(other, step.id, rest) for other in whole.steps)
    )
    begun_too = {entry.step for entry in project_of(book, key.project).log}
    whole = _servants_parted(whole, ours, rest, begun_too)
    return Parted(_with(book, key, whole, step, rest), rest.id)


def _named(model: Model, done: Collection[str], every: tuple[str, ...]) -> frozenset[str]:
    found: set[str] = set()
    for index, reference in enumerate(done):
        try:
            names = model.places(reference)
        except KeyError:
            raise Refused(f"places[{index}]", unknown("place", reference, every)) from None
        inside = [name for name in names if name in every]
        demand(
            bool(inside),
            f"places[{index}]",
            message('"{reference}" gets nothing from this coat', reference=reference),
        )
        found.update(inside)
    return frozenset(found)


def _done(model: Model, step: Step, coat: int, finished: frozenset[str]) -> Step:
    """Return the step as far as it is done."""
    applications = []
    for application in step.applications:
        if application.coats < coat:
            applications.append(application)
            continue
        applications += _spread(model, application, finished.__contains__, coat)
        applications += _spread(model, application, lambda place: place not in finished, coat - 1)
    touches = _narrowed(model, step.touches, finished.__contains__)
    return replace(
        step, applications=tuple(applications), touches=step.touches if coat > 1 else touches
    )


def _left(model: Model, step: Step, coat: int, finished: frozenset[str]) -> Step | None:
    """Return what is left of the step, or None if nothing is."""
    applications: list[Application] = []
    for application in step.applications:
        if application.coats >= coat:
            more = application.coats - coat
            applications += _spread(
                model, application, lambda place: place not in finished, more + 1
            )
            applications += _spread(model, application, finished.__contains__, more)
    touches = _narrowed(model, step.touches, lambda place: place not in finished)
    if step.applications and not applications:
        return None
    if not step.applications and not touches:
        return None
    if step.applications and step.coats > coat:
        touches = step.touches
    gates = step.gates if coat == 1 else ()
    return replace(step, applications=tuple(applications), touches=touches, gates=gates)


def _spread(
    model: Model, application: Application, keep: Callable[[str], bool], coats: int
) -> Iterator[Application]:
    places = _narrowed(model, application.places, keep)
    if places and coats > 0:
        yield replace(application, places=places, coats=coats)


def _narrowed(
    model: Model, references: tuple[str, ...], keep: Callable[[str], bool]
) -> tuple[str, ...]:
    """Return references to the places kept; those that keep all their places stay as written."""
    left: list[str] = []
    for reference in references:
        places = model.places(reference)
        inside = [place for place in places if keep(place)]
        left += [reference] if len(inside) == len(places) else inside
    return tuple(dict.fromkeys(left))


def _titled(step: Step) -> str:
    return within(200, titled("{step} (rest)", step=step.title)) if step.title else ""


def share_of(minutes: Minutes, share: float) -> Minutes:
    """Return the minutes of a share of the places; what is told by the part follows by itself."""
    fixed = round(minutes.fixed * share)
    return replace(minutes, fixed=max(fixed, 0 if minutes.per_part else 1))


def _replaced(model: Model, step_id: str, new: tuple[Step, ...]) -> Model:
    steps: list[Step] = []
    for step in model.steps:
        steps += new if step.id == step_id else (step,)
    return replace(model, steps=tuple(steps))


def _waits_for_both(step: Step, earlier: str, rest: Step) -> Step:
    """Let what waits for a step wait for the rest of it as well."""
    if step.id == rest.id:
        return step
    after = step.after
    if earlier in after:
        at = after.index(earlier) + 1
        after = (*after[:at], rest.id, *after[at:])
    gates: list[Gate] = []
    for gate in step.gates:
        gates.append(gate)
        if gate.after == earlier:
            gates.append(replace(gate, after=rest.id))
    return replace(step, after=after, gates=tuple(gates))


def must_follow(model: Model, step: Step, earlier: Step) -> bool:
    """Tell whether a step must follow an earlier one soon: by a closing, or while it is soft."""
    mine = [gate for gate in step.gates if gate.after == earlier.id]
    if any(window.closes is not None for gate in mine for window in gate.windows):
        return True
    if step.stage not in SOON or not earlier.applications:
        return False
    here = set(places_of(model, step))
    at = [step.id for step in model.steps]
    between = model.steps[at.index(earlier.id) + 1 : at.index(step.id)]
    buried = {
        place
        for step in between
        if step.applications
        for place in places_of(model, step)
        if step.id != earlier.id
    }
    return bool(here & set(places_of(model, earlier)) - buried)


def _servants_parted(model: Model, ours: Step, rest: Step, begun_too: set[str]) -> Model:
    """Part what must follow both soon, for the two may be evenings apart."""
    ids = [step.id for step in model.steps]
    laid = set(places_of(model, rest))
    for name in ids[ids.index(rest.id) + 1 :]:
        step = next(step for step in model.steps if step.id == name)
        if step.id in begun_too or step.coats > 1 or step.stage in WHOLE_UNIT:
            continue
        if not any(must_follow(model, step, other) for other in (ours, rest)):
            continue
        here = places_of(model, step)
        early = frozenset(place for place in here if place not in laid)
        now = kept(model, step, early.__contains__)
        later = kept(model, step, (set(here) - early).__contains__)
        if now is None or later is None or not early & set(places_of(model, ours)):
            tied = rest if now is None or not early & set(places_of(model, ours)) else ours
            other = ours if tied is rest else rest
            model = _replaced(model, step.id, (untied(step, other.id),))
            continue
        share = len(early) / len(here)
        now = replace(untied(now, rest.id), minutes=share_of(step.minutes, share))
        later = replace(
            untied(later, ours.id),
            id=fresh(model, f"{step.id}-rest"),
            title=_titled(step),
            minutes=share_of(step.minutes, 1 - share),
        )
        model = _replaced(model, step.id, (now, later))
        waiting = tuple(_waits_for_both(other, step.id, later) for other in model.steps)
        model = _servants_parted(replace(model, steps=waiting), now, later, begun_too)
    return model


def untied(step: Step, earlier: str) -> Step:
    """Return a step that no longer waits for an earlier one."""
    return replace(
        step,
        after=tuple(name for name in step.after if name != earlier),
        gates=tuple(gate for gate in step.gates if gate.after != earlier),
    )


def _with(book: Book, key: PassKey, model: Model, step: Step, rest: Step) -> Book:
    """Put the parted model in the book; wishes about what is left go with it."""

    def changed(project: Project) -> Project:
        pins: list[Pin] = []
        for pin in project.pins:
            if (pin.model, pin.step) != (key.model, step.id):
                pins.append(pin)
            elif pin.coat is None:
                pins += [pin, replace(pin, step=rest.id)]
            elif pin.coat <= key.coat:
                pins.append(pin)
            else:
                coat = min(pin.coat - key.coat + 1, rest.coats)
                pins.append(replace(pin, step=rest.id, coat=coat))
        placed = instead_of_its_like(project, model)
        return replace(placed, pins=tuple(dict.fromkeys(pins)))

    return with_project(book, key.project, changed)


def split_after(book: Book, key: PassKey) -> tuple[Book, str]:
    """Part a step behind the coats of it that are begun, if coats are left.

    Returns the book, and the id of the step with what is left ("" if none is).
    """
    model, project = model_of(book, key), project_of(book, key.project)
    step = next(step for step in model.steps if step.id == key.step)
    last = max((entry.coat for entry in begun(project, key.model, key.step)), default=0)
    if not last or last >= step.coats:
        return book, ""
    coat = key._replace(coat=last)
    made = parted(book, coat, places_of(model, step, last))
    return made.book, made.rest
