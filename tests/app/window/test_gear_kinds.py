"""The window with gear of any kind: every page is shown."""

from __future__ import annotations

import pytest
from gear_kinds import KINDS, NOW, Kind
from PySide6.QtWidgets import QApplication
from window_steps import MakeWindow, settle

# A window takes its second: those that show most of what can be missing.
SHOWN = (
    "no airbrush",
    "three airbrushes, no brush",
    "no airbrush, too few drying places",
    "no airbrush, no bench time",
    "no airbrush, no steps",
    "aside",
    "nothing at all",
)


@pytest.mark.parametrize("kind", [KINDS[name] for name in SHOWN], ids=SHOWN)
def test_every_page_shows_it(qapp: QApplication, make_window: MakeWindow, kind: Kind) -> None:
    window = make_window(kind.book, NOW)
    for page in window.pages:
        window.show_page(page.name)
        settle(qapp)
        assert window.stack.currentWidget() is not None
    picture = window.session.picture
    if picture is not None:
        assert picture.verdict.accepted
