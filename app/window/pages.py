"""The views of the main window, in the order of the navigation.

A view is a widget with ``set_colours(colours)`` and ``show_picture(picture)``;
one that is there without any plan has ``show_book()`` as well, called after
every edit while it is on screen and whenever it comes on screen, and one
whose shade follows the clock has ``set_now(now)``.  ``prepare`` is the part of
a picture that it shows, read in the background.

A view is imported and made when it is first looked at, so that a start waits
for the first one only.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module
from typing import Any, Protocol

from PySide6.QtWidgets import QWidget

from app.window import words
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot, SnapshotPart
from app.window.session import Session


class View(Protocol):
    """What the main window asks of a view that shows plans."""

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show a plan."""


class Late:
    """A widget of the window that is imported and made when it is first asked for.

    Parameters
    ----------
    where
        Its module below `app.window` and its class, with a colon between.
    given
        What it is made of.
    """

    def __init__(self, where: str, *given: Any) -> None:
        self._where, self._given = where, given
        self._made: Any = None
        self.then: Callable[[Any], None] = lambda _made: None

    @property
    def made(self) -> Any:
        """The widget if it is there, else None."""
        return self._made

    def get(self) -> Any:
        """Return the widget, made and handed to ``then`` the first time."""
        if self._made is None:
            self._made = lately(self._where)(*self._given)
            self.then(self._made)
        return self._made


def lately(where: str) -> Callable[..., Any]:
    """Return a function as `Late` names it, whose module is imported when it is called."""
    module, _, name = where.partition(":")

    def call(*given: Any) -> Any:
        return getattr(import_module(f"app.window.{module}"), name)(*given)

    return call


@dataclass(frozen=True)
class Page:
    """One view, its name with "&" before its key, and what of a picture it shows.

    ``name`` keeps its place in the settings and is never translated;
    ``book_with_plan`` says that `show_book` reads that part, too.  In which room it is,
    and whether it lies in the inspector there, `workspaces` says.
    """

    name: str
    title: str
    late: Late
    prepare: SnapshotPart | None = None
    book_with_plan: bool = False

    @property
    def plain(self) -> str:
        """The title without the mark of its key."""
        return self.title.replace("&", "")

    @property
    def view(self) -> Any:
        """The widget, which is a View, too."""
        return self.late.get()

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

    def of_plan(where: str) -> Late:
        return Late(where)

    def of_book(where: str) -> Late:
        return Late(where, session)

    return (
        Page("tonight", tr("&Tonight"), of_plan("tonight_view:TonightView"), SnapshotPart.SHEET),
        Page(
            "timeline", tr("Ti&meline"), of_book("timeline_page:TimelinePage"), SnapshotPart.STRIP
        ),
        Page("room", tr("D&rying times"), of_plan("room.view:RoomView"), SnapshotPart.CURE),
        Page("stack", tr("&Coat stack"), of_plan("stack.view:StackView"), SnapshotPart.COATS),
        Page("build", tr("B&uild"), of_book("model_editor.view:BuildView"), SnapshotPart.BUILD),
        Page("sequences", tr("Se&quences"), of_book("sequences.view:SequencesView")),
        Page("what if", tr("&What if"), of_book("what_if.view:WhatIfView")),
        Page("wishes", tr("Wish&es"), of_book("wishes.view:WishesView")),
        Page("drying", tr("&Drying now"), of_book("drying.view:DryingView"), SnapshotPart.MOMENTS),
        Page("logbook", tr("&Logbook"), of_book("logbook.view:LogbookView")),
        Page("stock", tr("&Stock"), of_book("stock.view:StockView"), SnapshotPart.SHOPPING, True),
        Page(
            "shopping",
            tr("S&hopping"),
            of_book("shopping.view:ShoppingView"),
            SnapshotPart.SHOPPING,
            True,
        ),
        Page("bench time", tr("&Bench time"), of_book("bench_time.view:BenchTimeView")),
        Page("gear", tr("&Gear"), of_book("gear.view:GearView")),
    )
