"""One step of a sequence: what it lays and where, its minutes, and when it is there."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QWidget

from app.service import sequence_steps, sequences
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import choice
from app.window.forms.value_form import ValueDialog, text_line
from app.window.labels import text
from app.window.message_translation import enum_word
from app.window.sequences.check_list import Checks
from app.window.session import Session
from planner.sequences.references import BUT
from planner.values.book import Book
from planner.values.sequence import Sequence, SequenceStep
from planner.values.step import Application, Minutes, Step, Trait


def trait_word(trait: Trait) -> str:
    """Return what a mark is called on screen, where a stretch is a session."""
    if trait is Trait.ONE_STRETCH:
        return words.tr("all in one session")
    return enum_word(trait)


class SequenceStepDialog(ValueDialog[Step]):
    """Changes one step of a sequence; a step of one application shows its colour and coats."""

    def __init__(
        self, session: Session, sequence: Sequence, old: SequenceStep, parent: QWidget
    ) -> None:
        def make(book: Book, step: Step) -> Edit:
            new = SequenceStep(step=step, needs=_names(self.needs), unless=_names(self.unless))
            changed = sequence_steps.set_step(sequence, old.step.id, new)
            return sequences.change(book, sequence.name, changed)

        title = words.tr("Step of “{name}”").format(name=sequence.name)
        super().__init__(session, title, old.step, make, parent)
        options = [(words.option_word(option.name), option.name) for option in sequence.options]
        self.needs = Checks(options, old.needs)
        self.unless = Checks(options, old.unless)
        self._single = len(old.step.applications) <= 1
        self._work_page(sequence)
        self._minutes_page()
        form = self.page(self.tr("Marks"))
        self.traits = Checks(((trait_word(trait), trait) for trait in Trait), old.step.traits)
        self.own(form, "traits", self.traits, self._marks)
        if options:
            form = self.page(self.tr("Options"))
            form.add("needs", self.tr("Only &with all of"), self.needs)
            form.add("unless", self.tr("and with &none of"), self.unless)
        self.fit(480)

    def _work_page(self, sequence: Sequence) -> None:
        tr, step = self.tr, self._first
        form = self.page(tr("Work"))
        self.ask(form, "title")
        self.ask(form, "tool")
        if not self._single:
            return
        coat = next(iter(step.applications), None)
        if coat is not None:
            colours = ((words.colour_word(each.name), each.name) for each in sequence.colours)
            colour = choice(colours, coat.coating)
            self.own(form, "coating", colour, lambda: str(colour.currentData()), about=coat)
            self.ask(form, "coats", about=coat)
        hint = tr(
            "Parts, or part/place, with “;” between; “*” is every part, “*/roof” the roof of "
            "any, “* but wheels; tracks” all but those"
        )
        places, read = text_line("; ".join(step.references()), 320)
        any_coat = coat or Application(places=("*",), coating="any")
        self.own(form, "places", places, lambda: _references(read()), about=any_coat, hint=hint)
        form.put(text(hint, size=0.92))

    def _minutes_page(self) -> None:
        form = self.page(self.tr("Minutes"))
        for name in ("fixed", "per_part", "per_change"):
            self.ask(form, name, about=self._first.minutes)
        self.ask(form, "split_least", says=self.tr("can be interrupted"), usual=10)
        self.ask(form, "look_in", says=self.tr("have a look"), usual=20)

    def value(self) -> Step:
        """Return what was filled in; `Refused` if it is not sound."""
        old = self._first
        minutes = Minutes(
            fixed=self.filled("fixed"),
            per_part=self.filled("per_part"),
            per_change=self.filled("per_change"),
        )
        step = replace(super().value(), minutes=minutes)
        if not self._single:
            return step
        places = self.filled("places")
        if not old.applications:
            return replace(step, touches=places)
        coat = replace(
            old.applications[0],
            places=places,
            coating=self.filled("coating"),
            coats=self.filled("coats"),
        )
        touches = tuple(touch for touch in old.touches if touch in places)
        return replace(step, applications=(coat,), touches=touches)

    def _marks(self) -> tuple[Trait, ...]:
        return tuple(trait for trait in Trait if trait in self.traits.chosen())


def _references(text: str) -> tuple[str, ...]:
    """Return the references typed; all after "* but" belong to it."""
    before, but, after = text.partition(BUT)
    told = [name.strip() for name in before.split(";") if name.strip()]
    if but:
        told.append(BUT + "; ".join(name.strip() for name in after.split(";") if name.strip()))
    return tuple(told)


def _names(checks: Checks) -> tuple[str, ...]:
    return tuple(str(other) for other in checks.chosen())
