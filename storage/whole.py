"""Writing a file as a whole: the old one or the new one is there, never half of it."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path


def put_whole(path: Path, data: bytes) -> None:
    """Write a file so that it has its name only once it is whole and on the disk.

    Raises
    ------
    OSError
        If it cannot be written; nothing is left of it then.
    """
    handle, name = tempfile.mkstemp(dir=path.parent or Path(), prefix=f".{path.name[:40]}.")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        Path(name).chmod(0o644)
        Path(name).replace(path)
    except OSError:
        Path(name).unlink(missing_ok=True)
        raise
