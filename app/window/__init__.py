"""The window: everything of Tackfree that uses Qt."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path


def run(
    book: Path | Callable[[str], Path] | None = None,
    now: int | None = None,
    exchange: Path | None = None,
) -> int:
    """Open the window on a bench book and return its exit status when it is closed.

    Parameters
    ----------
    book
        Where the book lies; None is the person's own, begun if there is none.  A function makes
        one in the language of the window (BCP 47) and says where.
    now
        Minute at which to start the window's clock; None is the real time.
    exchange
        An exchange file that is to be taken into the book.
    """
    from app.window.start import run_window  # noqa: PLC0415 - Qt is loaded only when asked for

    return run_window(book, now, exchange)
