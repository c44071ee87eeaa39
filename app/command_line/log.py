"""Note in the logbook what was begun, done, skipped, or went wrong."""

from __future__ import annotations

import argparse
from dataclasses import replace
from pathlib import Path
from zoneinfo import ZoneInfo

from app.command_line.book_source import add_book, add_json
from app.command_line.brake_prompt import add_ways
from app.command_line.log_actions import BY_NAME, LogAnswer
from app.command_line.log_answer import (
    closing_remarks,
    log_document,
    next_lines,
    remarks_of,
    shifts,
)
from app.command_line.output import FINE, NOT_SOUND, answer, document, note, progress
from app.service import bench_events, planning
from app.service.book_copies import keep_daily
from app.service.books import open_book
from app.service.clock import behind, current_minute, read_moment
from app.service.overtaken_work import overtaken_lines
from app.service.shown_plans import shown_before
from planner.bench import calendar_of
from planner.evening.missed_closings import Remedy
from planner.evening.repairs import Repair
from planner.tonight import run_sheet
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plausible_dates import just_told
from planner.values.refusal import Refused, demand
from storage.exchange import digest

EXAMPLES = """\
  tackfree log start "Winch Truck Gannet/prime"
  tackfree log done "Winch Truck Gannet/prime" --minutes 14 --used "grey primer=3.5"
  tackfree log done "Winch Truck Gannet/base#2" --only hull --only wheels
  tackfree log start "Winch Truck Gannet/base#2" --looked-dry
  tackfree log tacky "Winch Truck Gannet/base" --at 2031-03-05T21:40
  tackfree log seen "Winch Truck Gannet/wipe" --note "no tide marks"
  tackfree log skip "Winch Truck Gannet/filter" --note "dark enough"
  tackfree log redo "Winch Truck Gannet/base" --by sand --note "runs on the door"
  tackfree log missed "Winch Truck Gannet/wipe" --remedy late
  tackfree log empty "Winch Truck Gannet/base" --only hull
  tackfree log other "steel on Gannet hull, Heron, brush, 15 min"
  tackfree log cleaned
  tackfree log stop
"""

DEEDS = (
    *("start", "done", "tacky", "dry", "seen", "skip", "redo", "missed", "empty"),
    *("other", "cleaned", "stop", "longer", "lost", "note", "back"),
)
NAMELESS = ("stop", "longer", "lost", "back")
ONLY_WITH = {
    "minutes": ("done", "longer"),
    "used": ("done",),
    "only": ("done", "redo", "empty"),
    "coating": ("empty",),
    "by": ("redo",),
    "remedy": ("missed",),
    "dropped": ("redo",),
    "photo": ("done", "note"),
    "temperature": ("done",),
    "humidity": ("done",),
    "note": ("done", "seen", "skip", "redo", "note"),
    "airbrush": ("start", "done"),
    "all_the_same": ("start", "done"),
    "looked_dry": ("start", "done"),
}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("deed", choices=DEEDS, metavar="DEED", help=", ".join(DEEDS))
    parser.add_argument(
        "step",
        nargs="?",
        metavar="STEP",
        help='"model/step", with "#2" for the second coat; for cleaned, an airbrush; for other, '
        'a line such as "steel on Gannet hull, Heron, brush, 15 min"',
    )
    parser.add_argument("--at", metavar="T", help="when it was; without it, now")
    parser.add_argument("--minutes", type=int, metavar="N", help="minutes of work; for longer, 60")
    parser.add_argument(
        "--used",
        action="append",
        metavar="COATING=ML",
        help="what was used; without it, what is reckoned for the step",
    )
    parser.add_argument(
        "--airbrush", metavar="NAME", help="what it was sprayed with; without it, as planned"
    )
    parser.add_argument(
        "--only", action="append", metavar="PLACE", help="a part or part/place; the rest is left"
    )
    parser.add_argument(
        "--coating", metavar="NAME", help="which bottle is empty; without it, the step's own"
    )
    parser.add_argument(
        "--by", choices=[kind.value for kind in Repair], help="how to mend; without it, again"
    )
    parser.add_argument(
        "--remedy",
        choices=[kind.name.lower() for kind in Remedy],
        help="what is done about a missed window; without it, the first that was told",
    )
    parser.add_argument(
        "--dropped", action="store_true", default=None, help="it fell; without it, it is disliked"
    )
    parser.add_argument("--temperature", type=float, metavar="C", help="the gauge shows [°C]")
    parser.add_argument("--humidity", type=float, metavar="RH", help="the gauge shows [%% RH]")
    parser.add_argument("--note", metavar="TEXT", help="a note, or why")
    parser.add_argument(
        "--photo", action="append", type=Path, metavar="FILE", help="a photo to keep"
    )
    add_ways(parser)
    add_book(parser)
    add_json(parser)


