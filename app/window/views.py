"""The views of a window as they come to be: taken into it, dressed and heard."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QByteArray

from app.window.control_names import name_leaves
from app.window.pages import Late, make_pages
from app.window.palette import LIGHT, Colours
from app.window.shell import Shell

if TYPE_CHECKING:
    from app.service.holders import HolderUse
    from app.window.bench_mode.view import BenchMode
    from app.window.drying.notifier import Notifier
    from app.window.drying.view import DryingView
    from app.window.empty_state import EmptyState
    from app.window.gear.view import GearView
    from app.window.stack.view import StackView
    from app.window.timeline_page import TimelinePage
    from app.window.tonight_view import TonightView
    from app.window.wishes.view import WishesView


class Views:
    """Every page, the ways in where there is nothing, and the bench mode; each made when needed."""

    def __init__(self, window: Shell) -> None:
        self._window = window
        self._colours = LIGHT
        session = window.session
        self.pages = make_pages(session)
        self.way_in = Late("empty_state:EmptyState", session)
        self.bench = Late("bench_mode.view:BenchMode", session, window.settings, window)
        self.no_book = Late("book_error_page:NoBook", window)
        self.notifier = Late("drying.notifier:Notifier", session, window.settings)
        self.notifier.then = self._hear_notifier
        hearing: dict[str, Callable[[Any], None]] = {
            "tonight": self._hear_tonight,
            "timeline": self._hear_timeline,
            "stack": self._hear_stack,
            "wishes": self._hear_wishes,
            "drying": self._hear_drying,
            "gear": self._hear_gear,
        }
        for page in self.pages:
            beside = any(page.name in workspace.beside for workspace in window.workspaces)
            take_in = self._dress if beside else self._take_in
            page.late.then = partial(take_in, hear=hearing.get(page.name), title=page.plain)
        self.way_in.then = partial(self._take_in, hear=self._hear_way_in)
        self.no_book.then = partial(self._take_in, hear=None)
        self.bench.then = self._hear_bench

    @property
    def colours(self) -> Colours:
        """The colours that all is painted in."""
        return self._colours

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours, now and what is made later."""
        self._colours = colours
        for view in self.made():
            view.set_colours(colours)

    def set_now(self, now: int) -> None:
        """Let what follows the clock follow it."""
        for page in self.pages:
            if hasattr(page.late.made, "set_now"):
                page.view.set_now(now)

    def made(self) -> Iterator[Any]:
        """Yield every view that is there."""
        for late in (*(page.late for page in self.pages), self.way_in, self.no_book, self.bench):
            if late.made is not None:
                yield late.made

    def remember(self) -> None:
        """Write down how the views were set."""
        timeline = self._window.page("timeline").late.made
        if timeline is not None:
            self._window.settings.setValue("timeline", timeline.splitter.saveState())

    def _take_in(self, view: Any, hear: Callable[[Any], None] | None, title: str = "") -> None:
        self._window.stack.addWidget(view)
        self._dress(view, hear, title)

    def _dress(self, view: Any, hear: Callable[[Any], None] | None, title: str = "") -> None:
        view.set_colours(self._colours)
        name_leaves(view, title)
        if hear is not None:
            hear(view)

    def _hear_tonight(self, tonight: TonightView) -> None:
        window = self._window
        tonight.ticked.connect(window.acts.tick_all)
        tonight.done.connect(window.acts.done)
        tonight.put_off.connect(window.acts.put_off)
        tonight.load_done.connect(window.acts.done_all)
        window.acts.held_up.connect(tonight.show_ticks)
        tonight.taken_back.connect(window.take_back)
        tonight.bench_wanted.connect(window.go_to_bench)
        window.tell_how_sure()

    def _hear_timeline(self, timeline: TimelinePage) -> None:
        timeline.opened.connect(self._window.show_chosen)
        timeline.picked.connect(self._window.call_inspector)
        timeline.left.connect(self._window.dismiss_inspector)
        self._window.tell_how_sure()
        saved = self._window.settings.value("timeline")
        if isinstance(saved, QByteArray):
            timeline.splitter.restoreState(saved)

    def _hear_stack(self, coats: StackView) -> None:
        coats.mend_wanted.connect(self._window.mend)

    def _hear_wishes(self, wishes: WishesView) -> None:
        wishes.show_wanted.connect(self._window.show_piece)

    def _hear_drying(self, drying: DryingView) -> None:
        drying.tell_by(self.notifier.get())
        drying.looked.connect(self._window.acts.looked)

    def _hear_notifier(self, notifier: Notifier) -> None:
        notifier.said.connect(self._window.tell)
        notifier.look_if_read()

    def _hear_gear(self, gear: GearView) -> None:
        gear.part_wanted.connect(self._show_part)

    def _show_part(self, use: HolderUse) -> None:
        from app.window.model_editor.nodes import Key, NodeKind  # noqa: PLC0415 - as late as Build itself

        self._window.show_page("build")
        build = self._window.page("build").view
        build.tree.choose(Key(NodeKind.PART, use.project, use.model, part=use.part))
        build.tree.setFocus()

    def _hear_way_in(self, empty: EmptyState) -> None:
        empty.demo_wanted.connect(self._window.files.open_demo)
        empty.import_wanted.connect(self._window.files.import_project)
        empty.begun.connect(lambda: self._window.show_page("tonight"))

    def _hear_bench(self, bench: BenchMode) -> None:
        bench.set_colours(self._colours)
        bench.left.connect(self._window.back_from_bench)
        bench.evening.closes.connect(lambda: self._window.acts.close_evening(bench))
