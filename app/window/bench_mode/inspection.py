"""A look that a step asks for: when it is due, and what it has shown."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.service import bench_events
from app.service.edits import Edit
from app.window import reasons, words
from app.window.bench_mode.choice_prompt import Asked, Line
from app.window.run_sheet_notes_words import look_at_words
from planner.evening.looks import DueLook, looks
from planner.values.book import Book
from planner.values.plan import PassKey


class Looking:
    """Asks what a look has shown.

    ``make`` makes an edit, ``ask`` shows a question, ``wrong`` asks how
    work went wrong, ``now`` is the minute that runs.
    """

    def __init__(
        self,
        make: Callable[[Callable[[Book], Edit]], object],
        ask: Callable[[Asked], None],
        wrong: Callable[[PassKey], None],
        now: Callable[[], int],
    ) -> None:
        self._make, self._ask, self._wrong, self._now = make, ask, wrong, now

    def following(self, book: Book, end: int) -> DueLook | None:
        """Return the look that is due, or comes next before ``end``."""
        now = self._now()
        return next((look for look in looks(book, now) if look.at < max(end, now + 1)), None)

    def due(self, book: Book) -> DueLook | None:
        """Return the look that is due now."""
        now = self._now()
        return next((look for look in looks(book, now) if look.at <= now), None)

    def ask(self, look: DueLook) -> None:
        """Ask what the look has shown; as it should be, or else what went wrong."""
        key = look.key
        lines = (
            Line(words.tr("As it should be"), "", partial(self._seen, key)),
            Line(
                words.tr("Something is wrong"),
                words.tr("choose how to mend it"),
                partial(self._wrong, key),
            ),
            Line(words.tr("Type what is to be seen"), "", partial(self._type, key)),
        )
        about = (words.capital(look_at_words(look)),)
        self._ask(Asked(words.tr("Have a look"), lines, about))

    def _seen(self, key: PassKey, text: str = "") -> None:
        self._make(lambda book: bench_events.seen(book, key, self._now(), text))

    def _type(self, key: PassKey) -> None:
        self._ask(
            Asked(
                words.tr("What is to be seen?"),
                about=(words.capital(reasons.key_name(key)),),
                typed=partial(self._seen, key),
                hint=words.tr("type, then Enter"),
            )
        )
