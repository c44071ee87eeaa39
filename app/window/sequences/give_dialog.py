"""Giving a sequence: to which models, with which options, in which colours."""

from __future__ import annotations

from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.service import sequences
from app.service.starter_stock import COATINGS, NAMES, bottle
from app.window import words
from app.window.forms.controls import choice
from app.window.forms.form import FormDialog, keep
from app.window.labels import field_label, text
from app.window.message_translation import translated
from app.window.sequences.check_list import Checks
from app.window.session import Session
from planner.sequences.apply_to_model import colours_needed, steps_for
from planner.sequences.chosen_options import choices_of
from planner.sequences.difference import still
from planner.sequences.save_from_model import painted_cm2
from planner.values.book import Book
from planner.values.coating import THINNERS
from planner.values.keys import ModelKey
from planner.values.model import Model
from planner.values.refusal import Refused
from planner.values.sequence import Option, Sequence
from planner.values.step import Step

LINES = 14  # of models in sight
FEW = 6  # models that need no help to be told apart
MOST_AT_ONCE = 5  # common practice, no source: vehicles are painted three to five at a time


class OptionsField(QWidget):
    """A list to choose from for each choice, a box for each option that stands alone."""

    def __init__(self, sequence: Sequence, chosen: tuple[str, ...]) -> None:
        super().__init__()
        self.choices: dict[str, QComboBox] = {}
        self.boxes: dict[str, QCheckBox] = {}
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        for name, options in choices_of(sequence).items():
            entries = [(_told(option), option.name) for option in options]
            taken = next((option.name for option in options if option.name in chosen), None)
            box = choice(entries, taken)
            box.setAccessibleName(words.option_word(name))
            self.choices[name] = box
            form.addRow(words.capital(words.option_word(name)), box)
        for option in sequence.options:
            if option.choice:
                continue
            tick = QCheckBox(_told(option))
            tick.setChecked(option.name in chosen)
            self.boxes[option.name] = tick
            form.addRow("", tick)
        if not sequence.options:
            form.addRow(text(self.tr("This sequence has no options.")))

    def chosen(self) -> tuple[str, ...]:
        """Return the options chosen."""
        taken = [str(box.currentData()) for box in self.choices.values()]
        return (*taken, *(name for name, box in self.boxes.items() if box.isChecked()))


class ColoursField(QWidget):
    """A coating or mix for each colour; those that nothing needs are hidden."""

    def __init__(self, book: Book, sequence: Sequence, chosen: dict[str, str]) -> None:
        super().__init__()
        self.boxes: dict[str, QComboBox] = {}
        self._form = QFormLayout(self)
        self._form.setContentsMargins(0, 0, 0, 0)
        named = [*(mix.name for mix in book.mixes), *(coating.name for coating in book.coatings)]
        bottles = (*book.coatings, *COATINGS)
        thin = {bottle.name for bottle in bottles if bottle.family in THINNERS}
        entries = [(name, name) for name in named if name not in thin]
        for name in NAMES:
            called = bottle(book, name, words.given_name)
            if name not in thin and called not in named:
                told = self.tr("{name} (starter stock)").format(name=called)
                entries.append((told, called))
        for colour in sequence.colours:
            usual = bottle(book, colour.usual, words.given_name)
            taken = chosen.get(colour.name) or usual
            box = choice([(self.tr("– choose –"), ""), *entries], taken)
            box.setAccessibleName(words.colour_word(colour.name))
            if colour.note:
                box.setToolTip(words.colour_word(colour.note))
            self.boxes[colour.name] = box
            self._form.addRow(words.capital(words.colour_word(colour.name)), box)

    def show_needed(self, needed: set[str]) -> None:
        """Show those colours that some chosen model needs."""
        for name, box in self.boxes.items():
            self._form.setRowVisible(box, name in needed)

    def chosen(self) -> dict[str, str]:
        """Return the coatings chosen, of what is shown."""
        return {
            name: str(box.currentData())
            for name, box in self.boxes.items()
            if self._form.isRowVisible(box) and box.currentData()
        }


