"""The frame of the room on screen: which of its pages is in front, and what its inspector holds."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import partial

from PySide6.QtCore import QSettings, Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from app.window.air_panel import AirPanel
from app.window.evenings_panel import EveningsPanel
from app.window.inspector import Desk, Inspector, Panel, leaves
from app.window.pages import Page
from app.window.workspaces import Workspace, keys_of_pages

LEAST = 760  # of a room: a page's buttons stand in one line where nothing is beside it [pixels]
SWITCH_AROUND = 6 + 13  # what lies above the words of the switch, and around them [pixels]
BY_CHOICE = ("plan",)  # rooms whose inspector comes when something is chosen there


class RoomFrame(QWidget):
    """A switch between the pages of a room, the page, and the inspector at the right.

    Signals
    -------
    page_wanted(str)
        The page of this name is asked for.
    """

    page_wanted = Signal(str)

    def __init__(
        self,
        workspaces: tuple[Workspace, ...],
        pages: Iterable[Page],
        stack: QWidget,
        settings: QSettings,
    ) -> None:
        super().__init__()
        self._workspaces = workspaces
        self._pages = {page.name: page for page in pages}
        self._keys = keys_of_pages(workspaces)
        self._last: dict[str, str] = {}
        self._panels: dict[str, list[Panel]] = {}
        self.workspace = workspaces[0]
        self.switch = leaves("")
        self.switch.currentChanged.connect(self._turn)
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        head = QVBoxLayout()
        head.setContentsMargins(20, 6, 12, 0)
        head.addWidget(self.switch, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(head)
        column.addWidget(stack, 1)
        # A room with one page has no switch; going to another must not ask for a larger window.
        above = self.switch.fontMetrics().height() + SWITCH_AROUND
        page.setMinimumSize(stack.minimumWidth(), stack.minimumHeight() + above)
        self.inspector = Inspector()
        self.desk = Desk(page, self.inspector, settings, BY_CHOICE)
        self.setMinimumWidth(LEAST)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.desk)

    def hold(self, room: str, panels: Iterable[Panel]) -> None:
        """Say what lies in the inspector of a room before the pages that do."""
        self._panels[room] = list(panels)

    def call(self) -> None:
        """Bring what is known of the chosen piece, unless somebody has folded it away."""
        panels = self._panels.get(self.workspace.name)
        if panels:
            self.desk.call(panels[0].name)

    def of(self, page: str) -> Workspace:
        """Return the room of a page."""
        return next(room for room in self._workspaces if page in room.every)

    def main_page(self, page: str) -> str:
        """Return the page that is in front where a page is gone to: one beside it has another."""
        room = self.of(page)
        return self._last.get(room.name, room.pages[0]) if page in room.beside else page

    def in_room(self, number: int) -> str:
        """Return the page to go to in a room: always its first one.

        That a key leads to the same place wherever one is, is worth more than that it
        leads to where one was there; one key leads back.
        """
        return self._workspaces[number].pages[0]

    def next_to(self, page: str, by: int) -> str:
        """Return the page before or after one in its room, round and round."""
        names = self.of(page).pages
        return names[(names.index(self.main_page(page)) + by) % len(names)]

    def beside(self) -> str:
        """Return the page that the inspector shows, "" for none."""
        leaf = self.inspector.leaf if self.desk.opened else ""
        return leaf if leaf in self._pages else ""

    def show_page(self, name: str) -> None:
        """Put the frame of a page's room around it; one that lies in the inspector opens that."""
        room = self.of(name)
        main = self.main_page(name)
        self._last[room.name] = main
        self.workspace = room
        titles = [self._pages[each].plain for each in room.pages]
        self.switch.blockSignals(True)
        while self.switch.count():
            self.switch.removeTab(0)
        for each, title in zip(room.pages, titles, strict=True):
            self.switch.addTab(title)
            self.switch.setTabToolTip(self.switch.count() - 1, f"{title} ({self._keys[each]})")
        self.switch.setCurrentIndex(room.pages.index(main))
        self.switch.blockSignals(False)
        self.switch.setVisible(len(titles) > 1)
        self.switch.setAccessibleName(self.tr("Pages of {room}").format(room=room.plain))
        self.desk.show_room(room.name, self._of_inspector(room, main))
        if name in room.beside:
            self.desk.open(name)

    def _of_inspector(self, room: Workspace, main: str) -> list[Panel]:
        panels = [] if main != room.pages[0] and room.beside else self._panels.get(room.name, [])
        mine = [
            Panel(name, self._pages[name].plain, partial(self._widget, name))
            for name in room.beside
        ]
        # What was chosen comes first, what an edit did last.
        return [*panels[:1], *mine, *panels[1:]]

    def _widget(self, name: str) -> QWidget:
        return self._pages[name].widget

    def _turn(self, at: int) -> None:
        if 0 <= at < len(self.workspace.pages):
            self.page_wanted.emit(self.workspace.pages[at])


def scrolling(name: str, *inner: QWidget) -> QScrollArea:
    """Return widgets below each other in an area that scrolls up and down only."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(12, 10, 12, 12)
    column.setSpacing(14)
    for widget in inner:
        column.addWidget(widget)
    column.addStretch(1)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(holder)
    area.setAccessibleName(name)
    return area


def hours_and_air(name: str, air: AirPanel, evenings: EveningsPanel) -> Panel:
    """Return the leaf of the bench's inspector."""
    area = scrolling(name, air, evenings)
    get: Callable[[], QWidget] = lambda: area  # noqa: E731 - made with the window
    return Panel("hours", name, get)
