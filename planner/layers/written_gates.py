"""Gates that a person wrote and that no moment can keep beside what custom asks.

Gates meet (definition 6a): the written one narrows, and may leave nothing.
Only what the clock alone tells is looked at here; a plan tells the rest.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Layer, Moment
from planner.layers.customary import Custom, after_film, can_again
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.step_edits import DropGate
from planner.values.coating import Family, Window
from planner.values.message import message
from planner.values.step import Bound, Gate

_EVER = float("inf")


def written_gates(scene: Scene) -> Iterator[Finding]:
    """Yield written gates whose windows all lie outside the customary ones."""
    for moment in scene.moments:
        for gate in moment.step.gates:
            clashes = {
                place: custom
                for place in moment.first.places
                if (custom := _custom(scene, moment, gate, place)) is not None
                and not _meet(scene, moment, gate, custom)
            }
            if not clashes:
                continue
            custom = next(iter(clashes.values()))
            yield scene.found(
                message("written gate that nothing can keep"),
                LayerVerdict.NEVER,
                moment,
                clashes,
                message(
                    "the gate written after {step} leaves no moment beside what is known: {why}",
                    step=gate.after,
                    why=custom.why,
                ),
                Mend(
                    message("take the written gate off it"),
                    (DropGate(scene.spot, moment.step.id, gate),),
                ),
                custom.source,
            )


def _custom(scene: Scene, moment: Moment, gate: Gate, place: str) -> Custom | None:
    """Return what custom asks after the step of a gate, where its film lies on top."""
    stack = moment.stack(place)
    if not stack or stack[-1].step.id != gate.after:
        return None
    top: Layer = stack[-1]
    fluid = any(film.family is Family.CHIPPING_FLUID for film in stack)
    found = after_film(moment.step, top.coating, top.step, fluid)
    if found is not None:
        return found
    named = moment.laid.get(place)
    laid = scene.book.coating(named) if named else None
    return can_again(moment.step, laid, top.coating, top.step)


def _meet(scene: Scene, moment: Moment, gate: Gate, custom: Custom) -> bool:
    laying = [m.passes[-1] for m in scene.moments if m.step.id == gate.after]
    before, own = laying[-1].minutes, moment.first.minutes
    written = [_starts(window, gate.closing, before, own) for window in gate.windows]
    known = [_starts(window, custom.closing, before, own) for window in custom.windows]
    return any(max(one[0], other[0]) <= min(one[1], other[1]) for one in written for other in known)


def _starts(window: Window, closing: Bound, before: int, own: int) -> tuple[float, float]:
    """Return the first and last start that a window allows, from the start of the pass before."""
    opens, closes = window.opens, window.closes
    first = before + (0 if opens is None or opens.of_film else opens.minutes or 0)
    if closes is None or closes.of_film:
        return first, _EVER
    return first, (closes.minutes or 0) - (own if closing is Bound.END else 1)
