"""What is found unsound in the order of coats, with mends, and where practice is divided."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from app.window import words
from app.window.labels import text
from app.window.mark_widgets import MarkWidget, RingMark, WarningMark
from app.window.message_translation import translated
from app.window.palette import LIGHT, Colours
from app.window.stack.model import verdict_word
from planner.layers.disputed_choices import Choice
from planner.layers.finding import Finding

WIDTH = (204, 300)  # the least and the most, px


class FindingsPanel(QScrollArea):
    """Findings of one model.

    Signals
    -------
    mend_wanted(Finding)
        A mend shall be applied.
    """

    mend_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Findings"))
        self.setMinimumWidth(WIDTH[0])
        self.setMaximumWidth(WIDTH[1])
        self.buttons: list[QPushButton] = []

    def sizeHint(self) -> QSize:
        """Return the usual width."""
        return QSize(WIDTH[1], super().sizeHint().height())

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours, from the next findings on."""
        self._colours = colours

    def show_findings(self, findings: tuple[Finding, ...], choices: tuple[Choice, ...]) -> None:
        """Show other findings."""
        self.buttons = []
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(8, 4, 18, 16)
        column.setSpacing(10)
        column.addWidget(text(self.tr("Findings"), bold=True, size=1.1))
        if not findings:
            sound = self.tr("The order of coats is sound.")
            column.addWidget(self._line(RingMark(self._colours), [sound])[0])
        for finding in sorted(findings, key=lambda finding: -finding.verdict.rank):
            column.addWidget(self._finding(finding))
        if choices:
            column.addWidget(text(self.tr("Where practice is divided"), bold=True, size=1.1))
        for choice in choices:
            column.addWidget(self._choice(choice))
        column.addStretch(1)
        self.setWidget(holder)

    def _finding(self, finding: Finding) -> QWidget:
        lines = [
            self.tr("{verdict}: {message}").format(
                verdict=words.capital(verdict_word(finding.verdict)),
                message=translated(finding.message),
            ),
            self.tr("Source: {source}").format(source=translated(finding.source)),
        ]
        holder, box = self._line(WarningMark(self._colours), lines)
        if finding.mend is not None:
            box.addWidget(text(self.tr("Mend: {mend}").format(mend=translated(finding.mend.title))))
            button = QPushButton(self.tr("Apply"))
            button.setToolTip(self.tr("Apply this mend; it can be undone"))
            button.setAccessibleName(
                self.tr("Apply: {mend}").format(mend=translated(finding.mend.title))
            )
            button.clicked.connect(partial(self.mend_wanted.emit, finding))
            self.buttons.append(button)
            row = QHBoxLayout()
            row.addWidget(button)
            row.addStretch(1)
            box.addLayout(row)
        return holder

    def _choice(self, choice: Choice) -> QWidget:
        lines = [translated(choice.question)]
        for way, reason in choice.sides:
            form = self.tr("yours – {way}: {why}") if way == choice.chosen else "{way}: {why}"
            lines.append(form.format(way=translated(way), why=translated(reason)))
        return self._line(RingMark(self._colours), lines)[0]

    def _line(self, mark: MarkWidget, lines: list[str]) -> tuple[QWidget, QVBoxLayout]:
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(8)
        line.addWidget(mark)
        box = QVBoxLayout()
        box.setSpacing(3)
        first, *rest = lines
        box.addWidget(text(first))
        for each in rest:
            box.addWidget(text(each, colour=self._colours.soft, size=0.92))
        line.addLayout(box, 1)
        return holder, box
