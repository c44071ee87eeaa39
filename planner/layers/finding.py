"""What is found unsound, and the mend for it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import reduce

from planner.layers.coat_stack import Moment, walk
from planner.layers.named_mends import BookChange
from planner.layers.overcoat_table import COMMON_PRACTICE, LayerVerdict
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.message import message, told
from planner.values.model import Model
from planner.values.project import Project


@dataclass(frozen=True)
class Mend:
    """A named edit of the book that removes a finding in one step."""

    title: str
    edits: tuple[BookChange, ...]

    def apply(self, book: Book) -> Book:
        """Return the mended book; a second time it changes nothing."""
        return reduce(lambda done, edit: edit.apply(done), self.edits, book)


@dataclass(frozen=True)
class Finding:
    """One fault of the order of coats.

    Attributes
    ----------
    rule
        Short name of the rule broken.
    verdict
        How grave it is, and what kind of mend it asks.
    path
        Where it stands, as "projects[0].models[1].steps[4]".
    places
        "part/place" names concerned.
    message
        The reason, in plain words.
    source
        Where the rule comes from.
    mend
        None where the program knows no edit that would do.
    """

    rule: str
    verdict: LayerVerdict
    path: str
    project: str
    model: str
    step: str
    places: tuple[str, ...]
    message: str
    source: str
    mend: Mend | None

    @property
    def key(self) -> tuple[str, ...]:
        """What makes it the same finding after an edit: rule, project, model and step."""
        return (self.rule, self.project, self.model, self.step)

    @property
    def about(self) -> str:
        """Model, step and places in one line."""
        return " · ".join(word for word in (self.model, self.step, shown(self.places)) if word)


def shown(places: Iterable[str]) -> str:
    """Return places for a sentence, shortened past the third."""
    names = list(dict.fromkeys(places))
    first = ", ".join(names[:3])
    return (
        message("{names} and {n} more", names=first, n=len(names) - 3) if len(names) > 3 else first
    )


@dataclass(frozen=True)
class Scene:
    """One model with its working order walked, as the rules look at it."""

    book: Book
    project: Project
    model: Model
    path: str
    moments: tuple[Moment, ...]

    @property
    def spot(self) -> ModelKey:
        """Names the model for edits."""
        return ModelKey(self.project.name, self.model.name)

    def logged(self, step: str) -> bool:
        """Tell whether some coat of a step was begun."""
        return any(e.model == self.model.name and e.step == step for e in self.project.log)

    def found(
        self,
        rule: str,
        verdict: LayerVerdict,
        moment: Moment,
        places: Iterable[str],
        fault: str,
        mend: Mend | None,
        source: str = COMMON_PRACTICE,
    ) -> Finding:
        """Return a finding on a step; what was done already has no mend."""
        names = tuple(dict.fromkeys(places))
        return Finding(
            rule=told(rule),
            verdict=verdict,
            path=f"{self.path}.steps[{moment.at}]",
            project=self.project.name,
            model=self.model.name,
            step=moment.step.id,
            places=names,
            message=message(
                "{step} on {names}: {message}",
                step=moment.step.title or moment.step.id,
                names=shown(names),
                message=told(fault),
            ),
            source=told(source),
            mend=None if self.logged(moment.step.id) else mend,
        )


def scenes(book: Book) -> Iterable[Scene]:
    """Yield every model of every active project, walked."""
    for at, project in enumerate(book.projects):
        if not project.active:
            continue
        for number, model in enumerate(project.models):
            path = f"projects[{at}].models[{number}]"
            yield Scene(book, project, model, path, tuple(walk(book, project, model)))