class GiveDialog(FormDialog):
    """Asks for models, options and colours, and tells what comes of them."""

    def __init__(self, session: Session, sequence: Sequence, parent: QWidget) -> None:
        title = words.tr("Give “{name}”").format(name=words.sequence_word(sequence.name))
        super().__init__(title, parent, self._try)
        self._session, self._sequence = session, sequence
        book = session.book
        assert book is not None
        self._book = book
        spots = [ModelKey(p.name, m.name) for p in book.projects for m in p.models]
        made = [self._model(spot).made for spot in spots]
        follows = [s for s, m in zip(spots, made, strict=True) if m and m.sequence == sequence.name]
        bare = [spot for spot in spots if not self._model(spot).steps]
        options, colours = sequences.usual_options(book, sequence), dict[str, str]()
        if follows and not bare:
            first = self._model(follows[0]).made
            assert first is not None
            options, colours = still(sequence, first)
        several = len({project for project, _ in spots}) > 1
        self.models = Checks([(self._named(spot, several), spot) for spot in spots], bare, LINES)
        self.only, self.all = QLineEdit(), QPushButton(self.tr("&All shown"))
        self.no_more = QPushButton(self.tr("&None shown"))
        self.options = OptionsField(sequence, options)
        self.colours = ColoursField(book, sequence, colours)
        self.outcome = QLabel()
        self.outcome.setWordWrap(True)
        self.outcome.setAccessibleName(self.tr("What comes of it"))
        self._fill()
        self._tell()

    def _fill(self) -> None:
        tr = self.tr
        form = self.page(tr("Models"))
        form.add("models", tr("&Models that get it"), self.models)
        form.put(self._many())
        form.put(
            text(
                tr("Steps that a model already has are replaced; what is logged stays."),
                size=0.92,
            )
        )
        form = self.page(tr("Options"))
        form.add("options", tr("&Options"), self.options)
        form = self.page(tr("Colours"))
        form.add("colours", tr("&Colours"), self.colours)
        keep_button = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        keep_button.setText(tr("&Give"))
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(1, self.outcome)
        self.models.ticked.connect(self._tell)
        for box in self.options.choices.values():
            box.currentIndexChanged.connect(lambda _at: self._tell())
        for tick in self.options.boxes.values():
            tick.toggled.connect(lambda _on: self._tell())
        for box in self.colours.boxes.values():
            box.currentIndexChanged.connect(lambda _at: self._tell())
        self.fit(540, 620)
        self.models.setFocus()

    def _many(self) -> QWidget:
        """Return what helps where many models are on the table; hidden where they are few."""
        self.only.setClearButtonEnabled(True)
        self.only.setPlaceholderText(self.tr("part of a name"))
        self.only.setAccessibleName(self.tr("Show only"))
        self.only.textChanged.connect(self.models.show_only)
        self.all.clicked.connect(lambda _on=False: self.models.tick_shown(True))
        self.no_more.clicked.connect(lambda _on=False: self.models.tick_shown(False))
        line = QHBoxLayout()
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(field_label(self.tr("&Show only"), self.only))
        line.addWidget(self.only, 1)
        for button in (self.all, self.no_more):
            button.setAutoDefault(False)
            line.addWidget(button)
        holder = QWidget()
        holder.setLayout(line)
        holder.setVisible(self.models.count() > FEW)
        return holder

    def spots(self) -> list[ModelKey]:
        """Return the models chosen."""
        return [ModelKey(*other) for other in self.models.chosen() if isinstance(other, tuple)]

    def _tell(self) -> None:
        """Show the colours that are needed, and how long a model will take."""
        chosen, needed = self.options.chosen(), set[str]()
        every = [ModelKey(p.name, m.name) for p in self._book.projects for m in p.models]
        spots = self.spots() or every
        for spot in spots:
            found = colours_needed(self._sequence, self._model(spot), chosen)
            needed |= {colour.name for colour in found}
        self.colours.show_needed(needed)
        self.outcome.setText(self._outcome(chosen))

    def _outcome(self, chosen: tuple[str, ...]) -> str:
        spots = self.spots()
        if not spots:
            return self.tr("No model is chosen yet.")
        total = steps = 0
        try:
            for spot in spots:
                model = self._model(spot)
                made = steps_for(
                    self._sequence,
                    model,
                    chosen,
                    self.colours.chosen(),
                    area_cm2=painted_cm2(model) or None,
                    pace=self._book.pace,
                )
                steps = max(steps, len(made))
                total += sum(step.coats * _length(step) for step in made)
        except Refused as refused:
            return translated(refused.mend)
        told = self.tr("{steps} each, {minutes} of work in all, without loading and cleaning.")
        counted = words.count(steps, self.tr("1 step"), self.tr("{n} steps"))
        more = ""
        if len(spots) > MOST_AT_ONCE:
            more = " " + self.tr(
                "More than five at once gets tedious; consider finishing one first."
            )
        return told.format(steps=counted, minutes=words.span(total)) + more

    def _named(self, spot: ModelKey, several: bool) -> str:
        model, told = self._model(spot), spot[1]
        if several:
            told = self.tr("{model} — {project}").format(model=spot[1], project=spot[0])
        if not model.steps:
            return self.tr("{model}, no steps yet").format(model=told)
        steps = words.count(len(model.steps), self.tr("1 step"), self.tr("{n} steps"))
        return self.tr("{model}, {steps}").format(model=told, steps=steps)

    def _model(self, spot: ModelKey) -> Model:
        return self._book.project(spot[0]).model(spot[1])

    def _try(self) -> Refused | None:
        chosen: dict[str, list[str]] = {}
        for project, model in self.spots():
            chosen.setdefault(project, []).append(model)
        if not chosen:
            return Refused("models", self.tr("choose at least one model"))
        return keep(
            self._session,
            lambda book: sequences.give_to(
                book,
                chosen,
                self._sequence.name,
                self.options.chosen(),
                self.colours.chosen(),
                words.given_name,
            ),
        )


def _length(step: Step) -> int:
    """Return the minutes of one coat of a step."""
    parts = {name.partition("/")[0] for name in step.references()}
    return step.minutes.of(
        len(parts), len({application.coating for application in step.applications})
    )


def _told(option: Option) -> str:
    name, note = words.option_word(option.name), words.option_word(option.note)
    return words.tr("{option} – {note}").format(option=name, note=note) if note else name
