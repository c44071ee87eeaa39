"""The column at the right of a room: what is known of what was chosen, folded away when not wanted.

Where the window is wide it stands beside the page; where it is narrow it lies over it.  Which
rooms have it folded is remembered.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QRect, QSettings, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QTabBar,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.window.labels import text

BESIDE = 1280  # from this width of the window on it stands beside the page [pixels]
LEAST, MOST = 296, 452
ROOMY = 1500  # from this width of the window on every leaf's name is in sight [pixels]
ASIDE = "folded"  # the settings' group


@dataclass(frozen=True)
class Panel:
    """One leaf of the inspector: its name, its title, and how to get its widget."""

    name: str
    title: str
    get: Callable[[], QWidget]


def leaves(name: str) -> QTabBar:
    """Return a bar of words to choose one of: a single stop of Tab, the arrow keys move in it."""
    tabs = QTabBar()
    tabs.setObjectName("leaves")
    tabs.setDrawBase(False)
    tabs.setExpanding(False)
    tabs.setUsesScrollButtons(True)
    tabs.setElideMode(Qt.TextElideMode.ElideNone)
    tabs.setAccessibleName(name)
    return tabs


class Inspector(QFrame):
    """Leaves for the room on screen, one in front.

    Signals
    -------
    leaf_changed(str)
        Another leaf is in front, by its name.
    fold_wanted()
        The sign at its head was pressed.
    left()
        Escape was pressed in it.
    """

    leaf_changed = Signal(str)
    fold_wanted = Signal()
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("inspector")
        self.setAutoFillBackground(True)
        self.setAccessibleName(self.tr("Inspector"))
        self._panels: tuple[Panel, ...] = ()
        self._chosen: dict[tuple[str, ...], str] = {}
        self.tabs = leaves(self.tr("What the inspector shows"))
        self.tabs.currentChanged.connect(self._turn)
        self.title = text("", bold=True, wrap=False)
        self.fold = QToolButton()
        self.fold.setText("»")
        self.fold.setMinimumSize(28, 28)
        self.fold.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.fold.setToolTip(self.tr("Fold away (F4)"))
        self.fold.setAccessibleName(self.tr("Fold the inspector away"))
        self.fold.clicked.connect(self.fold_wanted)
        self.stack = QStackedWidget()
        head = QHBoxLayout()
        head.setContentsMargins(10, 8, 8, 0)
        head.addWidget(self.title)
        head.addWidget(self.tabs, 1)
        head.addStretch(0)
        head.addWidget(self.fold)
        column = QVBoxLayout(self)
        column.setContentsMargins(1, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self.stack, 1)

    @property
    def leaf(self) -> str:
        """The name of the leaf in front, "" for none."""
        at = self.tabs.currentIndex()
        return self._panels[at].name if 0 <= at < len(self._panels) else ""

    def show_panels(self, panels: Sequence[Panel]) -> None:
        """Show the leaves of another room; the one that was in front there comes back."""
        panels = tuple(panels)
        if [panel.name for panel in panels] == [panel.name for panel in self._panels]:
            return
        self._panels = panels
        self.tabs.blockSignals(True)
        while self.tabs.count():
            self.tabs.removeTab(0)
        for panel in panels:
            self.tabs.addTab(panel.title)
        names = [panel.name for panel in panels]
        wanted = self._chosen.get(tuple(names), names[0] if names else "")
        self.tabs.setCurrentIndex(names.index(wanted) if wanted in names else 0)
        self.tabs.blockSignals(False)
        self.tabs.setVisible(len(panels) > 1)
        self.title.setVisible(len(panels) == 1)
        self.title.setText(panels[0].title if panels else "")

    def choose(self, name: str) -> None:
        """Bring a leaf to the front."""
        names = [panel.name for panel in self._panels]
        if name in names:
            self.tabs.setCurrentIndex(names.index(name))

    def put(self) -> None:
        """Make the leaf in front, if it is not there, and show it."""
        at = self.tabs.currentIndex()
        if not 0 <= at < len(self._panels):
            return
        widget = self._panels[at].get()
        if self.stack.indexOf(widget) < 0:
            self.stack.addWidget(widget)
        self.stack.setCurrentWidget(widget)

    def wide(self) -> int:
        """Return how wide it must be for the leaf in front, and in a wide window for all names."""
        shown = self.stack.currentWidget()
        inner = shown.widget() if isinstance(shown, QScrollArea) else None
        need = shown.minimumSizeHint().width() if shown is not None else 0
        if inner is not None:
            bar = shown.verticalScrollBar().sizeHint().width()  # type: ignore[union-attr]
            need = max(need, inner.minimumSizeHint().width() + bar + 4)
        if len(self._panels) > 1 and self.window().width() >= ROOMY:
            names = sum([self.tabs.tabSizeHint(at).width() for at in range(self.tabs.count())])
            need = max(need, names + self.fold.width() + 26)
        return max(LEAST, min(MOST, need))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the rule at its left."""
        painter = QPainter(self)
        painter.fillRect(0, 0, 1, self.height(), self.palette().mid())
        painter.end()
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Escape lead back to the page."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)

    def _turn(self, at: int) -> None:
        if 0 <= at < len(self._panels):
            self._chosen[tuple(panel.name for panel in self._panels)] = self._panels[at].name
            self.leaf_changed.emit(self._panels[at].name)


