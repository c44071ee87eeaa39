"""Short questions about sequences: names, what to save, options and colours."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QPlainTextEdit, QWidget

from app.service import sequence_steps, sequences
from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.service.starter_stock import COATINGS, MIXES, bottle
from app.window import words
from app.window.forms.controls import choice, line, number
from app.window.forms.form import FormDialog, keep
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
        self.note = QPlainTextEdit()
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(70)
        form = self.page(self.tr("Save"))
        form.add("model", self.tr("&Finishing order of"), self.of)
        form.add("name", self.tr("&Name of the sequence"), self.name)
        form.add("note", self.tr("N&ote"), self.note)
        self.fit(460)

    def _try(self) -> Refused | None:
        name, note = self.name.text().strip(), self.note.toPlainText().strip()
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


class OptionDialog(FormDialog):
    """Asks for an option of a sequence."""

    def __init__(
        self, session: Session, sequence: Sequence, old: Option | None, parent: QWidget
    ) -> None:
        title = words.tr("Option") if old else words.tr("Another option")
        super().__init__(title, parent, self._try)
        self._session, self._sequence, self._old = session, sequence, old
        taken = [option.name for option in sequence.options]
        option = old or Option(name=fresh_name(self.tr("new option"), taken))
        self.name = line(option.name)
        self.usual = QCheckBox(self.tr("used by default"))
        self.usual.setChecked(option.usual)
        self.choice = line(option.choice)
        self.note = line(option.note)
        form = self.page(title)
        form.add("name", self.tr("&Name"), self.name)
        form.add("usual", self.tr("&Usual"), self.usual)
        form.add(
            "choice",
            self.tr("&Choice"),
            self.choice,
            self.tr("Options of the same choice exclude each other; one of them is always taken"),
        )
        form.add("note", self.tr("N&ote"), self.note)
        self.fit(400)

    def _try(self) -> Refused | None:
        def make(book: Book) -> Edit:
            new = Option(
                name=self.name.text().strip(),
                usual=self.usual.isChecked(),
                choice=self.choice.text().strip(),
                note=self.note.text().strip(),
            )
            old = self._old.name if self._old else ""
            changed = sequence_steps.put_option(self._sequence, old, new)
            return sequences.change(book, self._sequence.name, changed)

        return keep(self._session, make)


class ColourDialog(FormDialog):
    """Asks for a colour of a sequence, and what it usually is."""

    def __init__(
        self, session: Session, sequence: Sequence, old: Colour | None, parent: QWidget
    ) -> None:
        title = words.tr("Colour") if old else words.tr("Another colour")
        super().__init__(title, parent, self._try)
        self._session, self._sequence, self._old = session, sequence, old
        taken = [colour.name for colour in sequence.colours]
        colour = old or Colour(name=fresh_name(self.tr("new colour"), taken))
        self.name = line(colour.name)
        self.usual = choice(self._coatings(colour.usual), colour.usual)
        self.note = line(colour.note)
        form = self.page(title)
        form.add("name", self.tr("&Name"), self.name)
        form.add(
            "usual",
            self.tr("&Usually"),
            self.usual,
            self.tr("Offered first; each model may take another coating or mix"),
        )
        form.add("note", self.tr("N&ote"), self.note)
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

    def _try(self) -> Refused | None:
        def make(book: Book) -> Edit:
            new = Colour(
                name=self.name.text().strip(),
                usual=str(self.usual.currentData() or ""),
                note=self.note.text().strip(),
            )
            old = self._old.name if self._old else ""
            changed = sequence_steps.put_colour(self._sequence, old, new)
            return sequences.change(book, self._sequence.name, changed)

        return keep(self._session, make)


class NoteDialog(FormDialog):
    """Asks for a sequence's note and the painted area that its minutes are for."""

    def __init__(self, session: Session, sequence: Sequence, parent: QWidget) -> None:
        super().__init__(words.tr("Note and size"), parent, self._try)
        self._session, self._sequence = session, sequence
        self.note = QPlainTextEdit(sequence.note)
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(80)
        self.area = number(sequence.made_for_cm2, 0, 99_999, decimals=0, suffix=self.tr(" cm²"))
        form = self.page(self.tr("Note"))
        form.add("note", self.tr("N&ote"), self.note)
        form.add(
            "made_for_cm2",
            self.tr("&Minutes are written for"),
            self.area,
            self.tr("Painted area; on a larger model each part takes longer, on a smaller less"),
        )
        self.fit(420)

    def _try(self) -> Refused | None:
        def make(book: Book) -> Edit:
            note, area = self.note.toPlainText().strip(), round(self.area.value())
            changed = replace(self._sequence, note=note, made_for_cm2=float(area))
            return sequences.change(book, self._sequence.name, changed)

        return keep(self._session, make)


def free_name(book: Book, name: str) -> str:
    """Return a name that no sequence has yet."""
    return fresh_name(name, {sequence.name for sequence in every_sequence(book)})
