"""Tonight: what to do now, in order of the clock, and what dries and closes meanwhile."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Hashable
from datetime import date
from functools import partial
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.service.logbook import cups_now
from app.window import drying_sidebar, words
from app.window.card_words import ask_sentence
from app.window.evening.gap_words import gap_sentence
from app.window.labels import text
from app.window.missed_words import missed_line, missed_of
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import check_words, filling_words, look_sentence, marks_of
from app.window.tonight_rows import NoteLine, SetUpLine, TonightRow, WorkLine
from app.window.tonight_sheet import Sheet
from planner.cautions import LAST_WORD, Caution
from planner.evening.log_entries import entry_of
from planner.tonight import RunSheet, WorkRow, as_they_stood, name_of
from planner.values.moment import Interval, moment_of
from planner.values.plan import PassKey
from planner.values.project import Logged

MISSED_TOLD = 2  # missed dates that are named at the top
GAP_SHOWN = 5  # shorter pauses are not worth a line [min]
HEADROOM = 150  # pixels of what is past above what is next


class TonightView(QWidget):
    """The run sheet.

    Signals
    -------
    ticked(PassKey, str, bool), done(PassKey), taken_back(PassKey)
        As of its rows.
    bench_wanted()
        The bench mode is asked for.
    """

    ticked = Signal(object, str, bool)
    done = Signal(object)
    taken_back = Signal(object)
    bench_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._picture: PlanSnapshot | None = None
        self._interval: Interval | None = None
        self._to_now = False
        self._bare = True  # nothing was shown yet
        self._sure = ""  # how sure the date is, once that is known
        self._sure_label: QLabel | None = None
        self._kept: dict[Hashable, TonightRow] = {}
        self._stood: list[tuple[object, ...]] = []  # names of rows in the order shown last
        self._on: date | None = None  # and of which evening
        self.rows: list[TonightRow] = []
        self._line = line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(0)
        self._sheet = Sheet()
        self._sheet_area = _scrolling(self.tr("Run sheet"))
        self._sheet_area.setWidget(self._sheet)
        self._put_soon = self._next_go(self._put_first)
        self._aside_soon = self._next_go(self._show_aside)
        self._sheet_area.verticalScrollBar().rangeChanged.connect(self._scroll_to_now)
        self._aside_area = _scrolling(self.tr("Drying and closing"))
        line.addWidget(self._sheet_area, 1)
        self.setFocusProxy(self._sheet_area)
        key = QShortcut(QKeySequence("B"), self)
        key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        key.activated.connect(self.bench_wanted)

    def _next_go(self, act: Callable[[], None]) -> QTimer:
        """Return a timer that acts once what else waits, as a key, has had its turn."""
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(0)
        timer.timeout.connect(act)
        return timer

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self._kept.clear()
        self._build()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show the run sheet of another plan."""
        self._picture = picture
        self._build()

    def show_sure(self, told: str) -> None:
        """Tell at the head how sure the date is; "" while that is not known."""
        self._sure = told
        if self._sure_label is not None:
            self._sure_label.setText(told)
            self._sure_label.setVisible(bool(told))

    @property
    def aside(self) -> QScrollArea:
        """What dries and closes, to lie beside the sheet."""
        return self._aside_area

    def show_ticks(self, key: PassKey) -> None:
        """Show again what the logbook has of a pass: what was ticked was not noted."""
        for row in self.rows:
            if isinstance(row, WorkLine) and row.key == key:
                row.show_ticks()

    def set_now(self, now: int) -> None:
        """Let the shade reach ``now``."""
        for row in self.rows:
            row.now = now
            row.update()

    def _build(self) -> None:
        picture = self._picture
        if picture is None:
            return
        focused = self._focused()
        self._to_now = self._to_now or picture.sheet.interval != self._interval
        self._interval = picture.sheet.interval
        rows = self._rows(picture)
        if self._bare and self.isVisible():
            self._put_soon.start()  # fonts and styles are looked up when rows are first shown
            return
        self._put(picture, rows)
        self._focus(focused)
        if self.isVisible():
            self._aside_soon.start()
        else:
            self._show_aside()

    def _put_first(self) -> None:
        if self._picture is not None:
            self._put(self._picture, self.rows)
            self._aside_soon.start()

    def _put(self, picture: PlanSnapshot, rows: list[TonightRow]) -> None:
        self._bare = False
        self._put_soon.stop()
        last = text(self.tr(LAST_WORD), colour=self._colours.soft, size=0.92)
        self._sheet.show_lines(self._heading(picture), rows, last)
        self._lay_out()

    def _show_aside(self) -> None:
        if self._picture is not None:
            self._aside_soon.stop()
            self._aside_area.setWidget(drying_sidebar.panel(self._picture, self._colours))

    def _lay_out(self) -> None:
        """Give new rows their places now: painted before, they would be squeezed into the old."""
        if self.isVisible():
            self._sheet.show_all()
            QCoreApplication.sendPostedEvents(self._sheet, QEvent.Type.LayoutRequest)

    def _scroll_to_now(self) -> None:
        """Bring the first row that is not over near the top, once the rows have places."""
        ahead = next((row for row in self.rows if row.end > row.now), None)
        if self._to_now and ahead is not None and ahead.y() > 0:
            self._to_now = False
            if ahead is not self.rows[0]:
                self._sheet_area.verticalScrollBar().setValue(ahead.y() - HEADROOM)

    def _focused(self) -> tuple[PassKey, int] | None:
        """Return which place's box has the keys, to give them back after a re-plan."""
        for row in self.rows:
            if isinstance(row, WorkLine):
                for at, box in enumerate(row.boxes):
                    if box.hasFocus():
                        return row.key, at
        return None

    def _focus(self, spot: tuple[PassKey, int] | None) -> None:
        for row in self.rows:
            if spot and isinstance(row, WorkLine) and row.key == spot[0]:
                if spot[1] < len(row.boxes):
                    row.boxes[spot[1]].setFocus()
                return

    def _rows(self, picture: PlanSnapshot) -> list[TonightRow]:
        """Return the rows of a sheet; those that say what they said before are kept."""
        sheet, zone, now = picture.sheet, picture.zone, picture.sheet.now
        today = moment_of(now, zone).date()
        told: set[Caution] = set()
        interval = sheet.interval
        running = interval.start <= now
        at = max(interval.start, now) if running else interval.start
        kept, self._kept = self._kept, {}
        rows: list[TonightRow] = []

        def add(said: Hashable, make: Callable[[], TonightRow]) -> None:
            row = self._kept[said] = kept.pop(said) if said in kept else make()
            row.now = now
            rows.append(row)

        def note(start: int, end: int, words_: str) -> None:
            add(
                (start, end, words_),
                partial(NoteLine, self._colours, start, end, words_, zone=zone, now=now),
            )

        extras = deque(self._extras(picture))

        def tell(until: int) -> None:
            while extras and extras[0][0] < until:
                start, said = extras.popleft()
                note(start, start + 1, said)

        beside = picture.beside
        fillings = {
            (filling.row.airbrush, filling.row.start): filling for filling in beside.fillings
        }
        standing = as_they_stood(self._stood if sheet.on == self._on else (), sheet.rows)
        self._stood, self._on = [name_of(row) for row in standing], sheet.on
        if standing and standing[0].start < interval.start:
            note(standing[0].start, standing[0].start + 1, self.tr("From before this stretch"))
        for row in standing:
            tell(at)
            if row.start - at >= GAP_SHOWN:
                note(at, row.start, _pause(picture, at, row.start))
            tell(row.start)
            if isinstance(row, WorkRow):
                loggable = running and row.piece == row.pieces
                before = frozenset(told)
                entry = entry_of(picture.book, row.key)
                over = row.logged and (entry is None or entry.end is not None)
                marks = () if over else tuple(marks_of(row, beside, zone, now))
                said = (row, entry, loggable, before & set(row.cautions), marks, today)
                add(said, partial(self._work_line, row, entry, zone, now, loggable, before, marks))
                told.update(() if row.logged else row.cautions)
            else:
                filling = fillings.get((row.airbrush, row.start))
                more = tuple(filling_words(filling, zone, now)) if filling else ()
                line = partial(SetUpLine, self._colours, row, zone=zone, now=now, more=more)
                add((row, more, today), line)
            at = max(at, row.free)
        tell(at)
        note(at, max(at + 1, interval.end), _last_words(picture, at))
        tell(interval.end + 1)
        self.rows = rows
        return rows

    def _extras(self, picture: PlanSnapshot) -> list[tuple[int, str]]:
        """Return the looks that fall into the stretch, and when to put away, in order."""
        sheet, zone, now = picture.sheet, picture.zone, picture.now
        begin = max(sheet.interval.start, now)
        found = [
            (max(begin, look.at), look_sentence(look, zone, now))
            for look in picture.beside.looks
            if look.at < sheet.interval.end
        ]
        found += [(max(begin, ask.at), ask_sentence(ask, zone, now)) for ask in picture.card_asks]
        if sheet.rows and picture.beside.tidy_from >= begin:
            told = words.listed([check_words(check) for check in picture.beside.checks])
            text_ = self.tr("Time to put away: {checks}").format(checks=told)
            found.append((picture.beside.tidy_from, text_))
        return sorted(found)

    def _heading(self, picture: PlanSnapshot) -> QWidget:
        """Return title, hours and air, and the way to the bench."""
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 0, 10, 0)
        column = QVBoxLayout()
        column.addWidget(_heading(picture, self._colours))
        self._sure_label = text(self._sure, bold=True)
        self._sure_label.setContentsMargins(10, 0, 10, 8)
        self._sure_label.setVisible(bool(self._sure))
        column.addWidget(self._sure_label)
        _tell_missed(column, picture, self._colours)
        line.addLayout(column, 1)
        button = QPushButton(self.tr("At the bench (B)"))
        button.setToolTip(self.tr("One piece of work at a time, in large letters (F11)"))
        button.clicked.connect(self.bench_wanted)
        line.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        return holder

    def _work_line(
        self,
        row: WorkRow,
        entry: Logged | None,
        zone: ZoneInfo,
        now: int,
        loggable: bool,
        told: frozenset[Caution],
        marks: tuple[str, ...],
    ) -> WorkLine:
        line = WorkLine(
            self._colours,
            row,
            zone=zone,
            now=now,
            entry=entry,
            loggable=loggable,
            told=told,
            marks=marks,
        )
        line.ticked.connect(self.ticked)
        line.done.connect(self.done)
        line.taken_back.connect(self.taken_back)
        return line


