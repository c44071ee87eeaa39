"""The form of one step: every field of it in plain words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QCoreApplication, Qt

from app.service.build_edits import steps as edits
from app.service.build_edits.locate import model_of, step_of
from app.service.edits import Edit
from app.window.forms.live_controls import (
    choice,
    enum_choice,
    explain,
    fill,
    line,
    number,
    pick,
    put,
    tick,
)
from app.window.glossary import role_meaning, stage_meaning
from app.window.model_editor.coats import CoatsField
from app.window.model_editor.fields import CheckList, EditorForm
from app.window.model_editor.gates import GatesField
from app.window.model_editor.nodes import title_of
from planner.values.book import Book
from planner.values.keys import StepKey
from planner.values.model import Model
from planner.values.step import (
    LAYS_NO_FILM,
    Application,
    Minutes,
    Role,
    Stage,
    Step,
    Tool,
    Trait,
)

VARNISHES = (Stage.VARNISH, Stage.MATTE)
LEAST_PIECE = 15  # what is offered first as the least piece of a split step [min]


class StepForm(EditorForm):
    """What is done, on which places, how long, what it waits for, and its marks."""

    def __init__(self) -> None:
        super().__init__()
        self._at: StepKey | None = None
        self._step: Step | None = None
        self._what()
        self._coats()
        self._time()
        self._marks()
        self._waiting()
        self.end()

    # -- making the fields ------------------------------------------------------------------

    def _what(self) -> None:
        tr = self.tr
        self.name = line(self._apply)
        self.id = line(self._apply, most=60)
        self.id.setToolTip(tr("Its name in the logbook and in gates"))
        self.stage = enum_choice(Stage, self._stage_chosen, stage_meaning)
        self.tool = enum_choice(Tool, self._apply)
        self.role = choice(self._apply)
        self.row(tr("What"), self.name, "title")
        self.row(tr("Short name"), self.id, ".id", "id")
        self.row(tr("Stage"), self.stage, "stage")
        self.row(tr("With"), self.tool, "tool")
        self.row(tr("The varnish is"), self.role, "role")

    def _coats(self) -> None:
        self.title(self.tr("Colours and places"))
        self.coats = CoatsField()
        self.coats.changed.connect(self._apply)
        self.wide(self.coats, "applications", "touches", "places")

    def _time(self) -> None:
        tr = self.tr
        self.title(tr("Minutes at the bench, for each coat"))
        self.fixed = number(Minutes, "fixed", self._apply)
        self.per_part = number(Minutes, "per_part", self._apply)
        self.per_change = number(Minutes, "per_change", self._apply)
        self.row(tr("Fixed"), self.fixed, "minutes", "fixed")
        self.row(tr("For each part"), self.per_part, "per_part")
        self.row(tr("For each change of colour"), self.per_change, "per_change")
        self.split = number(Step, "split_least", self._apply, tr("in one go"), 0)
        self.split.setToolTip(tr("Work that can be interrupted: the shortest piece worth starting"))
        self.row(tr("Can be interrupted after"), self.split, "split_least")

    def _marks(self) -> None:
        tr = self.tr
        self.title(tr("Marks"))
        self.traits = {
            Trait.ONE_STRETCH: tick(tr("Must be finished in one session"), self._apply),
            Trait.DAYLIGHT: tick(tr("Needs daylight"), self._apply),
            Trait.SMELLS: tick(tr("Smells: air the room"), self._apply),
            Trait.NOISY: tick(tr("Noisy: not in quiet hours"), self._apply),
            Trait.HANDS_FREE: tick(tr("Hands free: it goes on alone"), self._apply),
            Trait.ANY_AIR: tick(tr("In any air, on my word"), self._apply),
        }
        self.traits[Trait.HANDS_FREE].setToolTip(
            tr("Hands are needed only for the first minutes; spraying needs them throughout")
        )
        self.traits[Trait.ANY_AIR].setToolTip(
            tr("Planned even where the air is too cold or too damp for its coating")
        )
        self.traits[Trait.SMELLS].setToolTip(tr("Ends an hour before quiet hours begin"))
        for box in self.traits.values():
            self.wide(box)
        self.helper = tick(tr("Needs two people"), self._apply)
        self.wide(self.helper, "helper")
        self.look = number(Step, "look_in", self._apply, tr("none"), 0)
        self.look.setToolTip(tr("Hands are free until then"))
        self.row(tr("Have a look after"), self.look, "look_in")
        self.dries = choice(self._apply)
        self.or_in = CheckList(3)
        self.or_in.ticked.connect(self._apply)
        self.row(tr("Dries in"), self.dries, "dries_in")
        self.row(tr("Or in"), self.or_in, "or_in")
        self.scraped = tick(tr("The faces are scraped to bare plastic"), self._apply)
        self.stands = number(Step, "stands", self._apply, tr("as its parts"), 0)
        self.wide(self.scraped, "scraped")
        self.row(tr("Drying places once joined"), self.stands, "stands")

    def _waiting(self) -> None:
        tr = self.tr
        self.title(tr("Waits for"))
        self.after = CheckList(4)
        self.after.ticked.connect(self._apply)
        self.after.setAccessibleName(tr("Other steps that must be done first"))
        self.wide(self.after, "after")
        self.gates = GatesField()
        self.gates.changed.connect(self._apply)
        self.wide(
            self.gates, "gates", "windows", "opens", "closes", "preparation_minutes", "merges"
        )

    # -- showing and reading ----------------------------------------------------------------

    def show_step(self, book: Book, at: StepKey) -> None:
        """Show a step of the book."""
        model = model_of(book, at.home)
        step = step_of(model, at.step)
        known = ([location.name for location in book.room.locations], book.coatings, book.mixes)
        with self.filling((at, step, model.parts, model.steps, known)) as fresh:
            self._at, self._step = at, step
            if fresh:
                self._fill(book, model, step)

    def _fill(self, book: Book, model: Model, step: Step) -> None:
        put(self.name, step.title)
        put(self.id, step.id)
        pick(self.stage, step.stage.value)
        explain(self.stage)
        pick(self.tool, step.tool.value)
        roles = [(QCoreApplication.translate("role", one.value), one.value) for one in Role]
        fill(self.role, [("–", ""), *roles], step.role.value if step.role else "")
        for at, each in enumerate(Role, start=1):
            self.role.setItemData(at, role_meaning(each), Qt.ItemDataRole.ToolTipRole)
        explain(self.role)
        self.show_row(self.role, step.stage in VARNISHES)
        self.coats.show_step(book, model, step)
        put(self.fixed, step.minutes.fixed)
        put(self.per_part, step.minutes.per_part)
        put(self.per_change, step.minutes.per_change)
        put(self.split, step.split_least or 0)
        for trait, box in self.traits.items():
            put(box, trait in step.traits)
        put(self.helper, step.helper)
        put(self.look, step.look_in or 0)
        locations = [location.name for location in book.room.locations]
        usual = self.tr("{place} (usual)").format(place=locations[0])
        others = [(name, name) for name in locations]
        fill(self.dries, [(usual, ""), *others], step.dries_in)
        first = step.dries_in or locations[0]
        elsewhere = [other for other in others if other[1] != first or other[1] in step.or_in]
        self.or_in.show_names(elsewhere, step.or_in)
        self.show_row(self.dries, bool(step.applications) and len(others) > 1)
        self.show_row(self.or_in, bool(step.applications and elsewhere))
        join = step.stage is Stage.JOIN
        put(self.scraped, step.scraped)
        put(self.stands, step.stands or 0)
        self.show_row(self.scraped, join)
        self.show_row(self.stands, join)
        before = _named(model, step)
        self.after.show_names(before, step.after)
        self.gates.show_gates(step.gates, before)

    def _read(self, old: Step) -> Step:
        """Return the step as the fields have it; `Refused` if it cannot be so."""
        applications, touches = self.coats.applied()
        stage = Stage(self.stage.currentData())
        role = self.role.currentData()
        ticked = [trait for trait, box in self.traits.items() if box.isChecked()]
        kept = [trait for trait in old.traits if trait in ticked]
        return replace(
            old,
            id=self.id.text().strip(),
            title=self.name.text().strip(),
            stage=stage,
            tool=Tool(self.tool.currentData()),
            role=Role(role) if role and stage in VARNISHES else None,
            applications=applications,
            touches=touches,
            minutes=Minutes(
                fixed=self.fixed.value(),
                per_part=self.per_part.value(),
                per_change=self.per_change.value(),
            ),
            split_least=self.split.value() or None,
            traits=(*kept, *(trait for trait in ticked if trait not in kept)),
            helper=self.helper.isChecked(),
            look_in=self.look.value() or None,
            dries_in=self.dries.currentData() or "",
            or_in=_in_order(old.or_in, self.or_in.chosen(), self.dries.currentData()),
            scraped=self.scraped.isChecked() and stage is Stage.JOIN,
            stands=(self.stands.value() or None) if stage is Stage.JOIN else None,
            after=_in_order(old.after, self.after.chosen()),
            gates=self.gates.value(),
        )

    def _apply(self) -> None:
        at, old = self._at, self._step
        if at is None or old is None:
            return

        def make(book: Book) -> Edit:
            step_of(model_of(book, at.home), at.step)
            return edits.set_step(book, at, self._read(old))

        self.ask(make)

    def _stage_chosen(self) -> None:
        """Let places follow when a step lays films no more, or begins to."""
        at, old = self._at, self._step
        if at is None or old is None:
            return
        stage = Stage(self.stage.currentData())

        def make(book: Book) -> Edit:
            return edits.set_step(book, at, restaged(book, at, old, stage))

        self.ask(make)


def restaged(book: Book, at: StepKey, step: Step, stage: Stage) -> Step:
    """Return a step of another stage: its places are worked on still, with or without a coat."""
    join = stage is Stage.JOIN
    applications, touches, or_in = step.applications, step.touches, step.or_in
    if stage in LAYS_NO_FILM and applications:
        applications, touches, or_in = (), step.references(), ()
    elif not applications and stage not in LAYS_NO_FILM and not join:
        fresh = edits.fresh_step(book, model_of(book, at.home), stage)
        if fresh.applications:
            coating = fresh.applications[0].coating
            applications, touches = (Application(places=touches, coating=coating),), ()
    tool = step.tool
    if tool is Tool.AIRBRUSH and not applications:
        tool = Tool.HAND
    return replace(
        step,
        stage=stage,
        role=step.role if stage in VARNISHES else None,
        applications=applications,
        touches=touches,
        or_in=or_in,
        tool=tool,
        scraped=step.scraped and join,
        stands=step.stands if join else None,
    )


def _named(model: Model, step: Step) -> list[tuple[str, str]]:
    """Return (name, id) of the steps ahead of a step, and of others that it waits for already."""
    waits = {*step.after, *(gate.after for gate in step.gates)}
    found, ahead = [], True
    for other in model.steps:
        ahead = ahead and other.id != step.id
        if ahead or other.id in waits:
            name = title_of(other)
            found.append((name if name.lower() == other.id else f"{name} ({other.id})", other.id))
    return found


def _in_order(old: Sequence[str], chosen: Sequence[str], without: str = "") -> tuple[str, ...]:
    """Return what is chosen, in the order in which it stood before."""
    kept = [one for one in old if one in chosen and one != without]
    return (*kept, *(choice for choice in chosen if choice not in kept and choice != without))


__all__ = ["StepForm", "restaged"]
