"""The log of a project: entries written, corrected and taken away.

This is the one home of the rule that a fact is never overwritten by the way:
an entry that has ended changes by a correction only.
"""

from __future__ import annotations

from dataclasses import replace

from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.lookup import model_named, project_of
from planner.values.message import message
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Event, Happened, Logged, Project
from planner.values.refusal import Refused, demand, unknown
from planner.values.step import Step


def model_of(book: Book, key: PassKey) -> Model:
    """Return the model that a pass is of; raise `Refused` if there is none."""
    return model_named(project_of(book, key.project), key.model)


def step_of(book: Book, key: PassKey) -> Step:
    """Return the step that a pass is of; raise `Refused` if there is none, or no such coat."""
    model = model_of(book, key)
    for step in model.steps:
        if step.id == key.step:
            demand(
                1 <= key.coat <= step.coats,
                "coat",
                message(
                    'is {coat}, but "{step}" has {most}',
                    coat=key.coat,
                    step=step.id,
                    most=step.coats,
                ),
            )
            return step
    raise Refused("step", unknown("step", key.step, [step.id for step in model.steps]))


def knows(book: Book, key: PassKey) -> bool:
    """Tell whether the book has the step of a pass; a plan may be older than its book."""
    try:
        step_of(book, key)
    except Refused:
        return False
    return True


def alone(book: Book, key: PassKey) -> Book:
    """Return a book in which the model of a pass is the only one, to be looked at at once.

    What is found of a model's order of coats depends on no other.
    """
    project = project_of(book, key.project)
    own = replace(
        project,
        models=(model_of(book, key),),
        log=tuple(fact for fact in project.log if fact.model == key.model),
        observed=tuple(look for look in project.observed if look.model == key.model),
        pins=(),
        pilot="",
        active=True,
    )
    return replace(book, projects=(own,))


def key_of(project: str, fact: Logged) -> PassKey:
    """Return the pass that an entry is about."""
    return PassKey(project, fact.model, fact.step, fact.coat)


def entry_of(book: Book, key: PassKey) -> Logged | None:
    """Return the entry of a pass, or None."""
    log = project_of(book, key.project).log
    return next((fact for fact in log if key_of(key.project, fact) == key), None)


def begun(project: Project, model: str, step: str) -> tuple[Logged, ...]:
    """Return the entries of a step, by coat."""
    mine = [fact for fact in project.log if (fact.model, fact.step) == (model, step)]
    return tuple(sorted(mine, key=lambda fact: fact.coat))


def written(book: Book, project: str, fact: Logged) -> Book:
    """Return the book with one more fact; it may end what is under way.

    Raises
    ------
    Refused
        If that coat was noted as done already, or there is no such coat.
    """
    known = entry_of(book, key_of(project, fact))
    demand(
        known is None or known.end is None,
        "log",
        message(
            '"{step}" coat {coat} is done already; correct its entry, or take it back',
            step=fact.step,
            coat=fact.coat,
        ),
    )
    return _logged(book, project, known, fact)


def corrected(book: Book, project: str, fact: Logged) -> Book:
    """Return the book with the entry of the same coat replaced.

    Raises
    ------
    Refused
        If nothing is logged of that coat.
    """
    known = entry_of(book, key_of(project, fact))
    if known is None:
        raise Refused("log", _nothing(fact.step, fact.coat))
    moved = _logged(book, project, known, fact)
    if known.start == fact.start:
        return moved

    def followed(old: Project) -> Project:
        return replace(
            old,
            diary=tuple(
                replace(line, at=fact.start) if is_mark_of(line, known) else line
                for line in old.diary
            ),
        )

    return with_project(moved, project, followed)


def without(book: Book, key: PassKey) -> Book:
    """Return the book without an entry.

    Raises
    ------
    Refused
        If nothing is logged of that coat.
    """
    known = entry_of(book, key)
    if known is None:
        raise Refused("log", _nothing(key.step, key.coat))

    def cleared(old: Project) -> Project:
        return replace(
            old,
            log=tuple(fact for fact in old.log if fact is not known),
            diary=tuple(line for line in old.diary if not is_mark_of(line, known)),
        )

    return with_project(book, key.project, cleared)


def is_mark_of(line: Happened, fact: Logged) -> bool:
    """Tell whether a line of the diary only says how an entry met the films below it.

    Such a line goes where its entry goes.
    """
    return line.event in (Event.TOO_SOON, Event.TOO_LATE) and (line.model, line.step, line.at) == (
        fact.model,
        fact.step,
        fact.start,
    )


def _nothing(step: str, coat: int) -> str:
    return message('nothing is logged of "{step}" coat {coat}', step=step, coat=coat)


def _logged(book: Book, project: str, known: Logged | None, fact: Logged) -> Book:
    """Put ``fact`` in the place of ``known``, or at the end."""

    def noted(old: Project) -> Project:
        if known is None:
            return replace(old, log=(*old.log, fact))
        return replace(old, log=tuple(fact if other is known else other for other in old.log))

    return with_project(book, project, noted)
