"""Pipes and devices are read like files, or refused; none is waited for without end."""

import os
import threading
from pathlib import Path

import pytest

from planner.values.refusal import Refused
from storage import bounded_read
from storage.atomic_write import put_whole
from storage.bounded_read import read_bounded

posix = pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="has no named pipes")


@pytest.fixture(autouse=True)
def _little_patience(monkeypatch):
    monkeypatch.setattr(bounded_read, "PATIENCE_SECONDS", 0.3)


def test_a_file_is_read_to_one_byte_more_than_asked(tmp_path):
    path = tmp_path / "file"
    path.write_bytes(b"abcdef")
    assert read_bounded(path, 10) == b"abcdef"
    assert read_bounded(path, 4) == b"abcde"


@posix
def test_a_pipe_that_somebody_writes_to_is_read(tmp_path, monkeypatch):
    monkeypatch.setattr(bounded_read, "PATIENCE_SECONDS", 20)
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    writer = threading.Thread(target=pipe.write_bytes, args=(b"x" * 200_000,))
    writer.start()
    assert read_bounded(pipe, 10**6) == b"x" * 200_000
    writer.join()


@posix
def test_a_pipe_that_nobody_writes_to_is_refused(tmp_path):
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    with pytest.raises(Refused, match="not all comes"):
        read_bounded(pipe, 10)


@posix
@pytest.mark.parametrize("device", ["/dev/zero", "/dev/urandom"])
def test_a_device_without_end_is_cut(device):
    assert len(read_bounded(Path(device), 100_000)) == 100_001


@pytest.mark.parametrize("name", ["missing", "", "a\0b"])
def test_what_cannot_be_read_is_refused(tmp_path, name):
    with pytest.raises(Refused) as caught:
        read_bounded(tmp_path / name, 10)
    assert "\n" not in str(caught.value)


@posix
@pytest.mark.parametrize(("umask", "mode"), [(0o022, 0o644), (0o077, 0o600), (0o027, 0o640)])
def test_a_new_file_heeds_the_umask(tmp_path, umask, mode):
    before = os.umask(umask)
    try:
        put_whole(tmp_path / "new", b"x")
    finally:
        os.umask(before)
    assert (tmp_path / "new").stat().st_mode & 0o777 == mode
