"""What the window shows while there is nothing to plan: a way in."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.service import demos
from app.window import strokes
from app.window.flow import FlowLayout
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from planner.values.step import Stage, Tool

STROKES = (
    ("#9a9c9d", Tool.AIRBRUSH, 0.62),
    ("#c8b482", Tool.AIRBRUSH, 0.8),
    ("#23565c", Tool.BRUSH, 0.5),
    ("#d9661f", Tool.BRUSH, 0.34),
)


class Strokes(QWidget):
    """Four strokes of paint, each still a little wet."""

    def __init__(self) -> None:
        super().__init__()
        self.colours = LIGHT
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(150)

    def sizeHint(self) -> QSize:  # noqa: N802
        """Return a size that has room for the strokes."""
        return QSize(420, 150)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Paint strokes with their wedges."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for at, (swatch, tool, share) in enumerate(STROKES):
            middle = 22 + at * 35
            length = self.width() * share * 0.62
            rect = QRectF(4, middle - 11, length, 22)
            end = length + self.width() * 0.6 * (1.05 - share)
            corners = [
                (rect.right(), middle - 9.0),
                (end, middle - 0.3),
                (end, middle + 0.3),
                (rect.right(), middle + 9.0),
            ]
            strokes.paint_wedge(painter, corners, self.colours, strong=False)
            strokes.paint_ring(painter, end, middle, self.colours, 4)
            strokes.paint_work(
                painter,
                rect,
                self.colours,
                swatch=swatch,
                tool=tool,
                stage=Stage.BASE,
                name=swatch,
            )
        painter.end()
        event.accept()


class EmptyState(QWidget):
    """An invitation.

    Signals
    -------
    demo_wanted(str)
        A demonstration project by its name.
    import_wanted()
        A file of one's own.
    """

    demo_wanted = Signal(str)
    import_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._strokes = Strokes()
        inner = QWidget()
        inner.setFixedWidth(540)
        column = QVBoxLayout(inner)
        column.setSpacing(10)
        column.addWidget(self._strokes)
        self.title = text(self.tr("Nothing on the bench yet"), size=1.9, bold=True)
        self.line = text(
            self.tr(
                "Bring in a project file, or look around with an invented one. "
                "Tackfree then says what to do tonight, in which order, and when it will be done."
            )
        )
        column.addWidget(self.title)
        column.addWidget(self.line)
        column.addSpacing(6)
        self.import_button = QPushButton(self.tr("Import a project file…"))
        self.import_button.clicked.connect(self.import_wanted)
        row = QHBoxLayout()
        row.addWidget(self.import_button)
        row.addStretch(1)
        column.addLayout(row)
        self.demo_title = text(self.tr("Invented projects to look around with"), bold=True)
        column.addWidget(self.demo_title)
        self.demos: list[QPushButton] = []
        line = FlowLayout(across=8, down=8)
        for name in demos.names():
            button = QPushButton(name.replace("_", " ").capitalize())
            button.clicked.connect(partial(self.demo_wanted.emit, name))
            self.demos.append(button)
            line.addWidget(button)
        column.addLayout(line)
        outer = QVBoxLayout(self)
        outer.addStretch(2)
        outer.addWidget(inner, 0, Qt.AlignmentFlag.AlignHCenter)
        outer.addStretch(3)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._strokes.colours = colours
        self._strokes.update()

    def show_aside(self, *, all_set_aside: bool) -> None:
        """Say whether there is nothing at all, or nothing active."""
        if all_set_aside:
            self.title.setText(self.tr("Every project is set aside"))
            self.line.setText(self.tr("Check a project in the list at the left to plan it again."))
        else:
            self.title.setText(self.tr("Nothing on the bench yet"))
            self.line.setText(
                self.tr(
                    "Bring in a project file, or look around with an invented one. Tackfree then "
                    "says what to do tonight, in which order, and when it will be done."
                )
            )
