"""Changes within a sequence: its steps, options and colours; each returns a new sequence.

What they would leave unsound (a step that waits for a later one, a colour
that nobody knows) is refused by the values themselves.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from planner.values.message import message
from planner.values.refusal import Refused, unknown
from planner.values.sequence import Colour, Option, Sequence, SequenceStep
from planner.values.step import Step


def set_step(sequence: Sequence, id_: str, new: SequenceStep) -> Sequence:
    """Put another form of a step in its place; its id stays."""
    at = _at(sequence, id_)
    kept = replace(new, step=replace(new.step, id=id_))
    return replace(sequence, steps=(*sequence.steps[:at], kept, *sequence.steps[at + 1 :]))


def copy_step(sequence: Sequence, id_: str) -> tuple[Sequence, str]:
    """Put a copy of a step behind it; return the sequence and the copy's id."""
    at = _at(sequence, id_)
    taken = {step.step.id for step in sequence.steps}
    number = 2
    while (name := f"{id_[:56]}-{number}") in taken:
        number += 1
    old = sequence.steps[at]
    copy = replace(old, step=replace(old.step, id=name))
    return replace(
        sequence, steps=(*sequence.steps[: at + 1], copy, *sequence.steps[at + 1 :])
    ), name


def move_step(sequence: Sequence, id_: str, by: int) -> Sequence:
    """Move a step so many places later, or earlier where ``by`` is below 0.

    Raises
    ------
    Refused
        If a step would stand before one that it waits for.
    """
    at = _at(sequence, id_)
    to = min(max(at + by, 0), len(sequence.steps) - 1)
    steps = list(sequence.steps)
    steps.insert(to, steps.pop(at))
    try:
        return replace(sequence, steps=tuple(steps))
    except Refused as refused:
        raise Refused(
            "steps", message('"{id}" cannot stand there: {refused}', id=id_, refused=refused.mend)
        ) from refused


def remove_step(sequence: Sequence, id_: str) -> Sequence:
    """Take a step out; what waited for it waits for what it waited for.

    Raises
    ------
    Refused
        If it is the only one.
    """
    gone = sequence.steps[_at(sequence, id_)].step
    behind = (*gone.after, *(gate.after for gate in gone.gates))

    def rerouted(step: Step) -> Step:
        gates = tuple(gate for gate in step.gates if gate.after != id_)
        if gates == step.gates and id_ not in step.after:
            return step
        after = (*(name for name in step.after if name != id_), *behind)
        return replace(step, after=tuple(dict.fromkeys(after)), gates=gates)

    left = tuple(
        replace(step, step=rerouted(step.step)) for step in sequence.steps if step.step.id != id_
    )
    return replace(sequence, steps=left)


def put_option(sequence: Sequence, old: str, new: Option) -> Sequence:
    """Change an option, or add one where ``old`` is ""; steps follow a new name."""
    if not old:
        return replace(sequence, options=(*sequence.options, new))
    _known(old, [option.name for option in sequence.options], "option")
    options = tuple(new if option.name == old else option for option in sequence.options)
    return _with_options(sequence, options, lambda name: (new.name if name == old else name,))


def remove_option(sequence: Sequence, name: str) -> Sequence:
    """Take an option away; steps that asked for it ask no more."""
    _known(name, [option.name for option in sequence.options], "option")
    options = tuple(option for option in sequence.options if option.name != name)
    return _with_options(sequence, options, lambda other: () if other == name else (other,))


def put_colour(sequence: Sequence, old: str, new: Colour) -> Sequence:
    """Change a colour, or add one where ``old`` is ""; steps follow a new name."""
    if not old:
        return replace(sequence, colours=(*sequence.colours, new))
    _known(old, [colour.name for colour in sequence.colours], "colour")

    def renamed(step: Step) -> Step:
        applications = tuple(
            replace(application, coating=new.name) if application.coating == old else application
            for application in step.applications
        )
        return replace(step, applications=applications)

    return replace(
        sequence,
        colours=tuple(new if colour.name == old else colour for colour in sequence.colours),
        steps=tuple(replace(step, step=renamed(step.step)) for step in sequence.steps),
    )


def _with_options(
    sequence: Sequence, options: tuple[Option, ...], follow: Callable[[str], tuple[str, ...]]
) -> Sequence:
    def names(old: tuple[str, ...]) -> tuple[str, ...]:
        return tuple(new for name in old for new in follow(name))

    steps = tuple(
        replace(step, needs=names(step.needs), unless=names(step.unless)) for step in sequence.steps
    )
    return replace(sequence, options=options, steps=steps)


def _at(sequence: Sequence, id_: str) -> int:
    known = [step.step.id for step in sequence.steps]
    _known(id_, known, "step")
    return known.index(id_)


def _known(name: str, known: list[str], kind: str) -> None:
    if name not in known:
        raise Refused(f"{kind}s", unknown(kind, name, known))
