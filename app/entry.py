"""Where the program starts: the window without a command, else the command line."""

from __future__ import annotations

import gc
import importlib
import logging
import os
import signal
import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from pathlib import Path

from app.command_line import main as command_line
from app.command_line.output import FINE, answer, note
from app.service.books import usual_path
from app.service.display_probe import Probe
from planner.values.refusal import Refused
from storage.presence import in_use

GARBAGE_THINGS = 50_000  # made since the last look for circles before the next
FAULT = 70  # as of sysexits: an internal fault


def open_window(
    book: Path | Callable[[str], Path] | None, now: int | None, exchange: Path | None = None
) -> int:
    """Open the window on a book and return its exit status when it is closed.

    A window that has the book open already comes forward instead.

    Parameters
    ----------
    book
        Where it lies; a function makes one in the window's language, and says where.
    exchange
        An exchange file that the window takes into the book.

    Raises
    ------
    Refused
        If no window can be shown here.
    """
    if not callable(book) and _came_forward(book or usual_path(), exchange):
        return FINE
    probe = Probe()
    missing = ""
    if not probe.hopeless:
        # Only who opens a window loads Qt, and does so while the probe tries the display.
        try:
            importlib.import_module("app.window.start")
        except ImportError as problem:  # one of Qt's libraries, as a rule
            missing = str(problem)
    why = probe.why() or missing
    if why:
        raise Refused("", f"no window can be opened ({why}); try tackfree --help")
    from app.window import run  # noqa: PLC0415

    return run(book, now, exchange)


def _came_forward(book: Path, exchange: Path | None) -> bool:
    """Let the window that has a book open come forward; tell whether there is one."""
    if not in_use(book):
        return False
    from app.service.second_start import hand_over  # noqa: PLC0415 - mostly there is none

    if not hand_over(book, exchange):
        return False
    answer(f"{book} is open already; its window has come forward")
    return True


def _ended_from_outside(number: int, _frame: object) -> None:
    """Come to an end in order, so that no folder of the moment stays behind."""
    raise SystemExit(128 + number)


def _unforeseen(problem: Exception) -> int:
    """Tell of a fault of the program in one line, and where the report of it lies."""
    from app.service import program_log  # noqa: PLC0415 - mostly there is none

    path = program_log.report(problem)
    where = f"; a report that names nothing of yours is in {path}" if path else ""
    note(f"tackfree: something unforeseen happened ({type(problem).__name__}){where}")
    return FAULT


def main(argv: Sequence[str] | None = None) -> int:
    """Run ``tackfree``."""
    # A start makes a hundred thousand things that stay, and hardly a circle of them: looking
    # for circles every 700 things, as Python does, takes a tenth of it.
    gc.set_threshold(GARBAGE_THINGS)
    for name in ("SIGTERM", "SIGHUP"):  # a window handles them in its own way
        with suppress(AttributeError, ValueError):  # not on Windows; not beside the main thread
            signal.signal(getattr(signal, name), _ended_from_outside)
    try:
        status = command_line(argv, open_window=open_window)
    except Exception as problem:
        status = _unforeseen(problem)
    background = sys.modules.get("app.window.background")
    if background is not None and background.still_runs():
        # Nobody waits for that work; the interpreter would, for minutes where a plan is great.
        logging.shutdown()
        for stream in (sys.stdout, sys.stderr):
            with suppress(OSError, ValueError):
                stream.flush()
        os._exit(status)
    return status


if __name__ == "__main__":
    sys.exit(main())
