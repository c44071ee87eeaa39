"""How thick a film a step really leaves: touches carry little paint."""

from __future__ import annotations

from planner.cure.assumptions import assumed
from planner.values.coating import Coating
from planner.values.step import Stage, Step, Tool

_TOUCH_UM = {
    Stage.DRY_BRUSH: assumed("touch, dry-brush"),
    Stage.CHIP: assumed("touch, sponge"),
    Stage.WASH: assumed("touch, wash"),
    Stage.OIL_WASH: assumed("touch, wash"),
    Stage.FILTER: assumed("touch, filter"),
}


def film_um(step: Step, coating: Coating) -> float:
    """Return the dry film that one coat of ``step`` leaves [µm].

    The coating's own, but no more than a touch carries: a dry brush, a
    sponge, a wash or a filter.  It dries by the paint that it carries.
    """
    most = _TOUCH_UM.get(step.stage)
    if most is None and step.tool is Tool.SPONGE:
        most = assumed("touch, sponge")
    return coating.dry_film_um if most is None else min(coating.dry_film_um, most)
