"""Choices of options such that every two options that can meet do meet in one of them."""

from __future__ import annotations

from itertools import combinations, product

from planner.sequences.chosen_options import choices_of
from planner.values.sequence import Sequence

Row = tuple[str, ...]


def axes_of(sequence: Sequence) -> list[tuple[str, ...]]:
    """Return what can be chosen one of: each choice, and each option or "" for without it."""
    axes = [tuple(one.name for one in group) for group in choices_of(sequence).values()]
    return axes + [("", option.name) for option in sequence.options if not option.choice]


def every_choice(sequence: Sequence) -> list[Row]:
    """Return every combination of options."""
    return [tuple(filter(None, row)) for row in product(*axes_of(sequence))]


def pairwise(sequence: Sequence) -> list[Row]:
    """Return few combinations that together hold every pair of options of unlike axes."""
    axes = axes_of(sequence)
    wanted = {
        ((combination, a), (other, b))
        for combination, other in combinations(range(len(axes)), 2)
        for a, b in product(axes[combination], axes[other])
    }
    rows: list[Row] = []
    while wanted:
        row = dict(min(wanted))
        for at, axis in enumerate(axes):
            if at not in row:
                row[at] = max(axis, key=lambda value: _met(wanted, row | {at: value}))
        wanted -= {pair for pair in wanted if all(row[at] == value for at, value in pair)}
        rows.append(tuple(filter(None, (row[at] for at in range(len(axes))))))
    return rows


def _met(wanted: set[tuple[tuple[int, str], tuple[int, str]]], row: dict[int, str]) -> int:
    return sum(all(row.get(at) == value for at, value in pair) for pair in wanted)
