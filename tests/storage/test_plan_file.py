"""The plan as a document: complete, lossless, and read from anywhere."""

import json
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from strategies import NOW_MINUTE, books

from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.moment import Interval, minute_of
from planner.values.plan import (
    BenchKind,
    BenchWork,
    Cause,
    Cost,
    PassKey,
    Placement,
    Plan,
    ProvenBound,
    Reason,
    Status,
    Unplaced,
)
from planner.values.refusal import Refused
from storage.exchange import dump_plan, load, load_plan

DEMO = Path(__file__).parents[2] / "demo_projects" / "harbour_tenders.json"


def encoded(document: object) -> bytes:
    return json.dumps(document).encode()


@pytest.fixture(scope="module")
def tenders():
    book = load(DEMO.read_bytes()).book
    return replace(book, bench_time=replace(book.bench_time, zone="Europe/Warsaw"))


def at(text: str) -> int:
    return minute_of(datetime.fromisoformat(text))


def made_up(book) -> Plan:
    """A plan with everything in it: two pieces across the spring change of clocks in Warsaw,
    at 02:00 +01:00 on 30 March 2031, the last Sunday (Directive 2000/84/EC, article 2)."""
    project = replace(book.projects[0], target=date(2031, 3, 29))
    model = project.models[0]
    key = PassKey(project.name, model.name, model.steps[0].id)
    pieces = (
        Interval(at("2031-03-29T23:00+01:00"), at("2031-03-30T00:30+01:00")),
        Interval(at("2031-03-30T19:00+02:00"), at("2031-03-30T19:40+02:00")),
    )
    drying = Reason(Cause.DRYING, at("2031-03-29T22:50+01:00"), "gloss", "solvent-safe")
    return Plan(
        now=at("2031-03-29T12:00+01:00"),
        placements=(Placement(key, pieces, "wide brush", drying, logged=True),),
        bench=(
            BenchWork(
                BenchKind.LOAD, Interval(pieces[0].start - 3, pieces[0].start), "wide brush", "sand"
            ),
            BenchWork(BenchKind.PREPARE, Interval(pieces[0].end, pieces[0].end + 4), serves=key),
        ),
        unplaced=(Unplaced(key._replace(coat=2), "never dries"),),
        status=Status.INCOMPLETE,
        cost=Cost(1, 1180, 2000, 2, 3, 4),
        finishes=((project.name, pieces[-1].end),),
        bounds=(ProvenBound("finish", 1900, "relaxation"),),
        digest="abc",
    )


@drawn(15)
@given(books(most_models=2, most_blocks=2, logged=True, pinned=True))
def test_what_is_written_is_read_back(book):
    plan = plan_book(book, NOW_MINUTE)
    read = load_plan(encoded(dump_plan(plan, book)))
    assert read == plan
    assert judge(book, read) == judge(book, plan)


def test_everything_in_a_plan_is_kept(tenders):
    plan = made_up(tenders)
    assert load_plan(encoded(dump_plan(plan, tenders))) == plan


def test_the_document_keeps_the_contract(tenders):
    plan = made_up(tenders)
    project = replace(tenders.projects[0], target=date(2031, 3, 29))
    document = dump_plan(plan, replace(tenders, projects=(project,)))
    assert {
        "placements", "bench", "finish", "evenings", "setup_minutes", "late", "bound", "status",
        "now", "input", "unplaced", "finishes",
    } <= document.keys()  # fmt: skip
    (placed,) = document["placements"]
    assert {
        "project", "model", "step", "coat", "parts", "stage", "start", "end", "evening", "pieces",
        "airbrush", "reason",
    } <= placed.keys()  # fmt: skip
    assert {"cause", "until", "about", "detail", "text"} == placed["reason"].keys()
    step = project.models[0].steps[0]
    assert placed["stage"] == step.stage.value
    assert set(placed["parts"]) == {name.partition("/")[0] for name in step.references()}
    # offsets of winter and summer, from the Directive above
    assert placed["start"] == "2031-03-29T23:00:00+01:00"
    assert placed["end"] == document["finish"] == "2031-03-30T19:40:00+02:00"
    assert [piece["start"] for piece in placed["pieces"]] == [
        "2031-03-29T23:00:00+01:00",
        "2031-03-30T19:00:00+02:00",
    ]
    # from midnight to 19:40 are 18 h 40 min on the day that loses an hour: 1120 min
    assert document["late"] == [{"project": project.name, "target": "2031-03-29", "minutes": 1120}]
    assert document["input"] == "abc"


