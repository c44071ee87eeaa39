"""Examine the order of coats before anything is planned."""

from __future__ import annotations

import argparse

from app.command_line.output import FINE, NOT_SOUND, answer, document
from app.command_line.source import add_json, add_source, book_of
from app.service import findings, words

EXAMPLES = """\
  tackfree check harbour.json        findings with reason, source and mend
  tackfree check --json              your bench book, for another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print the findings; status 1 if some make the order unsound."""
    book = book_of(args)
    found = findings.find(book)
    sound = not any(one.grave for one in found)
    if args.json:
        document({"sound": sound, "findings": [one.document() for one in found]})
        return FINE if sound else NOT_SOUND
    for one in found:
        answer(f"{one.verdict}: {one.about}: {one.message}")
        answer(f"    at: {one.where}")
        if one.mend:
            answer(f"    mend: {one.mend}")
        if one.source:
            answer(f"    source: {one.source}")
    answer(("sound" if sound else "not sound") + f": {words.count(len(found), 'finding')}")
    return FINE if sound else NOT_SOUND
