"""Writing a file as a whole: the old one or the new one is there, never half of it."""

from __future__ import annotations

import os
import stat
import tempfile
from pathlib import Path

READABLE = 0o644  # what a new file may: all may read it


def put_whole(path: Path, data: bytes) -> None:
    """Write a file so that it has its name only once it is whole and on the disk.

    A link stays one, and what it names is written.  Permissions of a file
    that was there stay.  A pipe or a device takes the bytes as they come:
    put in its place, a file would be the end of it.

    Raises
    ------
    OSError
        If it cannot be written; nothing is left of it then.
    """
    path = Path(os.path.realpath(path))  # resolve() raises on links that go in circles
    mode = path.stat().st_mode if path.exists() else stat.S_IFREG | READABLE
    if not stat.S_ISREG(mode):
        path.write_bytes(data)
        return
    handle, name = tempfile.mkstemp(dir=path.parent or Path(), prefix=f".{path.name[:40]}.")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        Path(name).chmod(stat.S_IMODE(mode))
        Path(name).replace(path)
    except OSError:
        Path(name).unlink(missing_ok=True)
        raise
