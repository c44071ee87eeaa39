"""What an exchange file may change in a book, and what it never does."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from small_book import PROJECT, small_book

from app.service.importing import Household, export, import_file
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush, Gear
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location
from storage.exchange import Exchange, load


def visitor(name: str = "visitors") -> Book:
    """Return a book of somebody else: another project, room, gear and evenings."""
    book = small_book()
    cold = AirPoint(at="00:00", temperature_c=12, humidity_pct=80)
    room = replace(book.room, locations=(Location(name="shed", drying_places=2, workdays=(cold,)),))
    evenings = tuple(replace(one, start="06:00", end="07:00") for one in book.bench_time.stretches)
    return replace(
        book,
        room=room,
        bench_time=replace(book.bench_time, stretches=evenings),
        gear=Gear(airbrushes=(Airbrush(name="borrowed"),)),
        projects=(replace(book.projects[0], name=name, target=None),),
    )


def with_dries_in(book: Book, location: str) -> Book:
    project = book.projects[0]
    model = project.models[0]
    steps = (replace(model.steps[0], dries_in=location), *model.steps[1:])
    changed = replace(project, models=(replace(model, steps=steps),))
    return replace(book, projects=(changed,))


def test_the_books_own_household_wins() -> None:
    done = import_file(small_book(), Exchange(visitor()))
    assert done.book.room == small_book().room
    assert done.book.gear == small_book().gear
    assert done.book.bench_time == small_book().bench_time
    assert [project.name for project in done.book.projects] == [PROJECT, "visitors"]
    assert done.projects == (("visitors", "visitors"),)
    assert (done.already, done.differences, done.added) == ((), (), ())


def test_a_person_may_take_the_files_household() -> None:
    done = import_file(small_book(), Exchange(visitor()), theirs=frozenset(Household))
    assert done.book.room.location("").name == "shed"
    assert done.book.gear.airbrushes[0].name == "borrowed"
    assert done.book.bench_time.stretches[0].start == "06:00"


def test_a_location_that_the_steps_need_comes_along() -> None:
    done = import_file(small_book(), Exchange(with_dries_in(visitor(), "shed")))
    assert [one.name for one in done.book.room.locations] == ["bench", "shed"]
    assert done.added == ("shed",)


def test_locations_of_the_book_outlast_a_room_taken_over() -> None:
    ours = with_dries_in(small_book(), "bench")
    done = import_file(ours, Exchange(visitor()), theirs=frozenset({Household.ROOM}))
    assert [one.name for one in done.book.room.locations] == ["shed", "bench"]


def test_an_airbrush_that_the_steps_need_comes_along() -> None:
    ours = replace(small_book(), projects=(), gear=Gear())
    done = import_file(ours, Exchange(visitor()))
    assert [one.name for one in done.book.gear.airbrushes] == ["borrowed"]
    assert done.added == ("borrowed",)


def test_coatings_that_differ_are_shown_side_by_side_and_the_books_stays() -> None:
    ours, theirs = small_book(), visitor()
    warmer = replace(ours.coating("sand"), swatch="#d0a060", dry_film_um=30)
    theirs = replace(
        theirs, coatings=tuple(warmer if c.name == "sand" else c for c in theirs.coatings)
    )
    done = import_file(ours, Exchange(theirs))
    (difference,) = done.differences
    assert difference.name == "sand"
    assert difference.fields == (("swatch", "#c8b482", "#d0a060"), ("dry_film_um", 20.0, 30))
    assert not difference.taken
    assert done.book.coating("sand") == ours.coating("sand")
    taken = import_file(ours, Exchange(theirs), take=frozenset({"sand"}))
    assert taken.book.coating("sand") == warmer
    assert taken.differences[0].taken


def test_new_coatings_are_added() -> None:
    rust = Coating(name="rust", family=Family.PIGMENT)
    theirs = visitor()
    done = import_file(small_book(), Exchange(replace(theirs, coatings=(*theirs.coatings, rust))))
    assert done.book.coating("rust") == rust
    assert done.added == ("rust",)


def test_the_same_file_twice_changes_nothing() -> None:
    once = import_file(small_book(), Exchange(visitor()))
    twice = import_file(once.book, Exchange(visitor()))
    assert twice.book == once.book
    assert twice.already == ("visitors",)


def test_another_project_of_the_same_name_gets_a_new_one() -> None:
    done = import_file(small_book(), Exchange(visitor(PROJECT)))
    assert done.projects == ((PROJECT, "yard (2)"),)
    assert done.book.project(PROJECT).target == date(2031, 4, 30)  # ours, untouched
    assert done.book.project("yard (2)").target is None


def test_a_coating_that_is_a_mix_in_the_book_is_refused() -> None:
    theirs = visitor()
    clash = Coating(name="thin sand", family=Family.WATERBORNE_ACRYLIC)
    theirs = replace(theirs, coatings=(*theirs.coatings, clash), mixes=())
    with pytest.raises(Refused, match="thin sand"):
        import_file(small_book(), Exchange(theirs))


def test_all_that_goes_out_comes_in_again() -> None:
    read = load(export(small_book(), note="to whom it may concern"))
    assert read == Exchange(small_book(), "to whom it may concern")


def test_one_project_goes_out_with_what_it_needs() -> None:
    book = import_file(small_book(), Exchange(visitor())).book
    rust = Coating(name="rust", family=Family.PIGMENT)
    out = load(export(replace(book, coatings=(*book.coatings, rust)), ("visitors",))).book
    assert [project.name for project in out.projects] == ["visitors"]
    assert [mix.name for mix in out.mixes] == ["thin sand"]
    names = {coating.name for coating in out.coatings}
    assert names == {"grey primer", "sand", "water thinner", "gloss clear", "dark oil"}
