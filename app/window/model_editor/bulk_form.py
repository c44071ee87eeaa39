"""The form of several steps: what is set here is set in all of them."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtWidgets import QSpinBox

from app.service.build_edits.bulk_change import StepChange, change_steps
from app.service.build_edits.locate import model_of, step_of
from app.window import words
from app.window.forms.live_controls import choice, enum_choice, fill, number
from app.window.labels import text
from app.window.model_editor.fields import EditorForm
from planner.values.book import Book
from planner.values.coating import THINNERS
from planner.values.keys import StepKey
from planner.values.step import Application, Minutes, Step, Tool, Trait

SAME = ""  # the value of "as it is" in lists
AS_IS = -1  # and in numbers


class ManyForm(EditorForm):
    """Minutes, coating, tool, coats, drying place and marks of all chosen steps at once."""

    def __init__(self) -> None:
        super().__init__()
        self._spots: tuple[StepKey, ...] = ()
        tr = self.tr
        self.heading = text("", bold=True, size=1.05)
        self.column.addWidget(self.heading)
        self.column.addWidget(text(tr("What is set here is set in all of them.")))
        as_is = tr("as it is")
        self.fixed = number(Minutes, "fixed", self._minutes, as_is, AS_IS)
        self.per_part = number(Minutes, "per_part", self._minutes, as_is, AS_IS)
        self.per_change = number(Minutes, "per_change", self._minutes, as_is, AS_IS)
        self.coats = number(Application, "coats", self._coats, as_is, 0)
        self.instead = choice(self._instead)
        self.coating = choice(self._coating)
        self.tool = enum_choice(Tool, self._tool)
        self.dries = choice(self._dries)
        self.split = number(Step, "split_least", self._split, as_is, AS_IS)
        self.look = number(Step, "look_in", self._look, as_is, AS_IS)
        self.row(tr("Fixed minutes"), self.fixed, "minutes", "fixed")
        self.row(tr("For each part"), self.per_part, "per_part")
        self.row(tr("For each change of colour"), self.per_change, "per_change")
        self.row(tr("Coats"), self.coats, "coats")
        self.row(tr("In place of"), self.instead)
        self.row(tr("Lay"), self.coating, "coating", "applications")
        self.row(tr("With"), self.tool, "tool")
        self.row(tr("Dries in"), self.dries, "dries_in", "or_in")
        self.split.setToolTip(tr("0: in one go"))
        self.look.setToolTip(tr("0: none"))
        self.row(tr("Can be interrupted after"), self.split, "split_least")
        self.row(tr("Have a look after"), self.look, "look_in")
        self.traits = {trait: choice(partial(self._trait, trait)) for trait in Trait}
        names = {
            Trait.ONE_STRETCH: tr("Finished in one session"),
            Trait.DAYLIGHT: tr("Needs daylight"),
            Trait.SMELLS: tr("Smells"),
            Trait.NOISY: tr("Noisy"),
            Trait.HANDS_FREE: tr("Hands free"),
            Trait.ANY_AIR: tr("In any air"),
        }
        for trait, name in names.items():
            self.row(name, self.traits[trait])
        self.helper = choice(self._helper)
        self.row(tr("Needs two people"), self.helper)
        self.end()

    def show_steps(self, book: Book, spots: Sequence[StepKey]) -> None:
        """Show several steps."""
        steps = [step_of(model_of(book, spot.home), spot.step) for spot in spots]
        with self.filling((tuple(spots), steps)) as fresh:
            self._spots = tuple(spots)
            if not fresh:
                return
            self.heading.setText(words.count(len(steps), self.tr("{n} step"), self.tr("{n} steps")))
            for field in (self.fixed, self.per_part, self.per_change, self.split, self.look):
                field.setValue(AS_IS)
            self.coats.setValue(0)
            as_is = [(self.tr("as it is"), SAME)]
            laid = dict.fromkeys(
                application.coating for step in steps for application in step.applications
            )
            every = [(self.tr("every colour"), SAME), *((name, name) for name in laid)]
            fill(self.instead, every, SAME)
            names = [coating.name for coating in book.coatings if coating.family not in THINNERS]
            names += [mix.name for mix in book.mixes]
            fill(self.coating, [*as_is, *((name, name) for name in names)], SAME)
            tools = [(words.tool_word(one), one.value) for one in Tool]
            fill(self.tool, [*as_is, *tools], SAME)
            places = [(location.name, location.name) for location in book.room.locations]
            fill(self.dries, [*as_is, *places], SAME)
            yes_no = [*as_is, (self.tr("yes"), "yes"), (self.tr("no"), "no")]
            for box in (*self.traits.values(), self.helper):
                fill(box, yes_no, SAME)

    def _wish(self, change: StepChange) -> None:
        spots = self._spots
        if change != StepChange():
            self.ask(lambda book: change_steps(book, spots, change))

    def _minutes(self) -> None:
        def wanted(field: QSpinBox) -> int | None:
            return None if field.value() == AS_IS else field.value()

        self._wish(
            StepChange(
                fixed=wanted(self.fixed),
                per_part=wanted(self.per_part),
                per_change=wanted(self.per_change),
            )
        )

    def _coats(self) -> None:
        self._wish(StepChange(coats=self.coats.value() or None))

    def _coating(self) -> None:
        chosen, instead = self.coating.currentData(), self.instead.currentData() or ""
        self._wish(StepChange(coating=chosen or None, instead_of=instead))

    def _instead(self) -> None:
        """What gives way alone changes nothing; it is read when a coating is chosen."""

    def _tool(self) -> None:
        chosen = self.tool.currentData()
        self._wish(StepChange(tool=Tool(chosen) if chosen else None))

    def _dries(self) -> None:
        self._wish(StepChange(dries_in=self.dries.currentData() or None))

    def _split(self) -> None:
        if self.split.value() != AS_IS:
            self._wish(StepChange(split_least=self.split.value()))

    def _look(self) -> None:
        if self.look.value() != AS_IS:
            self._wish(StepChange(look_in=self.look.value()))

    def _helper(self) -> None:
        chosen = self.helper.currentData()
        self._wish(StepChange(helper=chosen == "yes" if chosen else None))

    def _trait(self, trait: Trait) -> None:
        chosen = self.traits[trait].currentData()
        one = frozenset({trait})
        if chosen:
            self._wish(StepChange(gain=one) if chosen == "yes" else StepChange(lose=one))
