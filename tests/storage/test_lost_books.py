"""A few of the trials of ``tests/benchmarks/lost_books.py``, each with a seed of its own."""

import pytest
from benchmarks.lost_books import TRIALS, run

COUNTS = {"damaged": 12, "foreign": 3, "killed_upgrading": 1, "killed_restoring": 1}


@pytest.mark.parametrize("name", TRIALS)
def test_nothing_is_lost_broken_or_silent(name):
    found = run(name, COUNTS.get(name, 1), seed=7)
    assert (found.lost, found.broken, found.silent, found.tracebacks, found.hangs) == (0,) * 5
