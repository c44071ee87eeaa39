"""More vehicles for a project, in a line each, with what they do to its end."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialogButtonBox, QVBoxLayout, QWidget

from app.service.edits import Edit
from app.service.first_run import Vehicle, more
from app.window import words
from app.window.first_run.vehicles import VehiclesField
from app.window.forms.controls import choice
from app.window.forms.form import FormDialog, keep
from app.window.model_acts.effect_label import EffectLabel
from app.window.session import Session
from planner.sequences.apply_to_book import every_sequence
from planner.values.book import Book
from planner.values.model import Model
from planner.values.refusal import Refused


class VehiclesDialog(FormDialog):
    """The lines of the first question once more, beginning like the last model of the project."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(words.tr("More vehicles"), parent, self._try)
        self._session = session
        book = session.book
        active = [one for one in book.projects if one.active] if book else []
        self.project = choice([(one.name, one.name) for one in active])
        self.like = choice([])
        self.vehicles = VehiclesField()
        self.effect = EffectLabel(session)
        form = self.page(self.tr("Vehicles"))
        if len(active) > 1:
            form.add("project", self.tr("&Project"), self.project)
        else:  # it goes with the dialog all the same
            self.project.setParent(self)
            self.project.hide()
        form.add(
            "like",
            self.tr("As &this one"),
            self.like,
            self.tr("Another with other markings: its parts, colours and changes, too"),
        )
        form.add("vehicles", self.tr("&Vehicles"), self.vehicles)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(1, self.effect)
        add = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        add.setText(self.tr("&Add"))
        if book is not None:
            self.vehicles.show_orders(every_sequence(book))
        self._list_models()
        self.vehicles.changed.connect(self._tell)
        self.vehicles.done.connect(self._keep)
        self.project.currentIndexChanged.connect(lambda _at: self._list_models())
        self.like.currentIndexChanged.connect(lambda _at: self._begin_like())
        self.finished.connect(lambda _result: self.effect.stop())
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self._keep)
        self.fit(660, 560)
        self.vehicles.begin()
        self._tell()

    def _list_models(self) -> None:
        """Offer the models of the project as patterns, the last one first chosen."""
        book, name = self._session.book, self.project.currentData()
        if book is None or not name:
            return
        blocked = QSignalBlocker(self.like)
        self.like.clear()
        for model in book.project(str(name)).models:
            self.like.addItem(model.name, model.name)
        self.like.setCurrentIndex(self.like.count() - 1)
        blocked.unblock()
        self._begin_like()

    def _begin_like(self) -> None:
        """Begin with scale, kind, sequence and options of the pattern."""
        book, name, like = self._session.book, self.project.currentData(), self.like.currentData()
        if book is not None and name and like:
            model = book.project(str(name)).model(str(like))
            self.vehicles.begin_like(_vehicle(book, model))
            self._tell()

    def _edit(self, book: Book) -> Edit:
        name = self.project.currentData()
        if not name:
            raise Refused("vehicles", self.tr("there is no active project; begin one first"))
        return more(
            book,
            str(name),
            self.vehicles.vehicles(),
            words.given_name,
            now=self._session.now,
            like=str(self.like.currentData() or ""),
        )

    def _tell(self) -> None:
        if self.vehicles.vehicles():
            self.effect.ask(self._edit)
        else:
            self.effect.ask(
                None, self.tr("A name is enough: it is finished as the one chosen above.")
            )

    def _try(self) -> Refused | None:
        return keep(self._session, self._edit)


def _vehicle(book: Book, model: Model) -> Vehicle:
    """Return a line without a name that is finished as a model is."""
    known = {sequence.name for sequence in every_sequence(book)}
    made = model.made
    follows = made is not None and made.sequence in known
    return Vehicle(
        name="",
        scale=model.scale,
        sequence=made.sequence if made is not None and follows else next(iter(known)),
        options=made.options if made is not None and follows else None,
        kind=model.kind,
    )
