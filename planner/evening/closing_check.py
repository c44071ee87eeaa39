"""The closing check: what to look at before the light goes out, and when to begin with it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.cautions import oily
from planner.cure import Cure
from planner.evening.logged_films import laid
from planner.schedule.cups_at_start import cleaned_since
from planner.tonight import Closing, RunSheet
from planner.values.book import Book
from planner.values.moment import Interval, minute_of
from planner.values.plan import Placement

TIDY = 10  # minutes that putting away takes: common practice, no source


class CheckKind(StrEnum):
    """What is looked at."""

    WET = "wet"
    LOOSE = "loose"
    CLEAN = "clean"
    LIDS = "lids"
    RAGS = "rags"


@dataclass(frozen=True)
class Check:
    """One thing to look at: of a model or an airbrush, with the parts or the coating meant."""

    kind: CheckKind
    of: str = ""
    things: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """What it is ticked off by."""
        return f"{self.kind} {self.of}".strip()


def checks(
    book: Book,
    span: Interval,
    cups: Mapping[str, str],
    *,
    cure: Cure | None = None,
    planned: Iterable[Placement] = (),
) -> tuple[Check, ...]:
    """Return what to look at, at the end of ``span``: wet parts, loose parts, cups, lids, rags.

    Parameters
    ----------
    span
        From the beginning of the stretch to the moment of the check.
    cups
        What each airbrush holds, or held since it was cleaned last.
    planned
        Work that will have been done by then beside what is logged.
    """
    ahead = [placed for placed in planned if not placed.logged and placed.start < span.end]
    table = laid(book, span.end, cure, ahead)
    wet: dict[str, dict[str, None]] = {}
    for (_, model, place), until in table.wet.items():
        if until > span.end:
            wet.setdefault(model, {})[place.partition("/")[0]] = None
    found = [Check(CheckKind.WET, model, tuple(parts)) for model, parts in wet.items()]
    found.append(Check(CheckKind.LOOSE))
    found += [Check(CheckKind.CLEAN, name, (held,)) for name, held in sorted(cups.items()) if held]
    found.append(Check(CheckKind.LIDS))
    if _oily(book, span, ahead):
        found.append(Check(CheckKind.RAGS))
    return tuple(found)


def closing_before(sheet: RunSheet, until: int) -> tuple[Closing, ...]:
    """Return the windows that close by ``until``, when there is bench time again."""
    return tuple(closing for closing in sheet.closing if closing.closes <= until)


def tidy_from(sheet: RunSheet) -> int:
    """Return the minute at which to begin putting away, so that it ends with the stretch."""
    return max(sheet.interval.start, sheet.interval.end - TIDY)


def cups_used(planned: Iterable[Placement], book: Book, span: Interval) -> dict[str, str]:
    """Return what each airbrush sprayed last in ``span``, by the facts and plans given.

    What was cleaned away since, by the logbook, is not in it any more.
    """
    steps = {
        (project.name, model.name, step.id): step
        for project in book.projects
        for model in project.models
        for step in model.steps
    }
    cups: dict[str, str] = {}
    for placed in sorted(planned, key=lambda placed: placed.start):
        step = steps.get((placed.key.project, placed.key.model, placed.key.step))
        if placed.logged and cleaned_since(book, placed.airbrush, placed.end):
            continue
        if placed.airbrush and step is not None and span.start <= placed.start < span.end:
            cups[placed.airbrush] = step.applications[0].coating
    return cups


def _oily(book: Book, span: Interval, ahead: Iterable[Placement]) -> bool:
    """Tell whether drying oil was or will be laid or wiped in ``span``."""
    worked = {placed.key[:3] for placed in ahead if placed.end > span.start}
    for project in book.projects:
        for entry in project.log:
            if span.start <= minute_of(entry.start, up=False) <= span.end:
                worked.add((project.name, entry.model, entry.step))
    return any(
        oily(book, step)
        for project in book.projects
        for model in project.models
        for step in model.steps
        if (project.name, model.name, step.id) in worked
    )
