"""Renaming things; log, pins, gates and marks of places follow."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Collection
from dataclasses import replace
from typing import TypeVar

from app.service.build_edits.locate import model_of, references, step_of, waits, with_model
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.keys import ModelKey, StepKey
from planner.values.lookup import part_of
from planner.values.message import called
from planner.values.model import Model, Part
from planner.values.project import Happened, Logged, Observed, Pin, Project
from planner.values.refusal import Refused, unknown

Fact = TypeVar("Fact", Logged, Observed, Happened)
Where = Callable[[str, str], tuple[str, str]]


def rename_project(book: Book, old: str, new: str) -> Edit:
    """Give a project another name."""
    renamed = with_project(book, old, lambda project: replace(project, name=new))
    return Edit(called("{old} is now {new}", old=old, new=new), renamed)


def rename_model(book: Book, at: ModelKey, new: str) -> Edit:
    """Give a model another name."""

    def where(model: str, step: str) -> tuple[str, str]:
        return (new if model == at.model else model, step)

    changed = with_model(
        book,
        at,
        lambda model: replace(model, name=new),
        lambda project: _facts(project, where),
    )
    return Edit(called("{model} is now {new}", model=at.model, new=new), changed)


def rename_step(book: Book, at: StepKey, new: str) -> Edit:
    """Give a step another id."""
    step_of(model_of(book, at.home), at.step)

    def where(model: str, step: str) -> tuple[str, str]:
        return (model, new if (model, step) == (at.model, at.step) else step)

    def change(model: Model) -> Model:
        steps = (replace(step, id=new) if step.id == at.step else step for step in model.steps)
        moved = (waits(step, lambda name: (new if name == at.step else name,)) for step in steps)
        return replace(model, steps=tuple(moved))

    changed = with_model(book, at.home, change, lambda project: _facts(project, where))
    return Edit(
        called("{model}: {step} is now {new}", model=at.model, step=at.step, new=new), changed
    )


def rename_part(book: Book, at: ModelKey, old: str, new: str) -> Edit:
    """Give a part another name."""
    part_of(model_of(book, at), old)

    def follow(name: str) -> str:
        part, slash, place = name.partition("/")
        return f"{new}{slash}{place}" if part == old else name

    def part(part: Part) -> Part:
        return replace(part, name=new) if part.name == old else part

    return Edit(
        called("{model}: {old} is now {new}", model=at.model, old=old, new=new),
        _with_places(book, at, part, follow),
    )


def rename_place(book: Book, at: ModelKey, part: str, old: str, new: str) -> Edit:
    """Give a place another name."""
    known = [place.name for place in part_of(model_of(book, at), part).places]
    if old not in known:
        raise Refused("places", unknown("place", old, known))

    def follow(name: str) -> str:
        return f"{part}/{new}" if name == f"{part}/{old}" else name

    def changed(other: Part) -> Part:
        if other.name != part:
            return other
        places = (replace(each, name=new) if each.name == old else each for each in other.places)
        return replace(other, places=tuple(places))

    return Edit(
        called(
            "{model}: {part}/{old} is now {part}/{new}", model=at.model, part=part, old=old, new=new
        ),
        _with_places(book, at, changed, follow),
    )


def step_id(title: str, taken: Collection[str] = ()) -> str:
    """Return a step id made of a title, with a number where it is taken."""
    plain = unicodedata.normalize("NFKD", title).encode("ascii", "ignore").decode()
    base = re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:50].strip("-") or "step"
    name, number = base, 1
    while name in taken:
        number += 1
        name = f"{base}-{number}"
    return name


def fresh_name(base: str, taken: Collection[str]) -> str:
    """Return ``base``, or ``base`` with the first free number after it."""
    name, number = base, 1
    while name in taken:
        number += 1
        name = f"{base} {number}"
    return name


def follow_ticks(project: Project, model: str, follow: Callable[[str], str]) -> Project:
    """Return the project with the places ticked in its log put through ``follow``."""

    def entry(fact: Logged) -> Logged:
        if fact.model != model or not fact.ticked:
            return fact
        return replace(fact, ticked=tuple(dict.fromkeys(follow(name) for name in fact.ticked)))

    log = tuple(entry(fact) for fact in project.log)
    return project if log == project.log else replace(project, log=log)


def _with_places(
    book: Book, at: ModelKey, part: Callable[[Part], Part], follow: Callable[[str], str]
) -> Book:
    def change(model: Model) -> Model:
        steps = tuple(references(step, lambda name: (follow(name),)) for step in model.steps)
        return replace(model, parts=tuple(part(other) for other in model.parts), steps=steps)

    return with_model(book, at, change, lambda project: follow_ticks(project, at.model, follow))


def _facts(project: Project, where: Where) -> Project:
    """Return the project with all that names steps naming them as ``where`` says."""

    def moved(fact: Fact) -> Fact:
        model, step = where(fact.model, fact.step)
        return fact if (model, step) == (fact.model, fact.step) else _at(fact, model, step)

    def pin(pin: Pin) -> Pin:
        model, step = where(pin.model, pin.step)
        beside = "/".join(where(*pin.beside.split("/", 1))) if pin.beside else None
        return replace(pin, model=model, step=step, beside=beside)

    return replace(
        project,
        pins=tuple(pin(other) for other in project.pins),
        log=tuple(moved(fact) for fact in project.log),
        observed=tuple(moved(look) for look in project.observed),
        diary=tuple(moved(event) for event in project.diary),
    )


def _at(fact: Fact, model: str, step: str) -> Fact:
    return replace(fact, model=model, step=step)
