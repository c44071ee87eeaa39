"""Drying in this room: what looks at films, and trials of drying cards, say of a bottle.

A look says only that a film was, or was not yet, there: a bound on the
factor of its drying time.  `planner.pace.bottle` says what bounds teach.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, replace

from planner.cure import Band, Cure, Film, Spread, reference_minutes
from planner.evening.logged_films import laid
from planner.pace.bottle import SLOPE_SD, BottleFigures, FactorBound, bottle_figures, prior_of
from planner.pace.minutes import Estimate
from planner.values.book import Book
from planner.values.coating import Coating, State
from planner.values.drying_card import ASKS, DryingCard
from planner.values.moment import minute_of, zone_named
from planner.values.plan import PassKey

LEAST_LOOKS = 3  # at films of a coating, before its drying is called otherwise: assumed


@dataclass(frozen=True)
class Seen:
    """One look at one film: which coating, what it asked, and what it bounds."""

    coating: Coating
    state: State
    bound: FactorBound


@dataclass(frozen=True)
class DryingLine:
    """What looks and trials say of one coating.

    ``figures`` are what they make of it, ``now`` the factor that the book
    reckons with; ``cards`` is how many cards are among what was looked at.
    """

    coating: str
    looks: int
    figures: BottleFigures
    now: float
    cards: int = 0

    @property
    def estimate(self) -> Estimate:
        """The factor on its stated times."""
        return self.figures.level

    @property
    def sure(self) -> bool:
        """Tell whether enough looks say that the book reckons with another drying than it is."""
        reckoned = self.estimate.low <= self.now <= self.estimate.high
        return self.looks >= LEAST_LOOKS and not reckoned


def learned_drying(book: Book, now: int, *, cure: Cure | None = None) -> tuple[DryingLine, ...]:
    """Return what looks of the active projects and drying cards teach, coating by coating."""
    cure = cure or Cure(book.room, zone_named(book.bench_time.zone))
    seen: dict[str, list[Seen]] = defaultdict(list)
    for one in (*_looks(book, now, cure), *_trials(book, cure)):
        seen[one.coating.name].append(one)
    slow = {coating.name: coating.slowness for coating in book.coatings}
    cards: dict[str, int] = defaultdict(int)
    for card in book.drying_cards:
        cards[book.coating(card.coating).name] += bool(card.tried)
    return tuple(
        DryingLine(name, len(every), figures_by(every), slow[name], cards[name])
        for name, every in sorted(seen.items())
    )


def figures_by(seen: list[Seen]) -> BottleFigures:
    """Return the figures of the bottle that was looked at, at least once."""
    return bottle_figures((one.bound for one in seen), prior_of(usual_spread(seen)))


def usual_spread(seen: list[Seen]) -> Spread:
    """Return the band of what was looked at, as its label or family has it: the widest."""
    return max(
        (reference_minutes(one.coating, one.state).spread for one in seen),
        key=lambda spread: spread.late,
    )


def card_film(book: Book, card: DryingCard) -> Film:
    """Return the film of a card, at the stated times of its bottle."""
    coating = plain(book.coating(card.coating))
    thick = coating.dry_film_um if card.dry_film_um is None else card.dry_film_um
    place = book.room.location(card.location).name
    return Film(coating, thick, place, minute_of(card.laid))


def card_trials(book: Book, card: DryingCard, cure: Cure) -> list[Seen]:
    """Return what the trials of one card bound."""
    film, found = card_film(book, card), []
    for one in card.tried:
        state = ASKS[one.trial]
        bound = factor_bound(cure, film, state, minute_of(one.at), one.held)
        if bound is not None:
            found.append(Seen(film.coating, state, replace(bound, film=(card.coating, card.laid))))
    return found


def plain(coating: Coating) -> Coating:
    """Return a coating as its label or family has it, without what was learned."""
    return replace(coating, slowness=1.0, steeper_kj_mol=0.0, doubt=None)


def _trials(book: Book, cure: Cure) -> Iterator[Seen]:
    for card in book.drying_cards:
        yield from card_trials(book, card, cure)


def _looks(book: Book, now: int, cure: Cure) -> Iterator[Seen]:
    if not any(project.active and project.observed for project in book.projects):
        return
    table = laid(book, now, cure)
    problem = table.problem
    for project in book.projects:
        for look in project.observed if project.active else ():
            key = PassKey(project.name, look.model, look.step, look.coat)
            index = problem.index.get(key)
            if index is None or index not in table.end:
                continue
            films: dict[str, Film] = {}
            for place, name in problem.activities[index].pass_.films:
                films.setdefault(name, table.film(index, place))
            for name, film in films.items():
                told = plain(film.coating)
                alone = replace(film, coating=told, slowness=1.0)
                bound = factor_bound(cure, alone, look.state, minute_of(look.at), look.reached)
                if bound is not None:
                    yield Seen(told, look.state, replace(bound, film=(key, name)))


def factor_bound(
    cure: Cure, film: Film, state: State, minute: int, reached: bool
) -> FactorBound | None:
    """Return the factor with which a film would have come so far just when it was looked at.

    None where no factor between a twentieth and twenty would: such a look
    says nothing about this room (before the film was laid, or never).
    """
    factor = _crossing(cure, film, state, minute)
    if factor is None or (factor >= _MOST and reached):
        return None
    steep = [
        _crossing(cure, _steeper(film, sign * SLOPE_SD), state, minute) or factor
        for sign in (-1, 1)
    ]
    per = math.log(steep[0] / steep[1]) / (2 * SLOPE_SD)
    return FactorBound(factor, reached, per_kj_mol=per)


_LEAST, _MOST = 0.05, 20.0
_HALVINGS = 16  # of that span, to a ten-thousandth


def _steeper(film: Film, kj_mol: float) -> Film:
    return replace(film, coating=replace(film.coating, steeper_kj_mol=kj_mol))


def _crossing(cure: Cure, film: Film, state: State, minute: int) -> float | None:
    """Return the largest factor with which a film is there by a minute; None for none at all."""
    low, high = _LEAST, _MOST
    if not _there(cure, film, state, low, minute):
        return None
    if _there(cure, film, state, high, minute):
        return high
    for _ in range(_HALVINGS):
        middle = math.sqrt(low * high)
        if _there(cure, film, state, middle, minute):
            low = middle
        else:
            high = middle
    return low


def _there(cure: Cure, film: Film, state: State, factor: float, minute: int) -> bool:
    ready = cure.ready_at(replace(film, slowness=factor), state, Band.NOMINAL)
    return ready is not None and ready <= minute
