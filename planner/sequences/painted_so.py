"""The order in which a model was really painted, for another one like it.

What was redone is left out: a coat that was laid again or touched up counts
once, sanding and stripping not at all, and what was done in two goes is one
step.  Minutes are those that it took.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from statistics import fmean

from planner.sequences.apply_to_model import without_steps
from planner.sequences.save_from_model import sequence_from
from planner.values.message import message
from planner.values.model import Model
from planner.values.project import Logged, Project
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import Application, Minutes, Step

REDONE = re.compile(
    r".+-again(-\d+)?|(touch-up|gloss-over|sand|soften|lift)-.+|(tape-off|soak|brush-off|turn-back)"
    r"(-\d+)?|.+-coat-\d+"
)
"""Ids of steps that repairs put in (`planner.evening.repairs`)."""
AGAIN = re.compile(r"-again(-\d+)?$")
ONCE_MORE = ", once more"  # what the titles of such steps end with
REST = re.compile(r"(?P<step>.+?)-rest(-\d+)?")
"""Ids of what was left of a step that was done in two goes (`planner.evening.split_steps`)."""


def painted_so(project: Project, model: Model, name: str, note: str = "") -> Sequence:
    """Return a sequence of what was really done on a model, in the order in which it was.

    Steps that were not done, or not to the end, are left out.

    Raises
    ------
    Refused
        If nothing of it is done.
    """
    facts = [fact for fact in project.log if fact.model == model.name and fact.end is not None]
    steps = _whole(_done(model, facts), facts)
    if not steps:
        raise Refused(
            "log", message('nothing of "{model}" is in the logbook yet', model=model.name)
        )
    as_done = replace(model, steps=_in_order(steps, facts))
    return sequence_from(as_done, name, note=note)


def photos_of(project: Project, model: str) -> tuple[str, ...]:
    """Return the photos of a model in the logbook, the oldest first."""
    facts = sorted((f for f in project.log if f.model == model), key=lambda fact: fact.start)
    return tuple(dict.fromkeys(photo for fact in facts for photo in fact.photos))


def _done(model: Model, facts: Iterable[Logged]) -> tuple[Step, ...]:
    """Return the steps that were done, without repairs."""
    done = {fact.step for fact in facts}
    own = {step.id: step for step in model.steps}
    gone = {
        name
        for name in own
        if name not in done or (REDONE.fullmatch(name) and _mends(name, set(own)))
    }
    again: dict[str, list[Step]] = {}
    for name in gone & done:
        stem = AGAIN.sub("", name)
        if stem != name and stem in own:
            again.setdefault(stem, []).append(own[name])
    kept = without_steps(model.steps, gone)
    return tuple(_as_meant(step, again.get(step.id, [])) for step in kept)


def _as_meant(step: Step, again: list[Step]) -> Step:
    """Return a step with the places that were stripped and laid again, as it was before that."""
    laid = [one for one in again if one.applications]
    if step.applications or not laid:
        return _united(step, laid)
    title = laid[-1].title.removesuffix(ONCE_MORE)
    return replace(laid[-1], id=step.id, title=title, after=step.after, gates=step.gates)


def _mends(step: str, own: set[str]) -> bool:
    """Tell whether a step mends another, by its id: that one is there, or it only cleans."""
    for ending in (AGAIN, re.compile(r"-coat-\d+$")):
        stem = ending.sub("", step)
        if stem != step:
            return stem in own
    stem = re.sub(r"^(touch-up|gloss-over|sand|soften|lift)-", "", step)
    return stem == step or stem in own or re.sub(r"-\d+$", "", stem) in own


def _whole(steps: tuple[Step, ...], facts: list[Logged]) -> tuple[Step, ...]:
    """Return steps with what was done in two goes put together, and with the minutes it took."""
    there = {step.id for step in steps}
    rests: dict[str, list[Step]] = {}
    for step in steps:
        found = REST.fullmatch(step.id)
        if found and found["step"] in there:
            rests.setdefault(found["step"], []).append(step)
    kept = without_steps(steps, {step.id for parts in rests.values() for step in parts})
    return tuple(_timed(_united(step, rests.get(step.id, [])), rests, facts) for step in kept)


def _united(step: Step, rests: list[Step]) -> Step:
    applications = list(step.applications)
    for more in (application for rest in rests for application in rest.applications):
        at = next((n for n, one in enumerate(applications) if one.coating == more.coating), None)
        if at is None:
            applications.append(more)
        else:
            applications[at] = _wider(applications[at], more)
    touches = dict.fromkeys((*step.touches, *(name for rest in rests for name in rest.touches)))
    return replace(step, applications=tuple(applications), touches=tuple(touches))


def _wider(one: Application, more: Application) -> Application:
    places = tuple(dict.fromkeys((*one.places, *more.places)))
    return replace(one, places=places, coats=max(one.coats, more.coats))


def _timed(step: Step, rests: dict[str, list[Step]], facts: list[Logged]) -> Step:
    """Return a step with the minutes that a coat of it took, where the logbook has them."""
    ids = {step.id, *(rest.id for rest in rests.get(step.id, []))}
    took: dict[int, int] = {}
    for fact in facts:
        if fact.step in ids and fact.minutes is not None:
            took[fact.coat] = took.get(fact.coat, 0) + fact.minutes
    if not took:
        return step
    parts = len({name.partition("/")[0] for name in step.references()})
    minutes = max(1, round(fmean(took.values())))
    fixed = min(step.minutes.fixed, minutes)
    each, left = divmod(minutes - fixed, max(parts, 1))
    return replace(step, minutes=Minutes(fixed=fixed + left, per_part=each))


def _in_order(steps: tuple[Step, ...], facts: list[Logged]) -> tuple[Step, ...]:
    """Return steps in the order in which they were begun, each after what it waits for."""
    began = {fact.step: fact.start for fact in sorted(facts, key=lambda f: f.start, reverse=True)}
    found: list[Step] = []
    left = list(steps)
    while left:
        there = {step.id for step in found}
        ready = [
            step for step in left if {*step.after, *(gate.after for gate in step.gates)} <= there
        ]
        first = min(ready or left[:1], key=lambda step: began[step.id])
        found.append(first)
        left.remove(first)
    return tuple(found)
