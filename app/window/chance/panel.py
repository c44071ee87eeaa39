"""How sure the dates are: the leaf of the inspector beside the plan."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListWidget,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.chance.curve import CurveWidget
from app.window.chance.runner import ChanceRunner
from app.window.chance.sure_words import SURE, sure_line
from app.window.chosen_rows import mark_chosen_rows
from app.window.labels import MessageLabel, text
from app.window.message_translation import edit_name, translated
from app.window.palette import Colours

if TYPE_CHECKING:
    from app.service.advising import DateAdvice
    from app.service.surer_plans import SurerPlan
    from planner.chance.odds import Odds


class ChancePanel(QScrollArea):
    """Dates with their odds, the curve, what decides them, and what would help."""

    def __init__(self, runner: ChanceRunner, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.runner = runner
        self._advice: tuple[DateAdvice, ...] = ()
        self._orders: tuple[SurerPlan, ...] = ()
        self.head = text("", bold=True, size=1.15)
        self.curve = CurveWidget()
        self.dates, self.tonight = text(""), text("")
        self.decides = text("")
        self.kept = text("")
        self.progress = MessageLabel()
        self.list = QListWidget()
        mark_chosen_rows(self.list)
        self.list.setAccessibleName(self.tr("What would help"))
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        self.list.setMinimumHeight(150)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.itemActivated.connect(lambda _item: self._apply())
        self.list.currentRowChanged.connect(lambda _row: self._mark())
        self.look = QPushButton(self.tr("&Look for what would help"))
        self.look.clicked.connect(lambda _on=False: self._look())
        self.do = QPushButton(self.tr("&Do it"))
        keys = QKeySequence("Return").toString(QKeySequence.SequenceFormat.NativeText)
        self.do.setToolTip(keys)
        self.do.clicked.connect(lambda _on=False: self._apply())
        self.message = MessageLabel()
        self.starts = text("")
        self._lay_out()
        runner.changed.connect(self._show)
        self._show()

    def _lay_out(self) -> None:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(12, 10, 12, 12)
        column.setSpacing(8)
        for widget in (self.head, self.curve, self.dates, self.tonight):
            column.addWidget(widget)
        self._decides_title = text(self.tr("What moves the date most"), bold=True)
        column.addWidget(self._decides_title)
        column.addWidget(self.decides)
        column.addWidget(self.kept)
        column.addWidget(text(self.tr("What would help"), bold=True))
        below: tuple[QWidget, ...] = (
            *(self.look, self.progress, self.list, self.do),
            *(self.message, self.starts),
        )
        for each in below:
            column.addWidget(each)
        column.addStretch(1)
        self.setWidget(holder)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("How sure the dates are"))
        self.setFocusProxy(self.look)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.curve.colours = colours
        self.curve.update()

    def _show(self) -> None:
        odds, picture = self.runner.odds, self.runner.picture
        known = odds is not None and picture is not None
        for widget in (self.curve, self.dates, self._decides_title, self.decides):
            widget.setVisible(known)
        self.look.setEnabled(known or self.runner.trying is not None)
        if odds is None or picture is None:
            self.head.setText(self.tr("The runs of this plan are being drawn."))
            self.tonight.hide()
        else:
            self._show_odds(odds)
        self._show_kept(known)
        self._show_advice()

    def _show_kept(self, known: bool) -> None:
        """Tell how the dates did that were said of projects that are finished."""
        self.kept.setVisible(known and bool(self.runner.scores))
        if known and self.runner.scores:
            from app.service.forecasts import score_lines  # noqa: PLC0415 - numpy is there by now

            self.kept.setText(" ".join(map(translated, score_lines(self.runner.scores))))

    def _show_odds(self, odds: Odds) -> None:
        from app.service import chances  # noqa: PLC0415 - numpy is there by now

        picture = self.runner.picture
        assert picture is not None
        zone = picture.zone
        self.head.setText(sure_line(odds, zone) or self.tr("Not all of it is ever finished."))
        whole = odds.projects[0] if len(odds.projects) == 1 else odds.together
        self.curve.show_odds(whole, odds.now, zone)
        lines = []
        for one in odds.projects:
            told = translated(chances.finish_line(one, zone))
            lines.append(self.tr("{name}: {told}").format(name=one.project, told=told))
            own = [model for model in odds.models if model.project == one.project]
            for model in own if len(own) > 1 else ():
                by = model.by(SURE)
                day = self.tr("never") if by is None else words.day_of(by - 1, zone)
                told = self.tr("four in five by {day}").format(day=day)
                lines.append(self.tr("· {name}: {told}").format(name=model.model, told=told))
        self.dates.setText("\n".join(lines))
        self.tonight.setVisible(odds.tonight is not None)
        if odds.tonight is not None:
            self.tonight.setText(translated(chances.tonight_line(odds)))
        decides = [translated(chances.driver_line(one)) for one in odds.drivers]
        self.decides.setText("\n".join(decides))
        self._decides_title.setVisible(bool(decides))

    def _show_advice(self) -> None:
        from_to = self.runner.trying
        self.look.setText(
            self.tr("&Stop looking") if from_to else self.tr("&Look for what would help")
        )
        at, of, name = from_to or (0, 0, "")
        told = self.tr("{n} of {all}: {name}").format(n=at, all=of, name=name) if at else ""
        self.progress.say(told)
        advice, orders = self.runner.advice or (), self.runner.orders
        helps = bool(advice or orders)
        if (advice, orders) != (self._advice, self._orders):
            self._advice, self._orders = advice, orders
            self.list.clear()
            self.list.addItems([advice_text(one) for one in advice])
            self.list.addItems([self._order_text(one) for one in orders])
            if helps:
                self.list.setCurrentRow(0)
        asked = self.runner.advice is not None
        if asked and not helps:
            self.progress.say(self.tr("Nothing that was tried would help."))
        self.list.setVisible(helps)
        self.do.setVisible(helps)
        self._show_starts()
        self._mark()

    def _show_starts(self) -> None:
        """Tell until when one may wait with each project that has a date."""
        starts, picture = self.runner.starts, self.runner.picture
        self.starts.setVisible(bool(starts))
        if starts and picture is not None:
            from app.service.advising import start_line  # noqa: PLC0415 - numpy is there by now

            lines = [start_line(project, "", session, picture.zone) for project, session in starts]
            self.starts.setText("\n".join(map(translated, lines)))

    def _mark(self) -> None:
        self.do.setEnabled(0 <= self.list.currentRow() < self.list.count())

    def _look(self) -> None:
        if self.runner.trying is not None:
            self.runner.stop()
        else:
            self.runner.look_for_help()

    def _apply(self) -> None:
        row = self.list.currentRow()
        if 0 <= row < len(self._advice):
            refused = self.runner.apply(self._advice[row])
            self.message.say("" if refused is None else str(refused))
        elif 0 <= row < self.list.count():
            self.runner.take(self._orders[row - len(self._advice)])

    def _order_text(self, order: SurerPlan) -> str:
        from app.service.surer_plans import price_line  # noqa: PLC0415 - numpy is there by now

        assert self.runner.picture is not None
        return words.capital(translated(price_line(order, self.runner.picture.plan)))


def advice_text(advice: DateAdvice) -> str:
    """Return a measure, what it buys and what it costs, in the window's language."""
    from app.service.advising import bought  # noqa: PLC0415 - numpy is there by now

    return words.tr("{measure}: {buys}. It costs {cost}.").format(
        measure=words.capital(edit_name(advice.measure.scenario.name)),
        buys=translated(bought(advice)),
        cost=translated(advice.measure.cost),
    )
