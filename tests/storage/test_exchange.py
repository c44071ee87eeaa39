"""The exchange file: lossless, strict, and never a traceback."""

import copy
import hashlib
import inspect
import json
from datetime import datetime
from importlib import resources
from itertools import islice
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from dateutil.rrule import rrulestr
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from rich_books import rich_books

from planner.values.refusal import Refused
from storage.exchange import Exchange, digest, dump, load, schema, schema_text
from storage.to_json import plain

DEMOS = sorted((Path(__file__).parents[2] / "demo_projects").glob("*.json"))

SMALL: dict[str, Any] = {
    "tackfree": 1,
    "note": "An invented cart.",
    "coatings": [{"name": "matte clear", "family": "waterborne acrylic"}],
    "room": {
        "locations": [
            {
                "name": "bench",
                "drying_places": 4,
                "workdays": [{"at": "00:00", "temperature_c": 21, "humidity_pct": 50}],
            }
        ]
    },
    "bench_time": {
        "zone": "Europe/Warsaw",
        "stretches": [
            {
                "rule": "FREQ=WEEKLY;BYDAY=TU",
                "since": "2031-01-01",
                "start": "19:30",
                "end": "21:00",
            }
        ],
    },
    "projects": [
        {
            "name": "carts",
            "models": [
                {
                    "name": "cart",
                    "parts": [{"name": "hull", "places": [{"name": "all over"}]}],
                    "steps": [
                        {
                            "id": "seal",
                            "stage": "varnish",
                            "minutes": {"fixed": 10},
                            "applications": [{"places": ["hull"], "coating": "matte clear"}],
                        }
                    ],
                }
            ],
            "log": [{"model": "cart", "step": "seal", "start": "2031-01-07T19:30:00+01:00"}],
        }
    ],
}


def encoded(document: object) -> bytes:
    return json.dumps(document).encode()


def changed(*path: str | int, to: object) -> bytes:
    document = copy.deepcopy(SMALL)
    spot: Any = document
    for key in path[:-1]:
        spot = spot[key]
    spot[path[-1]] = to
    return encoded(document)


STEP = ("projects", 0, "models", 0, "steps", 0)
AT_STEP = "projects[0].models[0].steps[0]"


@drawn(30)
@given(rich_books(), st.text(max_size=20).filter(lambda text: "\0" not in text))
def test_round_trip_loses_nothing(book, note):
    note = note.encode("utf-8", "replace").decode()
    exchange = Exchange(book, note)
    written = dump(exchange)
    assert load(written) == exchange
    assert dump(load(written)) == written
    assert digest(load(written).book) == digest(book)
    whole = json.dumps(plain(book), sort_keys=True, separators=(",", ":"))
    assert digest(book) == hashlib.sha256(whole.encode()).hexdigest()[:32]


@drawn(15)
@given(rich_books())
def test_what_is_written_keeps_the_schema(book):
    jsonschema.Draft202012Validator(SCHEMA).validate(json.loads(dump(Exchange(book))))


SCHEMA = schema()


def test_defaults_are_left_out():
    written = json.loads(dump(load(encoded(SMALL))))
    assert written == {
        **SMALL,
        "room": {"locations": [SMALL["room"]["locations"][0]]},
    }


