"""What stands on a bench sheet: the run sheets of the evenings, for paper on the wall."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, fields, replace
from typing import Any
from zoneinfo import ZoneInfo

from app.service import paper, words
from app.service.beside_text import look_lines, trait_lines
from app.service.shopping import load_text
from app.service.tame import tame
from planner.evening.looks import looks_to_come
from planner.quantity import Load
from planner.tonight import BenchRow, Row, RunSheet, WorkRow, run_sheet, run_sheets
from planner.values.book import Book
from planner.values.moment import Interval, zone_named
from planner.values.plan import Cause, Plan
from planner.values.said import Translate, say

# What is worth paper: that hands are busy until then can be seen from the row before.
TOLD = frozenset(Cause) - {Cause.AT_ONCE, Cause.HANDS, Cause.BENCH_TIME, Cause.ORDER, Cause.LOGGED}


@dataclass(frozen=True)
class Laid:
    """One coating that an entry lays: its colour as "#rrggbb", and what is said of it."""

    swatch: str
    text: str


@dataclass(frozen=True)
class Entry:
    """One thing to do, with the places to tick off under their parts."""

    at: str
    minutes: int
    title: str
    work: bool
    laid: tuple[Laid, ...] = ()
    places: tuple[tuple[str, tuple[str, ...]], ...] = ()
    waits: str = ""


@dataclass(frozen=True)
class Section:
    """Lines under a heading: what dries, what closes, where to take care."""

    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True)
class Evening:
    """One stretch of bench time."""

    interval: Interval
    title: str
    entries: tuple[Entry, ...]
    sections: tuple[Section, ...]


@dataclass(frozen=True)
class BenchSheet:
    """The whole sheet."""

    title: str
    lines: tuple[str, ...]
    evenings: tuple[Evening, ...]


def bench_sheet(
    book: Book, plan: Plan, now: int, *, tonight: bool = False, translate: Translate = str
) -> BenchSheet:
    """Return the sheet of every evening from ``now`` on, or of tonight's alone, in a language.

    Tonight is the stretch in which ``now`` lies, or the next one.
    """
    zone = zone_named(book.bench_time.zone)
    sheets = (run_sheet(book, plan, now),) if tonight else run_sheets(book, plan, now)
    names = [project.name for project in book.projects if project.active]
    day, time = words.day(now, zone), words.clock_time(now, zone)
    lines = [say("Planned {day} at {time}", day=day, time=time), *paper.finish_lines(plan, book)]
    if not any(sheet.rows for sheet in sheets):
        lines.append(paper.NOTHING)
    sheet = BenchSheet(
        title=", ".join(names) or say("Bench sheet"),
        lines=tuple(lines),
        evenings=tuple(_evening(sheet, book, zone) for sheet in sheets),
    )
    spoken: BenchSheet = _spoken(sheet, translate)
    return spoken


def _evening(sheet: RunSheet, book: Book, zone: ZoneInfo) -> Evening:
    left = paper.drying_lines(sheet.drying_after, sheet.interval.end, zone)
    sections = (
        (say("Drying now"), paper.drying_lines(sheet.drying_now, sheet.now, zone)),
        (say("Left to dry"), left),
        (say("Closing"), paper.closing_lines(sheet.closing, sheet.now, zone)),
        (say("Have a look"), look_lines(looks_to_come(sheet.rows), sheet.now, zone)),
        (say("Marks"), trait_lines(sheet, None, zone)),
        (say("Take care"), paper.caution_lines(sheet)),
    )
    return Evening(
        interval=sheet.interval,
        title=paper.stretch_title(sheet.interval, zone),
        entries=tuple(_entry(row, zone) for row in sheet.rows),
        sections=tuple(made for title, lines in sections if (made := _section(title, lines)).lines),
    )


def _section(title: str, lines: Iterable[str]) -> Section:
    return Section(title, tuple(lines))


def _entry(row: Row, zone: ZoneInfo) -> Entry:
    at = words.clock_time(row.start, zone)
    if isinstance(row, BenchRow):
        said = _amounts(paper.mix_text(row.portions), row.load)
        laid = tuple(Laid("" if at else row.swatch, text) for at, text in enumerate(said))
        return Entry(at, row.minutes, paper.bench_text(row), False, laid)
    return Entry(
        at=at,
        minutes=row.minutes,
        title=paper.work_title(row),
        work=True,
        laid=tuple(_laid(row, zone)),
        places=tuple((part, tuple(names)) for part, names in paper.by_part(row.places).items()),
        waits=words.reasons_text(row.reason, zone) if row.reason.cause in TOLD else "",
    )


def _laid(row: WorkRow, zone: ZoneInfo) -> Iterator[Laid]:
    if row.goes_alone:
        yield Laid("", paper.alone_text(row, zone))
    for coat in row.coats:
        yield Laid(coat.swatch, paper.coat_text(coat, row))
        for text in _amounts("", coat.load if row.piece == 1 else None):
            yield Laid("", text)


def _amounts(mixed: str, load: Load | None) -> list[str]:
    """Return the parts of a mix, and how much of each in drops."""
    said: list[str] = [say("parts {mix}", mix=mixed)] if mixed else []
    return [*said, load_text(load)] if load else said


def _spoken(one: Any, translate: Translate) -> Any:
    """Return a piece of the sheet with each text in a language, tame and on one line."""
    if isinstance(one, str):
        return _line(translate(one))
    if isinstance(one, tuple):
        return tuple(_spoken(each, translate) for each in one)
    if not isinstance(one, BenchSheet | Evening | Section | Entry | Laid):
        return one
    told = {each.name: _spoken(getattr(one, each.name), translate) for each in fields(one)}
    if isinstance(one, Entry) and not one.work:
        told["title"] = _capital(told["title"])
    return replace(one, **told)


def _line(text: str) -> str:
    """Return one line of tame text, its blanks single."""
    return " ".join(tame(text, lines=False).split())


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
