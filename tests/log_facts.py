"""Facts written straight into a bench book, for the tests of storage."""

from __future__ import annotations

from planner.evening import log_entries
from planner.values.plan import PassKey
from planner.values.project import Logged
from storage.bench_book import BenchBook


def log_fact(bench: BenchBook, name: str, project: str, fact: Logged) -> int:
    """Write down that a coat was begun, or ended; it replaces an entry of the same coat."""
    book = bench.book()
    there = log_entries.entry_of(book, log_entries.key_of(project, fact)) is not None
    change = log_entries.corrected if there else log_entries.written
    return bench.apply(name, change(book, project, fact))


def unlog(bench: BenchBook, name: str, project: str, model: str, step: str) -> int:
    """Take back a fact of a first coat."""
    return bench.apply(name, log_entries.without(bench.book(), PassKey(project, model, step)))
