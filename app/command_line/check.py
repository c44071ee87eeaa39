"""Examine the order of coats before anything is planned."""

from __future__ import annotations

import argparse

from app.command_line.book_source import add_json, add_source, book_of
from app.command_line.output import FINE, NOT_SOUND, answer, document, note
from app.service import findings, wording
from app.service.books import open_book
from app.service.overtaken_work import overtaken_lines
from planner.values.book import Book
from storage import photos

EXAMPLES = """\
  tackfree check harbour.json        findings with reason, source and mend
  tackfree check --choices           and where practice is divided
  tackfree check --json              your bench book, for another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    parser.add_argument(
        "--choices", action="store_true", help="tell where practice is divided, and what you chose"
    )
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print the findings; status 1 if some make the order unsound."""
    book = book_of(args)
    found = findings.find(book)
    if args.file is None:
        _tell_lost_photos(args, book)
    for line in overtaken_lines(book):
        note(line)
    divided = findings.divided(book)
    sound = not any(finding.grave for finding in found)
    if args.json:
        document(
            {
                "sound": sound,
                "findings": [finding.document() for finding in found],
                "practice_divided": [divided.document() for divided in divided],
            }
        )
        return FINE if sound else NOT_SOUND
    for finding in found:
        answer(f"{finding.verdict}: {finding.about}: {finding.message}")
        answer(f"    at: {finding.where}")
        if finding.mend:
            answer(f"    mend: {finding.mend}")
        if finding.source:
            answer(f"    source: {finding.source}")
    if args.choices:
        _tell_divided(divided)
    elif divided:
        told = wording.count(len(divided), "question")
        note(f"practice is divided on {told} that your order answers; --choices tells them")
    answer(("sound" if sound else "not sound") + f": {wording.count(len(found), 'finding')}")
    return FINE if sound else NOT_SOUND


def _tell_divided(divided: tuple[findings.Divided, ...]) -> None:
    """Tell what practitioners do either way, and which way the order goes; none is a fault."""
    for asked in divided:
        answer(f"practice is divided: {asked.question}")
        answer(f"    yours: {asked.chosen}: {asked.reason} ({', '.join(asked.models)})")
        answer(f"    or: {asked.other}: {asked.other_reason}")


def _tell_lost_photos(args: argparse.Namespace, book: Book) -> None:
    """Say which photos of the logbook and of sample cards the book's folder lacks."""
    with open_book(getattr(args, "book", None)) as bench:
        lost = photos.missing(bench.path, book)
        folder = photos.folder_of(bench.path)
    if lost:
        note(f"{wording.count(len(lost), 'photo')} missing from {folder}: {', '.join(lost[:3])}")
