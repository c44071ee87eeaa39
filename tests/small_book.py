"""A book small enough to work out by hand, for tests of what people are shown.

One cart in a room of constant 23 °C and 50 % RH, Thursdays from 19:30 to
21:30 in Warsaw, one airbrush.  Everything is invented.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime
from zoneinfo import ZoneInfo

from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, Mark, State, StateTime, Window
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix, Portion
from planner.values.model import Model, Part, Place
from planner.values.moment import Interval, minute_of
from planner.values.plan import (
    BenchKind,
    BenchWork,
    Cause,
    Cost,
    PassKey,
    Placement,
    Plan,
    Reason,
    Status,
)
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Bound, Gate, Minutes, Role, Stage, Step, Tool

ZONE = ZoneInfo("Europe/Warsaw")
PROJECT, CART, BRUSH = "yard", "cart", "fine brush"


def at(text: str) -> int:
    """Return the minute of a local time such as "2031-03-06 19:30"."""
    return minute_of(datetime.fromisoformat(text).replace(tzinfo=ZONE))


NOW = at("2031-03-06 19:30")  # a Thursday
BY_HANDS = Reason(Cause.HANDS)


def key(step: str, coat: int = 1) -> PassKey:
    """Return the pass of the cart."""
    return PassKey(PROJECT, CART, step, coat)


def steps() -> tuple[Step, ...]:
    """Prime, sand, gloss, an oil wash to be wiped back within the hour, matte."""
    wipe = Gate(
        after="wash",
        windows=(Window(opens=Mark(minutes=10), closes=Mark(minutes=60)),),
        closing=Bound.END,
    )
    return (
        _spray("prime", Stage.PRIME, "grey primer", ("tub",), 10),
        _spray("sand", Stage.BASE, "thin sand", ("tub/bed", "tub/sides"), 12),
        _spray("gloss", Stage.VARNISH, "gloss clear", ("tub",), 8, Role.SEAL),
        Step(
            id="wash",
            stage=Stage.OIL_WASH,
            title="dark wash into the corners",
            applications=(Application(places=("tub/bed",), coating="dark oil"),),
            minutes=Minutes(fixed=15),
        ),
        Step(
            id="wipe",
            stage=Stage.WIPE,
            touches=("tub/bed",),
            tool=Tool.CLOTH,
            minutes=Minutes(fixed=10),
            gates=(wipe,),
        ),
    )


def _spray(
    name: str,
    stage: Stage,
    coating: str,
    places: tuple[str, ...],
    minutes: int,
    role: Role | None = None,
) -> Step:
    return Step(
        id=name,
        stage=stage,
        applications=(Application(places=places, coating=coating),),
        tool=Tool.AIRBRUSH,
        minutes=Minutes(fixed=minutes),
        role=role,
    )


def small_book(target: date | None = date(2031, 4, 30)) -> Book:
    """Return the book."""
    air = (AirPoint(at="00:00", temperature_c=23, humidity_pct=50),)
    evenings = Recurring(
        rule="FREQ=WEEKLY;BYDAY=TH", since=date(2031, 3, 6), start="19:30", end="21:30"
    )
    tub = Part(
        name="tub",
        places=(Place(name="bed", area_cm2=60), Place(name="sides", area_cm2=40)),
        holder="clip on a stick",
    )
    acrylic = Family.WATERBORNE_ACRYLIC
    return Book(
        coatings=(
            Coating(name="grey primer", family=acrylic, swatch="#909090"),
            Coating(name="sand", family=acrylic, swatch="#c8b482"),
            Coating(name="gloss clear", family=acrylic, finish=Finish.GLOSS),
            Coating(name="dark oil", family=Family.ARTISTS_OIL, swatch="#302010"),
            Coating(name="water thinner", family=Family.WATER_THINNER),
        ),
        mixes=(
            Mix(
                name="thin sand",
                portions=(
                    Portion(coating="sand", parts=2),
                    Portion(coating="water thinner", parts=3),
                ),
            ),
        ),
        room=Room(locations=(Location(name="bench", drying_places=4, workdays=air),)),
        bench_time=BenchTime(zone="Europe/Warsaw", stretches=(evenings,)),
        gear=Gear(airbrushes=(Airbrush(name=BRUSH),)),
        projects=(
            Project(
                name=PROJECT,
                models=(Model(name=CART, parts=(tub,), steps=steps()),),
                target=target,
            ),
        ),
    )


def slow_primer(book: Book) -> Book:
    """Return the book with a label that lets the next coat onto the primer after forty minutes.

    Then the airbrush cannot go on at once, and is cleaned.
    """
    label = StateTime(state=State.DRY_TO_RECOAT, minutes=40)
    return replace(
        book,
        coatings=tuple(
            replace(coating, times=(label,)) if coating.name == "grey primer" else coating
            for coating in book.coatings
        ),
    )


def small_plan() -> Plan:
    """Return a plan of the first two evenings, made by hand: prime; then sand, wash and wipe.

    It leaves the gloss coat out, so the judge would refuse it; the run sheet
    only reads it.
    """
    first, second = at("2031-03-06 19:30"), at("2031-03-13 19:30")
    placements = (
        _placed("prime", first + 3, 10, Reason(Cause.BENCH_TIME, first + 3), BRUSH),
        _placed("sand", second + 3, 12, Reason(Cause.BENCH_TIME, second + 3), BRUSH),
        _placed("wash", second + 30, 15),
        _placed("wipe", second + 60, 10),
    )
    bench = (
        _bench(BenchKind.LOAD, first, 3, "grey primer"),
        _bench(BenchKind.CLEAN, first + 13, 6),
        _bench(BenchKind.LOAD, second, 3, "thin sand"),
        _bench(BenchKind.CLEAN, second + 15, 6),
    )
    return Plan(
        now=NOW,
        placements=placements,
        bench=bench,
        unplaced=(),
        status=Status.FEASIBLE,
        cost=Cost(0, 0, second + 70 - NOW, 2, 18),
        finishes=((PROJECT, second + 70),),
    )


def _placed(
    step: str, start: int, minutes: int, reason: Reason = BY_HANDS, airbrush: str = ""
) -> Placement:
    return Placement(key(step), (Interval(start, start + minutes),), airbrush, reason)


def _bench(kind: BenchKind, start: int, minutes: int, coating: str = "") -> BenchWork:
    return BenchWork(kind, Interval(start, start + minutes), BRUSH, coating)
