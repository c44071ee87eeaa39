"""Note in the logbook what was begun, done, skipped, or went wrong."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.log_told import (
    brake_remarks,
    closing_remarks,
    log_document,
    next_lines,
    remarks_of,
    shifts,
)
from app.command_line.output import FINE, NOT_SOUND, answer, document, note, progress
from app.command_line.source import add_book, add_json
from app.service import happenings, logbook, planning, words
from app.service.books import open_book
from app.service.clock import current_minute, read_moment
from app.service.edits import Edit
from app.service.step_names import Coat, step_named
from planner.bench import calendar_of
from planner.evening import facts
from planner.evening.advice import rest
from planner.evening.missing import Remedy
from planner.evening.repairs import Repair
from planner.layers.findings import Finding
from planner.tonight import run_sheet
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Event, Used
from planner.values.reach import just_told
from planner.values.refusal import Refused, demand, demand_known
from planner.values.step import Tool
from storage import photos
from storage.bench_book import BenchBook

EXAMPLES = """\
  tackfree log start "Winch Truck Gannet/prime"
  tackfree log done "Winch Truck Gannet/prime" --minutes 14 --used "grey primer=3.5"
  tackfree log done "Winch Truck Gannet/base#2" --only hull --only wheels
  tackfree log tacky "Winch Truck Gannet/base" --at 2031-03-05T21:40
  tackfree log seen "Winch Truck Gannet/wipe" --note "no tide marks"
  tackfree log skip "Winch Truck Gannet/filter" --note "dark enough"
  tackfree log redo "Winch Truck Gannet/base" --by sand --note "runs on the door"
  tackfree log missed "Winch Truck Gannet/wipe" --remedy late
  tackfree log empty "Winch Truck Gannet/base" --only hull
  tackfree log cleaned
  tackfree log stop
