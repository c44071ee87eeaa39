"""The program's log: what went wrong and where in the program, and nothing of a person's own.

A line says which module, which kind of fault, and the places in the code.
What a fault says in words may hold a name that somebody gave to a model, so
it is left out.
"""

from __future__ import annotations

import faulthandler
import logging
import platform
import sys
import traceback
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType
from typing import IO, Final

import platformdirs

MOST_BYTES: Final = 200_000  # of one file of the log
KEPT: Final = 3  # older files
REPORTS: Final = 10  # that are kept
LAST_LINES: Final = 60  # of the log, in a report
ROOT: Final = Path(__file__).parents[2]

log = logging.getLogger(__name__)


def folder() -> Path:
    """Return where the log lies."""
    return Path(platformdirs.user_log_dir("tackfree", appauthor=False))


class Impersonal(logging.Formatter):
    """Writes the literal of a message, never what was put in, and faults by place alone."""

    def format(self, record: logging.LogRecord) -> str:
        """Return one entry."""
        at = datetime.fromtimestamp(record.created).astimezone()
        line = f"{at:%Y-%m-%d %H:%M:%S} {record.levelname} {record.name}: {record.msg!s}"
        if record.exc_info and record.exc_info[1] is not None:
            line += "\n" + told(record.exc_info[1])
        return line


def told(problem: BaseException) -> str:
    """Return the kind of a fault and its places in the code, causes first."""
    lines = []
    if (before := problem.__cause__ or problem.__context__) is not None:
        lines += [told(before), "  which led to"]
    lines.append(f"  {type(problem).__module__}.{type(problem).__qualname__}")
    for frame in traceback.extract_tb(problem.__traceback__):
        lines.append(f"    {_place(frame.filename)}:{frame.lineno} {frame.name}")
    return "\n".join(lines)


def begin() -> None:
    """Write warnings and faults to the log from now on; where there is no place, to none."""
    try:
        folder().mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(
            folder() / "tackfree.log", maxBytes=MOST_BYTES, backupCount=KEPT, encoding="utf-8"
        )
    except OSError:
        return
    handler.setFormatter(Impersonal())
    handler.setLevel(logging.WARNING)
    logging.getLogger().addHandler(handler)
    logging.raiseExceptions = False  # a full disk ends nothing


def watch_for_crashes() -> IO[str] | None:
    """Have the interpreter write where it was if it dies; return the file, which must stay open."""
    try:
        file = (folder() / "crash.txt").open("w", encoding="utf-8")
    except OSError:
        return None
    faulthandler.enable(file)
    return file


def report(problem: BaseException) -> Path | None:
    """Write what a person may send with word of a fault; return where, None for no place."""
    about = [
        "Tackfree report. Read it before you share it: it names no model, no person, no file.",
        "",
        f"Tackfree {_version('tackfree')}, Python {platform.python_version()}, "
        f"{platform.system()} {platform.release()}, Qt {_version('PySide6-Essentials')}",
        "",
        told(problem),
        "",
        "The end of the log:",
    ]
    with suppress(OSError):
        lines = (folder() / "tackfree.log").read_text("utf-8", errors="replace").splitlines()
        about += lines[-LAST_LINES:]
    path = folder() / f"report-{datetime.now():%Y-%m-%dT%H-%M-%S}.txt"  # noqa: DTZ005
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("\n".join(about) + "\n", "utf-8")
    except OSError:
        return None
    for old in sorted(folder().glob("report-*.txt"))[:-REPORTS]:
        with suppress(OSError):
            old.unlink()
    return path


def catch_all(tell: Callable[[BaseException, Path | None], None]) -> None:
    """Log whatever nobody expected, wherever it comes up, report it, and tell of it once.

    What is told again and again would help nobody: the log has it all.
    """
    told_of: set[str] = set()

    def caught(
        kind: type[BaseException], problem: BaseException, trace: TracebackType | None
    ) -> None:
        if issubclass(kind, KeyboardInterrupt | SystemExit):
            sys.__excepthook__(kind, problem, trace)
            return
        log.error("unforeseen", exc_info=(kind, problem, trace))
        what = told(problem)
        if what not in told_of:
            told_of.add(what)
            tell(problem, report(problem))

    sys.excepthook = caught


class StartMark:
    """Stands on the disk from the start of a window until it has shown its book.

    One that is found there says that the last window died before that.
    """

    def __init__(self) -> None:
        self._path = folder() / "starting"
        self.died = self._path.exists()
        with suppress(OSError):
            self._path.parent.mkdir(parents=True, exist_ok=True)
            self._path.touch()

    def stands(self) -> None:
        """Note that the window stands."""
        with suppress(OSError):
            self._path.unlink(missing_ok=True)


def _place(filename: str) -> str:
    path = Path(filename)
    with suppress(ValueError):
        return path.relative_to(ROOT).as_posix()
    return path.name


def _version(package: str) -> str:
    # The library that knows is slow to load, and a start waits for this module.
    from app.service.program_version import version_of  # noqa: PLC0415

    return version_of(package) or "(not installed)"
