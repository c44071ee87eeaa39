"""What a field's metadata says is what the value, the reader and the schema go by."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, datetime
from typing import Annotated

import pytest

from planner.values.book import Book
from planner.values.field import Field, Value, fields_of, values_within
from planner.values.refusal import Refused
from storage.exchange import schema
from storage.strict import build


@dataclass(frozen=True, kw_only=True)
class Jar(Value):
    """Invented, for these tests."""

    ml: Annotated[float, Field("&Holds", unit="ml", least=0.5, most=20)] = 5
    drops: Annotated[int | None, Field(least=1, most=9)] = None
    label: Annotated[str, Field(most=5)] = ""
    filled: date | None = None
    used: datetime | None = None
    with_: Annotated[tuple[str, ...], Field(unique="")] = ()


@pytest.mark.parametrize(
    "given",
    [
        {"ml": 0.5},
        {"ml": 20},
        {"drops": None},
        {"drops": 1},
        {"label": "abcde"},
        {"filled": date(2199, 12, 31)},
        {"with_": ("a", "b")},
    ],
)
def test_what_stands_on_the_edge_of_its_range_is_taken(given: dict[str, object]):
    Jar(**given)


@pytest.mark.parametrize(
    ("given", "line"),
    [
        ({"ml": 0.4}, "ml: 0.4 ml is outside 0.5 to 20 ml"),
        ({"ml": math.nan}, "ml: nan ml is outside 0.5 to 20 ml"),
        ({"drops": 10}, "drops: 10 is outside 1 to 9"),
        ({"label": "abcdef"}, "label: is longer than 5 characters; shorten it"),
        ({"filled": date(2200, 1, 1)}, "filled: lies outside the years 1971 to 2199"),
        (
            {"used": datetime(2031, 5, 31)},  # noqa: DTZ001 - that is the fault
            "used: has no time zone; write an offset such as +01:00",
        ),
        ({"with_": ("a", "a")}, 'with_[1]: "a" occurs twice; rename one'),
    ],
)
def test_what_lies_beyond_is_refused_by_its_field(given: dict[str, object], line: str):
    with pytest.raises(Refused) as caught:
        Jar(**given)
    assert caught.value.line == line


def test_the_reader_asks_for_the_unit_of_the_field():
    with pytest.raises(Refused) as caught:
        build({"ml": "much"}, Jar)
    assert caught.value.line == "ml: is text, but must be a number of ml"


def test_every_range_of_a_book_stands_in_the_schema():
    parts = {**schema()["$defs"], "Book": schema()}
    ranged = 0
    for kind in values_within(Book):
        for name, described in fields_of(kind).items():
            field, told = described.field, parts[kind.__name__]["properties"][name]
            if described.kind in (int, float):
                ranged += 1
                assert told.get("minimum", -math.inf) == field.least, (kind, name)
                assert told.get("maximum", math.inf) == field.most, (kind, name)
            assert told.get("title", "").partition(" [")[0] == field.title.replace("&", "")
    assert ranged > 50