def _tell_missed(column: QVBoxLayout, picture: PlanSnapshot, colours: Colours) -> None:
    """Say which dates are missed, the worst ones by name."""
    missed = missed_of(picture)
    for one in missed[:MISSED_TOLD]:
        told = words.tr("⚠ {missed}").format(missed=missed_line(one, picture))
        column.addWidget(text(told, colour=colours.closing_word, bold=True))
    if len(missed) > MISSED_TOLD:
        more = words.tr("⚠ {n} more dates are missed").format(n=len(missed) - MISSED_TOLD)
        column.addWidget(text(more, colour=colours.closing_word, bold=True))


def _pause(picture: PlanSnapshot, start: int, end: int) -> str:
    """Return what a pause is good for, if anything."""
    gap = next((gap for gap in picture.gaps if start <= gap.start < end), None)
    if gap is not None:
        return gap_sentence(gap)
    length = words.span(end - start)
    return words.tr("{length} free: nothing is ready sooner").format(length=length)


def _last_words(picture: PlanSnapshot, at: int) -> str:
    """Return how the sheet ends, and what the time left is good for."""
    sheet = picture.sheet
    ending = _ending(sheet, at, words.clock(sheet.interval.end, picture.zone))
    rest = next((gap for gap in picture.gaps if at <= gap.start < sheet.interval.end), None)
    if rest is None:
        return ending
    return words.tr("{ending}. {gap}").format(ending=ending, gap=gap_sentence(rest))