@pytest.mark.parametrize(
    ("data", "refusal"),
    [
        (
            changed(*STEP, "applications", 0, "coating", to="clear matte"),
            f'{AT_STEP}.applications[0].coating: no coating is called "clear matte"; '
            'did you mean "matte clear"?',
        ),
        (
            changed(*STEP, "minutes", "fixed", to="10"),
            f"{AT_STEP}.minutes.fixed: is text, but must be a whole number of minutes",
        ),
        (
            changed(*STEP, "minutes", "fixed", to=-10),
            f"{AT_STEP}.minutes.fixed: -10 min is outside 0 to 1440 min",
        ),
        (
            changed(*STEP, "minutes", "fixed", to=2.5),
            f"{AT_STEP}.minutes.fixed: is the number 2.5, but must be a whole number of minutes",
        ),
        (
            changed(*STEP, "helper", to=1),
            f"{AT_STEP}.helper: is the number 1, but must be true or false",
        ),
        (
            changed(*STEP, "minute", to=10),
            f'{AT_STEP}: no field is called "minute"; did you mean "minutes"?',
        ),
        (
            changed(*STEP, "stage", to="varnishing"),
            f'{AT_STEP}.stage: no stage is called "varnishing"; did you mean "varnish"?',
        ),
        (
            changed(*STEP, "tool", to="xxx"),
            f'{AT_STEP}.tool: no tool is called "xxx"; use one of: '
            "airbrush, brush, spray can, sponge, cloth, hand",
        ),
        (
            changed(*STEP[:4], "kind", to="bot"),
            'projects[0].models[0].kind: no model kind is called "bot"; did you mean "boat"?',
        ),
        (
            changed(*STEP, "applications", to={}),
            f"{AT_STEP}.applications: is an object, but must be a list [...]",
        ),
        (
            changed(*STEP, "minutes", to=None),
            f"{AT_STEP}.minutes: is null, but must be an object {{...}}",
        ),
        (
            changed("bench_time", "stretches", 0, "since", to="2031-02-29"),
            'bench_time.stretches[0].since: "2031-02-29" is not a date such as 2031-05-31',
        ),
        (
            changed("projects", 0, "log", 0, "start", to="2031-01-07T19:30:00"),
            "projects[0].log[0].start: has no time zone; write an offset such as +01:00",
        ),
        (
            changed("projects", 0, "log", 0, "start", to="half past seven"),
            'projects[0].log[0].start: "half past seven" is not a time with its zone, such as '
            "2031-05-31T19:30:00+02:00",
        ),
        (
            changed("coatings", 0, "solids", to=float("nan")),
            "coatings[0].solids: is not a finite number of sensible size",
        ),
        (
            changed("coatings", 0, "dry_film_um", to=10**400),
            "coatings[0].dry_film_um: is not a finite number of sensible size",
        ),
        (
            changed("coatings", 0, "name", to="sand\ud800"),
            "coatings[0].name: holds half a character or a zero byte; remove it",
        ),
        (
            changed("room", "locations", 0, "workdays", 0, "temperature_c", to=200),
            "room.locations[0].workdays[0].temperature_c: 200 °C is outside -30 to 60 °C",
        ),
        (
            changed("tackfree", to=2),
            "tackfree: is version 2, made by a newer Tackfree; this one reads up to version 1, "
            "so update it first",
        ),
        (changed("tackfree", to=0), "tackfree: is no version there has been; use 1"),
        (
            encoded({key: SMALL[key] for key in SMALL if key != "tackfree"}),
            'tackfree: is missing; an exchange file begins with {"tackfree": 1}',
        ),
        (
            encoded({key: SMALL[key] for key in SMALL if key != "room"}),
            "room: is missing; it must be an object {...}",
        ),
        (b'{"tackfree": 1, "room": {"a": 1, "a": 2}}', "room.a: is given twice; remove one"),
        (b"", "is empty; it must hold a JSON object"),
        (b"\xff\xfe{}", "is not UTF-8 text (byte 0); save it as UTF-8"),
        (b'{"tackfree": 1,\n', "line 2, column 1: is not JSON"),
        (b"[" * 200_000, "is nested too deeply; it must be flatter"),
        (b"9" * 100_000, "must be an object"),
        (b"null", "must be an object"),
    ],
)
def test_refused_by_path_and_mend(data: bytes, refusal: str):
    with pytest.raises(Refused) as caught:
        load(data)
    said = str(caught.value)
    assert said.startswith(refusal)
    assert "\n" not in said


def test_a_file_too_large_is_not_read():
    with pytest.raises(Refused, match="larger than 20 MB"):
        load(b" " * 20_000_001)


def test_a_byte_order_mark_is_no_fault():
    assert load(b"\xef\xbb\xbf" + encoded(SMALL)) == load(encoded(SMALL))


