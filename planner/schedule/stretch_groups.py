"""What is wished to begin in one stretch, bound together."""

from __future__ import annotations


class Groups:
    """Activities bound together, each in one group at most."""

    def __init__(self) -> None:
        self._of: dict[int, list[int]] = {}

    def bind(self, indices: list[int]) -> None:
        """Put all of these, and what they are bound to, into one group."""
        joined = sorted({other for index in indices for other in self.of(index)})
        for index in joined:
            self._of[index] = joined

    def of(self, index: int) -> list[int]:
        """Return the group of an activity, itself included."""
        return self._of.get(index, [index])
