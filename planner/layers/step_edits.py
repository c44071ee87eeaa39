"""Edits that change one step, or one mix, where it stands."""

from __future__ import annotations

from dataclasses import dataclass, replace

from planner.layers.mend_coatings import Wanted, provide
from planner.layers.named_mends import position
from planner.values.book import Book
from planner.values.book_changes import model_at, with_step
from planner.values.coating import Mark, Preparation, State, Window
from planner.values.keys import ModelKey
from planner.values.mix import Mix
from planner.values.step import Gate, Stage, Step, Tool


@dataclass(frozen=True)
class Prepare:
    """Ask a preparation of the film of an earlier step."""

    spot: ModelKey
    step: str
    after: str
    preparation: Preparation = Preparation.SCUFF
    minutes: int = 10

    def apply(self, book: Book) -> Book:
        """Add the gate unless the step has one to that film with a preparation."""
        window = Window(
            opens=Mark(state=State.DRY_TO_RECOAT),
            preparation=self.preparation,
            preparation_minutes=self.minutes,
        )
        gate = Gate(after=self.after, windows=(window,))
        if position(model_at(book, self.spot), self.after) is None:
            return book

        def change(step: Step) -> Step:
            if gate in step.gates:
                return step
            return replace(step, gates=(*step.gates, gate))

        return with_step(book, self.spot, self.step, change)


@dataclass(frozen=True)
class DropGate:
    """Take a written gate off a step."""

    spot: ModelKey
    step: str
    gate: Gate

    def apply(self, book: Book) -> Book:
        """Keep every other gate."""

        def change(step: Step) -> Step:
            return replace(step, gates=tuple(one for one in step.gates if one != self.gate))

        return with_step(book, self.spot, self.step, change)


@dataclass(frozen=True)
class Restage:
    """Call a step what its coating says it is."""

    spot: ModelKey
    step: str
    stage: Stage

    def apply(self, book: Book) -> Book:
        """Change the stage; a role goes with clear coats only."""

        def change(step: Step) -> Step:
            clear = self.stage in (Stage.VARNISH, Stage.MATTE)
            return replace(step, stage=self.stage, role=step.role if clear else None)

        return with_step(book, self.spot, self.step, change)


@dataclass(frozen=True)
class Scrape:
    """Scrape the faces of a join to bare plastic."""

    spot: ModelKey
    step: str

    def apply(self, book: Book) -> Book:
        """Mark the join as scraped."""
        return with_step(book, self.spot, self.step, lambda step: replace(step, scraped=True))


@dataclass(frozen=True)
class Coats:
    """Lay more coats of one coating."""

    spot: ModelKey
    step: str
    coating: str
    coats: int

    def apply(self, book: Book) -> Book:
        """Raise the number of coats."""

        def change(step: Step) -> Step:
            applications = tuple(
                replace(one, coats=max(one.coats, self.coats))
                if one.coating == self.coating
                else one
                for one in step.applications
            )
            return replace(step, applications=applications)

        return with_step(book, self.spot, self.step, change)


@dataclass(frozen=True)
class Swap:
    """Lay another coating instead of one."""

    spot: ModelKey
    step: str
    coating: str
    wanted: Wanted

    def apply(self, book: Book) -> Book:
        """Swap the coating; a spray can gives way to airbrush or brush."""
        model = model_at(book, self.spot)
        at = position(model, self.step)
        if model is None or at is None:
            return book
        step = model.steps[at]
        if self.coating not in [one.coating for one in step.applications]:
            return book
        filled, name = provide(book, self.wanted)
        tool = step.tool
        if tool is Tool.CAN:
            tool = Tool.AIRBRUSH if book.gear.airbrushes else Tool.BRUSH
        applications = tuple(
            replace(one, coating=name) if one.coating == self.coating else one
            for one in step.applications
        )
        swapped = replace(step, applications=applications, tool=tool)
        return with_step(filled, self.spot, self.step, lambda _: swapped)


@dataclass(frozen=True)
class SwapPortion:
    """Stir another coating into a mix instead of one that does not belong there."""

    mix: str
    portion: str
    wanted: Wanted

    def apply(self, book: Book) -> Book:
        """Swap the portion; parts of the same coating are added up."""
        mix = book.mix(self.mix)
        if mix is None or self.portion not in [one.coating for one in mix.portions]:
            return book
        filled, name = provide(book, self.wanted)
        parts: dict[str, float] = {}
        for one in mix.portions:
            coating = name if one.coating == self.portion else one.coating
            parts[coating] = parts.get(coating, 0.0) + one.parts
        portions = tuple(
            replace(mix.portions[0], coating=coating, parts=amount)
            for coating, amount in parts.items()
        )

        def changed(one: Mix) -> Mix:
            return replace(one, portions=portions) if one.name == self.mix else one

        return replace(filled, mixes=tuple(changed(one) for one in filled.mixes))
