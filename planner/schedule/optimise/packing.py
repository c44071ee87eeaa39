"""How many stretches work of some sizes fills, remnants that take none of it counted.

A function that is never below 0, never falls and gives two numbers together
no more than their sum turns minutes into other minutes without making a sound
share-out impossible: what fills a stretch fills it still.  So the sums of
what it gives must fit, too, and for work that leaves remnants they say more
than the minutes themselves.

References
----------
S. Martello and P. Toth (1990), Knapsack Problems, Wiley, section 8.3: small,
middle and large items (their bound L2).
S. P. Fekete and J. Schepers (2001), "New classes of fast lower bounds for bin
packing problems", Mathematical Programming 91, 11-31: such functions in
general.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial

Turned = Callable[[int], int]  # minutes to other minutes
MOST_SHARES = 20  # into so many pieces of one size a stretch is thought cut


def last_stretch(sizes: Sequence[int], lengths: Sequence[int]) -> int | None:
    """Return the first number up to which stretches may hold work of these sizes.

    None where nothing that is known here lets all of ``lengths`` hold it.

    Examples
    --------
    >>> last_stretch([60, 60, 60], [100, 100, 100, 100])
    2
    """
    most = 0
    for turned in _functions(sizes, max(lengths, default=0)):
        left = sum(turned(size) for size in sizes)
        for number, length in enumerate(lengths):
            left -= turned(length)
            if left <= 0:
                most = max(most, number)
                break
        else:
            return None
    return most


def _functions(sizes: Iterable[int], longest: int) -> Iterator[Turned]:
    """Yield what turns minutes of work that is never longer than ``longest``."""
    different = sorted(set(sizes))
    for small in different:
        if 2 * small <= longest:
            yield partial(_three_kinds, small, longest)
    shares = (longest // pieces + 1 for pieces in range(1, MOST_SHARES + 1))
    for whole in sorted({*different, *shares}):
        yield partial(_times, whole)


def _three_kinds(small: int, longest: int, minutes: int) -> int:
    """Let what is below ``small`` vanish, and what leaves no room for that fill all."""
    if minutes > longest - small:
        return longest
    return minutes if minutes >= small else 0


def _times(whole: int, minutes: int) -> int:
    return minutes // whole
