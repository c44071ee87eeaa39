"""The size of ordinary text: what the desktop says, and 10.5 points at the least."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication

BASE_PT = 10.5
"""Ordinary text [pt]: 14 pixels on a display of 96 dots per inch; every other size goes by it."""
APART = ("QMenu", "QMenuBar", "QToolButton", "QHeaderView", "QTabBar", "QStatusBar", "QTipLabel")
"""Classes whose letters a desktop may set apart from all others."""


def set_base(app: QApplication) -> None:
    """Let no control write smaller than the base; a person's own larger letters stay."""
    for kind in ("", *APART):
        font = app.font(kind) if kind else app.font()  # type: ignore[call-overload]
        if 0 < font.pointSizeF() < BASE_PT:
            font.setPointSizeF(BASE_PT)
            app.setFont(font, kind or None)  # type: ignore[arg-type]
