"""The main window: the rooms, the strip of air above them, menus."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QSettings, Qt, QTimer
from PySide6.QtGui import QAction, QCloseEvent
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QMainWindow,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.service.clock import behind, elsewhere
from app.service.edits import Edit
from app.service.overtaken_work import overtaken_lines
from app.window import palette, type_size, window_memory, words
from app.window.air_panel import AirPanel
from app.window.air_strip import AirStrip
from app.window.chance.runner import ChanceRunner
from app.window.chance.sure_words import sure_bands, sure_line
from app.window.commands import Commands
from app.window.evening_actions import EveningActs
from app.window.evenings_panel import EveningsPanel
from app.window.files import Files
from app.window.improving import Improving
from app.window.inspector_panels import fill_inspector
from app.window.message_translation import translated
from app.window.navigation import Navigation
from app.window.page_turning import PageTurning
from app.window.pages import Late, Page
from app.window.palette import Appearance
from app.window.plan_changes_panel import MovedPanel
from app.window.plan_snapshot import PlanChange
from app.window.projects import ProjectPanel
from app.window.room_badges import RoomBadges
from app.window.room_frame import RoomFrame
from app.window.session import Session
from app.window.tab_order import move_between
from app.window.unsaved_bar import UnsavedBar, above
from app.window.views import Views
from app.window.workspaces import make_workspaces
from planner.layers.finding import Finding
from planner.values.keys import ModelKey
from planner.values.message import row
from planner.values.plan import PassKey

if TYPE_CHECKING:
    from app.window.bench_mode.view import BenchMode
    from app.window.empty_state import EmptyState
    from app.window.timeline_page import TimelinePage
    from app.window.tonight_view import TonightView

TICK_MS = 5_000  # how often the clock is looked at
LEAST_PAGE = (640, 520)  # as much as most views need: the window hardly grows as they are made


class MainWindow(QMainWindow):
    """One window on one bench book."""

    def __init__(self, session: Session, settings: QSettings) -> None:
        type_size.set_base(application())  # before anything measures its words
        super().__init__()
        self.session = session
        self.settings = settings
        self.setWindowTitle(self.tr("Tackfree"))
        self.workspaces = make_workspaces()
        self.views = Views(self)
        self.stack = QStackedWidget()
        self.stack.setMinimumSize(*LEAST_PAGE)
        self._blank = QWidget()  # until there is a book: views take long to load
        self.stack.addWidget(self._blank)
        self.frame = RoomFrame(self.workspaces, self.views.pages, self.stack, settings)
        self.files = Files(session, self)
        self.acts = EveningActs(session, self)
        self.commands = Commands(self, self)
        self.turning = PageTurning(self, self.frame, self.views, self.commands, self._blank)
        self.strip = AirStrip(session, self.commands.undo)
        self.air = self.strip.panel
        self.projects = ProjectPanel(session)
        self.navigation = Navigation(self.commands.rooms, self.projects)
        RoomBadges(session, self.navigation)
        self.splitter = QSplitter(Qt.Orientation.Horizontal)
        self.splitter.addWidget(self.navigation)
        self.splitter.addWidget(self.frame)
        self.splitter.setStretchFactor(1, 1)
        self.splitter.setCollapsible(1, False)
        self.splitter.setSizes([190, 1090])
        self.unsaved = UnsavedBar(session)
        self.setCentralWidget(self._central())
        self.bench_air = AirPanel(session)
        self.evenings = EveningsPanel(session)
        self.moved = MovedPanel()
        self.chance = ChanceRunner(session, self)
        self.chances = Late("chance.panel:ChancePanel", self.chance)
        self.chances.then = lambda panel: panel.set_colours(self.views.colours)
        fill_inspector(self.frame, self, self.chances, self.moved, (self.bench_air, self.evenings))
        self.improving = Improving(session, self)
        self._make_foot()
        self.commands.fill(self.menuBar())
        self._connect()
        self._at_once = False
        self._now = session.now
        self.look = Appearance(str(settings.value("look", Appearance.SYSTEM.value)))
        self.set_look(self.look)
        window_memory.restore(self, self)
        self._clock = QTimer(self)
        self._clock.setInterval(TICK_MS)
        self._clock.timeout.connect(self.clock_moved)
        self._clock.start()
        self._refresh()

    def _make_foot(self) -> None:
        """Make the line at the foot: what happened, and what is known of the plan."""
        self._say, self._known = QLabel(), QLabel()
        for label in (self._say, self._known):
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.statusBar().addWidget(self._say, 1)
        self.statusBar().addPermanentWidget(self._known)

    def _central(self) -> QWidget:
        """Return the strip of air, what is said of unsaved edits, and the rooms."""
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.strip)
        column.addWidget(above(self.unsaved, self.splitter), 1)
        return whole

    def _connect(self) -> None:
        session = self.session
        session.opening.connect(self.say)
        session.opened.connect(self._opened)
        session.edited.connect(self._refresh)
        session.pictured.connect(self.show_change)
        session.prepared.connect(self.turning.choose)
        session.planning.connect(self._planning)
        self.improving.changed.connect(self._improved)
        self.chance.changed.connect(self.tell_how_sure)
        self.frame.page_wanted.connect(self.show_page)
        self.frame.desk.shown_changed.connect(self.turning.inspector_turned)
        self.frame.desk.keys_back.connect(self.turning.give_keys_to_page)
        session.troubled.connect(self._troubled)
        session.foreseen.connect(self.views.notifier.get)  # from then on it looks by itself
        QApplication.instance().styleHints().colorSchemeChanged.connect(  # type: ignore[union-attr]
            lambda _scheme: self.set_look(self.look)
        )

    @property
    def pages(self) -> tuple[Page, ...]:
        """Every page, in the order of the rooms' menu."""
        return self.views.pages

    @property
    def ways_to_a_book(self) -> tuple[QAction, QAction]:
        """Opening a book, and beginning one."""
        return self.commands.open, self.commands.new

    @property
    def tonight(self) -> TonightView:
        """What to do tonight."""
        view: TonightView = self.view("tonight")
        return view

    @property
    def timeline(self) -> TimelinePage:
        """The plan as a strip and as a list."""
        view: TimelinePage = self.view("timeline")
        return view

    @property
    def empty(self) -> EmptyState:
        """What is shown while there is nothing to plan."""
        view: EmptyState = self.views.way_in.get()
        return view

    @property
    def bench(self) -> BenchMode:
        """One piece of work at a time, full screen."""
        view: BenchMode = self.views.bench.get()
        return view

    def page(self, name: str) -> Page:
        """Return a page by its name."""
        return next(page for page in self.pages if page.name == name)

    def view(self, name: str) -> Any:
        """Return the view of a page by its name."""
        return self.page(name).view

    @property
    def shown_view(self) -> int:
        """The place among `pages` of the one that was gone to."""
        return self.turning.shown

    def show_page(self, name: str) -> None:
        """Go to the view of this name."""
        self.turning.go_to_name(name)

    def show_view(self, number: int) -> None:
        """Go to a view, in its room; one that lies in the inspector opens that."""
        self.turning.go_to(number)

    def show_room(self, number: int) -> None:
        """Go to a room, to its first page."""
        self.turning.go_to_room(number)

    def turn_page(self, by: int) -> None:
        """Go to another page of the room on screen."""
        self.turning.turn(by)

    def go_back(self) -> None:
        """Go back to the page that was in front before."""
        self.turning.back()

    def toggle_inspector(self) -> None:
        """Fold the inspector of the room away, or bring it back."""
        self.frame.desk.toggle()

    def call_inspector(self) -> None:
        """Bring the inspector of the room because something was chosen."""
        self.frame.call()

    def dismiss_inspector(self) -> None:
        """Let the inspector go until something is chosen again."""
        self.frame.desk.dismiss()

    def change_air(self) -> None:
        """Show the fields of the air, or put them away."""
        self.strip.open_fields()

    def show_chosen(self) -> None:
        """Show what is known of the piece chosen on the timeline, and let the keys go there."""
        self.frame.desk.open("piece")
        self.timeline.details.setFocus()

    def chosen_models(self) -> tuple[ModelKey, ...]:
        """Return the models that are chosen on the page in front."""
        return self.turning.chosen_models()

    def go_to_bench(self) -> None:
        """Show one piece of work at a time, over everything else."""
        self.bench.enter()

    def back_from_bench(self) -> None:
        """Show the view from which the bench mode was entered."""
        if self.session.book is not None:  # the window itself may be closing
            self.show_view(self.shown_view)

    def set_look(self, look: Appearance) -> None:
        """Dress everything in light or dark."""
        self.look = look
        app = application()
        colours = palette.wanted(look, app)
        palette.dress(app, colours)
        self.views.set_colours(colours)
        if self.chances.made is not None:
            self.chances.made.set_colours(colours)
        self.navigation.set_colours(colours)
        self.projects.set_colours(colours)
        self.strip.set_colours(colours)
        self.commands.looks[look].setChecked(True)
        self.settings.setValue("look", look.value)

    def show_change(self, change: PlanChange) -> None:
        """Show what moved; the views follow when the one on screen has been read."""
        self.turning.stale = {page.name for page in self.pages}
        self.projects.show_book(change.new)
        self.moved.show_change(change)
        self.strip.show_book()
        if change.cause and change.old is not None:
            self.say(self.moved.summary.text())

    def say(self, message: str) -> None:
        """Tell something at the foot of the window, where it stays until the next."""
        told = translated(message)
        self._say.setText(" ".join(told.splitlines()))  # one line: a second would move the page
        self._say.setToolTip(told)

    def tell_how_sure(self) -> None:
        """Tell at the head of tonight and of the plan how sure the date is."""
        odds, picture = self.chance.odds, self.chance.picture
        told, bands = "", {}
        if odds is not None and picture is not None:
            told, bands = sure_line(odds, picture.zone), sure_bands(odds)
        tonight, timeline = (self.page(name).late.made for name in ("tonight", "timeline"))
        if tonight is not None:
            tonight.show_sure(told)
        if timeline is not None:
            timeline.show_sure(told, bands)

    def take_back(self, key: PassKey) -> None:
        """Take an entry of the logbook back."""
        from app.service import logbook  # noqa: PLC0415

        refused = self.session.attempt(lambda book: logbook.take_back(book, key))
        if refused is not None:
            self.say(str(refused))

    def tell(self, message: str) -> None:
        """Tell what opens or closes, wherever the person looks."""
        line = " ".join(message.splitlines())
        self.say(line)
        if self.views.bench.made is not None:
            self.bench.say(line)

    def clock_moved(self) -> None:
        """Let the shade follow the clock; plan anew where the plan has run out of date."""
        self.session.watch()
        window_memory.remember(self, self, self.views)  # a window that dies comes back where it was
        now = self.session.now
        if now == self._now:
            return
        self._now = now
        self.strip.show_book()
        self.views.set_now(now)
        picture = self.session.picture
        if picture is not None and any(
            placed.start < now and not placed.logged for placed in picture.plan.placements
        ):
            self.session.replan()

    def show_piece(self, key: PassKey) -> None:
        """Go to a piece of work on the timeline."""
        self.show_page("timeline")
        self.timeline.strip.choose(key)

    def mend(self, finding: Finding) -> None:
        """Make the edit that a finding offers."""
        mend = finding.mend
        if mend is not None:
            refused = self.session.attempt(lambda book: Edit(mend.title, mend.apply(book)))
            if refused is not None:
                self.say(str(refused))

    def focusNextPrevChild(self, onwards: bool) -> bool:
        """Go from the strip to rooms, page and inspector, whenever each was made."""
        areas = (self.strip, self.navigation, self.frame.switch, self.stack, self.frame.inspector)
        return move_between(areas, onwards=onwards) or super().focusNextPrevChild(onwards)

    def changeEvent(self, event: QEvent) -> None:
        """Look whether somebody else has changed the book, whenever one comes back here."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self.session.look_again()

    def close_at_once(self) -> None:
        """Close without a question: the machine goes down, or somebody pressed Ctrl+C."""
        self._at_once = True
        self.close()
        QApplication.quit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Remember the window and let go of the book, once nobody objects."""
        if not self._at_once and not self.unsaved.may_close():
            event.ignore()
            return
        window_memory.remember(self, self, self.views)
        self._clock.stop()
        if self.views.bench.made is not None:
            self.bench.close()
        if self.views.notifier.made is not None:
            self.views.notifier.made.stop()
        self.session.close()
        super().closeEvent(event)

    def _opened(self) -> None:
        path = self.session.path
        self.setWindowTitle(
            self.tr("{book} – Tackfree").format(book=path.stem) if path else self.tr("Tackfree")
        )
        book, clock = self.session.book, self.session.clock
        told = book and (
            behind(book, clock) or elsewhere(book, clock) or row(overtaken_lines(book))
        )
        self.say(told or "")

    def _troubled(self, why: str) -> None:
        """Tell what went wrong; where no book is there, in the middle of the window."""
        self.say(why)
        if self.session.book is None:
            self._enable(on=False)
            no_book = self.views.no_book.get()
            self.stack.setCurrentWidget(no_book)
            no_book.say(why)

    def _refresh(self) -> None:
        self.commands.name_edits(self.session.undo_name(), self.session.redo_name())
        self.strip.show_book()
        self.bench_air.show_book()
        self.evenings.show_book()
        self.projects.show_book(self.session.picture)
        self._enable(on=self.session.book is not None)
        self.turning.choose()

    def _enable(self, *, on: bool) -> None:
        """Let fields be changed only while there is a book."""
        for fields in (self.air, self.bench_air, self.evenings):
            fields.setEnabled(on)
        self.strip.show_book()

    def _improved(self) -> None:
        """Say what is known of the plan, and whether a better one is offered."""
        self._known.setText(self.improving.line())
        self._known.setToolTip(self.improving.proof())
        self.commands.better.setEnabled(self.improving.offer is not None)

    def _planning(self, busy: bool) -> None:
        if busy and self.session.picture is None:
            self.say(words.tr("Planning…"))
        elif not busy and self._say.text() == words.tr("Planning…"):
            self.say("")


def application() -> QApplication:
    """Return the application that the window is one of."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    return app
