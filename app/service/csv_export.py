"""Plan, logbook and shopping as comma-separated values."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from app.service import wording
from app.service.sanitize_text import tame
from planner.bench import BenchCalendar
from planner.passes import Pass, expand_all
from planner.quantity import ConsumableLine, RunsOut, ShoppingLine, shopping
from planner.values.book import Book
from planner.values.message import Message, Translate, message, row
from planner.values.moment import Interval, moment_of
from planner.values.plan import BenchWork, PassKey, Placement, Plan
from planner.values.project import Logged, Project
from planner.values.step import Step

COLUMNS = (
    message("start"),
    message("end"),
    message("minutes"),
    message("evening"),
    message("kind"),
    message("project"),
    message("model"),
    message("step"),
    message("coat"),
    message("title"),
    message("places"),
    message("coating"),
    message("tool"),
    message("reason"),
)
LOG_COLUMNS = (
    message("start"),
    message("end"),
    message("minutes"),
    message("planned"),
    message("project"),
    message("model"),
    message("step"),
    message("coat"),
    message("kind"),
    message("title"),
    message("temperature_c"),
    message("humidity_pct"),
    message("used"),
    message("note"),
    message("photos"),
    message("airbrush"),
)
SHOPPING_COLUMNS = (
    message("what"),
    message("name"),
    message("needed"),
    message("in_stock"),
    message("buy"),
    message("unit"),
    message("bottles"),
    message("bottle_ml"),
    message("runs_out"),
    message("runs_out_at"),
    message("note"),
)
# What makes a spreadsheet calculate a cell (OWASP, CSV Injection), full-width forms included.
FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
Cell = str | int | float | None


@dataclass(frozen=True)
class Marks:
    """What stands between cells, and before fractions.

    RFC 4180 knows commas between cells and says nothing of fractions.
    Spreadsheets read both by the language of whoever opens the file: where
    fractions have a comma, cells are parted by semicolons (what they do; no
    standard says so).
    """

    cell: str = ","
    fraction: str = "."


POINT, COMMA = Marks(), Marks(cell=";", fraction=",")


def marks_for(fraction: str) -> Marks:
    """Return what goes with the sign that a language puts before fractions."""
    return COMMA if fraction == COMMA.fraction else POINT


def csv_bytes(plan: Plan, book: Book, *, translate: Translate = str, marks: Marks = POINT) -> bytes:
    """Return the plan as CSV (RFC 4180, UTF-8), one row for each piece of work.

    A cell that a spreadsheet would take for a formula gets an apostrophe.
    Times (ISO 8601) are written alike in every language.
    """
    rows = sorted([*_work(plan, book), *_bench(plan, book)], key=lambda cells: cells[:2])
    return _written(COLUMNS, rows, translate, marks)


def log_bytes(
    book: Book, only: str = "", *, translate: Translate = str, marks: Marks = POINT
) -> bytes:
    """Return the logbook as CSV, the oldest entry first; ``only`` names a project."""
    rows = [
        _fact(project, fact)
        for project in book.projects
        if only in ("", project.name)
        for fact in project.log
    ]
    zone = BenchCalendar(book.bench_time).zone
    return _written(
        LOG_COLUMNS,
        (
            [*(_local(at, zone) for at in cells[:2]), *cells[2:]]
            for cells in sorted(rows, key=lambda cells: (cells[0], cells[4:8]))
        ),
        translate,
        marks,
    )


def shopping_bytes(
    book: Book, plan: Plan, now: int, *, translate: Translate = str, marks: Marks = POINT
) -> bytes:
    """Return what the work ahead takes of coatings and consumables, and what to buy, as CSV."""
    zone = BenchCalendar(book.bench_time).zone
    found = shopping(book, plan, now)
    return _written(
        SHOPPING_COLUMNS,
        [
            *(_coating(line, zone) for line in found.lines),
            *(_consumable(line, zone) for line in found.consumables),
            *([message("at hand"), name, *[None] * 9] for name in found.at_hand),
        ],
        translate,
        marks,
    )


def _coating(line: ShoppingLine, zone: ZoneInfo) -> list[Cell]:
    return [
        message("coating"),
        line.coating.name,
        round(line.needed_ml, 1),
        round(line.stock_ml, 1),
        round(line.buy_ml, 1),
        "ml",
        line.bottles,
        line.coating.bottle_ml,
        *_out(line.runs_out, zone),
        "" if line.complete else message("at least: a place has no area"),
    ]


def _consumable(line: ConsumableLine, zone: ZoneInfo) -> list[Cell]:
    needed, stock, buy = (round(other, 2) for other in (line.needed, line.stock, line.buy))
    return [
        *(message("consumable"), line.name, needed, stock, buy, line.unit, None, None),
        *_out(line.runs_out, zone),
        "",
    ]


def _out(runs_out: RunsOut | None, zone: ZoneInfo) -> list[Cell]:
    if runs_out is None:
        return ["", ""]
    at = "" if runs_out.at is None else moment_of(runs_out.at, zone).isoformat()
    return [at, wording.pass_name(runs_out.key)]


def _written(
    columns: Sequence[str], rows: Iterable[Sequence[Cell]], translate: Translate, marks: Marks
) -> bytes:
    def told(cell: Cell) -> Cell:
        if isinstance(cell, str):
            return disarmed(translate(cell))
        return str(cell).replace(".", marks.fraction) if isinstance(cell, float) else cell

    text = io.StringIO(newline="")
    writer = csv.writer(text, delimiter=marks.cell)
    writer.writerows([told(cell) for cell in cells] for cells in (columns, *rows))
    return text.getvalue().encode()


def disarmed(cell: str) -> str:
    """Return a cell's text that no spreadsheet takes for a formula."""
    plain = tame(cell)
    armed = cell.startswith(FORMULA) or plain.startswith(FORMULA)
    return f"'{plain}" if armed else plain


