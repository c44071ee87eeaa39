"""Dates that a plan misses, of projects and of models (definition 26)."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.bench import BenchCalendar
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.plan import Plan


@dataclass(frozen=True)
class MissedDate:
    """A date that is missed: of a model, or of a project where ``model`` is "".

    ``end`` is when it is finished, ``minutes`` how long after its day is
    over, ``days`` by how many local days.
    """

    project: str
    model: str
    target: date
    end: int
    minutes: int
    days: int


def missed_dates(book: Book, calendar: BenchCalendar, plan: Plan) -> tuple[MissedDate, ...]:
    """Return the dates that a plan misses, the worst first.

    A model with a date of its own does not make its project late.  A plan
    that says nothing of models counts each as finished with its project.
    """
    ends = ends_of_models(book, plan)
    found = []
    for project in book.projects:
        if not project.active:
            continue
        rest = [ends[project.name, model.name] for model in project.models if model.target is None]
        due = [(project.target, "", max(rest, default=plan.now))]
        due += [
            (model.target, model.name, ends[project.name, model.name]) for model in project.models
        ]
        for target, model, end in due:
            over = 0 if target is None else end - calendar.day_end(target)
            if target is not None and over > 0:
                day = moment_of(end - 1, calendar.zone).date()
                days = (day - target).days
                found.append(MissedDate(project.name, model, target, end, over, days))
    return tuple(sorted(found, key=lambda missed: (-missed.minutes, missed.project, missed.model)))


def ends_of_models(book: Book, plan: Plan) -> dict[tuple[str, str], int]:
    """Return when each model of an active project is finished by a plan."""
    told = {(project, model): end for project, model, end in plan.model_finishes}
    whole = dict(plan.finishes)
    return {
        (project.name, model.name): told.get(
            (project.name, model.name), whole.get(project.name, plan.now)
        )
        for project in book.projects
        if project.active
        for model in project.models
    }
