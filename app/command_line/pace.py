"""Show what your logbook teaches about minutes and drying, and apply it."""

from __future__ import annotations

import argparse
from typing import Any

from app.command_line.book_source import add_book, add_json, add_now, now_of
from app.command_line.output import FINE, answer, document
from app.service import pace, wording
from app.service.books import open_book
from app.service.pace import Lesson
from planner.pace.minutes import Estimate

EXAMPLES = """\
  tackfree pace                   factors on your minutes and on drying times, with their range
  tackfree pace --apply           use those that are certain enough; undo takes it back
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("--apply", action="store_true", help="use what is certain enough")
    add_now(parser)
    add_book(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print what was learned; with --apply, use it."""
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        now = now_of(args, book)
        lesson = pace.learned(book, now)
        applied = ""
        if args.apply:
            edit = pace.apply_all(book, now)
            bench.apply(edit.name, edit.book)
            applied = edit.name
    if args.json:
        document({**_document(lesson), "applied": applied or None})
    else:
        answer("\n".join([*_lines(lesson), *([applied] if applied else [])]))
    return FINE


def _lines(lesson: Lesson) -> list[str]:
    if not lesson.minutes and not lesson.drying:
        return ["nothing learned yet: the logbook tells no minutes, and nobody looked at a film"]
    lines = []
    for line in lesson.minutes:
        passes = wording.count(line.passes, "pass", "passes")
        worked = f"{passes}, {line.worked} min for {line.planned} planned"
        lines.append(f"{line.work.stage} by {line.work.tool}: {_told(line.estimate)}  ({worked})")
    for film in lesson.drying:
        looks = wording.count(film.looks, "look")
        lines.append(
            f"drying of {film.coating}: {_told(film.estimate)}"
            f"  ({looks}; reckoned with {film.now:g})"
        )
    sure = len(lesson.sure_minutes) + len(lesson.sure_drying)
    return [*lines, f"certain enough to apply: {sure}"]


def _told(estimate: Estimate) -> str:
    return f"× {estimate.factor:.2f}, in 19 of 20 cases {estimate.low:.2f} to {estimate.high:.2f}"


def _document(lesson: Lesson) -> dict[str, Any]:
    return {
        "minutes": [
            {
                "stage": line.work.stage.value,
                "tool": line.work.tool.value,
                "passes": line.passes,
                "planned": line.planned,
                "worked": line.worked,
                "agreed": line.agreed,
                **_estimate(line.estimate),
                "sure": line in lesson.sure_minutes,
            }
            for line in lesson.minutes
        ],
        "drying": [
            {
                "coating": line.coating,
                "looks": line.looks,
                "now": line.now,
                **_estimate(line.estimate),
                "sure": line in lesson.sure_drying,
            }
            for line in lesson.drying
        ],
    }


def _estimate(estimate: Estimate) -> dict[str, float]:
    return {
        "factor": round(estimate.factor, 4),
        "low": round(estimate.low, 4),
        "high": round(estimate.high, 4),
    }