def test_an_evening_past_midnight_keeps_the_date_on_which_it_began(tenders):
    plan = made_up(tenders)
    evening = tenders.bench_time.stretches[0]
    night = replace(evening, rule="FREQ=DAILY", since=date(2031, 3, 1), start="22:00", end="01:30")
    late = Interval(at("2031-03-12T00:20+01:00"), at("2031-03-12T00:40+01:00"))
    moved = replace(plan, placements=(replace(plan.placements[0], pieces=(late,)),))
    book = replace(tenders, bench_time=replace(tenders.bench_time, stretches=(night,)))
    assert dump_plan(moved, book)["placements"][0]["evening"] == "2031-03-11"


MINIMAL = {
    "now": "2031-03-03T18:00:00+01:00",
    "placements": [
        {
            "project": "carts",
            "model": "cart",
            "step": "prime",
            "start": "2031-03-03T19:00:00+01:00",
            "end": "2031-03-03T19:10:00+01:00",
        }
    ],
}


def test_a_plan_made_elsewhere_needs_little():
    plan = load_plan(encoded(MINIMAL))
    start = minute_of(datetime(2031, 3, 3, 19, 0, tzinfo=ZoneInfo("Europe/Warsaw")))
    assert plan.placements == (
        Placement(PassKey("carts", "cart", "prime", 1), (Interval(start, start + 10),)),
    )
    assert (plan.now, plan.status, plan.bench) == (start - 60, Status.FEASIBLE, ())
    assert plan.cost == Cost(unplaced=0, late=0, finish=70, stretches=0, setup_minutes=0)


def spoilt(to: object, *path: str | int) -> bytes:
    document = json.loads(json.dumps(MINIMAL))
    spot = document
    for key in path[:-1]:
        spot = spot[key]
    spot[path[-1]] = to
    return encoded(document)


@pytest.mark.parametrize(
    ("data", "refusal"),
    [
        (b"", "is empty"),
        (b"[]", 'must be an object {"now"'),
        (b"{}", "now: is missing; it must be a time with its zone"),
        (encoded({"now": MINIMAL["now"]}), "placements: is missing; it must be a list"),
        (
            spoilt("2031-03-03T18:00:00", "placements", 0, "start"),
            "placements[0].start: has no time zone",
        ),
        (
            spoilt("2031-03-03T18:00:30+01:00", "placements", 0, "start"),
            "placements[0].start: is not a whole minute",
        ),
        (
            spoilt("2031-03-03T20:00:00+01:00", "placements", 0, "start"),
            "placements[0].end: must lie after start",
        ),
        (spoilt("1", "placements", 0, "coat"), "placements[0].coat: is text"),
        (spoilt("x", "placements", 0, "begin"), 'placements[0]: no field is called "begin"'),
        (
            spoilt([{"start": MINIMAL["now"], "end": "2031-03-03T19:10:00+01:00"}],
                   "placements", 0, "pieces"),
            "placements[0].pieces: must begin at start",
        ),
        (spoilt({"cause": "moon"}, "placements", 0, "reason"), "placements[0].reason.cause: no"),
        (spoilt("done", "status"), 'status: no status is called "done"; use one of: optimal'),
        (spoilt([{"kind": "load"}], "bench"), "bench[0].start: is missing"),
    ],
)  # fmt: skip
def test_garbage_is_refused_by_its_path(data, refusal):
    with pytest.raises(Refused) as caught:
        load_plan(data)
    assert str(caught.value).startswith(refusal)


@drawn(200)
@given(
    st.binary(max_size=60),
    st.none() | st.integers() | st.floats() | st.text(max_size=9) | st.lists(st.none()),
    st.sampled_from([("now",), ("placements",), ("placements", 0), ("placements", 0, "start")]),
)
def test_any_bytes_are_read_or_refused(data, odd, path):
    for document in (data, spoilt(odd, *path)):
        try:
            load_plan(document)
        except Refused as refusal:
            said = str(refusal)
        else:
            said = ""
        assert "\n" not in said
