"""A second start with a book that is open brings its window forward, and ends."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from small_book import NOW, small_book
from window_steps import MakeWindow

from app.service import second_start
from app.service.second_start import ANSWER, Request
from app.window.main_window import MainWindow
from app.window.second_start import SecondStarts
from storage.bench_book import BenchBook
from storage.exchange import Exchange, dump

pytestmark = pytest.mark.skipif(
    not hasattr(socket, "AF_UNIX"), reason="this system has no such sockets"
)
Start = Callable[..., tuple[int, str]]


@pytest.fixture(autouse=True)
def runtime(monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A folder of sockets of this test's own; pytest's folders are too deep for a socket."""
    with tempfile.TemporaryDirectory(prefix="tackfree-") as folder:
        monkeypatch.setenv("XDG_RUNTIME_DIR", folder)
        yield Path(folder)


@pytest.fixture
def raised() -> list[MainWindow]:
    return []


@pytest.fixture
def window(
    make_window: MakeWindow, raised: list[MainWindow], monkeypatch: pytest.MonkeyPatch
) -> MainWindow:
    """Return a window that notes when it is raised; offscreen nothing lies above it."""
    made = make_window(small_book(), NOW)
    monkeypatch.setattr(made, "raise_", lambda: raised.append(made))
    return made


@pytest.fixture
def starts(window: MainWindow) -> SecondStarts:
    listening = SecondStarts(window.session, window)
    window.session.opened.emit()
    return listening


@pytest.fixture
def start(qtbot) -> Start:
    """Return how to run the program in another process while this one's window goes on."""

    def run(*argv: object, **env: str) -> tuple[int, str]:
        child = subprocess.Popen(
            [sys.executable, "-m", "app", *map(str, argv)],
            env={**os.environ, **env},
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        qtbot.waitUntil(lambda: child.poll() is not None, timeout=30_000)
        out, err = child.communicate()
        return child.returncode, out + err

    return run


def test_the_window_comes_forward_and_the_second_start_ends(
    window: MainWindow, raised: list[MainWindow], starts: SecondStarts, start: Start
) -> None:
    window.showMinimized()
    status, said = start("--book", window.session.path)
    assert status == 0
    assert said == f"{window.session.path} is open already; its window has come forward\n"
    assert not window.windowState() & Qt.WindowState.WindowMinimized
    assert raised == [window]
    status, said = start("open", window.session.path, XDG_ACTIVATION_TOKEN="leave")
    assert (status, os.environ.pop("XDG_ACTIVATION_TOKEN")) == (0, "leave")


def test_another_path_to_the_book_is_the_same_book(
    window: MainWindow, starts: SecondStarts, start: Start
) -> None:
    path = window.session.path
    assert path is not None
    status, _ = start("--book", path.parent / "." / ".." / path.parent.name / path.name)
    assert status == 0


def test_an_exchange_file_comes_to_the_open_window(
    qtbot, window: MainWindow, starts: SecondStarts, start: Start, tmp_path: Path
) -> None:
    taken: list[Path] = []
    starts.file.connect(taken.append)
    file = tmp_path / "yard.json"
    file.write_bytes(dump(Exchange(small_book())))
    assert start("--book", window.session.path, "open", file)[0] == 0
    qtbot.waitUntil(lambda: taken == [file])


def test_no_window_is_asked_that_has_another_book_by_now(
    window: MainWindow, starts: SecondStarts, start: Start, tmp_path: Path
) -> None:
    before, other = window.session.path, tmp_path / "other.tackfree"
    BenchBook.create(other, small_book()).close()
    window.session.open(other)
    assert start("--book", other)[0] == 0
    status, said = start("--book", before)  # there is no display to open a window on
    assert (status, "no window can be opened" in said) == (2, True)


def test_a_book_that_only_a_command_has_open_is_opened(start: Start, tmp_path: Path) -> None:
    path = tmp_path / "book.tackfree"
    with BenchBook.create(path, small_book()):
        status, said = start("--book", path)
    assert (status, "no window can be opened" in said) == (2, True)


def test_what_a_killed_window_left_is_no_hindrance(
    window: MainWindow, starts: SecondStarts, start: Start
) -> None:
    session = window.session
    assert session.path is not None
    place = second_start.address(session.path)
    assert place is not None
    session.closed.emit()
    assert not place.exists()
    with socket.socket(socket.AF_UNIX) as line:
        line.bind(str(place))
    assert not second_start.hand_over(session.path)  # nobody listens
    session.opened.emit()
    assert start("--book", session.path)[0] == 0


@pytest.mark.parametrize(
    "sent",
    [
        *(b"", b"\xff", b"[]", b"[" * 60_000, b" " * 70_000),
        *(b'{"file": 1, "token": ""}', b'{"file": "a\\u0000", "token": ""}'),
    ],
)
def test_what_is_no_request_is_not_answered(
    qtbot, window: MainWindow, starts: SecondStarts, sent: bytes
) -> None:
    assert window.session.path is not None
    with socket.socket(socket.AF_UNIX) as line:
        line.connect(str(second_start.address(window.session.path)))
        line.settimeout(0.0)
        with suppress(OSError):  # more than the line takes at once
            line.sendall(sent)
        line.shutdown(socket.SHUT_WR)
        heard: list[bytes] = []

        def answered() -> bool:
            try:
                heard.append(line.recv(len(ANSWER)))
            except BlockingIOError:
                return False
            except ConnectionError:  # it did not even read to the end
                heard.append(b"")
            return True

        qtbot.waitUntil(answered)
    assert heard == [b""]
    assert window.isVisible()


def test_a_request_comes_as_it_was_sent() -> None:
    for one in (Request(), Request(Path("/a b/ü.json"), "token")):
        assert Request.from_bytes(one.to_bytes()) == one


def test_without_a_folder_of_the_system_one_of_our_own_is_made(
    runtime: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("XDG_RUNTIME_DIR")
    monkeypatch.setattr(tempfile, "tempdir", str(runtime))
    kept = second_start.folder()
    assert kept == runtime / f"tackfree-{os.getuid()}"
    assert kept.stat().st_mode & 0o777 == 0o700
    kept.rmdir()
    kept.symlink_to(runtime)
    assert second_start.folder() is None


def test_a_folder_that_others_may_enter_is_not_used(runtime: Path) -> None:
    (runtime / "tackfree").mkdir()
    (runtime / "tackfree").chmod(0o755)
    assert second_start.folder() is None
    assert second_start.address(runtime / "book") is None
    assert not second_start.hand_over(runtime / "book")
