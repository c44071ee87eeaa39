"""Answers of the first run: how hours are read, and what is refused."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from app.service.books import starter_book
from app.service.first_run import (
    Answers,
    FirstHours,
    Vehicle,
    begin,
    kind_told,
    more,
    read_hours,
    several,
    told_air,
    told_hours,
)
from app.service.order_changes import change_orders
from app.service.own_paints import typed_paint
from planner.layers.findings import find
from planner.sequences.built_in import ALL
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import ModelKind, NamedChange
from planner.values.moment import minute_of
from planner.values.project import StageReached
from planner.values.refusal import Refused
from planner.values.room import AirPoint

TODAY = date(2031, 3, 3)


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("19:30-21:30", ("19:30", "21:30")),
        ("20-22", ("20:00", "22:00")),
        (" 9.15 – 12 ", ("09:15", "12:00")),
        ("20-24", ("20:00", "00:00")),
        ("22:00-1:00", ("22:00", "01:00")),
    ],
)
def test_hours_are_read_as_people_write_them(typed: str, read: tuple[str, str]) -> None:
    assert read_hours(typed) == read


@pytest.mark.parametrize("typed", ["", "late", "20", "25-26", "20:70-22", "20-22-23", "24-1"])
def test_what_is_no_hours_is_refused(typed: str) -> None:
    with pytest.raises(Refused, match="19:30-21:30"):
        read_hours(typed)


def _answers(**changes: object) -> Answers:
    whole: dict[str, object] = {
        "project": "On the table",
        "vehicles": (Vehicle(name="Ferry Pike", sequence="quick table-top"),),
        "hours": (FirstHours(days=frozenset({1}), start="20:00", end="22:00"),),
    }
    return Answers(**{**whole, **changes})  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("changes", "place"),
    [
        ({"vehicles": ()}, "vehicles"),
        ({"hours": ()}, "hours"),
        ({"hours": (FirstHours(days=frozenset(), start="20:00", end="22:00"),)}, "hours"),
        ({"temperature_c": 99.0}, "room"),
        ({"vehicles": (Vehicle(name="a/b", sequence="quick table-top"),)}, "vehicles"),
        ({"vehicles": (Vehicle(name="a", sequence="no such"),)}, "vehicles"),
        (
            {"vehicles": (Vehicle(name="a", sequence="quick table-top", options=("odd",)),)},
            "vehicles",
        ),
    ],
)
def test_a_refusal_names_the_question(changes: dict[str, object], place: str) -> None:
    with pytest.raises(Refused) as refused:
        begin(starter_book("UTC", TODAY), _answers(**changes), TODAY)
    assert refused.value.place.startswith(place)


def test_what_was_there_stays() -> None:
    book = begin(starter_book("UTC", TODAY), _answers(), TODAY).book
    second = _answers(
        project="More", vehicles=(Vehicle(name="Punt", sequence="figure"),), airbrush=False
    )
    after = begin(book, second, TODAY).book
    assert after.projects[0] is book.projects[0]
    assert after.gear == book.gear  # a project sprays with it
    assert [project.name for project in after.projects] == ["On the table", "More"]


def test_hours_and_air_that_are_told_as_they_stand_leave_bench_time_and_room_as_they_are() -> None:
    book = starter_book("UTC", TODAY)
    course = (
        AirPoint(at="06:00", temperature_c=16, humidity_pct=60),
        AirPoint(at="18:00", temperature_c=22, humidity_pct=40),
    )
    bench = replace(book.room.locations[0], workdays=course, weekends=course[:1])
    book = replace(book, room=replace(book.room, locations=(bench,)))
    assert told_air(book) == (19.0, 50.0)  # by hand: the means of 16 and 22, of 60 and 40
    assert told_hours(book) == (FirstHours(days=frozenset({1, 3}), start="19:30", end="21:30"),)
    told = _answers(hours=told_hours(book), temperature_c=19.0, humidity_pct=50.0)
    after = begin(book, told, date(2031, 5, 1)).book
    assert after.room == book.room
    assert after.bench_time == book.bench_time
    warmer = begin(book, replace(told, temperature_c=25.0), TODAY).book
    assert [workday.temperature_c for workday in warmer.room.locations[0].workdays] == [25.0]


def other_tongue(name: str) -> str:
    """Return what a name is in a language where all are written backwards."""
    return name[::-1]


def laid(book: Book) -> list[str]:
    """Return what every step lays, in order."""
    models = [model for project in book.projects for model in project.models]
    steps = [step for model in models for step in model.steps]
    return [application.coating for step in steps for application in step.applications]


@pytest.mark.parametrize("sequence", [one.name for one in ALL])
def test_what_comes_into_a_book_is_named_in_the_language_of_the_window(sequence: str) -> None:
    told = _answers(vehicles=(Vehicle(name="Ferry Pike", sequence=sequence),), warm_box=True)
    plain = begin(starter_book("UTC", TODAY), told, TODAY).book
    book = begin(starter_book("UTC", TODAY, other_tongue), told, TODAY, other_tongue).book
    for coating, other in (
        (book.coatings, plain.coatings),
        (book.mixes, plain.mixes),
        (book.room.locations, plain.room.locations),
        (book.gear.airbrushes, plain.gear.airbrushes),
    ):
        assert [each.name for each in coating] == [other_tongue(each.name) for each in other]
    assert find(book) == ()
    assert laid(book) == [other_tongue(name) for name in laid(plain)]
    second = replace(told, project="More")
    again = begin(book, second, TODAY, other_tongue).book
    assert (again.coatings, again.mixes) == (book.coatings, book.mixes)


def test_what_a_book_has_keeps_its_name_in_another_language() -> None:
    book = begin(starter_book("UTC", TODAY), _answers(), TODAY).book
    again = begin(book, _answers(project="More"), TODAY, other_tongue).book
    assert again.coatings == book.coatings
    made = [project.models[0].made for project in again.projects]
    assert made[0] is not None
    assert made[0] == made[1]


def lorry(name: str, **changes: object) -> Vehicle:
    told: dict[str, object] = {
        "scale": "1:72",
        "sequence": "quick table-top",
        "kind": ModelKind.WHEELED,
    }
    return Vehicle(name=name, **{**told, **changes})  # type: ignore[arg-type]


def test_one_more_like_another_has_its_colours_and_changes_too() -> None:
    book = begin(starter_book("UTC", TODAY), _answers(vehicles=(lorry("Auk"),)), TODAY).book
    key = ModelKey("On the table", "Auk")
    book = change_orders(book, [key], NamedChange.CHIPPING).book
    after = more(book, "On the table", (lorry("Coot"), lorry("Egret", scale="1:35")), like="Auk")
    auk, coot, egret = after.book.projects[0].models
    assert coot == replace(auk, name="Coot")
    assert egret.made is not None
    assert egret.made.changes == ()  # told otherwise, it is finished as its sequence says
    assert find(after.book) == ()


def test_a_vehicle_that_is_primed_begins_in_the_middle_and_takes_owned_paint() -> None:
    now = minute_of(datetime(2031, 3, 3, 18, tzinfo=UTC))
    own = typed_paint("acrylic, sand, 17 ml, A1")
    told = _answers(
        vehicles=(lorry("Auk", reached=StageReached.PRIMED, when=date(2031, 3, 1)), lorry("Coot")),
        owned=(own,),
    )
    book = begin(starter_book("UTC", TODAY), told, TODAY, now=now).book
    (project,) = book.projects
    (fact,) = project.log
    assert (fact.model, fact.step) == ("Auk", "prime-airbrush")
    assert fact.end == datetime(2031, 3, 1, 20, tzinfo=UTC)  # by the evening of that day
    bases = {
        application.coating
        for model in project.models
        for step in model.steps
        if step.id.startswith("base")
        for application in step.applications
    }
    assert bases == {own.name}
    assert next(c for c in book.coatings if c.name == own.name).in_stock_ml == 17


@pytest.mark.parametrize(
    ("typed", "names"),
    [
        ("Egret", ("Egret",)),
        ("5x Egret", tuple(f"Egret {n}" for n in range(1, 6))),
        ("Egret lorry × 2", ("Egret lorry 1", "Egret lorry 2")),
        ("Egret x1", ("Egret",)),
        ("Type 5x", ("Type 5x",)),
        ("Max 7", ("Max 7",)),
    ],
)
def test_several_of_one_kind_in_one_line(typed: str, names: tuple[str, ...]) -> None:
    assert several(typed) == names


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("Crane Lorry Egret", ModelKind.WHEELED),
        ("Moorpanzer", ModelKind.TRACKED),
        ("Tank Wagon Ibis", ModelKind.RAIL),
        ("Kleiner Schlepper", ModelKind.BOAT),
        ("Postflugzeug", ModelKind.AIRCRAFT),
        ("Lamplighter figure", ModelKind.FIGURE),
        ("Scheune", ModelKind.BUILDING),
        ("Stadtauto", ModelKind.CAR),
        ("Gannet", None),
    ],
)
def test_a_kind_that_a_name_tells(name: str, kind: ModelKind | None) -> None:
    assert kind_told(name) is kind


def test_a_new_book_has_room_for_what_is_painted_at_once() -> None:
    told = _answers(vehicles=tuple(lorry(f"L{n}", kind=ModelKind.TRACKED) for n in range(4)))
    book = begin(starter_book("UTC", TODAY), told, TODAY).book
    assert book.room.locations[0].drying_places == 16  # four parts of each of four
