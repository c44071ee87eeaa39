"""The brake on wet films by the command line: asked on a terminal, refused elsewhere."""

from __future__ import annotations

import io
from dataclasses import replace
from pathlib import Path

import pytest
from small_book import CART, PROJECT, slow_primer, small_book

from app.command_line import main
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.project import Event, Project
from storage.bench_book import BenchBook

EARLY = ("start", "cart/sand", "--at", "2031-03-06T19:50")


class Desk:
    """A book whose primer asks for half an hour by the clock; it is primed from 19:30 to 19:40."""

    def __init__(self, path: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.path, self._capsys = path, capsys

    def log(self, *argv: str) -> tuple[int, str, str]:
        status = main(["log", *argv, "--book", str(self.path)])
        said = self._capsys.readouterr()
        return status, said.out, said.err

    @property
    def project(self) -> Project:
        with BenchBook.open(self.path) as bench:
            return bench.book().project(PROJECT)


def half_an_hour() -> Book:
    book = small_book()
    label = (Window(opens=Mark(minutes=30)),)
    return replace(
        book,
        coatings=tuple(
            replace(coating, recoat=label) if coating.name == "grey primer" else coating
            for coating in book.coatings
        ),
    )


def desk_of(book: Book, path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    BenchBook.create(path, book).close()
    desk = Desk(path, capsys)
    status, _, _ = desk.log("done", "cart/prime", "--at", "2031-03-06T19:40", "--minutes", "10")
    assert status == 0
    return desk


@pytest.fixture
def desk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    return desk_of(half_an_hour(), tmp_path / "bench.tackfree", capsys)


@pytest.fixture
def film(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    """A desk whose primer is waited for by its film, not by the clock."""
    return desk_of(slow_primer(small_book()), tmp_path / "film.tackfree", capsys)


def at_a_terminal(monkeypatch: pytest.MonkeyPatch, answers: str) -> None:
    typed = io.StringIO(answers)
    typed.isatty = lambda: True  # type: ignore[method-assign]
    monkeypatch.setattr("sys.stdin", typed)
    monkeypatch.setattr("app.command_line.brake_prompt._somebody_there", lambda: True)


def test_without_a_terminal_it_is_refused_with_the_ways_on(desk: Desk) -> None:
    status, out, err = desk.log(*EARLY)
    assert (status, out) == (2, "")
    (line,) = err.splitlines()
    assert "is ready 20:10, not before" in line  # 19:40 and half an hour
    assert "the risk: the wait that was asked for is not over" in line
    assert line.endswith("wait until 20:10, or say --all-the-same")
    assert [fact.step for fact in desk.project.log] == ["prime"]


def test_an_option_says_it_beforehand_and_it_is_marked(desk: Desk) -> None:
    status, _, _ = desk.log(*EARLY, "--all-the-same")
    assert status == 0
    (mark,) = desk.project.diary
    assert (mark.event, mark.text) == (Event.TOO_SOON, "20 min before grey primer was ready")
    assert desk.log("done", "cart/sand", "--at", "2031-03-06T20:02")[0] == 0  # asked once


def test_a_look_is_believed_where_a_look_can_tell(desk: Desk, film: Desk) -> None:
    status, _, err = desk.log(*EARLY, "--looked-dry")
    assert (status, "no look can tell that" in err) == (2, True)
    status, _, err = film.log(*EARLY)
    assert (status, "say --looked-dry if you have waited and it is dry" in err) == (2, True)
    assert film.log(*EARLY, "--looked-dry")[0] == 0
    assert [look.step for look in film.project.observed] == ["prime"]
    assert film.project.diary == ()


@pytest.mark.parametrize(
    ("answers", "status", "logged"),
    [
        ("w\n", 2, ["prime"]),
        ("", 2, ["prime"]),  # the end of what is typed is no word to go on
        ("x\n\na\n", 0, ["prime", "sand"]),
    ],
)
def test_on_a_terminal_it_is_asked(
    desk: Desk, monkeypatch: pytest.MonkeyPatch, answers: str, status: int, logged: list[str]
) -> None:
    at_a_terminal(monkeypatch, answers)
    found, _, err = desk.log(*EARLY)
    assert found == status
    assert "w: wait, a: go on all the same? " in err
    assert [fact.step for fact in desk.project.log] == logged


def test_told_done_it_counts_from_the_minutes_told(desk: Desk) -> None:
    """From 20:05 on it is too early by five minutes; from 20:10 on it is not."""
    status, _, err = desk.log("done", "cart/sand", "--at", "2031-03-06T20:20", "--minutes", "15")
    assert (status, "ready 20:10" in err) == (2, True)
    assert desk.log("done", "cart/sand", "--at", "2031-03-06T20:20", "--minutes", "10")[0] == 0
    assert desk.project.diary == ()
    assert desk.project.log[-1].model == CART


def test_the_ways_go_with_beginning_and_ending_only(desk: Desk) -> None:
    status, _, err = desk.log("tacky", "cart/prime", "--all-the-same")
    assert (status, "--all-the-same" in err) == (2, True)
