"""Where the program starts: the window without a command, else the command line."""

from __future__ import annotations

import importlib
import sys
from collections.abc import Sequence
from pathlib import Path

from app.command_line import main as command_line
from app.service.display_probe import Probe
from planner.values.refusal import Refused


def open_window(book: Path | None, now: int | None) -> int:
    """Open the window on a book and return its exit status when it is closed.

    Raises
    ------
    Refused
        If no window can be shown here.
    """
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

    return run(book, now)


def main(argv: Sequence[str] | None = None) -> int:
    """Run ``tackfree``."""
    return command_line(argv, open_window=open_window)


if __name__ == "__main__":
    sys.exit(main())