def _fact(project: Project, fact: Logged) -> list[Any]:
    step = next(step for step in project.model(fact.model).steps if step.id == fact.step)
    return [
        fact.start,
        fact.end,
        fact.minutes,
        fact.planned,
        project.name,
        fact.model,
        fact.step,
        fact.coat,
        row((step.stage,)),
        _title(step),
        fact.temperature_c,
        fact.humidity_pct,
        row(
            (
                message("{ml:g} ml {coating}", ml=round(used.ml, 2), coating=used.coating)
                for used in fact.used
            ),
            "; ",
        ),
        fact.note,
        "; ".join(fact.photos),
        fact.airbrush,
    ]


def _local(moment: datetime | None, zone: ZoneInfo) -> str:
    return moment.astimezone(zone).isoformat() if moment else ""


def _work(plan: Plan, book: Book) -> Iterator[list[str]]:
    calendar = BenchCalendar(book.bench_time)
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    for placed in plan.placements:
        pass_ = passes.get(placed.key)
        if pass_ is None:
            continue
        for piece in placed.pieces:
            yield [*_times(piece, calendar), *_pass(pass_, placed, calendar)]


def _pass(pass_: Pass, placed: Placement, calendar: BenchCalendar) -> list[str]:
    return [
        row((pass_.step.stage,)),
        *_key(pass_.key),
        _title(pass_.step),
        "; ".join(pass_.places),
        "; ".join(dict.fromkeys(coating for _, coating in pass_.films)),
        placed.airbrush or row((pass_.step.tool,)),
        message("logged") if placed.logged else wording.reasons_text(placed.reason, calendar.zone),
    ]


def _title(step: Step) -> Message:
    return Message("{title}", {"title": step.title})  # the program's own ones are translated


def _bench(plan: Plan, book: Book) -> Iterator[list[str]]:
    calendar = BenchCalendar(book.bench_time)
    for work in plan.bench:
        yield [*_times(work.interval, calendar), row((work.kind,)), *_set_up(work)]


def _set_up(work: BenchWork) -> list[str]:
    key = _key(work.serves) if work.serves else ["", "", "", ""]
    return [*key, "", "", work.coating, work.airbrush, ""]


def _key(key: PassKey) -> list[str]:
    return [key.project, key.model, key.step, str(key.coat)]


def _times(interval: Interval, calendar: BenchCalendar) -> list[str]:
    stretch = calendar.stretch_at(interval.start)
    start, end = (moment_of(at, calendar.zone) for at in (interval.start, interval.end))
    return [
        start.isoformat(),
        end.isoformat(),
        str(interval.minutes),
        (stretch.on if stretch else start.date()).isoformat(),
    ]
