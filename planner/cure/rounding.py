"""Computed minutes as people see them."""

from __future__ import annotations

FINE_BELOW = 120
FINE, COARSE = 5, 15


def shown_minutes(minutes: int, *, up: bool = True) -> int:
    """Return minutes rounded to 5 under two hours and to 15 above.

    Times until something opens round up, times until it closes down, so
    that rounding never makes anybody come too soon or too late.

    Examples
    --------
    >>> shown_minutes(61), shown_minutes(121), shown_minutes(121, up=False)
    (65, 135, 120)
    """
    step = FINE if minutes < FINE_BELOW else COARSE
    return -(-minutes // step) * step if up else minutes // step * step
