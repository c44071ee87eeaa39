"""What the tree of the Build view holds: projects, models, parts, places, steps.

No Qt but for its translator.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum, auto
from functools import cached_property, lru_cache

from app.window import words
from app.window.message_translation import title
from planner.graph.slack import Slack
from planner.layers.finding import Finding
from planner.values.book import Book
from planner.values.identity_key import Same
from planner.values.keys import ModelKey, StepKey
from planner.values.model import Model, Part, Place, Side
from planner.values.project import Project
from planner.values.step import Step


class NodeKind(StrEnum):
    """What a line speaks of."""

    PROJECT = auto()
    MODEL = auto()
    PARTS = auto()
    PART = auto()
    PLACE = auto()
    STEP = auto()


@dataclass(frozen=True)
class Key:
    """Names a line: project, model, then a step, or a part and perhaps a place."""

    kind: NodeKind
    project: str
    model: str = ""
    step: str = ""
    part: str = ""
    place: str = ""

    @property
    def home(self) -> ModelKey:
        """The model that it belongs to."""
        return ModelKey(self.project, self.model)

    @property
    def spot(self) -> StepKey:
        """The step that it is."""
        return StepKey(self.project, self.model, self.step)


@dataclass(frozen=True)
class EditorNode:
    """One line: its name, what it is done with, its minutes, and the lines below."""

    key: Key
    name: str
    with_: str = ""
    minutes: str = ""
    swatches: tuple[str, ...] = ()
    below: tuple[EditorNode, ...] = ()


@dataclass(frozen=True)
class Known:
    """What a plan adds to the lines: findings and slack; nothing before there is one."""

    findings: tuple[Finding, ...] = ()
    slacks: Mapping[str, Slack] = field(default_factory=dict)

    def of(self, key: Key) -> tuple[Finding, ...]:
        """Return the findings that a line is about, those below it included."""
        if key.kind in (NodeKind.PARTS, NodeKind.PART, NodeKind.PLACE):
            return ()
        return self._found.get((key.project, key.model, key.step), ())

    def float_of(self, key: Key) -> int | None:
        """Return how long a step can wait [min]; None where nobody knows or it is done."""
        return self._floats.get((key.project, key.model, key.step))

    def critical(self, key: Key) -> bool:
        """Tell whether any delay of a step delays its project."""
        wait = self.float_of(key)
        return wait is not None and wait <= 0

    @cached_property
    def _found(self) -> dict[tuple[str, str, str], tuple[Finding, ...]]:
        found: dict[tuple[str, str, str], list[Finding]] = {}
        for finding in self.findings:
            whole = (finding.project, finding.model, finding.step)
            for spot in {whole, (finding.project, finding.model, ""), (finding.project, "", "")}:
                found.setdefault(spot, []).append(finding)
        return {spot: tuple(all_) for spot, all_ in found.items()}

    @cached_property
    def _floats(self) -> dict[tuple[str, str, str], int]:
        floats: dict[tuple[str, str, str], int] = {}
        for slack in self.slacks.values():
            for time, times in slack.path.times.items():
                spot = (time.project, time.model, time.step)
                floats[spot] = min(times.total_float, floats.get(spot, times.total_float))
        return floats


def nodes_of(book: Book) -> tuple[EditorNode, ...]:
    """Return a line for each project, with all that is below it."""
    return tuple(_project(book, project) for project in book.projects)


def _project(book: Book, project: Project) -> EditorNode:
    models = tuple(
        _model(Same(book.coatings), Same(book.mixes), Same(model), project.name)
        for model in project.models
    )
    told = words.count(len(models), words.tr("{n} model"), words.tr("{n} models"))
    if not project.active:
        told = words.tr("{models}, set aside").format(models=told)
    return EditorNode(Key(NodeKind.PROJECT, project.name), project.name, told, below=models)


@lru_cache(maxsize=1024)  # an edit leaves most models as they are
def _model(coatings: Same, mixes: Same, same: Same[Model], project: str) -> EditorNode:  # type: ignore[type-arg]
    model = same.value
    swatches = {other.name: other.swatch for other in coatings.value}
    for mix in mixes.value:
        swatches[mix.name] = mix.swatch or swatches.get(mix.portions[0].coating, "")
    home = Key(NodeKind.MODEL, project, model.name)
    apart = words.count(len(model.parts), words.tr("{n} part"), words.tr("{n} parts"))
    parts = EditorNode(
        Key(NodeKind.PARTS, project, model.name),
        words.tr("Parts and places"),
        apart,
        below=tuple(_part(project, model, part) for part in model.parts),
    )
    steps = tuple(_step(project, model, step, swatches) for step in model.steps)
    count = words.count(len(steps), words.tr("{n} step"), words.tr("{n} steps"))
    told = ", ".join(name for name in (model.scale, count) if name)
    minutes = sum(minutes_of(step) * step.coats for step in model.steps)
    total = words.span(minutes) if minutes else ""
    return EditorNode(home, model.name, told, total, below=(parts, *steps))


def _part(project: str, model: Model, part: Part) -> EditorNode:
    key = Key(NodeKind.PART, project, model.name, part=part.name)
    told = [words.tr("held by: {holder}").format(holder=part.holder)] if part.holder else []
    told += [words.tr("snaps in under stress")] if part.stressed else []
    below = tuple(_place(key, place) for place in part.places)
    return EditorNode(key, part.name, ", ".join(told), below=below)


def _place(part: Key, place: Place) -> EditorNode:
    key = Key(NodeKind.PLACE, part.project, part.model, part=part.part, place=place.name)
    told = [words.tr("underside")] if place.side is Side.UNDER else []
    if place.area_cm2:
        told.append(words.fill(words.tr("{area:g} cm²"), area=place.area_cm2))
    return EditorNode(key, place.name, ", ".join(told))


def _step(project: str, model: Model, step: Step, swatches: Mapping[str, str]) -> EditorNode:
    key = Key(NodeKind.STEP, project, model.name, step=step.id)
    coatings = list(dict.fromkeys(application.coating for application in step.applications))
    told = [words.tool_word(step.tool), *coatings]
    minutes = words.span(minutes_of(step))
    if step.coats > 1:
        minutes = words.tr("{coats} × {minutes}").format(coats=step.coats, minutes=minutes)
    swatch = tuple(swatches.get(name, "") for name in coatings)
    name = title_of(step)
    return EditorNode(key, name, " · ".join(told), minutes, swatch)


def minutes_of(step: Step) -> int:
    """Return the attended minutes of one pass on all its parts."""
    parts = {name.partition("/")[0] for name in step.references()}
    colours = {application.coating for application in step.applications}
    return step.minutes.of(len(parts), len(colours))


def step_name(model: Model, step: str) -> str:
    """Return what a step is called on screen."""
    for other in model.steps:
        if other.id == step:
            return title_of(other)
    return step


def title_of(step: Step) -> str:
    """Return a step's title in the person's language, or else its stage."""
    if step.title:
        return title(step.title)
    return words.capital(words.stage_word(step.stage))


def steps_below(node: EditorNode) -> Iterator[Key]:
    """Yield the keys of every step below a line."""
    for other in node.below:
        if other.key.kind is NodeKind.STEP:
            yield other.key
        else:
            yield from steps_below(other)


def words_of(node: EditorNode) -> str:
    """Return all that a line and those below it say, in small letters, to be searched."""
    return " ".join([node.name, node.with_, *map(words_of, node.below)]).casefold()
