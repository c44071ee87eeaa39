"""What can be done to this evening as a whole, each by one command of the menu.

What does it is imported with the first: a start need not wait for it.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.service.edits import Edit
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of
from planner.values.plan import PassKey
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from app.service.film_brake import GoOn, HeldUp
    from planner.evening.gaps import FreeGap, GapOffer

HOUR = 60


class EveningActs(QObject):
    """Work begun and done, an hour more, an early end, an evening lost, a film looked at.

    Signals
    -------
    held_up(PassKey)
        Nothing was noted of a pass: it meets a film that is not ready.
    """

    held_up = Signal(object)

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._window = session, window

    def tick(self, key: PassKey, place: str, on: bool) -> None:
        """Note that a place is done, or not after all; the first begins the work."""
        from app.service import film_brake, logbook  # noqa: PLC0415

        book, picture = self._session.book, self._session.picture
        if book is None or picture is None:
            return
        planned = self._planned(key)

        def noted(held: HeldUp | None, way: GoOn | None) -> None:
            self._make(
                lambda book: logbook.tick(
                    film_brake.gone_on(book, held, way),
                    key,
                    place,
                    self._session.now,
                    on=on,
                    planned=planned,
                    airbrush=logbook.usual_airbrush(book, key, picture.plan),
                )
            )

        held = film_brake.at_beginning(book, key, self._session.now) if on else None
        self._ask_first(held, noted, done=False)

    def tick_all(self, spots: list[tuple[PassKey, str]], on: bool) -> None:
        """Note that places are done, or not after all, as one edit; over a wet film it asks."""
        from app.service import film_brake, logbook  # noqa: PLC0415
        from app.service.tick_places import tick_places  # noqa: PLC0415

        book, picture, now = self._session.book, self._session.picture, self._session.now
        if book is None or picture is None or not spots:
            return
        keys = dict.fromkeys(key for key, _ in spots)
        held = {key for key in keys if on and film_brake.at_beginning(book, key, now)}
        free = [(key, place) for key, place in spots if key not in held]
        if free:
            planned = {key: self._planned(key) for key in keys}
            self._make(
                lambda book: tick_places(
                    book,
                    free,
                    now,
                    on=on,
                    planned=planned,
                    airbrushes={
                        key: logbook.usual_airbrush(book, key, picture.plan) for key in keys
                    },
                )
            )
        waiting = [spot for spot in spots if spot[0] in held]
        for key in dict.fromkeys(key for key, _ in waiting[1:]):
            self.held_up.emit(key)
        if waiting:
            self.tick(*waiting[0], True)  # asks; the others are ticked after it

    def put_off(self, keys: list[PassKey], minute: int) -> None:
        """Wish that passes of this evening start no earlier than another, as one edit."""
        from app.service import pins  # noqa: PLC0415

        self._make(lambda book: pins.put_off(book, keys, minute))

    def done(self, key: PassKey) -> None:
        """Note in the logbook that a pass was done, ending now."""
        from app.service import air_readings, film_brake, logbook  # noqa: PLC0415

        book, picture, now = self._session.book, self._session.picture, self._session.now
        if book is None or picture is None or not logbook.knows(book, key):
            return
        plan, planned = picture.plan, self._planned(key)
        placed = plan.placement(key)
        usual = planned
        if placed is not None and placed.start < now:
            usual = now - placed.start

        def noted(held: HeldUp | None, way: GoOn | None) -> None:
            def finished(book: Book) -> Edit:
                begun = logbook.entry_of(book, key) is not None
                ready = film_brake.gone_on(book, held, way)
                length = now - held.start if held else None
                if length is None:
                    length = film_brake.likely_minutes(ready, key, now, usual)
                return logbook.finish(
                    ready,
                    key,
                    now,
                    None if begun else length,
                    planned,
                    used=logbook.usual_use(book, key, plan),
                    air=air_readings.last_read(book, now),
                    airbrush=logbook.usual_airbrush(book, key, plan),
                )

            self._make(finished)

        self._ask_first(film_brake.at_end(book, key, now, planned=usual), noted, done=True)

    def done_all(self, keys: list[PassKey]) -> None:
        """Note a whole load as done, as one edit; over a wet film it asks, one after the other."""
        from app.service.load_done import load_done  # noqa: PLC0415

        book, picture, now = self._session.book, self._session.picture, self._session.now
        if book is None or picture is None or not keys:
            return
        if len(keys) == 1:
            self.done(keys[0])
            return
        try:
            found = load_done(book, picture.plan, keys, now)
        except Refused as refused:
            self._session.troubled.emit(translated(str(refused)))
            return
        edit = found.edit
        if edit is not None:
            self._make(lambda _book: edit)
        if found.held:
            self.done(found.held[0])  # asks; the others are noted after it

    def _planned(self, key: PassKey) -> int | None:
        from app.service import logbook  # noqa: PLC0415

        book, picture = self._session.book, self._session.picture
        if book is None or picture is None or not logbook.knows(book, key):
            return None
        return logbook.planned_minutes(book, picture.plan, key)

    def _ask_first(
        self,
        held: HeldUp | None,
        noted: Callable[[HeldUp | None, GoOn | None], None],
        *,
        done: bool,
    ) -> None:
        """Note work at once, or once a person has said how it goes on."""
        if held is None:
            noted(None, None)
            return
        from app.window.evening.brake_dialog import BrakeDialog  # noqa: PLC0415

        picture = self._session.picture
        assert picture is not None
        asked = BrakeDialog(held, picture.zone, self._session.now, self._window, done=done)
        asked.goes_on.connect(lambda way: noted(held, way))
        asked.waits.connect(lambda: self.held_up.emit(held.key))
        asked.open()

    def other(self) -> None:
        """Ask for a line that tells what was really painted."""
        from app.window.evening.other_work_dialog import OtherWorkDialog  # noqa: PLC0415

        if self._session.book is not None:
            OtherWorkDialog(self._session, self._window).open()

    def gaps(self) -> None:
        """Show what the gaps of the coming days are good for."""
        from app.service import pins  # noqa: PLC0415
        from app.window.evening.gaps_dialog import GapsDialog  # noqa: PLC0415

        picture = self._session.picture
        if picture is None:
            return

        def take(gap: FreeGap, offer: GapOffer) -> Refused | None:
            return self._session.attempt(lambda book: pins.pin_to(book, offer.key, gap.stretch))

        GapsDialog(picture, self._session.now, take, self._window).open()

    def close_evening(self, parent: QWidget | None = None) -> None:
        """Ask what the evening leaves behind, and end it."""
        from app.service import logbook  # noqa: PLC0415
        from app.service.closing_evening import summary  # noqa: PLC0415
        from app.window.evening.closing_dialog import ClosingDialog  # noqa: PLC0415

        book, picture, now = self._session.book, self._session.picture, self._session.now
        if book is None or picture is None:
            return
        cups = {name: held.coating for name, held in logbook.cups_now(book, now).items()}
        found = summary(
            book, picture.plan, picture.sheet, now, cups,
            since=picture.evening_began, cure=picture.cure,
        )  # fmt: skip
        ClosingDialog(self._session, picture, found, parent or self._window).open()

    def hour(self) -> None:
        """Make the stretch that runs an hour longer, or begin one now."""
        from app.service import bench_events  # noqa: PLC0415

        self._make(lambda book: bench_events.longer(book, self._session.now, HOUR))

    def stop(self) -> None:
        """End the stretch that runs."""
        from app.service import bench_events  # noqa: PLC0415

        self._make(lambda book: bench_events.stop(book, self._session.now))

    def lost(self) -> None:
        """Be away in the next stretch after all."""
        from app.service import bench_events  # noqa: PLC0415

        picture = self._session.picture
        if picture is None:
            return
        stretch = picture.calendar.next_stretch(self._session.now)
        today = moment_of(self._session.now, picture.zone).date()
        self._make(lambda book: bench_events.lost(book, stretch.on if stretch else today))

    def days_off(self) -> None:
        """Ask for days off."""
        from app.window.bench_time.dialogs import AwayDialog  # noqa: PLC0415

        if self._session.book is not None:
            AwayDialog(self._session, self._today(), self._window).open()

    def more_time(self) -> None:
        """Ask for bench time beside the usual."""
        from app.window.bench_time.dialogs import ExtraDialog  # noqa: PLC0415

        if self._session.book is not None:
            ExtraDialog(self._session, None, self._today(), self._window).open()

    def _today(self) -> date:
        return moment_of(self._session.now, self._session.zone).date()

    def take_back(self) -> None:
        """Take back what was done last, a fact of the logbook as well."""
        self._session.take_back()

    def looked(self, key: PassKey, state: State, reached: bool) -> None:
        """Note that a film was looked at."""
        from app.service import bench_events  # noqa: PLC0415

        now = self._session.now
        if reached:
            self._make(lambda book: bench_events.looked(book, key, now, state, reached=True))
        else:
            self._make(lambda book: bench_events.tacky(book, key, now, state))

    def _make(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        if refused is not None:
            self._session.troubled.emit(translated(str(refused)))
