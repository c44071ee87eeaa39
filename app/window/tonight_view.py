"""Tonight: the answer, the evening by loads with places to tick, and what dries meanwhile."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from dataclasses import replace
from datetime import date
from functools import partial

from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from app.window import drying_sidebar, words
from app.window.card_words import ask_sentence
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import check_words, filling_words, look_sentence, marks_of
from app.window.tab_order import bring_into_sight
from app.window.tonight_cards.arrow_keys import next_place, table_beyond
from app.window.tonight_cards.card import CardFrame
from app.window.tonight_cards.card_parts import CardNotes
from app.window.tonight_cards.headline import Headline
from app.window.tonight_cards.places_model import Progress
from app.window.tonight_cards.places_table import PlacesTable
from app.window.tonight_cards.work_progress import progress_of
from app.window.tonight_pauses import last_words, later_sessions, pause_words, pauses
from app.window.tonight_rows import NoteLine, SetUpLine
from app.window.tonight_sheet import Sheet
from planner.cautions import LAST_WORD
from planner.tonight import (
    LoadCard,
    Row,
    WorkRow,
    as_they_stood,
    cards_of,
    evening_answer,
    loose_set_up,
    name_of,
)
from planner.values.moment import Interval, moment_of
from planner.values.plan import PassKey

HEADROOM = 40  # pixels of what is past above what is next


class TonightView(QWidget):
    """The evening by loads.

    Signals
    -------
    ticked(list[tuple[PassKey, str]], bool)
        Places were ticked off, or not after all.
    done(PassKey), load_done(list[PassKey]), taken_back(PassKey)
        Work was done, all of a card; it was not begun or done after all.
    put_off(list[PassKey], int)
        Work is wanted no earlier than at a minute.
    put_off(list[PassKey], int)
        Work is wanted no earlier than at a minute.
    bench_wanted()
        The bench mode is asked for.
    """

    ticked = Signal(list, bool)
    done = Signal(object)
    load_done = Signal(list)
    taken_back = Signal(object)
    put_off = Signal(list, object)
    bench_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._picture: PlanSnapshot | None = None
        self._interval: Interval | None = None
        self._to_now = False
        self._bare = True  # nothing was shown yet
        self._kept: dict[Hashable, QWidget] = {}
        self._stood: list[tuple[object, ...]] = []  # names of rows in the order shown last
        self._on: date | None = None  # and of which evening
        self._focus_on: tuple[PassKey, int] | None = None
        self.rows: tuple[WorkRow, ...] = ()
        self.cards: list[CardFrame] = []
        self._free: list[tuple[int, int, str]] = []  # pauses between the cards
        self._headline: Headline | None = None
        self._sure = ""  # how sure the date is, once that is known
        line = QVBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        self._sheet = Sheet()
        self._sheet_area = _scrolling(self.tr("Run sheet"))
        self._sheet_area.setWidget(self._sheet)
        self._put_soon = self._next_go(self._put)
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
        self._headline = None
        self._build()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show the evening of another plan."""
        self._picture = picture
        self._build()

    def show_sure(self, told: str) -> None:
        """Tell at the head how sure the date is; "" while that is not known."""
        self._sure = told
        if self._headline is not None:
            self._headline.show_sure(told)

    @property
    def aside(self) -> QScrollArea:
        """What dries and closes, to lie beside the sheet."""
        return self._aside_area

    def spot(self, key: PassKey) -> tuple[PlacesTable, int] | None:
        """Return the table that shows a pass, and its row there."""
        for card in self.cards:
            for table in card.tables:
                for at, row in enumerate(table.places.block.rows):
                    if row.key == key:
                        return table, at
        return None

    def show_ticks(self, key: PassKey) -> None:
        """Show again what the logbook has of a pass: what was ticked was not noted."""
        found = self.spot(key)
        if found is not None:
            found[0].places.forget_asked()
            found[0].viewport().update()

    def set_now(self, now: int) -> None:
        """Let the strip's shade reach ``now``."""
        if self._headline is not None:
            self._headline.strip.set_now(now)

    def _build(self) -> None:
        picture = self._picture
        if picture is None:
            return
        self._to_now = self._to_now or picture.sheet.interval != self._interval
        self._interval = picture.sheet.interval
        if self._bare and self.isVisible():
            self._put_soon.start()  # fonts and styles are looked up when cards are first shown
            return
        self._put()

    def _put(self) -> None:
        picture = self._picture
        if picture is None:
            return
        first, self._bare = self._bare, False
        self._put_soon.stop()
        focused = self._focused()
        self._sheet.show_lines(self._lines(picture))
        self._lay_out()
        self._give_back(focused)
        if first and self.window().focusWidget() is self._sheet_area:
            self.setFocus()
        if self.isVisible():
            self._aside_soon.start()
        else:
            self._show_aside()

    def _show_aside(self) -> None:
        if self._picture is not None:
            self._aside_soon.stop()
            self._aside_area.setWidget(drying_sidebar.panel(self._picture, self._colours))

    def _lay_out(self) -> None:
        """Give new cards their places now: painted before, they would be squeezed into the old."""
        if self.isVisible():
            self._sheet.show_all()
            QCoreApplication.sendPostedEvents(self._sheet, QEvent.Type.LayoutRequest)

    def _scroll_to_now(self) -> None:
        """Bring the first card that is not over near the top, once the cards have places."""
        ahead = next((card for card in self.cards if not card.over), None)
        if self._to_now and ahead is not None and ahead.y() > 0:
            self._to_now = False
            if ahead is not self.cards[0]:
                self._sheet_area.verticalScrollBar().setValue(ahead.y() - HEADROOM)

    def _focused(self) -> tuple[PassKey, int] | None:
        """Return which place has the keys, to give them back after a re-plan."""
        for card in self.cards:
            for table in card.tables:
                row = table.places.row_at(table.currentIndex())
                if table.hasFocus() and row is not None:
                    return row.key, table.currentIndex().column()
        return None

    def _give_back(self, spot: tuple[PassKey, int] | None) -> None:
        ahead = next_place(self.cards)
        self.setFocusProxy(ahead or self._sheet_area)
        found = self.spot(spot[0]) if spot is not None else None
        if spot is None or found is None:
            return
        table, row = found
        if not table.isVisible():
            self.setFocus()  # what is done has folded: on to what is next
        elif not table.hasFocus():
            table.setCurrentIndex(table.places.index(row, min(spot[1], table.places.all_column)))
            table.setFocus()

    def _go_beyond(self, table: PlacesTable, by: int) -> None:
        """Let the keys go on from one table to the next."""
        other = table_beyond(self.cards, table, by)
        if other is not None:
            other.setFocus(Qt.FocusReason.TabFocusReason)
            bring_into_sight(other)

    def _lines(self, picture: PlanSnapshot) -> list[QWidget]:
        """Return what stands on the sheet; what is known from before is shown again."""
        sheet = picture.sheet
        standing = as_they_stood(self._stood if sheet.on == self._on else (), sheet.rows)
        self._stood, self._on = [name_of(row) for row in standing], sheet.on
        self.rows = tuple(row for row in standing if isinstance(row, WorkRow))
        progress = progress_of(picture, self.rows)
        cards = cards_of(standing)
        kept, self._kept = self._kept, {}
        notes = self._all_notes(cards, progress, picture, standing)
        placed = [
            (card.start, self._card(card, progress, note, kept))
            for card, note in zip(cards, notes, strict=True)
        ]
        self.cards = [card for _, card in placed]
        lines: list[tuple[int, QWidget]] = [*placed]
        lines += self._between(picture, standing, cards, kept)
        head = self._head(picture, progress)
        last = text(self.tr(LAST_WORD), colour=self._colours.soft, size=0.92)
        tail = [last] if any(card.cautions for card in cards) else []
        return [head, *(line for _, line in sorted(lines, key=lambda line: line[0])), *tail]

    def _head(self, picture: PlanSnapshot, progress: Progress) -> Headline:
        if self._headline is None:
            self._headline = Headline(self._colours)
            self._headline.bench_wanted.connect(self.bench_wanted)
            self._headline.show_sure(self._sure)
        self._headline.show_answer(picture, evening_answer(picture.sheet, progress.over))
        return self._headline

    def _card(
        self,
        card: LoadCard,
        progress: Progress,
        notes: CardNotes,
        kept: dict[Hashable, QWidget],
    ) -> CardFrame:
        said = (card.airbrush, card.coatings, card.stage, *card.key)
        frame = kept.pop(said, None)
        if not isinstance(frame, CardFrame):
            frame = CardFrame(self._colours)
            frame.ticked.connect(self.ticked)
            frame.done.connect(self.done)
            frame.load_done.connect(self.load_done)
            frame.beyond.connect(self._go_beyond)
            frame.taken_back.connect(self.taken_back)
            frame.put_off.connect(self.put_off)
        self._kept[said] = frame
        frame.show_card(card, progress, notes)
        return frame

    def _all_notes(
        self,
        cards: tuple[LoadCard, ...],
        progress: Progress,
        picture: PlanSnapshot,
        standing: tuple[Row, ...],
    ) -> list[CardNotes]:
        """Return what is told on each card: a pause within its hours, too."""
        within_cards: dict[int, list[str]] = {}
        self._free = []
        for start, end in pauses(picture, standing):
            within = [at for at, card in enumerate(cards) if card.start < start < card.end]
            told = pause_words(picture, start, end)
            if within:
                clock = words.clock(start, picture.zone)
                told = words.tr("{time}: {pause}").format(time=clock, pause=told)
                within_cards.setdefault(within[-1], []).append(told)
            else:
                self._free.append((start, end, told))
        later = later_sessions(picture)
        return [
            replace(
                self._notes(card, progress, picture),
                pauses=tuple(within_cards.get(at, ())),
                later=later,
            )
            for at, card in enumerate(cards)
        ]

    def _notes(self, card: LoadCard, progress: Progress, picture: PlanSnapshot) -> CardNotes:
        beside, zone, now = picture.beside, picture.zone, picture.sheet.now
        marks = dict.fromkeys(
            told
            for row in card.rows
            if not progress.over(row)
            for told in marks_of(row, beside, zone, now)
        )
        more: list[str] = []
        for filling in beside.fillings:
            if card.filling is not None and filling.row == card.filling:
                more = filling_words(filling, zone, now)
        return CardNotes(tuple(marks), tuple(more))

    def _between(
        self,
        picture: PlanSnapshot,
        standing: tuple[Row, ...],
        cards: tuple[LoadCard, ...],
        kept: dict[Hashable, QWidget],
    ) -> list[tuple[int, QWidget]]:
        """Return the lines between the cards: set-up of its own, gaps, looks, the end."""
        zone, now = picture.zone, picture.sheet.now
        today = moment_of(now, zone).date()
        found: list[tuple[int, QWidget]] = []

        def add(start: int, said: Hashable, make: Callable[[], QWidget]) -> None:
            line = kept.pop(said, None) or make()
            self._kept[said] = line
            found.append((start, line))

        for row in loose_set_up(standing, cards):
            line = partial(SetUpLine, self._colours, row, zone=zone, now=now, more=())
            add(row.start, (row, today), line)
        for start, end, told in self._told(picture, standing):
            make = partial(NoteLine, self._colours, start, end, told, zone=zone, now=now)
            add(start, (start, end, told), make)
        return found

    def _told(self, picture: PlanSnapshot, standing: tuple[Row, ...]) -> list[tuple[int, int, str]]:
        """Return from when to when what is told between the cards."""
        interval = picture.sheet.interval
        begin = max(interval.start, picture.now)
        found = [(at, at + 1, told) for at, told in self._extras(picture)]
        if standing and standing[0].start < interval.start:
            before = standing[0].start
            found.append((before, before + 1, self.tr("From before this session")))
        found += self._free
        at = max([begin, *(row.free for row in standing)])
        found.append((at, max(at + 1, interval.end), last_words(picture, at)))
        return found

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


def _scrolling(name: str) -> QScrollArea:
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setAccessibleName(name)
    return area
