"""What menus and pages ask of the window that they are in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QDockWidget, QSplitter, QStackedWidget

    from app.window.evening_actions import EveningActs
    from app.window.files import Files
    from app.window.improving import Improving
    from app.window.pages import Page
    from app.window.palette import Appearance
    from app.window.session import Session
    from planner.layers.finding import Finding
    from planner.values.plan import PassKey


class Shell(Protocol):
    """The frame around menus, pages and dock; `MainWindow` is one."""

    session: Session
    settings: QSettings
    stack: QStackedWidget
    files: Files
    acts: EveningActs
    improving: Improving
    dock: QDockWidget
    splitter: QSplitter
    shown_view: int

    @property
    def pages(self) -> tuple[Page, ...]:
        """Every page, in the order of the navigation."""

    @property
    def ways_to_a_book(self) -> tuple[QAction, QAction]:
        """Opening a book, and beginning one."""

    def page(self, name: str) -> Page:
        """Return a page by its name."""

    def show_page(self, name: str) -> None:
        """Bring a page to the front."""

    def show_view(self, number: int) -> None:
        """Bring the page of this place in the navigation to the front."""

    def show_piece(self, key: PassKey) -> None:
        """Show a piece of work on the timeline."""

    def go_to_bench(self) -> None:
        """Open the bench mode."""

    def back_from_bench(self) -> None:
        """Close the bench mode."""

    def set_look(self, look: Appearance) -> None:
        """Paint in the colours that a person wants."""

    def say(self, message: str) -> None:
        """Tell something in the line at the foot."""

    def tell(self, message: str) -> None:
        """Tell what opens or closes, wherever the person looks."""

    def take_back(self, key: PassKey) -> None:
        """Take back what was noted of a piece of work."""

    def mend(self, finding: Finding) -> None:
        """Make the mend of a finding."""

    def close(self) -> bool:
        """Close the window."""
