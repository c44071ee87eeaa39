"""Saying how far models were before they came into the book."""

from __future__ import annotations

from datetime import datetime, time

from PySide6.QtWidgets import QDialogButtonBox, QVBoxLayout, QWidget

from app.service.begun_models import begun_before
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import Maybe, choice, date_edit, day_of, set_day
from app.window.forms.form import FormDialog, keep
from app.window.model_acts.effect_label import EffectLabel
from app.window.model_acts.model_list import chosen_keys, model_checks
from app.window.session import Session
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of
from planner.values.project import StageReached
from planner.values.refusal import Refused


class ReachedDialog(FormDialog):
    """Models to tick, how far they are, and since when."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(words.tr("How far they are"), parent, self._try)
        self._session = session
        self.models = model_checks(session.book, ())
        stages = [one for one in StageReached if one is not StageReached.NOTHING]
        self.reached = choice([(words.reached_word(one.value), one) for one in stages])
        self.when = date_edit(self.tr("Day on which the last of it was done"))
        set_day(self.when, moment_of(session.now, session.zone).date())
        self.dated = Maybe(self.when, False, self.tr("on"))
        self.effect = EffectLabel(session)
        form = self.page(self.tr("So far"))
        form.add("models", self.tr("&Models"), self.models)
        form.add("reached", self.tr("&They are"), self.reached)
        form.add(
            "when",
            self.tr("&Done"),
            self.dated,
            self.tr("Without a day: a week ago, so that all of it is dry"),
        )
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(1, self.effect)
        note = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        note.setText(self.tr("&Note it"))
        note.setDefault(True)
        self.models.ticked.connect(self._tell)
        self.reached.currentIndexChanged.connect(lambda _at: self._tell())
        self.dated.box.toggled.connect(lambda _on: self._tell())
        self.when.day_changed.connect(self._tell)
        self.finished.connect(lambda _result: self.effect.stop())
        self.fit(460, 620)
        self.models.setFocus()
        self._tell()

    def _edit(self, book: Book) -> Edit:
        when = None
        if self.dated.on:
            evening = datetime.combine(day_of(self.when), time(20), self._session.zone)
            when = min(minute_of(evening), self._session.now)
            if day_of(self.when) > moment_of(self._session.now, self._session.zone).date():
                when = minute_of(evening)  # refused by its own sentence
        reached = self.reached.currentData()
        return begun_before(
            book,
            chosen_keys(self.models),
            StageReached(reached),
            when,
            self._session.now,
            words.given_name,
        )

    def _tell(self) -> None:
        if chosen_keys(self.models):
            self.effect.ask(self._edit)
        else:
            self.effect.ask(None, self.tr("Tick the models with the space bar."))

    def _try(self) -> Refused | None:
        return keep(self._session, self._edit)
