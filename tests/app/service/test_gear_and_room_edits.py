"""Edits of airbrushes and of the places where films dry."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest
from drawn_examples import drawn
from hypothesis import given
from rich_books import rich_books
from small_book import NOW, ZONE, key, small_book

from app.service import gear_edits, logbook, room_edits
from planner.values.book import Book
from planner.values.gear import Airbrush
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Reading

WARM = AirPoint(at="00:00", temperature_c=35, humidity_pct=25)
BOX = Location(name="warm box", drying_places=3, workdays=(WARM,))


def with_box() -> Book:
    """Return a book in which the cart's primer dries in a warm box, its sand there or not."""
    book = room_edits.put_location(small_book(), "", BOX).book
    reading = Reading(
        at=datetime(2031, 3, 6, 19, tzinfo=ZONE),
        temperature_c=34,
        humidity_pct=30,
        location="warm box",
    )
    (project,) = book.projects
    (cart,) = project.models
    prime, sand, *others = cart.steps
    prime = replace(prime, dries_in="warm box")
    sand = replace(sand, or_in=("warm box",))
    cart = replace(cart, steps=(prime, sand, *others))
    room = replace(book.room, readings=(reading,))
    return replace(book, room=room, projects=(replace(project, models=(cart,)),))


def test_airbrushes_are_added_changed_and_removed() -> None:
    book = small_book()
    (first,) = book.gear.airbrushes
    wide = Airbrush(name="wide one", least_fill_ml=2, transfer=0.4)
    two = gear_edits.put_airbrush(book, "", wide).book
    assert two.gear.airbrushes == (first, wide)
    slow = replace(wide, name="slow one", clean_minutes=12)
    changed = gear_edits.put_airbrush(two, "wide one", slow).book
    assert changed.gear.airbrushes == (first, slow)
    assert gear_edits.remove_airbrush(changed, "slow one").book == book


def test_the_logbook_follows_the_new_name_of_an_airbrush() -> None:
    book = small_book()
    (first,) = book.gear.airbrushes
    book = logbook.finish(book, key("prime"), NOW + 20, 10).book
    book = logbook.cleaned(book, first.name, NOW + 26).book
    called = gear_edits.put_airbrush(book, first.name, replace(first, name="old one")).book
    assert [fact.airbrush for fact in called.projects[0].log] == ["old one"]
    assert [cleaning.airbrush for cleaning in called.cleaned] == ["old one"]
    assert gear_edits.put_airbrush(called, "old one", first).book == book


def test_airbrushes_of_one_name_and_the_last_one_in_use_are_refused() -> None:
    book = small_book()
    (first,) = book.gear.airbrushes
    with pytest.raises(Refused, match="occurs twice"):
        gear_edits.put_airbrush(book, "", first)
    with pytest.raises(Refused, match=r"gear\.airbrushes is empty"):
        gear_edits.remove_airbrush(book, first.name)
    with pytest.raises(Refused, match="no airbrush is called"):
        gear_edits.remove_airbrush(book, "borrowed one")


def test_another_name_is_followed_by_steps_and_readings() -> None:
    book = with_box()
    renamed = room_edits.put_location(book, "warm box", replace(BOX, name="oven")).book
    prime, sand, *others = renamed.projects[0].models[0].steps
    assert (prime.dries_in, sand.or_in) == ("oven", ("oven",))
    assert [reading.location for reading in renamed.room.readings] == ["oven"]
    assert tuple(others) == book.projects[0].models[0].steps[2:]
    back = room_edits.put_location(renamed, "oven", BOX).book
    assert back == book


def test_a_place_in_use_is_not_removed() -> None:
    book = with_box()
    with pytest.raises(Refused, match="cart, step prime, dries there"):
        room_edits.remove_location(book, "warm box")
    with pytest.raises(Refused, match="step sand, dries there"):
        room_edits.remove_location(book, "bench")  # the usual place, which nothing names


def test_another_place_becomes_the_usual_one() -> None:
    book = with_box()
    nameless = Reading(at=datetime(2031, 3, 6, 18, tzinfo=ZONE), temperature_c=20, humidity_pct=50)
    book = replace(book, room=replace(book.room, readings=(*book.room.readings, nameless)))
    usual = room_edits.make_usual(book, "warm box").book
    assert [location.name for location in usual.room.locations] == ["warm box", "bench"]
    assert [reading.location for reading in usual.room.readings] == ["warm box", "bench"]
    assert room_edits.make_usual(book, "bench").book == book
    with pytest.raises(Refused, match="no location is called"):
        room_edits.make_usual(book, "attic")


def test_a_place_that_nothing_dries_in_goes_with_its_readings() -> None:
    book = with_box()
    free = replace(book, projects=small_book().projects)
    left = room_edits.remove_location(free, "warm box").book
    assert left == small_book()


def test_the_only_place_stays() -> None:
    book = replace(small_book(), projects=())
    with pytest.raises(Refused, match="the only place"):
        room_edits.remove_location(book, "bench")


def test_the_room_has_a_size() -> None:
    assert room_edits.set_volume(small_book(), 24).book.room.volume_m3 == 24
    with pytest.raises(Refused):
        room_edits.set_volume(small_book(), 0)


@drawn(20)  # drawing such books is slow
@given(rich_books())
def test_renaming_there_and_back_changes_nothing(book: Book) -> None:
    first = book.room.locations[0]
    other = replace(first, name="somewhere that no book names")
    there = room_edits.put_location(book, first.name, other).book
    assert there.room.location(other.name).drying_places == first.drying_places
    assert room_edits.put_location(there, other.name, first).book == book
