"""What the rules share while one plan is judged."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

from planner.schedule.judge.films import Films
from planner.schedule.judge.premises import Case
from planner.schedule.judge.verdict import Violation

Rule = Callable[["Ruling"], Iterable[Violation]]


class Ruling:
    """One plan, its films, and the flags that the rules raise."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.premises = case.premises
        self.films = Films(case)
        self.flags: dict[str, None] = {}
        self._found: dict[Rule, tuple[Violation, ...]] = {}

    def flag(self, text: str) -> None:
        """Note something allowed that a person should know."""
        self.flags.setdefault(text)

    def of(self, check: Rule, definition: int) -> Iterator[Violation]:
        """Yield what a check shared by several definitions finds against one of them."""
        if check not in self._found:
            self._found[check] = tuple(check(self))
        return (found for found in self._found[check] if found.definition == definition)
