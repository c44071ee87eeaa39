"""What was done with the keys of the bench mode, each to be taken back."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from app.service.edits import Edit
from app.window import words
from app.window.bench_mode.restart_state import Memory
from app.window.message_translation import edit_name
from app.window.session import Session
from planner.values.book import Book
from planner.values.refusal import Refused


@dataclass(frozen=True)
class _Done:
    """A deed: its name, and what book and memory were before it and after."""

    name: str
    before: Book
    after: Book
    memory: str


class Deeds:
    """Makes edits for the bench mode and takes them back, the last first.

    Facts of the logbook are not undone with other edits; a deed is taken
    back by an edit of its own, which leaves nothing of it.
    """

    def __init__(self, session: Session, memory: Memory) -> None:
        self._session, self.memory = session, memory
        self._done: list[_Done] = []

    def do(
        self, make: Callable[[Book], Edit], remember: Callable[[], None] | None = None
    ) -> Refused | None:
        """Make an edit, and remember what goes with it; return the refusal, if any."""
        before, kept = self._session.book, self.memory.text
        assert before is not None
        names: list[str] = []

        def named(book: Book) -> Edit:
            edit = make(book)
            names.append(edit.name)
            return edit

        refused = self._session.attempt(named)
        if refused is not None:
            return refused
        if remember is not None:
            remember()
        self._note(names[0], before, kept)
        return None

    def remember(self, name: str, change: Callable[[], None]) -> None:
        """Change the memory only; that can be taken back as well."""
        book, kept = self._session.book, self.memory.text
        assert book is not None
        change()
        self._note(name, book, kept)

    def _note(self, name: str, before: Book, kept: str) -> None:
        after = self._session.book
        assert after is not None
        self._done.append(_Done(name, before, after, kept))

    @property
    def last(self) -> str:
        """What would be taken back, "" for nothing."""
        return edit_name(self._done[-1].name) if self._done else ""

    @property
    def from_before(self) -> str:
        """What could be taken back of what was done before the bench mode was there."""
        return "" if self._done else edit_name(self._session.latest_name())

    def take_back(self) -> Refused | None:
        """Take back the last deed; refused where the book has been changed since."""
        if not self._done:
            self._session.take_back()
            return None
        done, book = self._done[-1], self._session.book
        if book is None or book != done.after:
            self._done.clear()
            mend = words.tr("the book was changed elsewhere since; use the logbook or undo")
            return Refused("", mend)
        if done.before != done.after:
            self._session.take_back()
            if self._session.book != done.before:
                mend = words.tr("“{deed}” could not be taken back").format(
                    deed=edit_name(done.name)
                )
                return Refused("", mend)
        self._done.pop()
        self.memory.text = done.memory
        return None
