"""Which file an open bench book is: known by what it is, not by its name."""

from __future__ import annotations

import os
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from planner.values.message import message
from storage.errors import BookLost, told_plainly

_FLAGS = os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0)


class _Handles:
    """Handles of files of books, closed only while no transaction runs.

    A process that closes a file loses every lock that it has on it (POSIX,
    ``fcntl``), those of SQLite in another thread included.
    """

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._running = 0
        self._waiting: list[int] = []

    @contextmanager
    def busy(self) -> Iterator[None]:
        """Let no handle be closed meanwhile."""
        with self._lock:
            self._running += 1
        try:
            yield
        finally:
            with self._lock:
                self._running -= 1
                self._close()

    def close(self, handle: int) -> None:
        """Close a handle as soon as may be."""
        with self._lock:
            self._waiting.append(handle)
            self._close()

    def _close(self) -> None:
        while self._waiting and not self._running:
            os.close(self._waiting.pop())


HANDLES = _Handles()


def first_bytes(path: Path, count: int) -> bytes:
    """Return the first bytes of a file that may be a book in use; raise `OSError` if it cannot."""
    handle = os.open(path, _FLAGS)
    try:
        return os.read(handle, count)
    finally:
        HANDLES.close(handle)


class HeldFile:
    """The file that lay under a name when it was held.

    It stays readable here, even when it has no name any more.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        with told_plainly(path):
            self._handle: int | None = os.open(path, _FLAGS)
            there = os.fstat(self._handle)
        self._own = there.st_dev, there.st_ino

    def check(self) -> None:
        """See that the name still leads to this very file.

        Raises
        ------
        BookLost
            If it leads nowhere, or to another file.
        """
        try:
            there = self.path.stat()
        except OSError:
            raise self._gone() from None
        if (there.st_dev, there.st_ino) != self._own:
            raise BookLost(
                str(self.path),
                message(
                    "is another file now: something was laid in its place; save yours elsewhere"
                ),
            )

    def moved_to(self) -> Path | None:
        """Return where the file lies now, if that can be told; None if it has no name left."""
        if self._handle is None:
            return None
        with suppress(OSError):
            if os.fstat(self._handle).st_nlink:
                now = Path(f"/proc/self/fd/{self._handle}").readlink()
                there = now.stat()
                if (there.st_dev, there.st_ino) == self._own:
                    return now
        return None

    def content(self) -> bytes:
        """Return the bytes of the file, wherever it lies now.

        Raises
        ------
        BookTrouble
            If they cannot be read.
        """
        assert self._handle is not None
        parts = []
        with told_plainly(self.path):
            os.lseek(self._handle, 0, os.SEEK_SET)
            while part := os.read(self._handle, 1 << 20):
                parts.append(part)
        return b"".join(parts)

    def close(self) -> None:
        """Let go of it."""
        if self._handle is not None:
            HANDLES.close(self._handle)
            self._handle = None

    def _gone(self) -> BookLost:
        where = self.moved_to()
        if where is not None:
            return BookLost(
                str(self.path), message("was moved to {where}; open it there", where=str(where))
            )
        return BookLost(
            str(self.path),
            message("is gone: deleted, moved, or its disk is off; save yours elsewhere"),
        )
