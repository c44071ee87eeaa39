"""Telling a folder on another machine, where locks of files do not always hold."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

from planner.values.message import Message, message

MOUNTS: Final = Path("/proc/self/mountinfo")  # proc(5)
OVER_THE_NET: Final = frozenset(
    {"nfs", "nfs4", "cifs", "smb3", "smbfs", "ncpfs", "afs", "9p", "davfs", "ceph", "glusterfs"}
    | {"fuse.sshfs", "fuse.davfs2", "fuse.rclone", "fuse.s3fs", "fuse.gvfsd-fuse"}
)


def kind_of_disk(path: Path, mounts: Path = MOUNTS) -> str:
    """Return the kind of file system that a file lies on; "" where the system does not say."""
    try:
        lines = mounts.read_text("utf-8", errors="replace").splitlines()
    except OSError:
        return ""
    found, length = "", -1
    for line in lines:
        before, _, after = line.partition(" - ")
        words = before.split()
        if len(words) < 5 or not after:
            continue
        point = Path(re.sub(r"\\(\d{3})", lambda octal: chr(int(octal[1], 8)), words[4]))
        if path.is_relative_to(point) and len(point.parts) >= length:
            found, length = after.split()[0], len(point.parts)
    return found


def warning(path: Path, mounts: Path = MOUNTS) -> Message | None:
    """Return what to say of a book in a network folder; None for any other."""
    kind = kind_of_disk(path, mounts)
    if kind not in OVER_THE_NET and not str(path).startswith("\\\\"):  # \\server\share on Windows
        return None
    return message(
        "This book lies in a network folder ({kind}): have it open on one machine at a time, "
        "for not every network keeps two from writing at once.",
        kind=kind or "UNC",
    )
