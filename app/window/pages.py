"""The views of the main window, in the order of the navigation.

A view is a widget with ``set_colours(colours)`` and ``show_picture(picture)``;
one that is there without any plan has ``show_book()`` as well, called after
every edit while it is on screen and whenever it comes on screen.  ``prepare``
is the part of a picture that it shows, read in the background.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Protocol

from PySide6.QtWidgets import QWidget

from app.window import words
from app.window.bench_time.view import BenchTimeView
from app.window.build.view import BuildView
from app.window.drying.view import DryingView
from app.window.gear.view import GearView
from app.window.logbook.view import LogbookView
from app.window.palette import Colours
from app.window.picture import Part, Picture
from app.window.room.view import RoomView
from app.window.sequences.view import SequencesView
from app.window.session import Session
from app.window.shopping.view import ShoppingView
from app.window.stack.view import StackView
from app.window.stock.view import StockView
from app.window.timeline_page import TimelinePage
from app.window.tonight_view import TonightView
from app.window.what_if.view import WhatIfView
from app.window.wishes.view import WishesView


class View(Protocol):
    """What the main window asks of a view that shows plans."""

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""

    def show_picture(self, picture: Picture) -> None:
        """Show a plan."""


@dataclass(frozen=True)
class Page:
    """One view, its name with "&" before its key, and what of a picture it shows.

    ``name`` keeps its place in the settings and is never translated.
    """

    name: str
    title: str
    view: Any  # a widget that is a View, too
    prepare: Part | None = None

    @property
    def widget(self) -> QWidget:
        """The view as a widget."""
        assert isinstance(self.view, QWidget)
        return self.view

    @property
    def without_plan(self) -> bool:
        """Tell whether it has something to show where nothing is planned."""
        return hasattr(self.view, "show_book")


def make_pages(session: Session) -> tuple[Page, ...]:
    """Return every view of the window."""
    tr = words.tr
    return (
        Page("tonight", tr("&Tonight"), TonightView(), Part.SHEET),
        Page("timeline", tr("T&imeline"), TimelinePage(session), Part.STRIP),
        Page("room", tr("&Room"), RoomView(), Part.CURE),
        Page("stack", tr("&Coat stack"), StackView(), Part.FINDINGS),
        Page("build", tr("B&uild"), BuildView(session), Part.BUILD),
        Page("sequences", tr("Se&quences"), SequencesView(session)),
        Page("what if", tr("&What if"), WhatIfView(session)),
        Page("wishes", tr("W&ishes"), WishesView(session)),
        Page("drying", tr("&Drying now"), DryingView(session), Part.LAID),
        Page("logbook", tr("&Logbook"), LogbookView(session)),
        Page("stock", tr("&Stock"), StockView(session), Part.SHOPPING),
        Page("shopping", tr("S&hopping"), ShoppingView(session), Part.SHOPPING),
        Page("bench time", tr("&Bench time"), BenchTimeView(session)),
        Page("gear", tr("&Gear"), GearView(session)),
    )
