"""Coat a scrap, try it, and let the bottle have its own drying times."""

from __future__ import annotations

import argparse
from dataclasses import replace
from typing import Any

from app.command_line.book_source import add_book, add_json
from app.command_line.log_answer import shifts
from app.command_line.output import FINE, answer, document, iso, progress
from app.service import drying_cards, pace, planning, wording
from app.service.books import open_book
from app.service.clock import current_minute, read_moment
from app.service.drying_cards import CardState, TrialTimes
from app.service.edits import Edit
from app.service.shown_plans import shown_before
from planner.pace.drying import DryingLine
from planner.values.book import Book
from planner.values.drying_card import CardTrial
from planner.values.moment import zone_named
from planner.values.plausible_dates import just_told
from planner.values.refusal import Refused, demand
from storage.bench_book import BenchBook
from storage.exchange import digest

EXAMPLES = """\
  tackfree card                               cards, what they ask and when, what they teach
  tackfree card coat "waterborne acrylic, sand"
  tackfree card try "waterborne acrylic, sand" tape --not-yet
  tackfree card try "waterborne acrylic, sand" tape --held --at 2031-03-06T19:30
  tackfree card use "waterborne acrylic, sand"   plan with the bottle's own figures
  tackfree card drop "waterborne acrylic, sand"

finger: touched lightly, no mark; thumb: pressed and twisted, nothing moves;
tape: low-tack, pulled off after a minute, no print; rub: a swab wet with the
solvent of the next wash, on the edge of the card, takes no colour
"""
DEEDS = ("list", "coat", "try", "use", "drop")


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument(
        "deed", nargs="?", choices=DEEDS, default="list", metavar="DEED", help=", ".join(DEEDS)
    )
    parser.add_argument("coating", nargs="?", metavar="COATING", help="a bottle or mix of the book")
    trials = [trial.value for trial in CardTrial]
    parser.add_argument("trial", nargs="?", choices=trials, metavar="TRIAL", help=", ".join(trials))
    told = parser.add_mutually_exclusive_group()
    told.add_argument("--held", action="store_true", help="the film stood the trial")
    told.add_argument("--not-yet", action="store_true", help="it did not yet")
    parser.add_argument("--in", dest="location", metavar="LOCATION", help="where the card dries")
    parser.add_argument(
        "--film-um", type=float, metavar="UM", help="its dry film; without it, the bottle's [µm]"
    )
    parser.add_argument("--at", metavar="T", help="when it was; without it, now")
    add_book(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Note it, then tell what the cards ask, what they teach, and what moved in the plan."""
    _fits(args)
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        now = _minute(args, book)
        edit = _edit(args, book, now)
        moved: list[str] = []
        if edit is not None:
            bench.apply(edit.name, edit.book)
        if args.deed == "use":
            moved = _moved(bench, book, now)
        after = bench.book()
    states = drying_cards.card_states(after, now)
    lines = _lessons(after, now)
    if args.json:
        document(_document(after, now, edit, states, lines, moved))
    else:
        told = [edit.name] if edit is not None else []
        told += _figures(book, after) if args.deed == "use" else []
        told += moved if moved or args.deed != "use" else ["the plan stays as it is"]
        answer("\n".join([*told, *_told(after, states, lines, now)]))
    return FINE


def _fits(args: argparse.Namespace) -> None:
    """Refuse what does not go with the deed."""
    demand(
        (args.coating is not None) == (args.deed != "list"),
        "COATING",
        "goes with coat, try, use and drop, and each needs one",
    )
    demand(
        (args.trial is not None) == (args.deed == "try"),
        "TRIAL",
        f"goes with try, which needs one of {', '.join(CardTrial)}",
    )
    demand(
        (args.held or args.not_yet) == (args.deed == "try"),
        "--held",
        "or --not-yet goes with try, which needs one of the two",
    )
    for option, value in (("--in", args.location), ("--film-um", args.film_um)):
        demand(value is None or args.deed == "coat", option, "goes with coat")


def _minute(args: argparse.Namespace, book: Book) -> int:
    if args.at is None:
        return current_minute()
    at = read_moment(args.at, zone_named(book.bench_time.zone), "--at")
    just_told(at, current_minute(), "--at")
    return at


def _edit(args: argparse.Namespace, book: Book, now: int) -> Edit | None:
    if args.deed == "coat":
        return drying_cards.coat_card(
            book, args.coating, now, location=args.location or "", dry_film_um=args.film_um
        )
    if args.deed in ("try", "drop"):
        number = drying_cards.newest_card(book, args.coating)
        if args.deed == "drop":
            return drying_cards.drop_card(book, number)
        return drying_cards.try_card(book, number, CardTrial(args.trial), now, held=args.held)
    if args.deed == "use":
        try:
            bottle = book.coating(args.coating).name
        except KeyError:
            raise Refused("COATING", f'no coating is called "{args.coating}"') from None
        return pace.apply_drying(book, bottle, now)
    return None


def _moved(bench: BenchBook, book: Book, now: int) -> list[str]:
    """Return what the plan does otherwise than before, and keep it."""
    after = bench.book()
    before = shown_before(bench, book)
    with progress("planning"):
        last = planning.plan(book, now, last=before.last, quick=True).plan
        plan = planning.plan(after, now, last=last, promised=before.promised, quick=True).plan
    if not bench.read_only:
        bench.plans.keep(replace(plan, digest=digest(after)))
    return shifts(after, last, plan)


def _lessons(book: Book, now: int) -> list[DryingLine]:
    bottles = dict.fromkeys(book.coating(card.coating).name for card in book.drying_cards)
    found = (drying_cards.lesson_of(book, bottle, now) for bottle in bottles)
    return [line for line in found if line is not None]


def _figures(before: Book, after: Book) -> list[str]:
    """Return the figures of each bottle that has others now."""
    lines = []
    for old, new in zip(before.coatings, after.coatings, strict=True):
        if old != new:
            lines.append(
                f"{new.name}: level × {old.slowness:g} → {new.slowness:g}, slope "
                f"{old.steeper_kj_mol:+g} → {new.steeper_kj_mol:+g} kJ/mol, surely "
                f"{_times(old.doubt)} → {_times(new.doubt)} of likely"
            )
    return lines


def _times(doubt: float | None) -> str:
    return "as its label or family" if doubt is None else f"{doubt:g} times"


def _told(
    book: Book, states: tuple[CardState, ...], lines: list[DryingLine], now: int
) -> list[str]:
    if not states:
        return ["no card yet: coat a scrap along with a model, and note it with card coat"]
    zone = zone_named(book.bench_time.zone)
    told = []
    for state in states:
        card = state.card
        laid = wording.day(int(card.laid.timestamp() // 60), zone)
        told.append(f"{card.coating}, {card.location}, coated {laid}:")
        asks = {ask.trial: ask for ask in state.asks}
        for times in state.times:
            told.append(f"  {times.trial.value}: {_times_text(times, now, zone)}")
            if times.trial in asks:
                when = wording.moment(asks[times.trial].at, zone)
                chance = round(asks[times.trial].chance * 100)
                told[-1] += f"; try it {when} ({chance} % that it holds)"
            elif any(one.held and one.trial is times.trial for one in card.tried):
                told[-1] += "; it held"
    return told + [
        f"{line.coating} dries × {line.estimate.factor:.2f} of its stated times "
        f"({line.estimate.low:.2f} to {line.estimate.high:.2f}), surely "
        f"{line.figures.doubt:.2f} times likely; reckoned with × {line.now:g}"
        for line in lines
    ]


def _times_text(times: TrialTimes, now: int, zone: Any) -> str:
    likely = wording.opening(times.likely, now, zone)
    return f"likely {likely}, surely {wording.opening(times.surely, now, zone)}"


def _document(
    book: Book,
    now: int,
    edit: Edit | None,
    states: tuple[CardState, ...],
    lines: list[DryingLine],
    moved: list[str],
) -> dict[str, Any]:
    zone = zone_named(book.bench_time.zone)
    return {
        "noted": None if edit is None else str(edit.name),
        "moved": [str(line) for line in moved],
        "cards": [
            {
                "coating": state.card.coating,
                "location": state.card.location,
                "coated": state.card.laid.isoformat(),
                "trials": [
                    {"trial": one.trial.value, "at": one.at.isoformat(), "held": one.held}
                    for one in state.card.tried
                ],
                "stands": [
                    {
                        "trial": times.trial.value,
                        "likely": iso(times.likely, zone),
                        "surely": iso(times.surely, zone),
                    }
                    for times in state.times
                ],
                "asks": [
                    {
                        "trial": ask.trial.value,
                        "at": iso(ask.at, zone),
                        "chance": round(ask.chance, 4),
                        "bits": round(ask.bits, 4),
                    }
                    for ask in state.asks
                ],
            }
            for state in states
        ],
        "bottles": [
            {
                "coating": line.coating,
                "looks": line.looks,
                "factor": round(line.estimate.factor, 4),
                "low": round(line.estimate.low, 4),
                "high": round(line.estimate.high, 4),
                "slope_kj_mol": round(line.figures.slope.mean, 2),
                "surely": round(line.figures.doubt, 4),
                "reckoned": line.now,
            }
            for line in lines
        ],
    }