"""

DEEDS = (
    *("start", "done", "tacky", "dry", "seen", "skip", "redo", "missed", "empty"),
    *("cleaned", "stop", "longer", "lost", "note", "back"),
)
NAMELESS = ("stop", "longer", "lost", "back")
HOUR = 60
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
}


@dataclass
class Logged:
    """What came of it: the edits made, and what to say beside."""

    edits: list[Edit] = field(default_factory=list)
    findings: tuple[Finding, ...] = ()
    remarks: list[str] = field(default_factory=list)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("deed", choices=DEEDS, metavar="DEED", help=", ".join(DEEDS))
    parser.add_argument(
        "step",
        nargs="?",
        metavar="STEP",
        help='"model/step", with "#2" for the second coat; for cleaned, an airbrush',
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
            made = Logged(remarks=[f"taken back: {name}"])
        else:
            made = _DEEDS[args.deed](args, bench, now)
            for edit in made.edits:
                bench.apply(edit.name, edit.book, edit.merge)
        after = bench.book()
    with progress("planning"):
        last = planning.plan(book, now, quick=True).plan
        plan = planning.plan(after, now, last=last, quick=True).plan
    sheet = run_sheet(after, plan, now)
    late = happenings.missed(after, now)
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
        demand(not given or args.deed in deeds, f"--{option}", f"goes with {' or '.join(deeds)}")
    if args.deed in NAMELESS:
        demand(args.step is None, "STEP", f"{args.deed} names no step")
    elif args.deed not in ("note", "cleaned"):
        demand(args.step is not None, "STEP", f"say which step; {args.deed} needs one")
    both = (args.temperature is None) == (args.humidity is None)
    demand(both, "--humidity", "goes with --temperature; give both")


def _start(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.TO_BEGIN)
    planned, airbrush = logbook.planned_minutes(book, None, key), _airbrush(args, book, key, now)
    made = Logged([logbook.begin(book, key, now, planned, airbrush=airbrush)])
    made.remarks += brake_remarks(book, key, now)
    _tell_order(made, book, key)
    resting = rest(book, key, now)
    if resting is not None:
        until = words.moment(resting.until, zone_named(book.bench_time.zone))
        made.remarks.append(f"{resting.tries} tries failed here; better let it rest until {until}")
    return made


def _done(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.TO_END)
    air = None if args.temperature is None else (args.temperature, args.humidity)
    kept = [photos.keep(bench.path, source) for source in args.photo or ()]
    given = None if args.used is None else _used(book, args.used)
    more: dict[str, Any] = {"air": air, "note": args.note or ""}
    more["airbrush"] = _airbrush(args, book, key, now)
    if args.only:
        done = logbook.split(book, key, args.only, now, minutes=args.minutes, used=given, **more)
    else:
        used = logbook.usual_use(book, key) if given is None else given
        done = logbook.finish(book, key, now, args.minutes, used=used, **more)
    after = done.book
    for name in kept:
        after = logbook.annotate(after, key, photo=name).book
    made = Logged([Edit(done.name, after)])
    entry = logbook.entry_of(after, key)
    assert entry is not None
    if entry.used:
        word = "reckoned" if given is None else "used"
        amounts = ", ".join(f"{one.ml:g} ml {one.coating}" for one in entry.used)
        made.remarks.append(f"{word}: {amounts}")
    _tell_order(made, book, key)
    return made


def _airbrush(args: argparse.Namespace, book: Book, key: PassKey, now: int) -> str | None:
    """Return the airbrush named, the one that the plan has, or None for what is known without."""
    own = [one.name for one in book.gear.airbrushes]
    if args.airbrush is not None:
        demand_known(args.airbrush, own, "airbrush", "--airbrush")
        sprayed = facts.step_of(book, key).tool is Tool.AIRBRUSH
        demand(sprayed, "--airbrush", f'"{key.step}" is not sprayed')
        return str(args.airbrush)
    known = logbook.entry_of(book, key)
    if len(own) < 2 or (known is not None and known.airbrush):
        return None
    plan = planning.plan(book, now, quick=True).plan
    return logbook.usual_airbrush(book, key, plan)


def _tell_order(made: Logged, before: Book, key: PassKey) -> None:
    """Say what a step overtook, where it was not its turn, and what that does to the coats."""
    overtaking = happenings.out_of_order(before, key)
    if overtaking is not None:
        steps = ", ".join(overtaking.before)
        made.remarks.append(f"before its turn: it was written behind {steps}, and now stands ahead")
        made.findings = overtaking.findings


def _tacky(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    return Logged([happenings.tacky(book, step_named(book, args.step, Coat.LAST), now)])


def _dry(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.LAST)
    return Logged([happenings.looked(book, key, now, State.DRY_TO_RECOAT, reached=True)])


def _missed(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.TO_BEGIN)
    late = next((one for one in happenings.missed(book, now) if one.key == key), None)
    if late is None:
        raise Refused("STEP", f"{words.pass_name(key)} has missed no window")
    choice = Remedy[args.remedy.upper()] if args.remedy else late.remedies[0]
    return Logged([happenings.remedy(book, late, choice, now)])


def _lost(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    stretch = calendar_of(book.bench_time).next_stretch(now)
    today = moment_of(now, zone_named(book.bench_time.zone)).date()
    return Logged([happenings.lost(book, stretch.on if stretch else today)])


def _seen(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.LAST)
    return Logged([happenings.seen(book, key, now, args.note or "")])


def _skip(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.TO_BEGIN)
    return Logged([happenings.skip(book, key, now, args.note or "")])


def _redo(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.LAST)
    kind = Repair(args.by or Repair.AGAIN.value)
    event = Event.DROPPED if args.dropped else Event.DISLIKED
    places = tuple(args.only or ())
    new = happenings.outline(book, key, kind, places)
    made = Logged([happenings.repair(book, key, now, kind, event, places, args.note or "")])
    made.remarks += [f"new step: {step.id}: {step.title}" for step in new]
    return made


def _empty(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    key = step_named(book, args.step, Coat.TO_END)
    own = [one.coating for one in facts.step_of(book, key).applications]
    demand(bool(args.coating or own), "--coating", "is missing; say which bottle is empty")
    coating = args.coating or own[0]
    made = Logged([happenings.ran_out(book, key, now, coating, tuple(args.only or ()))])
    advice = happenings.ran_out_advice(made.edits[0].book, coating, now)
    made.remarks.append(f"what may help: {'; '.join(advice)}")
    return made


def _cleaned(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    own = [one.name for one in book.gear.airbrushes]
    name = args.step
    if name is None:
        names = list(logbook.cups_now(book, now)) or own
        demand(
            len(names) == 1, "STEP", f"say which airbrush: {', '.join(names) or 'there is none'}"
        )
        name = names[0]
    return Logged([logbook.cleaned(book, name, now)])


def _stop(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    return Logged([happenings.stop(bench.book(), now)])


def _longer(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    minutes = HOUR if args.minutes is None else args.minutes
    return Logged([happenings.longer(bench.book(), now, minutes)])


def _note(args: argparse.Namespace, bench: BenchBook, now: int) -> Logged:
    book = bench.book()
    demand(bool(args.note or args.photo), "--note", "is missing; say what to note")
    if args.step is None:
        demand(not args.photo, "--photo", "goes with a step; name one")
        return Logged([happenings.note(book, now, args.note)])
    key = step_named(book, args.step, Coat.LAST)
    if logbook.entry_of(book, key) is None:
        demand(not args.photo, "--photo", "goes with a step that is begun or done")
        return Logged([happenings.note(book, now, args.note, key)])
    edits = [logbook.annotate(book, key, note=args.note)] if args.note else []
    for source in args.photo or ():
        latest = edits[-1].book if edits else book
        edits.append(logbook.annotate(latest, key, photo=photos.keep(bench.path, source)))
    return Logged(edits)


_DEEDS: dict[str, Callable[[argparse.Namespace, BenchBook, int], Logged]] = {
    "start": _start,
    "done": _done,
    "tacky": _tacky,
    "dry": _dry,
    "missed": _missed,
    "lost": _lost,
    "seen": _seen,
    "skip": _skip,
    "redo": _redo,
    "empty": _empty,
    "cleaned": _cleaned,
    "stop": _stop,
    "longer": _longer,
    "note": _note,
}


def _used(book: Book, texts: list[str]) -> tuple[Used, ...]:
    """Read "coating=ml"."""
    known = [coating.name for coating in book.coatings]
    found = []
    for text in texts:
        coating, equals, amount = text.rpartition("=")
        try:
            ml = float(amount)
        except ValueError:
            equals = ""
            ml = 0.0
        demand(bool(equals), "--used", f'"{text[:80]}" is no amount; write "coating=3.5"')
        demand_known(coating.strip(), known, "coating", "--used")
        found.append(Used(coating=coating.strip(), ml=ml))
    return tuple(found)
