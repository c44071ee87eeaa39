"""Answers on stdout, everything else on stderr."""

from __future__ import annotations

import errno
import json
import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from typing import Any
from zoneinfo import ZoneInfo

from planner.values.moment import moment_of

FINE, NOT_SOUND, BAD_INPUT = 0, 1, 2
PATIENCE_SECONDS = 1.0


class Unheard(Exception):  # noqa: N818 - it is the answer that was not heard
    """The answer cannot be written where it was sent."""


@contextmanager
def heard() -> Iterator[None]:
    """Tell what the system says of stdout from what it says of anything else.

    Raises
    ------
    BrokenPipeError
        If whoever read it has had enough.
    Unheard
        If it cannot be written.
    """
    try:
        yield
    except BrokenPipeError:
        raise
    except OSError as problem:
        full = problem.errno in (errno.ENOSPC, errno.EDQUOT)
        why = "the disk is full" if full else problem.strerror or type(problem).__name__
        raise Unheard(f"cannot be written: {why}; send it elsewhere") from problem


def answer(text: str) -> None:
    """Print a person's answer."""
    with heard():
        print(text)


def document(data: Any) -> None:
    """Print one JSON document; letters outside ASCII stay readable where they can be."""
    coding = getattr(sys.stdout, "encoding", None) or ""
    utf8 = coding.lower().replace("-", "") == "utf8"
    with heard():
        print(json.dumps(data, indent=2, ensure_ascii=not utf8, allow_nan=False))


def note(text: str) -> None:
    """Tell a person something beside the answer; where nobody can hear it, nothing ends by that."""
    with suppress(OSError):
        print(one_line(text), file=sys.stderr)


def one_line(text: str) -> str:
    """Return text without line breaks or control characters."""
    return "".join(sign if sign.isprintable() else " " for sign in text)


def iso(minute: int | None, zone: ZoneInfo) -> str | None:
    """Return a minute in ISO 8601 with its offset."""
    return None if minute is None else moment_of(minute, zone).isoformat()


@contextmanager
def progress(what: str) -> Iterator[None]:
    """Say on stderr what goes on, and for how long, once it takes over a second."""
    done = threading.Event()

    def report() -> None:
        begun = time.monotonic()
        wait = PATIENCE_SECONDS
        while not done.wait(wait):
            note(f"{what} ... {time.monotonic() - begun:.0f} s")
            wait = min(2 * wait, 10.0)

    reporter = threading.Thread(target=report, daemon=True)
    reporter.start()
    try:
        yield
    finally:
        done.set()
        reporter.join()
