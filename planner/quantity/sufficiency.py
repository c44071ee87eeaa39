"""Enough for all?  Asked of each colour before the first model gets it.

A colour that runs out half-way through a batch is hard to match: bottles
and mixes differ.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass

from planner.quantity.work_ahead import Draw
from planner.values.plan import PassKey

NOTHING = 1e-9


@dataclass(frozen=True)
class StockTaker:
    """A model that takes a colour: how much of it, and when it gets the first coat."""

    project: str
    model: str
    ml: float
    at: int | None


@dataclass(frozen=True)
class Short:
    """What a colour lacks of one coating [ml]."""

    coating: str
    lacks_ml: float


@dataclass(frozen=True)
class Enough:
    """Whether a colour is enough for every model that takes it.

    Attributes
    ----------
    colour
        Coating or mix.
    first
        The first pass that lays it.
    takers
        The models that take it, in order of time.
    covered
        How many of them the stock is enough for, from the first on.
    short
        What is lacking.
    complete
        False where a place that gets it has no area: then nobody can say
        that it is enough, only that it is not.
    """

    colour: str
    first: PassKey
    takers: tuple[StockTaker, ...]
    covered: int
    short: tuple[Short, ...]
    complete: bool = True

    @property
    def enough(self) -> bool:
        """Tell whether it is known to be enough for all."""
        return self.complete and self.covered == len(self.takers)


def enough_for_all(drawn: tuple[Draw, ...], stock_ml: Mapping[str, float]) -> tuple[Enough, ...]:
    """Return the answer for every colour that more than one model takes, the first first.

    What other colours draw from the same bottle before is taken off.
    """
    lacking = _lacking(drawn, stock_ml)
    colours: dict[str, list[int]] = defaultdict(list)
    for number, draw in enumerate(drawn):
        colours[draw.colour].append(number)
    found = []
    for colour, numbers in colours.items():
        takers: dict[tuple[str, str], list[int]] = defaultdict(list)
        for number in numbers:
            takers[drawn[number].key.project, drawn[number].key.model].append(number)
        if len(takers) > 1:
            found.append(_answer(colour, drawn, lacking, list(takers.values())))
    return tuple(found)


def _answer(
    colour: str, drawn: tuple[Draw, ...], lacking: list[float], takers: list[list[int]]
) -> Enough:
    short: dict[str, float] = defaultdict(float)
    for numbers in takers:
        for number in numbers:
            short[drawn[number].coating] += lacking[number]
    fits = [all(lacking[number] <= NOTHING for number in numbers) for numbers in takers]
    first = [drawn[numbers[0]] for numbers in takers]
    return Enough(
        colour=colour,
        first=first[0].key,
        takers=tuple(
            StockTaker(draw.key.project, draw.key.model, sum(drawn[n].ml for n in numbers), draw.at)
            for draw, numbers in zip(first, takers, strict=True)
        ),
        covered=fits.index(False) if False in fits else len(fits),
        short=tuple(Short(name, ml) for name, ml in short.items() if ml > NOTHING),
        complete=all(drawn[number].complete for numbers in takers for number in numbers),
    )


def _lacking(drawn: tuple[Draw, ...], stock_ml: Mapping[str, float]) -> list[float]:
    """Return for each draw what its bottle no longer gives [ml]."""
    left = dict(stock_ml)
    lacking = []
    for draw in drawn:
        given = min(draw.ml, left[draw.coating])
        left[draw.coating] -= given
        lacking.append(draw.ml - given)
    return lacking
