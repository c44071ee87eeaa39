"""What a model looks like by its logbook, worked out by hand on the small book."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest
from small_book import CART, PROJECT, ZONE, small_book

from app.service.model_faces import Face, StageProgress, face_of
from planner.values.book import Book
from planner.values.model import ModelKind, Part, Place
from planner.values.project import Logged

START = datetime(2031, 3, 5, 19, 30, tzinfo=ZONE)
DONE = START.replace(hour=20)


def logged(book: Book, *log: Logged) -> Book:
    return replace(book, projects=(replace(book.project(PROJECT), log=log),))


def entry(step: str, *, ended: bool = True, **more: object) -> Logged:
    return Logged(model=CART, step=step, start=START, end=DONE if ended else None, **more)


def swatch(book: Book, name: str) -> str:
    return book.coating(name).swatch


def test_a_model_without_work_is_bare() -> None:
    face = face_of(small_book(), PROJECT, CART)
    assert face.kind is ModelKind.OTHER
    assert set(face.others) == {""}
    assert face.done == 0
    assert {mark.progress for mark in face.ribbon} == {StageProgress.AHEAD}


def test_the_topmost_coat_that_hides_is_seen_and_a_clear_one_is_not() -> None:
    book = small_book()
    primed = face_of(logged(book, entry("prime")), PROJECT, CART)
    assert primed.colour("0") == swatch(book, "grey primer")
    sanded = logged(book, entry("prime"), entry("sand"), entry("gloss"))
    face = face_of(sanded, PROJECT, CART)
    assert face.colour("0") == swatch(book, "sand")  # of the mix its first coating
    assert face.done == 3
    # The ribbon goes by the order of the steps: prime, sand, gloss, wash, wipe.
    assert [mark.progress for mark in face.ribbon] == [StageProgress.DONE] * 3 + [
        StageProgress.AHEAD
    ] * 2


def test_of_work_under_way_only_ticked_places_have_their_colour() -> None:
    book = small_book()
    model = book.project(PROJECT).models[0]
    places = [f"{part.name}/{place.name}" for part in model.parts for place in part.places]
    under_way = entry("prime", ended=False, ticked=(places[0],))
    face = face_of(logged(book, under_way), PROJECT, CART)
    assert face.ribbon[0].progress is StageProgress.BEGUN
    assert face.others[0] == swatch(book, "grey primer")
    assert face.others[1:] == ("",) * (len(face.others) - 1)


@pytest.mark.parametrize(
    ("place", "area"),
    [
        ("wheels/hubs", "running"),
        ("Räder/Nabe", "running"),
        ("tracks/links", "tyres"),
        ("roof/outside", "roof"),
        ("Dach/rundum", "roof"),
        ("body/chassis", "lower"),
    ],
)
def test_places_find_their_area_by_their_names(place: str, area: str) -> None:
    book = small_book()
    model = book.project(PROJECT).models[0]
    name, inside = place.split("/")
    part = Part(name=name, places=(Place(name=inside),))
    prime = replace(
        model.steps[0], applications=(replace(model.steps[0].applications[0], places=(name,)),)
    )
    other = replace(model, parts=(*model.parts, part), steps=(prime, *model.steps[1:]))
    project = replace(book.project(PROJECT), models=(other,), log=(entry("prime"),))
    face = face_of(replace(book, projects=(project,)), PROJECT, CART)
    assert face.colour(area) == swatch(book, "grey primer")
    assert face.colour("0") == ""


def test_an_area_that_no_place_takes_has_the_colour_of_the_first() -> None:
    assert Face(ModelKind.BUILDING, ("#112233",)).colour("roof") == "#112233"
    assert Face(ModelKind.BUILDING, ("#112233",), roof="").colour("roof") == ""


def test_the_newest_photo_stands_for_the_model() -> None:
    book = logged(small_book(), entry("prime", photos=("a.png", "b.png")), entry("sand"))
    assert face_of(book, PROJECT, CART).photo == "b.png"
