"""Plan every active project over the evenings ahead."""

from __future__ import annotations

import argparse

from app.command_line.book_source import (
    add_json,
    add_now,
    add_source,
    book_of,
    note_of_clock,
    now_of,
)
from app.command_line.output import FINE, NOT_SOUND, answer, document, note, progress
from app.service import hard_clear, looking, planning, run_sheet_text, wording
from planner.values.moment import zone_named
from planner.values.refusal import number_in
from storage.exchange import dump_plan

EXAMPLES = """\
  tackfree plan                                      your bench book, from now on
  tackfree plan harbour.json --now 2031-03-05T19:30  a file, from an evening on
  tackfree plan --seconds 20                         look longer for a cheaper plan
  tackfree plan harbour.json --json > plan.json      for verify, or another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    parser.add_argument(
        "--seconds", type=float, default=0, metavar="S", help="look for a cheaper plan so long"
    )
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Plan, and print the plan; status 1 if a pass has no place."""
    book = book_of(args)
    now = now_of(args, book)
    number_in(args.seconds, 0, 86_400, "--seconds", "s")
    with progress("planning"):
        planned = planning.plan(book, now)
        if args.seconds or planned.plan.unplaced:
            planned = looking.looked_into(planned, book, args.seconds, note)
    plan = planned.plan
    note_of_clock(args, book)
    for flag in planned.verdict.flags:
        note(flag)
    if args.json:
        document(dump_plan(plan, book))
    elif not plan.placements and not plan.unplaced:
        answer("Nothing to plan: no active project has a step.")
    else:
        zone = zone_named(book.bench_time.zone)
        answer(f"Planned from {wording.day(now, zone)} {wording.clock_time(now, zone)} on\n")
        answer(run_sheet_text.timeline_text(plan, book))
        evenings = wording.count(plan.cost.stretches, "stretch", "stretches")
        answer(f"\n{evenings} of bench time, {plan.cost.setup_minutes} min of set-up")
        answer(run_sheet_text.finish_text(plan, book))
        table = hard_clear.laid_out(planned.book, plan, now, planned.cure, planned.calendar)
        for clear in hard_clear.hard_clears(table):
            answer(hard_clear.line(clear, zone))
        for line in run_sheet_text.bounds_text(plan, zone):
            answer(line)
    return NOT_SOUND if plan.unplaced else FINE
