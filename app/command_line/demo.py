"""Load an invented project into a scratch book, plan it and show it.

The project is planned as of its own first evening, and that is said.  The terminal speaks
English, and so do the names in it; the window's book speaks the window's language.
"""

from __future__ import annotations

import argparse
import tempfile
from functools import partial
from pathlib import Path

from app.command_line.output import FINE, NOT_SOUND, answer, note, progress
from app.service import demos, run_sheet_text, wording
from app.service.books import BOOK_NAME
from app.service.display_probe import no_display
from app.service.planning import plan
from app.service.timeline_text import timeline_text
from planner.tonight import run_sheet
from planner.values.moment import zone_named
from storage.bench_book import BenchBook
from storage.exchange import Exchange

EXAMPLES = """\
  tackfree demo                     three small harbour vehicles
  tackfree demo --list              which projects there are
  tackfree demo lone_lamplighter    a single figure
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("name", nargs="?", default=demos.FIRST, help="which project to load")
    parser.add_argument("--list", action="store_true", help="list the projects and stop")
    parser.add_argument("--text", action="store_true", help="text only, no window")


def run(args: argparse.Namespace) -> int:
    """Show a demonstration project."""
    if args.list:
        for name in demos.names():
            answer(
                f"{name}: {', '.join(project.name for project in demos.read(name).book.projects)}"
            )
        return FINE
    exchange = demos.read(args.name)
    with tempfile.TemporaryDirectory(prefix="tackfree-demo-", ignore_cleanup_errors=True) as folder:
        return _show_demo(args, exchange, Path(folder) / BOOK_NAME)


def _show_demo(args: argparse.Namespace, exchange: Exchange, path: Path) -> int:
    book = exchange.book
    now = demos.first_evening(book)
    with progress("planning"):
        planned = plan(book, now)
    zone = zone_named(book.bench_time.zone)
    answer(exchange.note)
    answer(f"As of {wording.day(now, zone)} {wording.clock_time(now, zone)}, its first evening.\n")
    answer(run_sheet_text.run_sheet_text(run_sheet(book, planned.plan, now), book))
    answer("\nThe evenings ahead")
    answer(timeline_text(planned.plan, book))
    answer("\n" + run_sheet_text.finish_text(planned.plan, book))
    _show(args, path, now)
    return NOT_SOUND if planned.plan.unplaced else FINE


def _show(args: argparse.Namespace, path: Path, now: int) -> None:
    if args.text:
        return
    why = no_display() if args.open_window else "this program was started without one"
    if why:
        note(f"No window is opened: {why}.")
        note("tackfree import takes it into your own book; demo --list names the others.")
    else:
        args.open_window(partial(_scratch_book, args.name, path), now)


def _scratch_book(name: str, path: Path, language: str) -> Path:
    """Make the scratch book in the language of the window, and return where it lies."""
    BenchBook.create(path, demos.read(name, language).book).close()
    return path
