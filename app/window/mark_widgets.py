"""Small widgets that paint one mark each: the thread with its strokes, wedges, brackets."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing
from app.window.palette import Colours
from app.window.wedge_geometry import wedge_outline
from planner.values.step import Stage, Tool

THREAD_X = 9.0


class MarkWidget(QWidget):
    """A painted mark of fixed width; text beside it says the same."""

    def __init__(self, colours: Colours, width: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours = colours
        self.setFixedWidth(width)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the mark."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.draw(painter)
        painter.end()
        event.accept()

    def draw(self, painter: QPainter) -> None:
        """Paint with a prepared painter."""
        raise NotImplementedError

    def run_thread(self, painter: QPainter, *, dotted: bool = False) -> None:
        """Paint the thread that runs through the evening."""
        pen = QPen(self.colours.colour("soft", 0.7), 1.6)
        if dotted:
            pen.setDashPattern([0.2, 3.0])
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(THREAD_X, 0), QPointF(THREAD_X, self.height()))


class StrokeMark(MarkWidget):
    """The thread, and on it a stroke of the coating with the tool's own end."""

    def __init__(
        self,
        colours: Colours,
        *,
        swatches: tuple[str, ...],
        tool: Tool,
        stage: Stage,
        name: str,
        done: bool,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(colours, 92, parent)
        self._swatches = swatches or ("",)
        self._tool, self._stage, self._name, self._done = tool, stage, name, done
        self.setMinimumHeight(30 + 18 * (len(self._swatches) - 1))

    def draw(self, painter: QPainter) -> None:
        """Paint thread, knot and strokes."""
        self.run_thread(painter)
        top = 6.0
        for swatch in self._swatches:
            rect = QRectF(THREAD_X + 9, top, 62, 20)
            mark_drawing.paint_work(
                painter,
                rect,
                self.colours,
                swatch=swatch,
                tool=self._tool,
                stage=self._stage,
                name=self._name + swatch,
                faded=self._done,
            )
            top += 24
        painter.setPen(QPen(self.colours.colour("ink"), 1.6))
        painter.setBrush(self.colours.colour("ink" if self._done else "sheet"))
        painter.drawEllipse(QPointF(THREAD_X, 16), 4.5, 4.5)


class DropMark(MarkWidget):
    """The thread with a drop of what is loaded; an empty ring for cleaning."""

    def __init__(self, colours: Colours, swatch: str, parent: QWidget | None = None) -> None:
        super().__init__(colours, 92, parent)
        self._swatch = swatch
        self.setMinimumHeight(22)

    def draw(self, painter: QPainter) -> None:
        """Paint thread and drop."""
        self.run_thread(painter)
        middle = self.height() / 2
        painter.setPen(QPen(self.colours.colour("soft"), 1.2))
        if self._swatch:
            painter.setBrush(QColor(self._swatch))
            painter.drawEllipse(QPointF(THREAD_X + 18, middle), 6, 6)
        else:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(QPointF(THREAD_X + 18, middle), 6, 6)
            painter.drawLine(QPointF(THREAD_X + 14, middle + 4), QPointF(THREAD_X + 22, middle - 4))
        painter.drawLine(QPointF(THREAD_X, middle), QPointF(THREAD_X + 12, middle))


class GapMark(MarkWidget):
    """The thread, dotted, where nothing is done."""

    def __init__(self, colours: Colours, parent: QWidget | None = None) -> None:
        super().__init__(colours, 92, parent)
        self.setMinimumHeight(22)

    def draw(self, painter: QPainter) -> None:
        """Paint the dots."""
        self.run_thread(painter, dotted=True)


class WedgeMark(QWidget):
    """A wedge from laid to open; what is past of it is shaded."""

    def __init__(
        self, colours: Colours, share: float, *, endless: bool, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._colours, self._share, self._endless = colours, share, endless
        self.setFixedHeight(16)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Return a size that shows the thinning."""
        return QSize(180, 16)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the wedge, the shade over what is past, and the ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        right, middle = self.width() - 7.0, self.height() / 2
        end = right * 8 if self._endless else right
        corners = wedge_outline(1, end, middle, 12, min(end, right))
        mark_drawing.paint_wedge(painter, corners, self._colours, strong=True)
        past = QRectF(0, 0, 1 + (right - 1) * self._share, self.height())
        if self._share > 0:
            mark_drawing.paint_past(painter, past, self._colours)
        if not self._endless:
            mark_drawing.paint_ring(painter, right, middle, self._colours, 4)
        painter.end()
        event.accept()


class BracketMark(MarkWidget):
    """A closing bracket."""

    def __init__(self, colours: Colours, parent: QWidget | None = None) -> None:
        super().__init__(colours, 14, parent)

    def draw(self, painter: QPainter) -> None:
        """Paint the bracket as high as the text beside it."""
        mark_drawing.paint_bracket(painter, 9, 3, self.height() - 3, self.colours)


class WarningMark(MarkWidget):
    """A caution's triangle."""

    def __init__(self, colours: Colours, parent: QWidget | None = None) -> None:
        super().__init__(colours, 20, parent)
        self.setMinimumHeight(18)

    def draw(self, painter: QPainter) -> None:
        """Paint the triangle beside the first line of the text."""
        mark_drawing.paint_warning(painter, QRectF(1, 2, 15, 13), self.colours)


class PinMark(MarkWidget):
    """A wish."""

    def __init__(self, colours: Colours, parent: QWidget | None = None) -> None:
        super().__init__(colours, 14, parent)

    def draw(self, painter: QPainter) -> None:
        """Paint the pin beside the first line of the text."""
        mark_drawing.paint_pin(painter, 7, 7, self.colours, firm=True)


class RingMark(MarkWidget):
    """The ring at which a film opens."""

    def __init__(self, colours: Colours, parent: QWidget | None = None) -> None:
        super().__init__(colours, 14, parent)

    def draw(self, painter: QPainter) -> None:
        """Paint the ring beside the first line of the text."""
        mark_drawing.paint_ring(painter, 7, 9, self.colours, 4)
