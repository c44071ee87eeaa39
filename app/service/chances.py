"""How sure the dates of a plan are, in words and as data."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any
from zoneinfo import ZoneInfo

from app.service import wording
from app.service.planning import Planned
from planner.chance.drivers import Driver, DriverKind
from planner.chance.odds import SEED, SHARES, FinishOdds, Odds, odds_of
from planner.chance.spreads import spreads_of
from planner.schedule.judge import Premises
from planner.values.book import Book
from planner.values.message import Message, message
from planner.values.moment import FOREVER, moment_of
from planner.values.step import Stage

TOLD_STEPS = 3
WEEKDAYS = (
    message("Monday"),
    message("Tuesday"),
    message("Wednesday"),
    message("Thursday"),
    message("Friday"),
    message("Saturday"),
    message("Sunday"),
)


def odds(
    book: Book,
    planned: Planned,
    *,
    scale: float = 1.0,
    stop: Callable[[], bool] = lambda: False,
) -> Odds | None:
    """Simulate a plan that the judge has accepted; None if ``stop`` says so on the way.

    ``scale`` is the factor on the spread that forecasts have taught.
    """
    premises = Premises(book, planned.cure, planned.calendar)
    law = spreads_of(book, planned.plan.now, scale)
    return odds_of(book, planned.plan, premises=premises, spreads=law, stop=stop)


def odds_lines(found: Odds, zone: ZoneInfo) -> Iterator[Message]:
    """Yield what is to be told of the odds, the most asked for first."""
    yield message("How sure the dates are ({runs} runs of this plan):", runs=found.runs)
    for one in found.projects:
        yield message("  {name}: {dates}", name=one.project, dates=finish_line(one, zone))
        own = [model for model in found.models if model.project == one.project]
        if len(own) > 1:
            for model in own:
                yield message(
                    "    {name}: {dates}", name=model.model, dates=finish_line(model, zone)
                )
    if len(found.projects) > 1:
        yield message("  together: {dates}", dates=finish_line(found.together, zone))
    if found.tonight is not None:
        yield tonight_line(found)
    if found.drivers:
        yield message("What moves the date most:")
        for driver in found.drivers:
            yield message("  {driver}", driver=driver_line(driver))
    if found.shares:
        yield message("What holds the end most often:")
        for share in found.shares[:TOLD_STEPS]:
            yield message(
                "  {step}: in {percent} % of all runs",
                step=wording.pass_name(share.key),
                percent=round(100 * share.share),
            )


def finish_line(one: FinishOdds, zone: ZoneInfo) -> Message:
    """Return by when a finish is likely, and how likely its date is."""
    if one.by(SHARES[0]) is None:
        ever = one.chance_by(FOREVER - 1)
        return message("not finished in {percent} % of all runs", percent=round(100 * (1 - ever)))
    half, most, nearly = (_day(one.by(share), zone) for share in SHARES)
    if one.target is None or one.in_time is None:
        return message(
            "even odds by {half}, four in five by {most}, 19 in 20 by {nearly}",
            half=half,
            most=most,
            nearly=nearly,
        )
    return message(
        "even odds by {half}, four in five by {most}, 19 in 20 by {nearly}; by {date} {percent} %",
        half=half,
        most=most,
        nearly=nearly,
        date=_day(one.target - 1, zone),
        percent=round(100 * one.in_time),
    )


def tonight_line(found: Odds) -> Message:
    """Return how likely the next sheet is done."""
    assert found.tonight is not None
    return message(
        "The next session's sheet is finished in {percent} % of all runs.",
        percent=round(100 * found.tonight[1]),
    )


def driver_line(driver: Driver) -> Message:
    """Return what moves a date, and by how much."""
    return message(
        "{what}: {days:.1f} days between a bad and a good turn",
        what=driver_name(driver),
        days=max(0.0, driver.days),
    )


def driver_name(driver: Driver) -> Message:
    """Return what a driver is called."""
    if driver.kind is DriverKind.SESSIONS:
        return message("whether {day} sessions take place", day=WEEKDAYS[int(driver.name)])
    if driver.kind is DriverKind.COATING:
        return message("how {coating} dries", coating=driver.name)
    if driver.kind is DriverKind.ROOM:
        return message("how the room dries")
    if driver.kind is DriverKind.STAGE:
        return message("how long this takes: {stage}", stage=Stage(driver.name))
    if driver.kind is DriverKind.REDONE:
        return message("whether this has to be done over: {stage}", stage=Stage(driver.name))
    return message("how fast work goes")


def _day(minute: int | None, zone: ZoneInfo) -> str:
    if minute is None:
        return message("never")
    return wording.day(minute - 1, zone)


def odds_json(found: Odds, zone: ZoneInfo) -> dict[str, Any]:
    """Return the odds as JSON data: minutes in ISO 8601, shares from 0 to 1."""

    def at(minute: int | None) -> str | None:
        return None if minute is None else moment_of(minute, zone).isoformat()

    def finish(one: FinishOdds) -> dict[str, Any]:
        named = {"project": one.project, "model": one.model}
        return {
            **{name: text for name, text in named.items() if text},
            "planned": at(one.planned),
            **{f"p{round(100 * share)}": at(one.by(share)) for share in SHARES},
            "target": at(one.target),
            "in_time": one.in_time,
        }

    return {
        "runs": found.runs,
        "seed": SEED,
        "together": finish(found.together),
        "projects": [finish(one) for one in found.projects],
        "models": [finish(one) for one in found.models],
        "tonight": None if found.tonight is None else found.tonight[1],
        "holds_the_end": [
            {**one.key._asdict(), "share": one.share, "by_film": one.by_film}
            for one in found.shares
        ],
        "drivers": [
            {"kind": one.kind.value, "name": one.name, "share": one.share, "days": one.days}
            for one in found.drivers
        ],
    }
