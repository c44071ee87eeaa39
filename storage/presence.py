"""Who has a bench book open: told to the second, and to nobody's harm.

A lock of the operating system on a small hidden file beside the book; it
goes with the process, however that ends.  It only informs: what keeps two
programs from harming each other is SQLite and the revision.
"""

from __future__ import annotations

import os
import socket
import sys
from pathlib import Path
from typing import IO, Final

_FAR: Final = 1 << 20  # the byte that is locked; Windows would bar reading of a nearer one


class Presence:
    """A note beside a book that it is in use; ``other`` says who was there before, or ""."""

    def __init__(self, book: Path) -> None:
        self.other = ""
        self._file: IO[str] | None = None
        try:
            self._file = book.with_name(f".{book.name}.open").open("a+", encoding="utf-8")
        except OSError:
            return  # a folder that may not be written: opening the book itself says so
        if _locked(self._file):
            self._file.truncate(0)
            self._file.write(f"process {os.getpid()} on {socket.gethostname()}")
            self._file.flush()
        else:
            self._file.seek(0)
            self.other = self._file.read(200).strip() or "another program"

    def leave(self) -> None:
        """Take the note away."""
        if self._file is not None:
            self._file.close()
            self._file = None


def _locked(file: IO[str]) -> bool:
    """Try to lock the far byte, without waiting."""
    try:
        if sys.platform == "win32":
            import msvcrt  # noqa: PLC0415

            file.seek(_FAR)
            msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl  # noqa: PLC0415

            fcntl.flock(file.fileno(), fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        return False
    return True


def in_use(book: Path) -> bool:
    """Tell whether somebody has a book open now; no note is left, and none is made."""
    try:
        file = book.with_name(f".{book.name}.open").open("r+", encoding="utf-8")
    except (OSError, ValueError):  # nobody had it open yet, or it is no path at all
        return False
    with file:
        return not _locked(file)
