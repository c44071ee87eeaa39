"""A whole project by the keyboard: seven evenings on which not all goes as planned."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

from bench_steps import AtTheBench
from PySide6.QtCore import QSettings, Qt
from small_book import NOW, ZONE, slow_primer, small_book, steps

from app.service.build_record import build_record
from app.service.document import DocumentTable
from app.window.main_window import MainWindow
from app.window.session import Session
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.moment import minute_of, moment_of
from planner.values.project import Event
from planner.values.step import Application, Minutes, Role, Stage, Step, Tool
from storage import photos
from storage.bench_book import BenchBook

Key = Qt.Key
Typed = dict[tuple[str, int], tuple[int, int]]


def evenings_book() -> Book:
    """Return the small book with a filter and a matte coat, and time on every evening."""
    book = slow_primer(small_book())
    prime, sand, gloss, wash, wipe = steps()
    tint = Step(
        id="filter",
        stage=Stage.FILTER,
        applications=(Application(places=("tub",), coating="warm filter"),),
        minutes=Minutes(fixed=15),
    )
    matte = Step(
        id="matte",
        stage=Stage.MATTE,
        applications=(Application(places=("tub",), coating="matte clear"),),
        tool=Tool.AIRBRUSH,
        minutes=Minutes(fixed=10),
        role=Role.FINAL,
    )
    (model,) = book.projects[0].models
    model = replace(model, steps=(prime, sand, gloss, tint, wash, wipe, matte))
    daily = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 6), start="19:30", end="21:30")
    return replace(
        book,
        coatings=(
            *book.coatings,
            Coating(name="warm filter", family=Family.ALKYD_ENAMEL, swatch="#a07040"),
            Coating(name="matte clear", family=Family.WATERBORNE_ACRYLIC, finish=Finish.MATTE),
        ),
        bench_time=replace(book.bench_time, stretches=(daily,)),
        projects=(replace(book.projects[0], models=(model,), target=date(2031, 3, 30)),),
    )


class Evenings(AtTheBench):
    """Seven evenings; ``typed`` is what was done when, kept apart from the program."""

    typed: Typed
    braked: list[str]

    evenings = 1

    def next_evening(self) -> None:
        """Come to the bench when the plan has something to do again."""
        picture = self.picture
        starts = [placement.start for placement in picture.plan.placements if not placement.logged]
        stretch = picture.calendar.stretch_at(min(start for start in starts if start >= self.now))
        assert stretch is not None
        self.now = max(self.now, stretch.interval.start)
        self.evenings += 1
        self.window.session.replan()
        self.settle()
        self.bench.evening.begin_to_show()

    def do_job(self) -> str:
        """Wait for the job on screen and do it in the minutes that it takes; return its name."""
        job = self.job
        self.now = max(self.now, job.row.start)
        self.bench.clock_moved()
        if job.work is None:
            self.now += job.row.minutes
            self.press(Key.Key_Space)
            return job.name[0]
        begun = self.begin()
        self.now = begun + job.work.minutes
        self.finish(begun)
        return job.work.key.step

    def begin(self) -> int:
        """Press S; where a last coat brakes, look and go on."""
        self.press(Key.Key_S)
        if self.bench.asked is not None:
            self.braked.append(self.job.work.key.step)  # type: ignore[union-attr]
            assert "Ready for matte?" in self.bench.asked.title
            self.press(Key.Key_Space)
        return self.now

    def finish(self, begun: int) -> None:
        """Press Space, and remember what was done."""
        key = self.job.work.key  # type: ignore[union-attr]
        self.press(Key.Key_Space)
        self.typed[key.step, key.coat] = (begun, self.now)

    def until(self, step: str) -> None:
        """Do everything up to a step, which is then on screen."""
        for _ in range(12):
            if step in self.doing:
                return
            self.do_job()
        raise AssertionError(f"{step} never came; {self.doing} did")

    def rest_of_evening(self) -> None:
        """Do all that is left, but nothing after the end of the stretch."""
        while self.doing:
            self.do_job()


def restart(qtbot, here: Evenings, settings: QSettings) -> None:
    """End the program and start it again, as after a power cut: nothing but files is kept."""
    path = here.window.session.path
    here.window.close()
    here.window.deleteLater()
    session = Session(lambda: here.now)
    window = MainWindow(session, settings)
    window.show()
    session.open(path)
    here.sit_down(window)


def recorded(book: Book, now: int, path: Path) -> list[tuple[str, int]]:
    """Return time and minutes of each piece of work that the build record tells."""
    record = build_record(book, now, photos.folder_of(path))
    told = [
        dict(zip(block.head, row, strict=True))  # a column that is empty is left out
        for block in record.blocks
        if isinstance(block, DocumentTable) and {"time", "minutes"} <= set(block.head)
        for row in block.rows
    ]
    return sorted((line["time"], int(line["minutes"].split()[0])) for line in told)


def test_seven_evenings(qtbot, tmp_path) -> None:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, evenings_book()).close()
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    session = Session(lambda: NOW)
    window = MainWindow(session, settings)
    window.show()
    session.open(path)
    here = Evenings(qtbot, window, NOW)
    here.typed, here.braked = {}, []

    # First evening: the airbrush is loaded, and the program ends in the middle of that load.
    here.press(Key.Key_Space)
    begun = here.begin()
    here.press(Key.Key_1)
    here.now += 4
    restart(qtbot, here, settings)
    assert here.job.begun == begun
    assert here.job.ticked == {"tub/bed"}
    assert here.bench.evening.cups == {"fine brush": "grey primer"}
    here.press(Key.Key_2)
    here.now += 6
    here.finish(begun)
    assert here.do_job().startswith("clean")
    # The primer is still tacky when it should not be: sand goes to another time.
    planned = here.job.row.start
    here.now = planned
    here.press(Key.Key_K)
    here.choose("prime")
    assert here.project.observed[-1].reached is False
    assert not here.doing or here.job.row.start > planned
    here.press(Key.Key_C, Key.Key_Escape)

    # Second: sand, then an early end.
    here.next_evening()
    here.until("sand")
    here.do_job()
    here.press(Key.Key_E, Key.Key_Escape)
    assert here.project.diary[-1].event is Event.STOPPED
    assert all(
        placement.start > here.now
        for placement in here.picture.plan.placements
        if not placement.logged
    )

    # Third: gloss, with a note.
    here.next_evening()
    here.until("gloss")
    here.press(Key.Key_M)
    here.type("two thin passes")
    here.do_job()
    here.rest_of_evening()

    # Fourth: the filter is left out; the wash is laid, but nobody wipes it back in time.
    here.next_evening()
    here.until("filter")
    here.press(Key.Key_N)
    here.choose("it looks good without")
    assert "filter" not in {step.id for step in here.project.models[0].steps}
    while "wash" not in here.doing:
        here.next_evening()
    here.do_job()
    begun, _ = here.typed["wash", 1]
    here.now = begun + 65
    here.window.session.replan()
    here.settle()
    here.press(Key.Key_W)
    here.choose("late")
    here.next_evening()
    here.rest_of_evening()

    # It is dropped: touch up what broke, gloss over it, and the last coat with its brake.
    here.press(Key.Key_R)
    here.choose("sand")
    here.choose("dropped")
    here.choose("touch up")
    while not all(placed.logged for placed in here.picture.plan.placements):
        here.next_evening()
        here.rest_of_evening()

    assert here.evenings == 7
    assert here.braked == ["matte"]
    assert here.picture.plan.unplaced == ()
    log = {
        (entry.step, entry.coat): (minute_of(entry.start), minute_of(entry.end))
        for entry in here.project.log
        if entry.end is not None
    }
    assert log == here.typed
    assert recorded(here.book, here.now, path) == sorted(
        (moment_of(begun, ZONE).strftime("%H:%M"), ended - begun)
        for begun, ended in here.typed.values()
    )
    told = [line.event for line in here.project.diary]
    assert told == [
        Event.TACKY,
        Event.STOPPED,
        Event.NOTE,
        Event.SKIPPED,
        Event.MISSED,
        Event.DROPPED,
    ]
    assert here.project.diary[2].text == "two thin passes"
    assert here.verdicts >= 30  # the judge accepted every plan, see `settle`
    book = here.book
    path = here.window.session.path
    here.window.close()
    here.window.deleteLater()
    with BenchBook.open(path) as again:
        assert again.book() == book
