"""Painting another model as one in the logbook was painted."""

from __future__ import annotations

from PySide6.QtWidgets import QDialogButtonBox, QPlainTextEdit, QVBoxLayout, QWidget

from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.service.first_run import several
from app.service.painted_again import another_like
from app.window import words
from app.window.forms.controls import choice, line
from app.window.forms.form import FormDialog, keep
from app.window.labels import text
from app.window.model_acts.effect_label import EffectLabel
from app.window.session import Session
from planner.sequences.painted_so import photos_of
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.refusal import Refused


class AnotherDialog(FormDialog):
    """The example, what the next is called, and what comes of it."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(words.tr("Paint another like this"), parent, self._try)
        self._session = session
        self.example = choice(self._examples())
        self.name = line("")
        self.note = QPlainTextEdit()
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(60)
        self.told = text("", size=0.95)
        self.effect = EffectLabel(session)
        form = self.page(self.tr("Another"))
        form.add("example", self.tr("&As this one was painted"), self.example)
        form.put(self.told)
        form.add(
            "name",
            self.tr("&Name of the next"),
            self.name,
            self.tr("“Egret x 3” makes three: Egret 1 to Egret 3"),
        )
        form.add("note", self.tr("N&ote on the order"), self.note)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(1, self.effect)
        put = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        put.setText(self.tr("&Put it on the table"))
        put.setDefault(True)
        self.example.currentIndexChanged.connect(lambda _at: self._example_chosen())
        self.name.textChanged.connect(lambda _text: self._tell())
        self.finished.connect(lambda _result: self.effect.stop())
        self.fit(480, 560)
        self._example_chosen()
        self.name.setFocus()

    def _examples(self) -> list[tuple[str, object]]:
        """Return the models of which something is done, those with the most first."""
        book = self._session.book
        found: list[tuple[int, str, ModelKey]] = []
        for project in book.projects if book else ():
            for model in project.models:
                done = sum(f.model == model.name and f.end is not None for f in project.log)
                if done:
                    key = ModelKey(project.name, model.name)
                    found.append((-done, f"{model.name} — {project.name}", key))
        found.sort(key=lambda one: one[0])
        return [(told, key) for _, told, key in found]

    def _example_chosen(self) -> None:
        key, book = self.example.currentData(), self._session.book
        if not isinstance(key, ModelKey) or book is None:
            self.told.setText(self.tr("Nothing is in the logbook yet that could be an example."))
            self._tell()
            return
        project = book.project(key.project)
        taken = [model.name for model in project.models]
        self.name.setText(fresh_name(key.model, taken))
        self.name.selectAll()
        photos = len(photos_of(project, key.model))
        told = self.tr(
            "Its real steps, minutes and coatings become an order; what was redone is left out."
        )
        if photos:
            told += " " + words.count(
                photos,
                self.tr("{n} photo stays with it in the logbook."),
                self.tr("{n} photos stay with it in the logbook."),
            )
        self.told.setText(told)
        self._tell()

    def _edit(self, book: Book) -> Edit:
        key = self.example.currentData()
        if not isinstance(key, ModelKey):
            raise Refused("example", self.tr("finish a step of a model first"))
        name = self.name.text().strip()
        names = several(name) if name else ()
        return another_like(book, key, names, words.given_name, self.note.toPlainText().strip())

    def _tell(self) -> None:
        ready = self.name.text().strip() and isinstance(self.example.currentData(), ModelKey)
        self.effect.ask(self._edit if ready else None)

    def _try(self) -> Refused | None:
        return keep(self._session, self._edit)