def _ending(sheet: RunSheet, at: int, end: str) -> str:
    if not sheet.rows:
        return words.tr("Nothing is ready in this stretch; the bench is yours until {end}").format(
            end=end
        )
    left = sheet.interval.end - at
    if left >= GAP_SHOWN:
        return words.tr("Done for this stretch, {length} before it ends at {end}").format(
            length=words.span(left), end=end
        )
    return words.tr("Bench time ends at {end}").format(end=end)


def _heading(picture: PlanSnapshot, colours: Colours) -> QWidget:
    sheet, zone = picture.sheet, picture.zone
    here = moment_of(sheet.now, zone)
    running = sheet.interval.start <= sheet.now
    tonight = sheet.on == here.date()
    title = words.tr("Tonight") if tonight else words.tr("Next at the bench")
    if tonight and moment_of(sheet.interval.start, zone).hour < 15:
        title = words.tr("Today")
    hours = words.tr("{start}–{end}").format(
        start=words.clock(sheet.interval.start, zone), end=words.clock(sheet.interval.end, zone)
    )
    told = [words.day(sheet.on, long=True)]
    if running:
        told.append(words.clock(sheet.now, zone))
        told.append(
            words.tr("{length} left").format(length=words.span(sheet.interval.end - sheet.now))
        )
    else:
        told.append(hours)
        told.append(
            words.tr("in {length}").format(length=words.span(sheet.interval.start - sheet.now))
        )
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(10, 0, 10, 12)
    column.setSpacing(2)
    column.addWidget(text(title, size=1.9, bold=True))
    column.addWidget(text(" · ".join(told)))
    column.addWidget(text(_air_line(picture), colour=colours.soft))
    for name, held in cups_now(picture.book, sheet.now).items():
        told_of = words.tr("{airbrush} holds {coating} since {time}").format(
            airbrush=words.capital(name),
            coating=held.coating,
            time=words.clock(held.since, zone),
        )
        column.addWidget(text(told_of, colour=colours.soft))
    return holder


def _air_line(picture: PlanSnapshot) -> str:
    air = picture.air
    line = words.tr("{place}: {temperature}, {humidity:.0f} % RH").format(
        place=words.capital(air.location),
        temperature=words.degrees(air.temperature_c),
        humidity=air.humidity_pct,
    )
    if air.margin_k is None:
        return line
    return words.fill(
        words.tr("{line}; surfaces are {margin:.1f} K above the dew point"),
        line=line,
        margin=air.margin_k,
    )


def _scrolling(name: str) -> QScrollArea:
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setAccessibleName(name)
    return area
