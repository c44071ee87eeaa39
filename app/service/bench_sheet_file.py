"""The bench sheet as a file, drawn by a process of its own.

Only Qt draws it, and Qt ends the process in which one of its libraries is
missing; it also needs no display, which the window cannot do without.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from dataclasses import replace
from enum import StrEnum
from pathlib import Path

from planner.values.book import Book
from planner.values.message import Translate, message
from planner.values.plan import Plan
from planner.values.refusal import Refused

DRAWN = "drawn"  # the last word of the process that has done its work
SECONDS = 300
BOOK, PLAN, SHEET = "book.json", "plan.json", "sheet.pdf"


class Paper(StrEnum):
    """Sizes of paper: ISO 216 and ANSI/ASME Y14.1."""

    A4 = "A4"
    LETTER = "Letter"


def sheet_bytes(
    book: Book,
    plan: Plan,
    paper: Paper = Paper.A4,
    *,
    tonight: bool = False,
    language: str = "en",
    translate: Translate = str,
) -> bytes:
    """Return the bench sheet of a plan as a PDF file.

    Parameters
    ----------
    language
        What the sheet speaks (BCP 47).
    translate
        To that language, for what the plan says: a file of it keeps no more than text.

    Raises
    ------
    Refused
        If it cannot be drawn here, with what Qt says.
    """
    # Not at a start: the menu asks this module for the sizes of paper.
    from storage.exchange import Exchange, dump, dump_plan  # noqa: PLC0415

    with tempfile.TemporaryDirectory(prefix="tackfree-sheet-") as name:
        folder = Path(name)
        (folder / BOOK).write_bytes(dump(Exchange(book)))
        (folder / PLAN).write_text(
            json.dumps(dump_plan(_spoken(plan, translate), book)), encoding="utf-8"
        )
        # -P: a folder called "app" where one happens to stand is not ours.
        words = [sys.executable, "-P", "-m", "app.window.sheet", str(folder), paper.value, language]
        said = _run([*words, "tonight"] if tonight else words)
        drawn = folder / SHEET
        if not said.stdout.strip().endswith(DRAWN) or not drawn.is_file():
            raise Refused("bench sheet", _why(said))
        return drawn.read_bytes()


def _spoken(plan: Plan, translate: Translate) -> Plan:
    unplaced = (replace(unplaced, why=translate(unplaced.why)) for unplaced in plan.unplaced)
    return replace(plan, unplaced=tuple(unplaced))


def _run(command: list[str]) -> subprocess.CompletedProcess[str]:
    try:
        return subprocess.run(  # noqa: S603 - our own interpreter and module
            command,
            env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
            capture_output=True,
            text=True,
            timeout=SECONDS,
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired) as problem:
        raise Refused(
            "bench sheet", message("was not drawn in {seconds} s; try again", seconds=SECONDS)
        ) from problem


def _why(said: subprocess.CompletedProcess[str]) -> str:
    lines = [line.strip() for line in said.stderr.splitlines() if line.strip()]
    if "Traceback" in said.stderr and not lines[-1].startswith("ImportError"):
        raise RuntimeError(f"the bench sheet was not drawn: {said.stderr[-2000:]}")
    last = (
        lines[-1][:200]
        if lines
        else message("it ended with status {number}", number=said.returncode)
    )
    return message(
        "cannot be drawn: {last}; the README names the libraries that Qt needs", last=last
    )
