"""What each deed of ``tackfree log`` writes."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from app.command_line.brake_prompt import way_on
from app.command_line.log_answer import brake_remarks
from app.service import bench_events, film_brake, logbook, planning, wording
from app.service.edits import Edit
from app.service.other_work import done_beside
from app.service.step_names import NamedCoat, step_named
from planner.bench import calendar_of
from planner.evening import log_entries
from planner.evening.advice import rest
from planner.evening.missed_closings import Remedy
from planner.evening.repairs import Repair
from planner.layers.findings import Finding
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Event, Used
from planner.values.refusal import Refused, demand, demand_known, number_in
from planner.values.step import Tool
from storage import photos
from storage.bench_book import BenchBook

HOUR = 60
MOST_MINUTES = 14_400  # that an entry may have


@dataclass
class LogAnswer:
    """What came of a deed: the edits made, and what to say beside."""

    edits: list[Edit] = field(default_factory=list)
    findings: tuple[Finding, ...] = ()
    remarks: list[str] = field(default_factory=list)


def _start(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.TO_BEGIN)
    planned, airbrush = logbook.planned_minutes(book, None, key), _airbrush(args, book, key, now)
    held = film_brake.at_beginning(book, key, now)
    way = way_on(args, held, now, zone_named(book.bench_time.zone))
    ready = film_brake.gone_on(book, held, way)
    made = LogAnswer([logbook.begin(ready, key, now, planned, airbrush=airbrush)])
    made.remarks += brake_remarks(book, key, now)
    _tell_order(made, book, key)
    resting = rest(book, key, now)
    if resting is not None:
        until = wording.moment(resting.until, zone_named(book.bench_time.zone))
        made.remarks.append(f"{resting.tries} tries failed here; better let it rest until {until}")
    return made


def _done(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.TO_END)
    if args.minutes is not None:
        number_in(args.minutes, 1, MOST_MINUTES, "--minutes", "min")
    air = None if args.temperature is None else (args.temperature, args.humidity)
    held = film_brake.at_end(book, key, now, args.minutes)
    way = way_on(args, held, now, zone_named(book.bench_time.zone))
    minutes = args.minutes
    if minutes is None and logbook.entry_of(book, key) is None and (held or not args.only):
        minutes = now - held.start if held else film_brake.likely_minutes(book, key, now)
    book = film_brake.gone_on(book, held, way)
    kept = [photos.keep(bench.path, source) for source in args.photo or ()]
    given = None if args.used is None else _used(book, args.used)
    more: dict[str, Any] = {"air": air, "note": args.note or ""}
    more["airbrush"] = _airbrush(args, book, key, now)
    if args.only:
        done = logbook.split(book, key, args.only, now, minutes=minutes, used=given, **more)
    else:
        used = logbook.usual_use(book, key) if given is None else given
        done = logbook.finish(book, key, now, minutes, used=used, **more)
    after = done.book
    for name in kept:
        after = logbook.annotate(after, key, photo=name).book
    made = LogAnswer([Edit(done.name, after)])
    entry = logbook.entry_of(after, key)
    assert entry is not None
    if entry.used:
        word = "reckoned" if given is None else "used"
        amounts = ", ".join(f"{used.ml:g} ml {used.coating}" for used in entry.used)
        made.remarks.append(f"{word}: {amounts}")
    _tell_order(made, book, key)
    return made


def _airbrush(args: argparse.Namespace, book: Book, key: PassKey, now: int) -> str | None:
    """Return the airbrush named, the one that the plan has, or None for what is known without."""
    own = [airbrush.name for airbrush in book.gear.airbrushes]
    if args.airbrush is not None:
        demand_known(args.airbrush, own, "airbrush", "--airbrush")
        sprayed = log_entries.step_of(book, key).tool is Tool.AIRBRUSH
        demand(sprayed, "--airbrush", f'"{key.step}" is not sprayed')
        return str(args.airbrush)
    known = logbook.entry_of(book, key)
    if len(own) < 2 or (known is not None and known.airbrush):
        return None
    plan = planning.plan(book, now, quick=True).plan
    return logbook.usual_airbrush(book, key, plan)


def _tell_order(made: LogAnswer, before: Book, key: PassKey) -> None:
    """Say what a step overtook, where it was not its turn, and what that does to the coats."""
    overtaking = bench_events.out_of_order(before, key)
    if overtaking is not None:
        steps = ", ".join(overtaking.before)
        made.remarks.append(f"before its turn: it was written behind {steps}, and now stands ahead")
        made.findings = overtaking.findings


def _tacky(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    return LogAnswer([bench_events.tacky(book, step_named(book, args.step, NamedCoat.LAST), now)])


def _dry(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.LAST)
    return LogAnswer([bench_events.looked(book, key, now, State.DRY_TO_RECOAT, reached=True)])


def _missed(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.TO_BEGIN)
    late = next((missed for missed in bench_events.missed(book, now) if missed.key == key), None)
    if late is None:
        raise Refused("STEP", f"{wording.pass_name(key)} has missed no window")
    choice = Remedy[args.remedy.upper()] if args.remedy else late.remedies[0]
    return LogAnswer([bench_events.remedy(book, late, choice, now)])


def _lost(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    stretch = calendar_of(book.bench_time).next_stretch(now)
    today = moment_of(now, zone_named(book.bench_time.zone)).date()
    return LogAnswer([bench_events.lost(book, stretch.on if stretch else today)])


def _seen(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.LAST)
    return LogAnswer([bench_events.seen(book, key, now, args.note or "")])


def _skip(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.TO_BEGIN)
    return LogAnswer([bench_events.skip(book, key, now, args.note or "")])


def _redo(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.LAST)
    kind = Repair(args.by or Repair.AGAIN.value)
    event = Event.DROPPED if args.dropped else Event.DISLIKED
    places = tuple(args.only or ())
    new = bench_events.outline(book, key, kind, places)
    made = LogAnswer([bench_events.repair(book, key, now, kind, event, places, args.note or "")])
    made.remarks += [f"new step: {step.id}: {step.title}" for step in new]
    return made


def _empty(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    key = step_named(book, args.step, NamedCoat.TO_END)
    own = [application.coating for application in log_entries.step_of(book, key).applications]
    demand(bool(args.coating or own), "--coating", "is missing; say which bottle is empty")
    coating = args.coating or own[0]
    made = LogAnswer([bench_events.ran_out(book, key, now, coating, tuple(args.only or ()))])
    advice = bench_events.ran_out_advice(made.edits[0].book, coating, now)
    made.remarks.append(f"what may help: {'; '.join(advice)}")
    return made


def _other(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    done = done_beside(bench.book(), args.step, now)
    made = LogAnswer([done.edit], done.findings)
    made.remarks += [f"noted as {wording.pass_name(key)}" for key in done.keys]
    return made


def _cleaned(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    own = [airbrush.name for airbrush in book.gear.airbrushes]
    name = args.step
    if name is None:
        names = list(logbook.cups_now(book, now)) or own
        demand(
            len(names) == 1, "STEP", f"say which airbrush: {', '.join(names) or 'there is none'}"
        )
        name = names[0]
    return LogAnswer([logbook.cleaned(book, name, now)])


def _stop(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    return LogAnswer([bench_events.stop(bench.book(), now)])


def _longer(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    minutes = HOUR if args.minutes is None else args.minutes
    return LogAnswer([bench_events.longer(bench.book(), now, minutes)])


def _note(args: argparse.Namespace, bench: BenchBook, now: int) -> LogAnswer:
    book = bench.book()
    demand(bool(args.note or args.photo), "--note", "is missing; say what to note")
    if args.step is None:
        demand(not args.photo, "--photo", "goes with a step; name one")
        return LogAnswer([bench_events.note(book, now, args.note)])
    key = step_named(book, args.step, NamedCoat.LAST)
    if logbook.entry_of(book, key) is None:
        demand(not args.photo, "--photo", "goes with a step that is begun or done")
        return LogAnswer([bench_events.note(book, now, args.note, key)])
    edits = [logbook.annotate(book, key, note=args.note)] if args.note else []
    for source in args.photo or ():
        latest = edits[-1].book if edits else book
        edits.append(logbook.annotate(latest, key, photo=photos.keep(bench.path, source)))
    return LogAnswer(edits)


BY_NAME: dict[str, Callable[[argparse.Namespace, BenchBook, int], LogAnswer]] = {
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
    "other": _other,
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
