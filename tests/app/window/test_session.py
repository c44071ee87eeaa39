"""What the session promises: nothing stale is shown, and failures are told."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from small_book import NOW, PROJECT, small_book

from app.service import edits
from app.service.planning_errors import Stopped, Unsound
from app.window import planning_jobs as module
from app.window.plan_snapshot import PlanChange, PlanSnapshot, picture_of
from app.window.session import Session
from planner.schedule.judge.verdict import Verdict, Violation
from planner.values.plan import Cost
from storage.bench_book import BenchBook

ROOT = Path(__file__).parents[3]
HOLDS = """
import sys
from pathlib import Path
from storage.bench_book import BenchBook

with BenchBook.open(Path(sys.argv[1])):
    print(flush=True)
    sys.stdin.read()
"""


@pytest.fixture
def session(tmp_path: Path):
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    made = Session(lambda: NOW)
    yield made, path
    made.close()


def test_answers_to_an_older_book_are_thrown_away(qtbot, session) -> None:
    made, path = session
    shown: list[PlanChange] = []
    made.pictured.connect(shown.append)
    with qtbot.waitSignal(made.planning, check_params_cb=lambda busy: not busy, timeout=20_000):
        made.open(path)
        for degrees in (10, 12, 14):
            made.attempt(lambda book, warm=degrees: edits.set_air(book, "", warm, 50))
    assert {change.new.book for change in shown} == {made.book}
    assert made.book.room.locations[0].workdays[0].temperature_c == 14


def test_the_quick_answer_comes_first_and_is_replaced_only_by_a_better(qtbot, session) -> None:
    made, path = session
    shown: list[PlanSnapshot] = []
    made.pictured.connect(lambda change: shown.append(change.new))
    with qtbot.waitSignal(made.planning, check_params_cb=lambda busy: not busy, timeout=20_000):
        made.open(path)
    costs = [picture.plan.cost.in_order()[:-1] for picture in shown]
    assert costs == sorted(costs, reverse=True)
    assert len(set(costs)) == len(costs)
    full = picture_of(small_book(), NOW).plan.cost.in_order()[:-1]
    assert costs[-1] <= full


def test_a_plan_that_the_judge_refuses_is_never_shown(
    qtbot, session, monkeypatch: pytest.MonkeyPatch
) -> None:
    made, path = session
    verdict = Verdict((Violation(13, "hands", "two at once"),), (), Cost(0, 0, 0, 0, 0), ())

    def unsound(*_args: object, **_more: object) -> PlanSnapshot:
        raise Unsound(verdict)

    monkeypatch.setattr(module, "picture_of", unsound)
    told: list[str] = []
    made.troubled.connect(told.append)
    with qtbot.waitSignal(made.planning, check_params_cb=lambda busy: not busy, timeout=20_000):
        made.open(path)
    assert made.picture is None
    assert len(told) == 1
    assert "definition 13" in told[0]


def test_a_missing_book_is_told(session, tmp_path: Path) -> None:
    made, _ = session
    told: list[str] = []
    made.troubled.connect(told.append)
    assert not made.open(tmp_path / "none.tackfree")
    assert "there is no bench book yet" in told[0]
    (tmp_path / "junk.tackfree").write_bytes(b"not a book at all" * 100)
    assert not made.open(tmp_path / "junk.tackfree")
    assert len(told) == 2
    assert made.book is None


def test_the_second_program_is_told_that_the_book_is_open(qtbot, session) -> None:
    made, path = session
    told: list[str] = []
    made.troubled.connect(told.append)
    with subprocess.Popen(
        [sys.executable, "-c", HOLDS, str(path)],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, cwd=ROOT, text=True,
    ) as other:  # fmt: skip
        assert other.stdout is not None
        assert other.stdin is not None
        other.stdout.readline()
        made.open(path)
        other.stdin.close()
    assert "open elsewhere" in told[0]


def test_a_book_that_is_opened_again_is_open_nowhere_else(qtbot, session) -> None:
    made, path = session
    told: list[str] = []
    made.troubled.connect(told.append)
    link = path.with_name("link.tackfree")
    link.symlink_to(path)
    with BenchBook.open(path):
        made.open(link)
        made.open(path)
    assert told == []


def test_an_edit_that_changes_nothing_is_none(qtbot, session) -> None:
    made, path = session
    made.open(path)
    same = edits.set_target(made.book, PROJECT, made.book.project(PROJECT).target)
    assert not made.apply(same)
    assert made.undo_name() == ""


def test_an_edit_need_not_wait_for_what_is_planned_for_an_older_book(
    qtbot, session, monkeypatch: pytest.MonkeyPatch
) -> None:
    made, path = session
    stuck: list[Callable[[], bool]] = []

    def endless(book, now, *, quick=False, stop, **more):
        if not quick and not stuck:
            stuck.append(stop)
            while not stop():
                time.sleep(0.005)
            raise Stopped
        return picture_of(book, now, quick=quick, stop=stop, **more)

    monkeypatch.setattr(module, "picture_of", endless)
    made.open(path)
    qtbot.waitUntil(lambda: bool(stuck), timeout=20_000)
    with qtbot.waitSignal(made.pictured, timeout=20_000):
        made.attempt(lambda book: edits.set_air(book, "", 17, 50))
    assert stuck[0]()
    assert made.picture.book == made.book


def test_planning_stops_in_the_middle_of_a_search() -> None:
    asked: list[int] = []

    def stop() -> bool:
        asked.append(1)
        return len(asked) > 3

    with pytest.raises(Stopped):
        picture_of(small_book(), NOW, stop=stop)
    assert len(asked) == 4
