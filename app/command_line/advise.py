"""Say what would help the dates, and until when one may wait."""

from __future__ import annotations

import argparse

from app.command_line.book_source import (
    add_json,
    add_now,
    add_source,
    book_of,
    note_of_log,
    now_of,
)
from app.command_line.output import FINE, NOT_SOUND, answer, document, iso, note, progress
from app.command_line.plan_source import planned_for, taught
from planner.values.moment import zone_named
from planner.values.refusal import number_in

EXAMPLES = """\
  tackfree advise                                      your bench book, from now on
  tackfree advise harbour.json --now 2031-03-05T19:30  a file, from an evening on
  tackfree advise --runs 500                           sooner, and less sure
  tackfree advise harbour.json --json                  for another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    parser.add_argument(
        "--runs", type=int, default=2000, metavar="N", help="try each measure in so many runs"
    )
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Try every measure, and print what helps; status 1 if a pass has no place."""
    from app.service import advising, chances, forecasts, surer_plans  # noqa: PLC0415 - they load numpy

    book = book_of(args)
    now = now_of(args, book)
    number_in(args.runs, 100, 100_000, "--runs")
    zone = zone_named(book.bench_time.zone)
    with progress("planning"):
        planned = planned_for(args, book, now)
        scale = forecasts.scale_of(book, taught(args))
        adviser = advising.Adviser(book, planned, runs=args.runs, scale=scale)
    note_of_log(args, book)
    if not (args.json or planned.plan.placements or planned.plan.unplaced):
        answer("Nothing to plan: no active project has a step.")
        return FINE
    found = adviser.all(lambda at, of, name: note(f"{at} of {of}: {name}"))
    note("other orders of the same work")
    surer = surer_plans.surer_plans(adviser)
    dated = [one for one in adviser.odds.projects if one.target is not None]
    waits = []
    for one in dated:
        models = [model.name for model in book.project(one.project).models]
        for model in ["", *(models if len(models) > 1 else ())]:
            note(f"latest start: {model or one.project}")
            waits.append((one.project, model, adviser.latest_start(one.project, model)))
    unplaced = bool(planned.plan.unplaced)
    if args.json:
        document(
            {
                "chance": chances.odds_json(adviser.odds, zone),
                "measures": [advising.advice_json(one) for one in found],
                "orders": [
                    {
                        "days": one.days,
                        "chance": one.chance,
                        "free": one.free,
                        "leaves_tonight": one.leaves,
                    }
                    for one in surer
                ],
                "latest_start": [
                    {
                        "project": project,
                        **({"model": model} if model else {}),
                        "session": iso(session.interval.start if session else None, zone),
                    }
                    for project, model, session in waits
                ],
            }
        )
        return NOT_SOUND if unplaced else FINE
    for line in chances.odds_lines(adviser.odds, zone):
        answer(line)
    answer("\nWhat would help:" if found else "\nNothing that was tried would help.")
    for advice in found:
        answer(f"  {advising.advice_line(advice)}")
        for trade in advising.trade_lines(advice):
            answer(f"  {trade}")
    for order in surer[:3]:
        free = " (free)" if order.free else ""
        answer(f"  {surer_plans.price_line(order, planned.plan)}{free}")
    if waits:
        answer("\nUntil when one may wait:")
        for project, model, session in waits:
            answer(f"  {advising.start_line(project, model, session, zone)}")
    return NOT_SOUND if unplaced else FINE
