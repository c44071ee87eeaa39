"""A small bench to try the judge on: short ways to write books and plans.

Bench time is 18:00 to 22:00 UTC every day, with a second person from
Saturday on (day 5); quiet hours begin at 21:00.  Day 0 is Monday 2031-03-03,
``NOW`` its 17:00.  The air is 23 °C and 50 %, so that label times hold as
they stand at nominal values.  Everything is invented.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta

from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film
from planner.schedule.judge import judge
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Mark, State, StateTime, Window
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix, Portion
from planner.values.model import Model, Part, Place, Side
from planner.values.moment import Interval, minute_of, zone_named
from planner.values.plan import (
    BenchKind,
    BenchWork,
    Cost,
    PassKey,
    Placement,
    Plan,
    Status,
    Unplaced,
)
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Minutes, Stage, Step, Tool
from planner.values.wishes import Preferences

MONDAY = date(2031, 3, 3)
ALL = frozenset(range(1, 29))


def at(text: str) -> int:
    """Return the minute of "18:00" on day 0, or of "2/18:00" on day 2."""
    day, _, clock = text.rpartition("/")
    hour, minute = clock.split(":")
    midnight = datetime(MONDAY.year, MONDAY.month, MONDAY.day, tzinfo=UTC)
    return minute_of(midnight + timedelta(days=int(day or 0), hours=int(hour), minutes=int(minute)))


def when(text: str) -> datetime:
    """Return the aware datetime of the same."""
    return datetime.fromtimestamp(at(text) * 60, UTC)


def span(text: str) -> Interval:
    """Return "18:00-18:10" or "2/18:00-2/18:10" as an interval."""
    start, end = text.split("-")
    return Interval(at(start), at(end))


def piece(start: int, minutes: int) -> Interval:
    """Return an interval of some minutes."""
    return Interval(start, start + minutes)


NOW = at("17:00")


# -- the book ---------------------------------------------------------------


def coating(
    name: str,
    family: Family = Family.WATERBORNE_ACRYLIC,
    recoat: tuple[Window, ...] = (),
    **times: int,
) -> Coating:
    """Return a coating with label times, e.g. ``dry_to_recoat=40`` [min]."""
    label = {
        "set_to_touch": 10,
        "dust_free": 12,
        "tack_free": 15,
        "dry_to_handle": 30,
        "dry_to_recoat": 40,
        "print_free": 60,
        "solvent_safe": 100,
        "dry_through": 120,
        **times,
    }
    stated = tuple(
        StateTime(state=State[state.upper()], minutes=minutes) for state, minutes in label.items()
    )
    um = 3.0 if family is Family.ARTISTS_OIL else 20.0  # oil is a wash here
    return Coating(name=name, family=family, recoat=recoat, times=stated, dry_film_um=um)


AFTER_AN_HOUR = (Window(opens=Mark(minutes=60)),)
COATINGS = (
    coating("sand"),
    coating("green"),
    coating("hourly", recoat=AFTER_AN_HOUR),
    coating("lacquer", Family.SOLVENT_LACQUER),
    coating("oil", Family.ARTISTS_OIL),
    coating("cement", Family.SOLVENT_CEMENT),
)
MIXES = (Mix(name="faded", portions=(Portion(coating="sand", parts=1),), life_minutes=60),)
HULL = Part(
    name="hull",
    holder="stick",
    places=(Place(name="deck"), Place(name="side"), Place(name="belly", side=Side.UNDER)),
)
WHEELS = Part(
    name="wheels",
    places=(Place(name="tread"), Place(name="rim"), Place(name="hub", side=Side.UNDER)),
)
TRACKS = Part(name="tracks", holder="stick", places=(Place(name="links"),))
DAILY = "FREQ=DAILY"
BENCH_TIME = BenchTime(
    zone="UTC",
    stretches=(
        Recurring(rule=DAILY + ";COUNT=5", since=MONDAY, start="18:00", end="22:00"),
        Recurring(
            rule=DAILY, since=MONDAY + timedelta(days=5), start="18:00", end="22:00", people=2
        ),
    ),
    quiet=(Recurring(rule=DAILY, since=MONDAY, start="21:00", end="07:00"),),
    daylight=(Recurring(rule=DAILY, since=MONDAY, start="08:00", end="19:00"),),
)


def location(
    name: str, places: int, temperature_c: float = 23, humidity_pct: float = 50
) -> Location:
    """Return a location of constant air."""
    air = AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct)
    return Location(name=name, drying_places=places, workdays=(air,))


ROOM = Room(locations=(location("bench", 10), location("box", 1), location("fog", 9, 23, 100)))
GEAR = Gear(airbrushes=(Airbrush(name="fine"),))  # load 3, change 6 or 10, clean 6, idle 20


def book(*steps: Step, coatings: tuple[Coating, ...] = (), **project: object) -> Book:
    """Return a book of one cart with these steps; ``coatings`` replace those of their names."""
    named = {coating.name: coating for coating in (*COATINGS, *coatings)}
    cart = Model(name="cart", parts=(HULL, WHEELS, TRACKS), steps=steps)
    return Book(
        coatings=tuple(named.values()),
        mixes=MIXES,
        room=ROOM,
        bench_time=BENCH_TIME,
        gear=GEAR,
        projects=(Project(name="batch", models=(cart,), **project),),  # type: ignore[arg-type]
        preferences=Preferences(likely=()),  # to the minute of the late band
    )


def paint(name: str, *places: str, coat: str = "sand", minutes: int = 10, **more: object) -> Step:
    """Return a step that brushes one coating on some places."""
    coats = int(more.pop("coats", 1))  # type: ignore[call-overload]
    return Step(
        id=name,
        stage=more.pop("stage", Stage.BASE),  # type: ignore[arg-type]
        applications=(Application(places=places, coating=coat, coats=coats),),
        minutes=Minutes(fixed=minutes),
        **more,  # type: ignore[arg-type]
    )


def spray(name: str, *places: str, coat: str = "sand", minutes: int = 10, **more: object) -> Step:
    """Return the same with an airbrush."""
    return paint(name, *places, coat=coat, minutes=minutes, tool=Tool.AIRBRUSH, **more)


def work(name: str, stage: Stage, *places: str, minutes: int = 10, **more: object) -> Step:
    """Return a step that lays no film."""
    return Step(id=name, stage=stage, touches=places, minutes=Minutes(fixed=minutes), **more)  # type: ignore[arg-type]


# -- the plan ---------------------------------------------------------------


def key(step: str, coat: int = 1) -> PassKey:
    """Return the key of a pass of the cart."""
    return PassKey("batch", "cart", step, coat)


def do(step: str, *spans: str | Interval, coat: int = 1, airbrush: str = "") -> Placement:
    """Place a pass."""
    pieces = tuple(span(other) if isinstance(other, str) else other for other in spans)
    return Placement(key(step, coat), pieces, airbrush=airbrush)


def sprayed(step: str, *spans: str | Interval) -> Placement:
    """Place a pass of the airbrush."""
    return do(step, *spans, airbrush="fine")


def load(text: str, coat: str = "sand") -> BenchWork:
    """Place a load."""
    return BenchWork(BenchKind.LOAD, span(text), "fine", coat)


def change(text: str, coat: str) -> BenchWork:
    """Place a change to another coating."""
    return BenchWork(BenchKind.CHANGE, span(text), "fine", coat)


def clean(text: str) -> BenchWork:
    """Place a cleaning."""
    return BenchWork(BenchKind.CLEAN, span(text), "fine")


def prepare(text: str, step: str) -> BenchWork:
    """Place the preparation for a pass."""
    return BenchWork(BenchKind.PREPARE, span(text), serves=key(step))


def plan(
    of: Book,
    *placements: Placement,
    bench: Iterable[BenchWork] = (),
    unplaced: Iterable[str] = (),
    now: int = NOW,
    **claims: object,
) -> Plan:
    """Return a plan that states its own cost and finishes rightly.

    Those figures are the judge's, so that only what a case is about is
    wrong; the cases of definitions 26 and 27 have theirs worked out by hand.
    """
    without = tuple(Unplaced(key(step), "no room") for step in unplaced)
    draft = Plan(
        now=now,
        placements=placements,
        bench=tuple(bench),
        unplaced=without,
        status=Status.INCOMPLETE if without else Status.FEASIBLE,
        cost=Cost(0, 0, 0, 0, 0),
        finishes=(),
    )
    verdict = judge(of, draft, rules=frozenset())
    draft = replace(draft, cost=verdict.cost, finishes=verdict.finishes)
    return replace(draft, **claims)  # type: ignore[arg-type]


# -- when things are ready --------------------------------------------------


def ready(of: Book, coat: str, state: State, end: int, where: str = "bench", um: float = 20) -> int:
    """Return when a film whose pass ended at ``end`` reaches a state, late band."""
    minute = Cure(of.room, zone_named("UTC")).ready_at(
        Film(of.coating(coat), um, where, end), state, Band.LATE
    )
    assert minute is not None
    return minute


def on_bench(of: Book, minute: int, minutes: int = 10) -> Interval:
    """Return the first piece of work that fits the bench time from a minute on."""
    calendar = BenchCalendar(of.bench_time)
    stretch = calendar.next_stretch(minute)
    while stretch and max(minute, stretch.interval.start) + minutes > stretch.interval.end:
        stretch = calendar.next_stretch(stretch.interval.end)
    assert stretch is not None
    return piece(max(minute, stretch.interval.start), minutes)


# -- cases ------------------------------------------------------------------


@dataclass(frozen=True)
class Case:
    """A plan that breaks one definition, beside a twin that breaks none."""

    book: Book
    sound: Plan
    broken: Plan
    digest: str | None = None


CASES: list[tuple[int, str, Callable[[], Case]]] = []


def breaks(definition: int) -> Callable[[Callable[[], Case]], Callable[[], Case]]:
    """Register a case that breaks exactly this definition."""

    def register(build: Callable[[], Case]) -> Callable[[], Case]:
        CASES.append((definition, build.__name__, build))
        return build

    return register