class Desk(QWidget):
    """The page of a room and the inspector: beside each other, or one over the other.

    In the rooms of ``by_choice`` it comes when something is chosen, and goes by Escape;
    in the others it is there.  Folded or brought by hand it stays so, in each room.

    Signals
    -------
    shown_changed()
        The inspector was opened, folded, or turned to another leaf.
    keys_back()
        The keys were in the inspector, which has gone.
    """

    shown_changed = Signal()
    keys_back = Signal()

    def __init__(
        self,
        page: QWidget,
        inspector: Inspector,
        settings: QSettings,
        by_choice: Collection[str] = (),
    ) -> None:
        super().__init__()
        self._page, self.inspector, self._settings = page, inspector, settings
        self._by_choice = by_choice
        self._called: set[str] = set()  # rooms in which something was chosen
        self._room = ""
        self._laid_over: set[str] = set()  # rooms whose inspector lies over the page now
        self._over = False
        page.setParent(self)
        inspector.setParent(self)
        inspector.hide()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        inspector.fold_wanted.connect(self.toggle)
        inspector.left.connect(self.dismiss)
        inspector.leaf_changed.connect(self._turned)
        page.installEventFilter(self)
        self._room_has_panels = False

    def show_room(self, name: str, panels: Sequence[Panel]) -> None:
        """Show the inspector of a room as it was left there, once `settle` is called.

        The page that goes shall not be laid out anew for the room of the one that comes.
        """
        self._room = name
        self._room_has_panels = bool(panels)
        self.inspector.show_panels(panels)

    def settle(self) -> None:
        """Give page and inspector their places in the room on screen."""
        if self.opened:
            self.inspector.put()
        self._place()
        inner = self._page.layout()
        if inner is not None:
            inner.activate()  # the switch above the page may have come or gone

    @property
    def narrow(self) -> bool:
        """Tell whether the inspector would lie over the page."""
        return self.window().width() < BESIDE

    @property
    def opened(self) -> bool:
        """Tell whether the inspector is shown in this room."""
        if not self._room_has_panels:
            return False
        if self.narrow:
            return self._room in self._laid_over
        if self._of_itself:
            return self._room not in self._by_choice or self._room in self._called
        return not self._settings.value(self._key, False, type=bool)

    @property
    def _key(self) -> str:
        return f"{ASIDE}/{self._room}"

    @property
    def _of_itself(self) -> bool:
        """Tell whether nobody has folded or brought it by hand in this room."""
        return not self._settings.contains(self._key)

    def call(self, leaf: str) -> None:
        """Come because something was chosen, unless somebody has folded it away."""
        if self.opened or self.narrow or not self._of_itself:
            return
        self._called.add(self._room)
        self.inspector.choose(leaf)
        self._arrange()

    def dismiss(self) -> None:
        """Go until something is chosen again; where it is always there, let the keys go back."""
        if self._room in self._by_choice and not self.narrow:
            self._called.discard(self._room)
            self._settings.remove(self._key)
        self._laid_over.discard(self._room)
        self._give_keys_back()
        self._arrange()

    def _give_keys_back(self) -> None:
        if self.inspector.isAncestorOf(self.window().focusWidget() or self):
            self._page.setFocus()
            self.keys_back.emit()

    def open(self, leaf: str = "") -> None:
        """Show the inspector, with a leaf in front."""
        if leaf:
            self.inspector.choose(leaf)
        if not self.opened:
            self.toggle()

    def toggle(self) -> None:
        """Fold the inspector away, or bring it back; remembered for this room."""
        if not self._room_has_panels:
            return
        opened = self.opened
        if self.narrow:
            for shown in (self._laid_over, self._called):  # in a wider window it stays
                (shown.discard if opened else shown.add)(self._room)
        else:
            self._settings.setValue(self._key, opened)
        if opened:
            self._give_keys_back()
        self._arrange()

    def _turned(self, _name: str) -> None:
        self._arrange()

    def _arrange(self) -> None:
        if self.opened:
            self.inspector.put()
        self._place()
        self.shown_changed.emit()

    def _place(self) -> None:
        """Give page and inspector their places."""
        whole, opened = self.rect(), self.opened
        wide = self.inspector.wide() if opened else 0
        over = self.narrow or whole.width() - wide < self._page.minimumSizeHint().width()
        room = whole if over or not opened else QRect(0, 0, whole.width() - wide, whole.height())
        self._page.setGeometry(room)
        if opened:
            wide = min(wide, whole.width())
            self.inspector.setGeometry(whole.width() - wide, 0, wide, whole.height())
        self.inspector.setVisible(opened)
        if opened and over:
            self.inspector.raise_()
        self._over = over and opened

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep both in their places; which lies where depends on the window's width."""
        super().resizeEvent(event)
        was = self.inspector.isVisibleTo(self)
        self._place()
        if was is not self.opened:
            self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Return what the page needs: the inspector finds room beside it or over it."""
        return self._page.minimumSizeHint().expandedTo(self._page.minimumSize())

    def sizeHint(self) -> QSize:
        """Return what the page asks for."""
        return self._page.sizeHint()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow what the page needs at least."""
        if event.type() == QEvent.Type.LayoutRequest and watched is self._page:
            self.updateGeometry()
        return False
