"""Which options of a sequence are chosen."""

from __future__ import annotations

from collections.abc import Iterable

from planner.values.message import message
from planner.values.refusal import Refused, demand_known
from planner.values.sequence import Option, Sequence, SequenceStep
from planner.values.step import Tool


def choices_of(sequence: Sequence) -> dict[str, tuple[Option, ...]]:
    """Return the options that exclude each other, by the name of their choice."""
    found: dict[str, tuple[Option, ...]] = {}
    for option in sequence.options:
        if option.choice:
            found[option.choice] = (*found.get(option.choice, ()), option)
    return found


def complete(sequence: Sequence, chosen: Iterable[str] | None = None) -> tuple[str, ...]:
    """Return a full choice of options, in the sequence's order.

    ``chosen`` None means the usual ones.  A choice of which none is named
    takes its usual option, or its first.

    Raises
    ------
    Refused
        If an option is not of the sequence, or two exclude each other.
    """
    usual = [option.name for option in sequence.options if option.usual and not option.choice]
    named = set(usual if chosen is None else chosen)
    known = [option.name for option in sequence.options]
    for name in sorted(named):
        demand_known(name, known, "option", "options")
    for choice, options in choices_of(sequence).items():
        taken = [option.name for option in options if option.name in named]
        if len(taken) > 1:
            quoted = [f'"{name}"' for name in taken]
            mend = message(
                "{some} and {last} exclude each other ({choice}); choose one",
                some=" and ".join(quoted[:-1]),
                last=quoted[-1],
                choice=choice,
            )
            raise Refused("options", mend)
        if not taken:
            named.add(next((option for option in options if option.usual), options[0]).name)
    return tuple(name for name in known if name in named)


def holds(step: SequenceStep, chosen: Iterable[str]) -> bool:
    """Tell whether a step is there with these options."""
    taken = set(chosen)
    return taken.issuperset(step.needs) and taken.isdisjoint(step.unless)


def without_airbrush(sequence: Sequence, chosen: Iterable[str] | None = None) -> tuple[str, ...]:
    """Return a choice as full as can be that asks for no airbrush, where there is one.

    In each choice whose chosen option brings in work with an airbrush, the
    first option that brings in none is taken instead.
    """
    taken = complete(sequence, chosen)
    for options in choices_of(sequence).values():
        mine = {option.name for option in options}
        now = next(name for name in taken if name in mine)
        if _sprays(sequence, now):
            other = next(
                (option.name for option in options if not _sprays(sequence, option.name)), now
            )
            taken = tuple(other if name == now else name for name in taken)
    return complete(sequence, taken)


def _sprays(sequence: Sequence, option: str) -> bool:
    return any(option in step.needs and step.step.tool is Tool.AIRBRUSH for step in sequence.steps)
