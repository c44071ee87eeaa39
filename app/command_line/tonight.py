"""What to do at the bench tonight, what is drying, what closes."""

from __future__ import annotations

import argparse
from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.book_source import (
    add_json,
    add_now,
    add_source,
    book_of,
    note_of_log,
    now_of,
)
from app.command_line.output import FINE, answer, document, iso, note, progress
from app.command_line.plan_source import planned_for
from app.command_line.run_sheet_notes import beside_document, gap_document, key_fields
from app.service import drying_cards, edits, run_sheet_text, wording
from app.service.logbook import cups_now
from app.service.run_sheet_notes_text import air_text, beside_text, card_text, gaps_text
from app.service.shopping import load_document
from planner.air import fitness
from planner.evening.advice import InAir, in_air
from planner.evening.gaps import gaps
from planner.evening.run_sheet_notes import beside
from planner.pace.card_times import CardAsk
from planner.tonight import (
    BenchRow,
    Closing,
    DryingFilm,
    Row,
    RunSheet,
    SheetCoat,
    WorkRow,
    run_sheet,
)
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.mix import Portion
from planner.values.moment import Interval, zone_named
from planner.values.plan import PassKey

EXAMPLES = """\
  tackfree tonight                          your bench book, this evening or the next
  tackfree tonight --minutes 40             you have 40 minutes, from now
  tackfree tonight harbour.json --now 2031-03-05T19:30
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    parser.add_argument("--minutes", type=int, metavar="N", help="have N minutes, from now")
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print the run sheet."""
    book = book_of(args)
    now = now_of(args, book)
    if args.minutes is not None:
        book = edits.only_minutes(book, now, args.minutes).book
    with progress("planning"):
        planned = planned_for(args, book, now)
    sheet = run_sheet(book, planned.plan, now, args.minutes)
    found = beside(book, planned.plan, sheet)
    air = in_air(book, [row for row in sheet.work if not row.logged])
    cards = drying_cards.asked_within(book, now, sheet.interval)
    zone = zone_named(book.bench_time.zone)
    laid = ReplayedPlan(book, planned.plan, now, planned.calendar, planned.cure)
    free = gaps(laid)
    note_of_log(args, book)
    for flag in planned.verdict.flags:
        note(flag)
    if args.json:
        cups = {
            name: {"coating": held.coating, "since": iso(held.since, zone)}
            for name, held in cups_now(book, now).items()
        }
        told = {**sheet_document(sheet, zone), "cups": cups, **beside_document(found, zone)}
        asks = [_ask(ask, zone) for ask in cards]
        told["gaps"] = [gap_document(gap, zone) for gap in free]
        document({**told, "air": [_air(in_air, zone) for in_air in air], "cards": asks})
    else:
        parts = (
            run_sheet_text.run_sheet_text(sheet, book),
            air_text(air, zone),
            card_text(cards, zone),
            beside_text(found, sheet, zone),
            gaps_text(free, zone),
        )
        answer("\n\n".join(filter(None, parts)))
    return FINE


def sheet_document(sheet: RunSheet, zone: ZoneInfo) -> dict[str, Any]:
    """Return a run sheet as JSON data."""
    return {
        "now": iso(sheet.now, zone),
        "evening": sheet.on.isoformat(),
        **_interval(sheet.interval, zone),
        "rows": [_row(row, zone) for row in sheet.rows],
        "drying": [_drying(film, zone) for film in sheet.drying],
        "closing": [_closing(closing, zone) for closing in sheet.closing],
        "next": None
        if sheet.next_interval is None
        else {
            **_interval(sheet.next_interval, zone),
            "rows": [_row(row, zone) for row in sheet.next_opens],
        },
    }


def _ask(ask: CardAsk, zone: ZoneInfo) -> dict[str, Any]:
    return {"at": iso(ask.at, zone), "coating": ask.card.coating, "trial": ask.trial.value}


def _air(in_air: InAir, zone: ZoneInfo) -> dict[str, Any]:
    return {
        "at": iso(in_air.at, zone),
        "coating": in_air.coating,
        "fitness": fitness(in_air.reasons).value,
        "reasons": [{"text": each.reason, "source": each.source} for each in in_air.reasons],
    }


def _row(row: Row, zone: ZoneInfo) -> dict[str, Any]:
    times = {
        "start": iso(row.start, zone),
        "end": iso(row.end, zone),
        "hands_free": iso(row.free, zone),
        "minutes": row.minutes,
    }
    if isinstance(row, BenchRow):
        return {
            "kind": row.kind.value,
            **times,
            "airbrush": row.airbrush,
            "coating": row.coating,
            "mix": _mix(row.portions),
            "serves": _key(row.serves),
            "fill": load_document(row.load) if row.load else None,
        }
    return {"kind": "work", **times, **_work(row, zone)}


def _work(row: WorkRow, zone: ZoneInfo) -> dict[str, Any]:
    return {
        **key_fields(row.key),
        "stage": row.stage.value,
        "title": row.title,
        "parts": list(row.parts),
        "places": list(row.places),
        "coats": [_coat(coat) for coat in row.coats],
        "tool": row.tool.value,
        "airbrush": row.airbrush,
        "piece": row.piece,
        "pieces": row.pieces,
        "logged": row.logged,
        "marks": [trait.value for trait in row.traits],
        "look_in": row.look_in,
        "reason": wording.reasons_text(row.reason, zone),
        "cautions": [{"text": caution.text, "source": caution.source} for caution in row.cautions],
    }


def _coat(coat: SheetCoat) -> dict[str, Any]:
    return {
        "coating": coat.coating,
        "swatch": coat.swatch,
        "mix": _mix(coat.portions),
        "places": list(coat.places),
        "put_out": load_document(coat.load) if coat.load else None,
    }


def _mix(portions: tuple[Portion, ...]) -> list[dict[str, Any]]:
    return [{"coating": portion.coating, "parts": portion.parts} for portion in portions]


def _drying(film: DryingFilm, zone: ZoneInfo) -> dict[str, Any]:
    return {
        **key_fields(film.key),
        "coating": film.coating,
        "places": list(film.places),
        "state": film.state.value if film.state else None,
        "since": iso(film.since, zone),
        "opens": iso(film.opens, zone),
        "for": _key(film.waiting),
    }


def _closing(closing: Closing, zone: ZoneInfo) -> dict[str, Any]:
    return {
        **key_fields(closing.waiting),
        "must": closing.bound.value,
        "closes": iso(closing.closes, zone),
        "planned": iso(closing.planned, zone),
        "after": _key(closing.key),
        "since": iso(closing.since, zone),
        "why": closing.why,
    }


def _interval(interval: Interval, zone: ZoneInfo) -> dict[str, Any]:
    return {"start": iso(interval.start, zone), "end": iso(interval.end, zone)}


def _key(key: PassKey | None) -> dict[str, Any] | None:
    return key_fields(key) if key else None
