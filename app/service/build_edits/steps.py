"""Adding, changing, removing, splitting and copying steps."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace

from app.service.build_edits.locate import (
    logged,
    model_of,
    step_of,
    waits,
    with_model,
    without_pins,
)
from app.service.build_edits.names import rename_step, step_id
from app.service.edits import Edit
from planner.layers.named_mends import kept
from planner.values.book import Book
from planner.values.coating import GLUES, THINNERS
from planner.values.keys import ModelKey, StepKey
from planner.values.lookup import project_of
from planner.values.message import called, message, row
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.step import LAYS_NO_FILM, Application, Minutes, Stage, Step, Tool

A_QUARTER = Minutes(fixed=5, per_part=5)  # assumed; the person says better


def fresh_step(book: Book, model: Model, stage: Stage, title: str = "") -> Step:
    """Return a step to begin with: the first part, by brush, with the first coating that fits.

    Where the stock holds none, it lays nothing and only works on the part.
    """
    part = model.parts[0].name
    coating = next(
        (coating.name for coating in book.coatings if coating.family not in THINNERS | GLUES), None
    )
    name = step_id(title or stage.value, {step.id for step in model.steps})
    if stage is Stage.JOIN:
        touches = tuple(part.name for part in model.parts[:2])
        return Step(id=name, stage=stage, title=title, touches=touches, minutes=A_QUARTER)
    if stage in LAYS_NO_FILM or coating is None:
        hand = Tool.CLOTH if stage is Stage.WIPE else Tool.HAND
        return Step(
            id=name, stage=stage, title=title, touches=(part,), tool=hand, minutes=A_QUARTER
        )
    coat = Application(places=(part,), coating=coating)
    return Step(id=name, stage=stage, title=title, applications=(coat,), minutes=A_QUARTER)


def add_step(book: Book, at: ModelKey, step: Step, to: int | None = None) -> Edit:
    """Put a new step into the working order, at the end if ``to`` is not given."""

    def change(model: Model) -> Model:
        where = len(model.steps) if to is None else to
        return replace(model, steps=(*model.steps[:where], step, *model.steps[where:]))

    return Edit(
        called("{model}: add {step}", model=at.model, step=step.id), with_model(book, at, change)
    )


def set_step(book: Book, at: StepKey, step: Step) -> Edit:
    """Put a step in the place of another; all that names it follows if its id is new."""
    step_of(model_of(book, at.home), at.step)
    if step.id != at.step:
        book = rename_step(book, at, step.id).book

    def change(model: Model) -> Model:
        return replace(
            model, steps=tuple(step if other.id == step.id else other for other in model.steps)
        )

    return Edit(
        called("{model}: change {step}", model=at.model, step=step.id),
        with_model(book, at.home, change),
    )


def set_title(book: Book, at: StepKey, title: str) -> Edit:
    """Call a step otherwise on screen; its id stays."""
    step = step_of(model_of(book, at.home), at.step)
    return set_step(book, at, replace(step, title=title))


def remove_steps(book: Book, spots: Iterable[StepKey]) -> Edit:
    """Take steps out, with the pins on them and what waited for them.

    Raises
    ------
    Refused
        If one of them stands in the logbook.
    """
    gone: dict[ModelKey, set[str]] = {}
    for spot in spots:
        gone.setdefault(spot.home, set()).add(spot.step)
    for at, ids in gone.items():
        project, model = project_of(book, at.project), model_of(book, at)
        for name in ids:
            step_of(model, name)
            if logged(project, at.model, name):
                raise Refused(
                    "",
                    message(
                        "“{name}” of {model} is already logged, so it stays",
                        name=name,
                        model=at.model,
                    ),
                )
        book = _without(book, at, ids)
    return Edit(_removed(gone), book)


def _without(book: Book, at: ModelKey, ids: Collection[str]) -> Book:
    def change(model: Model) -> Model:
        left = (step for step in model.steps if step.id not in ids)
        untied = (waits(step, lambda name: () if name in ids else (name,)) for step in left)
        return replace(model, steps=tuple(untied))

    return with_model(book, at, change, lambda project: without_pins(project, at.model, ids))


def split_places(book: Book, at: StepKey, places: Collection[str]) -> Edit:
    """Make two steps of one: the second takes ``places``, "part/place" each.

    Minutes are shared by the number of places; what waited for the step
    waits for both.

    Raises
    ------
    Refused
        If all or none of its places would go, or some coat of it was logged.
    """
    project, model = project_of(book, at.project), model_of(book, at.home)
    step = step_of(model, at.step)
    if logged(project, at.model, at.step):
        raise Refused(
            "", message("“{step}” is already logged; it can no longer be split", step=at.step)
        )
    kept_half = kept(model, step, lambda place: place not in places)
    split_half = kept(model, step, lambda place: place in places)
    if kept_half is None or split_half is None:
        raise Refused("places", "choose some of the step's places, not all and not none")
    split_half = replace(
        split_half, id=step_id(f"{step.id}-rest", {each.id for each in model.steps})
    )
    kept_half, split_half = _shared(model, step, kept_half, split_half)

    def follow(name: str) -> tuple[str, ...]:
        return (name, split_half.id) if name == at.step else (name,)

    def change(old: Model) -> Model:
        steps: list[Step] = []
        for each in old.steps:
            steps += [kept_half, split_half] if each.id == at.step else [waits(each, follow)]
        return replace(old, steps=tuple(steps))

    def pinned(old: Project) -> Project:
        more = tuple(
            replace(pin, step=split_half.id)
            for pin in old.pins
            if (pin.model, pin.step) == (at.model, at.step)
            and (pin.coat is None or pin.coat <= split_half.coats)
        )
        left = (pin for pin in old.pins if _fits(pin, at, kept_half))
        return replace(old, pins=(*left, *more))

    return Edit(
        called("{model}: split {step}", model=at.model, step=at.step),
        with_model(book, at.home, change, pinned),
    )


def _fits(pin: object, at: StepKey, step: Step) -> bool:
    coat = getattr(pin, "coat", None)
    named = (getattr(pin, "model", ""), getattr(pin, "step", "")) == (at.model, at.step)
    return not named or coat is None or coat <= step.coats


def _shared(model: Model, step: Step, kept_half: Step, split_half: Step) -> tuple[Step, Step]:
    """Return both halves with their share of the minutes, never none at all."""
    counts = [_count(model, half) for half in (kept_half, split_half)]
    share = counts[0] / sum(counts)
    apart = not _parts(kept_half) & _parts(split_half)
    minutes = step.minutes
    first = max(round(minutes.fixed * share), 1) if minutes.fixed else 0
    second = max(minutes.fixed - first, 1) if minutes.fixed else 0
    each = minutes.per_part if apart else (minutes.per_part + 1) // 2
    return (
        replace(kept_half, minutes=replace(minutes, fixed=first, per_part=each)),
        replace(split_half, minutes=replace(minutes, fixed=second, per_part=each)),
    )


def _count(model: Model, step: Step) -> int:
    return sum(len(model.places(name)) for name in step.references())


def _parts(step: Step) -> set[str]:
    return {name.partition("/")[0] for name in step.references()}


@dataclass(frozen=True)
class Copied:
    """Steps taken from a model, to be put into others."""

    at: ModelKey
    ids: tuple[str, ...]


def copy_steps(book: Book, copied: Copied, targets: Iterable[ModelKey]) -> Edit:
    """Put copies of steps into other models, behind what stands ahead of them at home.

    Places that a target lacks are left out, and so is waiting for steps
    that it lacks.

    Raises
    ------
    Refused
        If a target has none of a step's places, or lacks the step that a gate counts from.
    """
    source = model_of(book, copied.at)
    steps = [step for step in source.steps if step.id in copied.ids]
    names = []
    for at in targets:
        target = model_of(book, at)
        where = _behind(source, target, steps[0].id if steps else "")
        new = _fitted(steps, target)
        book = with_model(
            book,
            at,
            lambda old, where=where, new=new: replace(  # type: ignore[misc]
                old, steps=(*old.steps[:where], *new, *old.steps[where:])
            ),
        )
        names.append(at.model)
    return Edit(
        called(
            "copy {steps} to {names}",
            steps=", ".join(step.id for step in steps),
            names=", ".join(names),
        ),
        book,
    )


def _behind(source: Model, target: Model, first: str) -> int:
    """Return the place behind the last step of the target that stands ahead at home."""
    ahead = []
    for step in source.steps:
        if step.id == first:
            break
        ahead.append(step.id)
    if source is target:
        return len(target.steps)
    places = [at for at, step in enumerate(target.steps) if step.id in ahead]
    return places[-1] + 1 if places else (0 if not ahead else len(target.steps))


def _fitted(steps: list[Step], target: Model) -> list[Step]:
    taken = {step.id for step in target.steps}
    ids: dict[str, str] = {}
    for step in steps:
        ids[step.id] = step_id(step.id, {*taken, *ids.values()})
    known = {**{name: name for name in taken}, **ids}
    fitted = []
    for step in steps:
        for gate in step.gates:
            if gate.after not in known:
                raise Refused(
                    "",
                    message(
                        "“{step}” has a gate that counts from “{after}”, which {target} "
                        "lacks; copy both",
                        step=step.id,
                        after=gate.after,
                        target=target.name,
                    ),
                )
        new = waits(step, lambda name: (known[name],) if name in known else ())
        fitted.append(replace(_placed(new, target), id=ids[step.id]))
    return fitted


def _placed(step: Step, target: Model) -> Step:
    def there(name: str) -> tuple[str, ...]:
        try:
            target.places(name)
        except KeyError:
            return ()
        return (name,)

    applications = tuple(
        replace(application, places=places)
        for application in step.applications
        if (places := tuple(name for name in application.places if there(name)))
    )
    touches = tuple(name for name in step.touches if there(name))
    if bool(step.applications) != bool(applications) or not (applications or touches):
        wanted = ", ".join(step.references())
        raise Refused(
            "",
            message(
                "{target} has none of the places of “{step}” ({wanted})",
                target=target.name,
                step=step.id,
                wanted=wanted,
            ),
        )
    return replace(step, applications=applications, touches=touches)


def _removed(gone: dict[ModelKey, set[str]]) -> str:
    if len(gone) > 1:
        return called("remove {listed}", listed=_listed(gone))
    ((at, ids),) = gone.items()
    return called("remove {ids} of {model}", ids=", ".join(sorted(ids)), model=at.model)


def _listed(gone: dict[ModelKey, set[str]]) -> str:
    return row(
        (
            called("{ids} of {model}", ids=", ".join(sorted(ids)), model=at.model)
            for at, ids in gone.items()
        ),
        "; ",
    )
