"""The process that improves plans: it sends judged plans, and its death costs nothing."""

from __future__ import annotations

import contextlib
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from app.service import demos, improving
from app.service.improving import Improved, Improver, Task, improvements
from app.service.looking import looked_into
from app.service.planning import Planned, plan
from planner.schedule.judge import judge
from planner.schedule.optimise.effort import Effort

ROOT = Path(__file__).parents[3]
LONG = 600  # seconds that no test waits for: the search is over long before, or it timed out


@pytest.fixture(scope="module")
def tenders() -> tuple[Task, Planned]:
    """Return a search that goes on for minutes."""
    book = demos.read("harbour_tenders").book
    planned = plan(book, demos.first_evening(book))
    return Task(book, planned.plan), planned


def test_what_comes_is_sound_and_never_dearer() -> None:
    book = demos.read("lone_lamplighter").book
    first = plan(book, demos.first_evening(book)).plan
    faults: list[str] = []
    task = Task(book, first, effort=Effort(rolls=1, proofs=1))
    found = list(improvements(task, LONG, faults.append))
    assert found
    assert faults == []  # it came to its own end
    for item in found:
        assert judge(book, item.plan).accepted
        assert item.plan.cost.in_order() <= first.cost.in_order()
        assert {bound.level for bound in item.plan.bounds} == {"unplaced", "late", "finish"}


def test_a_stopped_process_is_gone_at_once(tenders: tuple[Task, Planned]) -> None:
    improver = Improver(tenders[0])
    began = time.monotonic()
    improver.stop()
    assert time.monotonic() - began < 0.1  # nobody waits for a process that is waking up
    improver._starting.join(60)
    assert not improver._process.is_alive()
    assert not improver.running
    assert improver.fault == ""


def test_another_task_takes_the_place_of_the_one_that_is_worked_at(
    tenders: tuple[Task, Planned],
) -> None:
    book = demos.read("lone_lamplighter").book
    little = Task(book, plan(book, demos.first_evening(book)).plan, effort=Effort(1, 1))
    improver = Improver(tenders[0])
    try:
        while not improver.news():  # it is in the middle of its work
            time.sleep(0.05)
        process = improver._process.pid
        improver.turn_to(None)
        improver.turn_to(little)
        came: list[Improved] = []
        while improver.running:
            came += improver.news()
            time.sleep(0.05)
        assert improver.fault == ""
        assert came
        assert {one.plan.placements[0].key.project for one in came} == {book.projects[0].name}
        assert improver._process.pid == process
    finally:
        improver.stop()


# -- faults -----------------------------------------------------------------------------------


@pytest.mark.skipif(not hasattr(signal, "SIGSTOP"), reason="needs the signals of a Unix")
@pytest.mark.parametrize(
    ("number", "told"),
    [("SIGKILL", "signal 9"), ("SIGABRT", "signal 6"), ("SIGSTOP", "no longer answers")],
)
def test_a_process_that_dies_or_stands_still_is_told_in_one_line(
    monkeypatch: pytest.MonkeyPatch,
    capfd: pytest.CaptureFixture[str],
    tenders: tuple[Task, Planned],
    number: str,
    told: str,
) -> None:
    monkeypatch.setattr(improving, "SILENT_SECONDS", 0.5)  # of a second for each sign of life
    monkeypatch.setattr(improving.time, "sleep", lambda _seconds: strike())
    begun: list[Improver] = []
    real = Improver.__init__

    def remember(self: Improver, task: Task) -> None:
        real(self, task)
        begun.append(self)

    def strike() -> None:
        begun[0]._starting.join()
        with contextlib.suppress(ProcessLookupError):
            os.kill(begun[0]._process.pid or 0, getattr(signal, number))
        begun[0]._process.join(0.05)

    monkeypatch.setattr(Improver, "__init__", remember)
    task, planned = tenders
    faults: list[str] = []
    assert looked_into(planned, task.book, LONG, faults.append) is planned
    assert len(faults) == 1
    assert "\n" not in faults[0]
    assert told in faults[0]
    assert "the plan stays" in faults[0]
    assert not begun[0]._process.is_alive()
    assert capfd.readouterr() == ("", "")


def test_a_process_that_cannot_begin_is_told_in_one_line(
    monkeypatch: pytest.MonkeyPatch, tenders: tuple[Task, Planned]
) -> None:
    def refused(_self: object) -> None:
        raise BlockingIOError(11, "Resource temporarily unavailable")

    spawned = improving.multiprocessing.get_context("spawn").Process
    monkeypatch.setattr(spawned, "start", refused)
    task, planned = tenders
    faults: list[str] = []
    assert looked_into(planned, task.book, LONG, faults.append) is planned
    assert len(faults) == 1
    assert "cannot be started" in faults[0]


@pytest.mark.parametrize("fault", ["raise ImportError('no such part')", "import nosuchthing"])
def test_without_its_library_a_plan_is_still_printed(tmp_path: Path, fault: str) -> None:
    """The command as a person types it, with a solver that cannot be loaded."""
    (tmp_path / "ortools").mkdir()
    (tmp_path / "ortools" / "__init__.py").write_text(fault, encoding="utf-8")
    file = tmp_path / "lamplighter.json"
    file.write_bytes(demos.data("lone_lamplighter"))
    command = ["-m", "app.entry", "plan", str(file), "--now", "2026-03-02T18:00", "--seconds", "60"]
    said = subprocess.run(
        [sys.executable, *command],
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(tmp_path), str(ROOT)])},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    told = [line for line in said.stderr.splitlines() if not line.startswith("planning ...")]
    assert said.returncode == 0
    assert "of bench time" in said.stdout
    assert len(told) == 1
    assert "its library cannot be loaded" in told[0]


PARENT = """
import sys, time
from app.service import demos, planning
from app.service.improving import Improver, Task
if __name__ == "__main__":
    book = demos.read("club_day_batch").book
    improver = Improver(Task(book, planning.plan(book, demos.first_evening(book)).plan))
    while not improver.news():
        time.sleep(0.05)
    print(improver._process.pid, flush=True)
    time.sleep(600)
"""


@pytest.mark.skipif(not Path("/proc/self/stat").exists(), reason="needs /proc to see processes")
def test_no_process_outlives_the_program_that_began_it(tmp_path: Path) -> None:
    """The search is in the middle of its work when its program is killed."""
    script = tmp_path / "parent.py"
    script.write_text(PARENT, encoding="utf-8")
    parent = subprocess.Popen(
        [sys.executable, str(script)],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stdout=subprocess.PIPE,
        text=True,
    )
    assert parent.stdout is not None
    child = Path("/proc") / parent.stdout.readline().strip()
    assert child.exists()
    parent.kill()
    killed = time.monotonic()
    parent.wait()
    while _lives(child):
        assert time.monotonic() - killed < 10  # a second is meant; the machine may be busy
        time.sleep(0.01)
    parent.stdout.close()


def _lives(process: Path) -> bool:
    """Tell whether a process is there, and not only its name for whoever asks how it ended."""
    try:
        return (process / "stat").read_text(encoding="utf-8").rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False
