"""Dates that were said, held against what came, and what that teaches, in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from statistics import fmean

from planner.chance.odds import SHARES, Odds
from planner.chance.scoring import ForecastScore, learned_scale, scores
from planner.values.book import Book
from planner.values.forecast import Forecast
from planner.values.message import Message, message


def said_by(odds: Odds, scale: float) -> tuple[Forecast, ...]:
    """Return the dates that odds say of each project that is ever finished."""
    found = []
    for one in odds.projects:
        half, most, nearly = (one.by(share) for share in SHARES)
        if half is not None and most is not None and nearly is not None:
            found.append(Forecast(one.project, odds.now, half, most, nearly, scale))
    return tuple(found)


def scale_of(book: Book, forecasts: Iterable[Forecast]) -> float:
    """Return the factor on the spread of dates that a book's finished projects have taught."""
    return learned_scale(scores(book, forecasts))


def score_lines(known: tuple[ForecastScore, ...]) -> Iterator[Message]:
    """Yield how the dates did that were said before; nothing where no project is finished."""
    if not known:
        return
    yield message(
        "Of {n} finished projects, {kept} kept the date of four runs in five; "
        "the dates were {loss:.1f} days off (pinball loss).",
        n=len(known),
        kept=sum(one.kept for one in known),
        loss=fmean(one.loss for one in known),
    )
    scale = learned_scale(known)
    yield message("Dates are now drawn {percent:.0f} % as wide as assumed.", percent=100 * scale)
