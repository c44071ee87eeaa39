"""One way to refuse bad input: the place, and the mend."""

from __future__ import annotations

import difflib
import math
from collections.abc import Collection, Iterable, Sequence


class Refused(ValueError):  # noqa: N818 - it is an answer to a person, not a fault of ours
    """A value that cannot be accepted.

    Parameters
    ----------
    place
        Dotted path to the offending value, relative to the value that was
        being built (``"coats"``, ``"steps[4].applications[0].coating"``).
    mend
        One line that says what is wrong and what would be right.
    """

    def __init__(self, place: str, mend: str) -> None:
        super().__init__(f"{place}: {mend}" if place else mend)
        self.place = place
        self.mend = mend

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
    shown = f" {unit}" if unit else ""
    demand(
        math.isfinite(value) and low <= value <= high,
        place,
        f"{value:g}{shown} is outside {low:g} to {high:g}{shown}",
    )


def plain_name(value: str, place: str, *, most: int = 120) -> None:
    """Demand a printable name without ``/``, which separates part and place."""
    demand(bool(value.strip()), place, "is empty; give it a name")
    demand(value == value.strip(), place, "starts or ends with a blank; remove it")
    demand(len(value) <= most, place, f"is longer than {most} characters; shorten it")
    demand("/" not in value, place, 'must not contain "/"')
    demand(value.isprintable(), place, "contains a control character; remove it")


def all_different(names: Sequence[str], place: str, field: str = "name") -> None:
    """Demand that no name occurs twice, naming the later one."""
    seen: set[str] = set()
    for index, name in enumerate(names):
        demand(name not in seen, f"{place}[{index}].{field}", f'"{name}" occurs twice; rename one')
        seen.add(name)


def demand_known(name: str, known: Collection[str], kind: str, place: str) -> None:
    """Demand that ``name`` is among the known ones; the nearest is sought only if it is not."""
    if name not in known:
        raise Refused(place, unknown(kind, name, known))


def unknown(kind: str, name: str, known: Iterable[str]) -> str:
    """Return the sentence for a dangling name, with the nearest known one."""
    near = difflib.get_close_matches(name, list(known), n=1, cutoff=0.4)
    if not near:
        words = sorted(name.casefold().split())
        near = [other for other in known if sorted(other.casefold().split()) == words]
    hint = f'; did you mean "{near[0]}"?' if near else ""
    return f'no {kind} is called "{name}"{hint}'
