"""The corners of the wedge that thins while a film dries; no Qt."""

from __future__ import annotations


def wedge_outline(
    left: float,
    right: float,
    middle: float,
    height: float,
    cut: float,
    begin: float | None = None,
) -> list[tuple[float, float]]:
    """Return the corners of a wedge that thins from ``left`` to ``right``.

    It is seen from ``begin``, at first its left end, up to ``cut``.
    """
    right = max(right, left + 1)
    end = min(max(cut, left), right)
    first = left if begin is None else min(max(begin, left), end)
    half = height / 2
    rest, full = (half * (right - x) / (right - left) for x in (end, first))
    return [
        (first, middle - full),
        (end, middle - rest),
        (end, middle + rest),
        (first, middle + full),
    ]
