"""The coats on every place, at every moment of the working order.

The order of the steps alone decides what lies below what (definition 3);
no schedule is looked at.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import groupby

from planner.layers.kinds import bars, seals
from planner.passes import Pass, expand
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.model import Model
from planner.values.project import Project
from planner.values.step import Stage, Step


@dataclass(frozen=True)
class Layer:
    """One film on one place.

    Attributes
    ----------
    at
        Index in the model of the step that laid it.
    coat
        Which coat of that step, from 1.
    coating
        What the film is of.
    laid_as
        Name of the coating or mix in the step.
    """

    place: str
    step: Step
    at: int
    coat: int
    coating: Coating
    laid_as: str

    @property
    def family(self) -> Family:
        """Chemistry of the film."""
        return self.coating.family

    @property
    def finish(self) -> Finish:
        """Sheen of the film."""
        return self.coating.finish

    @property
    def seals(self) -> bool:
        """Tell whether weak solvents and wiping stop at it."""
        return seals(self.step, self.coating)

    @property
    def bars(self) -> bool:
        """Tell whether strong solvents stop at it too."""
        return bars(self.step, self.coating)


@dataclass(frozen=True, eq=False)
class Moment:
    """One step, and what lies on every place before it begins.

    ``passes`` are its coats; ``stacks`` maps "part/place" to its films from
    the plastic up; ``masks`` maps a covered place to the index of its mask;
    ``turns`` counts the turns of each part so far, alone or in an assembly.
    """

    at: int
    step: Step
    passes: tuple[Pass, ...]
    stacks: Mapping[str, tuple[Layer, ...]]
    masks: Mapping[str, int]
    turns: Mapping[str, int]

    @property
    def first(self) -> Pass:
        """The first coat; it covers every place of the step."""
        return self.passes[0]

    def stack(self, place: str) -> tuple[Layer, ...]:
        """Return the films on "part/place" before the step, from the plastic up."""
        return self.stacks.get(place, ())


def walk(book: Book, project: Project, model: Model) -> Iterator[Moment]:
    """Yield every step of ``model`` in working order with the stacks it meets."""
    stacks: dict[str, tuple[Layer, ...]] = {}
    masks: dict[str, int] = {}
    turns = {part.name: 0 for part in model.parts}
    passes = expand(project, model)
    for at, (_, group) in enumerate(groupby(passes, key=lambda one: one.key.step)):
        step, ours = model.steps[at], tuple(group)
        yield Moment(at, step, ours, dict(stacks), dict(masks), dict(turns))
        if step.scraped:
            for place, _ in ours[0].films:
                stacks[place] = ()
        for one in ours:
            for place, name in one.films:
                layer = Layer(place, step, at, one.key.coat, book.coating(name), name)
                stacks[place] = (*stacks.get(place, ()), layer)
        _advance(step, at, ours[0], masks, turns)


def stack_of(book: Book, project: Project, model: Model) -> dict[str, tuple[Layer, ...]]:
    """Return the finished stack of every place of ``model``, from the plastic up.

    The stack at an earlier moment is the run of layers whose ``at`` is less
    (or, for a scraped face, what `walk` yields).
    """
    stacks: dict[str, tuple[Layer, ...]] = {
        f"{part.name}/{place.name}": () for part in model.parts for place in part.places
    }
    if not model.steps:
        return stacks
    *_, last = walk(book, project, model)
    stacks.update(last.stacks)
    if last.step.scraped:
        stacks.update((place, ()) for place, _ in last.first.films)
    for one in last.passes:
        for place, name in one.films:
            layer = Layer(place, last.step, last.at, one.key.coat, book.coating(name), name)
            stacks[place] = (*stacks[place], layer)
    return stacks


def reached(stack: tuple[Layer, ...], strong: bool) -> tuple[Layer, ...]:
    """Return the films that a solvent reaches from above, the top one first.

    It goes down to the first film that stops it, and that one still feels
    it (definition 5).
    """
    films: list[Layer] = []
    for layer in reversed(stack):
        films.append(layer)
        if layer.bars if strong else layer.seals:
            break
    return tuple(films)


def _advance(step: Step, at: int, one: Pass, masks: dict[str, int], turns: dict[str, int]) -> None:
    if step.stage is Stage.MASK:
        masks.update(dict.fromkeys(one.places, at))
    elif step.stage is Stage.UNMASK:
        for place in one.places:
            masks.pop(place, None)
    elif step.stage is Stage.TURN:
        for unit in one.units:
            for part in unit.parts:
                turns[part] += 1
