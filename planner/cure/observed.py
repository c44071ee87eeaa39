"""What a look at a film says of how fast it dries."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from planner.cure.film import Cure, Film
from planner.cure.kinetics import Band
from planner.values.moment import minute_of
from planner.values.project import Observed

STILL_TO_GO = 0.1  # of the time it has had, at least, where a film is not there yet: assumed
SLOWEST, FASTEST = 20.0, 0.05


def observed_film(cure: Cure, film: Film, seen: Iterable[Observed]) -> Film:
    """Return ``film`` as slow or fast as those who looked at it found it.

    A state not reached when it was looked at lies at least a tenth of the
    film's age ahead; a state that was reached is open from then on, late
    band included.  Later looks count for more than earlier ones.

    Parameters
    ----------
    seen
        Looks at this very film, in any order.
    """
    for look in sorted(seen, key=lambda one: one.at):
        minute = minute_of(look.at)
        if look.reached:
            ready = cure.ready_at(film, look.state, Band.LATE)
            if ready is not None and ready <= minute:
                continue
            factor = _found(cure, film, look, minute, Band.LATE)
        else:
            ready = cure.ready_at(film, look.state, Band.EARLY)
            if ready is None or ready > minute:
                continue  # nobody expected it yet
            factor = _found(cure, film, look, minute, Band.NOMINAL) * (1 + STILL_TO_GO)
        film = replace(film, slowness=min(SLOWEST, max(FASTEST, factor)))
    return film


def _found(cure: Cure, film: Film, look: Observed, minute: int, band: Band) -> float:
    """Return the slowness with which the film would just reach the state at ``minute``."""
    low, high = FASTEST, SLOWEST
    for _ in range(40):
        middle = (low * high) ** 0.5
        ready = cure.ready_at(replace(film, slowness=middle), look.state, band)
        if ready is not None and ready <= minute:
            low = middle
        else:
            high = middle
    return low
