"""Drying cards: coated, tried, and what they teach of the bottle put to use."""

from __future__ import annotations

from dataclasses import dataclass, replace

from app.service.edits import Edit
from planner.bench import calendar_of
from planner.cure import Band, Cure, Film
from planner.pace.card_times import CardAsk, asked
from planner.pace.drying import DryingLine, card_film, learned_drying
from planner.values.book import Book
from planner.values.drying_card import ASKS, CardTrial, DryingCard, TrialResult
from planner.values.message import called, message
from planner.values.moment import Interval, minute_of, moment_of, zone_named
from planner.values.refusal import Refused, demand


@dataclass(frozen=True)
class TrialTimes:
    """When a film of a bottle stands a trial: likely and surely; None is never [min]."""

    trial: CardTrial
    likely: int | None
    surely: int | None


@dataclass(frozen=True)
class CardState:
    """A card, what it still asks, and when a film as it is reckoned with stands each trial."""

    number: int
    card: DryingCard
    asks: tuple[CardAsk, ...]
    times: tuple[TrialTimes, ...]


def card_states(book: Book, now: int, cure: Cure | None = None) -> tuple[CardState, ...]:
    """Return every card of a book with what it asks, the newest first."""
    cure = cure or _cure(book)
    asks = asked(book, now, cure, calendar_of(book.bench_time))
    states = [
        CardState(
            number,
            card,
            tuple(ask for ask in asks if ask.number == number),
            trial_times(book, card, cure),
        )
        for number, card in enumerate(book.drying_cards)
    ]
    return tuple(sorted(states, key=lambda one: (-minute_of(one.card.laid), -one.number)))


def asked_within(
    book: Book, now: int, span: Interval, cure: Cure | None = None
) -> tuple[CardAsk, ...]:
    """Return what the cards of a book ask from ``now`` on within a session."""
    if not book.drying_cards:
        return ()
    asks = asked(book, now, cure or _cure(book), calendar_of(book.bench_time))
    return tuple(ask for ask in asks if span.start <= ask.at < span.end)


def trial_times(book: Book, card: DryingCard, cure: Cure | None = None) -> tuple[TrialTimes, ...]:
    """Return when the card's film stands each trial, by the figures that the book reckons with."""
    cure = cure or _cure(book)
    stated = card_film(book, card)
    film = Film(book.coating(card.coating), stated.thickness_um, stated.location, stated.laid)
    return tuple(
        TrialTimes(
            trial,
            cure.ready_at(film, state, Band.NOMINAL),
            cure.ready_at(film, state, Band.LATE),
        )
        for trial, state in ASKS.items()
    )


def lesson_of(book: Book, coating: str, now: int) -> DryingLine | None:
    """Return what looks and cards teach of a bottle, None for nothing."""
    bottle = book.coating(coating).name
    return next((line for line in learned_drying(book, now) if line.coating == bottle), None)


def coat_card(
    book: Book,
    coating: str,
    at: int,
    *,
    location: str = "",
    dry_film_um: float | None = None,
) -> Edit:
    """Note that a scrap was coated; it dries beside the model.

    Raises
    ------
    Refused
        If the bottle or the location is not in the book.
    """
    known = {location.name for location in book.room.locations}
    place = location if location in known or location else book.room.locations[0].name
    card = DryingCard(
        coating=coating,
        laid=moment_of(at, zone_named(book.bench_time.zone)),
        location=place,
        dry_film_um=dry_film_um,
    )
    changed = replace(book, drying_cards=(*book.drying_cards, card))
    return Edit(called("drying card: {coating}", coating=coating), changed)


def try_card(book: Book, number: int, trial: CardTrial, at: int, *, held: bool) -> Edit:
    """Note what a trial of a card told.

    Raises
    ------
    Refused
        If there is no such card, or it was not coated yet.
    """
    card = _card(book, number)
    one = TrialResult(trial=trial, at=moment_of(at, zone_named(book.bench_time.zone)), held=held)
    try:
        tried = replace(card, tried=(*card.tried, one))
    except Refused as problem:
        raise problem.under(f"drying_cards[{number}]") from problem
    name = (
        called("{coating} stood: {trial}", coating=card.coating, trial=trial)
        if held
        else called("{coating} did not stand yet: {trial}", coating=card.coating, trial=trial)
    )
    return Edit(name, _with(book, number, tried))


def drop_card(book: Book, number: int) -> Edit:
    """Throw a card away, with what it taught."""
    card = _card(book, number)
    left = (*book.drying_cards[:number], *book.drying_cards[number + 1 :])
    name = called("drying card of {coating} thrown away", coating=card.coating)
    return Edit(name, replace(book, drying_cards=left))


def newest_card(book: Book, coating: str) -> int:
    """Return the number of the newest card of a bottle or mix.

    Raises
    ------
    Refused
        If there is none.
    """
    cards = [number for number, one in enumerate(book.drying_cards) if one.coating == coating]
    if not cards:
        mend = message('no card was coated with "{coating}" yet; coat one first', coating=coating)
        raise Refused("coating", mend)
    return max(cards, key=lambda number: (minute_of(book.drying_cards[number].laid), number))


def _card(book: Book, number: int) -> DryingCard:
    there = 0 <= number < len(book.drying_cards)
    demand(there, "drying_cards", "has no such card any more")
    return book.drying_cards[number]


def _with(book: Book, number: int, card: DryingCard) -> Book:
    before, after = book.drying_cards[:number], book.drying_cards[number + 1 :]
    return replace(book, drying_cards=(*before, card, *after))


def _cure(book: Book) -> Cure:
    return Cure(book.room, zone_named(book.bench_time.zone))
