"""Stretches filled with work that leaves remnants, held against every way to fill them."""

from __future__ import annotations

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st

from planner.schedule.optimise.packing import last_stretch


def fewest(sizes: tuple[int, ...], lengths: tuple[int, ...]) -> int | None:
    """Return the least number up to which the stretches hold all, by trying every way."""

    def fits(left: tuple[int, ...], rooms: tuple[int, ...]) -> bool:
        if not left:
            return True
        return any(
            room >= left[0] and fits(left[1:], (*rooms[:at], room - left[0], *rooms[at + 1 :]))
            for at, room in enumerate(rooms)
        )

    ways = (at for at in range(len(lengths)) if fits(sizes, lengths[: at + 1]))
    return next(ways, None)


@pytest.mark.parametrize(
    ("sizes", "lengths", "last"),
    [
        # Sums by hand: each line says which stretch, from 0, must hold the last piece.
        ([60, 60, 60], [100] * 4, 2),  # 180 minutes fill less than two, and yet no two share one
        ([50, 50, 50, 50], [100] * 4, 1),
        ([34, 34, 34], [100] * 4, 1),  # two at most
        ([33, 33, 33], [100] * 4, 0),
        ([70, 40, 40, 30], [100] * 4, 1),
        ([70, 70, 40, 40], [100] * 4, 2),  # nothing goes beside the 70s
        ([60, 60], [50, 50, 90, 90], 3),  # the short ones hold none
        ([10], [5, 5], None),
    ],
)
def test_pieces_that_leave_remnants(sizes: list[int], lengths: list[int], last: int | None) -> None:
    assert last_stretch(sizes, lengths) == last


@drawn(300)
@given(
    st.lists(st.integers(1, 20), min_size=1, max_size=7),
    st.lists(st.integers(1, 30), min_size=1, max_size=6),
)
def test_never_above_what_can_be_done(sizes: list[int], lengths: list[int]) -> None:
    possible = fewest(tuple(sorted(sizes, reverse=True)), tuple(lengths))
    found = last_stretch(sizes, lengths)
    assert possible is None or (found is not None and found <= possible)
