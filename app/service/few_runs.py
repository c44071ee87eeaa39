"""What a few runs already tell, so that the many are kept for what they can still decide.

The draws of few runs are the first of the many, so that each run has its
twin; what is bounded here is what all runs would say.

References
----------
Law, Simulation Modeling and Analysis, 5th ed., section 10.2.1: confidence
interval of paired differences.  Hanley and Lippman-Hand, "If nothing goes
wrong, is everything all right?", JAMA 249 (1983): three in n, where n runs
show none.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from planner.chance.draws import Floats
from planner.chance.odds import FinishOdds, Odds
from planner.values.moment import FOREVER

STAGES = (100, 400)  # so many runs first: assumed
LEAST_MORE = 5  # but no fewer than a fifth of all: below that it saves nothing: assumed
SIGMAS = 2.5  # one decision in 160 goes wrong by luck, if errors are normal: assumed
DAY = 1440


class Most(NamedTuple):
    """The most that a plan can still buy: days, and chance of the least sure date or None."""

    days: float
    chance: float | None


def stages(runs: int) -> tuple[int, ...]:
    """Return with how many runs to look before all of them go.

    Examples
    --------
    >>> stages(2000), stages(400)
    ((100, 400), ())
    """
    return tuple(few for few in STAGES if few * LEAST_MORE <= runs)


def most(before: Odds, after: Odds) -> Most:
    """Return the most that a plan may buy, from all runs before and some of them after."""
    count = after.runs
    bound = _days(before.together, after.together, count)
    known = {one.project: one for one in after.projects}
    chances = []
    for was in before.projects:
        is_ = known.get(was.project)
        if is_ is None or was.made is None or is_.made is None or was.in_time is None:
            continue
        gain = is_.made.astype(float) - was.made[:count]
        chances.append(was.in_time + max(_upper(gain), float(gain.mean()) + 3 / count))
    dated = [one.in_time for one in before.projects if one.in_time is not None]
    return Most(bound, min(chances) - min(dated) if chances and dated else None)


def decided(share: float, runs: int, wanted: float) -> bool:
    """Tell whether so many runs tell surely on which side of a wanted share all of them lie.

    Examples
    --------
    >>> decided(0.5, 100, 0.8), decided(0.75, 100, 0.8)
    (True, False)
    """
    error = SIGMAS * float(np.sqrt(wanted * (1 - wanted) / runs))
    return abs(share - wanted) > error


def _days(before: FinishOdds, after: FinishOdds, count: int) -> float:
    """Return the most days gained on average; what never ends counts as the last that does."""
    assert before.by_run is not None
    assert after.by_run is not None
    both = np.concatenate((before.by_run, after.by_run))
    ended = both[both < FOREVER]
    last = ended.max() if ended.size else 0
    was, is_ = np.minimum(before.by_run[:count], last), np.minimum(after.by_run, last)
    return _upper((was - is_) / DAY)


def _upper(gain: Floats) -> float:
    return float(gain.mean() + SIGMAS * gain.std(ddof=1) / np.sqrt(len(gain)))