def refused_or_read(data: bytes) -> None:
    try:
        read = load(data)
    except Refused as refusal:
        said = str(refusal)
    else:
        assert load(dump(read)) == read
        return
    assert "\n" not in said
    assert len(said) < 1000


@drawn(300)
@given(st.binary(max_size=200))
def test_any_bytes_are_read_or_refused(data: bytes):
    refused_or_read(data)
    refused_or_read(b'{"tackfree": 1, "room": ' + data + b"}")


def spots(value: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    inner = (
        value.items()
        if isinstance(value, dict)
        else enumerate(value)
        if isinstance(value, list)
        else ()
    )
    return [path, *(deep for key, entry in inner for deep in spots(entry, (*path, key)))]


ODD = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=12)
    | st.lists(st.integers(), max_size=2)
    | st.dictionaries(st.text(max_size=5), st.integers(), max_size=2)
)


@drawn(150)
@given(st.sampled_from(spots(SMALL)[1:]), ODD)
def test_any_value_anywhere_is_read_or_refused(path, odd):
    refused_or_read(changed(*path, to=odd))


RULES = st.lists(
    st.sampled_from(["INTERVAL", "COUNT", "UNTIL", "BYDAY", "BYMONTH", "BYSETPOS", "WKST", "X"]),
    unique=True,
    max_size=3,
).flatmap(
    lambda names: st.tuples(
        st.sampled_from(["DAILY", "WEEKLY", "MONTHLY", "YEARLY", "HOURLY", ""]),
        *(
            st.sampled_from(
                ["0", "-1", "1", "99", "MO", "+2MO", "99MO", "", "20310101", "1e3"]
            ).map(f"{name}={{}}".format)
            for name in names
        ),
    ).map(lambda fields: ";".join([f"FREQ={fields[0]}", *fields[1:]]))
)


@drawn(120)  # a rule without any day takes a second to refuse
@given(RULES)
def test_any_recurrence_rule_is_read_or_refused(rule):
    data = changed("bench_time", "stretches", 0, "rule", to=rule)
    refused_or_read(data)
    try:
        load(data)
    except Refused:
        return
    # what was accepted can be expanded: dateutil stumbles over or loops on some rules only then
    days = list(islice(rrulestr(rule, dtstart=datetime(2031, 1, 1)), 20))  # noqa: DTZ001
    assert days == sorted(set(days))


def test_the_committed_schema_is_up_to_date():
    committed = resources.files("storage").joinpath("exchange.schema.json").read_text("utf-8")
    assert committed == schema_text(), (
        "run: python -m storage.exchange > storage/exchange.schema.json"
    )


def test_what_a_value_demands_quotes_no_more_of_the_file_than_fits_a_line():
    raw = json.loads(json.dumps(SMALL))
    raw["bench_time"]["zone"] = "two\nlines" + "x" * 2000
    with pytest.raises(Refused) as caught:
        load(json.dumps(raw).encode())
    assert caught.value.place == "bench_time.zone"
    assert "two" in caught.value.mend
    assert "\n" not in caught.value.mend
    assert len(caught.value.mend) <= 400


def test_no_description_keeps_the_indentation_of_its_docstring():
    """Whether a library or Python takes it away has changed between their versions."""
    told = [part["description"] for part in SCHEMA["$defs"].values() if "description" in part]
    assert len(told) > 20
    assert [text for text in told if inspect.cleandoc(text) != text] == []


def test_the_schema_is_one():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


@pytest.mark.parametrize(
    "data",
    [
        changed(*STEP, "minute", to=10),
        changed(*STEP, "stage", to="varnishing"),
        changed("tackfree", to=2),
        changed("extra", to=1),
    ],
)
def test_the_schema_refuses_too(data: bytes):
    assert not jsonschema.Draft202012Validator(SCHEMA).is_valid(json.loads(data))


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.stem)
def test_the_demo_projects_keep_format_and_schema(path: Path):
    data = path.read_bytes()
    jsonschema.Draft202012Validator(SCHEMA).validate(json.loads(data))
    read = load(data)
    assert load(dump(read)) == read
