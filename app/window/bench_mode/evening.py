"""An evening in the bench mode: which job is on, and what each key does to it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from PySide6.QtCore import QObject, QSettings, Signal

from app.service import bench_events, film_brake, logbook
from app.service.edits import Edit
from app.service.film_brake import GoOn, HeldUp
from app.window import words
from app.window.bench_mode.choice_prompt import Asked
from app.window.bench_mode.closing_words import before_you_go
from app.window.bench_mode.cups import cups_now
from app.window.bench_mode.inspection import Looking
from app.window.bench_mode.job_actions import deeds_on, finishing
from app.window.bench_mode.job_panel import one_line
from app.window.bench_mode.jobs import Job, in_turn, jobs_of
from app.window.bench_mode.keys import Deed
from app.window.bench_mode.questions import Questions
from app.window.bench_mode.restart_state import Memory
from app.window.bench_mode.reversible_actions import Deeds
from app.window.bench_mode.start_checks import against_beginning, what_else
from app.window.bench_mode.work_notes import WorkNotes
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.evening.looks import DueLook
from planner.tonight import BenchRow, WorkRow
from planner.values.book import Book
from planner.values.plan import BenchKind, PassKey
from planner.values.refusal import Refused
from planner.values.step import Tool

Make = Callable[[Book], Edit]
HOUR = 60


class Evening(QObject):
    """The jobs of a stretch and the deeds on them.

    Signals
    -------
    asks(Asked)
        Something is to be chosen or typed.
    says(str)
        A line to be read.
    changed()
        Another job, or another state of it, is to be shown.
    closes()
        The evening is to be closed.
    """

    asks = Signal(object)
    says = Signal(str)
    changed = Signal()
    closes = Signal()

    def __init__(self, session: Session, settings: QSettings) -> None:
        super().__init__()
        self._session, self._settings = session, settings
        self.picture: PlanSnapshot | None = None  # the plan that the jobs were taken from
        self._jobs: tuple[Job, ...] = ()
        self._name: tuple[str, str, int] | None = None  # of a job that was looked for on purpose
        self._braked: PassKey | None = None
        self._missed = False
        self._questions = Questions(self._do_it, self.asks.emit, lambda: session.now)
        self._notes = WorkNotes(session, lambda: self.picture, self._make, self.asks.emit)
        self._looking = Looking(
            self._make,
            self.asks.emit,
            lambda key: self._questions.how(self._shown, key),
            lambda: session.now,
        )
        self.memory = Memory(settings, None)
        self.deeds_done = Deeds(session, self.memory)
        session.opened.connect(self._opened)
        self._opened()

    def _opened(self) -> None:
        self.memory = Memory(self._settings, self._session.path)
        self.deeds_done = Deeds(self._session, self.memory)
        self.picture, self._jobs, self._name = None, (), None

    @property
    def _stretch(self) -> int:
        """The minute by which memory tells this stretch from others."""
        return self.picture.sheet.interval.start if self.picture else 0

    @property
    def jobs(self) -> tuple[Job, ...]:
        """The jobs as the book has them, which may be ahead of the plan by a key or two."""
        book = self._session.book
        if book is None:
            return ()
        fresh = [
            replace(job, entry=logbook.entry_of(book, job.work.key)) if job.work else job
            for job in self._jobs
            if job.work is None or logbook.knows(book, job.work.key)
        ]
        left = [job for job in fresh if job.entry is None or job.entry.end is None]
        return in_turn(left, self._session.now)

    @property
    def job(self) -> Job | None:
        """The job on screen, None when nothing is left."""
        return self._at(0)

    @property
    def following(self) -> Job | None:
        """The job after it."""
        return self._at(1)

    @property
    def looked_for(self) -> bool:
        """Tell whether the job on screen is not the next, for somebody looks at others."""
        return self._place(self.jobs) > 0

    def _at(self, by: int) -> Job | None:
        jobs = self.jobs
        at = self._place(jobs) + by
        return jobs[at] if at < len(jobs) else None

    def _place(self, jobs: tuple[Job, ...]) -> int:
        names = [job.name for job in jobs]
        return names.index(self._name) if self._name in names else 0

    def begin_to_show(self) -> None:
        """Come on screen: show what is next."""
        self._name = None
        if self._session.picture is not None:
            self.follow(self._session.picture)

    def follow(self, picture: PlanSnapshot) -> None:
        """Take the jobs from a new plan; a job that was looked for stays."""
        self.picture = picture
        stretch, now = self._stretch, self._session.now
        self._missed = bool(bench_events.missed(picture.book, now))
        self._jobs = jobs_of(picture, self.cups, self.memory.prepared(stretch), now)

    @property
    def cups(self) -> dict[str, str]:
        """What each airbrush holds."""
        book = self._session.book
        if book is None:
            return {}
        return cups_now(book, self.memory, self._stretch, self._session.now)

    def look(self, by: int) -> None:
        """Look at the job before or after the one on screen."""
        jobs = self.jobs
        if jobs:
            self._name = jobs[min(len(jobs) - 1, max(0, self._place(jobs) + by))].name
            self._braked = None
            self.changed.emit()

    def deeds(self) -> list[Deed]:
        """Return what can be done to the job on screen."""
        book, picture = self._session.book, self.picture
        found = [Deed.GAUGE, Deed.INSTEAD, Deed.OTHER, Deed.HOUR, Deed.END, Deed.CHECK, Deed.CLOSE]
        found.append(Deed.LEAVE)
        if picture is not None and any(one.log for one in picture.book.projects):
            found += [Deed.TACKY, Deed.WRONG]
        if self.deeds_done.last or self.deeds_done.from_before:
            found.append(Deed.BACK)
        if self._missed:
            found.append(Deed.MISSED)
        if book is not None and self._looking.due(book) is not None:
            found.append(Deed.SEEN)
        if len(self.jobs) > 1:
            found.append(Deed.LOOK)
        return [*found, *deeds_on(self.job)]

    def do(self, deed: Deed) -> None:
        """Do what a key stands for."""
        if deed not in self.deeds():
            return
        acts = {
            Deed.BEGIN: self._begin,
            Deed.DONE: self._done,
            Deed.INSTEAD: self._instead,
            Deed.OTHER: self._questions.other,
            Deed.HOUR: self._hour,
            Deed.END: self._end,
            Deed.CHECK: self._check,
            Deed.CLOSE: self.closes.emit,
            Deed.TACKY: lambda: self._questions.tacky(self._shown),
            Deed.WRONG: lambda: self._questions.wrong(self._shown, self.job),
            Deed.MISSED: lambda: self._questions.missed(self._shown),
            Deed.NOT_NOW: lambda: self._with_job(
                lambda job: self._questions.not_now(self._shown, job)
            ),
            Deed.GAUGE: self._questions.gauge,
            Deed.SEEN: self._seen,
            Deed.NOTE: lambda: self._with_job(self._questions.note),
            Deed.BACK: self._take_back,
        }
        acts[deed]()

    @property
    def _shown(self) -> PlanSnapshot:
        assert self.picture is not None
        return self.picture

    def _with_job(self, act: Callable[[Job], None]) -> None:
        if self.job is not None:
            act(self.job)

    # --- work ---------------------------------------------------------------------------

    def _begin(self) -> None:
        job = self.job
        row = job.work if job else None
        picture = self.picture
        if row is None or picture is None:
            return
        against = against_beginning(row, picture, self._session.now, self._begin)
        held = self._notes.held_up(row.key)
        if held is None and against is not None and self._braked != row.key:
            self._braked = row.key
            self.asks.emit(against)
            return
        self._notes.begin(row.key, row.minutes, row.airbrush or None, lambda: self._hold(row))

    def _hold(self, row: WorkRow) -> None:
        if row.tool is Tool.AIRBRUSH and row.airbrush:
            now = self._session.now
            self.memory.fill(row.airbrush, row.coats[0].coating, self._stretch, now)

    def _done(self) -> None:
        job = self.job
        if job is None:
            return
        row = job.row
        if not isinstance(row, WorkRow):
            self._set_up_done(row)
        elif job.ticked and job.ticked < set(job.places):
            self.asks.emit(self._questions.partly(job, partial(self._finish, row, job)))
        else:
            self._finish(row, job)

    def _finish(self, row: WorkRow, job: Job) -> None:
        before, now = self._session.book, self._session.now
        if before is None:
            return

        def noted(held: HeldUp | None, way: GoOn | None) -> None:
            self._name = None
            finished = finishing(row, job, self._shown.plan, now, held, way)
            if self._make(finished, lambda: self._hold(row)) is None:
                asked = self._questions.out_of_order(before, row.key)
                if asked is not None:
                    self.asks.emit(asked)

        held = film_brake.at_end(before, row.key, now, planned=row.minutes, cure=self._shown.cure)
        self._notes.ask_first(held, noted, done=True)

    def _set_up_done(self, row: BenchRow) -> None:
        stretch, now = self._stretch, self._session.now
        if row.kind is BenchKind.CLEAN:
            if self._clean(row.airbrush) is not None:
                return
        elif row.kind is BenchKind.PREPARE:
            change = partial(self.memory.prepare, str(row.serves), stretch)
            self.deeds_done.remember(one_line(Job(row)), change)
        else:
            change = partial(self.memory.fill, row.airbrush, row.coating, stretch, now)
            self.deeds_done.remember(one_line(Job(row)), change)
        self._name = None
        if self.picture is not None:
            self.follow(self.picture)
        self.says.emit(words.tr("{job}: done.").format(job=one_line(Job(row))))
        self.changed.emit()

    def _clean(self, airbrush: str, also: Callable[[], None] = lambda: None) -> Refused | None:
        """Note in the logbook that an airbrush is clean, and do what goes with it."""
        now, stretch = self._session.now, self._stretch

        def remember() -> None:
            if airbrush in self.memory.fills(stretch):
                self.memory.fill(airbrush, "", stretch, now)
            also()

        return self._make(lambda book: logbook.cleaned(book, airbrush, now), remember)

    def tick(self, place: str) -> None:
        """Tick a place off, or not after all; the first begins the work."""
        job = self.job
        row = job.work if job else None
        if row is None or job is None:
            return
        self._notes.tick(row, place, on=place not in job.ticked)

    @property
    def next_look(self) -> DueLook | None:
        """The look that is due, or comes next in this stretch."""
        book, picture = self._session.book, self.picture
        if book is None or picture is None:
            return None
        return self._looking.following(book, picture.sheet.interval.end)

    def _seen(self) -> None:
        book = self._session.book
        look = self._looking.due(book) if book else None
        if look is not None:
            self._looking.ask(look)

    # --- the evening --------------------------------------------------------------------

    def _hour(self) -> None:
        self._make(lambda book: bench_events.longer(book, self._session.now, HOUR))

    def _end(self) -> None:
        if self._make(lambda book: bench_events.stop(book, self._session.now)) is None:
            self._check()

    def _check(self) -> None:
        picture = self.picture
        if picture is None:
            return
        book = self._session.book or picture.book
        self.asks.emit(before_you_go(picture, book, self.memory, self._session.now, self._look_at))

    def _look_at(self, name: str) -> None:
        """Tick a line of the closing check; an airbrush ticked is clean."""
        stretch = self._stretch
        ticked = self.memory.checked(stretch) ^ {name}
        airbrush = name.removeprefix("clean ") if name.startswith("clean ") else ""

        def change() -> None:
            self.memory.check(ticked, stretch)

        if airbrush:
            self._clean(airbrush, change)
        else:
            self.deeds_done.remember(words.tr("closing check"), change)
        if self.picture is not None:
            self.follow(self.picture)
        self._check()

    def _instead(self) -> None:
        if self.picture is not None:
            self.asks.emit(what_else(self.picture, self.job, self._session.now, self._take_instead))

    def _take_instead(self, key: PassKey) -> None:
        airbrush = logbook.usual_airbrush(self._shown.book, key, self._shown.plan)
        self._notes.begin(key, None, airbrush)

    def _take_back(self) -> None:
        name = self.deeds_done.last
        if not name:
            self.asks.emit(self._from_before())
            return
        refused = self.deeds_done.take_back()
        self._name = None
        if self.picture is not None:
            self.follow(self.picture)
        self.says.emit(
            translated(str(refused))
            if refused
            else words.tr("Taken back: {deed}.").format(deed=name)
        )
        self.changed.emit()

    def _from_before(self) -> Asked:
        """Return the question whether to take back what was done before the restart."""
        return Asked(
            words.tr("Take back?"),
            about=(words.capital(self.deeds_done.from_before),),
            space=self._take_back_before,
            space_word=words.tr("take it back"),
        )

    def _take_back_before(self) -> None:
        name = self.deeds_done.from_before
        self.deeds_done.take_back()
        self.says.emit(words.tr("Taken back: {deed}.").format(deed=name))
        self.changed.emit()

    def _do_it(self, make: Make) -> None:
        self._make(make)

    def _make(self, make: Make, remember: Callable[[], None] | None = None) -> Refused | None:
        refused = self.deeds_done.do(make, remember)
        if refused is not None:
            self.says.emit(translated(str(refused)))
        self.changed.emit()  # the jobs themselves follow with the new plan
        return refused
