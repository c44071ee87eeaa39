"""What a second start says to the window that has its book open already.

Two processes of one person on one machine talk over a socket of the
operating system, in a folder that nobody else may enter.  Where a system has
no such sockets, nobody answers, and the second start opens a window of its own.
"""

from __future__ import annotations

import hashlib
import json
import os
import socket
import stat
import tempfile
from dataclasses import dataclass
from pathlib import Path
from typing import Final

MOST_BYTES: Final = 1 << 16
ANSWER: Final = b"here"
PATIENCE_SECONDS: Final = 5.0  # a window may be drawing just then
TOKENS: Final = ("XDG_ACTIVATION_TOKEN", "DESKTOP_STARTUP_ID")


@dataclass(frozen=True)
class Request:
    """An exchange file to take in, if any, and the desktop's leave to come forward."""

    file: Path | None = None
    token: str = ""

    def to_bytes(self) -> bytes:
        """Write it for the way."""
        file = str(self.file) if self.file else ""
        return json.dumps({"file": file, "token": self.token}).encode()

    @classmethod
    def from_bytes(cls, data: bytes) -> Request | None:
        """Read it; None for anything else."""
        try:
            raw = json.loads(data)
            file, token = raw["file"], raw["token"]
        except (ValueError, TypeError, LookupError, RecursionError):
            return None
        if not (isinstance(file, str) and isinstance(token, str)) or "\0" in file + token:
            return None
        return cls(Path(file) if file else None, token)


def folder() -> Path | None:
    """Return the folder of the sockets, made if need be; None where it would not be ours alone.

    It lies in ``$XDG_RUNTIME_DIR`` (XDG Base Directory Specification), or
    bears the person's number among the temporary files.
    """
    if not hasattr(socket, "AF_UNIX"):
        return None
    runtime = Path(os.environ.get("XDG_RUNTIME_DIR", ""))
    apart = Path(tempfile.gettempdir()) / f"tackfree-{os.getuid()}"
    kept = runtime / "tackfree" if runtime.is_absolute() else apart
    try:
        kept.mkdir(mode=0o700, parents=True, exist_ok=True)
        state = kept.lstat()
    except OSError:
        return None
    ours = stat.S_ISDIR(state.st_mode) and state.st_uid == os.getuid()
    return kept if ours and not state.st_mode & 0o077 else None


def address(book: Path) -> Path | None:
    """Return where the window that has a book open listens, if it can."""
    kept = folder()
    name = hashlib.sha256(os.fsencode(os.path.realpath(book))).hexdigest()[:16]
    return kept / name if kept else None


def hand_over(book: Path, file: Path | None = None) -> bool:
    """Ask the window that has ``book`` open to come forward; tell whether it does.

    Parameters
    ----------
    file
        An exchange file that it shall take in.
    """
    place = address(book)
    if place is None or not place.exists():
        return False
    token = next((os.environ[name] for name in TOKENS if os.environ.get(name)), "")
    asked = Request(file.absolute() if file else None, token)
    try:
        with socket.socket(socket.AF_UNIX) as line:
            line.settimeout(PATIENCE_SECONDS)
            line.connect(str(place))
            line.sendall(asked.to_bytes())
            line.shutdown(socket.SHUT_WR)
            return line.recv(len(ANSWER)) == ANSWER
    except (OSError, ValueError):  # gone, deaf, or a path that is too long for a socket
        return False
