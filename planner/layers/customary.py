"""Times that everybody keeps between two pieces of work: the windows of the trade.

They hold beside whatever a person wrote on the step: gates meet, and none
replaces another (definition 6a).  Each row is common practice, no source,
and says so; a label's own recoat windows win over the one for spray cans.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.layers.overcoat_table import COMMON_PRACTICE
from planner.layers.requirement import WHITE_SPIRIT_BORNE
from planner.values.coating import Coating, Family, Mark, State, Window
from planner.values.message import message
from planner.values.step import Bound, Stage, Step, Tool

WIPE_FROM, WIPE_BEST, WIPE_UNTIL = 5, 15, 60
"""An oil wash is wiped back after 5 to 10 minutes at the earliest, best after 10 to 30, and
wiping begins within about an hour, though some wipe hours later: common practice, no
source [min]."""
RUB_UNTIL = 90  # 20 min to 1.5 h: common practice, no source [min]
CAN_AGAIN_UNTIL, CAN_AGAIN_FROM = 20, 1440
"""A second coat from a solvent-borne can goes on within about 20 minutes or after a day;
between them the first wrinkles: common practice, no source [min]."""
FLASH_OFF = 3  # the first coat's shine has gone: assumed [min]

SOLVENT_CANS = frozenset({Family.SOLVENT_LACQUER, Family.ALKYD_ENAMEL})


@dataclass(frozen=True)
class Custom:
    """Windows after the film below was laid, and which end of the work a closing binds."""

    windows: tuple[Window, ...]
    closing: Bound
    why: str
    source: str = COMMON_PRACTICE


WIPE = Custom(
    (
        Window(
            opens=Mark(minutes=WIPE_FROM),
            best=Mark(minutes=WIPE_BEST),
            closes=Mark(minutes=WIPE_UNTIL),
        ),
    ),
    Bound.START,
    message("an oil wash can be wiped back for about an hour, and best after a quarter of one"),
)
RUB = Custom(
    (Window(opens=Mark(state=State.SET_TO_TOUCH), closes=Mark(minutes=RUB_UNTIL)),),
    Bound.END,
    message("the coat over the chipping fluid soon turns too hard to rub"),
)
CAN_AGAIN = Custom(
    (
        Window(opens=Mark(minutes=FLASH_OFF), closes=Mark(minutes=CAN_AGAIN_UNTIL)),
        Window(opens=Mark(minutes=CAN_AGAIN_FROM)),
    ),
    Bound.START,
    message(
        "another coat from a can goes on within 20 minutes or after a day; between, it wrinkles"
    ),
)


def released(step: Step, laid_by: str) -> bool:
    """Tell whether a gate without any time says that custom is past for work on a step's film.

    So what has been missed is done late, in another way (definition 22).
    """
    return any(gate.after == laid_by and gate.windows == (Window(),) for gate in step.gates)


def after_film(step: Step, below: Coating, laid_by: Step, fluid: bool) -> Custom | None:
    """Return what custom asks of work on the top film of a place, or None.

    Parameters
    ----------
    below, laid_by
        Coating of that film, and the step that laid it.
    fluid
        Whether chipping fluid lies somewhere under it, or it is fluid itself.
    """
    if released(step, laid_by.id):
        return None
    if step.stage is Stage.WIPE and below.family in WHITE_SPIRIT_BORNE:
        return WIPE
    if step.stage is Stage.CHIP_RUB and fluid:
        return RUB
    return None


def can_again(step: Step, laid: Coating | None, below: Coating, laid_by: Step) -> Custom | None:
    """Return the windows of a second coat of the same can, or None; a label's own win."""
    if laid is None or below.recoat or laid.name != below.name:
        return None
    cans = step.tool is Tool.CAN and laid_by.tool is Tool.CAN
    return CAN_AGAIN if cans and laid.family in SOLVENT_CANS else None
