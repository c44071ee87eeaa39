"""The Sequences view: finishing orders above, what is in the chosen one below."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QSplitter, QTabWidget, QVBoxLayout, QWidget

from app.service import sequence_steps, sequences
from app.service.edits import Edit
from app.service.starter_stock import bottle, swatch_of
from app.window import words
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.labels import text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.sequences.dialogs import (
    ColourDialog,
    NameDialog,
    NoteDialog,
    OptionDialog,
    SaveDialog,
    free_name,
)
from app.window.sequences.give_dialog import GiveDialog
from app.window.sequences.offered_changes import OfferLine, lines_of
from app.window.sequences.rows import SequenceRow, rows_of
from app.window.sequences.sequence_wording import (
    colours_text,
    minutes_text,
    only_with,
    step_in_full,
    where,
    work_text,
)
from app.window.sequences.step_dialog import SequenceStepDialog
from app.window.session import Session
from planner.sequences.chosen_options import holds
from planner.sequences.difference import Given
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.sequence import Colour, Option, Sequence, SequenceStep


class SequencesView(QWidget):
    """Every sequence, a person's own first; the chosen one's steps, options, colours, offers."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._told: Book | None = None
        self._given: dict[ModelKey, Given] = {}
        self.list = self._make_list()
        self.steps = self._make_steps()
        self.usual = QCheckBox(self.tr("With the &usual options only"))
        self.usual.setChecked(True)
        self.usual.toggled.connect(lambda _on: self._show_steps())
        self.options = self._make_options()
        self.colours = self._make_colours()
        self.offers = self._make_offers()
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setUsesScrollButtons(True)
        for inner, name in (
            (self._with_box(), self.tr("Steps")),
            (self.options, self.tr("Options")),
            (self.colours, self.tr("Colours")),
            (self.offers, self.tr("Changes offered")),
        ):
            self.tabs.addTab(inner, name)
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(self.list)
        self.splitter.addWidget(self.tabs)
        self.splitter.setSizes([300, 400])
        self.splitter.setChildrenCollapsible(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 18, 8)
        column.setSpacing(4)
        column.addWidget(text(self.tr("Sequences"), size=1.9, bold=True))
        column.addWidget(self.splitter, 1)
        self.list.table.selectionModel().currentRowChanged.connect(
            lambda _new, _old: self._inside()
        )
        self.setFocusProxy(self.list)

    def _make_list(self) -> Listing[SequenceRow]:
        tr = self.tr
        listing: Listing[SequenceRow] = Listing(
            tr("Sequences"),
            tr("No sequence."),
            (
                Column(tr("Sequence"), lambda row: words.sequence_word(row.sequence.name)),
                Column(tr("From"), lambda row: tr("your own") if row.own else tr("built in")),
                Column(tr("Steps"), lambda row: str(len(row.sequence.steps)), True),
                Column(tr("Models"), lambda row: str(row.models) if row.models else "", True),
                Column(tr("Offered"), self._offered),
                Column(
                    tr("Note"),
                    lambda row: " ".join(words.sequence_word(row.sequence.note).split()),
                    tip=lambda row: words.sequence_word(row.sequence.note),
                ),
            ),
        )
        listing.row_button(tr("Give to models…"), self._give, enter=True)
        listing.add_button(tr("Save from a model…"), self._save)
        listing.row_button(tr("Duplicate…"), self._duplicate)
        listing.row_button(tr("Rename…"), self._rename)
        listing.row_button(tr("Note and size…"), self._note)
        listing.row_button(tr("Remove"), self._remove, delete=True)
        return listing

    def _make_steps(self) -> Listing[SequenceStep]:
        tr = self.tr
        listing: Listing[SequenceStep] = Listing(
            tr("Steps of the sequence"),
            tr("No step."),
            (
                Column(tr("Step"), lambda step: words.title_word(step.step.title) or step.step.id),
                Column(tr("Only"), only_with),
                Column(tr("Work"), lambda step: work_text(step.step)),
                Column(tr("Lays"), lambda step: colours_text(step.step), swatch=self._swatch),
                Column(tr("Where"), lambda step: where(step.step)),
                Column(tr("Takes"), lambda step: minutes_text(step.step.minutes)),
            ),
            self._in_full,
        )
        listing.table.horizontalHeader().setMaximumSectionSize(240)  # more is in the tip
        listing.row_button(
            tr("Change…"), self._asking(SequenceStepDialog, lambda: self.steps), enter=True
        )
        listing.row_button(tr("Earlier"), lambda step: self._move(step, -1))
        listing.row_button(tr("Later"), lambda step: self._move(step, 1))
        listing.row_button(
            tr("Copy behind it"),
            lambda step: self._change(
                listing, lambda old: sequence_steps.copy_step(old, step.step.id)[0]
            ),
        )
        listing.row_button(
            tr("Remove"),
            lambda step: self._change(
                listing, lambda old: sequence_steps.remove_step(old, step.step.id)
            ),
            delete=True,
        )
        return listing

    def _make_options(self) -> Listing[Option]:
        tr = self.tr
        listing: Listing[Option] = Listing(
            tr("Options of the sequence"),
            tr("No options: every model gets every step it has parts for."),
            (
                Column(tr("Option"), lambda option: words.option_word(option.name)),
                Column(tr("Choice"), lambda option: words.option_word(option.choice)),
                Column(tr("Usual"), lambda option: tr("yes") if option.usual else ""),
                Column(tr("Note"), lambda option: words.option_word(option.note)),
            ),
        )
        listing.add_button(tr("Add option…"), lambda: self._ask(OptionDialog, None, listing))
        listing.row_button(
            tr("Change…"), self._asking(OptionDialog, lambda: self.options), enter=True
        )
        listing.row_button(
            tr("Remove"),
            lambda option: self._change(
                listing, lambda old: sequence_steps.remove_option(old, option.name)
            ),
            delete=True,
        )
        return listing

    def _make_colours(self) -> Listing[Colour]:
        tr = self.tr
        listing: Listing[Colour] = Listing(
            tr("Colours of the sequence"),
            tr("No colours."),
            (
                Column(
                    tr("Colour"),
                    lambda colour: words.colour_word(colour.name),
                    swatch=self._usual_swatch,
                ),
                Column(tr("Usually"), self._usually),
                Column(tr("Note"), lambda colour: words.colour_word(colour.note)),
            ),
        )
        listing.add_button(tr("Add colour…"), lambda: self._ask(ColourDialog, None, listing))
        listing.row_button(
            tr("Change…"), self._asking(ColourDialog, lambda: self.colours), enter=True
        )
        return listing

    def _make_offers(self) -> Listing[OfferLine]:
        tr = self.tr
        listing: Listing[OfferLine] = Listing(
            tr("Changes offered to the models that came from it"),
            tr("Every model from this sequence is up to date with it."),
            (
                Column(tr("Model"), lambda line: line.model, tip=lambda line: line.project),
                Column(tr("What"), lambda line: f"{line.sign} {line.kind}"),
                Column(tr("Step"), lambda line: line.step),
                Column(tr("How"), lambda line: line.what),
            ),
            lambda line: line.what,
        )
        listing.row_button(
            tr("Take over for this model"), lambda line: self._take_over({line.spot}), enter=True
        )
        listing.row_button(tr("Take over for all"), lambda _one: self._take_over(self._spots()))
        listing.row_button(
            tr("Leave this model as it is"),
            lambda line: listing.say(
                self._session.attempt(lambda book: sequences.leave(book, [line.spot]))
            ),
        )
        return listing

    # -- what is shown ---------------------------------------------------------------------

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours; the controls follow their palette."""

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show the sequences of a plan's book."""
        self._show(self._session.book or picture.book)

    def show_book(self) -> None:
        """Show the sequences of the open book."""
        if self._session.book is not None:
            self._show(self._session.book)

    def choose(self, name: str) -> None:
        """Choose the sequence of a name."""
        for at, row in enumerate(self.list.model.rows):
            if row.sequence.name == name:
                self.list.choose(at)

    def sequence(self) -> Sequence | None:
        """Return the chosen sequence."""
        row = self.list.chosen()
        return row.sequence if row else None

    def _show(self, book: Book) -> None:
        if book is self._told:
            return
        self._told = book
        chosen = self.sequence()
        self._given = self._session.given_steps()
        self.list.show_rows(rows_of(book, self._given))
        if chosen is not None:
            self.choose(chosen.name)
        self._inside()

    def _inside(self) -> None:
        sequence, book = self.sequence(), self._session.book
        if sequence is None or book is None:
            return
        lines = lines_of(book, sequence, self._given)
        self._show_steps()
        self.options.show_rows(sequence.options)
        self.colours.show_rows(sequence.colours)
        self.offers.show_rows(lines)
        models = len({line.spot for line in lines if not line.own})
        told = self.tr("Changes offered ({n})").format(n=models)
        self.tabs.setTabText(3, told if models else self.tr("Changes offered"))
        for listing in (self.steps, self.options, self.colours, self.offers):
            listing.say(None)

    def _with_box(self) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 6, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.usual)
        column.addWidget(self.steps, 1)
        holder.setFocusProxy(self.steps)
        return holder

    def _show_steps(self) -> None:
        chosen, book = self.sequence(), self._session.book
        if chosen is None or book is None:
            return
        usual = sequences.usual_options(book, chosen)
        all_of_them = not self.usual.isChecked()
        self.steps.show_rows([step for step in chosen.steps if all_of_them or holds(step, usual)])
        self.usual.setVisible(bool(chosen.options))

    def _offered(self, row: SequenceRow) -> str:
        if not row.differ:
            return ""
        return words.count(row.differ, self.tr("△ to 1 model"), self.tr("△ to {n} models"))

    def _in_full(self, step: SequenceStep) -> str:
        chosen = self.sequence()
        return step_in_full(step, chosen) if chosen else ""

    def _swatch(self, step: SequenceStep) -> str:
        chosen = self.sequence()
        laid = {each.coating for each in step.step.applications}
        usual = [colour for colour in (chosen.colours if chosen else ()) if colour.name in laid]
        return self._usual_swatch(usual[0]) if usual else ""

    def _usually(self, colour: Colour) -> str:
        book = self._session.book
        if not colour.usual or book is None:
            return self.tr("asked each time")
        return bottle(book, colour.usual, words.given_name)

    def _usual_swatch(self, colour: Colour) -> str:
        book = self._session.book
        return swatch_of(book, colour.usual) if book and colour.usual else ""

    # -- what is done ----------------------------------------------------------------------

    def _ask(self, dialog: Callable[..., QWidget], other: object, listing: QWidget) -> None:
        chosen = self.sequence()
        if chosen is not None:
            dialog(self._session, chosen, other, self).open()  # type: ignore[attr-defined]
            listing.setFocus()

    def _asking(
        self, dialog: Callable[..., QWidget], listing: Callable[[], QWidget]
    ) -> Callable[[object], None]:
        return lambda other: self._ask(dialog, other, listing())

    def _change(
        self,
        listing: Listing,  # type: ignore[type-arg]  # of steps, options or colours
        make: Callable[[Sequence], Sequence],
    ) -> bool:
        chosen = self.sequence()
        if chosen is None:
            return False

        def edit(book: Book) -> Edit:
            return sequences.change(book, chosen.name, make(chosen))

        refused = self._session.attempt(edit)
        listing.say(refused)
        return refused is None

    def _move(self, step: SequenceStep, by: int) -> None:
        """Move a step past the next one that is shown, and keep it chosen."""
        rows, chosen = self.steps.model.rows, self.sequence()
        to = self.steps.table.currentIndex().row() + by
        if chosen is None or not 0 <= to < len(rows):
            return
        ids = [each.step.id for each in chosen.steps]
        far = ids.index(rows[to].step.id) - ids.index(step.step.id)
        if self._change(self.steps, lambda old: sequence_steps.move_step(old, step.step.id, far)):
            self.steps.choose(to)

    def _spots(self) -> set[tuple[str, str]]:
        return {line.spot for line in self.offers.model.rows}

    def _take_over(self, spots: set[tuple[str, str]]) -> None:
        chosen = self.sequence()
        if chosen is not None:
            refused = self._session.attempt(
                lambda book: sequences.take_over(book, chosen.name, sorted(spots), words.given_name)
            )
            self.offers.say(refused)

    def _give(self, row: SequenceRow) -> None:
        self.list.say(None)
        book = self._session.book
        if book is None or not book.projects:
            self.list.message.say(self.tr("Nothing is on the table yet; add a model first."))
            return
        GiveDialog(self._session, row.sequence, self).open()

    def _save(self) -> None:
        self.list.say(None)
        if self._session.book is not None:
            SaveDialog(self._session, self.choose, self).open()

    def _duplicate(self, row: SequenceRow) -> None:
        book = self._session.book
        assert book is not None
        name = free_name(book, self.tr("{name}, mine").format(name=row.sequence.name))
        self._name(self.tr("Duplicate a sequence"), name, sequences.duplicate, row)

    def _rename(self, row: SequenceRow) -> None:
        self._name(self.tr("Rename a sequence"), row.sequence.name, sequences.rename, row)

    def _name(
        self, title: str, name: str, make: Callable[[Book, str, str], Edit], row: SequenceRow
    ) -> None:
        self.list.say(None)
        old = row.sequence.name
        NameDialog(
            self._session, title, name, lambda book, new: make(book, old, new), self.choose, self
        ).open()

    def _note(self, row: SequenceRow) -> None:
        self.list.say(None)
        NoteDialog(self._session, row.sequence, self).open()

    def _remove(self, row: SequenceRow) -> None:
        name = row.sequence.name
        self.list.say(self._session.attempt(lambda book: sequences.remove(book, name)))
