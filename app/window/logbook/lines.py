"""The lines of the logbook: passes as they were, and what happened between them.  No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from planner.values.book import Book
from planner.values.gear import Cleaned
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Happened, Logged, Observed, Project
from planner.values.step import Stage, Step


class Sort(StrEnum):
    """What a line is about."""

    WORK = "work"
    LOOK = "look"
    EVENT = "event"
    CLEANED = "cleaned"


@dataclass(frozen=True)
class LogbookLine:
    """One line, in order of ``at`` [minute].

    Exactly one of ``fact``, ``look``, ``event`` and ``cleaned`` is there;
    ``step`` is the step as it stands in the model, None where it has left it.
    That an airbrush was cleaned belongs to no project.
    """

    sort: Sort
    at: int
    project: str
    model: str
    step_id: str
    step: Step | None
    fact: Logged | None = None
    look: Observed | None = None
    event: Happened | None = None
    cleaned: Cleaned | None = None

    @property
    def key(self) -> PassKey | None:
        """The pass of a line about work."""
        if self.fact is None:
            return None
        return PassKey(self.project, self.model, self.step_id, self.fact.coat)

    @property
    def stage(self) -> Stage | None:
        """The stage, where the step is still there."""
        return self.step.stage if self.step else None

    @property
    def minutes(self) -> int | None:
        """Minutes of work: as noted, or from start to end."""
        if self.fact is None:
            return None
        if self.fact.minutes is not None or self.fact.end is None:
            return self.fact.minutes
        return minute_of(self.fact.end) - minute_of(self.fact.start)

    def says(self, text: str) -> bool:
        """Tell whether a word, in any case, stands in it."""
        fact, event = self.fact, self.event
        told = [self.project, self.model, self.step_id, self.stage or ""]
        told += [self.step.title if self.step else ""]
        if fact is not None:
            told += [fact.note, fact.airbrush, *(used.coating for used in fact.used)]
        if event is not None:
            told += [event.event, event.text]
        if self.cleaned is not None:
            told += [self.cleaned.airbrush]
        if self.look is not None:
            told += [self.look.state]
        return text.casefold() in " ".join(told).casefold()


def lines(book: Book) -> tuple[LogbookLine, ...]:
    """Return every line of a book, the newest first."""
    found = [line for project in book.projects for line in _of(project)]
    found += [
        LogbookLine(Sort.CLEANED, minute_of(cleaning.at), "", "", "", None, cleaned=cleaning)
        for cleaning in book.cleaned
    ]
    return tuple(sorted(found, key=lambda line: (line.at, line.sort), reverse=True))


def _of(project: Project) -> Iterator[LogbookLine]:
    steps = {(model.name, step.id): step for model in project.models for step in model.steps}

    def line(sort: Sort, at: int, model: str, step: str, **about: object) -> LogbookLine:
        found = steps.get((model, step))
        return LogbookLine(sort, at, project.name, model, step, found, **about)  # type: ignore[arg-type]

    for fact in project.log:
        yield line(Sort.WORK, minute_of(fact.start), fact.model, fact.step, fact=fact)
    for look in project.observed:
        yield line(Sort.LOOK, minute_of(look.at), look.model, look.step, look=look)
    for event in project.diary:
        yield line(Sort.EVENT, minute_of(event.at), event.model, event.step, event=event)
