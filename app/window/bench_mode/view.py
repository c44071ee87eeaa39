"""The bench mode: full screen, one job at a time, worked by a few keys."""

from __future__ import annotations

from PySide6.QtCore import QSettings, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from app.window import help_pages, words
from app.window.bench_mode.change_words import change_words
from app.window.bench_mode.choice_prompt import Asked, asked_face
from app.window.bench_mode.closing_words import nothing_left
from app.window.bench_mode.evening import Evening
from app.window.bench_mode.head import head
from app.window.bench_mode.job_panel import Look, face, heading, one_line
from app.window.bench_mode.jobs import KEYS_FOR_PLACES, Job
from app.window.bench_mode.keys import (
    BY_KEY,
    NOT_WHILE_WAITING,
    Deed,
    caps,
    key_lines,
    main_deeds,
    of_deeds,
)
from app.window.bench_mode.large_text import LARGE, PLAIN, SMALL, scale_of
from app.window.bench_mode.text_fitting import height_of, scrolling
from app.window.bench_mode.waiting_panel import waiting_face
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanChange, SnapshotPart
from app.window.run_sheet_notes_words import look_line
from app.window.session import Session
from planner.evening.closing_check import tidy_from
from planner.evening.looks import LookFor

TICK_MS = 1000
DUE = 26  # letters of what has come [pixels]
SHARES = (1.0, 0.94, 0.88, 0.82, 0.76)  # letters shrink rather than leave words out
WAIT_HEADED = 10  # from this wait on it stands at the head [min]
WAIT_TOLD = 5  # a shorter wait is no time for other work [min]
OTHER_KEYS = (
    Qt.KeyboardModifier.ControlModifier
    | Qt.KeyboardModifier.AltModifier
    | Qt.KeyboardModifier.MetaModifier
)
DIGITS = range(Qt.Key.Key_0.value, Qt.Key.Key_9.value + 1)


