"""What one plan does differently from another."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import BenchCalendar
from planner.values.plan import PassKey, Plan


@dataclass(frozen=True)
class PlanMove:
    """A pass whose start changed; None stands for "not placed"."""

    key: PassKey
    before: int | None
    after: int | None

    @property
    def minutes(self) -> int | None:
        """How much later it starts [min], negative for earlier; None if it came or went."""
        if self.before is None or self.after is None:
            return None
        return self.after - self.before

    def to_other_stretch(self, calendar: BenchCalendar) -> bool:
        """Tell whether it left its stretch of bench time."""
        if self.before is None or self.after is None:
            return True
        return calendar.stretch_at(self.before) != calendar.stretch_at(self.after)


def moved(old: Plan, new: Plan) -> tuple[PlanMove, ...]:
    """Return every pass that starts at another minute, in order of the new plan.

    Facts do not move, and passes of which only one of the plans has heard
    are left out: they are news, not moves.
    """
    was = {placed.key: placed.start for placed in old.placements}
    now = {placed.key: placed.start for placed in new.placements if not placed.logged}
    was_out = {unplaced.key for unplaced in old.unplaced}
    now_out = {unplaced.key for unplaced in new.unplaced}
    moves = [
        PlanMove(key, was.get(key), start)
        for key, start in now.items()
        if was.get(key, start) != start or key in was_out
    ]
    moves += [PlanMove(key, was[key], None) for key in sorted(now_out) if key in was]
    return tuple(
        sorted(
            moves, key=lambda move: (move.after is None, move.after or move.before or 0, move.key)
        )
    )
