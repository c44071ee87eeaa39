"""Holders: which part stands on one, from when to when, and how many are needed at once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.passes import Pass, Unit, expand_all
from planner.values.book import Book
from planner.values.plan import Plan


@dataclass(frozen=True)
class HolderUse:
    """One part on its holder.

    ``since`` is the start of the first work on it, ``until`` the end of the last, or of the
    join after which another holder carries it; both None where nothing of it is in the plan.
    """

    project: str
    model: str
    part: str
    holder: str
    since: int | None
    until: int | None


@dataclass(frozen=True)
class AtOnce:
    """The most holders of one kind that are in use together, and from which minute on."""

    holder: str
    count: int
    at: int | None


def held(book: Book, plan: Plan | None) -> tuple[HolderUse, ...]:
    """Return every part of the active projects that has a holder, in the order of the book."""
    times = _times(book, plan)
    return tuple(
        HolderUse(
            project.name,
            model.name,
            part.name,
            part.holder,
            *times.get((project.name, model.name, part.name), (None, None)),
        )
        for project in book.projects
        if project.active
        for model in project.models
        for part in model.parts
        if part.holder
    )


def most_at_once(every: Iterable[HolderUse]) -> tuple[AtOnce, ...]:
    """Return how many of each kind of holder are needed together, kinds by name."""
    kinds: dict[str, list[HolderUse]] = {}
    for use in every:
        kinds.setdefault(use.holder, []).append(use)
    return tuple(_most(name, kinds[name]) for name in sorted(kinds, key=str.casefold))


def _most(holder: str, every: list[HolderUse]) -> AtOnce:
    changes = sorted(
        (minute, by)
        for use in every
        for minute, by in ((use.since, 1), (use.until, -1))
        if minute is not None
    )
    now, most, at = 0, 0, None
    for minute, by in changes:  # what is let go of comes before what is taken at that minute
        now += by
        if now > most:
            most, at = now, minute
    return AtOnce(holder, most, at)


def _times(book: Book, plan: Plan | None) -> dict[tuple[str, str, str], tuple[int, int]]:
    """Return when each part with a holder is worked on, until another holder carries it."""
    placed = {placement.key: placement for placement in plan.placements} if plan is not None else {}
    firsts: dict[tuple[str, str, str], int] = {}
    lasts: dict[tuple[str, str, str], int] = {}
    let_go: set[tuple[str, str, str]] = set()
    for pass_ in expand_all(book):
        placement = placed.get(pass_.key)
        if placement is None:
            continue
        project, model = pass_.key.project, pass_.key.model
        for part in {part for unit in pass_.units for part in unit.parts}:
            key = (project, model, part)
            if key in let_go:
                continue
            firsts[key] = min(placement.start, firsts.get(key, placement.start))
            lasts[key] = max(placement.end, lasts.get(key, placement.end))
        let_go |= {(project, model, part) for part in _freed(pass_, book)}
    return {key: (firsts[key], lasts[key]) for key in firsts}


def _freed(pass_: Pass, book: Book) -> set[str]:
    """Return the parts whose holders a join sets free: all but the first one's that has one."""
    if pass_.unit_after is None:
        return set()
    model = book.project(pass_.key.project).model(pass_.key.model)
    on_one = {part.name for part in model.parts if part.holder}
    carriers: list[Unit] = [unit for unit in pass_.units if unit.holder]
    return {part for unit in carriers[1:] for part in unit.parts if part in on_one}
