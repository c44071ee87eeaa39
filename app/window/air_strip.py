"""The line above every room: the air at the bench, whether to spray, the last undo, the clock."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QAction, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QToolButton, QVBoxLayout, QWidget

from app.window import words
from app.window.air_panel import AirPanel
from app.window.elided_label import ElidedLabel
from app.window.palette import LIGHT, Colours
from app.window.session import Session
from planner.values.moment import moment_of

AROUND, GAP = 16, 10  # pixels
HIGH = 40
MARK = 18  # pixels


class VerdictMark(QWidget):
    """A ring where spraying is safe, a triangle where it wants care, a barred ring where not."""

    def __init__(self) -> None:
        super().__init__()
        self.colours = LIGHT
        self._worst = "go"
        self.setFixedSize(MARK, MARK)

    def show_fitness(self, worst: str) -> None:
        """Show another verdict: "go", "with care" or "not now"."""
        self._worst = worst
        self.update()

    def sizeHint(self) -> QSize:
        """Return its fixed size."""
        return QSize(MARK, MARK)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the mark; the words beside it say the same."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = self.rect().adjusted(3, 3, -3, -3)
        if self._worst == "go":
            painter.setPen(QPen(self.colours.colour("drying_word"), 2.2))
            painter.drawEllipse(box)
        elif self._worst == "with care":
            painter.setPen(QPen(self.colours.colour("closing_word"), 1.8))
            top, left, right = box.center(), box.bottomLeft(), box.bottomRight()
            top.setY(box.top())
            painter.drawPolygon([top, right, left])
            painter.drawLine(top.x(), box.top() + 4, top.x(), box.bottom() - 4)
            painter.drawPoint(top.x(), box.bottom() - 2)
        else:
            painter.setPen(QPen(self.colours.colour("closing_word"), 2.2))
            painter.drawEllipse(box)
            painter.drawLine(box.topLeft() + box.center() * 0.15, box.bottomRight())
        painter.end()
        event.accept()


class AirStrip(QFrame):
    """Place, temperature, humidity and verdict; below them, when asked for, the fields.

    Signals
    -------
    opened()
        The fields were asked for.
    """

    opened = Signal()

    def __init__(self, session: Session, undo: QAction) -> None:
        super().__init__()
        self._session = session
        self._colours = LIGHT
        self._told: tuple[object, ...] = (None, None, None, None)
        self.setAccessibleName(self.tr("Air at the bench"))
        self.place = ElidedLabel(bold=True)
        self.air = ElidedLabel()
        self.mark = VerdictMark()
        self.verdict = ElidedLabel()
        self.change = QPushButton(self.tr("Change air"))
        self.change.setCheckable(True)
        self.change.setMinimumHeight(28)
        self.change.setToolTip(self.tr("Temperature and humidity (F3)"))
        self.change.toggled.connect(self._open)
        self.change.clicked.connect(self._begin)
        self.undo = QToolButton()
        self.undo.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.undo.setText("↶")
        self.undo.clicked.connect(undo.trigger)
        self._undo = undo
        undo.changed.connect(self._name_undo)
        self.undone = ElidedLabel()
        self.clock = ElidedLabel(bold=True)
        self.panel = AirPanel(session, across=True)
        self.panel.hide()
        self._lay_out()
        self._name_undo()

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.setContentsMargins(AROUND, 4, AROUND, 4)
        line.setSpacing(GAP)
        for widget in (self.place, self.air, self.mark, self.verdict, self.change):
            line.addWidget(widget)
        line.addStretch(1)
        line.addWidget(self.undo)
        line.addWidget(self.undone)
        line.addWidget(self.clock)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(line)
        inner = QVBoxLayout()
        inner.setContentsMargins(16, 2, 16, 8)
        inner.addWidget(self.panel)
        column.addLayout(inner)
        self.undo.setMinimumSize(28, 28)
        self.setMinimumHeight(HIGH)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.mark.colours = colours
        self.mark.update()
        self.show_book()
        self._name_undo()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint its ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._colours.colour("gutter"))
        painter.end()
        event.accept()

    def open_fields(self) -> None:
        """Show the fields, and let the keys go to the temperature; put them away if there."""
        self.change.setChecked(not self.change.isChecked())
        self._begin()

    def _begin(self) -> None:
        """Let one type at once where the fields have come."""
        if self.change.isChecked():
            self.panel.temperature.setFocus()
            self.panel.temperature.selectAll()

    def _open(self, on: bool) -> None:
        self.panel.setVisible(on)
        if on:
            self.panel.show_book()
            self.opened.emit()

    def show_book(self) -> None:
        """Show the air of the open book at this minute."""
        session, book = self._session, self._session.book
        for widget in (self.place, self.air, self.mark, self.verdict, self.change):
            widget.setVisible(book is not None)
        self.change.setEnabled(book is not None)
        if book is None:
            self.change.setChecked(False)
            self.clock.say("")
            return
        told = (book, self._session.picture, self._session.now, self._colours)
        if told[2] == self._told[2] and all(told[at] is self._told[at] for at in (0, 1, 3)):
            return  # a page was turned, no more
        self._told = told
        self.panel.show_book()
        from app.service.spray_verdict import spray_verdict, to_spray  # noqa: PLC0415
        from app.window.spray_words import spray_words  # noqa: PLC0415
        from planner.cure import Cure  # noqa: PLC0415 - the window is painted before

        picture = session.picture
        here = book.room.locations[0]
        cure = Cure(book.room, session.zone)
        air = cure.air(here.name).at(session.now)
        self.place.say(words.capital(here.name))
        self.air.say(
            words.fill(
                self.tr("{temperature}  {humidity:.0f} % RH"),
                temperature=words.degrees(air.temperature_c),
                humidity=air.humidity_pct,
            )
        )
        coats = to_spray(picture.book, picture.plan, session.now) if picture is not None else ()
        verdict = spray_verdict(book, cure, session.now, coats)
        good = verdict.fitness.value == "go"
        self.mark.show_fitness(verdict.fitness.value)
        self.verdict.say(spray_words(verdict), "" if good else self._colours.closing_word)
        self.show_time()
        self._give_way()

    def show_time(self) -> None:
        """Let the clock show this minute."""
        now, zone = self._session.now, self._session.zone
        self.clock.say(
            self.tr("{day} {time}").format(
                day=words.day(moment_of(now, zone)), time=words.clock(now, zone)
            )
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the name of the last edit give way before anything else."""
        super().resizeEvent(event)
        self._give_way()

    def _give_way(self) -> None:
        others = (
            self.place,
            self.air,
            self.mark,
            self.verdict,
            self.change,
            self.undo,
            self.clock,
        )
        wide = [one.sizeHint().width() for one in others if one.isVisibleTo(self)]
        left = self.width() - 2 * AROUND - sum(wide) - GAP * (len(wide) + 1)
        self.undone.setMaximumWidth(max(self.undone.minimumSizeHint().width(), left))

    def _name_undo(self) -> None:
        name = self._undo.text().replace("&", "")
        self.undo.setEnabled(self._undo.isEnabled())
        self.undo.setVisible(self._undo.isEnabled())
        self.undone.setVisible(self._undo.isEnabled())
        self.undone.say(name, self._colours.soft)
        self.undo.setToolTip(self.tr("{undo} (Ctrl+Z)").format(undo=name))
        self.undo.setAccessibleName(name)
        self._give_way()
