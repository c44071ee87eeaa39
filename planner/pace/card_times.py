"""When a drying card is worth two minutes: at evenings that exist anyway."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from planner.bench import BenchCalendar
from planner.cure import STILL_TO_GO, Band, Cure, Film
from planner.pace.bottle import (
    FASTEST,
    SLOWEST,
    Belief,
    FactorBound,
    beliefs,
    chance_there,
    prior_of,
)
from planner.pace.drying import Seen, card_film, card_trials, usual_spread
from planner.values.book import Book
from planner.values.coating import State
from planner.values.drying_card import ASKS, CardTrial, DryingCard
from planner.values.moment import minute_of

DAYS = 10  # a card is not asked about further ahead: assumed
GRID = 10  # minutes of a stretch between two moments that are weighed: assumed
WORTH_BITS = 0.02  # what a trial must teach to be worth its minutes: assumed
EARLY_IS_WELL = 0.8  # of the best lesson, had sooner, is as good: assumed
FACTORS = 41  # between a quarter and four times, at which a film's times are worked out
SLIGHT = 1e-4  # beliefs less likely than this share of the likeliest are left out


@dataclass(frozen=True)
class CardAsk:
    """A trial that a card asks for.

    Attributes
    ----------
    number
        Which card of the book.
    at
        When, within a stretch of bench time [min].
    chance
        How likely the film stands it then, by all that is known [-].
    bits
        What the answer is expected to teach of the bottle [bit].
    """

    number: int
    card: DryingCard
    trial: CardTrial
    at: int
    chance: float
    bits: float


def asked(book: Book, now: int, cure: Cure, calendar: BenchCalendar) -> tuple[CardAsk, ...]:
    """Return what the cards of a book ask from ``now`` on, the soonest first.

    The newest card of each bottle asks.  Of each trial that it has not stood
    yet the first moment is taken that teaches nearly as much as the best one.
    """
    newest: dict[str, int] = {}
    for number, card in enumerate(book.drying_cards):
        known = newest.get(card.coating)
        if known is None or card.laid >= book.drying_cards[known].laid:
            newest[card.coating] = number
    found = [
        one for number in newest.values() for one in _of_card(book, number, now, cure, calendar)
    ]
    return tuple(
        sorted(found, key=lambda one: (one.at, one.number, list(CardTrial).index(one.trial)))
    )


def _of_card(
    book: Book, number: int, now: int, cure: Cure, calendar: BenchCalendar
) -> Iterator[CardAsk]:
    card = book.drying_cards[number]
    film = card_film(book, card)
    if abs(now - film.laid) > DAYS * 1440:
        return
    seen = card_trials(book, card, cure)
    stood = {one.trial for one in card.tried if one.held}
    for trial in CardTrial:
        if trial in stood or any(_implies(better, trial) for better in stood):
            continue
        begin = max(now, _next_worth(card, trial, film.laid))
        ask = _best(film, ASKS[trial], seen, _moments(begin, now + DAYS * 1440, calendar), cure)
        if ask is not None:
            at, chance, bits = ask
            yield CardAsk(number, card, trial, at, chance, bits)


def _implies(stood: CardTrial, trial: CardTrial) -> bool:
    """Tell whether a film that stood one trial needs the other no more."""
    return trial is CardTrial.FINGER or (trial is CardTrial.THUMB and stood is not CardTrial.FINGER)


def _next_worth(card: DryingCard, trial: CardTrial, laid: int) -> int:
    """Return from when a trial says more than it did: the film a tenth older than last time."""
    last = max((minute_of(one.at) for one in card.tried if one.trial is trial), default=laid)
    return laid + 1 + math.ceil((last - laid) * (1 + STILL_TO_GO))


def _moments(first: int, last: int, calendar: BenchCalendar) -> Iterator[int]:
    for stretch in calendar.stretches(first, last) if first < last else ():
        begin, end = max(first, stretch.interval.start), stretch.interval.end
        yield from range(begin, max(begin + 1, end - 1), GRID)


def _best(
    film: Film, state: State, seen: list[Seen], moments: Iterable[int], cure: Cure
) -> tuple[int, float, float] | None:
    """Return the moment to try, the chance that the film stands it, and what that teaches."""
    asked_of = Seen(film.coating, state, FactorBound(1.0, False))
    prior = prior_of(usual_spread([*seen, asked_of]))
    every = _likely(beliefs((one.bound for one in seen), prior))
    reached, taught = _by_factor(film, state, cure), []
    for at in moments:
        factor = _factor_at(reached, at)
        if factor is not None:
            taught.append((at, *_lesson(every, FactorBound(factor, False))))
    most = max((bits for *_, bits in taught), default=0.0)
    if most < WORTH_BITS:
        return None
    return next(one for one in taught if one[2] >= EARLY_IS_WELL * most)


def _by_factor(film: Film, state: State, cure: Cure) -> list[tuple[int, float]]:
    """Return when a film would be there, by the factor of its drying times."""
    found = []
    for number in range(FACTORS):
        factor = FASTEST * (SLOWEST / FASTEST) ** (number / (FACTORS - 1))
        ready = cure.ready_at(replace(film, slowness=factor), state, Band.NOMINAL)
        if ready is not None:
            found.append((ready, factor))
    return found


def _factor_at(reached: list[tuple[int, float]], at: int) -> float | None:
    """Return the factor of a film that is just there at a minute; None beyond those looked at."""
    above = bisect_right(reached, at, key=lambda one: one[0])
    if not 0 < above < len(reached):
        return None
    (before, low), (after, high) = reached[above - 1], reached[above]
    return low * math.exp(math.log(high / low) * (at - before) / (after - before))


def _likely(every: list[Belief]) -> list[Belief]:
    most = max(one.weight for one in every)
    kept = [one for one in every if one.weight > SLIGHT * most]
    total = sum(one.weight for one in kept)
    return [one._replace(weight=one.weight / total) for one in kept]


def _lesson(every: list[Belief], bound: FactorBound) -> tuple[float, float]:
    """Return the chance of a film's being there, and what the answer teaches [bit].

    References
    ----------
    Lindley (1956), On a measure of the information provided by an
    experiment: the entropy of the answer less what of it is chance.
    """
    mean = own = 0.0
    for one in every:
        there = chance_there(one, bound)
        mean += one.weight * there
        own += one.weight * _entropy(there)
    return mean, max(0.0, _entropy(mean) - own)


def _entropy(chance: float) -> float:
    if not 0 < chance < 1:
        return 0.0
    return -chance * math.log2(chance) - (1 - chance) * math.log2(1 - chance)
