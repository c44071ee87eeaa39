"""One step of a sequence: what it lays and where, its minutes, and when it is there."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from app.service import sequence_steps, sequences
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import Maybe, choice, line, whole
from app.window.forms.form import FormDialog, keep
from app.window.labels import text
from app.window.sequences.check_list import Checks
from app.window.session import Session
from planner.sequences.references import BUT
from planner.values.book import Book
from planner.values.refusal import Refused
from planner.values.sequence import Sequence, SequenceStep
from planner.values.step import Application, Minutes, Step, Tool, Trait


def trait_word(trait: Trait) -> str:
    """Return what a mark is called on screen, where a stretch is a session."""
    if trait is Trait.ONE_STRETCH:
        return words.tr("all in one session")
    return QCoreApplication.translate("trait", trait.value)


class SequenceStepDialog(FormDialog):
    """Changes one step of a sequence; a step of one application shows its colour and coats."""

    def __init__(
        self, session: Session, sequence: Sequence, old: SequenceStep, parent: QWidget
    ) -> None:
        super().__init__(words.tr("Step of “{name}”").format(name=sequence.name), parent, self._try)
        self._session, self._sequence, self._old = session, sequence, old
        self._single = len(old.step.applications) <= 1
        self._make_fields(old.step)
        options = [(words.option_word(option.name), option.name) for option in sequence.options]
        self.needs = Checks(options, old.needs)
        self.unless = Checks(options, old.unless)
        self._fill()

    def _make_fields(self, step: Step) -> None:
        tr, minutes = self.tr, self.tr(" min")
        self.title = line(step.title)
        self.tool = choice(((words.tool_word(tool), tool.value) for tool in Tool), step.tool.value)
        self.fixed = whole(step.minutes.fixed, 0, 9999, minutes)
        self.per_part = whole(step.minutes.per_part, 0, 9999, minutes)
        self.per_change = whole(step.minutes.per_change, 0, 9999, minutes)
        self.places = line("; ".join(step.references()), 320)
        colours = (
            (words.colour_word(colour.name), colour.name) for colour in self._sequence.colours
        )
        coat = step.applications[0] if step.applications else None
        self.colour = choice(colours, coat.coating if coat else None)
        self.coats = whole(coat.coats if coat else 1, 0, 99)
        self.look = whole(step.look_in or 20, 0, 99_999, minutes)
        self.looks = Maybe(self.look, step.look_in is not None, tr("have a look"))
        self.least = whole(step.split_least or 10, 0, 9999, minutes)
        self.splits = Maybe(self.least, step.split_least is not None, tr("can be interrupted"))
        self.traits = Checks(
            ((trait_word(trait), trait) for trait in Trait),
            step.traits,
        )

    def _fill(self) -> None:
        tr = self.tr
        form = self.page(tr("Work"))
        form.add("title", tr("&Name"), self.title)
        form.add("tool", tr("&Tool"), self.tool)
        if self._single and self._old.step.applications:
            form.add("coating", tr("&Colour"), self.colour)
            form.add("coats", tr("C&oats"), self.coats)
        if self._single:
            hint = tr(
                "Parts, or part/place, with “;” between; “*” is every part, “*/roof” the roof of "
                "any, “* but wheels; tracks” all but those"
            )
            form.add("places", tr("&Places"), self.places, hint)
            form.put(text(hint, size=0.92))
        form = self.page(tr("Minutes"))
        form.add("fixed", tr("Fixed &minutes"), self.fixed)
        form.add("per_part", tr("and for each &part"), self.per_part)
        form.add("per_change", tr("and for each change of &colour within it"), self.per_change)
        form.add("split_least", tr("Shortest p&iece"), self.splits)
        form.add("look_in", tr("&Look after it"), self.looks)
        form = self.page(tr("Marks"))
        form.add("traits", tr("&Marks"), self.traits)
        if self._sequence.options:
            form = self.page(tr("Options"))
            form.add("needs", tr("Only &with all of"), self.needs)
            form.add("unless", tr("and with &none of"), self.unless)
        self.fit(480)

    def step(self) -> SequenceStep:
        """Return what was filled in; `Refused` if it is not sound."""
        old = self._old.step
        places = _references(self.places.text())
        applications, touches = old.applications, old.touches
        if self._single and old.applications:
            (coat,) = old.applications
            applications = (self._coat(coat, places),)
            touches = tuple(touch for touch in old.touches if touch in places)
        elif self._single:
            touches = places
        changed = replace(
            old,
            title=self.title.text().strip(),
            tool=Tool(self.tool.currentData()),
            minutes=Minutes(
                fixed=self.fixed.value(),
                per_part=self.per_part.value(),
                per_change=self.per_change.value(),
            ),
            applications=applications,
            touches=touches,
            look_in=self.look.value() if self.looks.on else None,
            split_least=self.least.value() if self.splits.on else None,
            traits=tuple(trait for trait in Trait if trait in self.traits.chosen()),
        )
        return SequenceStep(step=changed, needs=_names(self.needs), unless=_names(self.unless))

    def _coat(self, old: Application, places: tuple[str, ...]) -> Application:
        return replace(
            old,
            places=places,
            coating=str(self.colour.currentData()),
            coats=self.coats.value(),
        )

    def _try(self) -> Refused | None:
        def make(book: Book) -> Edit:
            changed = sequence_steps.set_step(self._sequence, self._old.step.id, self.step())
            return sequences.change(book, self._sequence.name, changed)

        return keep(self._session, make)


def _references(text: str) -> tuple[str, ...]:
    """Return the references typed; all after "* but" belong to it."""
    before, but, after = text.partition(BUT)
    told = [name.strip() for name in before.split(";") if name.strip()]
    if but:
        told.append(BUT + "; ".join(name.strip() for name in after.split(";") if name.strip()))
    return tuple(told)


def _names(checks: Checks) -> tuple[str, ...]:
    return tuple(str(other) for other in checks.chosen())
