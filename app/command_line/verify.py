"""Let the judge examine any plan, made here or elsewhere."""

from __future__ import annotations

import argparse
from dataclasses import asdict
from pathlib import Path

from app.command_line.book_source import add_json, book_of, in_file, read_file
from app.command_line.output import FINE, NOT_SOUND, answer, document, iso, progress
from app.service import wording
from planner.schedule.judge import judge
from planner.values.moment import zone_named
from planner.values.plan import Plan
from planner.values.refusal import Refused
from storage.exchange import digest, load_plan

EXAMPLES = """\
  tackfree plan harbour.json --json > plan.json
  tackfree verify harbour.json plan.json     accepted, or every fault by its definition
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="exchange file that was planned")
    parser.add_argument(
        "plan", type=Path, metavar="PLAN", help="the plan, as plan --json prints it"
    )
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print the verdict; status 1 if the plan is refused."""
    book = book_of(args)
    plan = _plan(args.plan)
    with progress("judging"):
        verdict = judge(book, plan, expected_digest=digest(book))
    zone = zone_named(book.bench_time.zone)
    if args.json:
        document(
            {
                "accepted": verdict.accepted,
                "violations": [asdict(violation) for violation in verdict.violations],
                "flags": list(verdict.flags),
                "cost": asdict(verdict.cost),
                "finishes": [
                    {"project": name, "at": iso(end, zone)} for name, end in verdict.finishes
                ],
            }
        )
    else:
        count = wording.count(len(verdict.violations), "violation")
        answer("accepted" if verdict.accepted else f"refused: {count}")
        for line in (*verdict.violations, *verdict.flags):
            answer(f"  {line}")
        for name, end in verdict.finishes:
            answer(f"{name}: done {wording.moment(end, zone)}")
    return FINE if verdict.accepted else NOT_SOUND


def _plan(path: Path) -> Plan:
    try:
        return load_plan(read_file(path))
    except Refused as problem:
        if problem.place == str(path):
            raise
        raise in_file(path, problem) from problem
