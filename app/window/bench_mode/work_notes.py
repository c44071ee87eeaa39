"""Work begun and places ticked at the bench, asked first where a film is not ready."""

from __future__ import annotations

from collections.abc import Callable

from app.service import film_brake, logbook
from app.service.edits import Edit
from app.service.film_brake import GoOn, HeldUp
from app.window.bench_mode.brake_question import Noted, ask_first
from app.window.bench_mode.choice_prompt import Asked
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.refusal import Refused

Make = Callable[[Book], Edit]
Remember = Callable[[], None] | None


class WorkNotes:
    """Notes that work begins; ``make`` makes an edit, ``ask`` shows a question.

    ``shown`` is the plan on screen, None before there is one.
    """

    def __init__(
        self,
        session: Session,
        shown: Callable[[], PlanSnapshot | None],
        make: Callable[[Make, Remember], Refused | None],
        ask: Callable[[Asked], None],
    ) -> None:
        self._session, self._shown, self._make, self._ask = session, shown, make, ask

    def held_up(self, key: PassKey) -> HeldUp | None:
        """Return what holds up a pass that is to begin now."""
        book, picture = self._session.book, self._shown()
        if book is None or picture is None:
            return None
        return film_brake.at_beginning(book, key, self._session.now, picture.cure)

    def ask_first(self, held: HeldUp | None, noted: Noted, *, done: bool = False) -> None:
        """Note at once, or once a person has said how it goes on."""
        picture = self._shown()
        if picture is not None:
            ask_first(held, picture, self._session.now, noted, self._ask, done=done)

    def begin(
        self, key: PassKey, planned: int | None, airbrush: str | None, remember: Remember = None
    ) -> None:
        """Note that a pass begins now."""

        def noted(held: HeldUp | None, way: GoOn | None) -> None:
            self._make(
                lambda book: logbook.begin(
                    film_brake.gone_on(book, held, way),
                    key,
                    self._session.now,
                    planned,
                    airbrush=airbrush,
                ),
                remember,
            )

        self.ask_first(self.held_up(key), noted)

    def tick(self, row: WorkRow, place: str, *, on: bool) -> None:
        """Tick a place off, or not after all; the first begins the work."""

        def noted(held: HeldUp | None, way: GoOn | None) -> None:
            self._make(
                lambda book: logbook.tick(
                    film_brake.gone_on(book, held, way),
                    row.key,
                    place,
                    self._session.now,
                    on=on,
                    planned=row.minutes,
                    airbrush=row.airbrush or None,
                ),
                None,
            )

        self.ask_first(self.held_up(row.key), noted)
