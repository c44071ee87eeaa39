"""Which page is in front: gone to, turned, brought back, and shown the newest plan."""

from __future__ import annotations

from typing import Any

from PySide6.QtWidgets import QWidget

from app.window.commands import Commands
from app.window.pages import Page
from app.window.room_frame import RoomFrame
from app.window.shell import Shell
from app.window.views import Views
from planner.values.keys import ModelKey

AT_ONCE = 300  # pieces of work of which every part is read within 100 ms


class PageTurning:
    """The pages of a window, one of them in front in the room on screen.

    Parameters
    ----------
    blank
        What is in front until there is a book.

    Attributes
    ----------
    shown
        The place among all pages of the one that was gone to.
    stale
        Names of pages that do not show the newest plan yet.
    """

    def __init__(
        self, window: Shell, frame: RoomFrame, views: Views, commands: Commands, blank: QWidget
    ) -> None:
        self._window, self._frame = window, frame
        self._views, self._commands, self._blank = views, commands, blank
        self._session, self._stack = window.session, window.stack
        self._turning = False
        self._was = 0
        self.shown = 0
        self.stale: set[str] = set()

    @property
    def page(self) -> Page:
        """The page that was gone to."""
        return self._views.pages[self.shown]

    def go_to(self, number: int) -> None:
        """Go to a page, in its room; one that lies in the inspector opens that."""
        page, laid = self._views.pages[number], self._stack.layout()
        assert laid is not None
        laid.setEnabled(False)  # the page that goes is not laid out for the room of the next
        try:
            if number != self.shown:
                self._was = self.shown
            self._mark(number)
            self._session.show_first(page.prepare)
            self.choose()
        finally:
            laid.setEnabled(True)
        self._frame.desk.settle()
        laid.setGeometry(self._stack.contentsRect())
        shown = self._stack.currentWidget()  # where nothing is planned, the first questions
        if self._frame.beside() == page.name:
            page.widget.setFocus()
        elif shown is not None:
            shown.setFocus()

    def give_keys_to_page(self) -> None:
        """Let the keys go to the page in front."""
        shown = self._stack.currentWidget()
        if shown is not None:
            shown.setFocus()

    def _mark(self, number: int) -> None:
        self.shown = number
        self._commands.views[number].setChecked(True)
        self._turning = True
        self._frame.show_page(self._views.pages[number].name)
        self._turning = False
        room = self._window.workspaces.index(self._frame.workspace)
        self._commands.rooms[room].setChecked(True)

    def go_to_name(self, name: str) -> None:
        """Go to the page of a name."""
        self.go_to([page.name for page in self._views.pages].index(name))

    def go_to_room(self, number: int) -> None:
        """Go to a room, to its first page."""
        self.go_to_name(self._frame.in_room(number))

    def turn(self, by: int) -> None:
        """Go to another page of the room on screen."""
        self.go_to_name(self._frame.next_to(self.page.name, by))

    def back(self) -> None:
        """Go back to the page that was in front before, and from there here again."""
        self.go_to(self._was)

    def chosen_models(self) -> tuple[ModelKey, ...]:
        """Return the models that are chosen on the page in front."""
        build: Any = self._window.page("build").late.made
        if build is None or self._stack.currentIndex() != self._stack.indexOf(build):
            return ()
        models: tuple[ModelKey, ...] = build.tree.models()
        return models

    def inspector_turned(self) -> None:
        """Show what has come to the front in the inspector; where it was folded, the page is."""
        if self._turning:
            return
        beside = self._frame.beside()
        name = beside or self._frame.main_page(self.page.name)
        self.shown = [page.name for page in self._views.pages].index(name)
        self._commands.views[self.shown].setChecked(True)
        if beside:
            self._session.show_first(self._window.page(beside).prepare)
        self.choose()

    def choose(self) -> None:
        """Bring the page in front that is to be, with the newest plan as soon as that is read."""
        book = self._session.book
        if book is None:
            self._bring(self._views.no_book.made or self._blank)
            return
        page = self._window.page(self._frame.main_page(self.page.name))
        active = any(project.active for project in book.projects)
        unread = self._unread(page)
        if unread:
            self._session.read()  # `prepared` leads back here
        if page.without_plan and not (unread and page.book_with_plan):
            page.view.show_book()
        if not active and not page.without_plan:
            empty = self._views.way_in.get()
            empty.show_aside(all_set_aside=bool(book.projects))
            self._bring(empty)
        else:
            if not unread:
                self._show_newest(page)
            self._bring(page.widget)
        beside = self._frame.beside()
        if beside:
            self._show_beside(self._window.page(beside))

    def _show_beside(self, page: Page) -> None:
        """Show the newest in the page that lies in the inspector."""
        if self._unread(page):
            self._session.read()
            return
        if page.without_plan:
            page.view.show_book()
        self._show_newest(page)

    def _bring(self, widget: QWidget) -> None:
        """Show a page; the first one takes the keys from the blank that stood for it."""
        blank = self._stack.window().focusWidget() in (None, self._blank)
        if widget is not self._stack.currentWidget():
            self._frame.desk.settle()
            widget.setGeometry(self._stack.contentsRect())  # so that it is laid out once
        self._stack.setCurrentWidget(widget)
        if blank:
            widget.setFocus()

    def _unread(self, page: Page) -> bool:
        """Tell whether a page has to wait until what it shows of a great plan has been read."""
        picture = self._session.picture
        if picture is None or page.prepare is None or page.name not in self.stale:
            return False
        great = len(picture.plan.placements) > AT_ONCE
        return great and not picture.has(page.prepare)

    def _show_newest(self, page: Page) -> None:
        """Show the newest plan in a view on screen; the others wait until they are."""
        picture = self._session.picture
        if picture is not None and page.name in self.stale:
            self.stale.discard(page.name)
            page.view.show_picture(picture)
