"""Every number of the simulation for which a person's own logbook has no figure yet.

One table; the draws take their numbers from here, so none is assumed
elsewhere.  What the logbook teaches takes their place, as far as it goes.
"""

from __future__ import annotations

from planner.cure.assumptions import Assumption
from planner.values.step import Stage

ASSUMED: dict[str, Assumption] = {
    "runs": Assumption(2000, "-", "puts one standard error of a share below 1.2 % of all runs"),
    "surely": Assumption(
        1.645, "s.d.", "what surely is dry by the late end of its band is dry in 19 of 20 films"
    ),
    "room share": Assumption(
        0.5, "-", "of the variance of drying: the air differs from what was told for all alike"
    ),
    "bottle share": Assumption(
        0.25, "-", "of the variance of drying: one coating against its label; the rest is a film's"
    ),
    "session lost": Assumption(1 / 12, "-", "one session in twelve does not take place"),
    "sessions' worth": Assumption(12, "sessions", "evidence that the lost share is taken for"),
    "passes' worth": Assumption(30, "passes", "evidence that a rate of redoing is taken for"),
    "redone": Assumption(0.03, "-", "of all passes whose stage is not named in the table below"),
    "finishes": Assumption(
        30, "min", "what was begun is finished so long past the end; the rest is done next time"
    ),
    "patience": Assumption(
        15, "min", "hands wait so much longer than planned before something else is done first"
    ),
    "set-up": Assumption(0.25, "ln", "one load or cleaning against another, as of one pass"),
}

REDONE: dict[Stage, float] = {
    Stage.DECAL: 0.05,  # silvering, a torn carrier
    Stage.PRESS: 0.01,
    Stage.MASK: 0.02,
    Stage.UNMASK: 0.05,  # paint has crept below or come off with the tape
    Stage.CAMO: 0.05,
    Stage.VARNISH: 0.03,
    Stage.MATTE: 0.04,  # frosting
    Stage.CHIP_RUB: 0.04,
    Stage.PRIME: 0.02,
    Stage.TURN: 0.0,
    Stage.CLEAN: 0.0,
    Stage.JOIN: 0.01,
    Stage.WIPE: 0.01,
}
"""Share of passes that are done over again, by stage: assumed."""


def assumed(name: str) -> float:
    """Return one assumed number.

    Examples
    --------
    >>> assumed("surely")
    1.645
    """
    return ASSUMED[name].value
