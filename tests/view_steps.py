"""One view on a scratch book without the window around it, for tests of forms and lists."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from PySide6.QtWidgets import QApplication, QDialog, QWidget

from app.window.session import Session
from planner.values.book import Book
from storage.bench_book import BenchBook

_made: list[tuple[Book, bytes]] = []


def _put(path: Path, book: Book) -> None:
    """Make a file of a book; a second one of the same book is a copy, which is quicker."""
    for known, content in _made:
        if known == book:
            path.write_bytes(content)
            return
    BenchBook.create(path, book).close()
    _made.append((book, path.read_bytes()))


@contextmanager
def shown(
    make: Callable[[Session], Any], book: Book, now: int, folder: Path
) -> Iterator[tuple[Any, Session]]:
    """Show a view of a new book; it follows every edit, as the main window lets it."""
    path = folder / "bench.tackfree"
    _put(path, book)
    session = Session(lambda: now)
    assert session.open(path)
    view = make(session)
    session.edited.connect(view.show_book)
    view.resize(780, 700)
    view.show()
    view.show_book()
    yield view, session
    session.close()
    view.close()
    view.deleteLater()


def dialog_of(view: QWidget, kind: type) -> Any:
    """Return the one dialog of a kind that is open, once it has the keys."""
    QApplication.processEvents()
    (found,) = [one for one in view.findChildren(kind) if one.isVisible()]
    assert isinstance(found, QDialog)
    return found


def back_to(view: QWidget) -> None:
    """Let a window have the keys again, as every desktop but the offscreen one does."""
    QApplication.processEvents()
    view.activateWindow()
    QApplication.processEvents()
