"""A chosen piece of work in words: what, when, why then, its slack, its gates, what waits."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from app.service.pins import wishes_of
from app.window import reasons, words
from app.window.labels import text
from app.window.mark_widgets import BracketMark, MarkWidget, PinMark, RingMark
from app.window.message_translation import translated
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.strip_content import Piece
from app.window.timeline.labels import mark_lines
from app.window.wishes.conflict_sentence import slack_of
from app.window.wishes.wish_wording import wish_line
from planner.graph.slack import Slack
from planner.values.plan import PassKey


class Details(QScrollArea):
    """The panel that Enter opens on the timeline."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._picture: PlanSnapshot | None = None
        self._key: PassKey | None = None
        self._slacks: dict[tuple[str, str], Slack] = {}
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Chosen piece of work"))
        self._build()

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self._build()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Read from another plan."""
        self._picture = picture
        self._slacks.clear()
        self._build()

    def show_key(self, key: PassKey | None) -> None:
        """Show another piece of work."""
        if key != self._key:
            self._key = key
            self._build()

    def sentences(self) -> list[str]:
        """Return what it is, when, and why then, line by line."""
        picture, key = self._picture, self._key
        if picture is None or key is None:
            return [self.tr("Choose a piece of work to see why it is there.")]
        zone, now = picture.zone, picture.plan.now
        pieces = self._pieces()
        if not pieces:
            return [self._missing(picture, key)]
        lines = reasons.piece_lines(pieces[0], zone, now)
        for piece in pieces[1:]:
            lines.append(
                self.tr("and {day} {start}–{end}").format(
                    day=words.day_of(piece.interval.start, zone),
                    start=words.clock(piece.interval.start, zone),
                    end=words.clock(piece.interval.end, zone),
                )
            )
        lines += mark_lines(pieces[0])
        if not pieces[0].logged:
            lines += self.slack_lines()
        return lines

    def slack_lines(self) -> list[str]:
        """Return how long it can wait, as far as drying alone decides."""
        picture, key = self._picture, self._key
        if picture is None or key is None or not self._known(picture, key):
            return []
        spot = (key.project, key.model)
        if spot not in self._slacks:
            self._slacks[spot] = slack_of(picture, *spot)
        times = self._slacks[spot].path.times.get(key)
        if times is None:
            return []
        if times.total_float <= 0:
            return [self.tr("No slack: any delay here delays the whole model.")]
        sentence = self.tr("Slack: {length}, counting drying alone.")
        return [sentence.format(length=words.span(times.total_float))]

    def waiting_lines(self) -> list[str]:
        """Return what waits for it, the soonest first."""
        picture, key = self._picture, self._key
        if picture is None or key is None or key not in picture.laid.problem.index:
            return []
        laid, zone, now = picture.laid, picture.zone, picture.plan.now
        waiting: dict[PassKey, int] = {}
        for index in laid.problem.after[laid.problem.index[key]]:
            after = laid.problem.activities[index].pass_.key
            placed = laid.placed.get(after)
            waiting[after] = placed.start if placed else -1
        lines = []
        for after, start in sorted(waiting.items(), key=lambda pair: (pair[1] < 0, pair[1])):
            name = words.capital(reasons.key_name(after))
            if start < 0:
                lines.append(self.tr("{work}: no place yet").format(work=name))
            else:
                at = words.when(start, zone, now)
                lines.append(self.tr("{work}, {time}").format(work=name, time=at))
        return lines

    def _missing(self, picture: PlanSnapshot, key: PassKey) -> str:
        why = next(
            (translated(unplaced.why) for unplaced in picture.plan.unplaced if unplaced.key == key),
            "",
        )
        if why:
            told = self.tr("{work} has no place in the plan: {why}.")
            return told.format(work=words.capital(reasons.key_name(key)), why=why)
        return self.tr("This piece of work has no place in the plan.")

    def _pieces(self) -> list[Piece]:
        picture = self._picture
        return [p for p in picture.strip.pieces if p.key == self._key] if picture else []

    def _known(self, picture: PlanSnapshot, key: PassKey) -> bool:
        return key in picture.laid.problem.index

    def _build(self) -> None:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(14, 8, 14, 12)
        column.setSpacing(3)
        first, *rest = self.sentences()
        column.addWidget(text(first, bold=self._key is not None, size=1.05))
        for sentence in rest:
            column.addWidget(text(sentence))
        picture, key = self._picture, self._key
        if picture is not None and key is not None and self._known(picture, key):
            for pin in wishes_of(picture.book, key):
                told = wish_line(pin, picture.zone, key.project)
                column.addWidget(self._marked(PinMark(self._colours), told))
            for gate in reasons.gate_lines(picture.laid, key):
                column.addWidget(self._gate(gate))
            waiting = self.waiting_lines()
            if waiting:
                column.addWidget(text(self.tr("What waits for it"), bold=True))
            for line in waiting:
                column.addWidget(text(line))
        column.addStretch(1)
        self.setWidget(holder)

    def _gate(self, gate: reasons.GateLine) -> QWidget:
        mark: MarkWidget = (
            BracketMark(self._colours) if gate.kind == "closes" else RingMark(self._colours)
        )
        why = self.tr("{why} ({source})").format(why=gate.why, source=gate.source)
        return self._marked(mark, gate.text, why)

    def _marked(self, mark: MarkWidget, told: str, why: str = "") -> QWidget:
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 3, 0, 0)
        line.setSpacing(8)
        line.addWidget(mark)
        box = QVBoxLayout()
        box.setSpacing(0)
        box.addWidget(text(told))
        if why:
            box.addWidget(text(why, colour=self._colours.soft, size=0.92))
        line.addLayout(box, 1)
        return holder
