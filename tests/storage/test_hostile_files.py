"""A few of the files of ``tests/benchmarks/hostile_files.py``, and the largest and deepest."""

import random

import pytest
from benchmarks.hostile_files import changed, walk

from app.service import demos
from planner.values.refusal import Refused
from storage.exchange import load


def test_changed_files_are_refused_in_one_line_or_taken_in_whole():
    drawn = random.Random(11)
    mine = demos.read("lone_lamplighter").book
    data = demos.data("lone_lamplighter")
    came = {walk(changed(data, drawn), mine) for _ in range(40)}
    assert came <= {"refused", "taken"}


@pytest.mark.parametrize(
    "data",
    [
        b"[" * 100_000,
        b'{"a":' * 100_000,
        b'{"tackfree": 1, "projects": ' + b"[" * 100_000 + b"]" * 100_000 + b"}",
        b" " * 21_000_000,
        b'{"tackfree": ' + b"9" * 100_000 + b"}",
        b'{"tackfree": 1, "note": "' + b"x" * 100_000 + b'"}',
    ],
    ids=["lists", "objects", "closed", "large", "number", "text"],
)
def test_the_deepest_and_largest_are_refused_in_one_line(data):
    with pytest.raises(Refused) as caught:
        load(data)
    assert "\n" not in str(caught.value)
    assert len(str(caught.value)) < 500
