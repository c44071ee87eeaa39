"""What the window shows while there is nothing to plan: a way in."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.service import demos
from app.window import mark_drawing, words
from app.window.first_run.view import FirstRun
from app.window.flow_layout import FlowLayout
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from app.window.session import Session
from app.window.tab_order import bring_into_sight, move_focus
from planner.values.step import Stage, Tool

STROKES = (
    ("#9a9c9d", Tool.AIRBRUSH, 0.62),
    ("#c8b482", Tool.AIRBRUSH, 0.8),
    ("#23565c", Tool.BRUSH, 0.5),
    ("#d9661f", Tool.BRUSH, 0.34),
)

HIGH = 104  # of the strokes
WIDE = 660  # of what is asked and offered, at most


class Strokes(QWidget):
    """Four strokes of paint, each still a little wet."""

    def __init__(self) -> None:
        super().__init__()
        self.colours = LIGHT
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(HIGH)

    def sizeHint(self) -> QSize:
        """Return a size that has room for the strokes."""
        return QSize(420, HIGH)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint strokes with their wedges."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for at, (swatch, tool, share) in enumerate(STROKES):
            middle = 14 + at * 25
            length = self.width() * share * 0.62
            rect = QRectF(4, middle - 8, length, 16)
            end = length + self.width() * 0.6 * (1.05 - share)
            corners = [
                (rect.right(), middle - 6.5),
                (end, middle - 0.3),
                (end, middle + 0.3),
                (rect.right(), middle + 6.5),
            ]
            mark_drawing.paint_wedge(painter, corners, self.colours, strong=False)
            mark_drawing.paint_ring(painter, end, middle, self.colours, 4)
            mark_drawing.paint_work(
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
    """An invitation: four questions, a file of one's own, or a demonstration.

    Signals
    -------
    demo_wanted(str)
        A demonstration project by its name.
    import_wanted()
        A file of one's own.
    begun()
        The questions were answered, and the book holds what was told.
    """

    demo_wanted = Signal(str)
    import_wanted = Signal()
    begun = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._strokes = Strokes()
        self.title = text("", size=1.9, bold=True)
        self.line = text("")
        self.first_run = FirstRun(session)
        self.first_run.begun.connect(self.begun)
        self.import_button = QPushButton(self.tr("Import a project file…"))
        self.import_button.clicked.connect(self.import_wanted)
        self.demo_title = text(self.tr("Or look around with an invented project"), bold=True)
        self.demos: list[QPushButton] = []
        self._inner = inner = QWidget()
        inner.setMaximumWidth(WIDE)
        self._lay_out(inner)
        middle = QWidget()
        row = QHBoxLayout(middle)
        row.addStretch(1)
        row.addWidget(inner, 20)
        row.addStretch(1)
        self.area = QScrollArea()
        self.area.setWidget(middle)
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setAccessibleName(self.tr("Begin"))
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.area)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._focused)
        self.show_aside(all_set_aside=False)

    def _lay_out(self, inner: QWidget) -> None:
        column = QVBoxLayout(inner)
        column.setContentsMargins(14, 10, 14, 14)
        column.setSpacing(8)
        column.addWidget(self._strokes)
        column.addWidget(self.title)
        column.addWidget(self.line)
        column.addSpacing(4)
        column.addWidget(self.first_run)
        column.addSpacing(10)
        column.addWidget(self.demo_title)
        line = FlowLayout(across=8, down=8)
        for name in demos.names():
            button = QPushButton(demos.title(name, words.language_code()))
            button.clicked.connect(partial(self.demo_wanted.emit, name))
            self.demos.append(button)
            line.addWidget(button)
        line.addWidget(self.import_button)
        column.addLayout(line)
        column.addStretch(1)

    def showEvent(self, event: QShowEvent) -> None:
        """Let the first question take the keys when it comes on screen."""
        super().showEvent(event)
        self.first_run.show_book()
        QTimer.singleShot(0, self, self.first_run.begin)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Hand the keys on to the first question."""
        super().focusInEvent(event)
        self.first_run.begin()

    def _focused(self, _old: QWidget | None, new: QWidget | None) -> None:
        if new is not None and self._inner.isAncestorOf(new):
            QTimer.singleShot(0, new, partial(bring_into_sight, new))

    def focusNextPrevChild(self, onwards: bool) -> bool:
        """Let Tab go along as things are laid out."""
        return move_focus(self._inner, onwards=onwards) or super().focusNextPrevChild(onwards)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._strokes.colours = colours
        self._strokes.update()

    def show_aside(self, *, all_set_aside: bool) -> None:
        """Say whether there is nothing at all, or nothing active."""
        self.first_run.show_book()
        if all_set_aside:
            self.title.setText(self.tr("Every project is set aside"))
            self.line.setText(
                self.tr(
                    "Check a project in the list at the left to plan it again, or begin another."
                )
            )
        else:
            self.title.setText(self.tr("Nothing on the bench yet"))
            self.line.setText(
                self.tr(
                    "Four short questions, and Tackfree says what to do tonight, in which "
                    "order, and when it will be done."
                )
            )