class BenchMode(QWidget):
    """A window of its own over everything else.

    Signals
    -------
    left()
        The person went back to the other views.
    """

    left = Signal()

    def __init__(self, session: Session, settings: QSettings, parent: QWidget | None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(self.tr("Tackfree at the bench"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._session = session
        self._colours = LIGHT
        self.evening = Evening(session, settings)
        self.evening.asks.connect(self.ask)
        self.evening.says.connect(self.say)
        self.evening.changed.connect(self.show_job)
        self.asked: Asked | None = None
        self.said = ""
        self.field: QLineEdit | None = None
        self._page = 0
        self._all_keys = False
        self._shown_at = -1
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self._body: QWidget | None = None
        session.pictured.connect(self._pictured)
        session.prepared.connect(self._prepared)
        session.troubled.connect(self.say)
        self._clock = QTimer(self)
        self._clock.setInterval(TICK_MS)
        self._clock.timeout.connect(self.clock_moved)

    @property
    def job(self) -> Job | None:
        """The job on screen."""
        return self.evening.job

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self._build()

    def enter(self, *, full_screen: bool = True) -> None:
        """Come on screen with the job that is next."""
        self.asked = None
        self.said = ""
        self._session.show_first(SnapshotPart.SHEET)
        self.evening.begin_to_show()
        self._clock.start()
        if full_screen:
            self.showFullScreen()
        else:
            self.show()
        self._build()
        self.activateWindow()
        self.setFocus()

    def leave(self) -> None:
        """Go back to the other views."""
        self._clock.stop()
        self.hide()
        self.left.emit()

    def clock_moved(self) -> None:
        """Follow the clock."""
        if self._session.now != self._shown_at and self.field is None:
            self._build()

    def ask(self, asked: Asked) -> None:
        """Show a question in place of the job; what was told before belongs to that."""
        self.asked = asked
        self.said = ""
        self._build()

    def say(self, told: str) -> None:
        """Tell something in the line above the keys."""
        self.said = told
        self._build()

    def show_job(self) -> None:
        """Show the job again, with no question over it."""
        self.asked = None
        self._page = 0
        self._build()

    def _pictured(self, change: PlanChange) -> None:
        """Tell what moved; the jobs follow when the new run sheet has been read."""
        if self.isVisible() and change.cause and change.old is not None:
            self.said = change_words(change)

    def _prepared(self) -> None:
        picture = self._session.picture
        if self.isVisible() and picture is not None and picture is not self.evening.picture:
            self.evening.follow(picture)
            if self.field is None:  # what is being typed stays
                self._build()

    # --- keys ---------------------------------------------------------------------------

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Do what a key stands for."""
        key = Qt.Key(event.key())
        if event.modifiers() & OTHER_KEYS:
            event.ignore()  # Ctrl+1 goes to a room elsewhere, and here it is no tick
            return
        if key is Qt.Key.Key_F1:
            help_pages.bench_mode(self, key_lines())
        elif key is Qt.Key.Key_Question and self.asked is None:
            self._all_keys = not self._all_keys
            self._build()
        elif self.asked is not None:
            self._answer(self.asked, key)
        elif key in BY_KEY:
            self._do(BY_KEY[key], key)
        event.accept()

    def _do(self, deed: Deed, key: Qt.Key) -> None:
        if deed is Deed.LEAVE:
            self.leave()
        elif deed in NOT_WHILE_WAITING and self._hidden_work() is not None:
            picture, job = self.evening.picture, self._hidden_work()
            assert picture is not None
            assert job is not None
            at = words.clock(job.row.start, picture.zone)
            told = self.tr("{job} is due at {time}; S begins it now.")
            self.say(told.format(job=one_line(job), time=at))
        elif deed is Deed.PLACE:
            self._tick(key.value - Qt.Key.Key_0.value)
        elif deed is Deed.LOOK:
            self._page = 0
            self.evening.look(1 if key is Qt.Key.Key_Right else -1)
        else:
            self._page = 0 if deed is not Deed.BEGIN else self._page
            self.evening.do(deed)

    def _tick(self, number: int) -> None:
        job = self.job
        if job is None or not job.places:
            return
        if number == 0:
            pages = -(-len(job.places) // KEYS_FOR_PLACES)
            self._page = (self._page + 1) % pages
            self._build()
            return
        at = self._page * KEYS_FOR_PLACES + number - 1
        if at < len(job.places):
            self.evening.tick(job.places[at])

    def _answer(self, asked: Asked, key: Qt.Key) -> None:
        if key in (Qt.Key.Key_Escape, Qt.Key.Key_Backspace):
            self.show_job()
        elif key is Qt.Key.Key_Space and asked.space is not None:
            self._leave_question(asked)
            asked.space()
        elif key.value in DIGITS:
            number = key.value - DIGITS.start
            if 1 <= number <= len(asked.lines):
                self._leave_question(asked)
                asked.lines[number - 1].take()

    def _take_typed(self) -> None:
        asked, typed = self.asked, self.field.text().strip() if self.field else ""
        if typed and asked is not None and asked.typed is not None:
            self._leave_question(asked)
            asked.typed(typed)

    def _leave_question(self, asked: Asked) -> None:
        if not asked.stays:
            self.asked = None
            self.field = None
            self._build()

    # --- painting -----------------------------------------------------------------------

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the letters to the window."""
        super().resizeEvent(event)
        self._build()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Leave, however the window is closed."""
        self._clock.stop()
        super().closeEvent(event)
        self.left.emit()

    def _build(self) -> None:
        """Make everything anew; it is a handful of labels."""
        if not self.isVisible():
            return
        look = Look(self._colours, scale_of(self.size()))
        self._shown_at = self._session.now
        old, self._body = self._body, QWidget()
        self.field = None
        if old is not None:
            self.layout().removeWidget(old)  # type: ignore[union-attr]
            old.hide()
            old.deleteLater()
        body = self._body
        body.setAutoFillBackground(True)
        palette = body.palette()
        palette.setColor(body.backgroundRole(), self._colours.colour("sheet"))
        body.setPalette(palette)
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, look.pixels(12))
        column.setSpacing(look.pixels(8))
        head_line = head(look, self.evening.picture, self._session.now, self._title())
        foot = self._foot(look)
        used = sum(height_of(each, self.width()) for each in (head_line, foot))
        column.addWidget(head_line)
        room = self.height() - used - look.pixels(12) - 2 * column.spacing()
        column.addWidget(scrolling(self._fitting(look, room)), 1)
        column.addWidget(foot)
        self.layout().addWidget(body)  # type: ignore[union-attr]
        body.show()
        self.setAccessibleName(self.sentence())
        if self.field is not None:
            self.field.setFocus()
        else:
            self.setFocus()

    def sentence(self) -> str:
        """Return what is on screen as one sentence for a screen reader."""
        if self.asked is not None:
            return self.asked.title
        job = self.job
        name = one_line(job) if job else self.tr("Nothing is left to do")
        return f"{name}. {self.said}".strip()

    def _fitting(self, look: Look, room: int) -> QWidget:
        """Return the middle in letters as large as there is room for."""
        for share in SHARES:
            middle = self._middle(Look(look.colours, look.scale * share))
            if height_of(middle, self.width()) <= room:
                break
        return middle

    def _title(self) -> str:
        if self.asked is not None:
            return self.asked.title
        wait = self._waits()
        if wait:
            return self.tr("Wait {length}").format(length=words.span(wait))
        if self.job is None:
            return self.tr("Nothing is left to do")
        picture, now = self.evening.picture, self._session.now
        if picture is not None and picture.sheet.interval.start > now and self.job.begun is None:
            at = words.when(picture.sheet.interval.start, picture.zone, now)
            return self.tr("{time}: {work}").format(time=at, work=heading(self.job))
        return heading(self.job)

    def _waits(self) -> int:
        """Return how long the next job has to wait though the session runs, else 0 [min]."""
        job, picture, now = self.job, self.evening.picture, self._session.now
        if job is None or picture is None or job.begun is not None or self.evening.looked_for:
            return 0
        wait = job.row.start - now
        return wait if wait >= WAIT_HEADED and picture.sheet.interval.start <= now else 0

    def _hidden_work(self) -> Job | None:
        """Return the work that has to wait and is not on screen, None for none."""
        return self.job if self._waits() and self.job is not None and self.job.work else None

    def _middle(self, look: Look) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(look.pixels(28), 0, look.pixels(28), 0)
        picture = self.evening.picture
        if picture is None:
            column.addWidget(look.label(words.tr("Planning…"), LARGE))
        elif self.asked is not None:
            inner, self.field = asked_face(self.asked, look)
            column.addWidget(inner)
            if self.field is not None:
                self.field.returnPressed.connect(self._take_typed)
        elif self.job is not None:
            now = self._session.now
            if self._waits():
                column.addWidget(waiting_face(picture, self.job, look, now=now))
                return holder
            column.addWidget(face(picture, self.job, look, now=now, page=self._page))
        else:
            for told in nothing_left(picture, self._session.now):
                column.addWidget(look.label(told, PLAIN))
            column.addStretch(1)
        return holder

    def _foot(self, look: Look) -> QWidget:
        foot = QWidget()
        inner = QVBoxLayout(foot)
        inner.setContentsMargins(look.pixels(28), 0, look.pixels(28), 0)
        inner.setSpacing(look.pixels(8))
        following = self._following()
        if following:
            inner.addWidget(look.label(following, PLAIN))
        for told, due in self._reminders():
            colour = "drying_word" if due else "soft"
            inner.addWidget(look.label(told, DUE if due else SMALL, colour=colour, bold=due))
        if self.said:
            inner.addWidget(look.label(self.said, SMALL, colour="drying_word", bold=True))
        inner.addWidget(caps(self._caps(), look.colours, look.scale))
        return foot

    def _following(self) -> str:
        picture, job = self.evening.picture, self.evening.following
        if picture is None or self.asked is not None or job is None:
            return ""
        return self.tr("Then, {time}: {job}").format(
            time=words.clock(job.row.start, picture.zone), job=one_line(job)
        )

    def _reminders(self) -> list[tuple[str, bool]]:
        """Return the next look and the time to put away, and whether it has come."""
        picture, now = self.evening.picture, self._session.now
        if picture is None or self.asked is not None:
            return []
        told = []
        job = self.job
        wait = job.row.start - now if job and job.begun is None else 0
        if wait >= WAIT_TOLD and picture.beside.others and not self._waits():
            text = self.tr("{length} until then: A shows what else is ready")
            told.append((text.format(length=words.span(wait)), False))
        look = self.evening.next_look
        if look is not None:
            urgent = look.at <= now and look.what is not LookFor.SILVERING
            told.append((look_line(look, picture.zone, now), urgent))
        end = picture.sheet.interval.end
        if tidy_from(picture.sheet) <= now < end:
            text = self.tr("{length} left to put away: the closing check is C")
            told.append((text.format(length=words.span(end - now)), True))
        return told

    def _caps(self) -> list[tuple[str, str]]:
        asked = self.asked
        if asked is None:
            hidden = self._hidden_work() is not None
            deeds = [
                deed for deed in self.evening.deeds() if not (hidden and deed in NOT_WHILE_WAITING)
            ]
            if self._all_keys:
                return [*of_deeds(deeds), ("?", self.tr("fewer keys"))]
            return [
                *of_deeds(main_deeds(deeds, waiting=bool(self._waits()))),
                ("?", self.tr("all keys")),
            ]
        shown = []
        if asked.lines:
            last = min(9, len(asked.lines))
            shown.append((self.tr("1–{n}").format(n=last) if last > 1 else "1", self.tr("choose")))
        if asked.typed is not None:
            shown.append((self.tr("Enter"), self.tr("take what is typed")))
        if asked.space is not None:
            shown.append((self.tr("Space"), asked.space_word))
        return [*shown, (self.tr("Esc"), self.tr("back"))]
