"""What stands on a bench sheet: the run sheets of the evenings, for paper on the wall."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, fields, replace
from typing import Any
from zoneinfo import ZoneInfo

from app.service import run_sheet_text, wording
from app.service.run_sheet_notes_text import look_lines, trait_lines
from app.service.sanitize_text import tame
from app.service.shopping import load_text
from planner.cautions import LAST_WORD
from planner.evening.looks import looks_to_come
from planner.quantity import Load
from planner.tonight import (
    BenchRow,
    LoadCard,
    Row,
    RunSheet,
    WorkRow,
    cards_of,
    run_sheet,
    run_sheets,
)
from planner.values.book import Book
from planner.values.message import Translate, message, told
from planner.values.message import row as row_of
from planner.values.moment import Interval, zone_named
from planner.values.plan import Cause, Plan

# What is worth paper: that hands are busy until then can be seen from the row before.
TOLD = frozenset(Cause) - {Cause.AT_ONCE, Cause.HANDS, Cause.BENCH_TIME, Cause.ORDER, Cause.LOGGED}

A_DAY = 24 * 60  # minutes


@dataclass(frozen=True)
class LaidCoating:
    """One coating that an entry lays: its colour as "#rrggbb", and what is said of it."""

    swatch: str
    text: str


@dataclass(frozen=True)
class SheetEntry:
    """One thing to do, or one card of an evening, with what is to tick off under its name.

    ``brief`` ones take one line.
    """

    at: str
    minutes: int
    title: str
    work: bool
    laid: tuple[LaidCoating, ...] = ()
    places: tuple[tuple[str, tuple[str, ...]], ...] = ()
    waits: str = ""
    brief: bool = False


@dataclass(frozen=True)
class Section:
    """Lines under a heading: what dries, what closes, where to take care."""

    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True)
class SheetEvening:
    """One stretch of bench time."""

    interval: Interval
    title: str
    entries: tuple[SheetEntry, ...]
    sections: tuple[Section, ...]


@dataclass(frozen=True)
class BenchSheet:
    """The whole sheet."""

    title: str
    lines: tuple[str, ...]
    evenings: tuple[SheetEvening, ...]


def bench_sheet(
    book: Book, plan: Plan, now: int, *, tonight: bool = False, translate: Translate = str
) -> BenchSheet:
    """Return the sheet of every evening from ``now`` on, or of tonight's alone, in a language.

    Tonight is the stretch in which ``now`` lies, or the next one; it goes by loads, with
    boxes for every model.  All evenings together have one line for each job.
    """
    zone = zone_named(book.bench_time.zone)
    sheets = (run_sheet(book, plan, now),) if tonight else run_sheets(book, plan, now)
    names = [project.name for project in book.projects if project.active]
    day, time = wording.day(now, zone), wording.clock_time(now, zone)
    lines = [
        message("Planned {day} at {time}", day=day, time=time),
        *run_sheet_text.finish_lines(plan, book),
    ]
    if not any(sheet.rows for sheet in sheets):
        lines.append(run_sheet_text.NOTHING)
    sheet = BenchSheet(
        title=", ".join(names) or message("Bench sheet"),
        lines=tuple(lines),
        evenings=(
            tuple(_tonight(sheet, zone) for sheet in sheets)
            if tonight
            else tuple(_briefly(sheets, zone))
        ),
    )
    spoken: BenchSheet = _spoken(sheet, translate)
    return spoken


def _briefly(sheets: tuple[RunSheet, ...], zone: ZoneInfo) -> Iterator[SheetEvening]:
    """Yield the evenings with one line a job, and what to take care of once, behind them all."""
    cautions = dict.fromkeys(
        line for sheet in sheets for line in run_sheet_text.caution_lines(sheet)
    )
    last_word = told(LAST_WORD)
    texts = [line for line in cautions if line != last_word]
    care = _section(message("Take care"), [*texts, last_word] if texts else [])
    for sheet in sheets:
        yield SheetEvening(
            interval=sheet.interval,
            title=run_sheet_text.stretch_title(sheet.interval, zone),
            entries=tuple(_brief(row, zone) for row in sheet.rows),
            sections=(care,) if care.lines and sheet is sheets[-1] else (),
        )


def _brief(row: Row, zone: ZoneInfo) -> SheetEntry:
    at = wording.clock_time(row.start, zone)
    if isinstance(row, BenchRow):
        said = [
            run_sheet_text.bench_text(row),
            *_amounts(run_sheet_text.mix_text(row.portions), row.load),
        ]
        return SheetEntry(at, row.minutes, row_of(said, "; "), False, brief=True)
    coats = [run_sheet_text.coat_text(coat, row) for coat in row.coats if not row.airbrush]
    title = row_of((run_sheet_text.work_title(row), *coats), "; ")
    return SheetEntry(at, row.minutes, title, True, brief=True)


def _tonight(sheet: RunSheet, zone: ZoneInfo) -> SheetEvening:
    soon = sheet.interval.end + A_DAY  # what opens later is told on its own evening
    after = [film for film in sheet.drying_after if film.opens is None or film.opens < soon]
    left = run_sheet_text.drying_lines(after, sheet.interval.end, zone)
    sections = (
        (message("Drying now"), run_sheet_text.drying_lines(sheet.drying_now, sheet.now, zone)),
        (message("Left to dry"), left),
        (message("Closing"), run_sheet_text.closing_lines(sheet.closing, sheet.now, zone)),
        (message("Have a look"), look_lines(looks_to_come(sheet.rows), sheet.now, zone)),
        (message("Marks"), trait_lines(sheet, None, zone)),
        (message("Take care"), run_sheet_text.caution_lines(sheet)),
    )
    return SheetEvening(
        interval=sheet.interval,
        title=run_sheet_text.stretch_title(sheet.interval, zone),
        entries=tuple(_evening_entries(sheet, zone)),
        sections=tuple(made for title, lines in sections if (made := _section(title, lines)).lines),
    )


def _section(title: str, lines: Iterable[str]) -> Section:
    return Section(title, tuple(lines))


def _evening_entries(sheet: RunSheet, zone: ZoneInfo) -> Iterator[SheetEntry]:
    """Yield the cards; set-up other than a filling has a line of its own to tick."""
    cards = cards_of(sheet.rows)
    filled = {card.filling for card in cards}
    rest = [row for row in sheet.rows if isinstance(row, BenchRow) and row not in filled]
    made = [(_begins(card).start, _card(card, zone)) for card in cards]
    made += [(row.start, _brief(row, zone)) for row in rest]
    for _, entry in sorted(made, key=lambda timed: timed[0]):
        yield entry


def _begins(card: LoadCard) -> Row:
    return card.filling or card.rows[0]


def _card(card: LoadCard, zone: ZoneInfo) -> SheetEntry:
    filling = card.filling
    if filling is not None:
        title: str = run_sheet_text.bench_text(filling)
        said = _amounts(run_sheet_text.mix_text(filling.portions), filling.load)
        laid = tuple(LaidCoating("" if at else card.swatch, text) for at, text in enumerate(said))
    else:
        title = run_sheet_text.card_work(card)
        laid = tuple(_laid(card, zone))
    waits = dict.fromkeys(
        wording.reasons_text(row.reason, zone)
        for row in card.rows
        if filling is None and row.reason.cause in TOLD
    )
    named = filling is not None or run_sheet_text.differ(card)
    return SheetEntry(
        at=wording.clock_time(_begins(card).start, zone),
        minutes=sum(row.free - row.start for row in (filling, *card.rows) if row is not None),
        title=title,
        work=True,
        laid=laid,
        places=tuple(_ticks(row, with_work=named) for row in card.rows),
        waits="" if len(waits) > 1 else next(iter(waits), ""),
    )


def _ticks(row: WorkRow, *, with_work: bool) -> tuple[str, tuple[str, ...]]:
    """Return who gets it, and the boxes: one a place, or one a part where there are several."""
    name: str = row.key.model
    if with_work:
        name = message("{model}, {work}", model=name, work=row.stage)
    if row.key.coat > 1:
        name = message("{work}, coat {coat}", work=name, coat=row.key.coat)
    if row.pieces > 1:
        name = message(
            "{work} (piece {piece} of {pieces})", work=name, piece=row.piece, pieces=row.pieces
        )
    if row.logged:
        name = message("{work} (logged)", work=name)
    parts = run_sheet_text.by_part(row.places)
    if len(parts) > 1:
        return name, tuple(parts)
    return name, tuple(names for each in parts.values() for names in each)


def _laid(card: LoadCard, zone: ZoneInfo) -> Iterator[LaidCoating]:
    """Yield what is laid by hand, and how much of it is put out for whom."""
    first = card.rows[0]
    for row in card.rows:
        if row.goes_alone:
            yield LaidCoating("", run_sheet_text.alone_text(row, zone))
    for coat in first.coats:
        yield LaidCoating(coat.swatch, run_sheet_text.coat_text(coat, first))
        for text in run_sheet_text.put_out(card, coat.coating):
            yield LaidCoating("", text)


def _amounts(mixed: str, load: Load | None) -> list[str]:
    """Return the parts of a mix, and how much of each in drops."""
    said: list[str] = [message("parts {mix}", mix=mixed)] if mixed else []
    return [*said, load_text(load)] if load else said


def _spoken(coating: Any, translate: Translate) -> Any:
    """Return a piece of the sheet with each text in a language, tame and on one line."""
    if isinstance(coating, str):
        return _line(translate(coating))
    if isinstance(coating, tuple):
        return tuple(_spoken(each, translate) for each in coating)
    if not isinstance(coating, BenchSheet | SheetEvening | Section | SheetEntry | LaidCoating):
        return coating
    told = {each.name: _spoken(getattr(coating, each.name), translate) for each in fields(coating)}
    if isinstance(coating, SheetEntry) and not coating.work:
        told["title"] = _capital(told["title"])
    return replace(coating, **told)


def _line(text: str) -> str:
    """Return one line of tame text, its blanks single."""
    return " ".join(tame(text, lines=False).split())


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
