"""What the rules share while one plan is judged."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import TypeVar, cast

from planner.schedule.judge.films import Films
from planner.schedule.judge.premises import Case
from planner.schedule.judge.verdict import Violation

Rule = Callable[["Ruling"], Iterable[Violation]]
T = TypeVar("T")


class Ruling:
    """One plan, its films, and the flags that the rules raise."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.premises = case.premises
        self.films = Films(case)
        self.flags: dict[str, None] = {}
        self._known: dict[object, object] = {}

    def flag(self, text: str) -> None:
        """Note something allowed that a person should know."""
        self.flags.setdefault(text)

    def of(self, check: Rule, definition: int) -> Iterator[Violation]:
        """Yield what a check shared by several definitions finds against one of them."""
        found = self._known.get(check)
        if found is None:
            found = self._known[check] = tuple(check(self))
        return (one for one in cast("tuple[Violation, ...]", found) if one.definition == definition)

    def once(self, ask: Callable[[Ruling], T]) -> T:
        """Return what a function says of this plan, asking it only the first time."""
        if ask not in self._known:
            self._known[ask] = ask(self)
        return cast("T", self._known[ask])