def _when(text: str, zone: ZoneInfo) -> int:
    """Return the minute told; a mistyped year would make a book that no plan reaches."""
    now = read_moment(text, zone, "--at")
    just_told(now, current_minute(), "--at")
    return now


def run(args: argparse.Namespace) -> int:
    """Log it, then tell what has changed and what is next."""
    _fits(args)
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        zone = zone_named(book.bench_time.zone)
        now = current_minute() if args.at is None else _when(args.at, zone)
        if args.deed == "back":
            name = bench.take_back()
            if name is None:
                raise Refused("back", "there is nothing to take back")
            made = LogAnswer(remarks=[f"taken back: {name}"])
        else:
            made = BY_NAME[args.deed](args, bench, now)
            for edit in made.edits:
                bench.apply(edit.name, edit.book, edit.merge, edit.verb)
        after = bench.book()
        if (problem := keep_daily(bench)) is not None:
            note(f"no copy was made: {problem}")
        before = shown_before(bench, book)
        with progress("planning"):
            last = planning.plan(book, now, last=before.last, quick=True).plan
            then = shown_before(bench, after)
            plan = planning.plan(
                after,
                now,
                last=then.last if then.exact else last,
                promised=before.promised,
                quick=True,
            ).plan
        if args.at is None and not bench.read_only:
            bench.plans.keep(replace(plan, digest=digest(after)))
    if (line := behind(after, now)) is not None:
        note(line)
    for line in overtaken_lines(after):
        note(line)
    sheet = run_sheet(after, plan, plan.now)
    late = bench_events.missed(after, now)
    if args.deed == "stop":
        made.remarks += closing_remarks(after, now, _began(book, now), plan)
    remarks = [*made.remarks, *shifts(after, last, plan), *remarks_of(after, now, late, zone)]
    if args.json:
        names = [edit.name for edit in made.edits]
        document(log_document(names, made.findings, remarks, late, sheet, zone))
    else:
        answer(
            "\n".join([*(edit.name for edit in made.edits), *remarks, *next_lines(sheet, after)])
        )
    for finding in made.findings:
        mend = f"; mend: {finding.mend.title}" if finding.mend else ""
        note(f"{finding.verdict}: {finding.message}{mend}")
    return NOT_SOUND if made.findings else FINE


def _began(book: Book, now: int) -> int:
    """Return when the stretch around ``now`` began."""
    stretch = calendar_of(book.bench_time).stretch_at(now)
    return stretch.interval.start if stretch else now


def _fits(args: argparse.Namespace) -> None:
    """Refuse options that the deed does not go with."""
    for option, deeds in ONLY_WITH.items():
        given = getattr(args, option) is not None
        name = f"--{option.replace('_', '-')}"
        demand(not given or args.deed in deeds, name, f"goes with {' or '.join(deeds)}")
    if args.deed in NAMELESS:
        demand(args.step is None, "STEP", f"{args.deed} names no step")
    elif args.deed not in ("note", "cleaned"):
        demand(args.step is not None, "STEP", f"say which step; {args.deed} needs one")
    both = (args.temperature is None) == (args.humidity is None)
    demand(both, "--humidity", "goes with --temperature; give both")
