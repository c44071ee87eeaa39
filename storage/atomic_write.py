"""Writing a file as a whole: the old one or the new one is there, never half of it."""

from __future__ import annotations

import os
import secrets
import stat
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from planner.values.refusal import Refused

MODE = 0o666  # of a new file; the umask takes away what others shall not do


def put_whole(path: Path, data: bytes) -> None:
    """Write a file so that it has its name only once it is whole and on the disk.

    A link stays one, and what it names is written.  Permissions of a file
    that was there stay; a new one heeds the umask.  A pipe or a device takes
    the bytes as they come: put in its place, a file would be the end of it.

    Raises
    ------
    OSError
        If it cannot be written; nothing is left of it then.
    """
    path = Path(os.path.realpath(path))  # resolve() raises on links that go in circles
    mode = path.stat().st_mode if path.exists() else None
    if mode is not None and not stat.S_ISREG(mode):
        path.write_bytes(data)
        return
    with unfinished(path) as half:
        handle = os.open(
            half, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), MODE
        )
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if mode is not None:
            half.chmod(stat.S_IMODE(mode))
        half.replace(path)
        settle(path.parent)


@contextmanager
def unfinished(path: Path) -> Iterator[Path]:
    """Give a name beside ``path`` that nobody else uses; what still has it in the end goes.

    Whatever goes wrong with it is told of ``path``: nobody asked for the other name.
    """
    half = path.with_name(f".{path.name[:40]}.{secrets.token_hex(6)}.part")
    try:
        yield half
    except Refused as trouble:
        if trouble.place != str(half):
            raise
        raise type(trouble)(str(path), trouble.mend) from trouble
    except OSError as problem:
        if problem.filename in (half, str(half)):
            problem.filename = str(path)
        raise
    finally:
        with suppress(OSError):
            half.unlink(missing_ok=True)


def name_new(half: Path, path: Path) -> None:
    """Give a finished file its name, and never in place of another one.

    Raises
    ------
    FileExistsError
        If the name is taken, be it since a moment ago; the other file stays.
    OSError
        If it cannot be named.
    """
    if sys.platform == "win32":
        half.rename(path)  # refuses a name that is taken
        return
    try:
        os.link(half, path)
    except FileExistsError:
        raise
    except OSError:  # a disk without hard links: take the name first, then fill it
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, MODE))
        half.replace(path)
    else:
        half.unlink()
    settle(path.parent)


def settle(folder: Path) -> None:
    """Have the names in a folder on the disk, where the system can."""
    with suppress(OSError):  # no such thing on Windows, nor on every disk
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
