"""Menu entry, icon and file types, read by the tools of the desktop's own specifications."""

from __future__ import annotations

import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest
from small_book import small_book

from app.command_line import main
from app.service import desktop
from planner.values.refusal import Refused
from storage.bench_book import BenchBook
from storage.exchange import Exchange, dump

pytestmark = pytest.mark.skipif(
    sys.platform in ("win32", "darwin"), reason="desktop entries are for Linux and its like"
)
PACKAGES = {  # Debian's
    "desktop-file-validate": "desktop-file-utils",
    "update-desktop-database": "desktop-file-utils",
    "appstreamcli": "appstream",
    "xdg-mime": "xdg-utils",
    "update-mime-database": "shared-mime-info",
    "gio": "libglib2.0-bin",
}


def ran(program: str, *argv: object) -> str:
    """Run one of the desktop's tools and return what it printed; skip where it is not there."""
    if shutil.which(program) is None:
        pytest.skip(f"{program} is not there (Debian: {PACKAGES[program]})")
    done = subprocess.run(
        [program, *map(str, argv)], capture_output=True, text=True, check=False, timeout=60
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout.strip()


@pytest.fixture
def data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty data folder, and a desktop whose tools read the shared MIME database."""
    folder = tmp_path / "data"
    monkeypatch.setenv("XDG_DATA_HOME", str(folder))
    monkeypatch.setenv("XDG_CURRENT_DESKTOP", "GNOME")  # else xdg-mime asks a program without it
    return folder


def files_of(folder: Path) -> set[str]:
    return {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}


def test_the_menu_entry_keeps_the_desktop_entry_specification(data: Path) -> None:
    desktop.install()
    ran("desktop-file-validate", data / "applications" / "tackfree.desktop")
    ran("desktop-file-validate", Path(desktop.__file__).with_name("tackfree.desktop"))


def test_the_description_keeps_the_appstream_specification(data: Path) -> None:
    desktop.install()
    ran("appstreamcli", "validate", "--no-net", data / "metainfo" / "tackfree.metainfo.xml")


def test_the_desktop_knows_our_files_and_opens_them_with_us(data: Path, tmp_path: Path) -> None:
    desktop.install()
    book, exchange = tmp_path / "a.tackfree", dump(Exchange(small_book()))
    BenchBook.create(book, small_book()).close()
    (tmp_path / "without an ending").write_bytes(book.read_bytes())
    for name in ("a.tackfree.json", "a.json"):
        (tmp_path / name).write_bytes(exchange)
    (tmp_path / "other.json").write_text('{"someone": "else"}')
    ran("update-desktop-database", data / "applications")
    ran("gio", "version")
    for kind, names in {
        "application/x-tackfree-book": ("a.tackfree", "without an ending"),
        "application/x-tackfree-project+json": ("a.tackfree.json", "a.json"),
        "application/json": ("other.json",),
    }.items():
        for name in names:
            assert ran("xdg-mime", "query", "filetype", tmp_path / name) == kind
        opened_by = ran("xdg-mime", "query", "default", kind)
        assert (opened_by == "tackfree.desktop") is ("tackfree" in kind)


def test_the_entry_starts_this_installation_whatever_its_folder_is_called(
    data: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """GLib reads the quoting of Exec: white space, a quote, a dollar, a backslash."""
    odd = tmp_path / 'an "odd" $HOME\\ `folder`'
    odd.mkdir()
    told, script = tmp_path / "told", odd / "tackfree"
    script.write_text(f'#!/bin/sh\nprintf "%s\\n" "$@" > "{told}.new"\nmv "{told}.new" "{told}"\n')
    script.chmod(0o755)
    monkeypatch.setattr(sys, "executable", str(odd / "python3"))
    desktop.install()
    book = tmp_path / "my book.tackfree"
    ran("gio", "launch", data / "applications" / "tackfree.desktop", book)
    for _ in range(200):
        if told.exists():
            break
        time.sleep(0.05)
    assert told.read_text().splitlines() == ["open", str(book)]


def test_without_a_script_the_interpreter_starts_the_package(
    data: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "executable", str(tmp_path / "python3"))
    desktop.install()
    entry = (data / "applications" / "tackfree.desktop").read_text("utf-8")
    assert f'Exec="{tmp_path}/python3" "-m" "app" open %f\n' in entry


def test_what_is_installed_is_removed_and_nothing_else(
    data: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (data / "applications").mkdir(parents=True)
    other = data / "applications" / "other.desktop"
    other.write_text("[Desktop Entry]\nType=Application\nName=Other\nExec=true\n")
    for _ in range(2):
        assert main(["desktop", "install"]) == 0
    ours = {str(target.relative_to(data)) for _, target in desktop.targets()}
    assert len(ours) == 4
    assert ours <= files_of(data)
    capsys.readouterr()
    assert main(["desktop", "remove"]) == 0
    said = capsys.readouterr().out.splitlines()
    assert said == [f"removed: {target}" for _, target in desktop.targets()]
    assert not ours & files_of(data)
    assert other.exists()
    assert not (data / "icons").exists()
    assert main(["desktop", "remove"]) == 0
    assert capsys.readouterr().out == "nothing was there\n"


def test_a_missing_tool_is_named_with_what_follows(
    data: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    told = desktop.install().left
    assert [line.partition(" ")[0] for line in told] == [name for name, *_ in desktop.CACHES]
    assert all("next login" in line for line in told)


@pytest.mark.parametrize("named", ["", "relative/folder"])
def test_a_data_folder_that_is_no_absolute_path_does_not_count(
    named: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """XDG Base Directory Specification: such a path is to be ignored."""
    monkeypatch.setenv("XDG_DATA_HOME", named)
    monkeypatch.setenv("HOME", str(tmp_path))
    assert desktop.data_folder() == tmp_path / ".local" / "share"


def test_a_folder_that_cannot_be_made_is_refused_in_one_line(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "file").write_text("no folder")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "file"))
    assert main(["desktop", "install"]) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert str(tmp_path / "file") in said


@pytest.mark.parametrize("platform", ["win32", "darwin"])
def test_elsewhere_it_is_refused(platform: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", platform)
    with pytest.raises(Refused, match="Linux"):
        desktop.install()
