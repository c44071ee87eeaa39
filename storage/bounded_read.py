"""Reading a file that somebody names, be it a pipe: no longer and no more than is sensible."""

from __future__ import annotations

import os
import select
import stat
import sys
import time
from pathlib import Path
from typing import Final

from planner.values.message import message
from planner.values.refusal import Refused

PATIENCE_SECONDS: Final = 4.0  # with what is no file; whoever writes to a pipe does so soon
AT_ONCE: Final = 1 << 16  # bytes


def read_bounded(path: Path, most: int) -> bytes:
    """Return the bytes of a file, one more than ``most`` where there are more.

    A pipe, a terminal or a device is read as long as something comes, and
    not longer than a few seconds.

    Raises
    ------
    Refused
        If it cannot be read, or nothing comes.
    """
    try:
        handle = os.open(
            path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)
        )
        try:
            if stat.S_ISREG(os.fstat(handle).st_mode) or sys.platform == "win32":
                with os.fdopen(os.dup(handle), "rb") as file:
                    return file.read(most + 1)
            return _read_stream(path, handle, most)
        finally:
            os.close(handle)
    except OSError as problem:
        why = problem.strerror or type(problem).__name__
        raise Refused(
            str(path), message("cannot be read ({why}); check the path", why=why)
        ) from problem
    except ValueError as problem:  # a zero byte in the path
        if isinstance(problem, Refused):
            raise
        raise Refused(repr(str(path)), message("is no path; check it")) from problem


def _read_stream(path: Path, handle: int, most: int) -> bytes:
    """Read what is no file; an end before anything came may be a pipe that nobody writes to yet."""
    data = bytearray()
    until = time.monotonic() + PATIENCE_SECONDS
    while len(data) <= most:
        left = until - time.monotonic()
        if left <= 0:
            raise Refused(
                str(path), message("is a pipe or a device from which not all comes; give a file")
            )
        if not select.select([handle], [], [], min(left, 0.1))[0]:
            continue
        try:
            part = os.read(handle, min(AT_ONCE, most + 1 - len(data)))
        except BlockingIOError:
            continue
        if not part and data:
            break
        if not part:
            time.sleep(0.02)
        data += part
    return bytes(data)
