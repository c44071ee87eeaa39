"""Beside the shelf: what to buy, and on one scale of time when each runs out by the plan."""

from __future__ import annotations

from functools import partial
from operator import is_not

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF, QShowEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.service import shopping_edits
from app.service.shopping_edits import Bought
from app.window import mark_drawing, words
from app.window.colour_names import short_name
from app.window.elided_label import ElidedLabel
from app.window.emptying import empty
from app.window.labels import MessageLabel, text
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot, SnapshotPart
from app.window.session import Session
from app.window.shopping.shopping_rows import ShopRow, current, rows_of
from app.window.time_scale import EDGE, ScaleLine, TimeScale
from planner.quantity import ShoppingLine
from planner.values.book import Book

AT_ONCE = 300  # pieces of work whose amounts are summed at once
HIGH = 22  # of a wedge [pixels]
LAST_DAY = 1440  # after the last moment that is shown [min]


class RunsOutWedge(QWidget):
    """A bottle's colour that thins until it runs out, and waits from then on."""

    def __init__(self, scale: TimeScale, colours: Colours, row: ShopRow) -> None:
        super().__init__()
        self._scale, self._colours, self._row = scale, colours, row
        self.setFixedHeight(HIGH)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint wedge, bracket and the dots after it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        out, colours, middle = self._row.runs_out, self._colours, self.height() / 2
        at = self._scale.end if out is None or out.at is None else out.at
        left, right = float(EDGE), self._scale.x(at, self.width())
        painter.setPen(QPen(colours.colour("soft"), 1, Qt.PenStyle.DotLine))
        painter.drawLine(QPointF(right, middle), QPointF(self.width() - EDGE, middle))
        swatch = self._row.swatch or colours.rule
        painter.setPen(mark_drawing.edge_pen(swatch, colours))
        painter.setBrush(mark_drawing.brush_of(swatch, 1.0))
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(left, middle - 7),
                    QPointF(right, middle - 1),
                    QPointF(right, middle + 1),
                    QPointF(left, middle + 7),
                ]
            )
        )
        mark_drawing.paint_bracket(painter, right + 1, middle - 9, middle + 9, colours)
        painter.end()
        event.accept()


class PaintSwatch(QWidget):
    """A patch of colour with an edge that is seen on any ground."""

    def __init__(self, colours: Colours, swatch: str) -> None:
        super().__init__()
        self._colours, self._swatch = colours, swatch
        self.setFixedSize(36, 20)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(mark_drawing.edge_pen(self._swatch, self._colours))
        painter.setBrush(mark_drawing.brush_of(self._swatch, 1.0))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 8, 8)
        painter.end()
        event.accept()


class BuyPanel(QScrollArea):
    """What the plan lacks, what runs out first on top."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._colours = LIGHT
        self._shown: tuple[Book, PlanSnapshot] | None = None
        session.pictured.connect(self._follow)
        session.edited.connect(self._follow)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(self.tr("To buy"))
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(12, 8, 18, 20)
        column.setSpacing(6)
        self.summary = text("")
        self.message = MessageLabel()
        self._lines = QVBoxLayout()
        self._lines.setSpacing(4)
        self.buttons: list[QPushButton] = []
        column.addWidget(self.summary)
        column.addWidget(self.message)
        column.addLayout(self._lines)
        column.addStretch(1)
        self.setWidget(holder)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self._fill()

    def showEvent(self, event: QShowEvent) -> None:
        """Show what has come since, whatever page it stands beside."""
        super().showEvent(event)
        self._follow()

    def _follow(self) -> None:
        book, picture = self._session.book, self._session.picture
        if self.isVisible() and book is not None:
            few = picture is not None and len(picture.plan.placements) <= AT_ONCE
            known = picture is not None and picture.has(SnapshotPart.SHOPPING)
            if few or known or picture is None:
                self.show_book(book, picture)

    def show_book(self, book: Book, picture: PlanSnapshot | None) -> None:
        """Show what a book lacks for a plan; None while nothing is planned."""
        shown = (book, picture) if picture is not None else None
        if self._shown is None or shown is None or any(map(is_not, shown, self._shown)):
            self._shown = shown
            self._fill()

    def _fill(self) -> None:
        empty(self._lines)
        self.buttons = []
        if self._shown is None:
            self.summary.setText(self.tr("Nothing is planned yet."))
            return
        book, picture = self._shown
        rows = [row for row in rows_of(current(picture, book), all_of_it=False) if row.bought]
        self.summary.setText(
            self.tr("What runs out first is on top.") if rows else self.tr("The stock is enough.")
        )
        if not rows:
            return
        moments = [row.runs_out.at for row in rows if row.runs_out and row.runs_out.at is not None]
        ends = [end for _, end in picture.plan.finishes]
        scale = TimeScale(picture.now, max([picture.now, *moments, *ends]) + LAST_DAY)
        self._lines.addWidget(ScaleLine(scale, self._colours, picture.zone))
        for row in rows:
            self._lines.addWidget(self._line(row, scale))

    def _line(self, row: ShopRow, scale: TimeScale) -> QWidget:
        colours = self._colours
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 8, 0, 4)
        column.setSpacing(2)
        head = QHBoxLayout()
        if row.swatch:
            head.addWidget(PaintSwatch(colours, row.swatch))
        name = ElidedLabel(bold=True)
        name.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        line = row.line
        short = short_name(line.coating) if isinstance(line, ShoppingLine) else row.name
        name.say(words.capital(short))
        name.setToolTip(row.name)
        head.addWidget(name, 1)
        column.addLayout(head)
        column.addWidget(RunsOutWedge(scale, colours, row))
        foot = QHBoxLayout()
        told = text(self._when(row), colour=colours.closing_word, size=0.95)
        foot.addWidget(told, 1)
        column.addLayout(foot)
        act = QHBoxLayout()
        act.addWidget(text(self.tr("buy {amount}").format(amount=row.buy()), size=0.95), 1)
        button = QPushButton(self.tr("Bought"))
        button.setAccessibleName(
            self.tr("Bought {amount} of {name}").format(amount=row.buy(), name=row.name)
        )
        assert row.bought is not None
        button.clicked.connect(partial(self._buy, row.bought))
        self.buttons.append(button)
        act.addWidget(button)
        column.addLayout(act)
        return holder

    def _when(self, row: ShopRow) -> str:
        out = row.runs_out
        if out is None or out.at is None:
            return self.tr("not planned yet")
        when = words.today_or_when(out.at, self._session.zone, self._session.now)
        return self.tr("runs out {when}").format(when=when)

    def _buy(self, bought: Bought) -> None:
        refused = self._session.attempt(lambda book: shopping_edits.buy(book, (bought,)))
        self.message.say(refused.mend if refused else "")
