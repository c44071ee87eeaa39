"""The bare problem in the words of a general-purpose scheduling library.

Hands and airbrush are machines, and the time between evenings a break of the
hands.  A coat that goes on within 2 h or after 24 is two tasks of which one
is chosen.  Set-ups are stated as the library knows them: least times between
two tasks on the airbrush.  They take no hands and may fall between evenings;
the first load and the cleaning of an evening cannot be stated and are left
out, which only helps it.
"""

from __future__ import annotations

from importlib.util import find_spec
from itertools import pairwise
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from plain_check import Starts
    from plain_tasks import Batch, Task

LEAVES_OUT = "no loads or cleanings; changes take no hands and may fall between evenings"
MISSING = "the scheduling library is not installed: pip install -e '.[bench]'"


def installed() -> bool:
    """Tell whether the library is there."""
    return find_spec("pyjobshop") is not None


class Stated:
    """A batch as a model of the library."""

    def __init__(self, batch: Batch) -> None:
        from pyjobshop import Model

        self.batch = batch
        self.model = Model()
        self.zero = batch.evenings[0][0]
        closed = [(evening[1], two[0]) for evening, two in pairwise(batch.evenings)]
        breaks = [(start - self.zero, end - self.zero) for start, end in closed]
        self.hands = self.model.add_machine(breaks=breaks)
        self.airbrush = self.model.add_machine()
        self.horizon = batch.evenings[-1][1] - self.zero
        self.ways: dict[tuple[int, int], list[Any]] = {}
        for vehicle, chain in enumerate(batch.chains):
            for at, task in enumerate(chain):
                self.ways[vehicle, at] = self._tasks(task)
                if at:
                    self._wait(task, self.ways[vehicle, at - 1], self.ways[vehicle, at])
        self._changes()

    def _tasks(self, task: Task) -> list[Any]:
        """Return one task for each window, of which one is done."""
        several = len(task.windows) > 1
        found = []
        for _ in task.windows:
            one = self.model.add_task(latest_end=self.horizon, optional=several)
            machines = [self.hands, self.airbrush] if task.colour else [self.hands]
            self.model.add_mode(one, machines, task.minutes)
            found.append(one)
        if several:
            self.model.add_select_exactly_one(found)
        return found

    def _wait(self, task: Task, before: list[Any], after: list[Any]) -> None:
        for (least, most), own in zip(task.windows, after, strict=True):
            for earlier in before:
                self.model.add_end_before_start(earlier, own, least)
                if most is not None:
                    self.model.add_start_before_start(own, earlier, 1 - most)
                if task.ends_within is not None:
                    self.model.add_end_before_start(own, earlier, -task.ends_within)

    def _changes(self) -> None:
        sprays = [
            (self.batch.chains[vehicle][at], way)
            for (vehicle, at), ways in self.ways.items()
            if self.batch.chains[vehicle][at].colour
            for way in ways
        ]
        for before, spray in sprays:
            for after, other in sprays:
                if before.colour != after.colour:
                    alike = before.family == after.family
                    minutes = self.batch.same if alike else self.batch.other
                    self.model.add_setup_time(self.airbrush, spray, other, minutes)

    def starts(self, result: Any) -> Starts:
        """Return the starts of a result [min]."""
        scheduled = dict(zip(map(id, self.model.tasks), result.best.tasks, strict=True))
        return {
            spot: self.zero + next(s.start for way in ways if (s := scheduled[id(way)]).present)
            for spot, ways in self.ways.items()
        }
