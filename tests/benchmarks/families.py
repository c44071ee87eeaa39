"""Families of invented batches for the benchmark of the engine: 20 steps a vehicle.

Each vehicle takes a primer, one to three colours, details, a gloss, decals,
an oil wash that is wiped back within the hour, chips, weathering, a matte and
small work between; some coats may be followed within two hours or after 24.
Waiting times are minutes of a label (20 min to 24 h), so that figures from
elsewhere can be compared; evenings are Mon, Wed and Fri 19:30 to 22:00 and
Sat 10:00 to 13:00.  The same number of vehicles and seed give the same book.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from random import Random

from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, Mark, State, StateTime, Window
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model, Part, Place
from planner.values.moment import minute_of
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Bound, Gate, Minutes, Role, Stage, Step, Tool

NOW = minute_of(datetime(2031, 3, 3, 12, 0, tzinfo=UTC))  # a Monday, before the first evening
SINCE = date(2031, 3, 3)
SIZES = (1, 4, 12, 30)
COLOURS = ("sand", "green", "brown", "grey", "blue", "white")
HANDLED = 20  # minutes until a film may be held
SLOW = 1.2  # a patient hand


def batch(vehicles: int, seed: int) -> Book:
    """Return an invented batch of so many vehicles."""
    random = Random(1000 * vehicles + seed)
    models = tuple(_vehicle(number + 1, random) for number in range(vehicles))
    places = {1: 4, 4: 6}.get(vehicles, 8)
    return Book(
        coatings=_coatings(),
        room=Room(
            locations=(
                Location(
                    name="bench",
                    drying_places=places,
                    workdays=(AirPoint(at="00:00", temperature_c=23, humidity_pct=50),),
                ),
            )
        ),
        bench_time=BenchTime(
            zone="UTC",
            stretches=(
                Recurring(
                    rule="FREQ=WEEKLY;BYDAY=MO,WE,FR", since=SINCE, start="19:30", end="22:00"
                ),
                Recurring(rule="FREQ=WEEKLY;BYDAY=SA", since=SINCE, start="10:00", end="13:00"),
            ),
        ),
        gear=Gear(
            airbrushes=(
                Airbrush(
                    name="airbrush",
                    load_minutes=3,
                    change_same_family=3,
                    change_other_family=10,
                    clean_minutes=3,
                    idle_limit_minutes=60,
                ),
            )
        ),
        projects=(Project(name="batch", models=models),),
    )


def _coatings() -> tuple[Coating, ...]:
    """Return coatings whose films may be held after `HANDLED` minutes and never bind otherwise."""

    def made(name: str, family: Family, finish: Finish = Finish.MATTE) -> Coating:
        times = tuple(StateTime(state=state, minutes=HANDLED) for state in State)
        return Coating(name=name, family=family, finish=finish, times=times)

    acrylics = [made(colour, Family.WATERBORNE_ACRYLIC) for colour in COLOURS]
    return (
        made("primer", Family.SOLVENT_LACQUER),
        *acrylics,
        made("gloss clear", Family.WATERBORNE_ACRYLIC, Finish.GLOSS),
        made("matte clear", Family.WATERBORNE_ACRYLIC),
        made("dark oil", Family.ARTISTS_OIL),
        made("decal sheet", Family.DECAL),
    )


def _vehicle(number: int, random: Random) -> Model:
    base, second, third = random.sample(COLOURS, 3)
    waits = [random.choice((20, 30, 60, 120, 240, 720, 1440)) for _ in range(20)]
    work = _Steps(waits)
    work.coat(Stage.PRIME, "primer", random.randint(8, 20), twice=True)
    work.coat(Stage.BASE, base, random.randint(10, 25))
    work.coat(Stage.CAMO, second, random.randint(15, 40))
    work.coat(Stage.CAMO, third, random.randint(15, 40))
    work.hand(Stage.DETAIL, base, random.randint(25, 60))
    work.hand(Stage.DRY_BRUSH, second, random.randint(10, 30))
    work.coat(Stage.HIGHLIGHT, base, random.randint(10, 25))
    work.coat(Stage.VARNISH, "gloss clear", random.randint(8, 15), twice=True)
    work.hand(Stage.DECAL, "decal sheet", random.randint(30, 60))
    work.coat(Stage.VARNISH, "gloss clear", random.randint(8, 15))
    work.hand(Stage.OIL_WASH, "dark oil", random.randint(10, 20))
    work.wipe(random.randint(8, 15))
    work.coat(Stage.VARNISH, "matte clear", random.randint(8, 15))
    work.hand(Stage.CHIP, third, random.randint(20, 50))
    work.hand(Stage.WEATHER, second, random.randint(20, 50))
    work.coat(Stage.WEATHER, third, random.randint(10, 20))
    work.hand(Stage.DETAIL, third, random.randint(15, 40))
    work.hand(Stage.DETAIL, second, random.randint(10, 40))
    work.coat(Stage.MATTE, "matte clear", random.randint(8, 15))
    work.hand(Stage.DETAIL, base, random.randint(10, 25))
    part = Part(name="body", places=(Place(name="all over", area_cm2=80),), holder="skewer")
    return Model(name=f"vehicle {number:02d}", parts=(part,), steps=tuple(work.steps))


class _Steps:
    """Steps one after another, each waiting for the one before."""

    def __init__(self, waits: list[int]) -> None:
        self.waits = waits
        self.steps: list[Step] = []
        self.twice = False

    def coat(self, stage: Stage, coating: str, minutes: int, *, twice: bool = False) -> None:
        """Spray a coat; after one with ``twice`` the next goes on within 2 h or after 24."""
        self._add(stage, coating, minutes, Tool.AIRBRUSH)
        self.twice = twice

    def hand(self, stage: Stage, coating: str, minutes: int) -> None:
        """Work by brush."""
        self._add(stage, coating, minutes, Tool.BRUSH)
        self.twice = False

    def wipe(self, minutes: int) -> None:
        """Wipe back what was just laid, done within the hour."""
        before = self.steps[-1].id
        window = Window(opens=Mark(minutes=10), closes=Mark(minutes=60))
        gate = Gate(after=before, windows=(window,), closing=Bound.END)
        self.steps.append(
            Step(
                id=f"s{len(self.steps) + 1:02d}",
                stage=Stage.WIPE,
                touches=("body",),
                tool=Tool.CLOTH,
                minutes=Minutes(fixed=round(SLOW * minutes)),
                gates=(gate,),
            )
        )

    def _add(self, stage: Stage, coating: str, minutes: int, tool: Tool) -> None:
        gates: tuple[Gate, ...] = ()
        if self.steps:
            wait = self.waits[len(self.steps)]
            windows: tuple[Window, ...] = (Window(opens=Mark(minutes=wait)),)
            if self.twice:
                windows = (
                    Window(opens=Mark(minutes=20), closes=Mark(minutes=120)),
                    Window(opens=Mark(minutes=1440)),
                )
            gates = (Gate(after=self.steps[-1].id, windows=windows),)
        varnish = stage in (Stage.VARNISH, Stage.MATTE)
        self.steps.append(
            Step(
                id=f"s{len(self.steps) + 1:02d}",
                stage=stage,
                applications=(Application(places=("body",), coating=coating),),
                tool=tool,
                minutes=Minutes(fixed=round(SLOW * minutes)),
                gates=gates,
                role=Role.SEAL if varnish else None,
            )
        )
