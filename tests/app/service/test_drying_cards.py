"""Drying cards in a book: coated, tried, used, thrown away, and followed by new names."""

from __future__ import annotations

from dataclasses import replace

import pytest
from small_book import NOW, ZONE, small_book

from app.service import drying_cards, pace, room_edits, stock
from planner.cure import Band, Cure
from planner.pace.drying import card_film
from planner.values.coating import State
from planner.values.drying_card import CardTrial
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location

PRIMER = "grey primer"
BOX = Location(
    name="box",
    drying_places=2,
    workdays=(AirPoint(at="00:00", temperature_c=35, humidity_pct=30),),
)
AT = NOW


def with_box():
    book = small_book()
    return replace(book, room=replace(book.room, locations=(*book.room.locations, BOX)))


def slow_bottle():
    """A card that the thumb still marks after twice the likely time, and tape after as long."""
    book = drying_cards.coat_card(small_book(), PRIMER, AT).book
    film, cure = card_film(book, book.drying_cards[0]), Cure(book.room, ZONE)
    for trial, state in (
        (CardTrial.THUMB, State.DRY_TO_HANDLE),
        (CardTrial.TAPE, State.PRINT_FREE),
    ):
        likely = cure.ready_at(film, state, Band.NOMINAL)
        assert likely is not None
        late = AT + 2 * (likely - AT)
        book = drying_cards.try_card(book, 0, trial, late, held=False).book
    return book


def test_a_slow_bottle_waits_longer_once_its_card_is_used_and_others_do_not():
    book = slow_bottle()
    line = drying_cards.lesson_of(book, PRIMER, AT)
    assert line is not None
    edit = pace.apply_drying(book, PRIMER, AT)
    bottle = edit.book.coating(PRIMER)
    assert bottle.slowness == round(line.estimate.factor, 2) > 1.3
    assert bottle.doubt == round(line.figures.doubt, 2)
    assert bottle.steeper_kj_mol == 0  # a card in one air says nothing of others
    before = drying_cards.trial_times(book, book.drying_cards[0])
    after = drying_cards.trial_times(edit.book, edit.book.drying_cards[0])
    for old, new in zip(before, after, strict=True):
        assert old.likely is not None
        assert new.likely is not None
        assert new.likely >= old.likely
        assert new.surely is not None
        assert new.surely >= new.likely
    others = [one for one in edit.book.coatings if one.name != PRIMER]
    assert others == [one for one in book.coatings if one.name != PRIMER]


def test_the_newest_card_is_tried_and_any_can_be_thrown_away():
    book = drying_cards.coat_card(small_book(), PRIMER, AT).book
    book = drying_cards.coat_card(book, PRIMER, AT + 60).book
    assert drying_cards.newest_card(book, PRIMER) == 1
    book = drying_cards.try_card(book, 1, CardTrial.THUMB, AT + 90, held=True).book
    assert [len(card.tried) for card in book.drying_cards] == [0, 1]
    assert [state.number for state in drying_cards.card_states(book, AT + 90)] == [1, 0]
    left = drying_cards.drop_card(book, 0).book
    assert left.drying_cards == book.drying_cards[1:]
    with pytest.raises(Refused, match="no such card"):
        drying_cards.drop_card(left, 1)
    with pytest.raises(Refused, match="no card was coated"):
        drying_cards.newest_card(book, "sand")
    with pytest.raises(Refused, match="after the card") as caught:
        drying_cards.try_card(book, 0, CardTrial.TAPE, AT, held=True)
    assert caught.value.place == "drying_cards[0].tried[0].at"


def test_cards_follow_the_names_of_bottles_and_places():
    book = drying_cards.coat_card(with_box(), PRIMER, AT, location="box").book
    renamed = stock.put_coating(book, PRIMER, replace(book.coating(PRIMER), name="primer")).book
    assert renamed.drying_cards[0].coating == "primer"
    moved = room_edits.put_location(book, "box", replace(BOX, name="warm box")).book
    assert moved.drying_cards[0].location == "warm box"
    assert room_edits.remove_location(book, "box").book.drying_cards == ()
    bench = book.room.locations[0].name
    plain = replace(book, drying_cards=(replace(book.drying_cards[0], location=""),))
    assert room_edits.make_usual(plain, "box").book.drying_cards[0].location == bench
    unused = replace(book.coating(PRIMER), name="unused")
    spare = replace(book, coatings=(*book.coatings, unused))
    spare = drying_cards.coat_card(spare, "unused", AT).book
    assert stock.remove_coating(spare, "unused").book.drying_cards == book.drying_cards


def test_a_place_that_is_not_there_is_refused():
    with pytest.raises(Refused, match="location"):
        drying_cards.coat_card(small_book(), PRIMER, AT, location="attic")
