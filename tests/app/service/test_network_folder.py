"""A book on another machine is warned about; the lines are those of proc(5)."""

from pathlib import Path

import pytest

from app.service.network_folder import kind_of_disk, warning

MOUNTS = """\
22 1 8:1 / / rw,relatime shared:1 - ext4 /dev/sda1 rw
36 22 0:45 / /srv/net\\040folder rw,relatime shared:2 - nfs4 server:/x rw
40 22 0:50 / /srv/host rw shared:3 master:1 - fuse.sshfs me@host:/ rw
41 40 8:2 / /srv/host/disk rw - xfs /dev/sdb1 rw
odd line
"""


@pytest.fixture
def mounts(tmp_path):
    path = tmp_path / "mountinfo"
    path.write_text(MOUNTS)
    return path


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("/srv/book.tackfree", "ext4"),
        ("/srv/net folder/a/book.tackfree", "nfs4"),
        ("/srv/host/book.tackfree", "fuse.sshfs"),
        ("/srv/host/disk/book.tackfree", "xfs"),
    ],
)
def test_the_nearest_mount_counts(mounts, path, kind):
    assert kind_of_disk(Path(path), mounts) == kind
    assert (warning(Path(path), mounts) is not None) == (kind in ("nfs4", "fuse.sshfs"))


def test_a_system_that_does_not_say_warns_of_nothing(tmp_path):
    assert warning(Path("/srv/book"), tmp_path / "none") is None
