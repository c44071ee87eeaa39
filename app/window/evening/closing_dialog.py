"""Closing the evening in two minutes: work, photos, cups and jars, films; and what is next."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QFrame,
    QGridLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.service.closing_evening import (
    ClosingAnswers,
    EveningSummary,
    Feel,
    LeftInCup,
    WorkState,
    closed,
)
from app.window import reasons, words
from app.window.labels import MessageLabel, text
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.stock.photo_field import PhotoField
from planner.values.plan import PassKey

TOLD = 6  # pieces of work that are told one by one


class ClosingDialog(QDialog):
    """Everything is answered beforehand as it most likely is; Enter closes the evening."""

    def __init__(
        self,
        session: Session,
        picture: PlanSnapshot,
        found: EveningSummary,
        parent: QWidget | None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Close the evening"))
        self.setModal(True)
        self._session, self._picture, self._found = session, picture, found
        self.work: dict[PassKey, QComboBox] = {}
        self.photos: dict[PassKey, PhotoField] = {}
        self.clean: dict[str, QCheckBox] = {}
        self.kept: dict[str, QDoubleSpinBox] = {}
        self.feels: dict[PassKey, QComboBox] = {}
        inner = QWidget()
        self._column = QVBoxLayout(inner)
        self._column.setContentsMargins(2, 2, 14, 2)
        self._column.setSpacing(6)
        self._fill()
        self._column.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(inner)
        self.next = text(self._next_words(), bold=True)
        self.message = MessageLabel()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        ok.setText(self.tr("C&lose the evening"))
        self.buttons.button(QDialogButtonBox.StandardButton.Cancel).setText(self.tr("Go on"))
        self.buttons.accepted.connect(self._close)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 14)
        column.setSpacing(8)
        column.addWidget(area, 1)
        column.addWidget(self.next)
        column.addWidget(self.message)
        column.addWidget(self.buttons)
        self.resize(620, min(680, inner.sizeHint().height() + 150))
        ok.setFocus()

    def _fill(self) -> None:
        found = self._found
        done = [words.capital(reasons.key_name(key)) for key in found.done]
        told = words.listed(done[:TOLD]) or self.tr("Nothing was noted as done yet.")
        if len(done) > TOLD:
            told = self.tr("{work} and {n} more").format(work=told, n=len(done) - TOLD)
        self._head(self.tr("Done"))
        self._column.addWidget(text(told))
        half = [(key, WorkState.UNDER_WAY) for key in found.half]
        half += [(key, WorkState.NOT_BEGUN) for key in found.not_told]
        if half:
            self._head(self.tr("And this?"))
            self._rows([self._work_row(key, state) for key, state in half])
        if found.models:
            self._head(self.tr("A photo of each"))
            self._rows([self._photo_row(one.model, one.last) for one in found.models])
        if found.cups or found.jars:
            self._head(self.tr("Left in cup and jar"))
            rows = [self._cup_row(cup) for cup in found.cups]
            self._rows(rows)
            self._rows([self._jar_row(each) for each in (*found.cups, *found.jars)])
        if found.films:
            self._head(self.tr("How do the films feel?"))
            self._rows([self._film_row(at) for at in range(len(found.films))])

    def _head(self, told: str) -> None:
        self._column.addWidget(text(told, bold=True, size=1.05))

    def _rows(self, rows: list[tuple[str, QWidget]]) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(4)
        grid.setColumnStretch(0, 1)
        for at, (name, control) in enumerate(rows):
            label = QLabel(name)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            label.setBuddy(control)
            control.setAccessibleName(name)
            grid.addWidget(label, at, 0)
            grid.addWidget(control, at, 1)
        self._column.addLayout(grid)

    def _work_row(self, key: PassKey, state: WorkState) -> tuple[str, QWidget]:
        box = QComboBox()
        box.addItem(self.tr("done"), WorkState.DONE)
        box.addItem(self.tr("under way"), WorkState.UNDER_WAY)
        told = self.tr("put back") if state is WorkState.UNDER_WAY else self.tr("not begun")
        box.addItem(told, WorkState.NOT_BEGUN)
        box.setCurrentIndex(box.findData(state))
        self.work[key] = box
        return words.capital(reasons.key_name(key)), box

    def _photo_row(self, model: str, last: PassKey) -> tuple[str, QWidget]:
        field = PhotoField(self._session.path, "")
        self.photos[last] = field
        return model, field

    def _cup_row(self, cup: LeftInCup) -> tuple[str, QWidget]:
        box = QCheckBox(self.tr("is clean"))
        self.clean[cup.airbrush] = box
        told = self.tr("{airbrush}: {coating}")
        return told.format(airbrush=words.capital(cup.airbrush), coating=cup.coating), box

    def _jar_row(self, left: LeftInCup) -> tuple[str, QWidget]:
        box = QDoubleSpinBox()
        box.setRange(0, 500)
        box.setDecimals(1)
        box.setSuffix(self.tr(" ml"))
        box.setSpecialValueText(self.tr("nothing kept"))
        self.kept[left.coating] = box
        return self.tr("{coating}, kept in a jar").format(coating=left.coating), box

    def _film_row(self, at: int) -> tuple[str, QWidget]:
        film = self._found.films[at]
        box = QComboBox()
        likely = self.tr("wet") if film.likely is None else words.state_word(film.likely.value)
        box.addItem(self.tr("not felt; likely {state}").format(state=likely), None)
        for feel in Feel:
            box.addItem(feel_word(feel), feel)
        self.feels[film.key] = box
        parts = tuple(dict.fromkeys(place.partition("/")[0] for place in film.places))
        told = self.tr("{coating} on {model} ({parts})")
        return (
            told.format(
                coating=words.capital(film.coating),
                model=film.key.model,
                parts=words.listed(parts),
            ),
            box,
        )

    def _next_words(self) -> str:
        found, zone, now = self._found, self._picture.zone, self._session.now
        if found.next_start is None:
            return self.tr("Next: nothing is planned.")
        work = words.listed([words.capital(reasons.key_name(key)) for key in found.next_work])
        told = self.tr("Next: {time}, {work}")
        return told.format(time=words.today_or_when(found.next_start, zone, now), work=work)

    def answers(self) -> ClosingAnswers:
        """Return what is answered."""
        asked = dict.fromkeys(self._found.half, WorkState.UNDER_WAY)
        asked.update((key, WorkState.NOT_BEGUN) for key in self._found.not_told)
        work = {key: WorkState(box.currentData()) for key, box in self.work.items()}
        feels = {key: box.currentData() for key, box in self.feels.items()}
        return ClosingAnswers(
            work={key: state for key, state in work.items() if state is not asked[key]},
            photos={key: field.photo for key, field in self.photos.items() if field.photo},
            cleaned=tuple(name for name, box in self.clean.items() if box.isChecked()),
            kept={name: box.value() for name, box in self.kept.items() if box.value() > 0},
            feels={key: Feel(feel) for key, feel in feels.items() if feel is not None},
        )

    def take_photo(self, model: str, source: Path) -> None:
        """Keep a picture as the photo of a model."""
        last = next(one.last for one in self._found.models if one.model == model)
        self.photos[last].keep(source)

    def _close(self) -> None:
        answers, plan = self.answers(), self._picture.plan
        now = self._session.now
        refused = self._session.attempt(lambda book: closed(book, answers, now, plan))
        if refused is None:
            self._session.troubled.emit(self.next.text())
            self.accept()
        else:
            self.message.say(refused.mend)


def feel_word(feel: Feel) -> str:
    """Return how a film feels."""
    told = {
        Feel.WET: words.tr("wet"),
        Feel.STICKY: words.tr("sticky"),
        Feel.TOUCH_DRY: words.tr("touch-dry"),
        Feel.HARD: words.tr("hard, can be held"),
    }
    return told[feel]
