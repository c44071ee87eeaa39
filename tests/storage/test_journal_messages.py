"""What the journal calls an edit is kept as a template with what was put in."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest
from sqlalchemy import create_engine, update

from planner.values.coating import State
from planner.values.message import Message, called
from storage import journal
from storage.bench_book import BenchBook
from storage.errors import BookTrouble
from storage.tables import JOURNAL

NAMES = [
    called("new book"),
    called("{model}: {{braces}} in {n:g} of {many} words", model="a {b} c", n=2.5, many=3),
    called("from {day:%a %Y-%m-%d} on", day=date(2031, 3, 6)),
    called("at {at:%H:%M}", at=datetime(2031, 3, 6, 19, 30, tzinfo=UTC)),
    called("reached {state}", state=State.PRINT_FREE),
    called("give {name} to {whom}", name="way", whom=called("{n} models", n=2)),
]


@pytest.mark.parametrize("name", NAMES, ids=str)
def test_template_and_arguments_outlast_the_file(name, book_path, demo_book):
    with BenchBook.open(book_path) as bench:
        bench.apply(name, replace(demo_book, projects=()))
    with BenchBook.open(book_path) as bench:
        kept = bench.undoable()
    assert isinstance(kept, Message)
    assert (kept, kept.template) == (name, name.template)
    assert kept.arguments == name.arguments


def test_bare_text_stays_bare(book_path, demo_book):
    with BenchBook.open(book_path) as bench:
        bench.apply("a {b}", replace(demo_book, projects=()))
        kept = bench.undoable()
    assert kept == "a {b}"
    assert not isinstance(kept, Message)


@pytest.mark.parametrize(
    "arguments", ['{"m": 2}', "[]", "{", '{"n": {"day": 1}}', '{"n": {}}', "3"]
)
def test_words_that_make_no_sense_are_damage(arguments, book_path, demo_book):
    with BenchBook.open(book_path) as bench:
        bench.apply(called("{n} models", n=2), replace(demo_book, projects=()))
    engine = create_engine(f"sqlite:///{book_path}")
    with engine.begin() as connection:
        own = JOURNAL.c.name.like("%models")
        connection.execute(update(JOURNAL).where(own).values(arguments=arguments))
        journal.seal(connection)  # as if it had been written so
    engine.dispose()
    with pytest.raises(BookTrouble, match="is damaged"), BenchBook.open(book_path) as bench:
        bench.undoable()
