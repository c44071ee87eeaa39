"""``import`` of what is no exchange file: own paints, a logger's air, a project with photos."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path
from zoneinfo import ZoneInfo

from app.command_line.book_source import in_file, read_file
from app.command_line.output import FINE, answer, note
from app.service.air_from_log import Taken, take_air
from app.service.air_log import AirLog, LogFormat, read_air_log
from app.service.books import open_book, starter_book, usual_path
from app.service.clock import current_minute, local_zone
from app.service.own_paints import are_paints, read_paints, with_paints
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.refusal import Refused


def add_table_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what goes with a logger's table."""
    parser.add_argument("--location", default="", metavar="NAME", help="where the logger lay")
    parser.add_argument("--zone", metavar="ZONE", help="its time zone, where it gives no offset")
    unit = parser.add_mutually_exclusive_group()
    unit.add_argument("--fahrenheit", action="store_true", default=None, help="it measured °F")
    unit.add_argument("--celsius", action="store_false", dest="fahrenheit", help="it measured °C")
    order = parser.add_mutually_exclusive_group()
    order.add_argument(
        "--day-first", action="store_true", default=None, help="05/03 is the fifth of March"
    )
    order.add_argument(
        "--month-first", action="store_false", dest="day_first", help="05/03 is the third of May"
    )


def take_table(args: argparse.Namespace) -> int:
    """Take a table in: paints where it names kinds and colours, else a logger's air."""
    data = read_file(args.file)
    chosen: Path | None = getattr(args, "book", None)
    try:
        if are_paints(data):
            return _paints(args, chosen, data)
        return _air(args, chosen, data)
    except Refused as problem:
        if problem.place.startswith("--"):
            raise
        raise in_file(args.file, problem) from problem


def _paints(args: argparse.Namespace, chosen: Path | None, data: bytes) -> int:
    paints = read_paints(data)
    lines = [f"{paint.name}: {paint.in_stock_ml:g} ml" for paint in paints]
    if not args.dry_run:
        with open_book(chosen, create=True) as bench:
            edit = with_paints(bench.book(), paints)
            bench.apply(edit.name, edit.book)
    answer("\n".join(lines))
    return FINE


def _air(args: argparse.Namespace, chosen: Path | None, data: bytes) -> int:
    book = _book(chosen)
    log = read_air_log(data, LogFormat(_zone(args, book), args.fahrenheit, args.day_first))
    taken = take_air(book, log, args.location, now=current_minute())
    zone = zone_named(book.bench_time.zone)
    for gap in log.gaps:
        start, end = (moment_of(minute, zone) for minute in (gap.start, gap.end))
        note(f"a gap: {start:%Y-%m-%d %H:%M} to {end:%Y-%m-%d %H:%M}")
    if not args.dry_run:
        with open_book(chosen, create=True) as bench:
            taken = take_air(bench.book(), log, args.location, now=current_minute())
            bench.apply(taken.edit.name, taken.edit.book)
    answer("\n".join(_told(log, taken, zone)))
    return FINE


def _zone(args: argparse.Namespace, book: Book) -> ZoneInfo:
    if args.zone is None:
        return zone_named(book.bench_time.zone)
    try:
        return zone_named(args.zone)
    except Refused as problem:
        raise Refused("--zone", problem.mend) from problem


def _book(chosen: Path | None) -> Book:
    if not (chosen or usual_path()).exists():
        return starter_book(local_zone(), date.today())  # noqa: DTZ011 - a local evening
    with open_book(chosen) as bench:
        return bench.book()


def _told(log: AirLog, taken: Taken, zone: ZoneInfo) -> list[str]:
    first, last = (moment_of(one.minute, zone) for one in (log.samples[0], log.samples[-1]))
    unit = "°F" if log.fahrenheit else "°C"
    lines = [
        f"{len(log.samples)} moments, {first:%Y-%m-%d %H:%M} to {last:%Y-%m-%d %H:%M}, "
        f"every {log.every} min, in {unit}",
        "the usual day: {:g} °C, {:g} % RH (before: {:g} °C, {:g} %)".format(
            *taken.becomes, *taken.was
        ),
        f"readings kept while films dried: {taken.readings}, in the place of {taken.replaced}",
    ]
    for moved in taken.moved:
        when = [
            "never" if minute is None else f"{moment_of(minute, zone):%Y-%m-%d %H:%M}"
            for minute in (moved.before, moved.after)
        ]
        lines.append(
            f"{moved.key.model}, {moved.place}: dry to handle {when[1]} (before: {when[0]})"
        )
    return lines
