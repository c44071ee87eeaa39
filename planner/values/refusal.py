"""One way to refuse bad input: the place, and the mend."""

from __future__ import annotations

import difflib
import math
from collections.abc import Collection, Iterable, Sequence

from planner.values.message import Message, message, row, told


class Refused(ValueError):  # noqa: N818 - it is an answer to a person, not a fault of ours
    """A value that cannot be accepted.

    Parameters
    ----------
    place
        Dotted path to the offending value, relative to the value that was
        being built (``"coats"``, ``"steps[4].applications[0].coating"``).
    mend
        One line that says what is wrong and what would be right.  With the
        place before it, it is the ``line`` that is told where no field shows it.
    """

    def __init__(self, place: str, mend: str) -> None:
        self.place = place
        self.mend: Message = told(mend)
        self.line = row((place, self.mend), ": ") if place else self.mend
        super().__init__(self.line)

    def under(self, prefix: str) -> Refused:
        """Return the same refusal seen from the value that holds this one."""
        if not self.place:
            return Refused(prefix, self.mend)
        joint = "" if self.place.startswith("[") else "."
        return Refused(f"{prefix}{joint}{self.place}", self.mend)


def demand(holds: bool, place: str, mend: str) -> None:
    """Raise `Refused` unless ``holds``."""
    if not holds:
        raise Refused(place, mend)


def number_in(value: float, low: float, high: float, place: str, unit: str = "") -> None:
    """Demand a finite number in ``[low, high]`` [unit]."""
    if math.isfinite(value) and low <= value <= high:
        return
    if not unit:
        mend = message("{value:g} is outside {low:g} to {high:g}", value=value, low=low, high=high)
    else:
        mend = message(
            "{value:g} {unit} is outside {low:g} to {high:g} {unit}",
            value=value,
            unit=told(unit),
            low=low,
            high=high,
        )
    raise Refused(place, mend)


def plain_name(value: str, place: str, *, most: int = 120) -> None:
    """Demand a printable name without ``/``, which separates part and place."""
    demand(bool(value.strip()), place, "is empty; give it a name")
    demand(value == value.strip(), place, "starts or ends with a blank; remove it")
    if len(value) > most:
        raise Refused(place, message("is longer than {most} characters; shorten it", most=most))
    demand("/" not in value, place, 'must not contain "/"')
    demand(value.isprintable(), place, "contains a control character; remove it")


def all_different(names: Sequence[str], place: str, field: str = "name") -> None:
    """Demand that no name occurs twice, naming the later one."""
    seen: set[str] = set()
    for index, name in enumerate(names):
        if name in seen:
            mend = message('"{name}" occurs twice; rename one', name=name)
            raise Refused(f"{place}[{index}]" + (f".{field}" if field else ""), mend)
        seen.add(name)


def demand_known(name: str, known: Collection[str], kind: str, place: str) -> None:
    """Demand that ``name`` is among the known ones; the nearest is sought only if it is not."""
    if name not in known:
        raise Refused(place, unknown(kind, name, known))


def unknown(kind: str, name: str, known: Iterable[str]) -> Message:
    """Return the sentence for a dangling name, with the nearest known one."""
    near = difflib.get_close_matches(name, list(known), n=1, cutoff=0.4)
    if not near:
        words = sorted(name.casefold().split())
        near = [other for other in known if sorted(other.casefold().split()) == words]
    if not near:
        return message('no {kind} is called "{name}"', kind=told(kind), name=name)
    return message(
        'no {kind} is called "{name}"; did you mean "{near}"?',
        kind=told(kind),
        name=name,
        near=near[0],
    )
