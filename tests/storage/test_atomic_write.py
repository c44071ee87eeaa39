"""A file is written whole, where it is, and as it was."""

from __future__ import annotations

import os
import stat
import sys
import threading
from pathlib import Path

import pytest

from storage.atomic_write import put_whole, unfinished
from storage.errors import BookDamaged

posix = pytest.mark.skipif(sys.platform == "win32", reason="links, pipes and modes of POSIX")


@posix
def test_a_link_stays_a_link(tmp_path: Path) -> None:
    target, link = tmp_path / "real.csv", tmp_path / "link.csv"
    target.write_bytes(b"old")
    link.symlink_to(target)
    put_whole(link, b"new")
    assert link.is_symlink()
    assert target.read_bytes() == b"new"
    assert sorted(one.name for one in tmp_path.iterdir()) == ["link.csv", "real.csv"]


@posix
def test_permissions_of_a_file_that_was_there_stay(tmp_path: Path) -> None:
    path = tmp_path / "mine.csv"
    path.write_bytes(b"old")
    path.chmod(0o600)
    put_whole(path, b"new")
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


@posix
def test_a_pipe_is_written_into_and_not_replaced(tmp_path: Path) -> None:
    path = tmp_path / "pipe"
    os.mkfifo(path)
    heard: list[bytes] = []
    reader = threading.Thread(target=lambda: heard.append(path.read_bytes()), daemon=True)
    reader.start()
    put_whole(path, b"new")
    reader.join(5)
    assert heard == [b"new"]
    assert stat.S_ISFIFO(path.stat().st_mode)


def test_what_goes_wrong_is_told_of_the_file_that_was_asked_for(tmp_path: Path) -> None:
    asked = tmp_path / "gone" / "bench.tackfree"
    with pytest.raises(FileNotFoundError) as missing:
        put_whole(asked, b"data")
    assert missing.value.filename == str(asked)
    with pytest.raises(BookDamaged) as told, unfinished(asked) as half:
        raise BookDamaged(str(half), "is damaged")
    assert told.value.place == str(asked)
    other = str(tmp_path / "other.tackfree")
    with pytest.raises(BookDamaged) as told, unfinished(asked):
        raise BookDamaged(other, "is damaged")
    assert told.value.place == other
