"""The coats on every place, at every moment of the working order.

The order of the steps alone decides what lies below what (definition 3);
no schedule is looked at.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import groupby

from planner.layers.operation_kinds import bars, seals
from planner.passes import Pass, expand_model
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.model import Model
from planner.values.project import Project
from planner.values.step import Stage, Step

RESISTS = frozenset({Family.MASKING_FLUID, Family.SALT})
"""What is laid only to be taken off again with all that lies over it."""
TAKES_OFF = frozenset({Stage.UNMASK, Stage.CHIP_RUB})


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
    the plastic up; ``masks`` maps a covered place to the index of its mask, if
    that comes off later (one that stays on is a finding, and hides no other);
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

    @cached_property
    def laid(self) -> dict[str, str]:
        """What lands where: "part/place" → coating or mix; nothing on a mask."""
        return {place: name for place, name in self.first.films if place not in self.masks}

    def stack(self, place: str) -> tuple[Layer, ...]:
        """Return the films on "part/place" before the step, from the plastic up."""
        return self.stacks.get(place, ())


def walk(book: Book, project: Project, model: Model) -> Iterator[Moment]:
    """Yield every step of ``model`` in working order with the stacks it meets."""
    moment: Moment | None = None
    groups = groupby(expand_model(project.name, model), key=lambda one: one.key.step)
    passes = [tuple(group) for _, group in groups]
    last_off = {
        place: at
        for at, ours in enumerate(passes)
        if ours[0].step.stage is Stage.UNMASK
        for place in ours[0].places
    }
    for at, ours in enumerate(passes):
        moment = Moment(
            at=at,
            step=model.steps[at],
            passes=ours,
            stacks=_after(book, moment) if moment else {},
            masks=_masked(last_off, at, moment),
            turns=_turned(model, moment),
        )
        yield moment


def stack_of(book: Book, project: Project, model: Model) -> dict[str, tuple[Layer, ...]]:
    """Return the finished stack of every place of ``model``, from the plastic up.

    The stack at an earlier moment is what `walk` yields.
    """
    stacks: dict[str, tuple[Layer, ...]] = {
        f"{part.name}/{place.name}": () for part in model.parts for place in part.places
    }
    if model.steps:
        *_, last = walk(book, project, model)
        stacks.update(_after(book, last))
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


def _after(book: Book, moment: Moment) -> dict[str, tuple[Layer, ...]]:
    """Return the stacks that a step leaves; scraping takes a face down to the plastic."""
    stacks = dict(moment.stacks)
    if moment.step.stage in TAKES_OFF:
        for place in moment.first.places:
            stack = stacks.get(place, ())
            stacks[place] = tuple(film for film in stack if film.family not in RESISTS)
    if moment.step.scraped:
        stacks.update((place, ()) for place in moment.laid)
    for one in moment.passes:
        for place, name in one.films:
            if place in moment.laid:
                layer = Layer(place, moment.step, moment.at, one.key.coat, book.coating(name), name)
                stacks[place] = (*stacks.get(place, ()), layer)
    return stacks


def _masked(last_off: dict[str, int], at: int, before: Moment | None) -> dict[str, int]:
    """Return what is covered when step ``at`` begins, by masks that come off later.

    ``last_off`` is the last step that unmasks each place.
    """
    masks = dict(before.masks) if before else {}
    if before and before.step.stage is Stage.MASK:
        masks.update(dict.fromkeys(before.first.places, before.at))
    elif before and before.step.stage is Stage.UNMASK:
        for place in before.first.places:
            masks.pop(place, None)
    return {place: mask for place, mask in masks.items() if last_off.get(place, -1) >= at}


def _turned(model: Model, before: Moment | None) -> dict[str, int]:
    """Return how often each part was turned, alone or in an assembly."""
    if before is None:
        return {part.name: 0 for part in model.parts}
    turns = dict(before.turns)
    if before.step.stage is Stage.TURN:
        for unit in before.first.units:
            for part in unit.parts:
                turns[part] += 1
    return turns
