"""Putting steps into a model behind what was done, and tying what follows to them."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from planner.evening.log_entries import model_of
from planner.evening.split_steps import fresh, places_of, share_of, split_after, touched, untied
from planner.layers.named_mends import kept
from planner.values.book import Book
from planner.values.book_changes import with_model_steps
from planner.values.coating import Mark, State, Window
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.message import message, titled, within
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.refusal import demand
from planner.values.step import Gate, Minutes, Stage, Step, Tool


@dataclass(frozen=True)
class Done:
    """What was begun on some places of a model, in working order, the last one last.

    ``steps`` have at least one coat in the logbook, and are done as far as
    they go; ``places`` are what a repair is about.
    """

    book: Book
    key: PassKey
    model: Model
    steps: tuple[Step, ...]
    places: tuple[str, ...]

    @property
    def spot(self) -> ModelKey:
        """Names the model for edits."""
        return ModelKey(self.key.project, self.key.model)

    def on(self, step: Step) -> tuple[str, ...]:
        """Return the places of the repair that a step touches."""
        return tuple(place for place in places_of(self.model, step) if place in self.places)

    def laid(self, place: str) -> tuple[Step, ...]:
        """Return the steps that laid a film on a place, the top one last."""
        return tuple(
            step for step in self.steps if step.applications and place in films_of(self.model, step)
        )

    def tops(self) -> tuple[Step, ...]:
        """Return the steps that laid the top film somewhere, in working order."""
        top = {self.laid(place)[-1].id for place in self.places if self.laid(place)}
        return tuple(step for step in self.steps if step.id in top)


def films_of(model: Model, step: Step) -> dict[str, str]:
    """Return what a step lays where: "part/place" to coating or mix."""
    return {
        place: application.coating
        for application in step.applications
        for reference in application.places
        for place in model.places(reference)
    }


def done_on(book: Book, key: PassKey, places: Iterable[str]) -> Done:
    """Return what was done on some places; a step that is half done is parted behind its coats.

    Raises
    ------
    Refused
        If nothing was done there yet, or all of it lies under a mask.
    """
    log = project_of(book, key.project).log
    logged = {entry.step for entry in log if entry.model == key.model}
    wanted = set(places)
    for step in model_of(book, key).steps:
        if step.id in logged and wanted & set(places_of(model_of(book, key), step)):
            book, _ = split_after(book, key._replace(step=step.id, coat=1))
    model = model_of(book, key)
    places = touched(project_of(book, key.project), model)
    ordered = _as_it_went(model, places, logged, wanted)
    if ordered != model.steps:
        book = with_model_steps(book, ModelKey(key.project, key.model), ordered)
        model = model_of(book, key)
    steps = tuple(
        step for step in model.steps if step.id in logged and wanted & set(places_of(model, step))
    )
    open_to = tuple(
        f"{part.name}/{place.name}"
        for part in model.parts
        for place in part.places
        if f"{part.name}/{place.name}" in wanted
    )
    demand(bool(steps), "step", message("nothing was done there yet; there is nothing to mend"))
    return Done(book, key, model, steps, open_to)


def _as_it_went(
    model: Model, touching: dict[str, set[str]], logged: set[str], wanted: set[str]
) -> tuple[Step, ...]:
    """Return the steps with what is still to do on some places behind what was done there.

    What follows on the places of those that move, or waits for them, moves along.
    """
    here = [touching[step.id] for step in model.steps]
    done = [at for at, step in enumerate(model.steps) if step.id in logged and here[at] & wanted]
    last = max(done, default=-1)
    stay: list[Step] = []
    move: list[Step] = []
    places, ids = set(wanted), set[str]()
    for at, step in enumerate(model.steps[: last + 1]):
        waits = ids & {*step.after, *(gate.after for gate in step.gates)}
        if step.id not in logged and (here[at] & places or waits):
            move.append(step)
            ids.add(step.id)
            places |= here[at]
        else:
            stay.append(step)
    free = (without_gates(step, lambda name: name not in ids) for step in stay)
    return (*free, *move, *model.steps[last + 1 :])


def masked(done: Done) -> dict[str, Step]:
    """Return the places that a mask covers now, and the mask."""
    covered: dict[str, Step] = {}
    for step in done.steps:
        for place in places_of(done.model, step):
            if step.stage is Stage.MASK:
                covered[place] = step
            elif step.stage is Stage.UNMASK:
                covered.pop(place, None)
    return covered


def copy_of(done: Done, step: Step, places: Iterable[str], *, coats: int | None = 1) -> Step | None:
    """Return a step once more on some of its places, free of wishes and gates; None if on none."""
    wanted = set(places)
    narrow = kept(done.model, step, wanted.__contains__)
    if narrow is None:
        return None
    if coats is not None:
        fewer = tuple(
            replace(application, coats=min(coats, application.coats))
            for application in narrow.applications
        )
        narrow = replace(narrow, applications=fewer)
    whole = places_of(done.model, step)
    share = len(wanted & set(whole)) / len(whole)
    return replace(
        narrow,
        id=fresh(done.model, f"{step.id}-again"),
        title=within(200, titled("{step}, once more", step=step.title or step.id)),
        minutes=share_of(step.minutes, share),
        gates=(),
        after=(),
    )


def by_hand(
    done: Done, name: str, title: str, places: tuple[str, ...], minutes: Minutes, **more: object
) -> Step:
    """Return a step that lays nothing."""
    fields: dict[str, object] = {"stage": Stage.CLEAN, "tool": Tool.HAND, **more}
    return Step(
        id=fresh(done.model, name),
        title=title,
        touches=places,
        minutes=minutes,
        **fields,  # type: ignore[arg-type]
    )


def once(step: Step, state: State) -> Gate:
    """Return the gate that opens once the film of an earlier step has come so far."""
    return Gate(after=step.id, windows=(Window(opens=Mark(state=state)),))


def later(step_id: str, minutes: int) -> Gate:
    """Return the gate that opens so many minutes after an earlier step."""
    return Gate(after=step_id, windows=(Window(opens=Mark(minutes=minutes)),))


def put_in(
    done: Done,
    steps: Iterable[Step],
    again: dict[str, str],
    wait: int = 0,
    *,
    unmasked: bool = False,
) -> Book:
    """Return the book with steps put in behind what was done.

    Parameters
    ----------
    again
        Ids of earlier steps, and of the new steps that lay their film anew:
        what waits for the one, and works on the places of the other, waits
        for the other too, and counts its closings from there.
    wait
        What comes next on those places waits so long for the last new step [min].
    unmasked
        Masks on the same parts come off first.
    """
    new = tuple(steps)
    logged = {step.id for step in done.steps}
    model = done.model
    at = max(number for number, step in enumerate(model.steps) if step.id in logged) + 1
    if unmasked:
        at = max(at, _behind_unmasking(done, at))
    before, behind = model.steps[:at], list(model.steps[at:])
    by_id = {step.id: step for step in new}
    for number, step in enumerate(behind):
        here = set(places_of(model, step))
        for earlier, name in again.items():
            if step.stage is Stage.UNMASK or here & set(places_of(model, by_id[name])):
                behind[number] = retied(behind[number], earlier, name)
    if wait:
        _wait(model, behind, new[-1], wait)
    return with_model_steps(done.book, done.spot, (*before, *new, *behind))


def _behind_unmasking(done: Done, at: int) -> int:
    """Return the index behind the unmasking of the parts, if that is what comes next there."""
    parts = {place.partition("/")[0] for place in done.places}
    for number, step in enumerate(done.model.steps[at:], at):
        own = {place.partition("/")[0] for place in places_of(done.model, step)}
        if own & parts:
            return number + 1 if step.stage is Stage.UNMASK else at
    return at


def retied(step: Step, earlier: str, name: str) -> Step:
    """Let a step that waits for ``earlier`` wait for ``name``; openings hold for both."""
    gates: list[Gate] = []
    for gate in step.gates:
        closes = any(window.closes is not None for window in gate.windows)
        if gate.after != earlier or not closes:
            gates.append(gate)
        if gate.after == earlier:
            gates.append(replace(gate, after=name))
    after = step.after
    if earlier in after:
        after = tuple(dict.fromkeys((*after, name)))
    return replace(step, gates=tuple(gates), after=after)


def _wait(model: Model, behind: list[Step], last: Step, wait: int) -> None:
    """Let the first step on each of the places wait for the last new one."""
    left = set(places_of(model, last))
    for number, step in enumerate(behind):
        here = left & set(places_of(model, step))
        if here:
            behind[number] = replace(step, gates=(*step.gates, later(last.id, wait)))
            left -= here


def without_gates(step: Step, unless: Callable[[str], bool]) -> Step:
    """Return a step tied only to earlier steps that ``unless`` accepts."""
    for name in {*step.after, *(gate.after for gate in step.gates)}:
        if not unless(name):
            step = untied(step, name)
    return step
