"""A chosen piece of work in words: what, when, why then, and every gate."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from app.window import reasons, words
from app.window.labels import text
from app.window.marks import BracketMark, Mark, RingMark
from app.window.palette import LIGHT, Colours
from app.window.picture import Picture
from planner.values.plan import PassKey


class Details(QScrollArea):
    """The panel that Enter opens on the timeline."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._picture: Picture | None = None
        self._key: PassKey | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Chosen piece of work"))
        self._build()

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self._build()

    def show_picture(self, picture: Picture) -> None:
        """Read from another plan."""
        self._picture = picture
        self._build()

    def show_key(self, key: PassKey | None) -> None:
        """Show another piece of work."""
        self._key = key
        self._build()

    def sentences(self) -> list[str]:
        """Return everything that is shown, line by line."""
        picture, key = self._picture, self._key
        if picture is None or key is None:
            return [self.tr("Choose a piece of work to see why it stands where it stands.")]
        zone, now = picture.zone, picture.plan.now
        pieces = [piece for piece in picture.strip.pieces if piece.key == key]
        if not pieces:
            return [self.tr("This piece of work has no place in the plan.")]
        lines = reasons.piece_lines(pieces[0], zone, now)
        for piece in pieces[1:]:
            lines.append(
                self.tr("and {day} {start}–{end}").format(
                    day=words.day_of(piece.interval.start, zone),
                    start=words.clock(piece.interval.start, zone),
                    end=words.clock(piece.interval.end, zone),
                )
            )
        return lines

    def _build(self) -> None:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(14, 8, 14, 12)
        column.setSpacing(3)
        first, *rest = self.sentences()
        column.addWidget(text(first, bold=self._key is not None, size=1.05))
        for sentence in rest:
            column.addWidget(text(sentence))
        if self._picture is not None and self._key is not None:
            for gate in reasons.gate_lines(self._picture.laid, self._key):
                column.addWidget(self._gate(gate))
        column.addStretch(1)
        self.setWidget(holder)

    def _gate(self, gate: reasons.GateLine) -> QWidget:
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 3, 0, 0)
        line.setSpacing(8)
        mark: Mark = (
            BracketMark(self._colours) if gate.kind == "closes" else RingMark(self._colours)
        )
        line.addWidget(mark)
        box = QVBoxLayout()
        box.setSpacing(0)
        box.addWidget(text(gate.text))
        why = self.tr("{why} ({source})").format(why=gate.why, source=gate.source)
        box.addWidget(text(why, colour=self._colours.soft, size=0.92))
        line.addLayout(box, 1)
        return holder
