"""What menus and pages ask of the window that they are in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QSplitter, QStackedWidget

    from app.window.evening_actions import EveningActs
    from app.window.files import Files
    from app.window.improving import Improving
    from app.window.pages import Page
    from app.window.palette import Appearance
    from app.window.session import Session
    from app.window.workspaces import Workspace
    from planner.layers.finding import Finding
    from planner.values.keys import ModelKey
    from planner.values.plan import PassKey


class Shell(Protocol):
    """The frame around menus, rooms and inspector; `MainWindow` is one."""

    session: Session
    settings: QSettings
    stack: QStackedWidget
    files: Files
    acts: EveningActs
    improving: Improving
    splitter: QSplitter
    workspaces: tuple[Workspace, ...]

    @property
    def shown_view(self) -> int:
        """The place among `pages` of the one that was gone to."""

    @property
    def pages(self) -> tuple[Page, ...]:
        """Every page, in the order of the rooms' menu."""

    @property
    def ways_to_a_book(self) -> tuple[QAction, QAction]:
        """Opening a book, and beginning one."""

    def page(self, name: str) -> Page:
        """Return a page by its name."""

    def show_page(self, name: str) -> None:
        """Bring a page to the front."""

    def show_view(self, number: int) -> None:
        """Bring the page of this place among `pages` to the front."""

    def show_room(self, number: int) -> None:
        """Go to a room, to its first page."""

    def turn_page(self, by: int) -> None:
        """Go to another page of the room on screen."""

    def go_back(self) -> None:
        """Go back to the page that was in front before."""

    def toggle_inspector(self) -> None:
        """Fold the inspector of the room away, or bring it back."""

    def call_inspector(self) -> None:
        """Bring the inspector of the room because something was chosen."""

    def dismiss_inspector(self) -> None:
        """Let the inspector go until something is chosen again."""

    def change_air(self) -> None:
        """Show the fields of the air, or put them away."""

    def show_chosen(self) -> None:
        """Show what is known of the piece chosen on the timeline, and let the keys go there."""

    def chosen_models(self) -> tuple[ModelKey, ...]:
        """Return the models that are chosen on the page in front."""

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

    def tell_how_sure(self) -> None:
        """Tell at the head of tonight and of the plan how sure the date is."""

    def take_back(self, key: PassKey) -> None:
        """Take back what was noted of a piece of work."""

    def mend(self, finding: Finding) -> None:
        """Make the mend of a finding."""

    def close(self) -> bool:
        """Close the window."""
