"""What lies beside each room before the pages that do; made when it is looked at."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.window import words
from app.window.air_panel import AirPanel
from app.window.evenings_panel import EveningsPanel
from app.window.inspector import Panel
from app.window.pages import Late
from app.window.plan_changes_panel import MovedPanel
from app.window.room_frame import RoomFrame, hours_and_air, scrolling
from app.window.shell import Shell


def fill_inspector(
    frame: RoomFrame,
    window: Shell,
    chances: Late,
    moved: MovedPanel,
    hours: tuple[AirPanel, EveningsPanel],
) -> None:
    """Say what lies beside each room."""
    tr = words.tr
    what_moved = scrolling(tr("What moved"), moved)

    def aside() -> QWidget:
        widget: QWidget = window.page("tonight").view.aside
        return widget

    def details() -> QWidget:
        widget: QWidget = window.page("timeline").view.details
        return widget

    frame.hold("tonight", [Panel("dries", tr("Drying now"), aside)])
    frame.hold(
        "plan",
        [
            Panel("piece", tr("Piece"), details),
            Panel("chance", tr("How sure"), chances.get),
            Panel("moved", tr("Moved"), lambda: what_moved),
        ],
    )
    frame.hold("bench", [hours_and_air(tr("Air and evenings"), *hours)])
