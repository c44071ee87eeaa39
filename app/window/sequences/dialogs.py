"""Short questions about sequences: names, what to save, options and colours."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from app.service import sequence_steps, sequences
from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.service.starter_stock import COATINGS, MIXES, bottle
from app.window import words
from app.window.forms.controls import choice, line
from app.window.forms.form import FormDialog, keep
from app.window.forms.value_form import ValueDialog, text_lines
from app.window.session import Session
from planner.sequences.apply_to_book import every_sequence
from planner.values.book import Book
from planner.values.coating import THINNERS
from planner.values.refusal import Refused
from planner.values.sequence import Colour, Option, Sequence

Kept = Callable[[str], object]
"""Told the name of what is there after a dialog was kept."""


class NameDialog(FormDialog):
    """Asks for a name; ``make`` is the edit that takes it."""

    def __init__(
        self,
        session: Session,
        title: str,
        name: str,
        make: Callable[[Book, str], Edit],
        kept: Kept,
        parent: QWidget,
    ) -> None:
        super().__init__(title, parent, self._try)
        self._session, self._make, self._kept = session, make, kept
        self.name = line(name)
        self.page(title).add("name", self.tr("&Name"), self.name)
        self.fit(380)
        self.name.selectAll()

    def _try(self) -> Refused | None:
        name = self.name.text().strip()
        refused = keep(self._session, lambda book: self._make(book, name))
        if refused is None:
            self._kept(name)
        return refused


class SaveDialog(FormDialog):
    """Asks for a model, or a project, whose finishing order becomes a sequence."""

    def __init__(self, session: Session, kept: Kept, parent: QWidget) -> None:
        super().__init__(words.tr("Save a finishing order as a sequence"), parent, self._try)
        self._session, self._kept = session, kept
        book = session.book
        assert book is not None
        entries: list[tuple[str, object]] = []
        for project in book.projects:
            some = [model for model in project.models if model.steps]
            if len(some) > 1:
                told = self.tr("{project}: its model with the most steps")
                entries.append((told.format(project=project.name), (project.name, "")))
            entries += [
                (
                    self.tr("{project}: {model}").format(project=project.name, model=model.name),
                    (project.name, model.name),
                )
                for model in some
            ]
        self.of = choice(entries)
        self.name = line("")
        self.note, self._note = text_lines("")
        form = self.page(self.tr("Save"))
        form.add("model", self.tr("&Finishing order of"), self.of)
        form.add("name", self.tr("&Name of the sequence"), self.name)
        form.add("note", self.tr("N&ote"), self.note)
        self.fit(460)

    def _try(self) -> Refused | None:
        name, note = self.name.text().strip(), self._note()
        chosen = self.of.currentData()
        if chosen is None:
            return Refused("model", self.tr("no model has steps yet; give one some first"))
        project, model = chosen

        def save(book: Book) -> Edit:
            if not model:
                return sequences.save_project(book, project, name, note)
            return sequences.save_sequence(book, project, model, name, note)

        refused = keep(self._session, save)
        if refused is None:
            self._kept(name)
        return refused


class OptionDialog(ValueDialog[Option]):
    """Asks for an option of a sequence."""

    def __init__(
        self, session: Session, sequence: Sequence, old: Option | None, parent: QWidget
    ) -> None:
        title = words.tr("Option") if old else words.tr("Another option")
        taken = [option.name for option in sequence.options]

        def make(book: Book, new: Option) -> Edit:
            changed = sequence_steps.put_option(sequence, old.name if old else "", new)
            return sequences.change(book, sequence.name, changed)

        option = old or Option(name=fresh_name(self.tr("new option"), taken))
        super().__init__(session, title, option, make, parent)
        form = self.page(title)
        self.ask(form, "name")
        self.ask(form, "usual", says=self.tr("used by default"))
        self.ask(form, "choice")
        self.ask(form, "note")
        self.fit(400)


class ColourDialog(ValueDialog[Colour]):
    """Asks for a colour of a sequence, and what it usually is."""

    def __init__(
        self, session: Session, sequence: Sequence, old: Colour | None, parent: QWidget
    ) -> None:
        title = words.tr("Colour") if old else words.tr("Another colour")
        taken = [colour.name for colour in sequence.colours]

        def make(book: Book, new: Colour) -> Edit:
            changed = sequence_steps.put_colour(sequence, old.name if old else "", new)
            return sequences.change(book, sequence.name, changed)

        colour = old or Colour(name=fresh_name(self.tr("new colour"), taken))
        super().__init__(session, title, colour, make, parent)
        usual = choice(self._coatings(colour.usual), colour.usual)
        form = self.page(title)
        self.ask(form, "name")
        self.own(form, "usual", usual, lambda: str(usual.currentData() or ""))
        self.ask(form, "note")
        self.fit(400)

    def _coatings(self, now: str) -> list[tuple[str, object]]:
        book = self._session.book
        assert book is not None
        bottles = (*book.coatings, *COATINGS)
        films = [bottle.name for bottle in bottles if bottle.family not in THINNERS]
        mixes = [mix.name for mix in (*book.mixes, *MIXES)]
        shown: dict[str, object] = {self.tr("– asked each time –"): ""}
        for name in [*([now] if now else []), *mixes, *films]:
            shown.setdefault(bottle(book, name, words.given_name), name)
        return list(shown.items())


class NoteDialog(ValueDialog[Sequence]):
    """Asks for a sequence's note and the painted area that its minutes are for."""

    def __init__(self, session: Session, sequence: Sequence, parent: QWidget) -> None:
        def make(book: Book, changed: Sequence) -> Edit:
            return sequences.change(book, sequence.name, changed)

        super().__init__(session, words.tr("Note and size"), sequence, make, parent)
        form = self.page(self.tr("Note"))
        self.own(form, "note", *text_lines(sequence.note, 80))
        self.ask(form, "made_for_cm2")
        self.fit(420)


def free_name(book: Book, name: str) -> str:
    """Return a name that no sequence has yet."""
    return fresh_name(name, {sequence.name for sequence in every_sequence(book)})
