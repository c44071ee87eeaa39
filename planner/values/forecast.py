"""Dates that were said of a project."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Forecast:
    """Dates that were said of a project.

    Attributes
    ----------
    made
        When they were said.
    half, most, nearly
        Minutes by which half, four fifths and 95 % of the runs were finished.
    scale
        Factor on the spread that they were drawn with.
    """

    project: str
    made: int
    half: int
    most: int
    nearly: int
    scale: float = 1.0

    @property
    def said(self) -> tuple[int, int, int]:
        """The three dates."""
        return self.half, self.most, self.nearly
