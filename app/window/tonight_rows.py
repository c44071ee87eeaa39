"""The rows of the Tonight view: a piece of work, a set-up, a gap, the end."""

from __future__ import annotations

from collections.abc import Iterable
from zoneinfo import ZoneInfo

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.window import mark_drawing, reasons, words
from app.window.fill_amounts import fill_words
from app.window.flow_layout import FlowLayout
from app.window.labels import text
from app.window.mark_widgets import DropMark, GapMark, MarkWidget, StrokeMark, WarningMark
from app.window.message_translation import title, translated
from app.window.palette import Colours
from planner.cautions import Caution
from planner.tonight import BenchRow, WorkRow
from planner.values.coating import Portion
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Logged

TIME_WIDTH = 66


class TonightRow(QWidget):
    """A row of the sheet: time at the left, mark on the thread, words beside it.

    What is past of [start, end) is shaded from the top down.
    """

    def __init__(
        self, colours: Colours, start: int, end: int, now: int, *, ruled: bool = False
    ) -> None:
        super().__init__()
        self.colours = colours
        self.start, self.end, self.now = start, end, now
        self.ruled = ruled
        self.grid = QGridLayout(self)
        self.grid.setContentsMargins(10, 0, 10, 0)
        self.grid.setHorizontalSpacing(10)
        self.grid.setVerticalSpacing(0)
        self.grid.setColumnMinimumWidth(0, TIME_WIDTH)
        self.grid.setColumnStretch(2, 1)

    def build(self, times: Iterable[QWidget], mark: MarkWidget, content: QWidget) -> None:
        """Put time, mark and words in their columns."""
        left = QVBoxLayout()
        left.setContentsMargins(0, 3, 0, 3)
        left.setSpacing(0)
        for label in times:
            left.addWidget(label, 0, Qt.AlignmentFlag.AlignRight)
        left.addStretch(1)
        self.grid.addLayout(left, 0, 0)
        self.grid.addWidget(mark, 0, 1)
        self.grid.addWidget(content, 0, 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the shade over what is past, and the rule under the row."""
        painter = QPainter(self)
        share = (self.now - self.start) / max(1, self.end - self.start)
        if share > 0:
            height = self.height() * min(1.0, share)
            mark_drawing.paint_past(painter, QRectF(0, 0, self.width(), height), self.colours)
        if self.ruled:
            painter.setPen(QPen(self.colours.colour("rule"), 1))
            painter.drawLine(TIME_WIDTH + 120, self.height() - 1, self.width(), self.height() - 1)
        painter.end()
        event.accept()


class WorkLine(TonightRow):
    """A piece of work with places to tick off.

    Signals
    -------
    ticked(PassKey, str, bool)
        A place was ticked off, or not after all.
    done(PassKey)
        The whole pass was done.
    taken_back(PassKey)
        It was not begun or done after all.
    """

    ticked = Signal(object, str, bool)
    done = Signal(object)
    taken_back = Signal(object)

    def __init__(
        self,
        colours: Colours,
        row: WorkRow,
        *,
        zone: ZoneInfo,
        now: int,
        entry: Logged | None,
        loggable: bool,
        told: frozenset[Caution] = frozenset(),
        marks: tuple[str, ...] = (),
    ) -> None:
        super().__init__(colours, row.start, row.end, now, ruled=True)
        self.row = row
        self._marks = marks
        self._entry = entry
        self._zone = zone
        self._told = told
        self.boxes: list[QCheckBox] = []
        self._box_of: dict[str, QCheckBox] = {}
        mark = StrokeMark(
            colours,
            swatches=tuple(coat.swatch for coat in row.coats),
            tool=row.tool,
            stage=row.stage,
            name=str(row.key),
            done=self.over,
        )
        times = (
            text(words.clock(row.start, zone), size=1.25, bold=True, wrap=False),
            text(words.span(row.minutes), colour=colours.soft, size=0.9, wrap=False),
        )
        self.build(times, mark, self._content(loggable))
        self.setAccessibleName(self.sentence())

    @property
    def key(self) -> PassKey:
        """The pass of this row."""
        return self.row.key

    @property
    def over(self) -> bool:
        """Tell whether it was done; work under way is not over."""
        return self.row.logged and (self._entry is None or self._entry.end is not None)

    def show_ticks(self) -> None:
        """Tick what the logbook has, whatever was clicked."""
        ticked = self._entry.ticked if self._entry else ()
        for place, box in self._box_of.items():
            box.blockSignals(True)
            box.setChecked(place in ticked)
            box.blockSignals(False)

    def heading(self) -> str:
        """Return the work and the model."""
        row = self.row
        name = words.capital(words.stage_word(row.stage))
        if row.pieces > 1:
            name = self.tr("{stage}, part {number} of {count}").format(
                stage=name, number=row.piece, count=row.pieces
            )
        elif row.key.coat > 1:
            name = self.tr("{stage}, coat {coat}").format(stage=name, coat=row.key.coat)
        return self.tr("{stage} · {model}").format(stage=name, model=row.key.model)

    def sentence(self) -> str:
        """Return the whole row as one sentence for a screen reader."""
        row = self.row
        return self.tr("{start}, {length}: {heading}. {coats}. {why}").format(
            start=words.clock(row.start, self._zone),
            length=words.span(row.minutes),
            heading=self.heading(),
            coats="; ".join(coat.coating for coat in row.coats) or title(row.title),
            why=reasons.reason_sentence(row.reason, self._zone, self.now),
        )

    def _content(self, loggable: bool) -> QWidget:
        content = QWidget()
        box = QVBoxLayout(content)
        box.setContentsMargins(0, 3, 0, 9)
        box.setSpacing(3)
        head = QHBoxLayout()
        head.setSpacing(12)
        head.addWidget(text(self.heading(), size=1.08, bold=True), 1)
        entry = self._entry
        if self.over:
            done = text(self.tr("✓ in the logbook"), wrap=False)
            head.addWidget(done, 0, Qt.AlignmentFlag.AlignTop)
        elif entry is not None:
            at = words.when(minute_of(entry.start, up=False), self._zone, self.now)
            begun = text(self.tr("begun {time}").format(time=at), wrap=False)
            head.addWidget(begun, 0, Qt.AlignmentFlag.AlignTop)
        if not self.over and (loggable or entry is not None):
            head.addWidget(self._done_button(), 0, Qt.AlignmentFlag.AlignTop)
        if entry is not None:
            head.addWidget(self._back_button(), 0, Qt.AlignmentFlag.AlignTop)
        box.addLayout(head)
        if self.row.title and not words.says_stage(self.row.title, self.row.stage):
            box.addWidget(text(title(self.row.title)))
        if self.over:
            return content  # what is done needs no more words
        for coat in self.row.coats:
            box.addWidget(text(_cup(coat.coating, coat.portions, words.tool_word(self.row.tool))))
            if coat.load and self.row.piece == 1:
                box.addWidget(text(words.capital(fill_words(coat.load))))
        box.addWidget(self._places(frozenset(entry.ticked if entry else ())))
        why = reasons.reason_sentence(self.row.reason, self._zone, self.now)
        box.addWidget(text(why, colour=self.colours.soft, size=0.92))
        for mark in self._marks:
            box.addWidget(text(mark, colour=self.colours.drying_word, size=0.92))
        for caution in self.row.cautions:
            box.addWidget(self._caution(caution))
        return content

    def _done_button(self) -> QPushButton:
        button = QPushButton(self.tr("Done"))
        button.setToolTip(self.tr("Note in the logbook that this coat is done now"))
        button.setAccessibleName(self.tr("Done: {heading}").format(heading=self.heading()))
        button.clicked.connect(lambda: self.done.emit(self.key))
        button.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        return button

    def _back_button(self) -> QToolButton:
        button = QToolButton()
        button.setText("↶")
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.setToolTip(self.tr("Take back: plan it again"))
        button.setAccessibleName(self.tr("Take back: {heading}").format(heading=self.heading()))
        button.clicked.connect(lambda: self.taken_back.emit(self.key))
        return button

    def _places(self, ticks: frozenset[str]) -> QWidget:
        """Return the places to tick off, a line for each part."""
        holder = QWidget()
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 1, 0, 1)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(3)
        grid.setColumnStretch(1, 1)
        for line, part in enumerate(self.row.parts):
            name = text(part, colour=self.colours.soft, wrap=False)
            grid.addWidget(name, line, 0, Qt.AlignmentFlag.AlignTop)
            spots = QWidget()
            flow = FlowLayout(spots)
            for place in self.row.places:
                if place.partition("/")[0] == part:
                    flow.addWidget(self._box(place, place in ticks))
            grid.addWidget(spots, line, 1)
        return holder

    def _box(self, place: str, on: bool) -> QCheckBox:
        part, _, spot = place.partition("/")
        box = QCheckBox(spot)
        box.setAccessibleName(self.tr("{place} of {part}").format(place=spot, part=part))
        box.setChecked(on)
        box.toggled.connect(lambda on: self.ticked.emit(self.key, place, on))
        self.boxes.append(box)
        self._box_of[place] = box
        return box

    def _caution(self, caution: Caution) -> QWidget:
        """Return a caution: in full once on a sheet, by its first words after that."""
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 2, 0, 0)
        line.setSpacing(6)
        line.addWidget(WarningMark(self.colours), 0, Qt.AlignmentFlag.AlignTop)
        told = caution in self._told
        whole = translated(caution.text)
        shown = whole.partition(":")[0] if told else whole
        label = text(shown, size=0.92)
        label.setToolTip(
            self.tr("{caution}\nSource: {source}").format(
                caution=whole, source=translated(caution.source)
            )
        )
        label.setAccessibleName(whole)
        line.addWidget(label, 1)
        return holder


class SetUpLine(TonightRow):
    """Loading, changing, cleaning or preparing between the pieces of work."""

    def __init__(
        self, colours: Colours, row: BenchRow, *, zone: ZoneInfo, now: int, more: tuple[str, ...]
    ) -> None:
        super().__init__(colours, row.start, row.end, now)
        name = words.capital(words.setup_word(row.kind, row.coating))
        sentence = self.tr("{name} · {length}").format(name=name, length=words.span(row.minutes))
        parts = _portions(row.portions)
        if parts:
            sentence = self.tr("{sentence} · {parts}").format(sentence=sentence, parts=parts)
        times = (text(words.clock(row.start, zone), colour=colours.soft, wrap=False),)
        content = QWidget()
        box = QVBoxLayout(content)
        box.setContentsMargins(0, 3, 0, 3)
        box.setSpacing(2)
        box.addWidget(text(sentence, colour=colours.soft))
        if row.load:
            told = words.capital(fill_words(row.load))
            box.addWidget(text(told))
            sentence = self.tr("{sentence} · {fill}").format(sentence=sentence, fill=told)
        for told in more:
            box.addWidget(text(told, size=0.92))
            sentence = self.tr("{sentence} · {fill}").format(sentence=sentence, fill=told)
        self.build(times, DropMark(colours, row.swatch), content)
        self.setAccessibleName(
            self.tr("{start}: {sentence}").format(
                start=words.clock(row.start, zone), sentence=sentence
            )
        )


class NoteLine(TonightRow):
    """A gap in which nothing is ready, or the end of the stretch."""

    def __init__(
        self, colours: Colours, start: int, end: int, words_: str, *, zone: ZoneInfo, now: int
    ) -> None:
        super().__init__(colours, start, end, now)
        times = (text(words.clock(start, zone), colour=colours.soft, wrap=False),)
        label = text(words_, colour=colours.soft)
        label.setContentsMargins(0, 3, 0, 3)
        self.build(times, GapMark(colours), label)
        self.setAccessibleName(words_)


def _cup(coating: str, portions: tuple[Portion, ...], tool: str) -> str:
    parts = _portions(portions)
    if parts:
        return words.tr("{coating} ({parts}), {tool}").format(
            coating=coating, parts=parts, tool=tool
        )
    return words.tr("{coating}, {tool}").format(coating=coating, tool=tool)


def _portions(portions: tuple[Portion, ...]) -> str:
    return " + ".join(
        f"{words.decimal(f'{portion.parts:g}')} {portion.coating}" for portion in portions
    )
