"""Books and plans for tests of amounts: like carts to be painted, everything invented.

Plans are laid by hand, an hour for each pass, so that the time of each is
known without asking the planner.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime

from planner.passes import expand_all
from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix, Portion
from planner.values.model import Model, Part, Place
from planner.values.moment import Interval, minute_of
from planner.values.plan import BenchKind, BenchWork, Cost, PassKey, Placement, Plan, Status
from planner.values.project import Logged, Project, Used
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Minutes, Stage, Step, Tool
from planner.values.supplies import Supplies

START = datetime(2031, 3, 6, 18, tzinfo=UTC)  # a Thursday
NOW = minute_of(START)
FINE = Airbrush(name="fine", least_fill_ml=1.0, lost_ml=0.5)

SAND = Coating(name="sand", family=Family.WATERBORNE_ACRYLIC)
GREEN = Coating(name="green", family=Family.WATERBORNE_ACRYLIC)
THINNER = Coating(name="thinner", family=Family.WATER_THINNER)
THIN_SAND = Mix(
    name="thin sand",
    portions=(Portion(coating="sand", parts=2), Portion(coating="thinner", parts=3)),
)
PER_CM2_ML = 20 / (10_000 * 0.35)
"""By identity of volumes: 20 µm of 35 % solids, nothing lost [ml/cm²]."""


def step(
    name: str,
    colour: str,
    tool: Tool = Tool.AIRBRUSH,
    stage: Stage = Stage.BASE,
    *,
    coats: int = 1,
    share: float | None = 1.0,
    places: tuple[str, ...] = ("tub",),
) -> Step:
    """Return a step that lays a colour."""
    coat = Application(places=places, coating=colour, coats=coats, share=share)
    return Step(id=name, stage=stage, tool=tool, minutes=Minutes(fixed=30), applications=(coat,))


def cart(name: str, area_cm2: float, steps: tuple[Step, ...]) -> Model:
    """Return a model of one part with one place."""
    tub = Part(name="tub", places=(Place(name="all over", area_cm2=area_cm2),))
    return Model(name=name, parts=(tub,), steps=steps)


def yard(
    *models: Model,
    coatings: tuple[Coating, ...] = (SAND, GREEN, THINNER),
    mixes: tuple[Mix, ...] = (THIN_SAND,),
    supplies: Supplies | None = None,
    log: tuple[Logged, ...] = (),
    airbrush: Airbrush = FINE,
) -> Book:
    """Return a book with one project of these models."""
    air = (AirPoint(at="00:00", temperature_c=23, humidity_pct=50),)
    return Book(
        coatings=coatings,
        mixes=mixes,
        room=Room(locations=(Location(name="bench", drying_places=99, workdays=air),)),
        bench_time=BenchTime(zone="UTC"),
        gear=Gear(airbrushes=(airbrush,)),
        projects=(Project(name="yard", models=models, log=log),),
        supplies=supplies or Supplies(),
    )


def key(model: str, name: str, coat: int = 1) -> PassKey:
    """Return a pass of the yard."""
    return PassKey("yard", model, name, coat)


def plan_of(book: Book, evenings: Iterable[Iterable[PassKey]]) -> Plan:
    """Return a plan: a list of passes for each day from `START` on, an hour each.

    Sprayed passes of a day follow from one load for each colour: it is
    loaded or changed before its first, and cleaned after the last.
    """
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    placements, bench = [], []
    for day, keys in enumerate(evenings):
        at, holds = NOW + day * 1440, ""
        for key in keys:
            colour = passes[key].load
            if colour and colour != holds:
                kind = BenchKind.CHANGE if holds else BenchKind.LOAD
                bench.append(BenchWork(kind, Interval(at, at + 10), FINE.name, colour))
                holds = colour
            piece = Interval(at + 10, at + 40)
            placements.append(Placement(key, (piece,), FINE.name if colour else ""))
            at += 60
        if holds:
            bench.append(BenchWork(BenchKind.CLEAN, Interval(at, at + 10), FINE.name))
    cost = Cost(0, 0, 0, 0, 0)
    return Plan(NOW, tuple(placements), tuple(bench), (), Status.FEASIBLE, cost, ())


def entry(key: PassKey, start: datetime, end: datetime | None, used: Iterable[Used] = ()) -> Logged:
    """Return what the logbook says of a pass."""
    return Logged(
        model=key.model, step=key.step, coat=key.coat, start=start, end=end, used=tuple(used)
    )
