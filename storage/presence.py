"""Who has a bench book open: told to the second, and to nobody's harm.

A lock of the operating system on a small hidden file beside the book; it
goes with the process, however that ends.  It only informs: what keeps two
programs from harming each other is SQLite and the revision.
"""

from __future__ import annotations

import os
import socket
import sys
import threading
from contextlib import suppress
from pathlib import Path
from typing import IO, Final

_FAR: Final = 1 << 20  # the byte that is locked; Windows would bar reading of a nearer one
_LOCK: Final = threading.Lock()
_OURS: Final[dict[Path, tuple[IO[str], int]]] = {}  # notes of this process, and how many hold each


class Presence:
    """A note beside a book that it is in use; ``other`` says who was there before, or "".

    A program that opens a book twice is no other.
    """

    def __init__(self, book: Path) -> None:
        self.other = ""
        self._note: Path | None = book.with_name(f".{book.name}.open")
        with _LOCK:
            if self._note in _OURS:
                file, count = _OURS[self._note]
                _OURS[self._note] = file, count + 1
                return
            try:
                file = self._note.open("a+", encoding="utf-8")
            except OSError:  # a folder that may not be written: opening the book itself says so
                self._note = None
                return
            if _locked(file):
                _OURS[self._note] = file, 1
                with suppress(OSError):  # a full disk keeps no name, but the lock all the same
                    file.truncate(0)
                    file.write(f"process {os.getpid()} on {socket.gethostname()}")
                    file.flush()
            else:
                file.seek(0)
                self.other = file.read(200).strip() or "another program"
                file.close()
                self._note = None

    def leave(self) -> None:
        """Take the note away."""
        with _LOCK:
            if self._note is None:
                return
            file, count = _OURS.pop(self._note)
            if count > 1:
                _OURS[self._note] = file, count - 1
            else:
                with suppress(OSError):  # what a full disk did not take
                    file.close()
            self._note = None


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
        note = Path(os.path.realpath(book))  # as the book is opened: links followed
        file = note.with_name(f".{note.name}.open").open("r+", encoding="utf-8")
    except (OSError, ValueError):  # nobody had it open yet, or it is no path at all
        return False
    with file:
        return not _locked(file)
