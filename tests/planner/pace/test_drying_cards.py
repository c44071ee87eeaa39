"""Drying cards: what they ask and when, and what a card teaches in the air of its room."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from small_book import ZONE, small_book

from planner.bench import calendar_of
from planner.cure import Band, Cure
from planner.pace.card_times import EARLY_IS_WELL, asked
from planner.pace.drying import card_film, factor_bound, learned_drying
from planner.values.coating import State
from planner.values.drying_card import ASKS, CardTrial, DryingCard, TrialResult
from planner.values.moment import minute_of, moment_of
from planner.values.refusal import Refused

LAID = datetime(2031, 3, 6, 19, 35, tzinfo=ZONE)
PRIMER = "grey primer"


def with_card(*tried, coating=PRIMER, **changes):
    card = DryingCard(coating=coating, laid=LAID, tried=tried)
    return replace(small_book(), drying_cards=(replace(card, **changes),))


def tried(trial, minutes, *, held):
    return TrialResult(trial=trial, at=LAID + timedelta(minutes=minutes), held=held)


def asks_of(book, now=LAID):
    cure = Cure(book.room, ZONE)
    return asked(book, minute_of(now), cure, calendar_of(book.bench_time))


def test_the_bound_of_a_look_is_the_factor_with_which_the_film_is_just_there():
    book = with_card()
    cure, film = Cure(book.room, ZONE), card_film(book, book.drying_cards[0])
    ready = cure.ready_at(film, State.PRINT_FREE, Band.NOMINAL)
    assert ready is not None
    just = factor_bound(cure, film, State.PRINT_FREE, ready, True)
    assert just is not None
    assert just.factor == pytest.approx(1.0, abs=0.01)
    assert factor_bound(cure, film, State.PRINT_FREE, film.laid, True) is None


def test_every_question_lies_in_bench_time_after_the_card_and_can_go_either_way():
    book = with_card()
    calendar = calendar_of(book.bench_time)
    found = asks_of(book)
    assert found
    assert len({ask.trial for ask in found}) == len(found)
    for ask in found:
        stretch = calendar.stretch_at(ask.at)
        assert stretch is not None
        assert ask.at < stretch.interval.end
        assert ask.at > minute_of(LAID)
        assert 0.001 < ask.chance < 0.999
        assert ask.bits > 0
    assert [ask.at for ask in found] == sorted(ask.at for ask in found)
    assert 0 < EARLY_IS_WELL < 1


def test_the_newest_card_of_a_bottle_asks():
    book = with_card()
    newer = replace(book.drying_cards[0], laid=LAID + timedelta(minutes=5))
    both = replace(book, drying_cards=(newer, *book.drying_cards))
    assert {ask.number for ask in asks_of(both)} == {0}


def test_what_was_answered_is_not_asked_again_and_a_no_only_a_tenth_later():
    (thumb,) = (ask for ask in asks_of(with_card()) if ask.trial is CardTrial.THUMB)
    after = thumb.at - minute_of(LAID)
    book = with_card(tried(CardTrial.THUMB, after, held=True))
    now = moment_of(thumb.at, ZONE)
    assert not {CardTrial.THUMB, CardTrial.FINGER} & {ask.trial for ask in asks_of(book, now)}
    book = with_card(tried(CardTrial.THUMB, after, held=False))
    again = [ask for ask in asks_of(book, now) if ask.trial is CardTrial.THUMB]
    assert again
    assert all(ask.at - minute_of(LAID) >= 1.1 * after for ask in again)
    assert asks_of(book, LAID + timedelta(days=11)) == ()


def test_a_card_that_is_late_slows_its_bottle_alone():
    book = with_card(tried(CardTrial.THUMB, 90, held=False))
    (line,) = learned_drying(book, minute_of(LAID) + 100)
    assert (line.coating, line.looks, line.cards, line.now) == (PRIMER, 1, 1, 1.0)
    assert line.estimate.factor > 1.05
    soon = with_card(tried(CardTrial.TAPE, 45, held=True))
    (line,) = learned_drying(soon, minute_of(LAID) + 100)
    assert line.estimate.factor < 0.95


def test_a_card_counts_from_label_or_family_however_the_bottle_is_reckoned_with_now():
    book = with_card(tried(CardTrial.THUMB, 60, held=False))
    (line,) = learned_drying(book, minute_of(LAID) + 100)
    bottle = replace(book.coating(PRIMER), slowness=2.0, doubt=1.9, steeper_kj_mol=7.0)
    others = tuple(one for one in book.coatings if one.name != PRIMER)
    learned = replace(book, coatings=(bottle, *others))
    (again,) = learned_drying(learned, minute_of(LAID) + 100)
    assert again.figures == line.figures
    assert again.now == 2.0


def test_a_thin_card_and_a_thick_one_bound_differently():
    """Twice the film takes longer, so the same minute says less against it."""
    thin = with_card(tried(CardTrial.TAPE, 400, held=False))
    thick = with_card(tried(CardTrial.TAPE, 400, held=False), dry_film_um=80.0)
    now = minute_of(LAID) + 500
    assert (
        learned_drying(thick, now)[0].estimate.factor < learned_drying(thin, now)[0].estimate.factor
    )


def test_a_card_is_refused_where_it_cannot_be():
    with pytest.raises(Refused, match="coating"):
        with_card(coating="nothing")
    with pytest.raises(Refused, match="location"):
        with_card(location="attic")
    with pytest.raises(Refused, match="after the card was coated"):
        with_card(tried(CardTrial.TAPE, 0, held=True))
    with pytest.raises(Refused, match="more than 20 trials"):
        with_card(*[tried(CardTrial.TAPE, 30 + at, held=False) for at in range(21)])
    one = with_card()
    with pytest.raises(Refused, match="more than 100 cards"):
        replace(one, drying_cards=one.drying_cards * 101)
    assert set(ASKS) == set(CardTrial)
