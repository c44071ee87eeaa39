"""Renaming things; log, pins, gates and marks of places follow."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Collection
from dataclasses import replace
from typing import TypeVar

from app.service.build_edits.locate import (
    ModelAt,
    StepAt,
    model_of,
    references,
    step_of,
    waits,
    with_model,
)
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.lookup import part_of, project_of
from planner.values.message import called
from planner.values.model import Model, Part
from planner.values.project import Happened, Logged, Observed, Pin, Project
from planner.values.refusal import Refused, unknown

Fact = TypeVar("Fact", Logged, Observed, Happened)
Where = Callable[[str, str], tuple[str, str]]


def rename_project(book: Book, old: str, new: str) -> Edit:
    """Give a project another name."""
    before = project_of(book, old)
    renamed = replace(before, name=new)
    projects = tuple(renamed if one is before else one for one in book.projects)
    return Edit(called("{old} is now {new}", old=old, new=new), replace(book, projects=projects))


def rename_model(book: Book, at: ModelAt, new: str) -> Edit:
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


def rename_step(book: Book, at: StepAt, new: str) -> Edit:
    """Give a step another id."""
    step_of(model_of(book, at.home), at.step)

    def where(model: str, step: str) -> tuple[str, str]:
        return (model, new if (model, step) == (at.model, at.step) else step)

    def change(model: Model) -> Model:
        steps = (replace(one, id=new) if one.id == at.step else one for one in model.steps)
        moved = (waits(one, lambda name: (new if name == at.step else name,)) for one in steps)
        return replace(model, steps=tuple(moved))

    changed = with_model(book, at.home, change, lambda project: _facts(project, where))
    return Edit(
        called("{model}: {step} is now {new}", model=at.model, step=at.step, new=new), changed
    )


def rename_part(book: Book, at: ModelAt, old: str, new: str) -> Edit:
    """Give a part another name."""
    part_of(model_of(book, at), old)

    def follow(name: str) -> str:
        part, slash, place = name.partition("/")
        return f"{new}{slash}{place}" if part == old else name

    def part(one: Part) -> Part:
        return replace(one, name=new) if one.name == old else one

    return Edit(
        called("{model}: {old} is now {new}", model=at.model, old=old, new=new),
        _with_places(book, at, part, follow),
    )


def rename_place(book: Book, at: ModelAt, part: str, old: str, new: str) -> Edit:
    """Give a place another name."""
    known = [place.name for place in part_of(model_of(book, at), part).places]
    if old not in known:
        raise Refused("places", unknown("place", old, known))

    def follow(name: str) -> str:
        return f"{part}/{new}" if name == f"{part}/{old}" else name

    def changed(one: Part) -> Part:
        if one.name != part:
            return one
        places = (replace(each, name=new) if each.name == old else each for each in one.places)
        return replace(one, places=tuple(places))

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

    def entry(one: Logged) -> Logged:
        if one.model != model or not one.ticked:
            return one
        return replace(one, ticked=tuple(dict.fromkeys(follow(name) for name in one.ticked)))

    log = tuple(entry(one) for one in project.log)
    return project if log == project.log else replace(project, log=log)


def _with_places(
    book: Book, at: ModelAt, part: Callable[[Part], Part], follow: Callable[[str], str]
) -> Book:
    def change(model: Model) -> Model:
        steps = tuple(references(step, lambda name: (follow(name),)) for step in model.steps)
        return replace(model, parts=tuple(part(one) for one in model.parts), steps=steps)

    return with_model(book, at, change, lambda project: follow_ticks(project, at.model, follow))


def _facts(project: Project, where: Where) -> Project:
    """Return the project with all that names steps naming them as ``where`` says."""

    def moved(one: Fact) -> Fact:
        model, step = where(one.model, one.step)
        return one if (model, step) == (one.model, one.step) else _at(one, model, step)

    def pin(one: Pin) -> Pin:
        model, step = where(one.model, one.step)
        beside = "/".join(where(*one.beside.split("/", 1))) if one.beside else None
        return replace(one, model=model, step=step, beside=beside)

    return replace(
        project,
        pins=tuple(pin(one) for one in project.pins),
        log=tuple(moved(one) for one in project.log),
        observed=tuple(moved(one) for one in project.observed),
        diary=tuple(moved(one) for one in project.diary),
    )


def _at(fact: Fact, model: str, step: str) -> Fact:
    return replace(fact, model=model, step=step)
