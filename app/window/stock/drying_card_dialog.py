"""A drying card of one bottle: what to try and when, and what the answers make of it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.service import drying_cards, pace
from app.service.drying_cards import CardState, TrialTimes
from app.window import words
from app.window.forms.controls import choice
from app.window.forms.editable_list import plain_table
from app.window.forms.rows import Column, RowsModel
from app.window.labels import MessageLabel, field_label, text
from app.window.message_translation import translated
from app.window.session import Session
from planner.pace.drying import DryingLine
from planner.values.drying_card import CardTrial
from planner.values.moment import minute_of
from planner.values.refusal import Refused

WORTH = 0.02  # a smaller change of a factor is not worth an edit


@dataclass(frozen=True)
class TrialRow:
    """A trial of the card: when a film stands it, what was answered, and when to try."""

    times: TrialTimes
    held: bool | None
    ask: int | None
    chance: float


def trial_rows(state: CardState) -> tuple[TrialRow, ...]:
    """Return the trials of a card in the order in which a film stands them."""
    asks = {ask.trial: ask for ask in state.asks}
    rows = []
    for times in state.times:
        answers = [one.held for one in state.card.tried if one.trial is times.trial]
        ask = asks.get(times.trial)
        rows.append(
            TrialRow(
                times,
                answers[-1] if answers else None,
                ask.at if ask else None,
                ask.chance if ask else 0.0,
            )
        )
    return tuple(rows)


class DryingCardDialog(QDialog):
    """The newest card of a bottle; every answer is kept at once, and undo takes it back."""

    def __init__(self, session: Session, coating: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setModal(True)
        self.setWindowTitle(self.tr("Drying card: {coating}").format(coating=coating))
        self._session, self._coating = session, coating
        self.about = text(
            self.tr(
                "Coat a scrap along with the model and try it when the card asks: two minutes, "
                "on evenings that you have anyway. "
                "It tells how this very bottle dries in your room."
            )
        )
        self.laid = text("", bold=True)
        self.rows: RowsModel[TrialRow] = RowsModel(self._columns(), self)
        self.table = plain_table(self.tr("Trials of the card"))
        self.table.setModel(self.rows)
        self.learned = text("")
        self.message = MessageLabel()
        book = session.book
        places = [place.name for place in book.room.locations] if book else []
        self.place = choice([(name, name) for name in places])
        self.place_label = field_label(self.tr("It dries &in"), self.place)
        self.coat = QPushButton(self.tr("I coated a &card just now"))
        self.held = QPushButton(self.tr("It &held"))
        self.not_yet = QPushButton(self.tr("&Not yet"))
        self.use = QPushButton(self.tr("&Use it for this bottle"))
        self.drop = QPushButton(self.tr("&Throw the card away"))
        self._room = QWidget()  # takes what the table leaves where there is none
        self._connect()
        self._lay_out()
        self.refresh()
        self.resize(680, 430)

    def _columns(self) -> tuple[Column[TrialRow], ...]:
        tr = self.tr
        return (
            Column(
                tr("Trial"),
                lambda row: trial_word(row.times.trial),
                tip=lambda row: trial_meaning(row.times.trial),
            ),
            Column(tr("Likely stands it"), lambda row: self._opening(row.times.likely)),
            Column(tr("Surely"), lambda row: self._opening(row.times.surely)),
            Column(tr("It said"), lambda row: answer_word(row.held)),
            Column(
                tr("Try it"),
                lambda row: "" if row.ask is None else self._when(row.ask),
                tip=lambda row: (
                    ""
                    if row.ask is None
                    else tr("Holds then in {percent} of 100 cases, by all that is known").format(
                        percent=round(row.chance * 100)
                    )
                ),
            ),
        )

    def _connect(self) -> None:
        self.coat.clicked.connect(self._coat)
        self.held.clicked.connect(lambda: self._answer(held=True))
        self.not_yet.clicked.connect(lambda: self._answer(held=False))
        self.use.clicked.connect(self._use)
        self.drop.clicked.connect(self._drop)
        self.table.selectionModel().currentChanged.connect(lambda _new, _old: self._enable())

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 12)
        column.addWidget(self.about)
        column.addWidget(self.laid)
        column.addWidget(self.table, 1)
        for widgets in (
            (self.held, self.not_yet, self.drop),
            (self.coat, self.place_label, self.place),
        ):
            line = QHBoxLayout()
            for widget in widgets:
                line.addWidget(widget)
            line.addStretch(1)
            column.addLayout(line)
        column.addWidget(self.learned)
        column.addWidget(self._room, 1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.button(QDialogButtonBox.StandardButton.Close).setText(self.tr("Close"))
        buttons.addButton(self.use, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column.addWidget(self.message)
        column.addWidget(buttons)

    def refresh(self) -> None:
        """Show the newest card of the bottle as the book has it now."""
        state = self._state()
        rows = trial_rows(state) if state else ()
        self.rows.show_rows(rows)
        self.table.setVisible(state is not None)
        self.laid.setVisible(state is not None)
        self._room.setVisible(state is None)
        for button in (self.held, self.not_yet, self.drop):
            button.setVisible(state is not None)
        if state is not None:
            self.laid.setText(
                self.tr("Coated {time}, dries in: {place}").format(
                    time=self._when(minute_of(state.card.laid)), place=state.card.location
                )
            )
            first = next((at for at, row in enumerate(rows) if row.ask is not None), 0)
            self.table.setCurrentIndex(self.rows.index(first, 0))
            self.table.resizeColumnsToContents()
        line = self._lesson()
        self.learned.setText(lesson_words(line) if line else "")
        self.use.setEnabled(line is not None and abs(line.estimate.factor - line.now) >= WORTH)
        self._enable()

    def _state(self) -> CardState | None:
        book = self._session.book
        cards = [one for one in book.drying_cards if one.coating == self._coating] if book else []
        if book is None or not cards:
            return None
        number = drying_cards.newest_card(book, self._coating)
        alone = replace(book, drying_cards=(book.drying_cards[number],))
        (state,) = drying_cards.card_states(alone, self._session.now)
        return replace(state, number=number)

    def _lesson(self) -> DryingLine | None:
        book = self._session.book
        known = [one.name for one in book.coatings] if book else []
        if book is None or self._coating not in known:
            return None
        return drying_cards.lesson_of(book, self._coating, self._session.now)

    def _enable(self) -> None:
        chosen = self.rows.row_at(self.table.currentIndex()) is not None
        self.held.setEnabled(chosen)
        self.not_yet.setEnabled(chosen)

    def _coat(self) -> None:
        place, now = str(self.place.currentData() or ""), self._session.now
        self._say(
            self._session.attempt(
                lambda book: drying_cards.coat_card(book, self._coating, now, location=place)
            )
        )

    def _answer(self, *, held: bool) -> None:
        row, now = self.rows.row_at(self.table.currentIndex()), self._session.now
        if row is None:
            return
        self._say(
            self._session.attempt(
                lambda book: drying_cards.try_card(
                    book,
                    drying_cards.newest_card(book, self._coating),
                    row.times.trial,
                    now,
                    held=held,
                )
            )
        )

    def _use(self) -> None:
        now = self._session.now
        self._say(self._session.attempt(lambda book: pace.apply_drying(book, self._coating, now)))

    def _drop(self) -> None:
        self._say(
            self._session.attempt(
                lambda book: drying_cards.drop_card(
                    book, drying_cards.newest_card(book, self._coating)
                )
            )
        )

    def _say(self, refused: Refused | None) -> None:
        self.message.say(translated(refused.mend) if refused else "")
        self.refresh()

    def _opening(self, minute: int | None) -> str:
        if minute is None:
            return self.tr("never in this air")
        return words.opening(minute, self._session.zone, self._session.now)

    def _when(self, minute: int) -> str:
        return words.when(minute, self._session.zone, self._session.now)


def trial_word(trial: CardTrial) -> str:
    """Return what a trial is called."""
    return words.capital(QCoreApplication.translate("trial", trial.value))


def trial_meaning(trial: CardTrial) -> str:
    """Return how a trial is made, and what counts as standing it."""
    told = {
        CardTrial.FINGER: words.tr("Touch it lightly: no mark, nothing on the finger."),
        CardTrial.THUMB: words.tr("Press the thumb and twist: nothing moves, no print."),
        CardTrial.TAPE: words.tr(
            "Low-tack tape, pulled off after a minute: no print, no paint on it."
        ),
        CardTrial.RUB: words.tr(
            "A swab wet with the solvent of the next wash, on the edge: it takes no colour."
        ),
    }
    return told[trial]


def answer_word(held: bool | None) -> str:
    """Return what a trial said last."""
    if held is None:
        return ""
    return words.tr("held") if held else words.tr("not yet")


def lesson_words(line: DryingLine) -> str:
    """Return what looks and cards make of a bottle, in a sentence or two."""
    told = words.fill(
        words.tr(
            "By {answers} it takes {factor:.2f} times its stated times ({low:.2f} to "
            "{high:.2f}), surely {doubt:.2f} times the likely; the book reckons with {now:.2f}."
        ),
        answers=words.count(line.looks, words.tr("1 answer"), words.tr("{n} answers")),
        factor=line.estimate.factor,
        low=line.estimate.low,
        high=line.estimate.high,
        doubt=line.figures.doubt,
        now=line.now,
    )
    if line.figures.tells_slope:
        slope = words.tr("Its times go by {slope:+.0f} kJ/mol more by warmth than its family's.")
        told = f"{told} {words.fill(slope, slope=line.figures.slope.mean)}"
    return told
