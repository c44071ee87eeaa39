"""What the Coat stack view shows of one place; no Qt in here."""

from __future__ import annotations

from dataclasses import dataclass

from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from planner.cure import film_um
from planner.layers.coat_stack import Layer, stack_of
from planner.layers.finding import Finding
from planner.layers.overcoat_table import LayerVerdict
from planner.schedule.partial_schedule import FOREVER
from planner.tonight import swatch_of
from planner.values.coating import Finish, State
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.step import Stage


@dataclass(frozen=True)
class CoatRow:
    """One film of a stack, and what is thought of it where it lies on the one below.

    Attributes
    ----------
    start
        When the plan lays it, or it was laid; None if it has no place.
    verdict
        Judgement on laying it there, from the findings; WAIT where the film
        below must first become ``state``, which it is from ``opens`` on.
    """

    key: PassKey
    name: str
    swatch: str
    finish: Finish
    thickness_um: float
    stage: Stage
    coats: int
    start: int | None
    logged: bool
    verdict: LayerVerdict
    why: str
    state: State | None = None
    opens: int | None = None


@dataclass(frozen=True)
class PlaceStack:
    """The coats on one place, from the bare part up."""

    project: str
    model: str
    place: str
    material: str
    coats: tuple[CoatRow, ...]

    @property
    def worst(self) -> LayerVerdict:
        """The gravest verdict in it."""
        return max(
            (coat.verdict for coat in self.coats),
            key=lambda coat: coat.rank,
            default=LayerVerdict.SOUND,
        )


def stacks(picture: PlanSnapshot, project: Project, model: Model) -> tuple[PlaceStack, ...]:
    """Return the stack of every place of a model, in order of its parts."""
    mine = [
        finding
        for finding in picture.findings
        if (finding.project, finding.model) == (project.name, model.name)
    ]
    found = []
    layers = stack_of(picture.book, project, model)
    for part in model.parts:
        for spot in part.places:
            place = f"{part.name}/{spot.name}"
            coats = tuple(
                _coat(picture, project, model, layer, mine) for layer in layers.get(place, ())
            )
            found.append(PlaceStack(project.name, model.name, place, part.material.value, coats))
    return tuple(found)


def _coat(
    picture: PlanSnapshot, project: Project, model: Model, layer: Layer, findings: list[Finding]
) -> CoatRow:
    key = PassKey(project.name, model.name, layer.step.id, layer.coat)
    placed = picture.plan.placement(key)
    against = [
        finding
        for finding in findings
        if finding.step == layer.step.id and layer.place in finding.places
    ]
    worst = max(against, key=lambda one: one.verdict.rank, default=None)
    verdict, why, state, opens = LayerVerdict.SOUND, "", None, None
    if worst is not None and layer.coat == 1:
        verdict, why = worst.verdict, translated(worst.message)
    elif (waits := _waits(picture, key, layer.place)) is not None:
        verdict, (why, state, opens) = LayerVerdict.WAIT, waits
    return CoatRow(
        key=key,
        name=layer.laid_as,
        swatch=swatch_of(picture.book, layer.laid_as),
        finish=layer.finish,
        thickness_um=film_um(layer.step, layer.coating),
        stage=layer.step.stage,
        coats=layer.step.coats,
        start=placed.start if placed else None,
        logged=placed.logged if placed else False,
        verdict=verdict,
        why=why,
        state=state,
        opens=opens,
    )


def _waits(
    picture: PlanSnapshot, key: PassKey, place: str
) -> tuple[str, State | None, int | None] | None:
    """Return the latest opening among the films below that the coat waits for."""
    laid = picture.laid
    if key not in laid.problem.index:
        return None
    best: tuple[int, str, State | None] | None = None
    for number in laid.problem.activities[laid.problem.index[key]].gates:
        gate = laid.problem.gates[number]
        if not gate.place or place not in dict(laid.of(gate.before).films):
            continue
        window = laid.window(number)
        if window is None or window.window.opens is None:
            continue
        if best is None or window.opens > best[0]:
            best = (window.opens, translated(gate.why), window.window.opens.state)
    if best is None:
        return None
    return best[1], best[2], None if best[0] >= FOREVER else best[0]
