"""A sequence with named changes made to it: by an option where it has one, else in its steps.

Changes hold together in one order, whichever was asked for first, so that
what is taken out again leaves what was there before.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache
from types import MappingProxyType

from planner.sequences.apply_to_model import resolved
from planner.sequences.chosen_options import choices_of, complete
from planner.sequences.order_changes import CHANGES
from planner.sequences.order_steps import steps_of
from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.model import NamedChange
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import Stage

Options = tuple[str, ...]

_PUT_IN: Mapping[NamedChange, tuple[str, ...]] = MappingProxyType(
    {
        NamedChange.CHIPPING: ("chips by fluid",),
        NamedChange.NO_CHIPPING: ("no chips",),
        NamedChange.DECALS: ("decals",),
        NamedChange.COLOUR: ("second colour below",),
        NamedChange.BRUSH: ("brush",),
        NamedChange.CAN: ("spray can",),
        NamedChange.AIRBRUSH: ("airbrush",),
    }
)
"""Options that a change takes in, by their names in the built-in sequences."""
_TAKE_OUT: Mapping[NamedChange, tuple[str, ...]] = MappingProxyType(
    {
        NamedChange.NO_DECALS: ("decals",),
        NamedChange.NO_WASH: ("oil wash", "panel-line wash", "filter"),
    }
)
_NEXT_OF = MappingProxyType({NamedChange.COLOUR: "camouflage"})
"""Choices of which a change takes the next."""
AGAINST: Mapping[NamedChange, frozenset[NamedChange]] = MappingProxyType(
    {
        one: frozenset(group - {one})
        for group in (
            {NamedChange.CHIPPING, NamedChange.NO_CHIPPING},
            {NamedChange.DECALS, NamedChange.NO_DECALS},
            {NamedChange.BRUSH, NamedChange.CAN, NamedChange.AIRBRUSH},
        )
        for one in group
    }
)
"""What cannot hold beside a change."""


def changed(
    sequence: Sequence, options: Iterable[str] | None, changes: Iterable[NamedChange]
) -> tuple[Sequence, Options]:
    """Return the sequence and options that a model follows with some changes.

    Raises
    ------
    Refused
        If options do not fit, or a change does not.
    """
    asked = set(changes)
    ordered = tuple(change for change in NamedChange if change in asked)
    return _changed(Same(sequence), complete(sequence, options), ordered)


@lru_cache(maxsize=512)
def _changed(
    same: Same[Sequence], chosen: Options, changes: tuple[NamedChange, ...]
) -> tuple[Sequence, Options]:
    sequence, rest = same.value, []
    for change in changes:
        by_option = _by_option(sequence, chosen, change)
        if by_option is None:
            rest.append(change)
        else:
            chosen = by_option
    if not rest:
        return sequence, chosen
    order = resolved(sequence, chosen)
    for change in rest:
        order = CHANGES[change](order)
    return order, ()


def with_change(
    sequence: Sequence,
    options: Iterable[str] | None,
    changes: tuple[NamedChange, ...],
    change: NamedChange,
) -> tuple[NamedChange, ...]:
    """Return the changes of a model once one more is asked for; what speaks against it goes.

    Raises
    ------
    Refused
        If it does not fit the order, or is there already.
    """
    if change in changes:
        raise Refused("", message("it has been changed so already"))
    left = tuple(one for one in changes if one not in AGAINST.get(change, ()))
    if left != changes and not _fits(sequence, options, left, change):
        return left  # the order itself has it again
    changed(sequence, options, (*left, change))
    return (*left, change)


def offered(
    sequence: Sequence, options: Iterable[str] | None, changes: tuple[NamedChange, ...]
) -> tuple[NamedChange, ...]:
    """Return the changes that an order could still be given."""
    found = []
    for change in NamedChange:
        try:
            with_change(sequence, options, changes, change)
        except Refused:
            continue
        found.append(change)
    return tuple(found)


def still_fitting(
    sequence: Sequence, options: Iterable[str] | None, changes: Iterable[NamedChange]
) -> tuple[NamedChange, ...]:
    """Return those of a model's changes that fit a sequence as it is by now."""
    kept: tuple[NamedChange, ...] = ()
    for change in changes:
        if _fits(sequence, options, kept, change):
            kept = (*kept, change)
    return kept


def _fits(
    sequence: Sequence,
    options: Iterable[str] | None,
    changes: tuple[NamedChange, ...],
    change: NamedChange,
) -> bool:
    try:
        changed(sequence, options, (*changes, change))
    except Refused:
        return False
    return True


def _by_option(sequence: Sequence, chosen: Options, change: NamedChange) -> Options | None:
    """Return the options with a change made by them; None where none of them makes it."""
    known = {option.name: option for option in sequence.options}
    out = [name for name in _TAKE_OUT.get(change, ()) if name in chosen and name in known]
    if out:
        left = tuple(name for name in chosen if name not in out)
        return (
            left
            if _other(sequence, chosen, left) and not _remains(sequence, left, change)
            else None
        )
    wanted = [name for name in _PUT_IN.get(change, ()) if name in known and name not in chosen]
    wanted += _next(sequence, chosen, _NEXT_OF.get(change, ""))
    for name in wanted[:1]:
        choice = known[name].choice
        beside = {option.name for option in choices_of(sequence).get(choice, ())}
        new = complete(sequence, [*(each for each in chosen if each not in beside), name])
        return new if _other(sequence, chosen, new) else None
    return None


def _remains(sequence: Sequence, left: Options, change: NamedChange) -> bool:
    """Tell whether what a change takes out is still in the order without its options."""
    gone = {NamedChange.NO_DECALS: {Stage.DECAL}, NamedChange.NO_WASH: {Stage.WASH, Stage.OIL_WASH}}
    steps = steps_of(resolved(sequence, left))
    return any(step.stage in gone.get(change, ()) for step in steps)


def _next(sequence: Sequence, chosen: Options, choice: str) -> list[str]:
    names = [option.name for option in choices_of(sequence).get(choice, ())]
    now = next((at for at, name in enumerate(names) if name in chosen), len(names))
    return names[now + 1 : now + 2]


def _other(sequence: Sequence, chosen: Options, new: Options) -> bool:
    """Tell whether options lead to other steps."""
    return resolved(sequence, chosen).steps != resolved(sequence, new).steps
