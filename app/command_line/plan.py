"""Plan every active project over the evenings ahead."""

from __future__ import annotations

import argparse
from typing import Any

from app.command_line.book_source import (
    add_json,
    add_now,
    add_source,
    book_of,
    note_of_log,
    now_of,
)
from app.command_line.keeping import add_keep, kept_plan, moved_json, offer_line
from app.command_line.output import FINE, NOT_SOUND, answer, document, note, progress
from app.command_line.plan_source import (
    keep_forecasts,
    keep_plan,
    planned_for,
    promised_to,
    taught,
)
from app.service import hard_clear, looking, planning, run_sheet_text, wishes, wording
from app.service.moved_work import moved_lines
from app.service.timeline_text import timeline_text
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.refusal import number_in
from planner.values.wishes import Staying
from storage.exchange import dump_plan

STAYING = {"close": Staying.CLOSE, "earliest": Staying.EARLIEST}
EXAMPLES = """\
  tackfree plan                                      your bench book, from now on
  tackfree plan harbour.json --now 2031-03-05T19:30  a file, from an evening on
  tackfree plan --seconds 20                         look longer for a cheaper plan
  tackfree plan harbour.json --json > plan.json      for verify, or another program
  tackfree plan harbour.json --keep plan.json        near to that plan, after an edit
  tackfree plan --staying earliest                   the earliest end, whatever moves
  tackfree plan --chance                             and how sure its dates are
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    parser.add_argument(
        "--seconds", type=float, default=0, metavar="S", help="look for a cheaper plan so long"
    )
    add_keep(parser)
    parser.add_argument(
        "--staying",
        choices=list(STAYING),
        help="what may move against the plan before: close keeps near to it, earliest ends as "
        "early as can be; without it, as the book says",
    )
    parser.add_argument(
        "--chance", action="store_true", help="say how sure the dates are, from 2000 runs"
    )
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Plan, and print the plan; status 1 if a pass has no place."""
    book = book_of(args)
    if args.staying is not None:
        book = wishes.stay(book, STAYING[args.staying]).book
    now = now_of(args, book)
    number_in(args.seconds, 0, 86_400, "--seconds", "s")
    last = None if args.keep is None else kept_plan(args.keep)
    with progress("planning"):
        planned = (
            planned_for(args, book, now) if last is None else planning.plan(book, now, last=last)
        )
        if args.seconds or planned.plan.unplaced:
            near = last is not None or args.file is None
            planned = looking.looked_into(planned, book, args.seconds, note, near=near)
    sure: dict[str, Any] = {}
    sure_lines: list[str] = []
    if args.chance:
        planned, sure, sure_lines = _how_sure(args, book, planned)
    plan = planned.plan
    if planned.offer is not None:
        note(offer_line(planned, book))
    note_of_log(args, book)
    for flag in planned.verdict.flags:
        note(flag)
    if args.json:
        zone = zone_named(book.bench_time.zone)
        since = {} if last is None else moved_json(last, plan, planned.calendar, zone)
        document({**dump_plan(plan, book), **since, **sure})
    elif not plan.placements and not plan.unplaced:
        answer("Nothing to plan: no active project has a step.")
    else:
        zone = zone_named(book.bench_time.zone)
        answer(f"Planned from {wording.day(now, zone)} {wording.clock_time(now, zone)} on\n")
        answer(timeline_text(plan, book))
        evenings = wording.count(plan.cost.stretches, "session", "sessions")
        answer(f"\n{evenings} of bench time, {plan.cost.setup_minutes} min of set-up")
        answer(run_sheet_text.finish_text(plan, book))
        for line in [] if last is None else moved_lines(book, planned.calendar, last, plan):
            answer(line)
        table = hard_clear.laid_out(planned.book, plan, now, planned.cure, planned.calendar)
        for clear in hard_clear.hard_clears(table):
            answer(hard_clear.line(clear, zone))
        for line in run_sheet_text.bounds_text(plan, zone):
            answer(line)
        for line in sure_lines:
            answer(line)
    return NOT_SOUND if plan.unplaced else FINE


def _how_sure(
    args: argparse.Namespace, book: Book, planned: planning.Planned
) -> tuple[planning.Planned, dict[str, Any], list[str]]:
    """Return the surest of plans of the same worth, how sure it is as JSON data, and in lines."""
    from app.service import advising, chances, forecasts, surer_plans  # noqa: PLC0415 - numpy
    from planner.chance.scoring import learned_scale, scores  # noqa: PLC0415

    zone = zone_named(book.bench_time.zone)
    known = scores(book, taught(args))
    scale = learned_scale(known)
    with progress("drawing the runs"):
        few = advising.Adviser(book, planned, runs=surer_plans.RUNS, scale=scale)
        surer = surer_plans.taken(surer_plans.surer_plans(few, promised_to(args)))
        if surer is not None:
            note("an order of the same work was taken whose dates are surer")
            planned = surer.planned
            keep_plan(args, planned)
        found = chances.odds(book, planned, scale=scale)
    assert found is not None
    keep_forecasts(args, forecasts.said_by(found, scale))
    lines = [*chances.odds_lines(found, zone), *forecasts.score_lines(known)]
    return planned, {"chance": chances.odds_json(found, zone)}, ["", *lines]
