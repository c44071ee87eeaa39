"""How sure each end and date is, as bands on the overview."""

from __future__ import annotations

from PySide6.QtGui import QPainter

from app.window.chance_band import paint_band
from app.window.timeline.overview_layout import GUTTER
from app.window.timeline.overview_scene import OverviewScene

HIGH = 4.0  # of a band [px]
ROOM = GUTTER - 5  # right of the last session, for all that lies after it [px]


def paint_bands(painter: QPainter, scene: OverviewScene) -> None:
    """Paint a band at the foot of each model's lane, and of each project's date at the head.

    What lies after the last session of the plan is pressed into the gutter
    right of it, all of it to one measure.
    """
    for lane in scene.at.lanes:
        minutes = scene.sure.get(lane.at)
        if minutes is not None:
            top = scene.edges.top + lane.bottom - HIGH - 3
            paint_band(painter, scene.colours, band_xs(scene, minutes), top, HIGH)
    for number, (project, _) in enumerate(scene.at.strip.targets):
        minutes = scene.sure.get((project, ""))
        if minutes is not None:
            top = 6 + number * (HIGH + 6)
            paint_band(painter, scene.colours, band_xs(scene, minutes), top, HIGH)


def band_xs(scene: OverviewScene, minutes: tuple[int, int, int]) -> tuple[float, float, float]:
    """Return where three dates lie."""
    half, likely, nearly = (pressed_x(scene, minute) for minute in minutes)
    return half, likely, nearly


def pressed_x(scene: OverviewScene, minute: int) -> float:
    """Return where a minute lies; after the last session all dates share the gutter's measure."""
    columns = scene.at.strip.columns
    end = columns[-1].interval.end if columns else scene.now
    if minute <= end:
        return scene.x(minute)
    bands = [nearly for _, _, nearly in scene.sure.values()]
    last = max([minute, *bands, *(at for _, at in scene.at.strip.targets)])
    return scene.x(end) + ROOM * (minute - end) / (last - end)
