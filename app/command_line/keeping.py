"""``plan --keep``: the plan of before as the start of this one, and what moved since."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.book_source import in_file, read_file
from app.service.moved_work import moved_lines
from app.service.planning import Planned
from planner.bench import BenchCalendar
from planner.schedule.staying.policy import moves_between
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.plan import Plan
from planner.values.refusal import Refused
from storage.plan_file import load_plan


def add_keep(parser: argparse.ArgumentParser) -> None:
    """Let a command take the plan of before."""
    parser.add_argument(
        "--keep",
        type=Path,
        metavar="PLAN.json",
        help="stay near to this earlier plan (of plan --json), and tell what moved",
    )


def kept_plan(path: Path) -> Plan:
    """Return the plan in a file.

    Raises
    ------
    Refused
        If it holds none, with its name and the place in it.
    """
    try:
        return load_plan(read_file(path))
    except Refused as problem:
        if problem.place.startswith((str(path), repr(str(path)))):
            raise
        raise in_file(path, problem) from problem


def offer_line(planned: Planned, book: Book) -> str:
    """Return that another plan is there which gains something, and what it moves."""
    assert planned.offer is not None
    told = " ".join(moved_lines(book, planned.calendar, planned.plan, planned.offer))
    return f"another plan gains something, but moves what is fixed: {told}"


def moved_json(last: Plan, plan: Plan, calendar: BenchCalendar, zone: ZoneInfo) -> dict[str, Any]:
    """Return what moved to another stretch, and what is gained by it, as JSON data.

    ``from`` and ``to`` are beginnings; null stands for no place.  Gains are in
    passes and minutes, losses negative.
    """

    def told(minute: int | None) -> str | None:
        return None if minute is None else moment_of(minute, zone).isoformat()

    moved = [
        {
            "project": key.project,
            "model": key.model,
            "step": key.step,
            "coat": key.coat,
            "from": told(before),
            "to": told(after),
        }
        for key, before, after in moves_between(calendar, last, plan)
    ]
    ends = [max((end for _, end in one.finishes), default=one.now) for one in (last, plan)]
    gained = {
        "unplaced": last.cost.unplaced - plan.cost.unplaced,
        "late": last.cost.late - plan.cost.late,
        "finish": ends[0] - ends[1],
        "setup_minutes": last.cost.setup_minutes - plan.cost.setup_minutes,
    }
    return {"moved": moved, "gained": gained}
